//! Fireside: how the seats gather about the fire.
//!
//! Rests on the fireplace group of a drawing-office handbook and the conversation group of HUD 1973; seats turned to the fire
//! are common practice.

use elbowroom_model::{Brief, ItemId, ItemKind, Point, SeatForm};

use super::criteria_context::{CriteriaContext, Group};
use super::curve::Curve;
use super::judged::{Absent, FigureUnit, Judged, Missing};
use super::on_wall::OnWall;
use super::one_or_more::OneOrMore;
use super::seat_places::{SeatPlace, middle_eye};
use super::sight::angle_between;
use super::tolerance::SAME_ANGLE;
use super::yardstick::Yardstick;

/// A seat that is turned from the fire by more has it behind, degrees (ours, no source).
const BEHIND: f64 = 100.0;

/// How far a seat is turned from the fire, degrees, to share of its marks (common practice, no source): who has it behind
/// has nothing of it.
const TURN: Curve = Curve(&[(0.0, 1.0), (45.0, 0.95), (90.0, 0.6), (BEHIND, 0.0)]);

/// Distance from the fire, mm, to score: the 10 ft of a conversation group (HUD 1973, published); the rest ours.
const DISTANCE: Curve = Curve(&[(600.0, 40.0), (1200.0, 100.0), (3048.0, 100.0), (4500.0, 40.0), (6500.0, 0.0)]);

/// How far a chair stands aside of the hearth or before it, mm, to share of flanking it (ours, no source).
const FLANKS: Curve = Curve(&[(0.0, 1.0), (1800.0, 1.0), (3000.0, 0.0)]);

/// What the parts count of a seat that is turned to the fire (ours, no source).
const TURNED: f64 = 60.0;
const OF_DISTANCE: f64 = 0.4;

/// What chairs on both sides of the hearth add, of the way to full marks (ours, no source).
const FLANKED: f64 = 0.25;

/// Chairs that flank the hearth by more than this are worth saying: more than one of them (ours, no source).
const WORTH_SAYING: f64 = 0.5;

/// What fireside is made of: the fire that the seats gather about best.
#[derive(Debug, Clone, PartialEq)]
pub struct FiresideFinding {
    /// The fire.
    pub fire: ItemId,
    /// Mean angle between the way the seats face and the way to the fire, degrees.
    pub angle: f64,
    /// Mean distance of the seat places from it, mm.
    pub distance: f64,
    /// Angle between the way the main seat faces and the way to the fire from its middle, degrees.
    pub main_turn: f64,
    /// Places that have it behind.
    pub backs: usize,
    /// All places.
    pub places: usize,
    /// Chairs flank the hearth.
    pub flanked: bool,
}

impl FiresideFinding {
    /// Whether the main seat has it behind.
    pub(crate) fn is_behind_main_seat(&self) -> bool {
        self.main_turn > BEHIND + SAME_ANGLE
    }
}

/// The yardstick. Where no seat stands nobody gathers.
pub(super) struct Fireside;

impl Yardstick for Fireside {
    type Subject<'a> = OneOrMore<Fire>;
    type Finding = FiresideFinding;

    fn subject(brief: &Brief) -> Result<Self::Subject<'_>, Missing> {
        OneOrMore::of(OnWall::all(brief).filter_map(|on_wall| Fire::of(brief, &on_wall))).ok_or(Missing::Fireplace)
    }

    fn judge<'a>(context: &CriteriaContext<'a>, fires: &Self::Subject<'a>) -> Judged<Self::Finding> {
        let Some(group) = &context.group else { return Judged::absent(Absent::Seats) };
        let gatherings = fires.map(|fire| Gathering::of(context, group, fire));
        let best = gatherings.best_by(Gathering::score);
        let finding = FiresideFinding {
            fire: best.fire,
            angle: best.angle,
            main_turn: best.main_turn,
            distance: best.distance,
            backs: best.backs,
            places: group.places.count(),
            flanked: best.flanked > WORTH_SAYING,
        };
        Judged::new(best.score(), best.angle, FigureUnit::Degrees, finding)
    }
}

/// A fire: the middle of its mouth, and the way into the room.
pub(super) struct Fire {
    id: ItemId,
    front: Point,
    inward: Point,
}

impl Fire {
    fn of(brief: &Brief, on_wall: &OnWall) -> Option<Self> {
        let ItemKind::Fireplace(fire) = &on_wall.item.kind else { return None };
        let (left, right) = brief.room.mouth_ends(on_wall.item)?;
        let front = (left + right) * 0.5 + on_wall.inward * fire.depth;
        Some(Self { id: on_wall.id, front, inward: on_wall.inward })
    }
}

/// The seats about one fire.
struct Gathering {
    fire: ItemId,
    /// Mean angle between the way the seats face and the way to the fire, degrees.
    angle: f64,
    /// The same of the main seat.
    main_turn: f64,
    distance: f64,
    /// Mean of what the places have of it, 0 to 100.
    marks: f64,
    /// Places that have it behind.
    backs: usize,
    /// How well chairs flank the hearth, 0 to 1.
    flanked: f64,
}

impl Gathering {
    fn of(context: &CriteriaContext, group: &Group, fire: &Fire) -> Self {
        let places = &group.places;
        let turn = |place: &SeatPlace| angle_between(place.facing, fire.front - place.eye);
        let far = |place: &SeatPlace| (fire.front - place.eye).norm();
        Self {
            fire: fire.id,
            angle: places.mean(turn),
            main_turn: angle_between(group.main.facing, fire.front - middle_eye(group.main)),
            distance: places.mean(far),
            marks: places.mean(|place| TURN.at(turn(place)) * (TURNED + OF_DISTANCE * DISTANCE.at(far(place)))),
            backs: places.iter().filter(|place| turn(place) > BEHIND + SAME_ANGLE).count(),
            flanked: flanked(context, fire),
        }
    }

    fn score(&self) -> f64 {
        self.marks + FLANKED * self.flanked * (100.0 - self.marks)
    }
}

/// Chairs on either side before the hearth, turned in and to the fire: 1 where there is one on each side, a half for one.
fn flanked(context: &CriteriaContext, fire: &Fire) -> f64 {
    let along = fire.inward.left();
    let mut sides = [0.0_f64; 2];
    for (_, chair) in context.placed(|kind| kind.traits().seat == Some(SeatForm::Single)) {
        let way = chair.main().middle() - fire.front;
        let (aside, before) = (way.dot(along), way.dot(fire.inward));
        let turned_in = (-chair.facing.dot(along) * aside.signum()).max(0.0);
        let near = FLANKS.at(aside.abs()) * FLANKS.at(before.abs()) * TURN.at(angle_between(chair.facing, -way));
        let side = usize::from(aside > 0.0);
        sides[side] = sides[side].max(turned_in * near);
    }
    f64::midpoint(sides[0], sides[1])
}
