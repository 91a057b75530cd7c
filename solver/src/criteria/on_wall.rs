//! What a wall holds, with where it lies on the plan.

use elbowroom_model::{Brief, ItemId, ItemKind, LeadsTo, Point, WallItem, Window};

use super::one_or_more::OneOrMore;
use super::sight::Target;

/// Something that a wall holds, and its place on the plan.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct OnWall<'a> {
    pub(super) id: ItemId,
    pub(super) item: &'a WallItem,
    /// Its ends, as one faces it from inside.
    pub(super) left: Point,
    pub(super) right: Point,
    /// Unit vector along its wall, from left to right.
    pub(super) along: Point,
    /// Unit vector into the room.
    pub(super) inward: Point,
}

impl<'a> OnWall<'a> {
    /// The item as it lies; `None` where the room has no such item.
    pub(super) fn of(brief: &'a Brief, id: ItemId) -> Option<Self> {
        let item = brief.room.item(id)?;
        let wall = brief.room.wall(item.wall)?;
        let (left, right) = brief.room.ends(item)?;
        Some(Self { id, item, left, right, along: wall.along(), inward: wall.inward() })
    }

    /// All that the walls hold, in the file's order.
    pub(super) fn all(brief: &'a Brief) -> impl Iterator<Item = Self> {
        brief.room.items().filter_map(|(id, _)| Self::of(brief, id))
    }

    pub(super) fn middle(&self) -> Point {
        (self.left + self.right) * 0.5
    }
}

/// Something in a wall that one looks at, or through.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Outlook<'a> {
    pub(super) on_wall: OnWall<'a>,
    pub(super) target: Target,
}

impl<'a> Outlook<'a> {
    /// `None` for what one does not look through.
    pub(super) fn of(brief: &Brief, on_wall: OnWall<'a>) -> Option<Self> {
        Some(Self { on_wall, target: Target::of(brief, on_wall.item)? })
    }
}

/// The ways in; `None` where there are none.
pub(super) fn entrances(brief: &Brief) -> Option<OneOrMore<Outlook<'_>>> {
    let is_entrance = |on_wall: &OnWall| on_wall.item.kind.leads_to().is_some_and(LeadsTo::is_entrance);
    let ways_in = OnWall::all(brief).filter(is_entrance);
    OneOrMore::of(ways_in.filter_map(|on_wall| Outlook::of(brief, on_wall)))
}

/// The windows.
pub(super) fn windows(brief: &Brief) -> impl Iterator<Item = (Outlook<'_>, &Window)> {
    OnWall::all(brief).filter_map(|on_wall| {
        let ItemKind::Window(window) = &on_wall.item.kind else { return None };
        Some((Outlook::of(brief, on_wall)?, window))
    })
}
