//! Balance in words.

use elbowroom_model::Brief;

use super::names::{item, length, piece};
use crate::words::answer::arrangement::the_wall;
use elbowroom_solver::criteria::balance::{BalanceFinding, Mark};

pub(super) fn reason(brief: &Brief, finding: &BalanceFinding) -> String {
    let seat = piece(brief, finding.seat);
    let mut reason = match finding.centred {
        Some(centred) => {
            format!("{seat} stands {} off the middle of {}", length(brief, centred.off), mark(brief, centred.on))
        }
        None => format!("{seat} stands free, with nothing square to it that it could be centred on"),
    };
    if let Some(ratio) = finding.of_wall {
        reason += &format!("; it takes {:.0} % of its wall", 100.0 * ratio);
    }
    if let Some(ratio) = finding.table {
        reason += &format!("; the table has {:.0} % of its length", 100.0 * ratio);
    }
    if let Some(past) = finding.past_rug {
        reason += &format!("; a seat ends {} past the rug", length(brief, past));
    }
    if finding.centred.is_none() {
        let lean = length(brief, finding.lean);
        reason += &format!("; the middle of all that stands lies {lean} off the middle of the room");
    }
    if finding.empty_side {
        reason += "; one side of the room is left empty";
    }
    reason
}

fn mark(brief: &Brief, mark: Mark) -> String {
    match mark {
        Mark::Wall(id) => the_wall(brief, id),
        Mark::Item(id) => item(brief, id),
        Mark::Piece(other) => piece(brief, other),
    }
}

#[cfg(test)]
mod tests {
    use elbowroom_model::WallId;

    use super::super::sample::{SOFA, told};
    use elbowroom_solver::criteria::Finding;
    use elbowroom_solver::criteria::balance::{BalanceFinding, Centred, Mark};

    #[test]
    fn balance_says_what_the_seat_is_centred_on_or_that_it_is_on_nothing() {
        let centred = BalanceFinding {
            seat: SOFA,
            centred: Some(Centred { off: 303.0, on: Mark::Wall(WallId(2)) }),
            of_wall: Some(0.667),
            table: Some(0.5),
            past_rug: Some(204.0),
            lean: 800.0,
            empty_side: true,
        };
        assert_eq!(
            told(Finding::Balance(centred.clone())),
            "The sofa stands 30 cm off the middle of the back wall; it takes 67 % of its wall; the table has 50 % of its length; \
             a seat ends 20 cm past the rug; one side of the room is left empty."
        );
        let free = BalanceFinding { centred: None, of_wall: None, past_rug: None, empty_side: false, ..centred };
        assert_eq!(
            told(Finding::Balance(free)),
            "The sofa stands free, with nothing square to it that it could be centred on; the table has 50 % of its length; the \
             middle of all that stands lies 80 cm off the middle of the room."
        );
    }
}
