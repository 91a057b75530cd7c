//! An option: one arrangement, its layout, its place in the order, and all that was measured of it.

use elbowroom_model::{Brief, Clearance, Criterion, Piece, PieceId, Point};

use super::eased::Eased;
use super::figures::{corners, degrees, parts};
use super::size::PieceSizes;
use super::thing::Thing;
use crate::arrangement::{Arrangement, Choices};
use crate::composition::{TermCost, worth};
use crate::criteria::Judgement;
use crate::layout::{Layout, Placed};
use crate::ranking::{SetAside, Turn};
use crate::routes::Route;
use crate::search::Found;

/// An option that fits.
#[derive(Debug, Clone, PartialEq)]
pub struct RankedOption {
    /// From 1.
    pub rank: usize,
    /// Stable name of the arrangement: the same from run to run.
    pub key: String,
    /// The seat that the arrangement is built about, by its place in the brief.
    pub main_seat: PieceId,
    /// The decisions.
    pub choices: Choices,
    /// Where everything stands, what was left out, and where a wheelchair turns.
    pub layout: Layout,
    /// How large each piece may be, in the order of [`Layout::placed`].
    pub sizes: Vec<PieceSizes>,
    /// Key of the best option that puts the main seat alike; its own where it is that.
    pub family: String,
    /// 0 to 100.
    pub score: f64,
    /// Share of the shifts of the wishes by up to one step that put it first.
    pub first_place_share: f64,
    /// Key of an option at least as good in every criterion and better in one.
    pub dominated_by: Option<String>,
    /// No weighting puts it strictly first.
    pub never_first: bool,
    /// Its place by size, from 1: what settles ties of scores.
    pub by_size: usize,
    /// The least change of one wish that puts another in its place.
    pub turns_if: Option<TurnsIf>,
    /// What sets it aside behind all others, under the wishes as they stand.
    pub set_aside: Option<SetAside>,
    /// All that could set it aside, each from a wish on.
    pub lapses: Vec<SetAside>,
    /// What each criterion that applies says of it.
    pub judgements: Vec<Judgement>,
    /// Clear distances that a rule asks for.
    pub gaps: Vec<Gap>,
    /// Routes from every entrance.
    pub routes: Vec<Route>,
    /// Where a wheelchair can turn; `None` where no rule asks for it.
    pub turning_circle: Option<TurningCircle>,
    /// Rules of comfort that could only be kept in part.
    pub eased: Vec<Eased>,
    /// What the plan costs, and what of that.
    pub planned: PlanValue,
    /// The same pieces as large as they can be together.
    pub largest: Largest,
}

impl RankedOption {
    /// Every piece that stands, in the order of the brief that it was solved for.
    pub fn pieces<'a>(&'a self, brief: &'a Brief) -> impl Iterator<Item = OptionPiece<'a>> {
        let each = self.layout.placed.iter().zip(&self.sizes);
        each.filter_map(|(placed, sizes)| Some(OptionPiece { piece: brief.piece(placed.piece)?, placed, sizes }))
    }

    /// How large a piece may be; `None` where it was left out.
    #[must_use]
    pub fn sizes_of(&self, piece: PieceId) -> Option<&PieceSizes> {
        self.sizes.iter().find(|sizes| sizes.piece == piece)
    }

    /// How many rules of comfort it keeps in part, each by the piece that lacks it.
    #[must_use]
    pub fn eased_rules(&self) -> usize {
        Eased::count(&self.eased)
    }

    /// What a criterion says of it; `None` where it does not apply.
    #[must_use]
    pub fn judgement(&self, criterion: Criterion) -> Option<&Judgement> {
        self.judgements.iter().find(|judgement| judgement.criterion == criterion)
    }
}

/// What a plan costs, in millimetres of shortfall of a piece that counts 3.
#[derive(Debug, Clone, PartialEq)]
pub struct PlanValue {
    /// Shortfall under the aims, terms of composition, optional pieces left out, and what is eased.
    pub value: f64,
    /// No plan of the arrangement costs less.
    pub bound: f64,
    /// The bound lies within a hundredth of the value, or 25.
    pub proven: bool,
    /// The terms that cost something, what costs most first.
    pub composition: Vec<TermCost>,
}

impl PlanValue {
    /// Of a plan that was found; `refund`: what was paid for easings that the second check finds needless.
    pub(crate) fn of(brief: &Brief, arrangement: &Arrangement, plan: &Found, refund: f64) -> Self {
        let may_be_left_out = |id: &PieceId| !arrangement.must_stand(brief, *id);
        let optional = brief.piece_ids().filter(may_be_left_out).filter_map(|id| brief.piece(id));
        let worth: f64 = optional.map(|piece| worth(piece, &brief.wishes)).sum();
        let (value, bound) = (worth - plan.objective - refund, worth - plan.bound - refund);
        Self { value, bound, proven: plan.is_proven_plan(value), composition: plan.composition.clone() }
    }
}

/// The largest pieces that the places of a plan leave room for.
#[derive(Debug, Clone, PartialEq)]
pub struct Largest {
    /// Where everything stands then.
    pub layout: Layout,
    /// Its routes.
    pub routes: Vec<Route>,
    /// Value of its sizes.
    pub size_value: f64,
    /// Size value less the small terms that settle ties.
    pub objective: f64,
    /// No layout of the plan's stands has more.
    pub bound: f64,
    /// The bound lies within a thousandth of the objective and every alternative was covered.
    pub proven: bool,
}

/// A piece of an option: as it was asked for, as it stands, and how large it may be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OptionPiece<'a> {
    /// As it was asked for.
    pub piece: &'a Piece,
    /// As it stands.
    pub placed: &'a Placed,
    /// How large it may be.
    pub sizes: &'a PieceSizes,
}

impl OptionPiece<'_> {
    /// Corners of its parts, counter-clockwise, to a thousandth of a millimetre: first its main run.
    #[must_use]
    pub fn parts(&self) -> Vec<Vec<Point>> {
        parts(self.placed)
    }

    /// Corners of its main run, counter-clockwise, to a thousandth of a millimetre.
    #[must_use]
    pub fn main(&self) -> Vec<Point> {
        corners(&self.placed.main())
    }

    /// The way that it faces, degrees counter-clockwise from +x, to a thousandth.
    #[must_use]
    pub fn facing(&self) -> f64 {
        degrees(self.placed.facing)
    }
}

/// What would turn the order.
#[derive(Debug, Clone, PartialEq)]
pub struct TurnsIf {
    /// The wish to change.
    pub criterion: Criterion,
    /// To this, 0 to 5.
    pub weight: f64,
    /// Key of the option that then stands first.
    pub then_first: String,
}

impl TurnsIf {
    /// A turn of the order, with the key of the option that it puts first.
    pub(crate) fn of(turn: &Turn, key: impl Fn(usize) -> String) -> Self {
        Self { criterion: turn.criterion, weight: turn.weight, then_first: key(turn.then_first) }
    }
}

/// A free circle to turn a wheelchair in, which an entrance leads to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TurningCircle {
    /// Its middle.
    pub centre: Point,
    /// What the rule asks for, mm.
    pub diameter: f64,
}

/// A clear distance that a rule asks for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gap {
    /// From the one to the other.
    pub between: [Thing; 2],
    /// As laid out, mm.
    pub clear: f64,
    /// By the rule, mm.
    pub needs: f64,
    /// The rule.
    pub rule: Clearance,
}
