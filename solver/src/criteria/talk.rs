//! Talk: whether people who sit here can speak with one another.

use elbowroom_model::article::{capital, the};
use elbowroom_model::{Brief, Criterion};

use super::Judgement;
use super::curve::{mean, through};
use super::seat_places::{Run, SeatPlace};
use super::setting::Setting;
use super::sight::angle_between;
use crate::best_by;
use crate::geometry::Circle;

const BASIS: &str = "Hall 1966: social distance, close phase 1219 to 2134 mm, far phase to 3658 mm (published); HUD Manual of \
                     Acceptable Practices 1973: a conversation group keeps within a circle of 10 ft (published)";

/// Distance of two heads, mm, to score: Hall 1966 (published); the ends are ours.
const DISTANCE: [(f64, f64); 5] = [(400.0, 40.0), (1219.0, 100.0), (2134.0, 100.0), (3658.0, 50.0), (5000.0, 0.0)];

/// How far one turns from straight ahead to look at the other, degrees, to share (common practice, no source): side by
/// side is harder than across.
const TURN: [(f64, f64); 4] = [(0.0, 1.0), (60.0, 1.0), (90.0, 0.6), (150.0, 0.1)];

/// Diameter of a conversation group, mm: 10 ft, HUD 1973 (published).
const GROUP_CIRCLE: f64 = 3048.0;

pub(super) fn judge(setting: &Setting) -> Option<Judgement> {
    let places = &setting.places;
    let circle = Circle::about(&places.iter().map(|place| place.eye).collect::<Vec<_>>())?;
    let within = |place: &SeatPlace| (GROUP_CIRCLE / (2.0 * (place.eye - circle.centre).norm()).max(1.0)).min(1.0);
    let together = mean(places.iter().map(within))?;
    let pairs = || {
        let firsts = places.iter().enumerate();
        firsts.flat_map(|(i, first)| places.iter().skip(i + 1).map(move |second| (first, second)))
    };
    let ease = mean(pairs().map(|(first, second)| ease(first, second))).unwrap_or(ALONE);
    let diameter = 2.0 * circle.radius;

    let mut reason = match places.len() {
        1 => "there is one seat place, and nobody to speak with".to_owned(),
        count => format!(
            "all {count} seat places lie in a circle of {} across{}",
            setting.words(diameter),
            if diameter <= GROUP_CIRCLE { "" } else { ", wider than the 10 ft of a conversation group" }
        ),
    };
    if let Some(out) = farthest_out(setting, circle) {
        reason += &format!("; {} is out of it", the(out));
    }
    if places.iter().any(|place| place.run == Run::Corner) {
        reason += "; the corner of the corner sofa counts as one place";
    } else if places.len() > 1 && pairs().all(|(first, second)| first.facing.dot(second.facing) > 0.99) {
        reason += "; all sit side by side";
    }
    let score = ease * together;
    Some(Judgement::new(Criterion::Talk, score, (diameter, "mm"), capital(&reason) + ".", BASIS))
}

/// A place alone: nothing speaks against it, little for it (ours, no source).
const ALONE: f64 = 40.0;

/// A seat is always asked for.
pub(super) const fn left_out(_brief: &Brief) -> Option<String> {
    None
}

/// How easily two speak, 0 to 100.
fn ease(first: &SeatPlace, second: &SeatPlace) -> f64 {
    let way = second.eye - first.eye;
    let turns = [angle_between(first.facing, way), angle_between(second.facing, -way)];
    let contact = turns.map(|turn| through(&TURN, turn));
    through(&DISTANCE, way.norm()) * f64::midpoint(contact[0], contact[1])
}

/// The seat of the place farthest from the others, where the group is too wide.
fn farthest_out<'a>(setting: &Setting<'a>, circle: Circle) -> Option<&'a str> {
    if 2.0 * circle.radius <= GROUP_CIRCLE {
        return None;
    }
    let lonely = |place: &SeatPlace| -> f64 {
        let others = setting.places.iter().filter(|other| other.piece != place.piece);
        others.map(|other| (other.eye - place.eye).norm()).fold(f64::INFINITY, f64::min)
    };
    let out = setting.places.iter().filter(|place| (place.eye - circle.centre).norm() > circle.radius - 1.0);
    let main = setting.scene.main_seat;
    let out = out.filter(|place| place.piece != main).map(|place| (lonely(place), place.piece));
    best_by(out, |(lonely, _)| *lonely).map(|(_, piece)| setting.name(piece))
}
