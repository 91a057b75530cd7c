//! A room's result: ranked options, what was refused, what would help. Fields are in the order of the format.
//!
//! Lengths mm, angles degrees counter-clockwise from +x, areas m2, plan coordinates.

mod largest;
mod option;
mod piece;
mod plan_value;
mod refused;
mod way;

use std::collections::BTreeMap;

use elbowroom_model::{Brief, Clearance, Point};
use elbowroom_solver::answer::{Answer, Work};
use serde::ser::SerializeMap;
use serde::{Serialize, Serializer};

pub(crate) use option::OptionResult;
pub(super) use plan_value::TermResult;
pub(crate) use refused::RemedyResult;
pub(super) use way::{GapResult, RouteResult, TurningCircleResult};

use crate::words::answer::notices;
use refused::RefusedResult;

/// Name and version of the format.
pub(crate) const FORMAT: &str = "elbowroom-result/1";

/// The whole result of one room.
#[derive(Debug, Serialize)]
pub(crate) struct RankResult<'a> {
    /// Name and version of the format.
    format: &'static str,
    /// The room as closed.
    room: RoomResult<'a>,
    /// The clearances in force.
    rules: RulesResult<'a>,
    /// Every option that fits, best first.
    options: Vec<OptionResult<'a>>,
    /// Arrangements that do not fit.
    refused: Vec<RefusedResult<'a>>,
    /// What would help, where nothing fits.
    remedies: Vec<RemedyResult>,
    /// Cautions, assumptions, what was left out.
    notices: Vec<String>,
    /// What it took.
    work: WorkResult,
}

impl<'a> RankResult<'a> {
    /// What `answer` says.
    pub(crate) fn of(answer: &'a Answer) -> Self {
        let brief = &answer.brief;
        let decided = answer.undecided() == 0;
        Self {
            format: FORMAT,
            room: RoomResult::of(brief),
            rules: RulesResult(brief),
            options: answer.options.iter().map(|option| OptionResult::of(brief, option)).collect(),
            refused: answer.refused.iter().map(|refusal| RefusedResult::of(brief, refusal)).collect(),
            remedies: answer.remedies.iter().map(|remedy| RemedyResult::of(brief, remedy, decided)).collect(),
            notices: notices(answer),
            work: WorkResult::of(&answer.work),
        }
    }
}

/// The room as closed.
#[derive(Debug, Serialize)]
struct RoomResult<'a> {
    /// Its name.
    name: &'a str,
    /// Whom it is planned for; absent where nobody says.
    #[serde(skip_serializing_if = "Option::is_none")]
    client: Option<&'a str>,
    /// What is noted of it; absent where nothing is.
    #[serde(skip_serializing_if = "Option::is_none")]
    note: Option<&'a str>,
    /// Clockwise, walls as measured.
    outline: Vec<Point>,
    /// m2.
    area: f64,
    /// How far the survey failed to close; null where walls give coordinates or diagonals were fitted.
    misclosure: Option<MisclosureResult>,
}

impl<'a> RoomResult<'a> {
    fn of(Brief { room, order, .. }: &'a Brief) -> Self {
        let survey = &room.survey;
        let misclosure = survey.misclosure.map(|vector| MisclosureResult { vector, spread: survey.spread });
        let (client, note) = (order.client.as_deref(), order.note.as_deref());
        Self { name: &room.name, client, note, outline: room.outline(), area: room.area() / 1e6, misclosure }
    }
}

/// How far the survey failed to close.
#[derive(Debug, Serialize)]
struct MisclosureResult {
    /// End minus start, mm.
    vector: Point,
    /// It was spread over the walls.
    spread: bool,
}

/// The clearances in force in a brief: the profile they start from, then each by its key with its figure, mm; null where it
/// is not in force.
#[derive(Debug)]
struct RulesResult<'a>(&'a Brief);

impl Serialize for RulesResult<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let rules = &self.0.rules;
        let asked = || Clearance::ALL.iter().filter(|clearance| self.0.asks(**clearance));
        let mut map = serializer.serialize_map(Some(asked().count() + 1))?;
        map.serialize_entry("profile", &rules.profile)?;
        for clearance in asked() {
            map.serialize_entry(clearance.key(), &rules.figure(*clearance).figure)?;
        }
        map.end()
    }
}

/// What it took, counted.
#[derive(Debug, Serialize)]
struct WorkResult {
    /// Arrangements looked at, those that cheap bounds dropped included.
    arrangements: usize,
    /// Those that cheap bounds dropped.
    dropped: usize,
    /// Those that turned out to be another, since a piece that they name found no room; told there.
    twins: usize,
    /// Linear programs solved.
    programs: usize,
    /// Nodes of the searches for the largest pieces.
    nodes: usize,
    /// Nodes and programs given up because nothing under them could be better.
    given_up: usize,
    /// Layouts, of all pieces or of some, in which all but the ways through held.
    layouts: usize,
    /// Those of them in which a way through was too narrow.
    too_narrow: usize,
    /// How often a rule left no place, by its stable name.
    dead_ends: BTreeMap<&'static str, usize>,
    /// The one field that differs from run to run; null where it would be in the way of that.
    seconds: f64,
}

impl WorkResult {
    fn of(work: &Work) -> Self {
        Self {
            arrangements: work.arrangements,
            dropped: work.dropped,
            twins: work.twins,
            programs: work.programs,
            nodes: work.nodes,
            given_up: work.given_up,
            layouts: work.layouts,
            too_narrow: work.too_narrow,
            dead_ends: work.dead_ends.iter().map(|(rule, count)| (rule.key(), *count)).collect(),
            seconds: work.seconds,
        }
    }
}
