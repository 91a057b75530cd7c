//! Balance in words.

use elbowroom_model::article::the;
use elbowroom_model::{Brief, Term};

use super::names::{length, piece, pieces};
use crate::words::answer::arrangement::the_wall;
use elbowroom_solver::answer::Thing;
use elbowroom_solver::criteria::balance::{BalanceFinding, OffAxis};

/// What lies furthest off its axis.
pub(super) fn lead(brief: &Brief, finding: &BalanceFinding) -> String {
    match &finding.worst {
        Some(worst) => off_axis(brief, worst),
        None => "what belongs on an axis stands on it".to_owned(),
    }
}

pub(super) fn reason(brief: &Brief, finding: &BalanceFinding) -> String {
    let mut reason = lead(brief, finding);
    if !finding.left_out.is_empty() {
        reason += &format!("; {} found no place", pieces(brief, &finding.left_out));
    }
    let lean = length(brief, finding.lean);
    reason += &format!("; the middle of all that stands lies {lean} off the middle of the room");
    if finding.empty_side {
        reason += "; one side of the room is left empty";
    }
    reason
}

fn off_axis(brief: &Brief, worst: &OffAxis) -> String {
    let (it, off) = (piece(brief, worst.piece), length(brief, worst.off));
    let from = the(worst.from.name(brief));
    match worst.term {
        Term::ScreenAside => format!("the screen stands {off} off the middle of {from}"),
        Term::RugAside => format!("{it} lies {off} off the middle of {from}"),
        Term::FocusAside | Term::FireAside => format!("{it} stands {off} off the middle of {from}, which it faces"),
        // The second of a pair pays for both.
        Term::PairAside => format!("the middle between {from} and {it} lies {off} off the middle of the group"),
        Term::OffMiddle | Term::ScreenOffMiddle => off_middle(brief, worst),
        _ => format!("{it} stands {off} off the middle of {from}"),
    }
}

/// Seats and screens stand amid a wall, storage also snug at an end.
fn off_middle(brief: &Brief, worst: &OffAxis) -> String {
    let (it, off) = (piece(brief, worst.piece), length(brief, worst.off));
    let wall = match worst.from {
        Thing::Wall(wall) => the_wall(brief, wall),
        other => the(other.name(brief)),
    };
    let is_amid = brief.piece(worst.piece).is_some_and(|piece| piece.kind.is_seat() || piece.kind.carries_screen());
    let or_ends = if is_amid { "" } else { " and from its ends" };
    format!("{it} stands {off} from the middle of the longest free stretch of {wall}{or_ends}")
}

#[cfg(test)]
mod tests {
    use elbowroom_model::{Term, WallId};

    use super::super::sample::{ARMCHAIR_1, ARMCHAIR_2, BAY, SOFA, UNIT, told};
    use elbowroom_solver::answer::Thing;
    use elbowroom_solver::criteria::Finding;
    use elbowroom_solver::criteria::balance::{BalanceFinding, OffAxis};

    fn balance(worst: Option<OffAxis>) -> BalanceFinding {
        BalanceFinding {
            seat: SOFA,
            worst,
            placement: 900.0,
            left_out: Vec::new(),
            left_out_worth: 0.0,
            lean: 303.0,
            empty_side: false,
        }
    }

    #[test]
    fn balance_says_what_is_off_its_axis_what_is_left_out_and_how_the_room_leans() {
        let screen = OffAxis { term: Term::ScreenAside, piece: UNIT, from: Thing::Piece(SOFA), off: 120.0 };
        let finding = BalanceFinding { left_out: vec![ARMCHAIR_2], empty_side: true, ..balance(Some(screen)) };
        assert_eq!(
            told(Finding::Balance(finding)),
            "The screen stands 12 cm off the middle of the sofa; armchair 2 found no place; the middle of all that stands lies \
             30 cm off the middle of the room; one side of the room is left empty."
        );
        assert_eq!(
            told(Finding::Balance(balance(None))),
            "What belongs on an axis stands on it; the middle of all that stands lies 30 cm off the middle of the room."
        );
    }

    #[test]
    fn balance_names_the_axis_or_the_wall() {
        let starts = |term, piece, from, start: &str| {
            let told = told(Finding::Balance(balance(Some(OffAxis { term, piece, from, off: 120.0 }))));
            assert!(told.starts_with(&format!("{start}; ")), "{told}");
        };
        let (sofa, chair) = (Thing::Piece(SOFA), Thing::Piece(ARMCHAIR_1));
        let focus = "The sofa stands 12 cm off the middle of the bay, which it faces";
        starts(Term::FocusAside, SOFA, Thing::Item(BAY), focus);
        starts(Term::OppositeAside, ARMCHAIR_1, sofa, "Armchair 1 stands 12 cm off the middle of the sofa");
        let pair = "The middle between armchair 1 and armchair 2 lies 12 cm off the middle of the group";
        starts(Term::PairAside, ARMCHAIR_2, chair, pair);
        let wall = Thing::Wall(WallId(2));
        let amid = "The sofa stands 12 cm from the middle of the longest free stretch of the back wall";
        starts(Term::OffMiddle, SOFA, wall, amid);
    }
}
