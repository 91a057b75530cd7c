//! Talk in words.

use elbowroom_model::Brief;

use super::names::{length, piece};
use elbowroom_solver::criteria::talk::{Seated, TalkFinding};

/// How near to one another all sit.
pub(super) fn lead(brief: &Brief, finding: &TalkFinding) -> String {
    match finding.places {
        1 => "there is one seat place, and nobody to speak with".to_owned(),
        count => format!(
            "all {count} seat places lie in a circle of {} across{}",
            length(brief, finding.diameter),
            if finding.wide { ", wider than the 10 ft of a conversation group" } else { "" }
        ),
    }
}

pub(super) fn reason(brief: &Brief, finding: &TalkFinding) -> String {
    let mut reason = lead(brief, finding);
    if let Some(out) = finding.out {
        reason += &format!("; {} is out of it", piece(brief, out));
    }
    match finding.seated {
        Seated::AboutCorner => reason += "; the corner of the corner sofa counts as one place",
        Seated::SideBySide => reason += "; all sit side by side",
        Seated::Otherwise => {}
    }
    reason
}

#[cfg(test)]
mod tests {
    use super::super::sample::{ARMCHAIR_2, told, told_in};
    use elbowroom_solver::criteria::Finding;
    use elbowroom_solver::criteria::talk::{Seated, TalkFinding};

    #[test]
    fn lengths_are_told_in_the_units_asked_for() {
        let talk =
            TalkFinding { places: 3, diameter: 3352.8, wide: true, out: Some(ARMCHAIR_2), seated: Seated::Otherwise };
        assert_eq!(
            told_in("in", Finding::Talk(talk)),
            "All 3 seat places lie in a circle of 132 in across, wider than the 10 ft of a conversation group; armchair 2 is out \
             of it."
        );
    }

    #[test]
    fn talk_says_how_they_sit() {
        let talk = |places, seated| {
            told(Finding::Talk(TalkFinding { places, diameter: 1800.0, wide: false, out: None, seated }))
        };
        assert_eq!(
            talk(2, Seated::SideBySide),
            "All 2 seat places lie in a circle of 180 cm across; all sit side by side."
        );
        assert!(talk(4, Seated::AboutCorner).ends_with("; the corner of the corner sofa counts as one place."));
        assert_eq!(talk(1, Seated::Otherwise), "There is one seat place, and nobody to speak with.");
    }
}
