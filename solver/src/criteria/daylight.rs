//! Daylight: how deep in the room the seats are, measured by the heads of the windows, and a lamp for the evening.
//!
//! Rests on the room-depth rules (daylight reaches 2 to 2.5 heights of the window's head) and on the no-sky view of EN 17037.

use elbowroom_model::{Brief, ItemId, Point};

use super::criteria_context::{CriteriaContext, Group};
use super::curve::Curve;
use super::judged::{Absent, FigureUnit, Judged, Missing};
use super::on_wall::{Outlook, windows};
use super::one_or_more::OneOrMore;
use super::seat_places::SeatPlace;
use super::sight::{Barriers, Eye, Target, seen};
use super::yardstick::Yardstick;
use crate::geometry::{Convex, Segment, gap};

/// Distance to the window over the height of its head, to score: 2 and 2.5 from the room-depth rules (from memory), the
/// rest ours.
const DEPTH: Curve = Curve(&[(0.5, 100.0), (1.0, 90.0), (2.0, 60.0), (2.5, 35.0), (4.0, 0.0)]);

/// How deep a window lights a room, in heights of its head: the lesser of the room-depth rules (from memory).
const LIGHTS: f64 = 2.0;

/// A lamp within this of the cushion lights the page of one who sits there, mm; no more at the second (common practice).
const REACH: Curve = Curve(&[(600.0, 1.0), (1500.0, 0.0)]);

/// A place that a lamp reaches by more than this share has one (ours, no source).
const REACHED: f64 = 0.5;

/// What lamps count where one is asked for (ours, no source).
const LAMPS: f64 = 0.2;

/// Height of the page one reads, mm: what light must reach (EN 17037 takes 850 for a working plane; from memory).
const PAGE: f64 = 850.0;

/// What hides more than this share of a place's window is worth saying (ours, no source).
const WORTH_SAYING: f64 = 0.25;

/// What daylight is made of.
#[derive(Debug, Clone, PartialEq)]
pub struct DaylightFinding {
    /// Mean over the seat places of the distance to the window that lights each best, mm.
    pub distance: f64,
    /// The window of the place that lies nearest to its own.
    pub window: ItemId,
    /// Height of that window's head, mm.
    pub head: f64,
    /// How deep it lights the room, mm.
    pub lights: f64,
    /// What stands before the windows takes some of the light.
    pub hidden: bool,
    /// The lamps' part, where one is asked for.
    pub lamps: Option<LampsFinding>,
}

/// Lamps and seat places.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct LampsFinding {
    /// Places that a lamp is in reach of.
    pub reached: usize,
    /// All places.
    pub places: usize,
}

/// The yardstick. Where no seat stands there is nobody to have light.
pub(super) struct Daylight;

impl Yardstick for Daylight {
    type Subject<'a> = OneOrMore<Outlook<'a>>;
    type Finding = DaylightFinding;

    fn subject(brief: &Brief) -> Result<Self::Subject<'_>, Missing> {
        OneOrMore::of(windows(brief).map(|(outlook, _)| outlook)).ok_or(Missing::Window)
    }

    fn judge<'a>(context: &CriteriaContext<'a>, windows: &Self::Subject<'a>) -> Judged<Self::Finding> {
        let Some(group) = &context.group else { return Judged::absent(Absent::Seats) };
        let lit = group.everyone.map(|place| Lit::of(context, windows, place));
        let daylight = lit.mean(|lit| lit.score);
        let distance = lit.mean(|lit| lit.distance);
        let lamps = Lamps::of(context, group);
        let score = lamps.as_ref().map_or(daylight, |lamps| (1.0 - LAMPS) * daylight + LAMPS * 100.0 * lamps.share);
        let nearest = lit.best_by(|lit| -lit.distance);
        let finding = DaylightFinding {
            distance,
            window: nearest.window,
            head: nearest.head,
            lights: LIGHTS * nearest.head,
            hidden: lit.iter().any(|lit| lit.hidden > WORTH_SAYING),
            lamps: lamps.map(|lamps| lamps.finding),
        };
        Judged::new(score, distance, FigureUnit::Millimetres, finding)
    }
}

/// A place by the window that lights it best.
#[derive(Clone, Copy)]
struct Lit {
    window: ItemId,
    head: f64,
    distance: f64,
    hidden: f64,
    score: f64,
}

impl Lit {
    fn of(context: &CriteriaContext, windows: &OneOrMore<Outlook>, place: &SeatPlace) -> Self {
        let by = |window: &Outlook| {
            let Outlook { on_wall, target } = window;
            let distance = Segment::new(target.left, target.right).distance_to(place.eye);
            let share = share_of_sky(place.eye, target, &context.barriers);
            let score = DEPTH.at(distance / target.head) * share;
            Self { window: on_wall.id, head: target.head, distance, hidden: 1.0 - share, score }
        };
        *windows.map(by).best_by(|lit| lit.score)
    }
}

/// Share of the window that the page of one who sits there has in sight, all round.
fn share_of_sky(at: Point, target: &Target, barriers: &Barriers) -> f64 {
    seen(Eye { at, height: PAGE }, None, target, barriers).share
}

/// How well the lamps reach the places.
struct Lamps {
    /// On the mean, 0 to 1.
    share: f64,
    finding: LampsFinding,
}

impl Lamps {
    /// `None` where no lamp is asked for; one that was asked for and does not stand reaches nobody.
    fn of(context: &CriteriaContext, group: &Group) -> Option<Self> {
        context.brief().pieces.iter().find(|piece| piece.kind.traits().gives_light)?;
        let reached = group.everyone.map(|place| lamp(context, place));
        let count = reached.iter().filter(|share| **share > REACHED).count();
        let finding = LampsFinding { reached: count, places: reached.count() };
        Some(Self { share: reached.mean(|share| *share), finding })
    }
}

/// How well a lamp reaches a place, 0 to 1.
fn lamp(context: &CriteriaContext, place: &SeatPlace) -> f64 {
    let reach = |shape: &Convex| REACH.at(gap(&place.cushion, shape).clear);
    context.placed(|kind| kind.traits().gives_light).map(|(_, placed)| reach(&placed.main())).fold(0.0, f64::max)
}
