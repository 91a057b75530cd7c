//! Collects the faults of one file, each with its place, and what must be told of a sound one, and reads lengths with a word for every way they can fail.

use crate::fault::Fault;

use crate::length::{Extent, LengthError, Measure};
use crate::notice::Notice;
use crate::quote::quoted;
use crate::unit::Unit;
use crate::yaml::{Node, Trail};

/// Which lengths are taken.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Taken {
    /// Above 0: sizes.
    AboveZero,
    /// 0 and above: clearances, gaps, heights above the floor.
    FromZero,
    /// Any: coordinates.
    Any,
}

/// The faults of one file so far, and the notices.
#[derive(Debug)]
pub(crate) struct Report<'a> {
    tree: &'a Node,
    units: Unit,
    faults: Vec<Fault>,
    notices: Vec<Notice>,
}

/// What a fault is about: the item in the room's own words, and the name of the figure in it.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Of<'a> {
    pub(crate) item: &'a str,
    pub(crate) figure: &'a str,
}

impl Of<'_> {
    fn words(&self) -> String {
        match self.item {
            "clearances" => format!("The clearance `{}`", self.figure),
            item => format!("The {} of {}", self.figure, quoted(item)),
        }
    }
}

impl<'a> Report<'a> {
    pub(crate) fn new(tree: &'a Node, units: Unit) -> Self {
        Self { tree, units, faults: Vec::new(), notices: Vec::new() }
    }

    /// Unit of bare numbers.
    pub(crate) const fn units(&self) -> Unit {
        self.units
    }

    pub(crate) fn count(&self) -> usize {
        self.faults.len()
    }

    /// Whether what stood at `at` was taken out of the tree, its fault told.
    pub(crate) fn was_told(&self, at: &Trail) -> bool {
        *self.tree.at(at) == Node::TAKEN_OUT
    }

    pub(crate) fn into_faults(self) -> Vec<Fault> {
        self.faults
    }

    /// Adds a fault of `item` (empty: of the file as a whole) that stands at `at`.
    pub(crate) fn add(&mut self, at: &Trail, code: &'static str, item: &str, message: String, remedy: String) {
        debug_assert!(Fault::CODES.binary_search(&code).is_ok(), "`{code}` is listed among the codes");
        let item = (!item.is_empty()).then(|| quoted(item));
        self.faults.push(Fault { code, item, message, remedy, place: self.tree.at(at).place });
    }

    /// Adds something that a reader of the result must be told.
    pub(crate) fn notice(&mut self, notice: impl Into<String>) {
        self.notices.push(Notice::plain(notice.into()));
    }

    /// The same of a figure that is likely a slip.
    pub(crate) fn slip(&mut self, notice: impl Into<String>) {
        self.notices.push(Notice { text: notice.into(), is_of_a_slip: true });
    }

    /// The notices so far, which are then no longer here.
    pub(crate) fn take_notices(&mut self) -> Vec<Notice> {
        std::mem::take(&mut self.notices)
    }

    /// `length` in the file's unit.
    pub(crate) fn words(&self, length: f64) -> String {
        self.units.finely(length)
    }

    /// The length that `measure` gives, mm; `None` after a fault.
    pub(crate) fn length(&mut self, measure: &Measure, at: &Trail, of: Of<'_>, taken: Taken) -> Option<f64> {
        match measure.length(self.units) {
            Ok(length) => self.taken(length, measure, at, of, taken).then_some(length),
            Err(error) => {
                self.no_length(&error, measure, at, of);
                None
            }
        }
    }

    /// The range or the one size that `measure` gives, mm; `None` after a fault.
    pub(crate) fn extent(&mut self, measure: &Measure, at: &Trail, of: Of<'_>) -> Option<Extent> {
        let extent = match measure.extent(self.units) {
            Ok(extent) => extent,
            Err(error) => {
                self.no_length(&error, measure, at, of);
                return None;
            }
        };
        let ends = match extent {
            Extent::One(size) => [Some(size), None],
            Extent::Between { least, most } => [least, most],
        };
        for end in ends.into_iter().flatten() {
            if !self.taken(end, measure, at, of, Taken::AboveZero) {
                return None;
            }
        }
        if let [Some(least), Some(most)] = ends
            && least > most
        {
            let message = format!(
                "{} runs backward: from {} down to {}, {} less.",
                of.words(),
                self.words(least),
                self.words(most),
                self.words(least - most)
            );
            self.add(at, "range_backward", of.item, message, "Write the smaller end first.".to_owned());
            return None;
        }
        Some(extent)
    }

    fn taken(&mut self, length: f64, measure: &Measure, at: &Trail, of: Of<'_>, taken: Taken) -> bool {
        let (sound, bound) = match taken {
            Taken::AboveZero => (length > 0.0, "above 0"),
            Taken::FromZero => (length >= 0.0, "0 or more"),
            Taken::Any => (true, ""),
        };
        if !sound {
            let message = format!("{} is {}; it must be {bound}.", of.words(), measure.as_written());
            let remedy = format!("Give a length that is {bound}.");
            self.add(at, "not_positive", of.item, message, remedy);
        }
        sound
    }

    fn no_length(&mut self, error: &LengthError, measure: &Measure, at: &Trail, of: Of<'_>) {
        let (code, remedy) = remedy(error, measure);
        let message = format!("{}, `{}`, {}.", of.words(), measure.as_written(), cleaned(error));
        self.add(at, code, of.item, message, remedy);
    }
}

fn cleaned(error: &LengthError) -> String {
    crate::quote::clean(&error.to_string())
}

fn remedy(error: &LengthError, measure: &Measure) -> (&'static str, String) {
    let forms = "Write a number in the file's unit, or a text such as `3.52 m`, `58 in`, `11 ft 6 in`, `5 1/2 in`.";
    match error {
        LengthError::Empty | LengthError::NotALength => ("not_a_length", forms.to_owned()),
        LengthError::UnknownUnit { nearest, .. } => {
            let known = "mm, cm, m, in, ft";
            let remedy = match nearest {
                Some(nearest) => format!("Did you mean `{nearest}`? Units are {known}."),
                None => format!("Units are {known}."),
            };
            ("unknown_unit", remedy)
        }
        LengthError::Comma => {
            ("not_a_length", format!("Write `{}`, with a point.", measure.as_written().replace(',', ".")))
        }
        LengthError::Compound => {
            ("not_a_length", "Feet and then inches go together (`11 ft 6 in`); nothing else does.".to_owned())
        }
        LengthError::InchesBeyondAFoot => (
            "not_a_length",
            "Inches beside feet are under 12: check the figure, or write all of it in inches.".to_owned(),
        ),
        LengthError::CompoundInRange => ("compound_in_range", "Write the range in one unit: `72..90 in`.".to_owned()),
        LengthError::UnitAtLowerEndAlone => {
            ("not_a_length", "Write the unit after the range, where it holds for both ends: `200..260 cm`.".to_owned())
        }
        LengthError::Dash => ("not_a_length", "Write a range with two dots: `200..260`.".to_owned()),
        LengthError::Range => ("not_a_length", "Give one length here.".to_owned()),
        LengthError::OutOfBounds => {
            ("not_finite", "Lengths are finite and at most 10 km; check the figure and its unit.".to_owned())
        }
    }
}
