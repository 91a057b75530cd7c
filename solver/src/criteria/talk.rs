//! Talk: whether people who sit here can speak with one another.
//!
//! Distances rest on Hall 1966 (social distance), the group's circle on HUD 1973.

use elbowroom_model::{Brief, PieceId, Point};

use super::criteria_context::{CriteriaContext, Group};
use super::curve::{Curve, mean};
use super::judged::{Absent, FigureUnit, Judged, Missing};
use super::one_or_more::OneOrMore;
use super::seat_places::{Run, SeatPlace};
use super::sight::angle_between;
use super::tolerance::SAME_PLACE;
use super::yardstick::Yardstick;
use crate::best_by;
use crate::geometry::Circle;

/// Distance of two heads, mm, to score: Hall 1966 (published); the ends are ours.
const DISTANCE: Curve = Curve(&[(400.0, 40.0), (1219.0, 100.0), (2134.0, 100.0), (3658.0, 50.0), (5000.0, 0.0)]);

/// How far one turns from straight ahead to look at the other, degrees, to share (common practice, no source): side by
/// side is harder than across.
const TURN: Curve = Curve(&[(0.0, 1.0), (60.0, 1.0), (90.0, 0.6), (150.0, 0.1)]);

/// Diameter of a conversation group, mm: 10 ft, HUD 1973 (published).
const GROUP_CIRCLE: f64 = 3048.0;

/// A place alone: nothing speaks against it, little for it (ours, no source).
const ALONE: f64 = 40.0;

/// Cosine of the angle, 8 degrees, within which two face the same way (ours, no source).
const SIDE_BY_SIDE: f64 = 0.99;

/// What talk is made of.
#[derive(Debug, Clone, PartialEq)]
pub struct TalkFinding {
    /// Seat places.
    pub places: usize,
    /// Diameter of the smallest circle about them all, mm.
    pub diameter: f64,
    /// It is wider than a conversation group.
    pub wide: bool,
    /// The seat that is out of the group.
    pub out: Option<PieceId>,
    /// How they sit.
    pub seated: Seated,
}

/// How people sit to one another.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Seated {
    /// About the corner of a corner sofa, which counts as one place.
    AboutCorner,
    /// All side by side.
    SideBySide,
    /// In any other way.
    Otherwise,
}

/// The yardstick. Where no seat stands there is nobody to speak.
pub(super) struct Talk;

impl Yardstick for Talk {
    type Subject<'a> = ();
    type Finding = TalkFinding;

    /// A seat is always asked for.
    fn subject(_brief: &Brief) -> Result<(), Missing> {
        Ok(())
    }

    fn judge<'a>(context: &CriteriaContext<'a>, (): &()) -> Judged<Self::Finding> {
        let Some(group) = &context.group else { return Judged::absent(Absent::Seats) };
        let places = &group.places;
        let circle = circle_about(places);
        let within = |place: &SeatPlace| (GROUP_CIRCLE / (2.0 * (place.eye - circle.centre).norm()).max(1.0)).min(1.0);
        let together = places.mean(within);
        let ease = mean(pairs(places).map(|(first, second)| ease(first, second))).unwrap_or(ALONE);
        let diameter = 2.0 * circle.radius;
        let finding = TalkFinding {
            places: places.count(),
            diameter,
            wide: diameter > GROUP_CIRCLE,
            out: farthest_out(group, &circle),
            seated: seated(places),
        };
        Judged::new(ease * together, diameter, FigureUnit::Millimetres, finding)
    }
}

/// The smallest circle about all places.
fn circle_about(places: &OneOrMore<SeatPlace>) -> Circle {
    let eyes: Vec<Point> = places.iter().map(|place| place.eye).collect();
    Circle::about(&eyes).unwrap_or(Circle { centre: places.first().eye, radius: 0.0 })
}

/// Every two places.
fn pairs(places: &OneOrMore<SeatPlace>) -> impl Iterator<Item = (&SeatPlace, &SeatPlace)> {
    let firsts = places.iter().enumerate();
    firsts.flat_map(|(i, first)| places.iter().skip(i + 1).map(move |second| (first, second)))
}

fn seated(places: &OneOrMore<SeatPlace>) -> Seated {
    if places.iter().any(|place| place.run == Run::Corner) {
        Seated::AboutCorner
    } else if places.count() > 1 && pairs(places).all(|(one, other)| one.facing.dot(other.facing) > SIDE_BY_SIDE) {
        Seated::SideBySide
    } else {
        Seated::Otherwise
    }
}

/// How easily two speak, 0 to 100.
fn ease(first: &SeatPlace, second: &SeatPlace) -> f64 {
    let way = second.eye - first.eye;
    let turns = [angle_between(first.facing, way), angle_between(second.facing, -way)];
    let contact = turns.map(|turn| TURN.at(turn));
    DISTANCE.at(way.norm()) * f64::midpoint(contact[0], contact[1])
}

/// The seat of the place farthest from the others, where the group is too wide.
fn farthest_out(group: &Group, circle: &Circle) -> Option<PieceId> {
    if 2.0 * circle.radius <= GROUP_CIRCLE {
        return None;
    }
    let lonely = |place: &SeatPlace| -> f64 {
        let others = group.places.iter().filter(|other| other.piece != place.piece);
        others.map(|other| (other.eye - place.eye).norm()).fold(f64::INFINITY, f64::min)
    };
    let out = group.places.iter().filter(|place| (place.eye - circle.centre).norm() > circle.radius - SAME_PLACE);
    let out = out.filter(|place| place.piece != group.main.piece);
    best_by(out, |place| lonely(place)).map(|place| place.piece)
}
