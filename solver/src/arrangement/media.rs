//! The wall of the media unit: opposite the main seat, or the one that a corner sofa's return faces.

use elbowroom_model::{Brief, WallId};

use super::cast::Cast;
use super::direction::walls_looking;
use super::seating::Seating;
use super::stand::Role;
use crate::site::{Site, SiteWall};

/// A place for the media unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct ScreenPlace {
    /// Its wall.
    pub(super) wall: WallId,
    /// [`Role::Screen`] or [`Role::ScreenBeside`].
    pub(super) role: Role,
}

/// The places of the media unit for one seating; `None` stands for no screen. Empty where one is needed and no wall
/// faces the seat.
pub(super) fn places(brief: &Brief, site: &Site, cast: &Cast, seating: &Seating) -> Vec<Option<ScreenPlace>> {
    let Some(screen) = cast.screen.and_then(|screen| brief.piece(screen)) else { return vec![None] };
    let opposite = opposite(site, seating).into_iter().map(|wall| ScreenPlace { wall, role: Role::Screen });
    let has_two_returns = brief.piece(cast.main).is_some_and(|seat| seat.second_return.is_some());
    let beside = if has_two_returns { Vec::new() } else { beside(site, seating) };
    let beside = beside.into_iter().map(|wall| ScreenPlace { wall, role: Role::ScreenBeside });
    let mut places: Vec<_> = opposite.chain(beside).map(Some).collect();
    if !screen.needed {
        places.push(None);
    }
    places
}

/// Walls that face the main seat and lie before it. A free-standing seat looks straight at its own.
fn opposite(site: &Site, seating: &Seating) -> Vec<WallId> {
    if let Some(faced) = seating.faced {
        return vec![faced];
    }
    let back = seating.back.and_then(|back| site.wall(back));
    let lies_before = |wall: &&SiteWall| back.is_none_or(|back| before(back, wall));
    walls_looking(site, -seating.facing).filter(lies_before).map(|wall| wall.id).collect()
}

/// Walls that face the return of a corner sofa: behind a second return nobody sees a screen.
fn beside(site: &Site, seating: &Seating) -> Vec<WallId> {
    let Some(facing) = seating.return_facing() else { return Vec::new() };
    walls_looking(site, -facing).map(|wall| wall.id).collect()
}

/// Whether some of `wall` lies before `back` and over its length, so that a seat along `back` can have it before it.
fn before(back: &SiteWall, wall: &SiteWall) -> bool {
    let out = |end: elbowroom_model::Point| (end - back.start).dot(back.inward);
    let along = |end: elbowroom_model::Point| (end - back.start).dot(back.along);
    let length = (back.end - back.start).dot(back.along);
    let (one, other) = (along(wall.start), along(wall.end));
    out(wall.start).max(out(wall.end)) > 0.0 && one.max(other) > 0.0 && one.min(other) < length
}
