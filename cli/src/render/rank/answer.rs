//! The answer: which wall the seating takes, which way it faces, which hand, how firm that is.

use elbowroom_model::Clearance;
use elbowroom_solver::outcome::{OptionFound, PieceFound};

use super::Told;
use super::facing::faced;
use crate::text::page::Page;
use crate::words::rank as words;

/// Where what a label says begins.
const HANG: usize = 12;

/// The head of the page and the first option's decisions.
pub(super) fn tell(page: &mut Page, told: &Told<'_>, best: &OptionFound) {
    page.paragraph(0, &words::summary(told.outcome, told.by));
    page.strong(&format!("1. {}", best.title));
    if let Some(seat) = main_seat(best) {
        page.labelled(3, words::SEATING, HANG, &seating(told, best, seat));
        if let Some(hand) = &best.choices.hand {
            page.labelled(3, words::HAND, HANG, &words::hand(hand, beside(told, seat, hand).as_deref()));
        }
    }
    if let Some(wall) = &best.choices.media_wall {
        page.labelled(3, words::SCREEN, HANG, &words::screen(wall, distance(told, best).as_deref()));
    }
    page.labelled(3, words::FIRM, HANG, &firm(told, best));
}

/// The seat that the arrangement is built about: the one whose place the decisions give.
pub(super) fn main_seat(option: &OptionFound) -> Option<&PieceFound> {
    let decided = |piece: &&PieceFound| {
        let turned = (piece.facing - option.choices.facing).rem_euclid(360.0);
        piece.kind.is_seat() && piece.at_wall == option.choices.seat_back && turned.min(360.0 - turned) < 1.0
    };
    let corner = |piece: &&PieceFound| option.choices.hand.is_none() || piece.kind.has_return();
    let mut found: Vec<&PieceFound> = option.pieces.iter().filter(decided).filter(corner).collect();
    found.sort_by(|a, b| b.size.width.total_cmp(&a.size.width));
    found.first().copied()
}

fn seating(told: &Told<'_>, best: &OptionFound, seat: &PieceFound) -> String {
    let faced = seat.parts.first().and_then(|main| faced(&told.brief.room, main, seat.facing));
    words::seating(best.choices.seat_back.as_deref(), faced.as_ref())
}

/// The wall that the return of a corner sofa is turned to.
fn beside(told: &Told<'_>, seat: &PieceFound, hand: &str) -> Option<String> {
    let turn = if hand == "left" { 90.0 } else { -90.0 };
    seat.parts.first().and_then(|main| faced(&told.brief.room, main, seat.facing + turn)).map(|faced| faced.wall)
}

/// From the front of the seat to the media unit.
fn distance(told: &Told<'_>, best: &OptionFound) -> Option<String> {
    let gap = best.gaps.iter().find(|gap| gap.rule == Clearance::ScreenToSeat)?;
    Some(told.tape(gap.clear))
}

fn firm(told: &Told<'_>, best: &OptionFound) -> String {
    let rival = best.turns_if.as_ref().and_then(|turn| {
        let rival = told.outcome.options.iter().find(|option| option.key == turn.then_first)?;
        Some((turn, told.brief.wishes.get(turn.criterion), rival))
    });
    words::firm(best, told.outcome.options.len(), rival)
}
