//! What a plan of an option shows beside its pieces: places worked out from its layout, none of them decided here.
//!
//! Zones on the floor, seat places and what they look at, the line walked on each route, the ends of each gap.

use elbowroom_model::{Brief, ItemId, ItemKind, Point, View};

use crate::chairs::{Chair, chairs};
use crate::criteria::obstacles::obstacles;
use crate::criteria::seat_places::{SITTING_EYE, SeatPlace, seat_places};
use crate::criteria::sight::{Barriers, Eye, Target, seen};
use crate::gaps;
use crate::layout::Layout;
use crate::leaf_gaps::{LeafGap, nearest};
use crate::routes::{Floor, LineWalked, NarrowPlace, demands};
use crate::site::{ClearZone, Landing, Site, Swing};

/// Chords of a quarter circle.
const CHORDS: usize = 12;
/// A window is looked at in so many slices.
const SLICES: usize = 12;

/// What a plan of one option shows beside its pieces.
#[derive(Debug, Clone, PartialEq)]
pub struct Plan {
    /// Floor that is kept free, in the order of the room's items.
    pub zones: Vec<Zone>,
    /// Where people sit.
    pub seats: Vec<Seat>,
    /// Chairs at dining tables that are to seat so many.
    pub chairs: Vec<Chair>,
    /// From seat places to the liked windows that they see.
    pub sight_lines: Vec<SightLine>,
    /// The line walked on each route, in the order of the option's routes.
    pub walks: Vec<LineWalked>,
    /// Where each route is narrowest between what stands along it, in the same order.
    pub narrow: Vec<Option<NarrowPlace>>,
    /// The two places between which each gap is measured, in the order of the option's gaps.
    pub gaps: Vec<[Point; 2]>,
    /// The piece nearest to the leaf of each door that swings into the room, in the order of the room's items.
    pub leaf_gaps: Vec<LeafGap>,
}

/// Floor that is kept free.
#[derive(Debug, Clone, PartialEq)]
pub struct Zone {
    /// Of which door, opening, radiator or fire.
    pub item: ItemId,
    /// Why.
    pub kind: ZoneKind,
    /// Its outline, plan coordinates, mm.
    pub ring: Vec<Point>,
}

/// Why floor is kept free.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum ZoneKind {
    /// A leaf sweeps it.
    Swing,
    /// It lies just inside a doorway.
    Landing,
    /// It lies before a heater or a fire.
    KeepClear,
}

/// A place for one to sit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Seat {
    /// The eye on the plan.
    pub at: Point,
    /// Unit vector that the sitter faces.
    pub facing: Point,
}

/// A line of sight.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SightLine {
    /// The eye.
    pub from: Point,
    /// The middle of what it sees of the window.
    pub to: Point,
    /// The window.
    pub window: ItemId,
}

/// Works out what a plan of `layout` shows.
#[must_use]
pub fn plan(brief: &Brief, layout: &Layout) -> Plan {
    let site = Site::of(brief);
    let seats = seat_places(brief, layout);
    let (walks, narrow) = walks(brief, &site, layout);
    let zones = zones(&site);
    Plan {
        leaf_gaps: leaf_gaps(brief, layout, &zones),
        zones,
        sight_lines: sight_lines(brief, &site, layout, &seats),
        seats: seats.iter().map(|place| Seat { at: place.eye, facing: place.facing }).collect(),
        chairs: chairs(brief, layout),
        walks,
        narrow,
        gaps: gaps::measured(brief, &site, layout).into_iter().map(|(_, at)| at).collect(),
    }
}

/// Floor that is kept free, in the order of the room's items.
pub(crate) fn zones(site: &Site) -> Vec<Zone> {
    let swings = site.swings.iter().filter(|swing| !swing.goes_on);
    let swings = swings.map(|swing| (swing.item, ZoneKind::Swing, swept(swing, site)));
    let folds = site.folds.iter().map(|fold| (fold.item, ZoneKind::Swing, fold.zone.corners().to_vec()));
    // The floor beside a latch holds the landing.
    let has_side = |landing: &&Landing| !site.latch_sides.iter().any(|side| side.item == landing.item);
    let landings = site.landings.iter().filter(has_side).chain(&site.latch_sides);
    let landings = landings.map(|landing| (landing.item, ZoneKind::Landing, landing.zone.corners().to_vec()));
    let clear = site.clear_zones.iter().map(|zone| (zone.item, ZoneKind::KeepClear, before(zone)));
    let mut zones: Vec<Zone> =
        swings.chain(folds).chain(landings).chain(clear).map(|(item, kind, ring)| Zone { item, kind, ring }).collect();
    zones.sort_by_key(|zone| (zone.item, zone.kind));
    zones
}

/// What a leaf sweeps, all of it.
fn swept(first: &Swing, site: &Site) -> Vec<Point> {
    let mut ring = vec![first.hinge];
    ring.extend(arc(first.hinge, first.along, first.inward, first.radius));
    let further = site.swings.iter().find(|swing| swing.goes_on && swing.item == first.item);
    let turned = |swing: &Swing, step: usize| swing.after(swing.turn * step as f64 / CHORDS as f64) * swing.radius;
    ring.extend(further.into_iter().flat_map(|swing| (1..=CHORDS).map(|step| swing.hinge + turned(swing, step))));
    ring
}

/// What is kept clear before a heater, or before a fire and round the ends of its front.
fn before(zone: &ClearZone) -> Vec<Point> {
    if !zone.fire {
        return zone.before().corners().to_vec();
    }
    let (left, right) = zone.front;
    let along = (right - left).unit().unwrap_or_default();
    let round_left = arc(left, -along, zone.inward, zone.reach);
    let round_right = arc(right, zone.inward, along, zone.reach);
    round_left.chain(round_right).collect()
}

/// A quarter circle from one direction to another that is square to it.
fn arc(centre: Point, from: Point, to: Point, radius: f64) -> impl Iterator<Item = Point> {
    (0..=CHORDS).map(move |step| {
        let (sine, cosine) = (std::f64::consts::FRAC_PI_2 * step as f64 / CHORDS as f64).sin_cos();
        centre + (from * cosine + to * sine) * radius
    })
}

fn sight_lines(brief: &Brief, site: &Site, layout: &Layout, seats: &[SeatPlace]) -> Vec<SightLine> {
    let barriers = Barriers::new(&brief.room.outline(), obstacles(brief, site, layout));
    let liked = brief.room.items().filter_map(|(id, item)| match &item.kind {
        ItemKind::Window(window) if window.view == View::Liked => Some((id, Target::of(brief, item)?)),
        _ => None,
    });
    let windows: Vec<(ItemId, Target)> = liked.collect();
    let mut lines = Vec::new();
    for seat in seats {
        for (window, target) in &windows {
            let to = middle_of_seen(seat, target, &barriers);
            lines.extend(to.map(|to| SightLine { from: seat.eye, to, window: *window }));
        }
    }
    lines
}

/// The middle of the widest stretch of a window that one who sits there sees at the height of the eye.
fn middle_of_seen(seat: &SeatPlace, target: &Target, barriers: &Barriers) -> Option<Point> {
    let eye = Eye { at: seat.eye, height: SITTING_EYE };
    let at = |slice: usize| target.left + (target.right - target.left) * (slice as f64 / SLICES as f64);
    let is_seen = |slice: &usize| {
        let part = Target { left: at(*slice), right: at(slice + 1), ..*target };
        let seen = seen(eye, Some(seat.facing), &part, barriers);
        let is_ahead = (part.middle() - eye.at).dot(seat.facing) > 0.0;
        is_ahead && seen.angle > 0.5 * seen.unhidden && seen.angle > 0.0
    };
    let slices: Vec<usize> = (0..SLICES).filter(is_seen).collect();
    let runs = slices.chunk_by(|one, next| one + 1 == *next);
    let widest = runs.fold(&[][..], |best: &[usize], run| if run.len() > best.len() { run } else { best });
    let (first, last) = (widest.first()?, widest.last()?);
    Some((at(*first) + at(last + 1)) * 0.5)
}

fn walks(brief: &Brief, site: &Site, layout: &Layout) -> (Vec<LineWalked>, Vec<Option<NarrowPlace>>) {
    let floor = Floor::of(brief, site);
    let walked = demands(brief, layout).into_iter().map(|demand| {
        let walk = floor.line_walked(brief, layout, &demand);
        let narrow = floor.narrow_place(brief, layout, &demand, &walk.line);
        (walk, narrow)
    });
    walked.unzip()
}

fn leaf_gaps(brief: &Brief, layout: &Layout, zones: &[Zone]) -> Vec<LeafGap> {
    let swept = zones.iter().filter(|zone| zone.kind == ZoneKind::Swing);
    swept.filter_map(|zone| nearest(brief, layout, zone.item, &zone.ring)).collect()
}
