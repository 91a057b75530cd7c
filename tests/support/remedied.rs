//! What a remedy says, done to the brief it was given for.

use elbowroom_model::{Brief, Clearance, Dimension, PieceId, SizeRange};
use elbowroom_solver::outcome::{Change, Remedy};

/// The brief with every change of the remedy made; `None` where one of them moves a wall of a room that is no rectangle.
pub(crate) fn remedied(brief: &Brief, remedy: &Remedy) -> Option<Brief> {
    remedy.changes.iter().try_fold(brief.clone(), changed)
}

fn changed(mut brief: Brief, change: &Change) -> Option<Brief> {
    if let Some(rule) = Clearance::ALL.iter().copied().find(|rule| rule.key() == change.what) {
        brief.rules = brief.rules.with(rule, change.to.expect("a figure"), "a remedy");
        return Some(brief);
    }
    if let Some(wall) = brief.room.walls.iter().position(|wall| wall.name == change.what) {
        return lengthened(brief, wall, change.by.expect("a figure"));
    }
    if let Some(place) = brief.pieces.iter().position(|piece| piece.name == change.what) {
        assert_eq!(change.to, None, "a piece by its bare name is left out");
        return Some(without(brief, place));
    }
    let (name, dimension) = change.what.rsplit_once('.').unwrap_or_else(|| panic!("what is {}?", change.what));
    let piece = brief.pieces.iter_mut().find(|piece| piece.name == name).expect("a piece of that name");
    let to = change.to.expect("a figure");
    let range = match dimension {
        "width" => &mut piece.width,
        "depth" => &mut piece.depth,
        "return" => piece.return_length.as_mut().expect("a return"),
        other => panic!("{other} is no dimension of {:?}", [Dimension::Width, Dimension::Return, Dimension::Depth]),
    };
    *range = SizeRange { least: range.least.min(to), usual: range.usual.min(to), most: range.most.min(to) };
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
