//! A dining table that is to seat so many has a place for each: along its long sides, and where those are too few at both ends,
//! with room behind each side that is used for a chair.

use elbowroom_model::{Clearance, Rule};

use super::figure::figure;
use crate::program::Row;
use crate::rules::fronts::{Zone, clear_of_piece, clear_of_room};
use crate::rules::tolerance::NARROWER;
use crate::rules::{Alternative, Cause, LayoutRule, Linear, Pose, Requirement, RuleContext, With};

const RULE: Rule = Rule::Clearance(Clearance::DiningPlaces);

/// A table with both its ends used has so many ends.
const ENDS: u32 = 2;

/// More than any table seats at one end.
const MOST_AT_END: u32 = 8;

/// Places at a dining table.
#[derive(Debug)]
pub(super) struct DiningPlaces;

impl LayoutRule for DiningPlaces {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        let Some(table) = Table::of(context, pose) else { return Vec::new() };
        let ends = table.short_sides();
        let clear = ends.iter().flat_map(|zone| clear_of_room(context, pose, RULE, zone));
        std::iter::once(table.long_enough()).chain(clear).collect()
    }

    fn between(&self, context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        let one_way = |table: &Pose, other: &Pose| -> Vec<Requirement> {
            let sides = Table::of(context, table).map_or_else(Vec::new, |table| table.short_sides());
            sides.iter().flat_map(|zone| clear_of_piece(table, RULE, zone, other)).collect()
        };
        one_way(first, second).into_iter().chain(one_way(second, first)).collect()
    }
}

/// A table that is to seat so many.
struct Table<'p> {
    pose: &'p Pose,
    seats: u32,
    /// Edge that each place has, mm.
    place: f64,
    /// Kept behind a side with chairs, mm.
    reach: f64,
}

/// Which two sides of a table are its long ones.
#[derive(Clone, Copy)]
struct Sides<'l> {
    long: &'l Linear,
    short: &'l Linear,
    /// How many of the long sides stand at no wall.
    longs: u32,
    /// The same of the short ones.
    shorts: u32,
    /// How long a short one may be, mm.
    short_most: f64,
}

impl<'p> Table<'p> {
    fn of(context: &RuleContext<'_>, pose: &'p Pose) -> Option<Self> {
        let place = figure(context, Clearance::DiningPlaces)?;
        let reach = context.brief.rules.get(pose.piece.keeps_clear()?);
        Some(Self { pose, seats: pose.piece.seats?, place, reach })
    }

    /// Of a table as wide as deep and more its front and back are long, of others its ends.
    fn as_wide<R>(&self, with: impl Fn(Sides<'_>) -> R) -> R {
        let (width, depth) = (self.pose.width(), self.pose.depth());
        let short_most = self.pose.piece.depth.most;
        with(Sides { long: &width, short: &depth, longs: self.at_no_wall(), shorts: ENDS, short_most })
    }

    fn as_deep<R>(&self, with: impl Fn(Sides<'_>) -> R) -> R {
        let (width, depth) = (self.pose.width(), self.pose.depth());
        let short_most = self.pose.piece.width.most;
        with(Sides { long: &depth, short: &width, longs: ENDS, shorts: self.at_no_wall(), short_most })
    }

    /// Its front, and its back where that is no wall's.
    const fn at_no_wall(&self) -> u32 {
        if self.pose.wall().is_some() { 1 } else { 2 }
    }

    /// Whether it may come deeper than wide: what comes in steps does not.
    fn may_be_deep(&self) -> bool {
        self.pose.piece.steps.is_empty() && self.pose.piece.depth.most > self.pose.piece.width.least + NARROWER
    }

    fn is_deep(&self) -> Row {
        self.pose.width().plus(&self.pose.depth(), -1.0).at_most(-NARROWER)
    }

    fn is_wide(&self) -> Row {
        self.pose.width().plus(&self.pose.depth(), -1.0).at_least(0.0)
    }

    /// Its edges hold so many places.
    fn long_enough(&self) -> Requirement {
        let mut alternatives = self.as_wide(|sides| self.enough(sides));
        if self.may_be_deep() {
            alternatives.iter_mut().for_each(|way| way.rows.push(self.is_wide()));
            let mut deep = self.as_deep(|sides| self.enough(sides));
            deep.iter_mut().for_each(|way| way.rows.push(self.is_deep()));
            alternatives.append(&mut deep);
        }
        let cause = Cause { rule: RULE, piece: self.pose.id, with: With::Itself };
        Requirement { cause, alternatives }
    }

    /// So many places at each short side, and the rest along the long ones.
    fn enough(&self, sides: Sides<'_>) -> Vec<Alternative> {
        let most = self.seats.div_ceil(sides.shorts).min((sides.short_most / self.place) as u32).min(MOST_AT_END);
        let ways = (0..=most).map(|each| {
            let rest = self.seats.saturating_sub(each * sides.shorts).div_ceil(sides.longs);
            let edge = |places: u32| self.place * f64::from(places);
            Alternative::of_rows(vec![sides.long.at_least(edge(rest)), sides.short.at_least(edge(each))])
        });
        ways.collect()
    }

    /// The floor behind chairs at its short sides, kept clear unless the long ones hold all places.
    fn short_sides(&self) -> Vec<Zone> {
        let (from, to) = self.pose.stretch();
        let (zero, depth) = (Linear::default(), self.pose.depth());
        let enough = |sides: Sides<'_>| sides.long.at_least(self.place * f64::from(self.seats.div_ceil(sides.longs)));
        let mut unless = vec![self.as_wide(enough)];
        if self.may_be_deep() {
            unless.push(self.is_deep());
        }
        let beside =
            |along: [&Linear; 2]| Zone { shape: self.pose.block(along, [&zero, &depth]), unless: unless.clone() };
        let mut zones =
            vec![beside([&from.clone().shifted(-self.reach), &from]), beside([&to, &to.clone().shifted(self.reach)])];
        if self.may_be_deep() {
            let unless = vec![self.as_deep(enough), self.is_wide()];
            let front = self.pose.block([&from, &to], [&depth, &depth.clone().shifted(self.reach)]);
            let behind = self.pose.block([&from, &to], [&Linear::constant(-self.reach), &zero]);
            zones.push(Zone { shape: front, unless: unless.clone() });
            zones.extend(self.pose.wall().is_none().then_some(Zone { shape: behind, unless }));
        }
        zones
    }
}
