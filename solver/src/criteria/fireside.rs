//! Fireside: how the seats gather about the fire.

use elbowroom_model::article::{capital, the};
use elbowroom_model::kind::SeatForm;
use elbowroom_model::{Brief, Criterion, ItemKind, Point, WallItem};

use super::Judgement;
use super::curve::{mean, through};
use super::seat_places::SeatPlace;
use super::setting::Setting;
use super::sight::angle_between;
use crate::best_by;

const BASIS: &str = "fireplace group of a drawing-office handbook: 56 in between facing seats (published); seats turned to the \
                     fire within the warmth of it (common practice)";

/// How far a seat is turned from the fire, degrees, to score (common practice, no source).
const TURN: [(f64, f64); 4] = [(0.0, 100.0), (45.0, 95.0), (90.0, 60.0), (180.0, 0.0)];

/// Distance from the fire, mm, to score: the 10 ft of a conversation group (HUD 1973, published); the rest ours.
const DISTANCE: [(f64, f64); 5] = [(600.0, 40.0), (1200.0, 100.0), (3048.0, 100.0), (4500.0, 40.0), (6500.0, 0.0)];

/// What the parts count (ours, no source).
const OF_TURN: f64 = 0.6;
const OF_DISTANCE: f64 = 0.4;

/// What chairs on both sides of the hearth add, of the way to full marks.
const FLANKED: f64 = 0.25;

pub(super) fn judge(setting: &Setting) -> Option<Judgement> {
    let fires = fires(setting.brief()).filter_map(|item| Some((item, front_of(setting, item)?)));
    let judged = fires.filter_map(|(item, (middle, inward))| Fireside::of(setting, item, middle, inward));
    let best = best_by(judged, Fireside::score)?;
    let reason = capital(&best.reason(setting)) + ".";
    Some(Judgement::new(Criterion::Fireside, best.score(), (best.angle, "deg"), reason, BASIS))
}

pub(super) fn left_out(brief: &Brief) -> Option<String> {
    fires(brief).next().is_none().then(|| "Fireside is left out: the room has no fireplace.".to_owned())
}

fn fires(brief: &Brief) -> impl Iterator<Item = &WallItem> {
    brief.room.items.iter().filter(|item| matches!(item.kind, ItemKind::Fireplace(_)))
}

/// The middle of the fire's front, and the way into the room.
fn front_of(setting: &Setting, item: &WallItem) -> Option<(Point, Point)> {
    let ItemKind::Fireplace(fire) = &item.kind else { return None };
    let room = &setting.brief().room;
    let (left, right) = room.ends(item)?;
    let inward = room.wall(item.wall)?.inward();
    Some(((left + right) * 0.5 + inward * fire.depth, inward))
}

struct Fireside<'a> {
    item: &'a WallItem,
    /// Mean angle between the way the seats face and the way to the fire, degrees.
    angle: f64,
    distance: f64,
    turned: f64,
    near: f64,
    /// Places with their back to it.
    backs: usize,
    /// How well chairs flank the hearth, 0 to 1.
    flanked: f64,
}

impl<'a> Fireside<'a> {
    fn of(setting: &Setting, item: &'a WallItem, fire: Point, inward: Point) -> Option<Self> {
        let places = &setting.places;
        let turn = |place: &SeatPlace| angle_between(place.facing, fire - place.eye);
        let far = |place: &SeatPlace| (fire - place.eye).norm();
        Some(Self {
            item,
            angle: mean(places.iter().map(turn))?,
            distance: mean(places.iter().map(far))?,
            turned: mean(places.iter().map(|place| through(&TURN, turn(place))))?,
            near: mean(places.iter().map(|place| through(&DISTANCE, far(place))))?,
            backs: places.iter().filter(|place| turn(place) > 120.0).count(),
            flanked: flanked(setting, fire, inward),
        })
    }

    fn score(&self) -> f64 {
        let gathered = OF_TURN * self.turned + OF_DISTANCE * self.near;
        gathered + FLANKED * self.flanked * (100.0 - gathered)
    }

    fn reason(&self, setting: &Setting) -> String {
        let mut reason = format!(
            "{} lies {:.0} degrees from the way the seats face and {} from them on the mean",
            the(&self.item.name),
            self.angle,
            setting.words(self.distance)
        );
        match (self.backs, setting.places.len()) {
            (0, _) => {}
            (1, 1) => reason += "; the seat has its back to it",
            (1, all) => reason += &format!("; 1 of {all} seat places has its back to it"),
            (backs, all) => reason += &format!("; {backs} of {all} seat places have their back to it"),
        }
        if self.flanked > 0.5 {
            reason += "; chairs flank the hearth";
        }
        reason
    }
}

/// Chairs on either side before the hearth, turned in: 1 where there is one on each side, a half for one.
fn flanked(setting: &Setting, fire: Point, inward: Point) -> f64 {
    let along = inward.left();
    let mut sides = [0.0_f64; 2];
    for (_, chair) in setting.placed(|kind| kind.traits().seat == Some(SeatForm::Single)) {
        let way = chair.main().middle() - fire;
        let (aside, before) = (way.dot(along), way.dot(inward));
        let turned_in = (-chair.facing.dot(along) * aside.signum()).max(0.0);
        let near = through(&[(0.0, 1.0), (1800.0, 1.0), (3000.0, 0.0)], aside.abs())
            * through(&[(0.0, 1.0), (1800.0, 1.0), (3000.0, 0.0)], before.abs());
        let side = usize::from(aside > 0.0);
        sides[side] = sides[side].max(turned_in * near);
    }
    f64::midpoint(sides[0], sides[1])
}
