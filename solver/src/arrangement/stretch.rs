//! The longest stretch of a wall that a piece can stand along: what surely stops it there, and no more.
//!
//! A place on the wall is struck out only where a piece of the least depth meets the obstacle wherever its back stands
//! between its off-wall gap and a foot more. So what is struck out is out in every layout.

use elbowroom_model::{Brief, Clearance, FixedId, ItemId, ItemKind, Piece, Point, Rule};

use super::tolerance::{ALONG, ROUNDING};
use crate::geometry::Convex;
use crate::rules::{FOOT, PAST_ENDS};
use crate::site::{BodyId, Site, SiteWall, Swing, WallPlace};

/// Something that keeps pieces off the floor.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Keeper {
    shape: Convex,
    /// It stops only pieces taller than this, mm (windows).
    above: f64,
    /// What it is.
    pub(super) obstacle: Obstacle,
    /// The rule that keeps it free.
    pub(super) rule: Rule,
}

/// What keeps pieces off the floor.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Obstacle {
    /// The landing of a door.
    Landing(ItemId),
    /// The swing of a door's leaf.
    Swing(ItemId),
    /// Something on a wall, or what is kept clear before it.
    Item(ItemId),
    /// A fixed thing.
    Fixed(FixedId),
}

/// The longest free stretch of a wall.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Stretch<'a> {
    /// mm.
    pub(super) length: f64,
    /// What ends it; `None`: the wall's own ends and corners.
    pub(super) held_by: Option<&'a Keeper>,
}

/// All that stops pieces at walls, in the order of the room.
pub(super) fn obstacles(brief: &Brief, site: &Site) -> Vec<Keeper> {
    let always = |shape, obstacle, rule| Keeper { shape, above: f64::NEG_INFINITY, obstacle, rule };
    let mut obstacles = Vec::new();
    for landing in &site.landings {
        obstacles.push(always(landing.zone.clone(), Obstacle::Landing(landing.item), Clearance::DoorLanding.into()));
    }
    for side in &site.latch_sides {
        obstacles.push(always(side.zone.clone(), Obstacle::Landing(side.item), Clearance::LatchSide.into()));
    }
    for swing in &site.swings {
        obstacles.push(always(within_swing(swing), Obstacle::Swing(swing.item), Rule::DoorSwing));
    }
    for zone in &site.clear_zones {
        let rule = if zone.fire { Clearance::FireClear } else { Clearance::RadiatorClear };
        obstacles.push(always(zone.before(), Obstacle::Item(zone.item), rule.into()));
    }
    for body in &site.bodies {
        let obstacle = match body.id {
            BodyId::Item(item) => Obstacle::Item(item),
            BodyId::Fixed(fixed) => Obstacle::Fixed(fixed),
        };
        obstacles.push(always(body.shape.clone(), obstacle, Rule::Room));
    }
    obstacles.extend(windows(brief, site));
    obstacles
}

/// Before each window, over its width, for what is taller than its sill.
fn windows(brief: &Brief, site: &Site) -> Vec<Keeper> {
    let clear = brief.rules.get(Clearance::WindowFront);
    let zone = |(id, item): (ItemId, &elbowroom_model::WallItem)| {
        let ItemKind::Window(window) = &item.kind else { return None };
        let WallPlace { left, right, inward } = site.place_of(brief, id)?;
        let out = inward * clear;
        let shape = Convex::counter_clockwise([left, right, right + out, left + out]);
        Some(Keeper { shape, above: window.sill, obstacle: Obstacle::Item(id), rule: Clearance::WindowFront.into() })
    };
    brief.room.items().filter_map(zone).collect()
}

/// A polygon that lies within what a leaf sweeps.
fn within_swing(swing: &Swing) -> Convex {
    const CHORDS: u32 = 6;
    let arc = (0..=CHORDS).map(|step| {
        let turn = swing.turn * f64::from(step) / f64::from(CHORDS);
        swing.hinge + (swing.along * turn.cos() + swing.inward * turn.sin()) * swing.radius
    });
    Convex::counter_clockwise(std::iter::once(swing.hinge).chain(arc))
}

/// The longest stretch of `wall` that may be free for `piece`.
pub(super) fn longest<'a>(
    brief: &Brief,
    site: &Site,
    obstacles: &'a [Keeper],
    piece: &Piece,
    wall: &SiteWall,
) -> Stretch<'a> {
    let band = Band { wall, nearest: piece.off_wall + piece.depth.least, furthest: piece.off_wall + FOOT };
    let struck = band.all_struck(brief, site, obstacles, piece);
    let (from, to) = site.ends_along(brief, wall.id).unwrap_or_default();
    let origin = wall.start.dot(wall.along);
    let reached = band.ends(site);
    let ends = (reached.0.max(from - origin - PAST_ENDS), reached.1.min(to - origin + PAST_ENDS));
    let stretch = longest_between(&struck, ends, (wall.end - wall.start).dot(wall.along));
    // It may reach past either end of the wall, and no further past both together.
    let length = to - from + PAST_ENDS;
    if stretch.length > length { Stretch { length, held_by: None } } else { stretch }
}

/// The longest stretch of `wall` that is free as a tape measures it: for `piece` at its gap off the wall, past neither end.
pub(super) fn taped<'a>(
    brief: &Brief,
    site: &Site,
    obstacles: &'a [Keeper],
    piece: &Piece,
    wall: &SiteWall,
) -> Stretch<'a> {
    let band = Band { wall, nearest: piece.off_wall + piece.depth.least, furthest: piece.off_wall };
    let length = (wall.end - wall.start).dot(wall.along);
    // A wall that is moved in grows past an outside corner, where no tape finds more of it.
    let (from, to) = site.ends_along(brief, wall.id).unwrap_or_default();
    let origin = wall.start.dot(wall.along);
    let ends = ((from - origin).max(0.0), (to - origin).min(length));
    let mut struck = band.all_struck(brief, site, obstacles, piece);
    let is_beside = |from: f64, to: f64| to > ends.0 + ROUNDING && from < ends.1 - ROUNDING;
    struck.retain(|((from, to), by)| by.is_none() || is_beside(*from, *to));
    longest_between(&struck, ends, length)
}

/// Whether a piece may hang over what keeps others off: low things, and fires or their breasts.
fn hangs_over(brief: &Brief, piece: &Piece, keeper: &Keeper) -> bool {
    let is_low = |height: Option<f64>| height.is_some_and(|height| height <= piece.lower_edge());
    piece.kind.hangs()
        && match keeper.obstacle {
            Obstacle::Fixed(fixed) => is_low(brief.room.fixed_thing(fixed).and_then(|fixed| fixed.height)),
            Obstacle::Item(item) => {
                brief.room.item(item).is_some_and(|item| matches!(item.kind, ItemKind::Fireplace(_)))
            }
            Obstacle::Landing(_) | Obstacle::Swing(_) => false,
        }
}

/// Where along a wall a piece is stopped, and by what; `None`: another wall.
type Struck<'k> = ((f64, f64), Option<&'k Keeper>);

/// The longest gap between what is struck out (by growing start) that lies within `ends` and beside the wall.
fn longest_between<'a>(struck: &[Struck<'a>], (left, right): (f64, f64), length: f64) -> Stretch<'a> {
    let mut best = Stretch { length: 0.0, held_by: None };
    let (mut free_from, mut left_end) = (left, None);
    let end = std::iter::once(((right, right), None));
    for ((from, to), by) in struck.iter().copied().chain(end) {
        let (from, to) = (from.clamp(left, right), to.clamp(left, right));
        let beside = free_from < length - ROUNDING && from > ROUNDING;
        if beside && from - free_from > best.length {
            best = Stretch { length: from - free_from, held_by: by.or(left_end) };
        }
        if to >= free_from {
            (free_from, left_end) = (to, by);
        }
    }
    if best.length > 0.0 { best } else { Stretch { length: 0.0, held_by: widest(struck) } }
}

/// What strikes out most.
fn widest<'a>(struck: &[Struck<'a>]) -> Option<&'a Keeper> {
    let wide = |((from, to), _): &&Struck<'a>| to - from;
    struck.iter().max_by(|one, other| wide(one).total_cmp(&wide(other))).and_then(|(_, by)| *by)
}

/// The floor along a wall where a piece may stand: its front at `nearest` or further, its back at `furthest` or nearer.
struct Band<'a> {
    wall: &'a SiteWall,
    nearest: f64,
    furthest: f64,
}

impl Band<'_> {
    /// What stops the piece along the wall, by growing start, each with what does.
    fn all_struck<'k>(&self, brief: &Brief, site: &Site, obstacles: &'k [Keeper], piece: &Piece) -> Vec<Struck<'k>> {
        let height = piece.height_with_screen();
        let stopping =
            obstacles.iter().filter(|obstacle| height > obstacle.above && !hangs_over(brief, piece, obstacle));
        let shapes = stopping.filter_map(|obstacle| Some((self.struck_out(&obstacle.shape)?, Some(obstacle))));
        let corners = site.walls.iter().filter(|other| other.id != self.wall.id);
        let corners = corners.filter_map(|other| Some((self.cut(other.start, other.end)?, None)));
        let mut struck: Vec<_> = shapes.chain(corners).collect();
        struck.sort_by(|((one, _), _), ((other, _), _)| one.total_cmp(other));
        struck
    }

    fn along(&self, place: Point) -> f64 {
        (place - self.wall.start).dot(self.wall.along)
    }

    /// How far along the wall a piece can reach to either side: to the corner of a square room, some way past an obtuse
    /// corner since it may stand off the wall, as far as may be past an outside corner.
    fn ends(&self, site: &Site) -> (f64, f64) {
        let length = self.along(self.wall.end);
        let count = site.walls.len().max(1);
        let beside = |step: usize| site.walls.get((self.wall.id.0 + step) % count);
        let past = |next: Option<(&SiteWall, Point)>, outward: Point| {
            let Some((next, far_end)) = next else { return f64::INFINITY };
            let (recedes, rises) = (next.inward.dot(self.wall.inward), -next.inward.dot(outward));
            let stood_before = (far_end - self.wall.start).dot(self.wall.inward) <= self.furthest;
            if stood_before || rises <= ALONG { f64::INFINITY } else { recedes.max(0.0) / rises * self.furthest }
        };
        let right = past(beside(1).map(|next| (next, next.end)), self.wall.along);
        let left = past(beside(count - 1).map(|next| (next, next.start)), -self.wall.along);
        (-left, length + right)
    }

    /// Where along the wall a convex shape stops the piece at every distance from the wall.
    fn struck_out(&self, shape: &Convex) -> Option<(f64, f64)> {
        let (inward, start) = (self.wall.inward, self.wall.start.dot(self.wall.inward));
        // It reaches further than the piece's back can, and starts nearer than the piece's front must.
        let reaching = self.span(&shape.clipped(-inward, -(start + self.furthest))?);
        let starting = self.span(&shape.clipped(inward, start + self.nearest)?);
        let (from, to) = (reaching.0.max(starting.0), reaching.1.min(starting.1));
        (to - from > ROUNDING).then_some((from, to))
    }

    fn span(&self, shape: &Convex) -> (f64, f64) {
        let origin = self.wall.start.dot(self.wall.along);
        (-shape.support(-self.wall.along) - origin, shape.support(self.wall.along) - origin)
    }

    /// Where along the wall another wall cuts through the piece at every distance from the wall.
    fn cut(&self, start: Point, end: Point) -> Option<(f64, f64)> {
        let out = |place: Point| (place - self.wall.start).dot(self.wall.inward);
        let (from, to) = (out(start), out(end));
        let (low, high) = (from.min(to).max(self.furthest), from.max(to).min(self.nearest));
        if high - low <= ROUNDING {
            return None;
        }
        let at = |height: f64| self.along(start + (end - start) * ((height - from) / (to - from)));
        let (one, other) = (at(low), at(high));
        Some((one.min(other), one.max(other)))
    }
}
