//! The rules of comfort, from their text alone: each says what a layout gives of it, pair by pair, and a layout may fall
//! short only where it owns to that. One file a rule.

mod before_opening;
mod behind_seat;
mod between_seats;
mod dining_places;
mod eased;
mod edge;
mod front_open;
mod in_use;
mod leg_room;
mod measure;
mod return_off_wall;
mod screen_axis;
mod screen_sight;
mod screen_turn;
mod seat_front;
mod shortfall;
mod solid_wall;
mod table_axis;
mod watched;

use self::measure::Measure;
use super::checked_layout::CheckedLayout;
use super::checked_room::CheckedRoom;
use crate::arrangement::Arrangement;
use crate::layout::Layout;

pub(super) use eased::{Eased, past_easing};
pub use shortfall::Shortfall;

/// A rule of comfort.
struct Comfort {
    /// What a layout gives of it, for each pair that it is asked of.
    measures: fn(&CheckedLayout<'_>) -> Vec<Measure>,
    /// Pieces no larger than laid out keep it too: what it asks for only grows when they shrink.
    when_smaller: bool,
}

const RULES: &[Comfort] = &[
    Comfort { measures: leg_room::measures, when_smaller: true },
    Comfort { measures: front_open::measures, when_smaller: false },
    Comfort { measures: between_seats::measures, when_smaller: true },
    Comfort { measures: table_axis::measures, when_smaller: false },
    Comfort { measures: screen_axis::measures, when_smaller: false },
    Comfort { measures: screen_turn::measures, when_smaller: false },
    Comfort { measures: screen_sight::measures, when_smaller: false },
    Comfort { measures: solid_wall::measures, when_smaller: true },
    Comfort { measures: before_opening::measures, when_smaller: false },
    Comfort { measures: behind_seat::measures, when_smaller: false },
    Comfort { measures: in_use::measures, when_smaller: true },
    Comfort { measures: return_off_wall::measures, when_smaller: true },
    Comfort { measures: dining_places::measures, when_smaller: false },
];

/// What a layout gives of every rule, as laid out.
pub(super) fn measures(scene: &CheckedLayout<'_>) -> Vec<Measure> {
    RULES.iter().flat_map(|comfort| (comfort.measures)(scene)).collect()
}

/// What it gives of the rules that hold of smaller pieces too.
pub(super) fn measures_when_smaller(scene: &CheckedLayout<'_>) -> Vec<Measure> {
    RULES.iter().filter(|comfort| comfort.when_smaller).flat_map(|comfort| (comfort.measures)(scene)).collect()
}

/// What a layout falls short of, each pair once.
#[must_use]
pub fn shortfalls(checked: &CheckedRoom<'_>, layout: &Layout, arrangement: &Arrangement) -> Vec<Shortfall> {
    let scene = CheckedLayout::of(checked, layout, arrangement);
    let mut told: Vec<(f64, Shortfall)> = Vec::new();
    for measure in measures(&scene).into_iter().filter(Measure::is_broken) {
        let (by, short) = (measure.short_by, Shortfall::of(measure));
        // A seat with two fronts lacks the same of the same twice: what it lacks most is told.
        match told.iter_mut().find(|(_, other)| other.rule == short.rule && other.between == short.between) {
            Some(other) if other.0 < by => *other = (by, short),
            Some(_) => {}
            None => told.push((by, short)),
        }
    }
    told.into_iter().map(|(_, short)| short).collect()
}
