//! An option as the result has it: its decisions, its place in the order, how it was judged, what stands in it.

use elbowroom_model::{Brief, Criterion, PieceId, WallId, tables};
use elbowroom_solver::answer::{RankedOption, TurningCircle, TurnsIf, degrees};
use elbowroom_solver::arrangement::{Choices, SecondSeat};
use elbowroom_solver::criteria::Judgement;
use elbowroom_solver::ranking::SetAside;
use serde::Serialize;

use super::largest::LargestResult;
use super::piece::StandingResult;
use super::plan_value::{EasedResult, TermResult};
use super::way::{GapResult, RouteResult, TurningCircleResult};
use crate::words::answer::{left_out, reason, title};
use crate::words::firm::is_set_aside;

/// An option that fits.
#[derive(Debug, Serialize)]
pub(crate) struct OptionResult<'a> {
    /// From 1.
    rank: usize,
    /// Stable name of the arrangement.
    key: &'a str,
    /// The arrangement in words.
    title: String,
    /// The decisions.
    choices: ChoicesResult<'a>,
    /// Key of the best option that puts the main seat alike.
    family: &'a str,
    /// 0 to 100.
    score: f64,
    /// Share of the shifts of the wishes by up to one step that put it first.
    first_place_share: f64,
    /// Key of an option at least as good in every criterion and better in one.
    dominated_by: Option<&'a str>,
    /// No weighting puts it strictly first.
    never_first: bool,
    /// Its place by size, from 1: what settles ties of scores.
    by_size: usize,
    /// The least change of one wish that puts another in its place.
    turns_if: Option<TurnResult<'a>>,
    /// What sets it aside behind all others; null where nothing does.
    set_aside: Option<SetAsideResult>,
    /// Each criterion that applies.
    criteria: Vec<CriterionResult>,
    /// Pieces as they stand.
    pieces: Vec<StandingResult<'a>>,
    /// Pieces that found no room.
    left_out: Vec<LeftOutResult<'a>>,
    /// Clear distances that a rule asks for.
    gaps: Vec<GapResult<'a>>,
    /// Routes from every entrance.
    routes: Vec<RouteResult<'a>>,
    /// Where a wheelchair can turn; null where no rule asks for it.
    turning_circle: Option<TurningCircleResult>,
    /// Rules of comfort that could only be kept in part.
    eased: Vec<EasedResult<'a>>,
    /// What the plan costs, in millimetres of shortfall of a piece that counts 3.
    plan_value: f64,
    /// No plan of the arrangement costs less.
    plan_bound: f64,
    /// The bound lies within a hundredth of the value, or 25.
    plan_proven: bool,
    /// Terms of composition that cost something, what costs most first.
    composition: Vec<TermResult<'a>>,
    /// The same pieces as large as they can be together.
    largest: LargestResult<'a>,
    /// Value of the largest sizes.
    size_value: f64,
    /// Size value less the small terms that settle ties.
    objective: f64,
    /// No layout of the arrangement has more.
    bound: f64,
    /// The bound lies within a thousandth of the objective and every alternative was covered.
    proven: bool,
}

impl<'a> OptionResult<'a> {
    /// What is told of an option; `brief`: what it was solved for.
    pub(crate) fn of(brief: &'a Brief, option: &'a RankedOption) -> Self {
        let out = option.layout.left_out.iter();
        let circle = |TurningCircle { centre, diameter }| TurningCircleResult { centre, diameter };
        Self {
            rank: option.rank,
            key: &option.key,
            title: title(brief, option),
            choices: ChoicesResult::of(brief, &option.choices),
            family: &option.family,
            score: option.score,
            first_place_share: option.first_place_share,
            dominated_by: option.dominated_by.as_deref(),
            never_first: option.never_first,
            by_size: option.by_size,
            turns_if: option.turns_if.as_ref().map(TurnResult::of),
            set_aside: option.set_aside.as_ref().map(|aside| SetAsideResult::of(brief, option, aside)),
            criteria: option.judgements.iter().map(|judgement| CriterionResult::of(brief, judgement)).collect(),
            pieces: option.pieces(brief).map(|piece| StandingResult::of(brief, piece)).collect(),
            left_out: out.map(|piece| LeftOutResult::of(brief, *piece, option.planned.proven)).collect(),
            gaps: option.gaps.iter().map(|gap| GapResult::of(brief, gap)).collect(),
            routes: option.routes.iter().map(|route| RouteResult::of(brief, route)).collect(),
            turning_circle: option.turning_circle.map(circle),
            eased: option.eased.iter().map(|eased| EasedResult::of(brief, eased)).collect(),
            plan_value: option.planned.value,
            plan_bound: option.planned.bound,
            plan_proven: option.planned.proven,
            composition: option.planned.composition.iter().map(|term| TermResult::of(brief, term)).collect(),
            largest: LargestResult::of(brief, option),
            size_value: option.largest.size_value,
            objective: option.largest.objective,
            bound: option.largest.bound,
            proven: option.largest.proven,
        }
    }
}

/// The decisions of an option.
#[derive(Debug, Serialize)]
struct ChoicesResult<'a> {
    /// Wall behind the main seat; null: free-standing.
    seat_back: Option<&'a str>,
    /// Degrees.
    facing: f64,
    /// `left` or `right`; null where the main seat is no corner sofa.
    hand: Option<&'static str>,
    /// Wall of the media unit; null without one.
    media_wall: Option<&'a str>,
    /// Second seats and where they stand.
    second_seats: Vec<SecondSeatResult<'a>>,
}

impl<'a> ChoicesResult<'a> {
    fn of(brief: &'a Brief, choices: &Choices) -> Self {
        let wall = |wall: WallId| brief.room.wall_name(wall);
        let second =
            |seat: SecondSeat| SecondSeatResult { name: brief.piece_name(seat.piece), place: seat.place.key() };
        Self {
            seat_back: choices.seat_back.map(wall),
            facing: degrees(choices.facing),
            hand: choices.hand.map(elbowroom_model::Hand::key),
            media_wall: choices.media_wall.map(wall),
            second_seats: choices.seats().into_iter().map(second).collect(),
        }
    }
}

/// Where a second seat stands.
#[derive(Debug, Serialize)]
struct SecondSeatResult<'a> {
    /// Its name.
    name: &'a str,
    /// `opposite`, `left` or `right` of the main seat, as one sits.
    place: &'static str,
}

/// What would turn the order.
#[derive(Debug, Serialize)]
struct TurnResult<'a> {
    /// The wish to change.
    criterion: Criterion,
    /// To this, 0 to 5.
    weight: f64,
    /// Key of the option that then stands first.
    then_first: &'a str,
}

impl<'a> TurnResult<'a> {
    fn of(TurnsIf { criterion, weight, then_first }: &'a TurnsIf) -> Self {
        Self { criterion: *criterion, weight: *weight, then_first }
    }
}

/// What sets an option aside.
#[derive(Debug, Serialize)]
struct SetAsideResult {
    /// The criterion that it fails in.
    criterion: Criterion,
    /// Its score there, 0 to 100.
    score: f64,
    /// Why, one sentence.
    why: String,
}

impl SetAsideResult {
    fn of(brief: &Brief, option: &RankedOption, aside: &SetAside) -> Self {
        Self { criterion: aside.criterion, score: aside.score, why: is_set_aside(brief, option, aside) }
    }
}

/// One criterion of an option.
#[derive(Debug, Serialize)]
struct CriterionResult {
    /// Which.
    name: Criterion,
    /// 0 to 100.
    score: f64,
    /// The wish, 0 to 5.
    weight: f64,
    /// A figure that a tape can check.
    figure: f64,
    /// Unit of the figure.
    unit: &'static str,
    /// A sentence made from the figure.
    reason: String,
    /// Where the yardstick comes from.
    basis: &'static str,
}

impl CriterionResult {
    fn of(brief: &Brief, judgement: &Judgement) -> Self {
        Self {
            name: judgement.criterion,
            score: judgement.score,
            weight: brief.wishes.get(judgement.criterion),
            figure: judgement.figure,
            unit: judgement.unit.key(),
            reason: reason(brief, &judgement.finding),
            basis: tables::basis(judgement.criterion),
        }
    }
}

/// A piece that found no room.
#[derive(Debug, Serialize)]
struct LeftOutResult<'a> {
    /// Its name.
    name: &'a str,
    /// Why, one sentence.
    why: String,
}

impl<'a> LeftOutResult<'a> {
    fn of(brief: &'a Brief, piece: PieceId, is_proven: bool) -> Self {
        Self { name: brief.piece_name(piece), why: left_out(brief, piece, is_proven) }
    }
}
