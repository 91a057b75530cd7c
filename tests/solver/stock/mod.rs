//! What must hold of the assignment of one stock to many rooms: it equals an enumeration on small cases, keeps every
//! day's count, and proves what it says on large ones.

mod by_fit;
mod enumeration;
#[cfg(feature = "highs")]
mod general;
mod laid_out;
mod large;
mod moves;
mod offered;
mod planned;
mod stand_ins;
mod yes_and_no;

use elbowroom_model::listing::{ListedPiece, Section};
use elbowroom_model::{Hand, PieceId, PieceKind};
use elbowroom_solver::Limits;
use elbowroom_solver::answer::{Answer, DimensionRange, RankedOption};
use elbowroom_solver::stock::{Asking, Away, Days, Owned, room_for};

use crate::support::ranked::brief_of;
use crate::support::varied::{Draw, varied};

/// A piece of the stock, mm.
fn owned(name: &str, kind: PieceKind, (width, return_length, depth): (f64, Option<f64>, f64), count: u32) -> Owned {
    let piece = ListedPiece {
        line: 1,
        name: name.to_owned(),
        kind,
        width,
        depth,
        return_length,
        second_return: None,
        return_depth: None,
        height: None,
        hands: Vec::new(),
        chaise: None,
        screen: None,
        seats: None,
        price: None,
        count,
        score: None,
        legs_off: None,
        diagonal_depth: None,
        section: Section::default(),
        parts: Vec::new(),
        more: Vec::new(),
    };
    Owned { piece, away: Vec::new() }
}

/// Varied room `number`, solved, asking for its needed pieces on `days`.
fn asking(number: u64, days: Days, priority: u32) -> Asking {
    asking_for(&varied(number), days, priority)
}

/// The room of a scenario, solved, asking for its needed pieces on `days`.
fn asking_for(text: &str, days: Days, priority: u32) -> Asking {
    let brief = brief_of(text);
    let room = room_for(&brief, &[], &Limits { shown: 0, ..Limits::default() }).into();
    let must = brief.pieces().filter(|(_, piece)| piece.needed).map(|(id, _)| id).collect();
    Asking { room, days, priority, must }
}

/// A drawn piece of the stock: sizes round what rooms ask for, some of them out for a while.
fn drawn(draw: &mut Draw, place: usize) -> Owned {
    let kinds =
        [PieceKind::Sofa, PieceKind::CornerSofa, PieceKind::MediaUnit, PieceKind::CoffeeTable, PieceKind::Bookcase];
    let kind = kinds[draw.from(0, 4) as usize];
    let mut size = |low, high| draw.from(low, high) as f64 * 10.0;
    let sizes = match kind {
        PieceKind::Sofa => (size(150, 260), None, size(80, 105)),
        PieceKind::CornerSofa => (size(200, 290), Some(size(150, 230)), size(90, 100)),
        PieceKind::MediaUnit => (size(110, 240), None, size(35, 60)),
        PieceKind::CoffeeTable => (size(60, 150), None, size(40, 90)),
        _ => (size(60, 150), None, size(25, 40)),
    };
    let mut one = owned(&format!("piece {place}"), kind, sizes, draw.from(1, 2) as u32);
    if draw.one_in(3) {
        one.piece.score = Some(draw.from(0, 100) as f64);
    }
    if kind == PieceKind::CornerSofa && draw.one_in(2) {
        one.piece.hands = vec![if draw.one_in(2) { Hand::Left } else { Hand::Right }];
    }
    if draw.one_in(4) {
        let from = draw.from(0, 20) as i32;
        one.away.push(Away { days: Days { from, to: from + draw.from(0, 8) as i32 }, count: 1 });
    }
    one
}

/// Whether a piece may be what is asked for at `place` in `option`: sizes from the least asked to the most together, and
/// the option's hand. Written from the result format alone.
fn may_be((answer, option): (&Answer, &RankedOption), id: PieceId, owned: &Owned) -> bool {
    let piece = answer.asked.piece(id).unwrap();
    let Some(found) = option.pieces(&answer.brief).find(|found| found.piece.name == piece.name) else { return false };
    let holds = |range: DimensionRange, size: f64| range.least - 1e-6 <= size && size <= range.together + 1e-6;
    let of_return = match (found.sizes.return_length, owned.piece.return_length) {
        (Some(range), Some(size)) => holds(range, size),
        (None, None) => true,
        _ => false,
    };
    piece.kind == owned.piece.kind
        && holds(found.sizes.width, owned.piece.width)
        && holds(found.sizes.depth, owned.piece.depth)
        && of_return
        && (owned.piece.hands.is_empty() || option.choices.hand.is_none_or(|hand| owned.piece.hands.contains(&hand)))
}
