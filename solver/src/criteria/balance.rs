//! Balance: what is centred, what is in proportion, and whether the room leans to one side.
//!
//! Rests on common practice alone: a sofa of about two thirds of its wall, a table of half to two thirds of the sofa.

use elbowroom_model::{Brief, ItemId, ItemKind, PieceId, PieceKind, Point, WallId, ring};

use super::criteria_context::CriteriaContext;
use super::curve::{Curve, mean, weighted_mean};
use super::judged::{Absent, FigureUnit, Judged, Missing};
use super::on_wall::OnWall;
use super::tolerance::SAME_PLACE;
use super::yardstick::Yardstick;
use crate::best_by;
use crate::geometry::Convex;
use crate::layout::Placed;

/// How far the seat is off centre, mm, to score (ours, no source): a hand is hardly seen, a foot is.
const OFF_CENTRE: Curve = Curve(&[(0.0, 100.0), (50.0, 95.0), (300.0, 50.0), (1200.0, 0.0)]);

/// Length of the sofa over its wall's, to score: about two thirds (common practice).
const OF_WALL: Curve = Curve(&[(0.3, 30.0), (0.6, 100.0), (0.75, 100.0), (1.0, 50.0)]);

/// Length of the table over the sofa's, to score: half to two thirds (common practice).
const OF_SEAT: Curve = Curve(&[(0.2, 0.0), (0.5, 100.0), (0.667, 100.0), (1.1, 0.0)]);

/// How far the furniture's middle lies off the room's, over the half of the room, to score (ours, no source).
const LEANS: Curve = Curve(&[(0.0, 100.0), (0.15, 90.0), (0.6, 0.0)]);

/// What leans by more leaves a side of the room empty (ours, no source).
const EMPTY_SIDE: f64 = 0.3;

/// How far a seat's end runs past the rug, mm, to score (common practice, no source).
const PAST_RUG: Curve = Curve(&[(0.0, 100.0), (600.0, 0.0)]);

/// Cosine of the angle, 11 degrees, within which a seat counts as square to a wall or faced (ours, no source).
const SQUARE: f64 = 0.98;

/// What the parts count (ours, no source).
const CENTRE: f64 = 2.0;
const PROPORTION: f64 = 1.0;
const LEAN: f64 = 1.5;
const RUG: f64 = 0.5;

/// What balance is made of.
#[derive(Debug, Clone, PartialEq)]
pub struct BalanceFinding {
    /// The seat that is judged.
    pub seat: PieceId,
    /// What it comes nearest to be centred on; `None` where it stands free and nothing is square to it.
    pub centred: Option<Centred>,
    /// Its length over its wall's.
    pub of_wall: Option<f64>,
    /// Length of the coffee table over its own.
    pub table: Option<f64>,
    /// How far a seat's end runs past the rug on the mean, mm; `None` where none does.
    pub past_rug: Option<f64>,
    /// How far the middle of all that stands lies from the middle of the room, mm.
    pub lean: f64,
    /// One side of the room is left empty.
    pub empty_side: bool,
}

/// How a seat is centred.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Centred {
    /// How far its middle lies off the mark's, along its back, mm.
    pub off: f64,
    /// On what.
    pub on: Mark,
}

/// What a seat may be centred on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Mark {
    /// The wall at its back.
    Wall(WallId),
    /// A window or a fire behind it or before it.
    Item(ItemId),
    /// The piece that it faces.
    Piece(PieceId),
}

/// The yardstick. Where the seat stands free and nothing is square to it, it can be centred on nothing: the parts that
/// remain are weighed alone, and the figure is how far the middle of all that stands lies off the room's. Where no seat
/// stands there is nothing to balance.
pub(super) struct Balance;

impl Yardstick for Balance {
    type Subject<'a> = ();
    type Finding = BalanceFinding;

    /// A seat is always asked for.
    fn subject(_brief: &Brief) -> Result<(), Missing> {
        Ok(())
    }

    fn judge<'a>(context: &CriteriaContext<'a>, (): &()) -> Judged<Self::Finding> {
        let Some(group) = &context.group else { return Judged::absent(Absent::Seats) };
        let seat = group.main;
        let centred = centred(context, seat);
        let (lean, leaning) = lean(context);
        let of_wall = seat.at_wall.and_then(|wall| length_over_wall(context, seat, wall));
        let table = context.placed(PieceKind::stands_before_seat).next();
        let table = table.map(|(_, table)| table.size.width / seat.size.width);
        let past_rug = past_rug(context, seat);

        let lean_score = LEANS.at(leaning);
        let parts = [
            centred.map(|centred| (OFF_CENTRE.at(centred.off), CENTRE)),
            of_wall.map(|ratio| (OF_WALL.at(ratio), PROPORTION)),
            table.map(|ratio| (OF_SEAT.at(ratio), PROPORTION)),
            Some((lean_score, LEAN)),
            past_rug.map(|past| (PAST_RUG.at(past), RUG)),
        ];
        let score = weighted_mean(parts.into_iter().flatten()).unwrap_or(lean_score);
        let figure = centred.map_or(lean, |centred| centred.off);
        let finding = BalanceFinding {
            seat: seat.piece,
            centred,
            of_wall,
            table,
            past_rug: past_rug.filter(|past| *past > SAME_PLACE),
            lean,
            empty_side: leaning > EMPTY_SIDE,
        };
        Judged::new(score, figure, FigureUnit::Millimetres, finding)
    }
}

/// The nearest middle that the seat could be centred on, along its back.
fn centred(context: &CriteriaContext, seat: &Placed) -> Option<Centred> {
    let middle = middle_of(seat);
    let off = |mark: Point| (mark - middle).dot(seat.left()).abs();
    let all = marks(context, seat).into_iter().map(|(mark, on)| Centred { off: off(mark), on });
    best_by(all, |centred| -centred.off)
}

/// What a seat may be centred on, each with its middle: its wall, windows and fires behind or before it, the piece that
/// it faces.
fn marks(context: &CriteriaContext, seat: &Placed) -> Vec<(Point, Mark)> {
    let brief = context.brief();
    let is_across = |inward: Point| inward.dot(seat.facing).abs() > SQUARE;
    let own = brief.room.walls().filter(|(id, wall)| match seat.at_wall {
        Some(at) => *id == at,
        // Standing free, it is centred between the walls at its ends, as the wall behind it is.
        None => is_across(wall.inward()) && wall.inward().dot(seat.facing) > 0.0,
    });
    let walls = own.map(|(id, wall)| ((wall.start + wall.end) * 0.5, Mark::Wall(id)));
    let held = OnWall::all(brief).filter(|on_wall| {
        matches!(on_wall.item.kind, ItemKind::Window(_) | ItemKind::Fireplace(_)) && is_across(on_wall.inward)
    });
    let items = held.map(|on_wall| (on_wall.middle(), Mark::Item(on_wall.id)));
    let faced = context.in_room.layout.placed.iter().filter(|other| {
        let kind = brief.piece(other.piece).map(|piece| piece.kind);
        let faces = kind.is_some_and(|kind| kind.is_seat() || kind.carries_screen());
        faces && other.piece != seat.piece && other.facing.dot(seat.facing) < -SQUARE
    });
    let pieces = faced.map(|other| (middle_of(other), Mark::Piece(other.piece)));
    walls.chain(items).chain(pieces).collect()
}

/// The middle that the eye takes for a piece's own: of a corner sofa, of its front before the return.
fn middle_of(placed: &Placed) -> Point {
    let (left, right) = placed.front();
    (left + right) * 0.5
}

fn length_over_wall(context: &CriteriaContext, seat: &Placed, wall: WallId) -> Option<f64> {
    let length = context.brief().room.wall(wall)?.length();
    (length > 0.0).then(|| seat.size.width / length)
}

/// How far the middle of all that stands lies from the middle of the room, mm, and that over the half of the room across.
fn lean(context: &CriteriaContext) -> (f64, f64) {
    let room = &context.brief().room;
    let middle = ring::centre_of_area(&room.outline());
    let lean = middle_of_all(context).map_or(0.0, |all| (all - middle).norm());
    let half = room.area().max(0.0).sqrt() / 2.0;
    (lean, if half > 0.0 { lean / half } else { 0.0 })
}

/// The middle of the floor that is stood on.
fn middle_of_all(context: &CriteriaContext) -> Option<Point> {
    let stands = context
        .in_room
        .layout
        .placed
        .iter()
        .filter(|placed| context.brief().piece(placed.piece).is_some_and(|piece| !piece.kind.is_flat()));
    let weighed = |direction: fn(Point) -> f64| {
        let parts = stands.clone().flat_map(Placed::parts);
        weighted_mean(parts.map(|part: Convex| (direction(part.middle()), part.area())))
    };
    Some(Point::new(weighed(|point| point.x)?, weighed(|point| point.y)?))
}

/// How far the ends of the seat run past the rug, mm, on the mean; `None` without a rug.
fn past_rug(context: &CriteriaContext, seat: &Placed) -> Option<f64> {
    let (_, rug) = context.placed(PieceKind::is_flat).next()?;
    let (left, right) = seat.front();
    let ground = rug.main();
    let past = [left, right].map(|end| {
        let along = seat.left();
        let beyond = [end.dot(along) - ground.support(along), -end.dot(along) - ground.support(-along)];
        beyond[0].max(beyond[1]).max(0.0)
    });
    mean(past)
}
