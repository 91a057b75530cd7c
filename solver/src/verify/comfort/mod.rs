//! The rules of comfort, from their text alone: each says what a layout gives of it, pair by pair, and a layout may fall
//! short only where it owns to that. One file a rule.

mod before_opening;
mod behind_seat;
mod between_seats;
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
mod solid_wall;
mod table_axis;
mod watched;

use elbowroom_model::{Clearance, Rule};

use self::measure::{Measure, worst};
use super::checked_layout::CheckedLayout;
use super::checked_room::CheckedRoom;
use crate::arrangement::Arrangement;
use crate::layout::Layout;
use crate::rules::Cause;

pub(super) use eased::{Eased, past_easing};

/// A rule of comfort.
struct Comfort {
    rule: Rule,
    /// What a layout gives of it, for each pair that it is asked of.
    measures: fn(&CheckedLayout<'_>) -> Vec<Measure>,
    /// Pieces no larger than laid out keep it too: what it asks for only grows when they shrink.
    when_smaller: bool,
}

const RULES: &[Comfort] = &[
    Comfort { rule: Rule::Clearance(Clearance::LegRoom), measures: leg_room::measures, when_smaller: true },
    Comfort { rule: Rule::Clearance(Clearance::FrontOpen), measures: front_open::measures, when_smaller: false },
    Comfort { rule: Rule::Clearance(Clearance::BetweenSeats), measures: between_seats::measures, when_smaller: true },
    Comfort { rule: Rule::Clearance(Clearance::TableAxis), measures: table_axis::measures, when_smaller: false },
    Comfort { rule: Rule::Clearance(Clearance::ScreenAxis), measures: screen_axis::measures, when_smaller: false },
    Comfort { rule: Rule::ScreenTurn, measures: screen_turn::measures, when_smaller: false },
    Comfort { rule: Rule::Clearance(Clearance::ScreenSight), measures: screen_sight::measures, when_smaller: false },
    Comfort { rule: Rule::Clearance(Clearance::SolidWall), measures: solid_wall::measures, when_smaller: true },
    Comfort {
        rule: Rule::Clearance(Clearance::BeforeOpening),
        measures: before_opening::measures,
        when_smaller: false,
    },
    Comfort { rule: Rule::Clearance(Clearance::BehindSeat), measures: behind_seat::measures, when_smaller: false },
    Comfort { rule: Rule::Use, measures: in_use::measures, when_smaller: true },
    Comfort { rule: Rule::ReturnOffWall, measures: return_off_wall::measures, when_smaller: true },
];

/// What a layout gives of every rule, as laid out.
pub(super) fn measures(scene: &CheckedLayout<'_>) -> Vec<Measure> {
    RULES.iter().flat_map(|comfort| (comfort.measures)(scene)).collect()
}

/// What it gives of the rules that hold of smaller pieces too.
pub(super) fn measures_when_smaller(scene: &CheckedLayout<'_>) -> Vec<Measure> {
    RULES.iter().filter(|comfort| comfort.when_smaller).flat_map(|comfort| (comfort.measures)(scene)).collect()
}

/// What `layout` gives of the rule between the two of `cause`, mm: the clear distance of a gap, how far off an axis, how much
/// of a width is before no wall. `None` where it is no one length, or where the rule asks nothing of the two.
#[must_use]
pub fn given(checked: &CheckedRoom<'_>, layout: &Layout, arrangement: &Arrangement, cause: &Cause) -> Option<f64> {
    measured(&CheckedLayout::of(checked, layout, arrangement), cause)?.given
}

/// What the rule asks for between the two of `cause`, mm, measured as [`given`] is.
#[must_use]
pub fn wanted(checked: &CheckedRoom<'_>, layout: &Layout, arrangement: &Arrangement, cause: &Cause) -> Option<f64> {
    measured(&CheckedLayout::of(checked, layout, arrangement), cause)?.wanted
}

fn measured(scene: &CheckedLayout<'_>, cause: &Cause) -> Option<Measure> {
    let comfort = RULES.iter().find(|comfort| comfort.rule == cause.rule)?;
    worst((comfort.measures)(scene), cause)
}
