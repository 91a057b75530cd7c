//! What hangs on a wall: its sizes follow from its diagonal, its height from where its middle is.

use crate::hung::USUAL_SCREEN;
use crate::length::Measure;
use crate::piece::Piece;
use crate::report::{Of, Report, Taken};
use crate::scenario::document::PieceRow;
use crate::scenario::tolerance::TOUCHING;
use crate::screen::screen_height;
use crate::yaml::Trail;

/// The piece of a row at `at`, hung; `None` after a fault. Its height so far is that of its middle by the table.
pub(super) fn hang(
    row: &PieceRow,
    mut piece: Piece,
    ceiling: Option<&Measure>,
    at: &Trail,
    report: &mut Report<'_>,
) -> Option<Piece> {
    let before = report.count();
    tell_what_follows(row, &piece, at, report);
    let centre = match &row.centre {
        Some(centre) => {
            report.length(centre, &at.key("centre"), Of { item: &piece.name, figure: "centre" }, Taken::AboveZero)
        }
        None => Some(piece.height),
    };
    piece.hang(piece.screen.unwrap_or(USUAL_SCREEN), centre?);
    let ceiling = ceiling.and_then(|ceiling| ceiling.length(report.units()).ok());
    tell_off_the_wall(&piece, ceiling, at, report);
    (report.count() == before).then_some(piece)
}

/// Keys that give what follows from others.
fn tell_what_follows(row: &PieceRow, piece: &Piece, at: &Trail, report: &mut Report<'_>) {
    let given = [
        ("width", row.width.is_some(), "Give the diagonal of the screen as `screen`: its width follows."),
        ("height", row.height.is_some(), "Give the height of its middle above the floor as `centre`."),
        ("off_wall", row.off_wall.is_some(), "Leave `off_wall` out: it hangs on its wall."),
    ];
    for (key, _, remedy) in given.into_iter().filter(|(_, given, _)| *given) {
        let message = format!("`{key}` is no key of {}, whose kind is {}.", piece.name, piece.kind.key());
        report.add(&at.key(key), "key_of_another_kind", &piece.name, message, remedy.to_owned());
    }
}

/// A screen that reaches below the floor, or above the ceiling.
fn tell_off_the_wall(piece: &Piece, ceiling: Option<f64>, at: &Trail, report: &mut Report<'_>) {
    let (below, top) = (-piece.lower_edge(), piece.height_with_screen());
    let above = ceiling.map_or(f64::NEG_INFINITY, |ceiling| top - ceiling);
    let (past, by) = if below >= above { ("the floor", below) } else { ("the ceiling", above) };
    if by <= TOUCHING {
        return;
    }
    let half = piece.screen.map_or(0.0, screen_height) / 2.0;
    let (name, words) = (&piece.name, |length| report.words(length));
    let message = format!("{name}, as high as it hangs, reaches {} past {past}.", words(by));
    let remedy = match ceiling {
        Some(ceiling) if ceiling >= 2.0 * half => {
            format!("Give its middle as `centre`, from {} to {}.", words(half), words(ceiling - half))
        }
        Some(_) => format!("It is {} tall: choose a smaller `screen`.", words(2.0 * half)),
        None => format!("Give its middle as `centre`, {} or more.", words(half)),
    };
    report.add(&at.key("centre"), "hangs_off_its_wall", name, message, remedy);
}
