//! A screen that is wider than what carries it, in words.

use elbowroom_model::article::{capital, the};
use elbowroom_model::{Brief, Piece, Rounding};
use elbowroom_solver::screen_overhang::ScreenOverhang;

use super::in_options::Told;

/// What is told of it beside the options.
pub(super) fn screen_overhang(brief: &Brief, told: Told, overhang: &ScreenOverhang) -> String {
    let ranks: Vec<usize> = overhang.over.iter().map(|over| over.rank).collect();
    let place = told.place(&ranks).map(|place| format!(" {place}")).unwrap_or_default();
    let up_to = if overhang.over.len() > 1 { "up to " } else { "" };
    let [screen, by] = [overhang.screen, overhang.most()].map(|length| brief.units.words(length, Rounding::Nearest));
    capital(&format!(
        "the screen on {} is {screen} wide, {up_to}{by} wider than what carries it{place}: see that its feet find room, or \
         take a wider one or a smaller screen.",
        the(brief.piece_name(overhang.piece))
    ))
}

/// The same of a piece at one width, as a room stands; `None` where its screen is no wider.
pub(super) fn screen_beyond(brief: &Brief, piece: &Piece, width: f64) -> Option<String> {
    let by = piece.screen_beyond(width)?;
    let screen = piece.carried_width()?;
    let [screen, by] = [screen, by].map(|length| brief.units.words(length, Rounding::Nearest));
    Some(capital(&format!("the screen on {} is {screen} wide, {by} wider than what carries it.", the(&piece.name))))
}
