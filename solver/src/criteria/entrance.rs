//! Entrance: how the seats meet one who comes in.
//!
//! Rests on common practice alone: seats that have the way in before them, fronts rather than backs on arrival, nothing across
//! the way.

use elbowroom_model::{Brief, ItemId, PieceId, Point};

use super::across::{Across, Bar, returns_across};
use super::arrival::{FirstSeen, Glimpse, Side, arrival, first_seen, welcome};
use super::criteria_context::{CriteriaContext, Group};
use super::curve::{Curve, weighted_mean};
use super::judged::{Absent, FigureUnit, Judged, Missing};
use super::on_wall::{Outlook, entrances};
use super::one_or_more::OneOrMore;
use super::sight::angle_between;
use super::yardstick::Yardstick;
use crate::best_by;

/// Angle between the way a seat faces and the way to the entrance, degrees, to score (common practice, no source): up to
/// an easy turn of the head it is full, square to the side it is fair, with the back to the door it is nothing.
const FACING: Curve = Curve(&[(0.0, 100.0), (60.0, 100.0), (90.0, 60.0), (180.0, 0.0)]);

/// What the parts count (ours, no source).
const ANGLE: f64 = 0.35;
const SIGHT: f64 = 0.25;
const MET: f64 = 0.25;
const FIRST_SEEN: f64 = 0.15;

/// What a return across the whole way in takes off (ours, no source).
const BARRED: f64 = 30.0;

/// A place sees the entrance where it sees more than this share of it (ours, no source).
const SEES: f64 = 0.5;

/// The back of a seat that fills less of the field on arrival is not worth saying, degrees (ours, no source).
const WORTH_SAYING: f64 = 1.0;

/// What the entrance's score is made of: the way in that is met worst, and the mean over all.
#[derive(Debug, Clone, PartialEq)]
pub struct EntranceFinding {
    /// The way in that is met worst.
    pub doorway: ItemId,
    /// Mean over the seat places of the angle between the way they face and the way to it, degrees.
    pub angle: f64,
    /// Places that see more than half of it.
    pub see: usize,
    /// All places.
    pub places: usize,
    /// What one meets who comes in by it; `None` where nothing is in sight.
    pub met: Option<Met>,
    /// What stands across it.
    pub barred: Option<Bar>,
    /// How many ways in there are.
    pub ways_in: usize,
    /// Mean of the angle over all of them, degrees.
    pub mean_angle: f64,
}

/// What one meets who comes in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Met {
    /// The back of a seat.
    Back {
        /// The seat.
        seat: PieceId,
        /// Plan angle that its back fills, degrees.
        angle: f64,
    },
    /// No back of a seat: what fills the largest part of the field.
    First(FirstSeen),
}

/// The yardstick. Where no seat stands there is nobody to meet who comes in.
pub(super) struct Entrance;

impl Yardstick for Entrance {
    type Subject<'a> = OneOrMore<Outlook<'a>>;
    type Finding = EntranceFinding;

    fn subject(brief: &Brief) -> Result<Self::Subject<'_>, Missing> {
        entrances(brief).ok_or(Missing::Entrance)
    }

    fn judge<'a>(context: &CriteriaContext<'a>, doorways: &Self::Subject<'a>) -> Judged<Self::Finding> {
        let Some(group) = &context.group else { return Judged::absent(Absent::Seats) };
        let meetings = doorways.map(|doorway| Meeting::of(context, group, doorway));
        let score = meetings.mean(Meeting::score);
        let angle = meetings.mean(|meeting| meeting.angle);
        let worst = meetings.best_by(|meeting| -meeting.score());
        let finding = EntranceFinding {
            doorway: worst.doorway,
            angle: worst.angle,
            see: worst.see,
            places: group.places.count(),
            met: worst.met(context),
            barred: worst.barred.most,
            ways_in: meetings.count(),
            mean_angle: angle,
        };
        Judged::new(score, angle, FigureUnit::Degrees, finding)
    }
}

/// One way in and the seats.
struct Meeting {
    doorway: ItemId,
    /// Mean over the seat places of the angle between the way they face and the way to the entrance, degrees.
    angle: f64,
    /// Mean of that angle's score.
    faced: f64,
    /// Share of the seat places that see it, each by the share of the doorway that it sees.
    sight: f64,
    /// How many see more than half of it.
    see: usize,
    glimpses: Vec<Glimpse>,
    /// 100 where only fronts are met, 0 where only backs are.
    fronts: f64,
    welcome: f64,
    barred: Across,
}

impl Meeting {
    fn of(context: &CriteriaContext, group: &Group, doorway: &Outlook) -> Self {
        let Outlook { on_wall, target } = doorway;
        let angles = group.places.map(|place| angle_between(place.facing, target.middle() - place.eye));
        let sights = group.places.map(|place| context.seen_from(place, target).share);
        let glimpses = arrival(context, on_wall);
        Self {
            doorway: on_wall.id,
            angle: angles.mean(|angle| *angle),
            faced: angles.mean(|angle| FACING.at(*angle)),
            sight: sights.mean(|share| *share),
            see: sights.iter().filter(|share| **share > SEES).count(),
            fronts: fronts_met(group, target.middle()),
            welcome: welcome(context, &glimpses),
            glimpses,
            barred: returns_across(context, on_wall),
        }
    }

    fn score(&self) -> f64 {
        let whole = ANGLE * self.faced + SIGHT * 100.0 * self.sight + MET * self.fronts + FIRST_SEEN * self.welcome;
        whole - BARRED * self.barred.weighed
    }

    fn met(&self, context: &CriteriaContext) -> Option<Met> {
        self.back(context).or_else(|| first_seen(context, &self.glimpses).map(Met::First))
    }

    /// The back that fills most of the field on arrival.
    fn back(&self, context: &CriteriaContext) -> Option<Met> {
        let angle_of = |piece: PieceId| -> f64 {
            let its = |glimpse: &&Glimpse| glimpse.near == Some((piece, Side::Back));
            self.glimpses.iter().filter(its).map(|glimpse| glimpse.angle).sum()
        };
        let seats = context.in_room.layout.placed.iter().map(|placed| placed.piece);
        let seats = seats.filter(|piece| context.brief().piece(*piece).is_some_and(|piece| piece.kind.is_seat()));
        let seat = best_by(seats, |seat| angle_of(*seat))?;
        let angle = angle_of(seat);
        (angle >= WORTH_SAYING).then_some(Met::Back { seat, angle })
    }
}

/// How far one who comes in meets fronts rather than backs, 0 to 100: each seat place by how it is turned to the doorway,
/// the near ones more than the far.
fn fronts_met(group: &Group, doorway: Point) -> f64 {
    /// A seat this much farther off counts half as much, mm (ours, no source).
    const HALVES: f64 = 2000.0;
    /// Who sits in the doorway itself is met neither by front nor by back.
    const NEITHER: f64 = 50.0;
    let met = group.places.iter().filter_map(|place| {
        let way = doorway - place.eye;
        let turned = place.facing.dot(way.unit()?);
        Some((50.0 * (1.0 + turned), 1.0 / (1.0 + way.norm() / HALVES)))
    });
    weighted_mean(met).unwrap_or(NEITHER)
}
