//! Openness: sight of what is to stay open, backs to what is not, and how much of the room one sees on coming in.
//!
//! What one sees on coming in is the isovist of Benedikt 1979; low or no backs across an open side are common practice.

use elbowroom_model::{Brief, ItemId, ItemKind, Stance};

use super::across::{Across, Bar, backs_across};
use super::criteria_context::CriteriaContext;
use super::curve::{mean, weighted_mean};
use super::isovist::{STANDING_EYE, floor_seen, isovist_area};
use super::judged::{FigureUnit, Judged, Missing};
use super::obstacles::{Obstacle, bodies};
use super::on_wall::{OnWall, Outlook, entrances};
use super::one_or_more::{OneOrBoth, OneOrMore};
use super::sight::{Eye, seen};
use super::tolerance::JUST_INSIDE;
use super::yardstick::Yardstick;

/// What an opening counts against the sight on arrival (ours, no source).
const OPENING: f64 = 2.0;
const ARRIVAL: f64 = 1.0;

/// What the seats count against the entrance in the sight of one opening (ours, no source).
const FROM_SEATS: f64 = 2.0;
const FROM_ENTRANCE: f64 = 1.0;

/// What backs across the whole of an open side take off its score (ours, no source).
const CLOSED: f64 = 60.0;

/// What openness is made of.
#[derive(Debug, Clone, PartialEq)]
pub struct OpennessFinding {
    /// The openings with a stance.
    pub sides: Vec<SideFinding>,
    /// What one sees who comes in; `None` without an entrance.
    pub arrival: Option<ArrivalFinding>,
}

/// An opening with a stance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum SideFinding {
    /// It is to stay open.
    Open {
        /// The opening.
        opening: ItemId,
        /// Mean share that the seat places have before them and see, 0 to 1; `None` where no seat stands.
        from_seats: Option<f64>,
        /// Mean share that one sees from the entrances; `None` without one, or where it is the entrance itself.
        from_entrance: Option<f64>,
        /// What stands across it.
        closed: Option<Bar>,
    },
    /// It is to be turned from.
    Away {
        /// The opening.
        opening: ItemId,
        /// Mean share that the seat places have behind them, 0 to 1; `None` where no seat stands.
        turned_from: Option<f64>,
    },
}

/// What one sees who comes in, against the empty room; the mean over the entrances.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ArrivalFinding {
    /// Area of the isovist, 0 to 1: what is taller than the eye hides all behind it.
    pub isovist: f64,
    /// Floor in sight, 0 to 1.
    pub floor: f64,
}

/// The yardstick. Where no seat stands nobody sees an open side from one, and nobody turns from the other: that part of
/// an opening counts nothing; what one sees who comes in counts as ever.
pub(super) struct Openness;

/// The openings with a stance, the entrances, or both.
type Sights<'a> = OneOrBoth<OneOrMore<(Outlook<'a>, Stance)>, OneOrMore<Outlook<'a>>>;

impl Yardstick for Openness {
    type Subject<'a> = Sights<'a>;
    type Finding = OpennessFinding;

    fn subject(brief: &Brief) -> Result<Self::Subject<'_>, Missing> {
        OneOrBoth::of(OneOrMore::of(openings(brief)), entrances(brief)).ok_or(Missing::EntranceOrStance)
    }

    fn judge<'a>(context: &CriteriaContext<'a>, sights: &Self::Subject<'a>) -> Judged<Self::Finding> {
        let side = |(opening, stance): &(Outlook, Stance)| OpenSide::of(context, opening, *stance);
        let (score, share, sides, arrival) = match sights {
            OneOrBoth::One(openings) => {
                let sides = openings.map(side);
                (sides.mean(OpenSide::score), sides.mean(OpenSide::kept), Some(sides), None)
            }
            OneOrBoth::Other(entrances) => {
                let arrival = arrival(context, entrances);
                (arrival.score(), arrival.floor, None, Some(arrival))
            }
            OneOrBoth::Both(openings, entrances) => {
                let (sides, arrival) = (openings.map(side), arrival(context, entrances));
                let weight = OPENING * sides.count() as f64;
                let both = sides.mean(OpenSide::score) * weight + arrival.score() * ARRIVAL;
                (both / (weight + ARRIVAL), sides.mean(OpenSide::kept), Some(sides), Some(arrival))
            }
        };
        let sides = sides.iter().flat_map(OneOrMore::iter).map(OpenSide::finding).collect();
        let finding = OpennessFinding { sides, arrival };
        Judged::new(score, 100.0 * share, FigureUnit::Percent, finding)
    }
}

/// The openings with a stance.
fn openings(brief: &Brief) -> impl Iterator<Item = (Outlook<'_>, Stance)> {
    OnWall::all(brief).filter_map(|on_wall| {
        let ItemKind::Opening(opening) = &on_wall.item.kind else { return None };
        let has_stance = opening.stance != Stance::None;
        has_stance.then_some((Outlook::of(brief, on_wall)?, opening.stance))
    })
}

/// An opening with a stance, and the seats.
struct OpenSide {
    opening: ItemId,
    stance: Stance,
    /// Mean share that the seat places have before them and see; `None` where no seat stands.
    from_seats: Option<f64>,
    /// Mean share that one sees from the entrances; `None` without one, or where it is the entrance itself.
    from_entrance: Option<f64>,
    /// Mean share that the seat places have behind them; `None` where no seat stands.
    turned_from: Option<f64>,
    closed: Across,
}

impl OpenSide {
    fn of(context: &CriteriaContext, opening: &Outlook, stance: Stance) -> Self {
        let Outlook { on_wall, target } = opening;
        let sights: Vec<_> = context.places().map(|place| context.seen_from(place, target)).collect();
        let entrances = entrances(context.brief());
        let doorways = entrances.iter().flat_map(OneOrMore::iter).filter(|doorway| doorway.on_wall.id != on_wall.id);
        let on_arrival = doorways.map(|doorway| {
            let eye = Eye { at: doorway.target.middle(), height: STANDING_EYE };
            seen(eye, None, target, &context.barriers).share
        });
        Self {
            opening: on_wall.id,
            stance,
            from_seats: mean(sights.iter().map(|seen| seen.share)),
            from_entrance: mean(on_arrival),
            turned_from: mean(sights.iter().map(|seen| 1.0 - seen.before)),
            closed: backs_across(context, on_wall),
        }
    }

    /// The share that is as its stance wants it: seen, or turned from.
    fn kept(&self) -> f64 {
        match self.stance {
            Stance::Away => self.turned_from.unwrap_or(0.0),
            Stance::Open | Stance::None => {
                let from_seats = self.from_seats.unwrap_or(0.0);
                let entrance = self.from_entrance.map(|share| (share, FROM_ENTRANCE));
                weighted_mean([(from_seats, FROM_SEATS)].into_iter().chain(entrance)).unwrap_or(from_seats)
            }
        }
    }

    fn score(&self) -> f64 {
        match self.stance {
            Stance::Away => 100.0 * self.kept(),
            Stance::Open | Stance::None => (100.0 * self.kept() - CLOSED * self.closed.weighed).max(0.0),
        }
    }

    fn finding(&self) -> SideFinding {
        let &Self { opening, stance, from_seats, from_entrance, turned_from, closed } = self;
        match stance {
            Stance::Away => SideFinding::Away { opening, turned_from },
            Stance::Open | Stance::None => {
                SideFinding::Open { opening, from_seats, from_entrance, closed: closed.most }
            }
        }
    }
}

fn arrival(context: &CriteriaContext, entrances: &OneOrMore<Outlook>) -> ArrivalFinding {
    let each = entrances.map(|doorway| ArrivalFinding::from(context, &doorway.on_wall));
    ArrivalFinding { isovist: each.mean(|one| one.isovist), floor: each.mean(|one| one.floor) }
}

impl ArrivalFinding {
    fn from(context: &CriteriaContext, doorway: &OnWall) -> Self {
        let brief = context.brief();
        let at = doorway.middle() + doorway.inward * JUST_INSIDE;
        let (eye, outline) = (Eye { at, height: STANDING_EYE }, brief.room.outline());
        let tall = |all: &[Obstacle]| -> Vec<Obstacle> {
            all.iter().filter(|obstacle| obstacle.height >= STANDING_EYE).cloned().collect()
        };
        let (furnished, bare) = (&context.barriers.obstacles, bodies(brief, context.in_room.site));
        let ratio = |seen: f64, of: f64| if of > 0.0 { (seen / of).clamp(0.0, 1.0) } else { 1.0 };
        Self {
            isovist: ratio(isovist_area(at, &outline, &tall(furnished)), isovist_area(at, &outline, &tall(&bare))),
            floor: ratio(floor_seen(eye, &outline, furnished), floor_seen(eye, &outline, &bare)),
        }
    }

    fn score(&self) -> f64 {
        50.0 * (self.isovist + self.floor)
    }
}
