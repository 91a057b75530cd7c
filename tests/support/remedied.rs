//! What a remedy says, done to the brief it was given for.

use elbowroom_model::{Brief, Dimension, Only, PieceId, SizeRange};
use elbowroom_solver::refusal::{Change, Lever, Remedy};

/// The brief with every change of the remedy made; `None` where one of them moves a wall of a room that is no rectangle.
pub(crate) fn remedied(brief: &Brief, remedy: &Remedy) -> Option<Brief> {
    remedy.changes.iter().try_fold(brief.clone(), changed)
}

fn changed(mut brief: Brief, change: &Change) -> Option<Brief> {
    match change.lever {
        Lever::Clearance(rule) => brief.rules = brief.rules.with(rule, change.to, "a remedy"),
        Lever::Wall(wall) => return lengthened(brief, wall.0, change.to - change.from),
        Lever::Only(line) => brief.wanted.only.retain(|only| !only.is_about_the_same(&line)),
        Lever::Exclude(line) => brief.wanted.exclude.retain(|only| !only.is_about_the_same(&line)),
        Lever::LeaveOut(piece) => return Some(without(brief, piece.0)),
        Lever::Hang(piece, wall) => {
            brief.pieces[piece.0] = brief.pieces[piece.0].hung_instead().expect("sound tables");
            brief.only = vec![Only::MediaWall(Some(wall))];
        }
        Lever::Least(piece, dimension) | Lever::Raised(piece, dimension) | Lever::GetsIn(piece, dimension) => {
            let piece = &mut brief.pieces[piece.0];
            let range = match dimension {
                Dimension::Width => &mut piece.width,
                Dimension::Depth => &mut piece.depth,
                other => piece.range_mut(other).expect("a return"),
            };
            let SizeRange { least, usual, most } = *range;
            *range = match change.lever {
                Lever::Raised(..) => SizeRange { least: change.to, usual: usual.max(change.to), most },
                _ => SizeRange { least: least.min(change.to), usual: usual.min(change.to), most: most.min(change.to) },
            };
        }
    }
    Some(brief)
}

/// The pieces that are left keep what they share.
fn without(mut brief: Brief, place: usize) -> Brief {
    brief.pieces.remove(place);
    for piece in &mut brief.pieces {
        piece.alike = match piece.alike {
            Some(PieceId(first)) if first == place => None,
            Some(PieceId(first)) if first > place => Some(PieceId(first - 1)),
            alike => alike,
        };
    }
    brief
}

/// A rectangle with one pair of walls longer: what lies beyond the wall's right-hand end moves out.
fn lengthened(mut brief: Brief, wall: usize, by: f64) -> Option<Brief> {
    let walls = &mut brief.room.walls;
    if walls.len() != 4 {
        return None;
    }
    let shift = walls[wall].along() * by;
    let (next, opposite) = ((wall + 1) % 4, (wall + 2) % 4);
    walls[wall].end = walls[wall].end + shift;
    walls[next].start = walls[next].start + shift;
    walls[next].end = walls[next].end + shift;
    walls[opposite].start = walls[opposite].start + shift;
    for item in brief.room.items.iter_mut().filter(|item| item.wall.0 == opposite) {
        item.at += by;
    }
    Some(brief)
}
