//! Chairs that stand turned, in words.

use elbowroom_model::article::the;
use elbowroom_model::{Brief, PieceId};
use elbowroom_solver::answer::RankedOption;

/// `turned 30 degrees toward the coffee table`; `None` of what stands square.
pub(crate) fn turned(brief: &Brief, option: &RankedOption, piece: PieceId) -> Option<String> {
    let turned = option.turned(brief, piece)?;
    let (degrees, toward) = (turned.degrees.round(), the(brief.piece_name(turned.toward)));
    Some(format!("turned {degrees} degrees toward {toward}"))
}

/// The same as a sentence.
pub(crate) fn is_turned(turned: &str) -> String {
    format!("It stands {turned}.")
}

/// What is said of a piece, and how it is turned.
pub(crate) fn and_turned(said: String, turned: Option<String>) -> String {
    match turned {
        Some(turned) => format!("{said} ({turned})"),
        None => said,
    }
}
