//! Balance: what is centred, what is in proportion, and whether the room leans to one side.

use elbowroom_model::article::{capital, the};
use elbowroom_model::{Brief, Criterion, ItemKind, PieceKind, Point, WallId, ring};

use super::Judgement;
use super::curve::{mean, through};
use super::setting::Setting;
use crate::best_by;
use crate::geometry::Convex;
use crate::layout::Placed;

const BASIS: &str = "common practice: the seat centred on its wall, a window, the fire or what it faces; a sofa about two thirds \
                     of its wall, a table half to two thirds of the sofa";

/// How far the seat is off centre, mm, to score (ours, no source): a hand is hardly seen, a foot is.
const OFF_CENTRE: [(f64, f64); 4] = [(0.0, 100.0), (50.0, 95.0), (300.0, 50.0), (1200.0, 0.0)];

/// Length of the sofa over its wall's, to score: about two thirds (common practice).
const OF_WALL: [(f64, f64); 4] = [(0.3, 30.0), (0.6, 100.0), (0.75, 100.0), (1.0, 50.0)];

/// Length of the table over the sofa's, to score: half to two thirds (common practice).
const OF_SOFA: [(f64, f64); 4] = [(0.2, 0.0), (0.5, 100.0), (0.667, 100.0), (1.1, 0.0)];

/// How far the furniture's middle lies off the room's, over the half of the room, to score (ours, no source).
const LEANS: [(f64, f64); 3] = [(0.0, 100.0), (0.15, 90.0), (0.6, 0.0)];

/// How far a seat's end runs past the rug, mm, to score (common practice, no source).
const PAST_RUG: [(f64, f64); 2] = [(0.0, 100.0), (600.0, 0.0)];

/// What the parts count (ours, no source).
const CENTRE: f64 = 2.0;
const PROPORTION: f64 = 1.0;
const LEAN: f64 = 1.5;
const RUG: f64 = 0.5;

pub(super) fn judge(setting: &Setting) -> Option<Judgement> {
    let (piece, seat) = setting.main_seat()?;
    let (off, mark) = off_centre(setting, seat)?;
    let lean = lean(setting)?;
    let of_wall = seat.at_wall.and_then(|wall| length_over_wall(setting, seat, wall));
    let of_sofa =
        setting.placed(PieceKind::stands_before_seat).next().map(|(_, table)| table.size.width / seat.size.width);
    let past = past_rug(setting);

    let parts = [
        Some((through(&OFF_CENTRE, off), CENTRE)),
        of_wall.map(|ratio| (through(&OF_WALL, ratio), PROPORTION)),
        of_sofa.map(|ratio| (through(&OF_SOFA, ratio), PROPORTION)),
        Some((through(&LEANS, lean), LEAN)),
        past.map(|past| (through(&PAST_RUG, past), RUG)),
    ];
    let score = super::curve::weighted_mean(parts.into_iter().flatten())?;

    let name = the(&piece.name);
    let mut reason = format!("{name} stands {} off the middle of {mark}", setting.words(off));
    if let Some(ratio) = of_wall {
        reason += &format!("; it takes {:.0} % of its wall", 100.0 * ratio);
    }
    if let Some(ratio) = of_sofa {
        reason += &format!("; the table has {:.0} % of its length", 100.0 * ratio);
    }
    if let Some(past) = past.filter(|past| *past > 1.0) {
        reason += &format!("; a seat ends {} past the rug", setting.words(past));
    }
    if lean > 0.3 {
        reason += "; one side of the room is left empty";
    }
    Some(Judgement::new(Criterion::Balance, score, (off, "mm"), capital(&reason) + ".", BASIS))
}

/// A seat is always asked for.
pub(super) const fn left_out(_brief: &Brief) -> Option<String> {
    None
}

/// How far the middle of the seat lies from the nearest middle that it could be centred on, along its back, and which.
fn off_centre(setting: &Setting, seat: &Placed) -> Option<(f64, String)> {
    let middle = middle_of(seat);
    let off = |mark: Point| (mark - middle).dot(seat.left()).abs();
    let marks = marks(setting, seat).into_iter().map(|(mark, name)| (off(mark), name));
    best_by(marks, |(off, _)| -off)
}

/// What a seat may be centred on: its wall, windows and fires behind or before it, the piece that it faces.
fn marks(setting: &Setting, seat: &Placed) -> Vec<(Point, String)> {
    let room = &setting.brief().room;
    let across = |wall: WallId| room.wall(wall).is_some_and(|wall| wall.inward().dot(seat.facing).abs() > 0.98);
    let own = room.walls().filter(|(id, wall)| match seat.at_wall {
        Some(at) => *id == at,
        // Standing free, it is centred between the walls at its ends, as the wall behind it is.
        None => across(*id) && wall.inward().dot(seat.facing) > 0.0,
    });
    let walls = own.map(|(_, wall)| ((wall.start + wall.end) * 0.5, the(&wall.name)));
    let held = room
        .items
        .iter()
        .filter(|item| matches!(item.kind, ItemKind::Window(_) | ItemKind::Fireplace(_)) && across(item.wall));
    let items = held.filter_map(|item| {
        let (left, right) = room.ends(item)?;
        Some(((left + right) * 0.5, the(&item.name)))
    });
    let faced = setting.scene.layout.placed.iter().filter(|other| {
        let kind = setting.brief().piece(other.piece).map(|piece| piece.kind);
        let faces = kind.is_some_and(|kind| kind.is_seat() || kind.carries_screen());
        faces && other.piece != seat.piece && other.facing.dot(seat.facing) < -0.98
    });
    let pieces = faced.map(|other| (middle_of(other), the(setting.name(other.piece))));
    walls.chain(items).chain(pieces).collect()
}

/// The middle that the eye takes for a piece's own: of a corner sofa, of its front before the return.
fn middle_of(placed: &Placed) -> Point {
    let (left, right) = placed.front();
    (left + right) * 0.5
}

fn length_over_wall(setting: &Setting, seat: &Placed, wall: WallId) -> Option<f64> {
    let length = setting.brief().room.wall(wall)?.length();
    (length > 0.0).then(|| seat.size.width / length)
}

/// How far the middle of all that stands lies from the middle of the room, over the half of the room across.
fn lean(setting: &Setting) -> Option<f64> {
    let room = &setting.brief().room;
    let stands = setting
        .scene
        .layout
        .placed
        .iter()
        .filter(|placed| setting.brief().piece(placed.piece).is_some_and(|piece| !piece.kind.is_flat()));
    let weighed = |direction: fn(Point) -> f64| {
        let parts = stands.clone().flat_map(Placed::parts);
        super::curve::weighted_mean(parts.map(|part: Convex| (direction(part.middle()), part.area())))
    };
    let middle = Point::new(weighed(|point| point.x)?, weighed(|point| point.y)?);
    let half = room.area().max(0.0).sqrt() / 2.0;
    (half > 0.0).then(|| (middle - ring::centre_of_area(&room.outline())).norm() / half)
}

/// How far the ends of the seats run past the rug, mm, the mean over the seats; `None` without a rug.
fn past_rug(setting: &Setting) -> Option<f64> {
    let (_, rug) = setting.placed(PieceKind::is_flat).next()?;
    let (_, seat) = setting.main_seat()?;
    let (left, right) = seat.front();
    let ground = rug.main();
    let past = [left, right].map(|end| {
        let along = seat.left();
        let beyond = [end.dot(along) - ground.support(along), -end.dot(along) - ground.support(-along)];
        beyond[0].max(beyond[1]).max(0.0)
    });
    mean(past)
}
