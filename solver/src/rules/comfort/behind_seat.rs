//! Behind a seat there is a wall, a way, or a reason: a slot that is neither wall nor way is none of them.

use elbowroom_model::{Clearance, ItemId, ItemKind, Point, Rule, WallItem};

use super::figure::figure;
use crate::arrangement::{Role, face};
use crate::rules::held_off::{Holder, held_off};
use crate::rules::{
    Alternative, Cause, LayoutRule, Linear, LinearOutline, Pose, Requirement, RuleContext, With, separation,
};
use crate::site::{SiteWall, WallPlace};

/// What is behind a main seat that stands free lies so far off at least, mm (common practice, no source).
const FREE: f64 = 1000.0;

/// So much of a window or doorway behind a free seat is a reason for it, mm: half of it at most (common practice, no source).
const REASON: f64 = 400.0;

/// A piece that backs a seat stands within this of it, mm (common practice, no source).
const BACKING: f64 = 150.0;

/// What holds a seat off its wall may hold it off by so much more, mm: rounding.
const DRAWN_UP: f64 = 0.5;

/// A wall runs across behind a seat where the cosine between its inward normal and the seat's facing is more than this: what is
/// less aslant comes half a millimetre into the floor behind it at most.
const SLANT: f64 = 0.0005;

/// A wall that begins so far ahead of a seat's back is not behind it, mm: one that it touches is.
const PAST: f64 = 1.0;

/// What lies behind a seat.
#[derive(Debug)]
pub(super) struct BehindSeat;

impl LayoutRule for BehindSeat {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        let Some(near) = figure(context, Clearance::BehindSeat).filter(|_| pose.piece.kind.is_seat()) else {
            return Vec::new();
        };
        // A slot is as wide as the wall behind it was measured, and may be by so much wider.
        let near = (near - context.site.measured_within).max(0.0);
        let mut found = match pose.wall().and_then(|id| context.site.wall(id)) {
            Some(wall) => vec![at_wall(context, pose, wall, near)],
            None => free(context, pose, near),
        };
        found.extend(pose.returns_with_backs().flat_map(|run| behind_return(context, pose, run, near)));
        found
    }

    fn between(&self, context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        if figure(context, Clearance::BehindSeat).is_none() {
            return Vec::new();
        }
        let [a, b] = [(first, second), (second, first)].map(|(seat, other)| backed(context, seat, other));
        a.into_iter().chain(b).collect()
    }
}

/// At its wall, or as far off as a window, a heater or a fire behind it makes it stand.
fn at_wall(context: &RuleContext<'_>, pose: &Pose, wall: &SiteWall, near: f64) -> Requirement {
    let off = pose.anchor.along(wall.inward).shifted(-wall.start.dot(wall.inward));
    let middle = pose.middle_of_back().along(wall.along).shifted(-wall.start.dot(wall.along));
    let (low, high) = (middle.clone().plus(&pose.width(), -0.5), middle.plus(&pose.width(), 0.5));
    let gap = near.max(pose.piece.off_wall);
    let mut alternatives = vec![Alternative::of_rows(vec![off.at_most(gap)])];
    alternatives.extend(held_off_by(context, pose, wall, gap, [&off, &low, &high]));
    let cause = Cause { rule: Clearance::BehindSeat.into(), piece: pose.id, with: With::Wall(wall.id) };
    Requirement { cause, alternatives }
}

/// The back of a return, which nobody looks behind either: close to its wall, or clear of it.
fn behind_return(
    context: &RuleContext<'_>,
    pose: &Pose,
    (part, way): (&LinearOutline, Point),
    near: f64,
) -> Vec<Requirement> {
    let gap = near.max(pose.piece.off_wall);
    let passage = context.brief.rules.get(Clearance::Passage);
    let beside = context.site.walls.iter().filter(|wall| face(wall.inward, -way));
    let requirement = |wall: &SiteWall| {
        let reach = |towards: Point| part.reach(towards).shifted(-wall.start.dot(towards));
        let least = |towards: Point| Linear::default().plus(&reach(-towards), -1.0);
        let (off, low, high) = (least(wall.inward), least(wall.along), reach(wall.along));
        let length = (wall.end - wall.start).norm();
        let clear = [off.at_least(passage), off.at_most(-1.0), low.at_least(length), high.at_most(0.0)];
        let mut alternatives = vec![Alternative::of_rows(vec![off.at_most(gap)])];
        alternatives.extend(clear.map(|row| Alternative::of_rows(vec![row])));
        alternatives.extend(held_off_by(context, pose, wall, gap, [&off, &low, &high]));
        let cause = Cause { rule: Clearance::BehindSeat.into(), piece: pose.id, with: With::Wall(wall.id) };
        Requirement { cause, alternatives }
    };
    beside.map(requirement).collect()
}

/// The ways in which something on the wall holds a back off it by more than `gap`; `place`: how far off the back is, and
/// from where to where along the wall.
fn held_off_by(
    context: &RuleContext<'_>,
    pose: &Pose,
    wall: &SiteWall,
    gap: f64,
    place: [&Linear; 3],
) -> Vec<Alternative> {
    let [off, low, high] = place;
    let holders = held_off(context, pose, wall).into_iter().filter(|holder| holder.needs > gap);
    let way = |holder: Holder| {
        let behind = holder.is_behind(low, high);
        Alternative::of_rows(std::iter::once(off.at_most(holder.needs + DRAWN_UP)).chain(behind).collect())
    };
    holders.map(way).collect()
}

/// Free in the room: clear of the walls behind it.
fn free(context: &RuleContext<'_>, pose: &Pose, near: f64) -> Vec<Requirement> {
    let is_main = pose.role == Role::MainSeat;
    let passage = context.brief.rules.get(Clearance::Passage);
    let clear = if is_main { FREE.max(passage) } else { passage };
    let behind = context.site.walls.iter().filter(|wall| wall.inward.dot(pose.stand.facing) > SLANT);
    let requirement = |wall: &SiteWall| {
        let mut alternatives = clear_of(pose, wall, clear);
        if is_main {
            alternatives.extend(reasons(context, pose, wall));
        } else if pose.stand.turn.is_some() || !face(wall.inward, -pose.stand.facing) {
            alternatives.push(cornered(pose, wall, near));
        } else {
            let off = pose.anchor.along(wall.inward).shifted(-wall.start.dot(wall.inward));
            let gap = pose.piece.off_wall;
            alternatives.push(Alternative::of_rows(vec![off.at_least(gap), off.at_most(near.max(gap))]));
        }
        let cause = Cause { rule: Clearance::BehindSeat.into(), piece: pose.id, with: With::Wall(wall.id) };
        Requirement { cause, alternatives }
    };
    let mut found: Vec<Requirement> = behind.map(requirement).collect();
    let rule = Rule::Clearance(Clearance::BehindSeat);
    found.extend(context.off_bodies(&behind_back(pose, clear), pose.id, rule, 0.0, |body| body.shape.area() > 0.0));
    found
}

/// A seat that stands aslant to a wall, or may be turned, comes with one end of its back as near to it as that one looks
/// straight back: nobody looks into the corner behind it. Its own gap it keeps.
fn cornered(pose: &Pose, wall: &SiteWall, near: f64) -> Alternative {
    let nearest = pose.main().furthest(-wall.inward);
    let line = wall.start.dot(wall.inward);
    // The end of the back, and what lies straight behind it, are before the wall itself and not before its line alone.
    let aside = -pose.stand.facing.dot(wall.along) * near;
    let along = nearest.along(wall.along);
    let [from, to] = [wall.start, wall.end].map(|end| end.dot(wall.along));
    Alternative::of_rows(vec![
        behind_back(pose, near).reach(-wall.inward).at_least(-line),
        nearest.along(-wall.inward).at_most(-line - pose.piece.off_wall),
        along.at_least(from.max(from - aside)),
        along.at_most(to.min(to - aside)),
    ])
}

/// The floor so deep behind the back of a seat, over its width.
fn behind_back(pose: &Pose, depth: f64) -> LinearOutline {
    let (from, to) = pose.stretch();
    pose.block([&from, &to], [&Linear::constant(-depth), &Linear::default()])
}

/// The ways a wall keeps out of the floor behind a seat: that lies inside it, or the wall does not reach into it, as one
/// looks straight back.
fn clear_of(pose: &Pose, wall: &SiteWall, depth: f64) -> Vec<Alternative> {
    let zone = behind_back(pose, depth);
    let (facing, along) = (pose.stand.facing, pose.along());
    let furthest = |way: Point| wall.start.dot(way).max(wall.end.dot(way));
    let line = wall.start.dot(wall.inward);
    let mut rows = vec![
        zone.reach(-wall.inward).at_most(-line),
        pose.main().reach(wall.inward).at_most(line),
        zone.reach(along).at_most(-furthest(-along)),
        zone.reach(-along).at_most(-furthest(along)),
        zone.reach(facing).at_most(-furthest(-facing) - PAST),
    ];
    if !face(wall.inward, -facing) {
        rows.push(zone.reach(-facing).at_most(-furthest(facing)));
    }
    rows.into_iter().map(|row| Alternative::of_rows(vec![row])).collect()
}

/// A window or doorway of the wall behind the seat, near enough, with a way between.
fn reasons(context: &RuleContext<'_>, pose: &Pose, wall: &SiteWall) -> Vec<Alternative> {
    let (facing, along) = (pose.stand.facing, pose.along());
    let way = behind_back(pose, context.brief.rules.get(Clearance::Passage));
    let is_clear = way.reach(-wall.inward).at_most(-wall.start.dot(wall.inward));
    let items = context.brief.room.items().filter(|(_, item)| item.wall == wall.id);
    let reason = |(id, item): (ItemId, &WallItem)| {
        if !matches!(item.kind, ItemKind::Door(_) | ItemKind::Opening(_) | ItemKind::Window(_)) {
            return None;
        }
        let WallPlace { left, right, .. } = context.site.place_of(context.brief, id)?;
        let furthest = |way: Point| left.dot(way).max(right.dot(way));
        // As it is seen from the seat: of what lies aslant less.
        let common = REASON.min((right - left).norm() / 2.0) * wall.along.dot(along).abs();
        let rows = vec![
            pose.main().reach(along).at_least(common - furthest(-along)),
            pose.main().reach(-along).at_least(common - furthest(along)),
            pose.anchor.along(facing).at_most(FREE - furthest(-facing)),
            is_clear.clone(),
        ];
        Some(Alternative::of_rows(rows))
    };
    items.filter_map(reason).collect()
}

/// What stands behind a free seat leaves a way, or backs it.
fn backed(context: &RuleContext<'_>, seat: &Pose, other: &Pose) -> Vec<Requirement> {
    if !seat.piece.kind.is_seat() || seat.wall().is_some() || other.is_flat() {
        return Vec::new();
    }
    let passage = context.brief.rules.get(Clearance::Passage);
    let zone = behind_back(seat, passage);
    let cause = Cause { rule: Clearance::BehindSeat.into(), piece: seat.id, with: With::Piece(other.id) };
    let ways = |part: &LinearOutline| {
        let mut alternatives = separation::apart(&zone, part, 0.0);
        if is_square(seat, other) {
            alternatives.push(backing(seat, part));
        }
        alternatives
    };
    other.each_part(cause, ways).collect()
}

/// What stands aslant comes near with a corner, which backs nobody.
fn is_square(seat: &Pose, other: &Pose) -> bool {
    let (facing, way) = (seat.stand.facing, other.stand.facing);
    facing.dot(way).abs().min(facing.cross(way).abs()) <= SLANT
}

/// Close behind the seat, over the middle half of its width: so it backs half of it at least.
fn backing(seat: &Pose, part: &LinearOutline) -> Alternative {
    let (facing, along, middle) = (seat.stand.facing, seat.along(), seat.middle_of_back());
    let behind = seat.anchor.from(part.furthest(facing)).along(facing);
    let covers =
        |towards: Point| part.furthest(towards).from(&middle).along(towards).plus(&seat.width(), -0.25).at_least(0.0);
    Alternative::of_rows(vec![behind.at_least(0.0), behind.at_most(BACKING), covers(along), covers(-along)])
}
