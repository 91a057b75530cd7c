//! Entrance: how the seats meet one who comes in.

use elbowroom_model::article::{capital, the};
use elbowroom_model::{Brief, Criterion, PieceId, Point, WallItem};

use super::Judgement;
use super::across::{Across, returns_across};
use super::arrival::{Glimpse, Side, arrival, first_seen, welcome};
use super::curve::{mean, through, weighted_mean};
use super::setting::{Setting, entrances};
use super::sight::{Target, angle_between};
use crate::best_by;

const BASIS: &str = "common practice: seats that have the way in before them, fronts rather than backs on arrival, and \
                     nothing across the way";

/// Angle between the way a seat faces and the way to the entrance, degrees, to score (common practice, no source): up to
/// an easy turn of the head it is full, square to the side it is fair, with the back to the door it is nothing.
const FACING: [(f64, f64); 4] = [(0.0, 100.0), (60.0, 100.0), (90.0, 60.0), (180.0, 0.0)];

/// What the parts count (ours, no source).
const ANGLE: f64 = 0.35;
const SIGHT: f64 = 0.25;
const MET: f64 = 0.25;
const FIRST_SEEN: f64 = 0.15;

/// What a return across the whole way in takes off.
const BARRED: f64 = 30.0;

pub(super) fn judge(setting: &Setting) -> Option<Judgement> {
    let meetings: Vec<Meeting> =
        entrances(setting.brief()).filter_map(|(_, doorway)| Meeting::of(setting, doorway)).collect();
    let score = mean(meetings.iter().map(Meeting::score))?;
    let angle = mean(meetings.iter().map(|meeting| meeting.angle))?;
    // The one that is met worst is told.
    let told = best_by(&meetings, |meeting| -meeting.score())?;
    let mut reason = told.reason(setting);
    if meetings.len() > 1 {
        let all = if meetings.len() == 2 { "both".to_owned() } else { format!("all {}", meetings.len()) };
        reason += &format!("; over {all} ways in, the angle is {angle:.0} degrees on the mean");
    }
    Some(Judgement::new(Criterion::Entrance, score, (angle, "deg"), capital(&reason) + ".", BASIS))
}

pub(super) fn left_out(brief: &Brief) -> Option<String> {
    let none = entrances(brief).next().is_none();
    none.then(|| "Entrance is left out: no door or opening leads to the entrance (leads_to: entrance).".to_owned())
}

/// One way in and the seats.
struct Meeting<'a> {
    doorway: &'a WallItem,
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
    met: f64,
    welcome: f64,
    barred: Across,
}

impl<'a> Meeting<'a> {
    fn of(setting: &Setting<'a>, doorway: &'a WallItem) -> Option<Self> {
        let target = Target::of(setting.brief(), doorway)?;
        let angles = || setting.places.iter().map(|place| angle_between(place.facing, target.middle() - place.eye));
        let sights: Vec<f64> = setting.places.iter().map(|place| setting.seen_from(place, &target).share).collect();
        let glimpses = arrival(setting, doorway);
        Some(Self {
            doorway,
            angle: mean(angles())?,
            faced: mean(angles().map(|angle| through(&FACING, angle)))?,
            sight: mean(sights.iter().copied())?,
            see: sights.iter().filter(|share| **share > 0.5).count(),
            met: fronts_met(setting, target.middle())?,
            welcome: weighted_mean(glimpses.iter().map(|g| (welcome(setting, g), g.angle))).unwrap_or(60.0),
            glimpses,
            barred: returns_across(setting, doorway),
        })
    }

    fn score(&self) -> f64 {
        let whole = ANGLE * self.faced + SIGHT * 100.0 * self.sight + MET * self.met + FIRST_SEEN * self.welcome;
        whole - BARRED * self.barred.weighed
    }

    fn reason(&self, setting: &Setting) -> String {
        let name = the(&self.doorway.name);
        let mut reason = format!(
            "{name} lies {:.0} degrees from the way the seats face and {} it",
            self.angle,
            self.who_see(setting)
        );
        if let Some((piece, angle)) = self.backs(setting) {
            reason += &format!("; on arrival one meets {angle:.0} degrees of the back of {}", the(setting.name(piece)));
        } else if let Some((what, _)) = first_seen(setting, &self.glimpses) {
            reason += &format!("; {what} is seen first from it");
        }
        if let Some(bar) = self.barred.most {
            reason += &format!("; {}", bar.words(setting, "the way in"));
        }
        reason
    }

    fn who_see(&self, setting: &Setting) -> String {
        match (self.see, setting.places.len()) {
            (0, 1) => "the seat does not see".to_owned(),
            (1, 1) => "the seat sees".to_owned(),
            (0, _) => "no seat place sees".to_owned(),
            (see, all) if see == all => format!("all {all} seat places see"),
            (see, all) => format!("{see} of {all} seat places see"),
        }
    }

    /// The back that fills most of the field on arrival, and its angle.
    fn backs(&self, setting: &Setting) -> Option<(PieceId, f64)> {
        let angle_of = |piece: PieceId| -> f64 {
            let its = |glimpse: &&Glimpse| glimpse.near == Some((piece, Side::Back));
            self.glimpses.iter().filter(its).map(|glimpse| glimpse.angle).sum()
        };
        let seats = setting.scene.layout.placed.iter().map(|placed| placed.piece);
        let seats = seats.filter(|piece| setting.brief().piece(*piece).is_some_and(|piece| piece.kind.is_seat()));
        let backs = seats.map(|piece| (piece, angle_of(piece)));
        best_by(backs, |(_, angle)| *angle).filter(|(_, angle)| *angle >= 1.0)
    }
}

/// How far one who comes in meets fronts rather than backs, 0 to 100: each seat place by how it is turned to the doorway,
/// the near ones more than the far.
fn fronts_met(setting: &Setting, doorway: Point) -> Option<f64> {
    /// A seat this much farther off counts half as much, mm (ours, no source).
    const HALVES: f64 = 2000.0;
    let met = setting.places.iter().filter_map(|place| {
        let way = doorway - place.eye;
        let turned = place.facing.dot(way.unit()?);
        Some((50.0 * (1.0 + turned), 1.0 / (1.0 + way.norm() / HALVES)))
    });
    weighted_mean(met)
}
