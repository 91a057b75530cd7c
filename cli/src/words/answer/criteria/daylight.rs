//! Daylight in words.

use elbowroom_model::Brief;

use super::names::{item, length};
use elbowroom_solver::criteria::daylight::DaylightFinding;

/// How far the seats lie from their windows, and how far light reaches.
pub(super) fn lead(brief: &Brief, finding: &DaylightFinding) -> String {
    format!(
        "the seat places lie {} from their windows on average; {}, head {}, lights to about {} deep",
        length(brief, finding.distance),
        item(brief, finding.window),
        length(brief, finding.head),
        length(brief, finding.lights)
    )
}

pub(super) fn reason(brief: &Brief, finding: &DaylightFinding) -> String {
    let mut reason = lead(brief, finding);
    if finding.hidden {
        reason += "; what stands before the windows takes some of it";
    }
    if let Some(lamps) = finding.lamps {
        reason += &format!("; a lamp is in reach of {} of {}", lamps.reached, lamps.places);
    }
    reason
}

#[cfg(test)]
mod tests {
    use super::super::sample::{BAY, told};
    use elbowroom_solver::criteria::Finding;
    use elbowroom_solver::criteria::daylight::{DaylightFinding, LampsFinding};

    #[test]
    fn daylight_says_how_far_the_windows_are_and_whether_a_lamp_is_near() {
        let lamps = Some(LampsFinding { reached: 1, places: 3 });
        let daylight =
            DaylightFinding { distance: 2104.0, window: BAY, head: 2100.0, lights: 4200.0, hidden: true, lamps };
        assert_eq!(
            told(Finding::Daylight(daylight)),
            "The seat places lie 210 cm from their windows on average; the bay, head 210 cm, lights to about 420 cm deep; what \
             stands before the windows takes some of it; a lamp is in reach of 1 of 3."
        );
    }
}
