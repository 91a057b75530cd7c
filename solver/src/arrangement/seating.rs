//! Where the main seat's back goes, which way it faces, and which hand it has.

use elbowroom_model::{Hand, Piece, Point, WallId};

use super::direction::alike;
use super::stand::Choices;
use super::tolerance::ROUNDING;
use crate::site::{Site, SiteWall};

/// One place for the main seat.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Seating {
    /// The wall behind it; `None`: it stands free.
    pub(super) back: Option<WallId>,
    /// The wall that a free-standing seat looks at straight.
    pub(super) faced: Option<WallId>,
    /// Unit vector that it faces.
    pub(super) facing: Point,
    /// Hand of a corner sofa.
    pub(super) hand: Option<Hand>,
}

impl Seating {
    /// Unit vector that the return of a corner sofa faces: toward the other end of the main run.
    pub(super) fn return_facing(&self) -> Option<Point> {
        self.hand.map(|hand| match hand {
            Hand::Left => self.facing.right(),
            Hand::Right => self.facing.left(),
        })
    }
}

impl Choices {
    /// Whether the main seat is put alike: back to the same wall, or free and facing the same way, with the same hand.
    #[must_use]
    pub fn seat_as(&self, other: &Self) -> bool {
        self.seat_back == other.seat_back && self.hand == other.hand && alike(self.facing, other.facing)
    }
}

/// With its back to each wall and each hand it may have.
pub(super) fn at_walls(site: &Site, seat: &Piece) -> Vec<Seating> {
    let at = |wall: &SiteWall, hand| Seating { back: Some(wall.id), faced: None, facing: wall.inward, hand };
    site.walls.iter().flat_map(|wall| hands(seat).into_iter().map(move |hand| at(wall, hand))).collect()
}

/// Free-standing, looking straight at `wall`, with each hand it may have.
pub(super) fn free_before(wall: &SiteWall, seat: &Piece) -> Vec<Seating> {
    let free = |hand| Seating { back: None, faced: Some(wall.id), facing: -wall.inward, hand };
    hands(seat).into_iter().map(free).collect()
}

/// One wall for each way that walls run: of those that look the same way the one with the deepest room before it.
pub(super) fn ways_to_look(site: &Site, depth_before: impl Fn(WallId) -> f64) -> Vec<&SiteWall> {
    let mut ways: Vec<&SiteWall> = Vec::new();
    for wall in &site.walls {
        match ways.iter_mut().find(|way| alike(way.inward, wall.inward)) {
            Some(way) if depth_before(wall.id) > depth_before(way.id) + ROUNDING => *way = wall,
            Some(_) => {}
            None => ways.push(wall),
        }
    }
    ways
}

fn hands(seat: &Piece) -> Vec<Option<Hand>> {
    match seat.hands.as_slice() {
        [] => vec![None],
        hands => hands.iter().copied().map(Some).collect(),
    }
}
