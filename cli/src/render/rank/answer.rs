//! The answer: what of comfort is kept in part only, then which wall the seating takes, which way it faces, which hand, how firm that is.

use elbowroom_model::{Brief, Clearance, Hand};
use elbowroom_solver::answer::{OptionPiece, RankedOption, Thing};

use super::RankPage;
use super::facing::faced;
use crate::text::page::Page;
use crate::words::answer::{all_eased, title};
use crate::words::{rank as words, refused, short};

/// Where what a label says begins.
const HANG: usize = 12;

/// The head of the page and the first option's decisions.
pub(super) fn tell(page: &mut Page, told: &RankPage<'_>, best: &RankedOption) {
    let brief = told.brief();
    page.paragraph(0, &refused::summary(told.answer, told.limits.by));
    order(page, brief);
    page.strong(&format!("1. {}", title(brief, best)));
    for eased in all_eased(brief, best) {
        page.entry(3, &eased);
    }
    if let Some(seat) = main_seat(brief, best) {
        page.labelled(3, words::SEATING, HANG, &seating(brief, best, seat));
    }
    if let Some((hand, beside)) = hand(brief, best) {
        page.labelled(3, words::HAND, HANG, &words::hand(hand, beside));
    }
    if let Some(wall) = best.choices.media_wall {
        page.labelled(3, words::SCREEN, HANG, &words::screen(brief, wall, distance(told, best).as_deref()));
    }
    page.labelled(3, words::FIRM, HANG, &firm(told, best));
}

/// Which wall the seating takes and what it faces.
pub(crate) fn which_wall(brief: &Brief, best: &RankedOption) -> String {
    let seating = main_seat(brief, best).map(|seat| seating(brief, best, seat));
    seating.unwrap_or_default()
}

/// Which hand a corner sofa has, and what its return is turned to.
pub(crate) fn which_hand(brief: &Brief, best: &RankedOption) -> Option<String> {
    hand(brief, best).map(|(hand, beside)| short::which_hand(hand, beside))
}

fn hand<'a>(brief: &'a Brief, best: &RankedOption) -> Option<(Hand, Option<&'a str>)> {
    let hand = best.choices.hand?;
    Some((hand, beside(brief, main_seat(brief, best)?, hand)))
}

/// Whom the room is planned for, and what is noted of it.
pub(super) fn order(page: &mut Page, brief: &Brief) {
    for line in crate::words::order::lines(brief) {
        page.entry(0, &line);
    }
}

/// The seat that the arrangement is built about.
pub(super) fn main_seat<'a>(brief: &'a Brief, option: &'a RankedOption) -> Option<OptionPiece<'a>> {
    option.pieces(brief).find(|one| one.placed.piece == option.main_seat)
}

fn seating(brief: &Brief, best: &RankedOption, seat: OptionPiece<'_>) -> String {
    words::seating(brief, best.choices.seat_back, faced(&brief.room, &seat.main(), seat.facing()).as_ref())
}

/// The wall that the return of a corner sofa is turned to.
fn beside<'a>(brief: &'a Brief, seat: OptionPiece<'_>, hand: Hand) -> Option<&'a str> {
    let turn = match hand {
        Hand::Left => 90.0,
        Hand::Right => -90.0,
    };
    let faced = faced(&brief.room, &seat.main(), seat.facing() + turn)?;
    Some(Thing::Wall(faced.wall).name(brief))
}

/// From the front of the seat to the media unit.
fn distance(told: &RankPage<'_>, best: &RankedOption) -> Option<String> {
    let gap = best.gaps.iter().find(|gap| gap.rule == Clearance::ScreenToSeat)?;
    Some(told.tape(gap.clear))
}

fn firm(told: &RankPage<'_>, best: &RankedOption) -> String {
    let rival = best.turns_if.as_ref().and_then(|turn| {
        let rival = told.answer.keyed(&turn.then_first)?;
        Some((turn, told.brief().wishes.get(turn.criterion), rival))
    });
    words::firm(told.brief(), best, told.answer.options.len(), told.answer.undecided(), rival)
}
