//! Stands in for parts that are still to come.

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
