//! The two runs of a corner sofa. Each is told by its whole length along its back, the corner included, so each must be
//! longer than the other is deep: a return of 95 cm on a sofa 90 cm deep is taken for how far it juts out.

use crate::piece::{Dimension, SizeRange};
use crate::unit::Unit;

/// The least that must be left of a run beyond the depth of the other, mm: less is no place to sit or to put one's feet up
/// (ours, no source; the narrowest seats that are sold are 450 wide).
const BEYOND_CORNER: f64 = 300.0;
/// Lengths that differ by less, mm, are one: an inch is 25.4 mm, which binary figures do not hold.
const SAME_LENGTH: f64 = 1e-6;

/// Ranges of a corner sofa, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Runs {
    /// The main run along its back.
    pub(crate) width: SizeRange,
    /// The return along its back.
    pub(crate) return_length: SizeRange,
    /// Of both.
    pub(crate) depth: SizeRange,
}

impl Runs {
    /// The run that is too short whatever its size and the depth are; the return where both are.
    pub(crate) fn too_short(&self) -> Option<TooShort> {
        let runs = [(Dimension::Return, self.return_length), (Dimension::Width, self.width)];
        let short = runs.into_iter().find(|(_, run)| run.most + SAME_LENGTH < self.depth.least + BEYOND_CORNER);
        short.map(|(which, run)| TooShort { which, run, depth: self.depth })
    }

    /// The ranges held to one another, where no run is too short: the depth leaves something of the longest runs, and what
    /// is least of them is left something of by the least depth, and is never under any.
    pub(crate) fn held(&self) -> Self {
        let shorter = self.return_length.most.min(self.width.most);
        let most = self.depth.most.min(shorter - BEYOND_CORNER).max(self.depth.least);
        let depth = SizeRange { usual: self.depth.usual.min(most), most, ..self.depth };
        let least = (depth.least + BEYOND_CORNER).max(depth.most);
        Self { width: raised(self.width, least), return_length: raised(self.return_length, least), depth }
    }
}

/// The range with a least that is at least `least`, which is never over its most but by a hair.
fn raised(range: SizeRange, least: f64) -> SizeRange {
    if range.least + SAME_LENGTH >= least {
        return range;
    }
    let least = least.min(range.most);
    SizeRange { least, usual: range.usual.max(least), ..range }
}

/// A run that is too short.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct TooShort {
    /// Which: the width of the main run, or the return.
    pub(crate) which: Dimension,
    run: SizeRange,
    depth: SizeRange,
}

impl TooShort {
    /// Stable name of the fault.
    pub(crate) const CODE: &'static str = "run_too_short";

    /// What is wrong with `item`, in `units`.
    pub(crate) fn message(&self, item: &str, units: Unit) -> String {
        let (key, run, other) = match self.which {
            Dimension::Return => ("return", "the return", "main run"),
            Dimension::Width | Dimension::Depth => ("width", "the main run", "return"),
        };
        let left = self.run.most - self.depth.least;
        let left = if left > 0.0 { format!("{} of it", units.finely(left)) } else { "nothing of it".to_owned() };
        format!(
            "The {key} of {item} is {}, which leaves {left} beyond the {other}, {} deep: `{key}` is the whole length of \
             {run} along its back, the corner included.",
            bounded(self.run, "at most ", self.run.most, units),
            bounded(self.depth, "at least ", self.depth.least, units),
        )
    }

    /// What to do about it: what was meant is most likely the part beyond the corner.
    pub(crate) fn remedy(&self, units: Unit) -> String {
        let (run, beyond) = match self.which {
            Dimension::Return => ("the return", "juts out beyond the main run"),
            Dimension::Width | Dimension::Depth => ("the main run", "runs on beyond the return"),
        };
        let whole = SizeRange {
            least: self.run.least + self.depth.least,
            usual: self.run.usual + self.depth.usual,
            most: self.run.most + self.depth.most,
        };
        format!(
            "If {} is how far {run} {beyond}, give that and the depth, {}; else check both: a run is at least {} longer than \
             the other is deep.",
            range(self.run, units),
            range(whole, units),
            units.finely(BEYOND_CORNER),
        )
    }
}

fn bounded(of: SizeRange, bound: &str, figure: f64, units: Unit) -> String {
    let bound = if of.most - of.least > SAME_LENGTH { bound } else { "" };
    format!("{bound}{}", units.finely(figure))
}

/// A range in words, or the one size.
fn range(range: SizeRange, units: Unit) -> String {
    if range.most - range.least > SAME_LENGTH {
        format!("{} to {}", units.finely(range.least), units.finely(range.most))
    } else {
        units.finely(range.most)
    }
}
