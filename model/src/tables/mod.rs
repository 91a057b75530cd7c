//! Figures of the trade that a scenario may leave out: sizes, clearances, and what the criteria rest on.
//!
//! The figures themselves live in `model/data/*.yaml`, each with its tag and source; a user's table goes over them.

mod apply;
mod bases;
mod composition;
mod file;
mod fixtures;
mod plausible;
mod sections;
mod words;

use std::sync::LazyLock;

use enum_map::EnumMap;

use crate::fault::Fault;
use crate::kind::PieceKind;
use crate::piece::{SizeRange, Step};
use crate::report::Report;
use crate::rules::{Clearance, ClearanceFigure, Rules};
use crate::unit::Unit;
use crate::yaml::{Node, typed};

pub use bases::basis;
pub use composition::price;
pub use file::{Profile, TableFile, Tag};
pub use fixtures::{FixtureUse, fixture_use};
pub use plausible::{Built, built};
pub use sections::{UsualSection, usual_section};
pub(crate) use words::{Meaning, key_meant, meaning};

const SIZES: &str = include_str!("../../data/sizes.yaml");
const CLEARANCES: &str = include_str!("../../data/clearances.yaml");

/// A figure's range with the tag and source of its row.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct TableRange {
    /// Least that people buy, mm.
    pub least: f64,
    /// What most people want, mm.
    pub usual: f64,
    /// Most that people buy, mm.
    pub most: f64,
    /// Tag and source, as told: `(P) drawing-office metric list`.
    pub source: String,
}

/// Sizes of one kind of piece.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct KindSizes {
    /// Along the back.
    pub width: TableRange,
    /// Along the back of a corner sofa with a second return.
    pub u_width: Option<TableRange>,
    /// A corner sofa's return.
    pub return_length: Option<TableRange>,
    /// Away from the back.
    pub depth: TableRange,
    /// Above the floor, mm.
    pub height: f64,
    /// What a millimetre counts in the size value.
    pub weight: f64,
    /// Sizes that it comes in, smallest first.
    pub steps: Vec<SeatedStep>,
    /// Widths by how many sit on it, fewest first.
    pub by_places: Vec<PlacesWidth>,
}

/// How wide a seat for so many is.
#[derive(Debug, Clone, PartialEq)]
pub struct PlacesWidth {
    /// How many sit on it.
    pub seats: u32,
    /// Along its back.
    pub width: TableRange,
}

/// A size that a kind comes in, with the people who sit at it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SeatedStep {
    /// Places at a dining table of this size.
    pub seats: Option<u32>,
    /// The size.
    pub size: Step,
}

/// The tables in force.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Tables {
    sizes: EnumMap<PieceKind, KindSizes>,
    clearances: EnumMap<Clearance, EnumMap<Profile, ClearanceFigure>>,
}

impl TableRange {
    /// The range without its source.
    #[must_use]
    pub const fn range(&self) -> SizeRange {
        SizeRange { least: self.least, usual: self.usual, most: self.most }
    }
}

static BUILT_IN: LazyLock<Result<Tables, Vec<Fault>>> = LazyLock::new(read_built_in);

fn read_built_in() -> Result<Tables, Vec<Fault>> {
    let alone = |fault: Box<Fault>| vec![*fault];
    let file = TableFile {
        units: None,
        sizes: Some(typed::of_own(SIZES).map_err(alone)?),
        clearances: Some(typed::of_own(CLEARANCES).map_err(alone)?),
    };
    let mut tables = Tables::default();
    tables.put_file_over(&file, &Node::NOTHING)?;
    Ok(tables)
}

impl Tables {
    /// The tables that come with the program.
    ///
    /// # Errors
    /// Faults of the data files, which tests keep from happening.
    pub fn built_in() -> Result<Self, Vec<Fault>> {
        BUILT_IN.clone()
    }

    /// The built-in tables with a user's over them.
    ///
    /// # Errors
    /// The faults of the user's table. Their places are told in words: they are not places of the scenario.
    pub fn with(user: Option<&str>) -> Result<Self, Vec<Fault>> {
        let mut tables = Self::built_in()?;
        if let Some(text) = user {
            tables.put_over(text).map_err(|faults| faults.into_iter().map(of_the_table).collect::<Vec<_>>())?;
        }
        Ok(tables)
    }

    /// The sizes of `kind`.
    #[must_use]
    pub fn sizes(&self, kind: PieceKind) -> KindSizes {
        self.sizes[kind].clone()
    }

    /// The rules of `profile`.
    #[must_use]
    pub fn rules(&self, profile: Profile) -> Rules {
        Rules::new(profile.key(), |clearance| self.clearances[clearance][profile].clone())
    }

    fn put_over(&mut self, text: &str) -> Result<(), Vec<Fault>> {
        let tree = Node::read(text).map_err(|fault| vec![*fault])?;
        let (tree, faults) = crate::yaml::shape::hold_to(tree, &file::SCHEMA);
        if !faults.is_empty() {
            return Err(faults);
        }
        let file: TableFile = typed::typed(&tree).map_err(|fault| vec![*fault])?;
        self.put_file_over(&file, &tree)
    }

    fn put_file_over(&mut self, file: &TableFile, tree: &Node) -> Result<(), Vec<Fault>> {
        let mut report = Report::new(tree, file.units.unwrap_or(Unit::Millimetre));
        self.apply(file, &mut report);
        let faults = report.into_faults();
        if faults.is_empty() { Ok(()) } else { Err(faults) }
    }
}

fn of_the_table(fault: Fault) -> Fault {
    let place = fault.place.map_or(String::new(), |place| format!(", line {}", place.line));
    Fault { message: format!("In the table{place}: {}", fault.message), place: None, ..fault }
}
