//! What is clear in an option: gaps that rules ask for, ways through, room to turn.

use elbowroom_model::{Brief, Clearance, Point};
use elbowroom_solver::answer::{Gap, Thing};
use elbowroom_solver::routes::{Pinch, Route};
use serde::Serialize;

/// A clear distance that a rule asks for.
#[derive(Debug, Serialize)]
pub(in crate::result) struct GapResult<'a> {
    /// Names of the two.
    between: [&'a str; 2],
    /// As laid out, mm.
    clear: f64,
    /// By the rule, mm.
    needs: f64,
    /// The rule.
    rule: Clearance,
}

impl<'a> GapResult<'a> {
    /// What is told of a gap.
    pub(in crate::result) fn of(brief: &'a Brief, gap: &Gap) -> Self {
        let between = gap.between.map(|thing| thing.name(brief));
        Self { between, clear: gap.clear, needs: gap.needs, rule: gap.rule }
    }
}

/// A route.
#[derive(Debug, Serialize)]
pub(in crate::result) struct RouteResult<'a> {
    /// Name of the entrance.
    from: &'a str,
    /// Name of the item or piece.
    to: &'a str,
    /// Width of the widest disc that can travel it, mm.
    width: f64,
    /// What it must have, mm.
    needs: f64,
    /// Where it is narrowest; null where nothing but its own mouths limits it.
    pinch: Option<PinchResult<'a>>,
    /// Shortest walk, mm.
    length: Option<f64>,
}

impl<'a> RouteResult<'a> {
    /// What is told of a route.
    pub(in crate::result) fn of(brief: &'a Brief, route: &Route) -> Self {
        Self {
            from: route.from.name(brief),
            to: route.to.name(brief),
            width: route.width,
            needs: route.needs,
            pinch: route.pinch.map(|pinch| PinchResult::of(brief, pinch)),
            length: route.length,
        }
    }
}

/// Where a route is narrowest.
#[derive(Debug, Serialize)]
struct PinchResult<'a> {
    /// Names of what stands on either side.
    between: [&'a str; 2],
    /// Nearest places on the two.
    at: [Point; 2],
}

impl<'a> PinchResult<'a> {
    fn of(brief: &'a Brief, Pinch { between, at }: Pinch) -> Self {
        Self { between: between.map(|shape| Thing::from(shape).name(brief)), at }
    }
}

/// A free circle to turn a wheelchair in, which an entrance leads to.
#[derive(Debug, Serialize)]
pub(in crate::result) struct TurningCircleResult {
    /// Its middle.
    pub(in crate::result) centre: Point,
    /// What the rule asks for, mm.
    pub(in crate::result) diameter: f64,
}
