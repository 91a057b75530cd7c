//! A room's line read back: what summaries, the index and comparisons tell of it.
//!
//! They are made from the line alone, whether it was solved in this run or in an earlier one, so they read the same.

use std::collections::BTreeMap;

use elbowroom_model::{Rule, Unit};
use elbowroom_solver::Size;
use serde::Deserialize;

/// A room's line.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub(crate) struct RoomLine {
    /// Where it came from.
    pub source: Option<String>,
    /// The name of its content.
    pub content: String,
    /// The unit that lengths are told in; `None` where something is wrong with the file.
    pub units: Option<Unit>,
    /// What is wrong with it.
    pub faults: Vec<LineFault>,
    /// What came of it; `None` where something is wrong with it.
    pub result: Option<LineResult>,
}

/// A fault.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub(crate) struct LineFault {
    /// What is wrong, one sentence.
    pub message: String,
    /// Where.
    pub place: Option<LinePlace>,
}

/// A place in a scenario's text.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub(crate) struct LinePlace {
    /// From 1.
    pub line: usize,
}

/// A result.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub(crate) struct LineResult {
    /// The room.
    pub room: LineRoom,
    /// The clearances in force.
    pub rules: LineRules,
    /// What fits, best first.
    pub options: Vec<LineOption>,
    /// What does not.
    pub refused: Vec<LineRefused>,
    /// What would help.
    pub remedies: Vec<LineRemedy>,
}

/// A room.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub(crate) struct LineRoom {
    /// Its name.
    pub name: String,
    /// m2.
    pub area: f64,
}

/// The clearances in force.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub(crate) struct LineRules {
    /// The profile they start from.
    pub profile: String,
    /// Each with its figure, mm; `None` where it is not in force.
    #[serde(flatten)]
    pub figures: BTreeMap<String, Option<f64>>,
}

/// What does not fit, or was not decided.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub(crate) struct LineRefused {
    /// The rule that fails.
    pub rule: String,
}

impl LineResult {
    /// How many arrangements were not decided within the work allowed.
    pub(crate) fn undecided(&self) -> usize {
        self.refused.iter().filter(|refused| refused.rule == Rule::Work.key()).count()
    }
}

/// What would help.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub(crate) struct LineRemedy {
    /// One sentence.
    pub sentence: String,
}

/// An arrangement that fits.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub(crate) struct LineOption {
    /// The arrangement's name.
    pub key: String,
    /// In words.
    pub title: String,
    /// 0 to 100.
    pub score: f64,
    /// Share of the shifts of the wishes that put it first.
    pub first_place_share: f64,
    /// What sets it aside.
    pub set_aside: Option<LineSetAside>,
    /// What is worth what.
    pub size_value: f64,
    /// Its sizes are proven largest.
    pub proven: bool,
    /// How it was judged.
    pub criteria: Vec<LineCriterion>,
    /// What stands in it.
    pub pieces: Vec<LinePiece>,
}

/// What sets an option aside.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub(crate) struct LineSetAside {
    /// Why, one sentence.
    pub why: String,
}

/// A criterion.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub(crate) struct LineCriterion {
    /// Which.
    pub name: String,
    /// 0 to 100.
    pub score: f64,
    /// The wish.
    pub weight: f64,
}

/// A piece.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub(crate) struct LinePiece {
    /// Its name.
    pub name: String,
    /// Its size as planned.
    pub size: LineSize,
    /// What was asked for, and how large it may be.
    pub range: LineRanges,
}

/// What was asked for of each dimension, and how large it may be.
#[derive(Debug, Clone, Copy, PartialEq, Deserialize)]
pub(crate) struct LineRanges {
    width: LineRange,
    #[serde(rename = "return")]
    return_length: Option<LineRange>,
    second_return: Option<LineRange>,
    depth: LineRange,
    return_depth: Option<LineRange>,
}

/// What was asked for of one dimension, and how large it may be, mm.
#[derive(Debug, Clone, Copy, PartialEq, Deserialize)]
pub(crate) struct LineRange {
    /// The least.
    pub least: f64,
    /// All pieces at theirs fit together.
    pub together: f64,
    /// The most.
    pub most: f64,
}

impl LineRanges {
    /// The largest that fits together.
    pub(crate) fn together(&self) -> Size {
        let of = |range: Option<LineRange>| range.map(|range| range.together);
        Size {
            width: self.width.together,
            return_length: of(self.return_length),
            second_return: of(self.second_return),
            depth: self.depth.together,
            return_depth: of(self.return_depth),
        }
    }

    /// Each dimension by its name.
    pub(crate) fn each(&self) -> impl Iterator<Item = (&'static str, &LineRange)> {
        let ranges = [
            ("width", Some(&self.width)),
            ("return", self.return_length.as_ref()),
            ("second return", self.second_return.as_ref()),
            ("depth", Some(&self.depth)),
            ("depth of the return", self.return_depth.as_ref()),
        ];
        ranges.into_iter().filter_map(|(name, range)| Some((name, range?)))
    }
}

/// A size, mm.
#[derive(Debug, Clone, Copy, PartialEq, Deserialize)]
pub(crate) struct LineSize {
    /// Along its back.
    pub width: f64,
    /// Of a corner sofa.
    #[serde(default, rename = "return")]
    pub return_length: Option<f64>,
    /// Of a corner sofa with two returns.
    #[serde(default)]
    pub second_return: Option<f64>,
    /// Away from its back.
    pub depth: f64,
    /// Of a return that has a depth of its own.
    #[serde(default)]
    pub return_depth: Option<f64>,
}

impl LineSize {
    /// As the solver has it.
    pub(crate) const fn whole(&self) -> Size {
        let Self { width, return_length, second_return, depth, return_depth } = *self;
        Size { width, return_length, second_return, depth, return_depth }
    }
}

/// How a room came out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Fate {
    /// Something fits.
    Fits,
    /// Nothing fits as asked.
    NothingFits,
    /// Nothing was found that fits, and it is not known whether anything does.
    Undecided,
    /// Its file is at fault.
    Faulty,
}

impl RoomLine {
    /// Reads a line.
    pub(crate) fn of(line: &str) -> Result<Self, serde_json::Error> {
        serde_json::from_str(line)
    }

    /// The unit that lengths of the room are told in.
    pub(crate) fn unit(&self) -> Unit {
        self.units.unwrap_or_default()
    }

    /// How the room came out.
    pub(crate) fn fate(&self) -> Fate {
        match &self.result {
            None => Fate::Faulty,
            Some(result) if !result.options.is_empty() => Fate::Fits,
            Some(result) if result.undecided() == 0 => Fate::NothingFits,
            Some(_) => Fate::Undecided,
        }
    }

    /// The option that stands first.
    pub(crate) fn best(&self) -> Option<&LineOption> {
        self.result.as_ref()?.options.first()
    }
}
