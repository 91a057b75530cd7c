//! The runs of a corner sofa. Each is told by its whole length along its back, the corner included, so each must be
//! longer than the other is deep: a return of 95 cm on a sofa 90 cm deep is taken for how far it juts out.

use crate::dimension::Dimension;
use crate::piece::SizeRange;
use crate::unit::Unit;

/// The least that must be left of a run beyond the depth of the other, mm: less is no place to sit or to put one's feet up
/// (ours, no source; the narrowest seats that are sold are 450 wide).
const BEYOND_CORNER: f64 = 300.0;
/// The least that must be left between two returns, mm: one sits there, and gets in (common practice, no source).
const BETWEEN_RETURNS: f64 = 600.0;
/// Lengths that differ by less, mm, are one: an inch is 25.4 mm, which binary figures do not hold.
const SAME_LENGTH: f64 = 1e-6;

/// Ranges of a corner sofa, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Runs {
    /// The main run along its back.
    pub(crate) width: SizeRange,
    /// The return along its back.
    pub(crate) return_length: SizeRange,
    /// A second return, at the other end of the main run.
    pub(crate) second_return: Option<SizeRange>,
    /// Of all runs.
    pub(crate) depth: SizeRange,
    /// Of the return, where that is of another depth.
    pub(crate) return_depth: Option<SizeRange>,
}

impl Runs {
    /// Of a sofa with one return, as deep as the main run.
    pub(crate) const fn two(width: SizeRange, return_length: SizeRange, depth: SizeRange) -> Self {
        Self { width, return_length, second_return: None, depth, return_depth: None }
    }

    /// What must be left of the main run beyond its returns.
    const fn left(&self) -> f64 {
        if self.second_return.is_some() { BETWEEN_RETURNS } else { BEYOND_CORNER }
    }

    /// How much of the main run its returns take, by their depths.
    fn taken(&self, of: impl Fn(SizeRange) -> f64) -> f64 {
        let second = if self.second_return.is_some() { of(self.depth) } else { 0.0 };
        of(self.return_depth.unwrap_or(self.depth)) + second
    }

    /// The run that is too short whatever its size and the depth are; a return where both are.
    pub(crate) fn too_short(&self) -> Option<TooShort> {
        let returns = [(Dimension::SecondReturn, self.second_return), (Dimension::Return, Some(self.return_length))];
        let beyond = self.depth.least + BEYOND_CORNER;
        let short = |(which, run): (Dimension, Option<SizeRange>)| {
            let run = run.filter(|run| run.most + SAME_LENGTH < beyond)?;
            Some(TooShort { which, run, across: self.depth, left: BEYOND_CORNER })
        };
        let taken = SizeRange {
            least: self.taken(|depth| depth.least),
            usual: self.taken(|depth| depth.usual),
            most: self.taken(|depth| depth.most),
        };
        let main = TooShort { which: Dimension::Width, run: self.width, across: taken, left: self.left() };
        let is_short = self.width.most + SAME_LENGTH < taken.least + self.left();
        returns.into_iter().find_map(short).or(is_short.then_some(main))
    }

    /// The ranges held to one another, where no run is too short: the depth leaves something of the longest runs, and what
    /// is least of them is left something of by the least depth, and is never under any.
    pub(crate) fn held(&self) -> Self {
        let returns = self.second_return.map_or(self.return_length.most, |one| one.most.min(self.return_length.most));
        // What the main run has for the depth of each of its returns.
        let each = match (self.second_return, self.return_depth) {
            (None, _) => self.width.most - BEYOND_CORNER,
            (Some(_), None) => (self.width.most - BETWEEN_RETURNS) / 2.0,
            (Some(_), Some(own)) => self.width.most - BETWEEN_RETURNS - own.least,
        };
        let by_main = if self.return_depth.is_some() && self.second_return.is_none() { f64::INFINITY } else { each };
        let depth = lowered(self.depth, (returns - BEYOND_CORNER).min(by_main));
        let second = if self.second_return.is_some() { depth.most } else { 0.0 };
        let return_depth = self.return_depth.map(|own| lowered(own, self.width.most - self.left() - second));
        let held = Self { depth, return_depth, ..*self };
        let main = (held.taken(|depth| depth.least) + self.left()).max(held.taken(|depth| depth.most));
        let least = (depth.least + BEYOND_CORNER).max(depth.most);
        Self {
            width: raised(self.width, main),
            return_length: raised(self.return_length, least),
            second_return: self.second_return.map(|run| raised(run, least)),
            ..held
        }
    }
}

/// The range with a most that is at most `most`, which is never under its least.
fn lowered(range: SizeRange, most: f64) -> SizeRange {
    let most = range.most.min(most).max(range.least);
    SizeRange { usual: range.usual.min(most), most, ..range }
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
    /// Which: the width of the main run, or a return.
    pub(crate) which: Dimension,
    run: SizeRange,
    /// How much of it those that it meets take, by their depth.
    across: SizeRange,
    /// What must be left of it.
    left: f64,
}

impl TooShort {
    /// Stable name of the fault.
    pub(crate) const CODE: &'static str = "run_too_short";

    /// Between two returns, and not beyond one.
    fn is_between(&self) -> bool {
        self.left > BEYOND_CORNER
    }

    /// What is wrong with `item`, in `units`.
    pub(crate) fn message(&self, item: &str, units: Unit) -> String {
        let (run, other) = match self.which {
            Dimension::Return => ("the return", "beyond the main run"),
            Dimension::SecondReturn => ("the second return", "beyond the main run"),
            _ if self.is_between() => ("the main run", "between the returns, together"),
            _ => ("the main run", "beyond the return"),
        };
        let key = self.which.key();
        let left = self.run.most - self.across.least;
        let left = if left > 0.0 { format!("{} of it", units.finely(left)) } else { "nothing of it".to_owned() };
        let comma = if self.is_between() { "" } else { "," };
        format!(
            "The {key} of {item} is {}, which leaves {left} {other}{comma} {} deep: `{key}` is the whole length of \
             {run} along its back, the corner included.",
            bounded(self.run, "at most ", self.run.most, units),
            bounded(self.across, "at least ", self.across.least, units),
        )
    }

    /// What to do about it: what was meant is most likely the part beyond the corner.
    pub(crate) fn remedy(&self, units: Unit) -> String {
        if self.is_between() {
            let least = units.finely(self.across.least + self.left);
            return format!("Give a width of {least} or more: {} between the returns.", units.finely(self.left));
        }
        let (run, beyond) = match self.which {
            Dimension::Return | Dimension::SecondReturn => ("the return", "juts out beyond the main run"),
            Dimension::Width | Dimension::Depth | Dimension::ReturnDepth => {
                ("the main run", "runs on beyond the return")
            }
        };
        let whole = SizeRange {
            least: self.run.least + self.across.least,
            usual: self.run.usual + self.across.usual,
            most: self.run.most + self.across.most,
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
