//! Prose of a comparison.

use elbowroom_model::{Brief, Hand, Room};
use elbowroom_solver::answer::RankedOption;

use super::answer::title;
use super::figures::area;
use super::firm::{comes_first, share};

/// Over what one pays for what one gains.
pub(crate) const TRADE: &str = "What one pays for what one gains";
/// Over the decisions.
pub(crate) const DECISIONS: &str = "Decided";
/// Over the scores.
pub(crate) const SCORES: &str = "Scores, of 100";
/// Row: the wall behind the seat.
pub(crate) const BACK: &str = "back to";
/// Row: what the seat faces.
pub(crate) const FACING: &str = "facing";
/// Row: the side of the return.
pub(crate) const HAND: &str = "return";
/// Row: the wall of the screen.
pub(crate) const SCREEN: &str = "screen on";
/// A seat that stands free.
pub(crate) const FREE: &str = "no wall";
/// Where there is none.
pub(crate) const NONE: &str = "none";
/// Over the weights.
pub(crate) const WEIGHT: &str = "wish";
/// Row: the whole score.
pub(crate) const WHOLE: &str = "in all";
/// Row: how firm.
pub(crate) const FIRM: &str = "first, of 100 shifts";
/// Over what a way needs.
pub(crate) const NEEDS: &str = "needs";

/// The side of a return.
pub(crate) fn hand(hand: Hand) -> String {
    format!("on your {} as you sit", hand.key())
}

/// The head of the page.
pub(crate) fn summary(room: &Room) -> String {
    format!("{}, {}", room.name, area(room.area() / 1e6))
}

/// Over an option's column.
pub(crate) fn head(rank: usize) -> String {
    format!("option {rank}")
}

/// A wish.
pub(crate) fn weight(weight: f64) -> String {
    format!("{weight}")
}

/// A score.
pub(crate) fn score(score: f64) -> String {
    format!("{score:.0}")
}

/// Over the reasons of one criterion.
pub(crate) fn why(criterion: &str) -> String {
    format!("Why {criterion} differs")
}

/// Over the sizes.
pub(crate) fn sizes(unit: &str) -> String {
    format!("Sizes to shop by, {unit}: as planned (at least-at most); all of one option at their most fit together")
}

/// Over the ways.
pub(crate) fn ways(unit: &str) -> String {
    format!("Walking routes, {unit} wide")
}

/// How often an option is first.
pub(crate) fn firm(option: &RankedOption) -> String {
    if option.set_aside.is_some() { "set aside".to_owned() } else { share(option.first_place_share) }
}

/// What a number on a plan stands for.
pub(crate) fn numbered(number: usize, text: &str) -> String {
    format!("{number}  {text}")
}

/// Under the plan of an option: what it is, how it stands, what its numbers stand for.
pub(crate) fn under(brief: &Brief, option: &RankedOption, key: &[String]) -> String {
    let numbered = if key.is_empty() { String::new() } else { format!(" On the plan: {}.", key.join("; ")) };
    let (rank, score) = (option.rank, option.score);
    format!("{rank}. {}. Score {score:.0} of 100, {}.{numbered}", title(brief, option), comes_first(brief, option))
}

/// Of scores, before those that are the same.
pub(crate) const SCORE: &str = "Scores";
/// The same of sizes.
pub(crate) const SIZE: &str = "Sizes";
/// The same of routes.
pub(crate) const WAY: &str = "Walking routes";

/// Over what is the same.
pub(crate) const SAME: &str = "The same in all, or nearly so";

/// What is the same of one subject.
pub(crate) fn same(subject: &str, alike: &[String]) -> String {
    format!("{subject}: {}.", alike.join("; "))
}

/// What all options have alike; figures that hardly differ, from the least to the most.
pub(crate) fn alike(label: &str, cells: &[String]) -> String {
    let figures: Option<Vec<i64>> = cells.iter().map(|cell| cell.parse().ok()).collect();
    let ends = figures.and_then(|all| Some((*all.iter().min()?, *all.iter().max()?)));
    match (ends, cells.first()) {
        (Some((least, most)), _) if least < most => format!("{label} {least} to {most}"),
        (_, cell) => format!("{label} {}", cell.map_or("", String::as_str)),
    }
}

/// A size of a piece.
pub(crate) fn of_piece(name: &str, dimension: &str) -> String {
    format!("{name}, {dimension}")
}

/// What an option gives for what it takes.
pub(crate) fn trade(option: usize, against: usize, gains: &[String], costs: &[String]) -> String {
    let (gained, paid) = (gains.join(", "), costs.join(", "));
    match (gains.is_empty(), costs.is_empty()) {
        (true, true) => format!("Option {option} is as good as option {against} in all that is judged."),
        (false, true) => format!("Option {option} gains on option {against} and pays nothing for it: {gained}."),
        (true, false) => format!("Option {option} gains nothing on option {against}, and pays: {paid}."),
        (false, false) => format!("Option {option} gains on option {against}: {gained}. It pays with: {paid}."),
    }
}
