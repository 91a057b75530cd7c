//! Two sofas that are to stand facing each other or at a right angle: there are two of them, and both stand.

use crate::pair::Pair;
use crate::piece::Piece;
use crate::report::Report;
use crate::scenario::document::PieceRow;
use crate::yaml::Trail;

/// Tells a pair of other than two, and one that may be left out.
pub(super) fn tell(row: &PieceRow, names: &[String], at: &Trail, report: &mut Report<'_>) {
    let (Some(pair), Some(name)) = (row.pair, names.first()) else { return };
    let count = row.count.unwrap_or(1);
    if count != 2 {
        let message = format!("`pair` says how two sofas stand to each other, and the row of {name} is of {count}.");
        let remedy = "Give the row `count: 2`, or leave `pair` out.".to_owned();
        report.add(&at.key("pair"), "pair_not_of_two", name, message, remedy);
    }
    if pair != Pair::Either && row.needed == Some(false) {
        let message = format!("`pair: {}` asks for both sofas, and `needed: false` lets {name} go.", pair.key());
        let remedy = "Leave `needed` out, or say `pair: either`.".to_owned();
        report.add(&at.key("needed"), "pair_left_out", name, message, remedy);
    }
}

/// Tells that two sofas which face each other leave a screen no place before the main one.
pub(super) fn tell_screen(pieces: &[Piece], report: &mut Report<'_>) {
    let needed = || pieces.iter().filter(|piece| piece.needed);
    let is_pair = needed().any(|piece| piece.pair == Pair::Facing) && !needed().any(|piece| piece.kind.has_return());
    if let Some(screen) = needed().find(|piece| piece.kind.carries_screen()).filter(|_| is_pair) {
        report.notice(format!(
            "Where two sofas face each other, one stands where the screen on {} would: give that `needed: false`, or say \
             `pair: corner`.",
            screen.name
        ));
    }
}
