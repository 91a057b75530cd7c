//! What an answer says: each sentence made from what was decided, in the unit of its brief.

use elbowroom_model::{Brief, Hand, PieceId, SecondPlace, tables};
use elbowroom_solver::Answer;
use elbowroom_solver::answer::RankedOption;
use elbowroom_solver::criteria::Judgement;
use elbowroom_solver::refusal::{Refusal, Remedy};
use elbowroom_solver::wording;

/// The decisions of an option: `Back to the canal wall, return on the left, screen on the stair wall`.
pub(crate) fn title(brief: &Brief, option: &RankedOption) -> String {
    wording::arrangement::title(brief, &option.choices)
}

/// Why a criterion judges as it does.
pub(crate) fn reason(brief: &Brief, judgement: &Judgement) -> String {
    wording::criteria::reason(brief, &judgement.finding)
}

/// Where the yardstick of a criterion comes from.
pub(crate) fn basis(judgement: &Judgement) -> &'static str {
    tables::basis(judgement.criterion)
}

/// Why a piece is left out of an option.
pub(crate) fn left_out(brief: &Brief, option: &RankedOption, piece: PieceId) -> String {
    wording::left_out::left_out(brief, piece, option.proven)
}

/// Why an arrangement is not among the options.
pub(crate) fn refused(brief: &Brief, refusal: &Refusal) -> String {
    wording::refusal::refusal(brief, refusal)
}

/// What would help, or helped where it was tried.
pub(crate) fn remedy(answer: &Answer, remedy: &Remedy) -> String {
    wording::remedy::remedy(&answer.brief, remedy, answer.undecided() == 0)
}

/// Cautions, assumptions, what is left aside.
pub(crate) fn notices(answer: &Answer) -> Vec<String> {
    wording::notice::notices(answer)
}

/// A side, as one sits.
pub(crate) const fn hand(hand: Hand) -> &'static str {
    match hand {
        Hand::Left => "left",
        Hand::Right => "right",
    }
}

/// Where a second seat stands to the main one.
pub(crate) const fn second_place(place: SecondPlace) -> &'static str {
    match place {
        SecondPlace::Opposite => "opposite",
        SecondPlace::Left => "left",
        SecondPlace::Right => "right",
    }
}
