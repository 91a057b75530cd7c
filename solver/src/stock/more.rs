//! What one more piece would bring: of which kind, and how large.

use elbowroom_model::listing::{ListedPiece, Section};
use elbowroom_model::{Dimension, Hand, PieceKind};

use super::assign::{Solved, solve};
use super::fit::{Stage, stages};
use super::statement::{Refusals, Statement};
use super::tolerance::{ROUNDING, STEP};
use super::{Asked, Asking, Assignment, By, Owned, Proven};
use crate::Size;
use crate::way_in::of_a_list;

/// Most pieces that are tried: each one is an assignment of its own.
const MOST_TRIED: usize = 100;
/// Each try may cost this part of what all of them may: a try that is hard leaves something for the others.
const SHARE: u64 = 16;
/// One more piece, and what it would bring.
#[derive(Debug, Clone, PartialEq)]
pub struct OneMore {
    /// Its kind.
    pub kind: PieceKind,
    /// Width, return, depth at most, mm; the return is a corner sofa's.
    pub width: f64,
    /// The row of the stock that it would be one more of; `None`: any piece of these sizes.
    pub like: Option<usize>,
    /// A corner sofa's.
    pub return_length: Option<f64>,
    /// Away from its back.
    pub depth: f64,
    /// What it is at least, where it would stand; `None` where it would be one more of a row of the stock.
    pub least: Option<Size>,
    /// The hand, where only one of them helps.
    pub hand: Option<Hand>,
    /// Must-haves more than there can be without it, those of the first priority first.
    pub must: Vec<i64>,
    /// Points more than there can be without it.
    pub points: i64,
}

/// What was tried and what of it would bring most.
#[derive(Debug, Clone, PartialEq)]
pub struct Tried {
    /// The best; `None` where no piece would bring anything.
    pub best: Option<OneMore>,
    /// Pieces tried.
    pub tried: usize,
    /// Pieces that might have been tried: where one thing is short, the largest that fit; where several alike are, one
    /// more of each row of the stock that fits.
    pub of: usize,
}

/// A piece that may be tried.
struct Try {
    /// Must-haves before the rest, and of each those of the first priority.
    rank: (bool, u32),
    piece: ListedPiece,
    like: Option<usize>,
}

/// The piece that would bring most beside `found`, among those that are as large as fits where something is short, and
/// those that would make up a pair. Tries end when they cost `work` together, in the unit of
/// [`Whole::solve`](crate::program::whole::Whole::solve).
#[must_use]
pub fn more(rooms: &[Asking], stock: &[Owned], found: &Assignment, work: u64) -> Tried {
    let tries = tries(rooms, stock, found);
    let (mut best, mut tried, mut spent): (Option<OneMore>, _, _) = (None, 0, 0);
    for one in &tries {
        if tried >= MOST_TRIED || spent >= work {
            break;
        }
        let mut with = stock.to_vec();
        match one.like.and_then(|row| with.get_mut(row)) {
            Some(owned) => owned.piece.count += 1,
            None => with.push(Owned { piece: one.piece.clone(), away: Vec::new() }),
        }
        let stated = Statement::of(rooms, &with, Refusals::All);
        let solved = solve(rooms, &stated, &stated.as_found(found), work / SHARE);
        (tried, spent) = (tried + 1, spent + solved.work);
        let least = match one.like {
            Some(_) => None,
            None => least(rooms, stock.len(), one.piece.kind, &stated, &solved),
        };
        let brings = OneMore { least, ..gained(one, &solved, found) };
        let key = |one: &OneMore| (one.must.clone(), one.points);
        if brings.points > 0 || brings.must.iter().any(|more| *more > 0) {
            best = match best {
                Some(best) if key(&best) >= key(&brings) => Some(best),
                _ => Some(brings),
            };
        }
    }
    Tried { best, tried, of: tries.len() }
}

/// What may be tried: must-haves before the rest, and of each the smaller sizes first, which fit in more rooms.
fn tries(rooms: &[Asking], stock: &[Owned], found: &Assignment) -> Vec<Try> {
    let mut tries: Vec<Try> = Vec::new();
    for (asking, furnished) in rooms.iter().zip(&found.rooms) {
        for (asked, fulfilled) in asking.asked().iter().zip(&furnished.asked) {
            if matches!(fulfilled.by, By::Stock { .. } | By::NotStaged) {
                continue;
            }
            let rank = (!fulfilled.asked.must, asking.priority);
            let each: Vec<(ListedPiece, Option<usize>)> = if asked.pieces.len() > 1 {
                let fits = |(row, owned): &(usize, &Owned)| {
                    stages(&asking.room).any(|stage| stage.takes(asked, *row, &owned.piece))
                };
                let rows = stock.iter().enumerate().filter(fits);
                rows.map(|(row, owned)| (owned.piece.clone(), Some(row))).collect()
            } else {
                let largest = stages(&asking.room).filter_map(|stage| largest(asking, asked, &stage));
                largest.map(|piece| (piece, None)).collect()
            };
            for (piece, like) in each {
                match tries.iter_mut().find(|one| one.like == like && same(&one.piece, &piece)) {
                    Some(known) => known.rank = known.rank.min(rank),
                    None => tries.push(Try { rank, piece, like }),
                }
            }
        }
    }
    let area = |one: &Try| one.piece.width * one.piece.depth;
    tries.sort_by(|one, other| one.rank.cmp(&other.rank).then(area(one).total_cmp(&area(other))));
    tries
}

/// The largest piece that fits where `asked` is short, as one can shop by it; `None` where that cannot be carried in.
fn largest(asking: &Asking, asked: &Asked, stage: &Stage<'_>) -> Option<ListedPiece> {
    let (piece, sizes) = (stage.piece(asked)?, stage.sizes_of(asked)?);
    let down = |dimension: Dimension| {
        let (range, size) = (piece.range(dimension)?, sizes.get(dimension)?.together);
        let stepped = ((size + ROUNDING) / STEP).floor() * STEP;
        Some(if stepped >= range.least { stepped } else { size })
    };
    let hand = stage.option.choices.hand;
    let largest = ListedPiece {
        line: 0,
        name: String::new(),
        kind: piece.kind,
        width: down(Dimension::Width)?,
        depth: down(Dimension::Depth)?,
        return_length: piece.return_length.and_then(|_| down(Dimension::Return)),
        second_return: piece.second_return.and_then(|_| down(Dimension::SecondReturn)),
        return_depth: piece.return_depth.and_then(|_| down(Dimension::ReturnDepth)),
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
        section: Section::default(),
        parts: Vec::new(),
        more: Vec::new(),
    };
    let way = asking.room.way.as_ref();
    way.is_none_or(|way| of_a_list(way, &largest, piece.own_height()).carried.gets_in).then_some(largest)
}

/// What the row of the stock, of this kind, is at least where it stands: what is asked for there.
fn least(rooms: &[Asking], row: usize, kind: PieceKind, stated: &Statement, solved: &Solved) -> Option<Size> {
    let mut used = stated.uses.iter().zip(&solved.point).filter(|(it, is_in)| it.row == row && **is_in);
    let (place, _) = used.next()?;
    let asking = rooms.get(place.room)?;
    let (piece, _) = asking.room.piece_of(&asking.asked().get(place.asked)?.pieces, kind)?;
    let least = |dimension: Dimension| piece.range(dimension).map(|range| range.least);
    Some(Size {
        width: piece.width.least,
        return_length: least(Dimension::Return),
        second_return: least(Dimension::SecondReturn),
        depth: piece.depth.least,
        return_depth: least(Dimension::ReturnDepth),
    })
}

fn same(one: &ListedPiece, other: &ListedPiece) -> bool {
    one.kind == other.kind
        && (one.width, one.depth, one.return_length) == (other.width, other.depth, other.return_length)
        && one.hands == other.hands
}

/// What is gained over what there can be without the piece. Where `found` is not proven, what it lacks may only not have
/// been found, and counts for nothing.
fn gained(Try { piece, like, .. }: &Try, solved: &Solved, found: &Assignment) -> OneMore {
    let proven = found.is_proven();
    let certain = |now: Proven, was: Proven| {
        let more = now.found - was.at_most;
        if proven { more } else { more.max(0) }
    };
    let must = solved.must.iter().zip(&found.must).map(|(now, was)| certain(now.count, was.count));
    OneMore {
        kind: piece.kind,
        width: piece.width,
        like: *like,
        return_length: piece.return_length,
        depth: piece.depth,
        least: None,
        hand: piece.hands.first().copied().filter(|_| piece.hands.len() == 1),
        must: must.collect(),
        points: certain(solved.points, found.points),
    }
}
