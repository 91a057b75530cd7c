//! A room as it stands, as JSON. Lengths mm, angles degrees counter-clockwise from +x, plan coordinates.

use elbowroom_model::{Brief, Criterion, PieceKind, Point, Rule};
use elbowroom_solver::Placed;
use elbowroom_solver::answer::{Answer, RankedOption, TurningCircle, degrees, thousandth};
use elbowroom_solver::criteria::Judgement;
use elbowroom_solver::judge::{Gain, JudgedRoom, gains};
use elbowroom_solver::verify::Breach;
use serde::Serialize;

use super::rank::{GapResult, RouteResult, TermResult, TurningCircleResult};
use crate::words::answer::{self as said, notices_as_it_stands, reason, title};

/// Name and version of the format.
const FORMAT: &str = "elbowroom-judge/1";

/// A room as it stands.
#[derive(Debug, Serialize)]
pub(crate) struct JudgeResult<'a> {
    /// Name and version of the format.
    format: &'static str,
    /// What the room is called.
    name: &'a str,
    /// The room in words, as an option would be called.
    title: String,
    /// Name of the seat that the room is read from.
    main_seat: &'a str,
    /// Every rule that does not hold.
    broken: Vec<BrokenResult<'a>>,
    /// The scores by the wishes, 0 to 100.
    score: f64,
    /// Each criterion that applies.
    criteria: Vec<CriterionAsItStands>,
    /// Option 1 of the same file; null where nothing fits.
    first: Option<FirstResult<'a>>,
    /// Pieces as they stand.
    pieces: Vec<PlacedResult<'a>>,
    /// Names of pieces that do not stand.
    left_out: Vec<&'a str>,
    /// Terms of composition that cost something, what costs most first.
    composition: Vec<TermResult<'a>>,
    /// Clear distances that a rule asks for.
    gaps: Vec<GapResult<'a>>,
    /// Routes from every entrance.
    routes: Vec<RouteResult<'a>>,
    /// Where a wheelchair can turn; null where no rule asks for it, or there is no place.
    turning_circle: Option<TurningCircleResult>,
    /// Cautions, assumptions, what was left out.
    notices: Vec<String>,
}

/// A rule that does not hold.
#[derive(Debug, Serialize)]
struct BrokenResult<'a> {
    /// By which the plan that `--draw` draws marks it, from 1.
    number: usize,
    /// Which.
    rule: Rule,
    /// Names of what breaks it, and of what it is broken against.
    between: Vec<&'a str>,
    /// What is missing, mm.
    short_by: f64,
    /// A sentence made from these.
    says: String,
}

/// One criterion of the room.
#[derive(Debug, Serialize)]
struct CriterionAsItStands {
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
    /// The score of option 1; null without one.
    first: Option<f64>,
    /// What option 1 gains; null without one, under 0 where it loses.
    gain: Option<f64>,
}

/// Option 1 of the same file.
#[derive(Debug, Serialize)]
struct FirstResult<'a> {
    /// Stable name of the arrangement.
    key: &'a str,
    /// The arrangement in words.
    title: String,
    /// 0 to 100.
    score: f64,
    /// What it gains over the room in all.
    gain: f64,
}

/// A piece as it stands.
#[derive(Debug, Serialize)]
struct PlacedResult<'a> {
    /// Its name.
    name: &'a str,
    /// Its kind.
    kind: Option<PieceKind>,
    /// The wall it stands at; null: it stands free.
    at_wall: Option<&'a str>,
    /// Convex, counter-clockwise.
    parts: Vec<Vec<Point>>,
    /// Degrees.
    facing: f64,
}

impl<'a> JudgeResult<'a> {
    /// What is told of a room, and of what the same file is ranked to.
    pub(crate) fn of(room: &'a JudgedRoom, answer: &'a Answer) -> Self {
        let (brief, first) = (&room.brief, answer.options.first());
        let gained = first.map_or_else(Vec::new, |first| gains(room, first));
        let circle = |TurningCircle { centre, diameter }| TurningCircleResult { centre, diameter };
        Self {
            format: FORMAT,
            name: &brief.room.name,
            title: title(brief, room),
            main_seat: brief.piece_name(room.main_seat),
            broken: broken(brief, &room.broken),
            score: room.score,
            criteria: room.judgements.iter().map(|one| CriterionAsItStands::of(brief, one, &gained)).collect(),
            first: first.map(|first| FirstResult::of(&answer.brief, first, room.score)),
            pieces: room.layout.placed.iter().map(|placed| PlacedResult::of(brief, placed)).collect(),
            left_out: room.layout.left_out.iter().map(|piece| brief.piece_name(*piece)).collect(),
            composition: room.composition.iter().map(|term| TermResult::of(brief, term)).collect(),
            gaps: room.gaps.iter().map(|gap| GapResult::of(brief, gap)).collect(),
            routes: room.routes.iter().map(|route| RouteResult::of(brief, route)).collect(),
            turning_circle: room.turning_circle.map(circle),
            notices: notices_as_it_stands(room, answer),
        }
    }
}

/// What is broken, in the order in which it is numbered.
fn broken<'a>(brief: &'a Brief, all: &[Breach]) -> Vec<BrokenResult<'a>> {
    all.iter().enumerate().map(|(place, breach)| BrokenResult::of(brief, breach, place + 1)).collect()
}

impl<'a> BrokenResult<'a> {
    fn of(brief: &'a Brief, breach: &Breach, number: usize) -> Self {
        Self {
            number,
            rule: breach.rule,
            between: breach.between.iter().map(|thing| thing.name(brief)).collect(),
            short_by: thousandth(breach.short_by),
            says: said::broken(brief, breach),
        }
    }
}

impl CriterionAsItStands {
    fn of(brief: &Brief, judgement: &Judgement, gained: &[Gain]) -> Self {
        let gain = gained.iter().find(|gain| gain.criterion == judgement.criterion);
        Self {
            name: judgement.criterion,
            score: judgement.score,
            weight: brief.wishes.get(judgement.criterion),
            figure: thousandth(judgement.figure),
            unit: judgement.unit.key(),
            reason: reason(brief, &judgement.finding),
            first: gain.map(|gain| gain.then),
            gain: gain.map(|gain| gain.by),
        }
    }
}

impl<'a> FirstResult<'a> {
    fn of(brief: &'a Brief, option: &'a RankedOption, now: f64) -> Self {
        let gain = thousandth(option.score - now);
        Self { key: &option.key, title: title(brief, option), score: option.score, gain }
    }
}

impl<'a> PlacedResult<'a> {
    fn of(brief: &'a Brief, placed: &Placed) -> Self {
        let corner = |at: &Point| Point::new(thousandth(at.x), thousandth(at.y));
        let parts = placed.parts();
        Self {
            name: brief.piece_name(placed.piece),
            kind: brief.piece(placed.piece).map(|piece| piece.kind),
            at_wall: placed.at_wall.map(|wall| brief.room.wall_name(wall)),
            parts: parts.iter().map(|part| part.corners().iter().map(corner).collect()).collect(),
            facing: degrees(placed.facing),
        }
    }
}
