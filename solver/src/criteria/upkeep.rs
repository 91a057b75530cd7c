//! Upkeep: radiators that heat the room, windows one can reach, sockets near what needs them, room to clean.
//!
//! The length of a cord rests on NEC 210.52; the rest is common practice.

use elbowroom_model::{Brief, ItemId, ItemKind, PieceId, PieceKind, Point, Socket, WallItem};

use super::criteria_context::CriteriaContext;
use super::curve::{Curve, mean, weighted_mean};
use super::judged::{FigureUnit, Judged, Missing};
use super::obstacles::Whose;
use super::on_wall::{OnWall, windows};
use super::tolerance::SAME_PLACE;
use super::yardstick::Yardstick;
use crate::best_by;
use crate::geometry::{Convex, Segment, gap, gap_to_segment};
use crate::layout::Placed;
use crate::routes::End;

/// Length of a cord, mm: 6 ft, NEC 210.52 (published).
const CORD: f64 = 1828.8;

/// The same to share of a socket: none reaches half as far again (ours, no source).
const REACHES: Curve = Curve(&[(CORD, 1.0), (2743.2, 0.0)]);

/// Distance from a radiator's front within which a tall back before it takes its heat, mm (common practice, no source).
const HEATS: Curve = Curve(&[(100.0, 1.0), (1000.0, 0.0)]);

/// How near one steps to a window to open it, and the depth of a low piece that one still reaches over, mm (common practice).
const ARM: f64 = 600.0;

/// Depth of what one reaches over, mm, to share: over something deeper the arm falls short little by little (ours, no source).
const REACHED_OVER: Curve = Curve(&[(ARM, 1.0), (900.0, 0.0)]);

/// What is left of a window one reaches over something low (ours, no source).
const OVER_LOW: f64 = 0.5;

/// Taller than this nothing is reached over, mm (common practice, no source).
const LOW: f64 = 900.0;

/// Gap behind a seat that a broom or a hose gets into, mm: to a foot (common practice).
const CLEANING: Curve = Curve(&[(0.0, 40.0), (50.0, 80.0), (304.8, 100.0)]);

/// What the parts count (ours, no source).
const RADIATORS: f64 = 1.5;
const WINDOWS: f64 = 1.5;
const SOCKETS: f64 = 1.5;
const GAPS: f64 = 0.5;

/// Distance of a cord from the line of a walk, mm, to what is left of its socket (ours, no source): across it one trips.
const UNDERFOOT: Curve = Curve(&[(0.0, 0.4), (450.0, 1.0)]);

/// A radiator or window of which less than this share is left in use is worth saying (ours, no source).
const IN_USE: f64 = 0.95;

/// What upkeep is made of.
#[derive(Debug, Clone, PartialEq)]
pub struct UpkeepFinding {
    /// Share of radiators, windows and sockets that stays in use, 0 to 1; 1 where there are none.
    pub in_use: f64,
    /// Radiators with a back before them that takes the heat.
    pub heat_taken: Vec<ItemId>,
    /// Windows that one does not step right up to.
    pub out_of_reach: Vec<ItemId>,
    /// What is wrong with cords.
    pub cords: Vec<CordFault>,
}

/// What is wrong with the cord of a piece.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum CordFault {
    /// The best socket is farther than a cord.
    FarFromSocket {
        /// The piece.
        piece: PieceId,
        /// Distance to the socket, mm.
        distance: f64,
        /// The piece floats free of the walls.
        floats: bool,
    },
    /// It would cross a main way.
    AcrossWay {
        /// The piece.
        piece: PieceId,
        /// Where the way leads.
        to: End,
    },
}

/// The yardstick. What a room has not got, and what needs no power, is not counted; with nothing else to keep the floor behind
/// the seats is.
pub(super) struct Upkeep;

impl Yardstick for Upkeep {
    type Subject<'a> = ();
    type Finding = UpkeepFinding;

    fn subject(brief: &Brief) -> Result<(), Missing> {
        let is_kept =
            |item: &WallItem| matches!(item.kind, ItemKind::Window(_) | ItemKind::Radiator(_) | ItemKind::Socket(_));
        if brief.room.items().any(|(_, item)| is_kept(item)) { Ok(()) } else { Err(Missing::NothingToKeep) }
    }

    fn judge<'a>(context: &CriteriaContext<'a>, (): &()) -> Judged<Self::Finding> {
        let radiators = radiators(context);
        let windows = reached_windows(context);
        let cords: Vec<Cord> = cords(context);
        let cleaning = mean(behind_seats(context).map(|gap| CLEANING.at(gap)));
        let free = mean(radiators.iter().map(|kept| kept.share));
        let open = mean(windows.iter().map(|kept| kept.share));
        let fed = mean(cords.iter().map(Cord::share));
        let things = [(free, RADIATORS), (open, WINDOWS), (fed, SOCKETS)];
        let in_use = weighted_mean(things.into_iter().filter_map(|(share, weight)| Some((share?, weight))));
        let parts = things.into_iter().filter_map(|(share, weight)| Some((100.0 * share?, weight)));
        let score = weighted_mean(parts.chain(cleaning.map(|score| (score, GAPS)))).unwrap_or(100.0);
        let finding = UpkeepFinding {
            in_use: in_use.unwrap_or(1.0),
            heat_taken: hampered(&radiators),
            out_of_reach: hampered(&windows),
            cords: cords.iter().filter_map(Cord::fault).collect(),
        };
        let figure = 100.0 * finding.in_use;
        Judged::new(score, figure, FigureUnit::Percent, finding)
    }
}

/// Something in a wall with the share of it that stays in use.
struct Kept {
    item: ItemId,
    share: f64,
}

fn hampered(all: &[Kept]) -> Vec<ItemId> {
    all.iter().filter(|kept| kept.share < IN_USE).map(|kept| kept.item).collect()
}

/// Each radiator with the share of it that heats the room.
fn radiators(context: &CriteriaContext) -> Vec<Kept> {
    let kept = OnWall::all(context.brief()).filter_map(|on_wall| {
        let ItemKind::Radiator(radiator) = &on_wall.item.kind else { return None };
        let taken = context
            .barriers
            .obstacles
            .iter()
            .filter(|obstacle| obstacle.height > radiator.height && !matches!(obstacle.whose, Whose::Body(_)));
        let taken: f64 = taken.map(|obstacle| stands_before(&on_wall, radiator.depth, &obstacle.shape)).sum();
        Some(Kept { item: on_wall.id, share: 1.0 - taken.min(1.0) })
    });
    kept.collect()
}

/// Share of an item's width that `shape` stands before, by how near it stands to what is `depth` deep.
fn stands_before(on_wall: &OnWall, depth: f64, shape: &Convex) -> f64 {
    let OnWall { item, left, along, inward, .. } = *on_wall;
    let (from, to) = (-shape.support(-along) - left.dot(along), shape.support(along) - left.dot(along));
    let near = -shape.support(-inward) - left.dot(inward) - depth;
    let share = (to.min(item.width) - from.max(0.0)).max(0.0) / item.width.max(1.0);
    if near < -SAME_PLACE { 0.0 } else { share * HEATS.at(near) }
}

/// Each window that opens with the share of it that one reaches.
fn reached_windows(context: &CriteriaContext) -> Vec<Kept> {
    let opening = windows(context.brief()).filter(|(_, window)| window.opens);
    opening.map(|(window, _)| Kept { item: window.on_wall.id, share: reach(context, &window.on_wall) }).collect()
}

/// Share of a window's width that one can step up to; what one reaches over something low and shallow counts half.
fn reach(context: &CriteriaContext, window: &OnWall) -> f64 {
    let OnWall { left, right, inward, .. } = *window;
    let out = inward * ARM;
    let before = Convex::counter_clockwise([left, right, right + out, left + out]);
    let taken = context.in_room.layout.placed.iter().filter_map(|placed| {
        let piece = context.brief().piece(placed.piece)?;
        if !piece.kind.is_solid() {
            return None;
        }
        let depth = placed.parts().iter().map(|part| part.support(inward) - left.dot(inward)).fold(0.0, f64::max);
        let is_low = piece.height_with_screen() <= LOW;
        let over = if is_low { OVER_LOW * REACHED_OVER.at(depth) } else { 0.0 };
        let covered: f64 = placed.parts().iter().map(|part| part.common_area(&before) / before.area().max(1.0)).sum();
        Some(covered * (1.0 - over))
    });
    1.0 - taken.sum::<f64>().min(1.0)
}

/// Clear floor behind each seat, at a wall or free, mm.
fn behind_seats(context: &CriteriaContext) -> impl Iterator<Item = f64> {
    let walls: Vec<Segment> = context.brief().room.walls().map(|(_, wall)| wall.into()).collect();
    context.placed(PieceKind::is_seat).filter_map(move |(_, seat)| behind(seat, &walls))
}

/// From the back of a seat to the nearest wall straight behind it, mm; `None` where there is none.
fn behind(seat: &Placed, walls: &[Segment]) -> Option<f64> {
    let (middle, half) = (seat.back_middle(), seat.size.width / 2.0);
    let along = |place: Point| (place - middle).dot(seat.left());
    let nearest = |wall: &Segment| {
        let (from, to) = (along(wall.start), along(wall.end));
        // What runs along an end of the seat is beside it.
        if from.max(to) < SAME_PLACE - half || from.min(to) > half - SAME_PLACE {
            return None;
        }
        // The wall's part before the width of the back; of one that runs straight away from it, both ends.
        let share =
            |side: f64| if (to - from).abs() > SAME_PLACE { (side - from) / (to - from) } else { side.signum() };
        let off = |share: f64| (middle - wall.at(share.clamp(0.0, 1.0))).dot(seat.facing);
        let (one, other) = (off(share(-half)), off(share(half)));
        (one.max(other) > -SAME_PLACE).then(|| one.min(other).max(0.0))
    };
    walls.iter().filter_map(nearest).min_by(f64::total_cmp)
}

/// What needs power, and a socket for it.
struct Cord {
    piece: PieceId,
    /// Distance to the socket, mm.
    length: f64,
    nearest_walk: Option<NearestWalk>,
    floats: bool,
}

/// The main walk whose line lies nearest to a cord.
#[derive(Clone, Copy)]
struct NearestWalk {
    /// How far aside of the cord, mm.
    aside: f64,
    to: End,
}

impl Cord {
    fn to(context: &CriteriaContext, placed: &Placed, socket: Point) -> Self {
        let gap = gap(&placed.main(), &Convex::counter_clockwise([socket]));
        let aside = |line: &[Point]| {
            let cord = Convex::counter_clockwise(gap.at);
            let legs = line.windows(2).map(|leg| gap_to_segment(&cord, Segment::new(leg[0], leg[1])));
            legs.map(|gap| gap.clear).fold(f64::INFINITY, f64::min)
        };
        let walks = context.main_lines().map(|(route, line)| NearestWalk { aside: aside(line), to: route.to });
        let nearest_walk = best_by(walks, |walk| -walk.aside);
        Self { piece: placed.piece, length: gap.clear, nearest_walk, floats: placed.at_wall.is_none() }
    }

    fn share(&self) -> f64 {
        REACHES.at(self.length) * self.nearest_walk.map_or(1.0, |walk| UNDERFOOT.at(walk.aside))
    }

    fn fault(&self) -> Option<CordFault> {
        let &Self { piece, length, nearest_walk, floats } = self;
        if length > CORD {
            return Some(CordFault::FarFromSocket { piece, distance: length, floats });
        }
        let walk = nearest_walk.filter(|walk| walk.aside < SAME_PLACE)?;
        Some(CordFault::AcrossWay { piece, to: walk.to })
    }
}

/// Media units and lamps, where sockets were measured.
fn cords(context: &CriteriaContext) -> Vec<Cord> {
    let is_power = |on_wall: &OnWall| matches!(on_wall.item.kind, ItemKind::Socket(Socket::Power));
    let sockets: Vec<Point> =
        OnWall::all(context.brief()).filter(is_power).map(|socket| out_of_wall(context, &socket)).collect();
    let fed = context.placed(|kind| kind.traits().needs_power);
    fed.filter_map(|(_, placed)| cord(context, placed, &sockets)).collect()
}

/// Where a socket is: on its wall, or on the chimney breast before it.
fn out_of_wall(context: &CriteriaContext, socket: &OnWall) -> Point {
    socket.left + socket.inward * context.brief().room.stands_out(socket.item)
}

/// The cord to the socket that serves a piece best.
fn cord(context: &CriteriaContext, placed: &Placed, sockets: &[Point]) -> Option<Cord> {
    best_by(sockets.iter().map(|socket| Cord::to(context, placed, *socket)), Cord::share)
}
