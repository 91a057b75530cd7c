//! Stands in for parts that are still to come.

/// The scenario reader.
pub(crate) mod scenario {
    use elbowroom_model::{Brief, Fault};

    /// Reads nothing yet.
    pub(crate) fn read(_text: &str, _table: Option<&str>) -> Result<Brief, Vec<Fault>> {
        Err(vec![Fault {
            code: "not_yet",
            item: None,
            message: "this build does not read scenarios yet".to_owned(),
            remedy: "Take a later build.".to_owned(),
            place: None,
        }])
    }

    /// No schema yet.
    pub(crate) fn schema() -> String {
        "{}\n".to_owned()
    }

    /// No starter yet.
    pub(crate) const fn starter() -> &'static str {
        "name: Front room\n"
    }
}

/// Ranks nothing yet.
pub(crate) fn rank(
    brief: &elbowroom_model::Brief,
    _limits: &elbowroom_solver::Limits,
    _watch: &dyn elbowroom_solver::Watch,
) -> elbowroom_solver::Outcome {
    use elbowroom_solver::outcome::{FORMAT, Outcome, RoomFound, RulesInForce, Work};
    Outcome {
        format: FORMAT,
        room: RoomFound {
            name: brief.room.name.clone(),
            outline: brief.room.outline(),
            area: brief.room.area() / 1e6,
            misclosure: None,
        },
        rules: RulesInForce { profile: brief.rules.profile.clone(), figures: Vec::new() },
        options: Vec::new(),
        refused: Vec::new(),
        remedies: Vec::new(),
        notices: Vec::new(),
        work: Work::default(),
    }
}
