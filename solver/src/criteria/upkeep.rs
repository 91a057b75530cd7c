//! Upkeep: radiators that heat the room, windows one can reach, sockets near what needs them, room to clean.

use elbowroom_model::{Brief, Criterion, ItemKind, PieceKind, Point, Rule, Socket, WallItem};

use super::Judgement;
use super::curve::{mean, through, weighted_mean};
use super::setting::{Setting, listed, sentence, windows};
use crate::geometry::{Convex, gap, gap_to_segment};
use crate::layout::Placed;
use crate::routes::Route;

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

/// What is left of a socket whose cord would cross a route.
const CROSSING: f64 = 0.4;

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
    Some(Judgement::new(Criterion::Upkeep, score, (figure, "percent"), sentence(&reason) + ".", BASIS))
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
    let before = Convex::counter_clockwise(vec![left, right, right + out, left + out]);
    let taken = setting.scene.layout.placed.iter().filter_map(|placed| {
        let piece = setting.brief().pieces.get(placed.piece)?;
        if matches!(piece.kind, PieceKind::Rug | PieceKind::FloorLamp) {
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
        .filter(|placed| setting.brief().pieces.get(placed.piece).is_some_and(|piece| piece.kind.is_seat()));
    seats.filter_map(|placed| {
        let wall = setting.brief().room.wall(placed.at_wall?)?;
        Some((placed.anchor - wall.start).dot(wall.inward()).max(0.0))
    })
}

/// What needs power, and the nearest socket.
struct Cord {
    piece: usize,
    /// Distance to the nearest socket, mm; infinite without one.
    length: f64,
    /// The name of the far end of a route that it would cross.
    crosses: Option<String>,
    floats: bool,
}

impl Cord {
    fn share(&self) -> f64 {
        through(&CORD, self.length) * if self.crosses.is_some() { CROSSING } else { 1.0 }
    }

    fn reason(&self, setting: &Setting) -> Option<String> {
        let name = setting.name(self.piece);
        if self.length > CORD[0].0 {
            let floats = if self.floats { ", which floats free of the walls" } else { "" };
            return Some(format!("the nearest socket is {} from the {name}{floats}", setting.words(self.length)));
        }
        let crosses = self.crosses.as_ref()?;
        Some(format!("the cord of the {name} would cross the way to the {crosses}"))
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
    let fed = [PieceKind::MediaUnit, PieceKind::FloorLamp].into_iter().flat_map(|kind| setting.placed(kind));
    fed.map(|(_, placed)| cord(setting, placed, &sockets)).collect()
}

fn cord(setting: &Setting, placed: &Placed, sockets: &[Point]) -> Cord {
    let nearest = sockets.iter().map(|socket| {
        let gap = gap(&placed.main(), &Convex::counter_clockwise(vec![*socket]));
        (gap.clear, gap.at[0], *socket)
    });
    let nearest = nearest.reduce(|best, next| if next.0 < best.0 - 1e-9 { next } else { best });
    let (length, from, to) = nearest.unwrap_or((f64::INFINITY, placed.anchor, placed.anchor));
    let crossed = setting.scene.routes.iter().find(|route| crosses(setting, route, from, to));
    let crosses = crossed.map(|route| route.to.name(setting.brief()).to_owned());
    Cord { piece: placed.piece, length, crosses, floats: placed.at_wall.is_none() }
}

/// The cord would lie across a main route where it is narrowest, or across the straight way of one.
fn crosses(setting: &Setting, route: &Route, from: Point, to: Point) -> bool {
    if route.rule != Rule::Walkway {
        return false;
    }
    let cord = Convex::counter_clockwise(vec![from, to]);
    let middle = |end: crate::routes::End| match end {
        crate::routes::End::Item(id) => {
            let (left, right) = setting.brief().room.ends(setting.brief().room.items.get(id.0)?)?;
            Some((left + right) * 0.5)
        }
        crate::routes::End::Piece(_) => None,
    };
    let straight = middle(route.from).zip(middle(route.to));
    straight.is_some_and(|(start, end)| gap_to_segment(&cord, start, end).clear < 1.0)
}
