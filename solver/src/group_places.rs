//! Where the groups of their own stand, in a word each: by a window, at a wall, free.

use elbowroom_model::{Brief, ItemId, ItemKind, Piece, Point, WallId};

use crate::geometry::Segment;
use crate::layout::{Layout, Placed};

/// A group whose middle is no further from a window stands by it, mm (common practice, no source).
const BY_WINDOW: f64 = 1800.0;

/// A group of its own, and where it stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GroupPlace<'a> {
    /// Its name in the file.
    pub group: &'a str,
    /// Where it stands.
    pub by: GroupBy,
}

/// Where a group stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum GroupBy {
    /// By a window.
    Window(ItemId),
    /// At a wall.
    Wall(WallId),
    /// At none.
    Free,
}

/// The groups that stand in a layout, in the order of the brief.
#[must_use]
pub fn group_places<'a>(brief: &'a Brief, layout: &Layout) -> Vec<GroupPlace<'a>> {
    let mut found: Vec<GroupPlace<'a>> = Vec::new();
    for piece in brief.pieces.iter().filter(|piece| piece.is_seat_apart()) {
        let Some(group) = piece.group.as_deref() else { continue };
        if found.iter().any(|known| known.group == group) {
            continue;
        }
        found.extend(by(brief, layout, group).map(|by| GroupPlace { group, by }));
    }
    found
}

fn by(brief: &Brief, layout: &Layout, group: &str) -> Option<GroupBy> {
    let is_seat = |piece: &Piece| piece.is_seat_apart() && piece.is_of_group(group);
    let seats = layout.placed.iter().filter(|placed| brief.piece(placed.piece).is_some_and(is_seat));
    let seats: Vec<&Placed> = seats.collect();
    let sum = seats.iter().fold(Point::default(), |sum, seat| sum + seat.main().middle());
    let middle = sum * (1.0 / seats.len().max(1) as f64);
    let first = seats.first()?;
    let windows = brief.room.items().filter(|(_, item)| matches!(item.kind, ItemKind::Window(_)));
    let off = |(id, item)| {
        let (left, right) = brief.room.ends(item)?;
        Some((id, Segment::new(left, right).distance_to(middle)))
    };
    let nearest = windows.filter_map(off).min_by(|one, other| one.1.total_cmp(&other.1));
    Some(match (nearest, first.at_wall) {
        (Some((window, off)), _) if off <= BY_WINDOW => GroupBy::Window(window),
        (_, Some(wall)) => GroupBy::Wall(wall),
        (_, None) => GroupBy::Free,
    })
}
