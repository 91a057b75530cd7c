//! Upkeep: radiators that heat the room, windows one can reach, sockets near what needs them, room to clean.

use elbowroom_model::article::{capital, the};
use elbowroom_model::{Brief, Criterion, ItemKind, PieceId, Point, Socket, WallItem};

use super::Judgement;
use super::curve::{mean, through, weighted_mean};
use super::setting::{Setting, listed, windows};
use crate::best_by;
use crate::geometry::{Convex, Segment, gap, gap_to_segment};
use crate::layout::Placed;

const BASIS: &str = "NEC 210.52: no point of a wall over 6 ft from a socket (published); radiators free of tall backs, windows in \
                     reach over nothing deeper than 600 mm (common practice)";

/// Length of a cord, mm: 6 ft, NEC 210.52 (published); none reaches half as far again.
const CORD: [(f64, f64); 2] = [(1828.8, 1.0), (2743.2, 0.0)];

/// Distance from a radiator's front within which a tall back before it takes its heat, mm (common practice, no source).
const HEATS: [(f64, f64); 2] = [(100.0, 1.0), (1000.0, 0.0)];

/// How near one steps to a window to open it, and the depth of a low piece that one still reaches over, mm (common practice).
const ARM: f64 = 600.0;

/// What is left of a window one reaches over something low.
const OVER_LOW: f64 = 0.5;

/// Taller than this nothing is reached over, mm (common practice, no source).
const LOW: f64 = 900.0;

/// Gap behind a seat that a broom or a hose gets into, mm: to a foot (common practice).
const CLEANING: [(f64, f64); 3] = [(0.0, 40.0), (50.0, 80.0), (304.8, 100.0)];

/// What the parts count (ours, no source).
const RADIATORS: f64 = 1.5;
const WINDOWS: f64 = 1.5;
const SOCKETS: f64 = 1.5;
const GAPS: f64 = 0.5;

/// Distance of a cord from the line of a walk, mm, to what is left of its socket (ours, no source): across it one trips.
const UNDERFOOT: [(f64, f64); 2] = [(0.0, 0.4), (450.0, 1.0)];

pub(super) fn judge(setting: &Setting) -> Option<Judgement> {
    let radiators: Vec<(&WallItem, f64)> = radiators(setting);
    let windows: Vec<(&WallItem, f64)> = reached_windows(setting);
    let cords: Vec<Cord> = cords(setting);
    let cleaning = mean(seats_at_walls(setting).map(|gap| through(&CLEANING, gap)));
    let free = mean(radiators.iter().map(|(_, share)| *share));
    let open = mean(windows.iter().map(|(_, share)| *share));
    let fed = mean(cords.iter().map(Cord::share));
    let things = [(free, RADIATORS), (open, WINDOWS), (fed, SOCKETS)];
    let figure = weighted_mean(things.into_iter().filter_map(|(share, weight)| Some((share?, weight))));
    let parts = things.into_iter().filter_map(|(share, weight)| Some((100.0 * share?, weight)));
    let score = weighted_mean(parts.chain(cleaning.map(|score| (score, GAPS)))).unwrap_or(100.0);

    let hampered = |items: &[(&WallItem, f64)]| -> Vec<String> {
        items.iter().filter(|(_, share)| *share < 0.95).map(|(item, _)| item.name.clone()).collect()
    };
    let figure = 100.0 * figure.unwrap_or(1.0);
    let mut reason = format!("{figure:.0} % of radiators, windows and sockets stay in use");
    let blocked = hampered(&radiators);
    if !blocked.is_empty() {
        let before = if blocked.len() == 1 { "has" } else { "have" };
        reason +=
            &format!("; {} {before} a back before it that takes the heat", listed(blocked.iter().map(String::as_str)));
    }
    let far = hampered(&windows);
    if !far.is_empty() {
        reason += &format!("; one does not step right up to {}", listed(far.iter().map(String::as_str)));
    }
    reason += &cords.iter().filter_map(|cord| cord.reason(setting)).map(|told| format!("; {told}")).collect::<String>();
    Some(Judgement::new(Criterion::Upkeep, score, (figure, "percent"), capital(&reason) + ".", BASIS))
}

/// There is always something to keep.
pub(super) const fn left_out(_brief: &Brief) -> Option<String> {
    None
}

/// Each radiator with the share of it that heats the room.
fn radiators<'a>(setting: &Setting<'a>) -> Vec<(&'a WallItem, f64)> {
    let items = setting.brief().room.items.iter();
    items
        .filter_map(|item| {
            let ItemKind::Radiator(radiator) = &item.kind else { return None };
            let taken = setting.barriers.obstacles.iter().filter(|obstacle| {
                obstacle.height > radiator.height && !matches!(obstacle.whose, super::obstacles::Whose::Body(_))
            });
            let taken: f64 = taken.map(|obstacle| stands_before(setting, item, radiator.depth, &obstacle.shape)).sum();
            Some((item, 1.0 - taken.min(1.0)))
        })
        .collect()
}

/// Share of an item's width that `shape` stands before, by how near it stands.
fn stands_before(setting: &Setting, item: &WallItem, depth: f64, shape: &Convex) -> f64 {
    let room = &setting.brief().room;
    let (Some(wall), Some((left, _))) = (room.wall(item.wall), room.ends(item)) else { return 0.0 };
    let (along, inward) = (wall.along(), wall.inward());
    let (from, to) = (-shape.support(-along) - left.dot(along), shape.support(along) - left.dot(along));
    let near = -shape.support(-inward) - left.dot(inward) - depth;
    let share = (to.min(item.width) - from.max(0.0)).max(0.0) / item.width.max(1.0);
    if near < -1.0 { 0.0 } else { share * through(&HEATS, near) }
}

/// Each window that opens with the share of it that one reaches.
fn reached_windows<'a>(setting: &Setting<'a>) -> Vec<(&'a WallItem, f64)> {
    let opening = windows(setting.brief()).filter(|(_, window)| window.opens);
    opening.filter_map(|(item, _)| Some((item, reach(setting, item)?))).collect()
}

/// Share of a window's width that one can step up to; what one reaches over something low and shallow counts half.
fn reach(setting: &Setting, item: &WallItem) -> Option<f64> {
    let room = &setting.brief().room;
    let wall = room.wall(item.wall)?;
    let (left, right) = room.ends(item)?;
    let out = wall.inward() * ARM;
    let before = Convex::counter_clockwise([left, right, right + out, left + out]);
    let taken = setting.scene.layout.placed.iter().filter_map(|placed| {
        let piece = setting.brief().piece(placed.piece)?;
        if !piece.kind.is_solid() {
            return None;
        }
        let depth =
            placed.parts().iter().map(|part| part.support(wall.inward()) - left.dot(wall.inward())).fold(0.0, f64::max);
        let low = piece.height_with_screen() <= LOW;
        // Over something deeper the arm falls short little by little.
        let over = if low { OVER_LOW * through(&[(ARM, 1.0), (ARM + 300.0, 0.0)], depth) } else { 0.0 };
        let covered: f64 = placed.parts().iter().map(|part| part.common_area(&before) / before.area().max(1.0)).sum();
        Some(covered * (1.0 - over))
    });
    Some(1.0 - taken.sum::<f64>().min(1.0))
}

/// Gaps behind the seats that stand at a wall, mm.
fn seats_at_walls(setting: &Setting) -> impl Iterator<Item = f64> {
    let seats = setting
        .scene
        .layout
        .placed
        .iter()
        .filter(|placed| setting.brief().piece(placed.piece).is_some_and(|piece| piece.kind.is_seat()));
    seats.filter_map(|placed| {
        let wall = setting.brief().room.wall(placed.at_wall?)?;
        Some((placed.anchor - wall.start).dot(wall.inward()).max(0.0))
    })
}

/// What needs power, and a socket for it.
struct Cord {
    piece: PieceId,
    /// Distance to the socket, mm.
    length: f64,
    /// Distance from the nearest line of a main walk, mm, and the name of that walk's far end.
    underfoot: Option<(f64, String)>,
    floats: bool,
}

impl Cord {
    fn to(setting: &Setting, placed: &Placed, socket: Point) -> Self {
        let gap = gap(&placed.main(), &Convex::counter_clockwise([socket]));
        let aside = |line: &[Point]| {
            let legs = line
                .windows(2)
                .map(|leg| gap_to_segment(&Convex::counter_clockwise(gap.at), Segment::new(leg[0], leg[1])));
            legs.map(|gap| gap.clear).fold(f64::INFINITY, f64::min)
        };
        let walks = setting.main_lines().map(|(route, line)| (aside(line), route.to));
        let nearest = best_by(walks, |(aside, _)| -aside);
        let underfoot = nearest.map(|(aside, end)| (aside, end.name(setting.brief()).to_owned()));
        Self { piece: placed.piece, length: gap.clear, underfoot, floats: placed.at_wall.is_none() }
    }

    fn share(&self) -> f64 {
        let trips = self.underfoot.as_ref().map_or(1.0, |(aside, _)| through(&UNDERFOOT, *aside));
        through(&CORD, self.length) * trips
    }

    fn reason(&self, setting: &Setting) -> Option<String> {
        let name = the(setting.name(self.piece));
        if self.length > CORD[0].0 {
            let floats = if self.floats { ", which floats free of the walls" } else { "" };
            return Some(format!("the best socket is {} from {name}{floats}", setting.words(self.length)));
        }
        let (_, end) = self.underfoot.as_ref().filter(|(aside, _)| *aside < 1.0)?;
        Some(format!("the cord of {name} would cross the way to {}", the(end)))
    }
}

/// Media units and lamps, where sockets were measured.
fn cords(setting: &Setting) -> Vec<Cord> {
    let room = &setting.brief().room;
    let power = |item: &&WallItem| matches!(item.kind, ItemKind::Socket(Socket::Power));
    let sockets: Vec<Point> =
        room.items.iter().filter(power).filter_map(|item| room.ends(item)).map(|(left, _)| left).collect();
    if sockets.is_empty() {
        return Vec::new();
    }
    let fed = setting.placed(|kind| kind.traits().needs_power);
    fed.filter_map(|(_, placed)| cord(setting, placed, &sockets)).collect()
}

/// The cord to the socket that serves a piece best.
fn cord(setting: &Setting, placed: &Placed, sockets: &[Point]) -> Option<Cord> {
    let cords = sockets.iter().map(|socket| Cord::to(setting, placed, *socket));
    best_by(cords, Cord::share)
}
