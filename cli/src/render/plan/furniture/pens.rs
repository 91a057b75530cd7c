//! What all that is drawn has in common: pens, what a piece is filled with, what labels keep off.

use elbowroom_model::{Drawn, Point};

use crate::drawing::{Path, Pen, Tone, hand};
use crate::render::plan::figure::Figure;
use crate::render::plan::shown::PieceShown;

/// Outlines of pieces.
pub(super) const OUTLINE: Pen = Pen::ink(hand::OUTLINES);
/// Lines within pieces.
pub(super) const WITHIN: Pen = Pen::ink(hand::FITTINGS);

/// Drawn below the others.
pub(in crate::render::plan) fn lies_under(one: PieceShown<'_>) -> bool {
    matches!(one.piece.kind.traits().drawn, Drawn::Rug | Drawn::OpenFloor)
}

/// What a piece is filled with, and so what its name lies on.
pub(in crate::render::plan) fn ground(one: PieceShown<'_>) -> Tone {
    match one.piece.kind.traits().drawn {
        Drawn::Rug => Tone::Rug,
        Drawn::OpenFloor => Tone::Floor,
        Drawn::Upholstered | Drawn::Padded => Tone::Seat,
        Drawn::WithFront | Drawn::Screen | Drawn::Lamp | Drawn::Plant | Drawn::Plain => Tone::Piece,
    }
}

/// No name but its own lies on a piece.
pub(super) fn body(figure: &mut Figure<'_>, piece: PieceShown<'_>) {
    for part in piece.parts() {
        let part = figure.frame.all(&part);
        figure.labels.body(part);
    }
}

/// A thin line within a piece, that labels had better not lie on.
pub(super) fn line(figure: &mut Figure<'_>, places: [Point; 2]) {
    let line = places.map(|at| figure.frame.at(at));
    figure.labels.mind(line);
    figure.put(Path::line(line, WITHIN));
}
