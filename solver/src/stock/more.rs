//! What one more piece would bring: of which kind, and how large.

use elbowroom_model::listing::ListedPiece;
use elbowroom_model::{Dimension, Hand};
use serde::Serialize;

use super::assign::{Solved, solve};
use super::statement::Statement;
use super::{Asking, Assignment, By, Owned};
use crate::outcome::OptionFound;

/// Most sizes that are tried: each one is an assignment of its own.
pub const MOST_TRIED: usize = 12;
/// Sizes are tried in steps of this, mm, rounded down: what one can shop by.
const STEP: f64 = 10.0;

/// One more piece, and what it would bring.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct OneMore {
    /// Its kind.
    pub kind: elbowroom_model::PieceKind,
    /// Width, return, depth at most, mm; the return is a corner sofa's.
    pub width: f64,
    /// A corner sofa's.
    #[serde(rename = "return")]
    pub return_length: Option<f64>,
    /// Away from its back.
    pub depth: f64,
    /// The hand, where only one of them helps.
    pub hand: Option<Hand>,
    /// Must-haves more, those of the first priority first.
    pub must: Vec<i64>,
    /// Points more.
    pub points: i64,
}

/// What was tried and what of it would bring most.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Tried {
    /// The best; `None` where no piece would bring anything.
    pub best: Option<OneMore>,
    /// Sizes tried.
    pub tried: usize,
    /// Sizes that might have been tried: the largest that fit where something is short.
    pub of: usize,
}

/// The piece that would bring most beside `found`, among those that are as large as fits where something is short.
#[must_use]
pub fn more(rooms: &[Asking], stock: &[Owned], found: &Assignment, nodes: usize) -> Tried {
    let mut sizes = Vec::new();
    for (asking, furnished) in rooms.iter().zip(&found.rooms) {
        for (asked, fulfilled) in asking.asked().iter().zip(&furnished.asked) {
            if matches!(fulfilled.by, By::Stock { .. }) || asked.places.len() > 1 {
                continue;
            }
            let rank = (!fulfilled.must, asking.priority);
            for option in &asking.options {
                let size = largest(asking, asked, option).map(|piece| (rank, piece));
                sizes.extend(
                    size.filter(|(_, piece)| !sizes.iter().any(|(_, other): &(_, ListedPiece)| same(other, piece))),
                );
            }
        }
    }
    // Must-haves before the rest, and of each the smaller sizes first: they fit in more rooms.
    sizes.sort_by(|(one, piece), (other, than)| {
        one.cmp(other).then((piece.width * piece.depth).total_cmp(&(than.width * than.depth)))
    });
    let of = sizes.len();
    let mut best: Option<OneMore> = None;
    for (_, piece) in sizes.into_iter().take(MOST_TRIED) {
        let mut with = stock.to_vec();
        with.push(Owned { piece: piece.clone(), away: Vec::new() });
        let solved = solve(rooms, &Statement::of(rooms, &with), nodes);
        let brings = gained(&piece, &solved, found);
        let key = |one: &OneMore| (one.must.clone(), one.points);
        if brings.points > 0 || brings.must.iter().any(|more| *more > 0) {
            best = match best {
                Some(best) if key(&best) >= key(&brings) => Some(best),
                _ => Some(brings),
            };
        }
    }
    Tried { best, tried: of.min(MOST_TRIED), of }
}

/// The largest piece that fits where `asked` is short, as one can shop by it.
fn largest(asking: &Asking, asked: &super::Asked, option: &OptionFound) -> Option<ListedPiece> {
    let piece = asking.piece(asked)?;
    let found = option.pieces.iter().find(|found| found.name == piece.name)?;
    let down = |dimension: Dimension| {
        let (range, size) = (piece.range(dimension)?, found.size.get(dimension)?);
        let stepped = ((size + 1e-6) / STEP).floor() * STEP;
        Some(if stepped >= range.least { stepped } else { size })
    };
    let hand = option.choices.hand.as_deref().map(|hand| if hand == "left" { Hand::Left } else { Hand::Right });
    Some(ListedPiece {
        line: 0,
        name: String::new(),
        kind: piece.kind,
        width: down(Dimension::Width)?,
        depth: down(Dimension::Depth)?,
        return_length: piece.return_length.and_then(|_| down(Dimension::Return)),
        height: None,
        hands: hand.filter(|_| piece.return_length.is_some()).into_iter().collect(),
        chaise: None,
        screen: None,
        seats: piece.seats,
        price: None,
        count: 1,
        score: None,
        legs_off: None,
        diagonal_depth: None,
        parts: Vec::new(),
        more: Vec::new(),
    })
}

fn same(one: &ListedPiece, other: &ListedPiece) -> bool {
    one.kind == other.kind
        && (one.width, one.depth, one.return_length) == (other.width, other.depth, other.return_length)
        && one.hands == other.hands
}

fn gained(piece: &ListedPiece, solved: &Solved, found: &Assignment) -> OneMore {
    let must = solved.must.iter().zip(&found.must).map(|(now, was)| now.count.found - was.count.found);
    OneMore {
        kind: piece.kind,
        width: piece.width,
        return_length: piece.return_length,
        depth: piece.depth,
        hand: piece.hands.first().copied(),
        must: must.collect(),
        points: solved.points.found - found.points.found,
    }
}
