//! Furniture as a drawing office draws it, each kind by how the table of kinds says it is drawn: upholstery, lamps, plants,
//! fronts, screens, rugs.
//!
//! Lines follow the sizes that the plan gives; what nobody measured (arms, backs, cushions) is drawn at what is usual and
//! told nowhere. Names and sizes of pieces are written by `pieces`.

mod axes;

mod pens;
mod plain;
mod screens;
mod slender;
mod upholstery;

use elbowroom_model::Drawn;

pub(super) use pens::{ground, lies_under};

use super::Shown;
use super::figure::Figure;
use super::shown::PieceShown;
use crate::drawing::Mark;

/// What stands on the floor: neither what lies under the others nor what hangs.
pub(super) fn on_floor<'a>(shown: &Shown<'a>) -> impl Iterator<Item = PieceShown<'a>> {
    shown.pieces().into_iter().filter(|one| !lies_under(*one) && !one.piece.kind.hangs())
}

/// Every piece, rugs below the others and what hangs above them.
pub(super) fn draw(figure: &mut Figure<'_>) {
    figure.put(Mark::Layer("pieces"));
    let (under, others): (Vec<_>, Vec<_>) = figure.shown.pieces().into_iter().partition(|one| lies_under(*one));
    for piece in under {
        one(figure, piece);
    }
    plain::chairs(figure);
    let (hung, standing): (Vec<_>, Vec<_>) = others.into_iter().partition(|one| one.piece.kind.hangs());
    for piece in standing.into_iter().chain(hung) {
        one(figure, piece);
    }
}

/// A piece as its kind is drawn.
pub(super) fn one(figure: &mut Figure<'_>, piece: PieceShown<'_>) {
    match piece.piece.kind.traits().drawn {
        Drawn::Rug | Drawn::OpenFloor => plain::under(figure, piece),
        Drawn::Upholstered => upholstery::draw(figure, piece),
        Drawn::Padded => upholstery::padded(figure, piece),
        Drawn::WithFront => {
            plain::solid(figure, piece);
            plain::front(figure, piece);
            screens::on_top(figure, piece);
        }
        Drawn::Screen => screens::hung(figure, piece),
        Drawn::Lamp => slender::lamp(figure, piece),
        Drawn::Plant => slender::plant(figure, piece),
        Drawn::Plain => plain::solid(figure, piece),
    }
}
