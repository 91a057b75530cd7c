//! Upkeep in words.

use elbowroom_model::article::the;
use elbowroom_model::{Brief, ItemKind};

use super::names::{items, length, piece};
use elbowroom_solver::criteria::upkeep::{CordFault, UpkeepFinding};

/// From here on a share reads as all.
const WHOLE: f64 = 0.995;

/// How much of what the room has stays in use.
pub(super) fn lead(brief: &Brief, finding: &UpkeepFinding) -> String {
    in_use(brief, finding.in_use)
}

pub(super) fn reason(brief: &Brief, finding: &UpkeepFinding) -> String {
    let mut reason = lead(brief, finding);
    if !finding.heat_taken.is_empty() {
        let has = if finding.heat_taken.len() == 1 { "has" } else { "have" };
        reason += &format!("; {} {has} a back before it that takes the heat", items(brief, &finding.heat_taken));
    }
    if !finding.out_of_reach.is_empty() {
        reason += &format!("; one does not step right up to {}", items(brief, &finding.out_of_reach));
    }
    for fault in &finding.cords {
        reason += &format!("; {}", cord(brief, fault));
    }
    reason
}

fn in_use(brief: &Brief, share: f64) -> String {
    let has = |is: fn(&ItemKind) -> bool| brief.room.items.iter().any(|item| is(&item.kind));
    let kinds = [
        ("radiators", has(|kind| matches!(kind, ItemKind::Radiator(_)))),
        ("windows", has(|kind| matches!(kind, ItemKind::Window(_)))),
        ("sockets", has(|kind| matches!(kind, ItemKind::Socket(_)))),
    ];
    let kinds: Vec<&str> = kinds.into_iter().filter(|(_, there)| *there).map(|(name, _)| name).collect();
    let kinds = match kinds.split_last() {
        Some((last, [])) => (*last).to_owned(),
        Some((last, first)) => format!("{} and {last}", first.join(", ")),
        None => "what the walls hold".to_owned(),
    };
    if share >= WHOLE {
        format!("all {kinds} stay in use")
    } else {
        format!("{:.0} % of {kinds} stay in use", 100.0 * share)
    }
}

fn cord(brief: &Brief, fault: &CordFault) -> String {
    match *fault {
        CordFault::FarFromSocket { piece: one, distance, floats } => {
            let floats = if floats { ", which floats free of the walls" } else { "" };
            format!("the best socket is {} from {}{floats}", length(brief, distance), piece(brief, one))
        }
        CordFault::AcrossWay { piece: one, to } => {
            format!("the cord of {} would cross the way to {}", piece(brief, one), the(to.name(brief)))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::sample::{BAY, DINING, RADIATOR, UNIT, YARD, told};
    use elbowroom_solver::criteria::Finding;
    use elbowroom_solver::criteria::upkeep::{CordFault, UpkeepFinding};
    use elbowroom_solver::routes::End;

    #[test]
    fn upkeep_says_what_is_hampered_and_what_is_wrong_with_cords() {
        let far = CordFault::FarFromSocket { piece: UNIT, distance: 2304.0, floats: true };
        let across = CordFault::AcrossWay { piece: UNIT, to: End::Item(DINING) };
        let heat_taken = vec![RADIATOR];
        let upkeep = UpkeepFinding { in_use: 0.5, heat_taken, out_of_reach: vec![BAY, YARD], cords: vec![far, across] };
        assert_eq!(
            told(Finding::Upkeep(upkeep)),
            "50 % of radiators and windows stay in use; the radiator has a back before it that takes the heat; one does \
             not step right up to the bay and the yard window; the best socket is 230 cm from the media unit, which floats free \
             of the walls; the cord of the media unit would cross the way to the dining side."
        );
    }
}
