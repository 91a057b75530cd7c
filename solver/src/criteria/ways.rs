//! Ways: how easily one walks through the room, how much of its floor one walks to, and whether the main routes leave the
//! group in peace.
//!
//! What a route needs is its clearance (HUD 1973, 2010 ADA Standards; see `model/data/clearances.yaml`); routes behind a group
//! rather than through it, and floor that is not cut off, are common practice.

use elbowroom_model::{Brief, Clearance, PieceId, Point};

use super::across_group::{Through, through_group};
use super::criteria_context::CriteriaContext;
use super::curve::{Curve, mean};
use super::judged::{Absent, FigureUnit, Judged, Missing};
use super::on_wall::{OnWall, entrances};
use super::one_or_more::OneOrMore;
use super::walked_floor::WalkedFloor;
use super::walkers::passes_behind;
use super::yardstick::Yardstick;
use crate::best_by;
use crate::routes::{End, Route};

/// Width over what is needed, to score (ours, no source): just enough is fair, half as much again is full.
const WIDTH: Curve = Curve(&[(0.9, 0.0), (1.0, 60.0), (1.5, 100.0)]);

/// The straight way over the walk, to score (ours, no source).
const STRAIGHT: Curve = Curve(&[(0.4, 0.0), (1.0, 100.0)]);

/// What a main route counts against a lesser one (ours, no source).
const MAIN: f64 = 2.0;
const LESSER: f64 = 1.0;

/// What width counts against length (ours, no source).
const OF_WIDTH: f64 = 0.6;

/// The walked share of the free floor over that in the empty room, to score (ours, no source): the floor before seats is
/// narrower than a passage in any room.
const WALKED: Curve = Curve(&[(0.5, 0.0), (0.9, 100.0)]);

/// What the walked floor counts against the routes (ours, no source).
const OF_FLOOR: f64 = 0.25;

/// What a main route takes off that cuts through the group over this length or more, mm (ours, no source).
const CUT: f64 = 30.0;
const CUT_LENGTH: f64 = 1000.0;

/// A main route whose straight way is a larger share of its walk is no detour worth saying (ours, no source).
const AS_GOOD_AS_STRAIGHT: f64 = 0.95;

/// What ways is made of.
#[derive(Debug, Clone, PartialEq)]
pub struct WaysFinding {
    /// The tightest way.
    pub tightest: Tightest,
    /// The main way that makes the longest detour; `None` where none is worth saying.
    pub detour: Option<Detour>,
    /// How the main ways pass the group.
    pub past_group: PastGroup,
    /// How much of the free floor one walks to.
    pub floor: WalkedFloor,
}

/// Where a way starts and where it leads.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ends {
    /// An entrance.
    pub from: End,
    /// Where it leads.
    pub to: End,
}

/// The way that has the least width over what it needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tightest {
    /// Its ends.
    pub ends: Ends,
    /// Its width, mm.
    pub width: f64,
    /// What it needs, mm.
    pub needs: f64,
}

/// A way that is longer than straight.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Detour {
    /// Its ends.
    pub ends: Ends,
    /// How much longer the walk is, a share of the straight way.
    pub longer: f64,
}

/// How the main ways pass the group.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PastGroup {
    /// One cuts through it.
    Through {
        /// Its ends.
        ends: Ends,
        /// The two pieces that it cuts between.
        between: [PieceId; 2],
    },
    /// One goes behind it.
    Behind(Ends),
    /// None goes through it.
    Aside,
    /// There is no main way.
    NoMainWay,
}

/// The yardstick. Where nothing stands that a way must lead to, no seat among it, there is nowhere to walk: that counts
/// nothing.
pub(super) struct Ways;

impl Yardstick for Ways {
    type Subject<'a> = ();
    type Finding = WaysFinding;

    fn subject(brief: &Brief) -> Result<(), Missing> {
        entrances(brief).map(|_| ()).ok_or(Missing::Routes)
    }

    fn judge<'a>(context: &CriteriaContext<'a>, (): &()) -> Judged<Self::Finding> {
        let walks = OneOrMore::of(context.in_room.routes.iter().map(|route| Walk::of(context, route)));
        let Some(walks) = walks else { return Judged::absent(Absent::Ways) };
        let eases = walks.weighted_mean(Walk::ease, |walk| if walk.is_main() { MAIN } else { LESSER });
        let cut = mean(walks.iter().filter(|walk| walk.is_main()).map(Walk::cut)).unwrap_or(0.0);
        let tightest = walks.best_by(|walk| -walk.room());
        let Route { width, needs, .. } = *tightest.route;
        let floor = context.walked_floor;
        let finding = WaysFinding {
            tightest: Tightest { ends: tightest.ends(), width, needs },
            detour: detour(&walks),
            past_group: past_group(&walks),
            floor,
        };
        let eases = (1.0 - OF_FLOOR) * eases + OF_FLOOR * WALKED.at(floor.against_empty());
        let score = (eases - CUT * cut).max(0.0);
        Judged::new(score, width, FigureUnit::Millimetres, finding)
    }
}

fn detour(walks: &OneOrMore<Walk>) -> Option<Detour> {
    let longest = best_by(walks.iter().filter(|walk| walk.is_main()), |walk| -walk.straight)?;
    let longer = 1.0 / longest.straight - 1.0;
    (longest.straight < AS_GOOD_AS_STRAIGHT).then(|| Detour { ends: longest.ends(), longer })
}

fn past_group(walks: &OneOrMore<Walk>) -> PastGroup {
    let main = || walks.iter().filter(|walk| walk.is_main());
    let cuts = main().filter_map(|walk| Some((walk, walk.through?)));
    if let Some((walk, through)) = best_by(cuts, |(_, through)| through.length) {
        return PastGroup::Through { ends: walk.ends(), between: through.between };
    }
    match main().find(|walk| walk.behind) {
        Some(walk) => PastGroup::Behind(walk.ends()),
        None if main().next().is_some() => PastGroup::Aside,
        None => PastGroup::NoMainWay,
    }
}

/// A route, judged.
struct Walk<'a> {
    route: &'a Route,
    /// The straight way over the walk, 0 to 1.
    straight: f64,
    through: Option<Through>,
    /// A main route that passes the back of the main seat.
    behind: bool,
}

impl<'a> Walk<'a> {
    fn of(context: &CriteriaContext<'a>, route: &'a Route) -> Self {
        let ends = end_of(context, route.from).zip(end_of(context, route.to));
        let direct = ends.map_or(0.0, |(from, to)| (to - from).norm());
        let straight = route.length.filter(|length| *length > 0.0).map_or(1.0, |length| (direct / length).min(1.0));
        let passed = context.line_of(route).zip(context.group.as_ref().map(|group| group.main));
        Self {
            route,
            straight,
            through: passed.and_then(|(line, seat)| through_group(context, seat, line)),
            behind: passed.is_some_and(|(line, seat)| passes_behind(seat, line)),
        }
    }

    const fn ends(&self) -> Ends {
        Ends { from: self.route.from, to: self.route.to }
    }

    fn is_main(&self) -> bool {
        self.route.rule == Clearance::Walkway
    }

    /// Width over what is needed.
    fn room(&self) -> f64 {
        if self.route.needs > 0.0 { self.route.width / self.route.needs } else { f64::INFINITY }
    }

    fn ease(&self) -> f64 {
        OF_WIDTH * WIDTH.at(self.room()) + (1.0 - OF_WIDTH) * STRAIGHT.at(self.straight)
    }

    fn cut(&self) -> f64 {
        self.through.map_or(0.0, |through| (through.length / CUT_LENGTH).min(1.0))
    }
}

/// The middle of an end: of a doorway, of the edge one stands before, or of the front of a piece.
fn end_of(context: &CriteriaContext, end: End) -> Option<Point> {
    match end {
        End::Item(id) => OnWall::of(context.brief(), id).map(|on_wall| on_wall.middle()),
        End::Fixed(id) => context.brief().room.used_floor(id).map(|floor| floor.middle()),
        End::Piece(piece) => {
            let (left, right) = context.in_room.layout.of(piece)?.front();
            Some((left + right) * 0.5)
        }
    }
}
