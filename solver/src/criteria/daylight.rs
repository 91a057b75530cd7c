//! Daylight: how deep in the room the seats are, measured by the heads of the windows, and a lamp for the evening.

use elbowroom_model::article::{capital, the};
use elbowroom_model::{Brief, Criterion, Point, WallItem};

use super::Judgement;
use super::curve::{mean, through};
use super::seat_places::SeatPlace;
use super::setting::{Setting, windows};
use super::sight::{Barriers, Eye, Target, seen};
use crate::best_by;
use crate::geometry::{Convex, Segment, gap};

const BASIS: &str = "room-depth rules: daylight reaches 2 to 2.5 times the height of the window's head (from memory); EN 17037: \
                     no-sky view (published)";

/// Distance to the window over the height of its head, to score: 2 and 2.5 from the room-depth rules (from memory), the
/// rest ours.
const DEPTH: [(f64, f64); 5] = [(0.5, 100.0), (1.0, 90.0), (2.0, 60.0), (2.5, 35.0), (4.0, 0.0)];

/// A lamp within this of the cushion lights the page of one who sits there, mm; no more at the second (common practice).
const REACH: [(f64, f64); 2] = [(600.0, 1.0), (1500.0, 0.0)];

/// What lamps count where one is asked for (ours, no source).
const LAMPS: f64 = 0.2;

/// Height of the page one reads, mm: what light must reach (EN 17037 takes 850 for a working plane; from memory).
const PAGE: f64 = 850.0;

pub(super) fn judge(setting: &Setting) -> Option<Judgement> {
    let lit: Vec<Lit> = setting.places.iter().filter_map(|place| Lit::of(setting, place)).collect();
    let daylight = mean(lit.iter().map(|lit| lit.score))?;
    let distance = mean(lit.iter().map(|lit| lit.distance))?;
    let asked = setting.brief().pieces.iter().any(|piece| piece.kind.traits().gives_light);
    let lamps: Vec<f64> = setting.places.iter().map(|place| lamp(setting, place)).collect();
    let by_lamp = mean(lamps.iter().copied()).filter(|_| asked);
    let score = by_lamp.map_or(daylight, |share| (1.0 - LAMPS) * daylight + LAMPS * 100.0 * share);

    let nearest = best_by(&lit, |lit| -lit.distance)?;
    let mut reason = format!(
        "the seat places lie {} from their windows on the mean; {}, head {}, lights to about {} deep",
        setting.words(distance),
        the(&nearest.window.name),
        setting.words(nearest.head),
        setting.words(2.0 * nearest.head)
    );
    if lit.iter().any(|lit| lit.hidden > 0.25) {
        reason += "; what stands before the windows takes some of it";
    }
    if by_lamp.is_some() {
        let reached = lamps.iter().filter(|share| **share > 0.5).count();
        reason += &format!("; a lamp is in reach of {reached} of {}", lamps.len());
    }
    Some(Judgement::new(Criterion::Daylight, score, (distance, "mm"), capital(&reason) + ".", BASIS))
}

pub(super) fn left_out(brief: &Brief) -> Option<String> {
    windows(brief).next().is_none().then(|| "Daylight is left out: no window was measured.".to_owned())
}

/// A place by the window that lights it best.
struct Lit<'a> {
    window: &'a WallItem,
    head: f64,
    distance: f64,
    hidden: f64,
    score: f64,
}

impl<'a> Lit<'a> {
    fn of(setting: &Setting<'a>, place: &SeatPlace) -> Option<Self> {
        let lit = windows(setting.brief()).filter_map(|(item, window)| {
            let target = Target::of(setting.brief(), item)?;
            let distance = Segment::new(target.left, target.right).distance_to(place.eye);
            let shares = share_of_sky(place.eye, &target, &setting.barriers);
            let score = through(&DEPTH, distance / window.head) * shares;
            Some(Self { window: item, head: window.head, distance, hidden: 1.0 - shares, score })
        });
        best_by(lit, |lit| lit.score)
    }
}

/// Share of the window that the page of one who sits there has in sight, all round.
fn share_of_sky(at: Point, target: &Target, barriers: &Barriers) -> f64 {
    seen(Eye { at, height: PAGE }, None, target, barriers).share
}

/// How well a lamp reaches a place, 0 to 1.
fn lamp(setting: &Setting, place: &SeatPlace) -> f64 {
    let reach = |shape: &Convex| through(&REACH, gap(&place.cushion, shape).clear);
    setting.placed(|kind| kind.traits().gives_light).map(|(_, placed)| reach(&placed.main())).fold(0.0, f64::max)
}
