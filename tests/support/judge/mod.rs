//! A judge of plans: what somebody who draws rooms would call odd in one, each oddity with its figure.
//!
//! It reads the JSON that `rank --json` prints and the brief of the scenario, and shares no code with the solver: the terms
//! and rules that a plan is made from are not asked, only where things stand. All on plain `[x, y]`, mm.

mod before;
mod behind;
mod ends;
mod group;
mod laid;
mod read;
pub(crate) mod room;
mod scene;
mod screen;
mod sizes;
pub(crate) mod standing;

pub(crate) use scene::{Kept, Scene};

/// Something odd in a plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub(crate) enum Mark {
    /// The screen stands off the axis of the main seat that faces it; mm.
    ScreenOffAxis,
    /// From every run of the main seat the head turns far to the screen; degrees.
    HeadTurn,
    /// A wall, a fixed thing or a piece between seat and screen; mm2 of the view.
    Between,
    /// The table stands off the axis of its seat; mm.
    TableOffAxis,
    /// Something close before a seat that is not the main one; mm.
    Knees,
    /// Two seats nearly touch; mm.
    Elbows,
    /// A wall or a fixed thing close before the main seat; mm.
    WallBefore,
    /// A piece across a doorway or an opening; mm of depth.
    AcrossOpening,
    /// The main seat stands free near a wall that has nothing in it to keep off; mm to the wall.
    FreeByWall,
    /// Behind a seat a slot that nobody passes and nothing explains; mm.
    Slot,
    /// A seat, a table or a unit is larger than people have them; mm over.
    Stretched,
    /// A lamp or a side table is at no seat's end; mm to the nearest.
    AwayFromEnds,
    /// Two lamps, or two side tables, at one end.
    TwoAtOneEnd,
    /// Two armchairs are neither mirrored nor centred together; mm.
    PairAskew,
    /// Two seats are too far apart for one group; mm.
    GroupWide,
    /// The rug does not reach under the sofa's front; percent of it.
    RugShort,
    /// The rug lies off the axis; mm.
    RugOffAxis,
    /// A seat is turned from the group; degrees.
    TurnedAway,
}

impl Mark {
    /// Every mark, in the order they are told.
    pub(crate) const ALL: [Self; 18] = [
        Self::ScreenOffAxis,
        Self::HeadTurn,
        Self::Between,
        Self::TableOffAxis,
        Self::Knees,
        Self::Elbows,
        Self::WallBefore,
        Self::AcrossOpening,
        Self::FreeByWall,
        Self::Slot,
        Self::Stretched,
        Self::AwayFromEnds,
        Self::TwoAtOneEnd,
        Self::PairAskew,
        Self::GroupWide,
        Self::RugShort,
        Self::RugOffAxis,
        Self::TurnedAway,
    ];
}

/// A mark in one plan.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Odd {
    pub(crate) mark: Mark,
    /// The pieces that it is about; what is no piece by what it is.
    pub(crate) who: Vec<String>,
    /// Its figure, as [`Mark`] says; NaN never.
    pub(crate) figure: f64,
}

impl Odd {
    /// A mark about some pieces, with its figure.
    fn of(mark: Mark, who: &[&str], figure: f64) -> Self {
        Self { mark, who: who.iter().map(|&name| name.to_owned()).collect(), figure }
    }
}

/// Everything odd in a plan, in the order of [`Mark::ALL`].
pub(crate) fn odd(scene: &Scene) -> Vec<Odd> {
    let judges =
        [screen::odd, laid::odd, before::odd, behind::odd, sizes::odd, ends::odd, group::odd] as [fn(&Scene) -> _; 7];
    let mut all: Vec<Odd> = judges.into_iter().flat_map(|judge| judge(scene)).collect();
    all.sort_by_key(|odd| odd.mark);
    all
}
