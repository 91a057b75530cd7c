//! Fireside in words.

use elbowroom_model::Brief;

use super::names::{item, length};
use elbowroom_solver::criteria::fireside::FiresideFinding;

/// How the seats look to the fire.
pub(super) fn lead(brief: &Brief, finding: &FiresideFinding) -> String {
    format!(
        "{} lies {:.0} degrees from the way the seats face and {} from them on average",
        item(brief, finding.fire),
        finding.angle,
        length(brief, finding.distance)
    )
}

pub(super) fn reason(brief: &Brief, finding: &FiresideFinding) -> String {
    let mut reason = lead(brief, finding);
    match (finding.backs, finding.places) {
        (0, _) => {}
        (1, 1) => reason += "; the seat has it behind",
        (1, all) => reason += &format!("; 1 of {all} seat places has it behind"),
        (backs, all) => reason += &format!("; {backs} of {all} seat places have it behind"),
    }
    if finding.flanked {
        reason += "; chairs flank the hearth";
    }
    reason
}

#[cfg(test)]
mod tests {
    use super::super::sample::{RADIATOR, told};
    use elbowroom_solver::criteria::Finding;
    use elbowroom_solver::criteria::fireside::FiresideFinding;

    #[test]
    fn fireside_says_who_has_it_behind() {
        let fireside = |backs, flanked| {
            let (angle, main_turn, distance) = (44.6, 30.0, 2504.0);
            let finding = FiresideFinding { fire: RADIATOR, angle, main_turn, distance, backs, places: 3, flanked };
            told(Finding::Fireside(finding))
        };
        let start = "The radiator lies 45 degrees from the way the seats face and 250 cm from them on average";
        assert_eq!(fireside(0, true), format!("{start}; chairs flank the hearth."));
        assert_eq!(fireside(1, false), format!("{start}; 1 of 3 seat places has it behind."));
        assert_eq!(fireside(2, false), format!("{start}; 2 of 3 seat places have it behind."));
    }
}
