//! The clearances that matter most to who lives in a room: from the seat to its table, from the seat to the screen, and the
//! narrowest of the ways.

use elbowroom_model::{Clearance, Point};
use elbowroom_solver::plan::Plan;

use super::Shown;
use crate::words::plan as words;

/// A clearance that matters.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Matter {
    /// Between which two places.
    pub(super) ends: [Point; 2],
    /// How wide, mm.
    pub(super) clear: f64,
    /// Whether a line that measures it may be moved aside: what shows where a way is narrowest may not.
    pub(super) slides: bool,
    /// What it is, with its figure.
    pub(super) said: String,
}

/// At most three of them.
pub(super) fn matters(shown: &Shown<'_>, plan: &Plan) -> Vec<Matter> {
    let gaps = [Clearance::SeatToTable, Clearance::ScreenToSeat].into_iter().filter_map(|rule| gap(shown, plan, rule));
    gaps.chain(narrowest(shown)).collect()
}

/// The first gap of a rule: the main seat's.
fn gap(shown: &Shown<'_>, plan: &Plan, rule: Clearance) -> Option<Matter> {
    let (gap, ends) = shown.gaps().iter().zip(&plan.gaps).find(|(gap, _)| gap.rule == rule)?;
    let [from, to] = gap.between.map(|thing| thing.name(shown.brief()));
    let said = words::clear_between(from, to, &shown.tape_with_unit(gap.clear));
    Some(Matter { ends: *ends, clear: gap.clear, slides: true, said })
}

/// The narrowest way, where something narrows it.
fn narrowest(shown: &Shown<'_>) -> Option<Matter> {
    let pinched = shown.routes().iter().filter_map(|route| Some((route, route.pinch.as_ref()?)));
    let (route, pinch) = pinched.min_by(|one, other| one.0.width.total_cmp(&other.0.width))?;
    let [from, to] = [route.from, route.to].map(|end| end.name(shown.brief()));
    let said = words::narrowest_way(from, to, &shown.tape_with_unit(route.width));
    Some(Matter { ends: pinch.at, clear: route.width, slides: false, said })
}
