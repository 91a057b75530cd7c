//! Openness: sight of what is to stay open, backs to what is not, and how much of the room one sees on coming in.

use elbowroom_model::article::{capital, the};
use elbowroom_model::{Brief, Criterion, ItemKind, Stance, WallItem};

use super::Judgement;
use super::across::{Across, backs_across};
use super::curve::{mean, weighted_mean};
use super::isovist::{STANDING_EYE, floor_seen, isovist_area};
use super::obstacles::{Obstacle, bodies};
use super::setting::{Setting, entrances};
use super::sight::{Eye, Target, seen};
use super::tolerance::JUST_INSIDE;

const BASIS: &str = "common practice: low or no backs across an open side; area seen on arrival as an isovist (Benedikt 1979, \
                     published)";

/// What an opening counts against the sight on arrival (ours, no source).
const OPENING: f64 = 2.0;
const ARRIVAL: f64 = 1.0;

/// What the seats count against the entrance in the sight of one opening (ours, no source).
const FROM_SEATS: f64 = 2.0;
const FROM_ENTRANCE: f64 = 1.0;

/// What backs across the whole of an open side take off its score.
const CLOSED: f64 = 60.0;

pub(super) fn judge(setting: &Setting) -> Option<Judgement> {
    let sides: Vec<OpenSide> = openings(setting.brief()).filter_map(|side| OpenSide::of(setting, side)).collect();
    let arrival = Arrival::of(setting);
    let parts = sides.iter().map(|side| (side.score(), OPENING));
    let score = weighted_mean(parts.chain(arrival.iter().map(|arrival| (arrival.score(), ARRIVAL))))?;

    let mut reasons: Vec<String> = sides.iter().map(|side| side.reason(setting)).collect();
    reasons.extend(arrival.iter().map(Arrival::reason));
    let figure = mean(sides.iter().map(OpenSide::kept)).or(arrival.map(|arrival| arrival.floor))?;
    let reason = capital(&reasons.join("; ")) + ".";
    Some(Judgement::new(Criterion::Openness, score, (100.0 * figure, "percent"), reason, BASIS))
}

pub(super) fn left_out(brief: &Brief) -> Option<String> {
    let none = openings(brief).next().is_none() && entrances(brief).next().is_none();
    none.then(|| "Openness is left out: there is no entrance, and no opening has a stance of open or away.".to_owned())
}

/// The openings with a stance.
fn openings(brief: &Brief) -> impl Iterator<Item = (&WallItem, Stance)> {
    brief.room.items.iter().filter_map(|item| match &item.kind {
        ItemKind::Opening(opening) if opening.stance != Stance::None => Some((item, opening.stance)),
        _ => None,
    })
}

/// An opening with a stance, and the seats.
struct OpenSide<'a> {
    item: &'a WallItem,
    stance: Stance,
    /// Mean share that the seat places have before them and see.
    from_seats: f64,
    /// Mean share that one sees from the entrances; `None` without one, or where it is the entrance itself.
    from_entrance: Option<f64>,
    /// Mean share that the seat places have behind them.
    turned_from: f64,
    closed: Across,
}

impl<'a> OpenSide<'a> {
    fn of(setting: &Setting<'a>, (item, stance): (&'a WallItem, Stance)) -> Option<Self> {
        let target = Target::of(setting.brief(), item)?;
        let sights = || setting.places.iter().map(|place| setting.seen_from(place, &target));
        let doorways =
            entrances(setting.brief()).map(|(_, doorway)| doorway).filter(|doorway| doorway.name != item.name);
        let on_arrival = doorways.filter_map(|doorway| {
            let from = Target::of(setting.brief(), doorway)?.middle();
            Some(seen(Eye { at: from, height: STANDING_EYE }, None, &target, &setting.barriers).share)
        });
        Some(Self {
            item,
            stance,
            from_seats: mean(sights().map(|seen| seen.share))?,
            from_entrance: mean(on_arrival),
            turned_from: mean(sights().map(|seen| 1.0 - seen.before))?,
            closed: backs_across(setting, item),
        })
    }

    /// The share that is as its stance wants it: seen, or turned from.
    fn kept(&self) -> f64 {
        match self.stance {
            Stance::Away => self.turned_from,
            Stance::Open | Stance::None => {
                let entrance = self.from_entrance.map(|share| (share, FROM_ENTRANCE));
                weighted_mean([(self.from_seats, FROM_SEATS)].into_iter().chain(entrance)).unwrap_or(0.0)
            }
        }
    }

    fn score(&self) -> f64 {
        match self.stance {
            Stance::Away => 100.0 * self.turned_from,
            Stance::Open | Stance::None => (100.0 * self.kept() - CLOSED * self.closed.weighed).max(0.0),
        }
    }

    fn reason(&self, setting: &Setting) -> String {
        let name = the(&self.item.name);
        if self.stance == Stance::Away {
            return format!("the seats turn from {:.0} % of {name}", 100.0 * self.turned_from);
        }
        let mut reason = format!("the seats see {:.0} % of {name}", 100.0 * self.from_seats);
        if let Some(share) = self.from_entrance {
            reason += &format!(", one who comes in {:.0} %", 100.0 * share);
        }
        match self.closed.most {
            Some(bar) => reason + ", and " + &bar.words(setting, "it"),
            None => reason + ", and no back stands across it",
        }
    }
}

/// What one sees who comes in, against the empty room; the mean over the entrances.
struct Arrival {
    /// Area of the isovist: what is taller than the eye hides all behind it.
    isovist: f64,
    /// Floor in sight.
    floor: f64,
}

impl Arrival {
    fn of(setting: &Setting) -> Option<Self> {
        let doorways = entrances(setting.brief()).filter_map(|(_, doorway)| Self::from(setting, doorway));
        let each: Vec<Self> = doorways.collect();
        Some(Self {
            isovist: mean(each.iter().map(|one| one.isovist))?,
            floor: mean(each.iter().map(|one| one.floor))?,
        })
    }

    fn from(setting: &Setting, doorway: &WallItem) -> Option<Self> {
        let room = &setting.brief().room;
        let (left, right) = room.ends(doorway)?;
        let at = (left + right) * 0.5 + room.wall(doorway.wall)?.inward() * JUST_INSIDE;
        let (eye, outline) = (Eye { at, height: STANDING_EYE }, room.outline());
        let tall = |all: &[Obstacle]| -> Vec<Obstacle> {
            all.iter().filter(|obstacle| obstacle.height >= STANDING_EYE).cloned().collect()
        };
        let (furnished, bare) = (&setting.barriers.obstacles, bodies(setting.brief(), setting.scene.site));
        let ratio = |seen: f64, of: f64| if of > 0.0 { (seen / of).clamp(0.0, 1.0) } else { 1.0 };
        Some(Self {
            isovist: ratio(isovist_area(at, &outline, &tall(furnished)), isovist_area(at, &outline, &tall(&bare))),
            floor: ratio(floor_seen(eye, &outline, furnished), floor_seen(eye, &outline, &bare)),
        })
    }

    fn score(&self) -> f64 {
        50.0 * (self.isovist + self.floor)
    }

    fn reason(&self) -> String {
        let (area, floor) = (100.0 * self.isovist, 100.0 * self.floor);
        format!("on arrival the eye has {area:.0} % of the area of the empty room and {floor:.0} % of its floor")
    }
}
