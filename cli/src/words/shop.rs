//! Words of the list against a room.

use elbowroom_model::article::several;
use elbowroom_model::listing::ListedPiece;
use elbowroom_model::{Brief, Dimension, Unit};
use elbowroom_solver::refusal::Remedy;
use elbowroom_solver::shop::{CandidateFound, Impossible, PairFound, Row, WhyNot};
use elbowroom_solver::way_in::Asks;

use super::answer;
use super::figures::counted;

/// The names that places in a list and in the rows of a room stand for.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Names<'a> {
    /// What was asked.
    pub brief: &'a Brief,
    /// The list.
    pub listed: &'a [ListedPiece],
    /// What the room asks for.
    pub rows: &'a [Row],
}

impl<'a> Names<'a> {
    /// Name of a candidate.
    pub(crate) fn candidate(self, place: usize) -> &'a str {
        self.listed.get(place).map_or("", |listed| listed.name.as_str())
    }

    /// Name of a row.
    pub(crate) fn row(self, place: usize) -> &'a str {
        self.rows.get(place).and_then(|row| row.piece(self.brief)).map_or("", |piece| piece.name.as_str())
    }

    /// How many pieces a row has.
    pub(crate) fn count(self, place: usize) -> usize {
        self.rows.get(place).map_or(1, |row| row.pieces.len())
    }
}

/// Why a candidate has no option, where that is no matter of size.
pub(crate) fn why_not(names: Names<'_>, listed: &ListedPiece, found: &CandidateFound) -> Option<String> {
    Some(match found.why_not? {
        WhyNot::NoneAsked => format!("The room asks for no {}.", listed.kind.words()),
        WhyNot::TooFew => {
            let asked = found.row.map_or(1, |row| names.count(row));
            let are = if listed.count == 1 { "is" } else { "are" };
            format!("The room asks for {asked} alike, and {} {are} in hand.", listed.count)
        }
        WhyNot::OtherHand => "Its return is on the other hand than the one asked for.".to_owned(),
        WhyNot::NotDecided => "It is not known whether it fits: nothing was found within the work allowed.".to_owned(),
    })
}

/// What would make a candidate fit, or made it fit where it was tried.
pub(crate) fn remedies(brief: &Brief, found: &CandidateFound) -> Vec<String> {
    let told = |remedy: &Remedy| answer::remedy(brief, remedy, found.is_decided());
    found.remedies.iter().map(told).collect()
}

/// What fails where two candidates do not go together.
pub(crate) fn nearest(brief: &Brief, pair: &PairFound) -> String {
    pair.nearest.as_ref().map_or_else(String::new, |refusal| answer::refusal(brief, refusal))
}

/// Why there is no set.
pub(crate) fn impossible(names: Names<'_>, why: &Impossible) -> String {
    match why {
        Impossible::NothingListed => "The list has no candidate for any piece of the room.".to_owned(),
        Impossible::OverBudget(_) => "No set that fits is within the budget.".to_owned(),
        Impossible::NoneFor(row) => {
            format!("No candidate for {} fits, all else as the room asks for it.", names.row(*row))
        }
        Impossible::Pairs(_) => "No set fits: these do not go together, all else as the room asks for it.".to_owned(),
        Impossible::NotAllTogether => {
            "Every two of the candidates that fit go together, and no whole set does.".to_owned()
        }
    }
}

/// Over candidates of no kind that the room asks for.
pub(crate) const NO_ROW: &str = "Asked for by no piece of the room";
/// Over remedies.
pub(crate) const WOULD_HELP: &str = "What would make them fit, each by itself";
/// Over the cheapest set.
pub(crate) const CHEAPEST: &str = "The cheapest set that fits:";

/// The head of the page.
pub(crate) fn summary(room: &str, fit: usize, all: usize, unit: &str) -> String {
    let candidates = counted(all, "candidate", "candidates");
    format!("{room}: {fit} of {candidates} {}, {unit}", if fit == 1 { "fits" } else { "fit" })
}

/// Over the candidates for one piece of the room.
pub(crate) fn row(name: &str, count: usize, needed: bool) -> String {
    let what = if count > 1 { format!("{count} {} alike", several(name)) } else { name.to_owned() };
    let only = match (needed, count) {
        (true, _) => "",
        (false, 1) => " (only if it fits)",
        (false, _) => " (only if they fit)",
    };
    format!("For {what}{only}")
}

/// Of a candidate that fits.
pub(crate) fn fits(options: usize, score: f64, title: &str) -> String {
    let options = counted(options, "option", "options");
    format!("fits {options}, best {score:.0}: {title}.")
}

/// Room left in one dimension.
pub(crate) fn left(dimension: &str, by: &str) -> String {
    format!("{dimension} {by}")
}

/// Room left.
pub(crate) fn room_left(each: &[String]) -> Option<String> {
    (!each.is_empty()).then(|| format!("Room left there, one at a time: {}.", each.join(", ")))
}

/// Of a candidate that does not fit.
pub(crate) fn misses(each: &[(Dimension, String)]) -> String {
    if each.is_empty() {
        return "does not fit: no one of its sizes alone is the matter.".to_owned();
    }
    let too = |(dimension, by): &(Dimension, String)| match dimension {
        Dimension::Width => format!("{by} too wide"),
        Dimension::Return => format!("{by} too long in the return"),
        Dimension::SecondReturn => format!("{by} too long in the second return"),
        Dimension::Depth => format!("{by} too deep"),
        Dimension::ReturnDepth => format!("{by} too deep in the return"),
    };
    format!("does not fit: {}.", each.iter().map(too).collect::<Vec<_>>().join(", or "))
}

/// A size beyond what was asked for.
pub(crate) fn beyond(dimension: &str, by: &str, over: bool) -> String {
    let word = if over { "more" } else { "less" };
    format!("Its {dimension} is {by} {word} than was asked for.")
}

/// Of a candidate that cannot be carried in.
pub(crate) fn does_not_get_in(by: Option<&str>, asks: Asks, at: &str) -> String {
    match by {
        Some(by) => format!("Does not get in: {}.", super::way::misses(by, asks, at)),
        None => format!("Does not get in: it cannot be turned over before {at}."),
    }
}

/// What would make one candidate fit.
pub(crate) fn would_help(name: &str, remedies: &[String]) -> String {
    format!("{name}: {}", remedies.join(" "))
}

/// Over the sets.
pub(crate) fn sets(count: usize, budget: Option<&str>) -> String {
    let under = budget.map_or_else(String::new, |budget| format!(" at {budget} or less"));
    match count {
        0 => format!("No set{under}"),
        1 => format!("The best set{under}"),
        count => format!("The best {count} sets{under}"),
    }
}

/// Under the sets.
pub(crate) const OF_EACH_THE_BEST: &str = "Sets that differ from one of these in a lamp, a rug, a plant, a pouf, a bench or a small table alone are not told.";

/// The head of a set.
pub(crate) fn set(place: Option<usize>, score: f64, price: Option<&str>, liking: Option<f64>) -> String {
    let place = place.map_or_else(String::new, |place| format!("{place}. "));
    let price = price.map_or_else(String::new, |price| format!(", {price}"));
    let liking = liking.map_or_else(String::new, |liking| format!(", liked {liking:.0}"));
    format!("{place}score {score:.0}{price}{liking}")
}

/// What a set is called where it is set out.
pub(crate) fn set_called(place: Option<usize>) -> String {
    place.map_or_else(|| "the cheapest set".to_owned(), |place| format!("set {place}"))
}

/// What stands for a row of so many; `None`: it is left out.
pub(crate) fn set_piece(candidate: Option<&str>, count: usize) -> String {
    match candidate {
        Some(candidate) if count > 1 => format!("{count} of {candidate}"),
        Some(candidate) => candidate.to_owned(),
        None => "left out".to_owned(),
    }
}

/// The best option of a set.
pub(crate) fn set_options(options: usize, title: &str) -> String {
    format!("{title}; {} with this set", counted(options, "option", "options"))
}

/// The next better set.
pub(crate) fn better(score: f64, price: &str, more: &str) -> String {
    format!("The next better of the sets that were solved costs {price}, {more} more, and scores {score:.0}.")
}

/// What the next smaller piece saves in place of the dearest, and each centimetre or inch of that.
pub(crate) fn saving([dearest, smaller]: [&str; 2], less: &str, saves: &str, each: &str, unit: Unit) -> String {
    let of_each = match unit {
        Unit::Millimetre => "a millimetre",
        Unit::Centimetre => "a centimetre",
        Unit::Metre => "a metre",
        Unit::Inch => "an inch",
        Unit::Foot => "a foot",
    };
    format!("{dearest} is the dearest of it: {smaller}, {less}, saves {saves}, {each} {of_each}.")
}

/// Two that do not go together.
pub(crate) fn pair([one, other]: [&str; 2], why: &str) -> String {
    format!("{one} and {other}: {why}")
}

/// Rows without candidates.
pub(crate) fn without(rows: &[&str]) -> String {
    format!("Nothing in the list for {}: taken as the room asks for it.", rows.join(", "))
}

/// Candidates without a price.
pub(crate) fn unpriced(names: &[&str]) -> String {
    format!("Left aside, for they have no price: {}.", names.join(", "))
}

/// How much was solved, and whether nothing better can be.
pub(crate) fn solved(solved: usize, proven: bool) -> String {
    let solved = counted(solved, "set", "sets");
    if proven {
        format!("{solved} solved; every other one costs too much, holds what does not fit, or stands behind.")
    } else {
        format!(
            "{solved} solved, the cheapest first; not all were looked at or decided, and a better one may be among them."
        )
    }
}
