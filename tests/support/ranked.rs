//! From the text of a scenario to what came of it, and the questions that tests ask of that.
#![allow(dead_code, reason = "each suite asks its own questions")]

use elbowroom_model::{Brief, Dimension, SecondPlace, Term, WallId, scenario};
use elbowroom_solver::answer::{Answer, DimensionRange, OptionPiece, PieceSizes, RankedOption, Thing};
use elbowroom_solver::{Limits, Unwatched, rank};

/// The brief that a sound text holds; a panic that tells its faults otherwise.
pub(crate) fn brief_of(text: &str) -> Brief {
    scenario::read(text, None).unwrap_or_else(|faults| panic!("{faults:#?}\n{text}"))
}

/// Ranks the text as it stands, every option with the figures of those that are shown.
pub(crate) fn ranked(text: &str) -> Answer {
    ranked_brief(&brief_of(text), Limits::default())
}

/// Ranks without the figures that only options that are shown get: faster.
pub(crate) fn ranked_briefly(text: &str) -> Answer {
    ranked_brief(&brief_of(text), Limits { shown: 0, ..Limits::default() })
}

/// Ranks a brief under limits.
pub(crate) fn ranked_brief(brief: &Brief, limits: Limits) -> Answer {
    rank(brief, &limits, &Unwatched)
}

/// What a term costs the first option, and by how much it is off, each time that it is told.
pub(crate) fn told_of_first(text: &str, of: Term) -> Vec<(f64, f64)> {
    let answer = ranked(text);
    let option = answer.options.first().unwrap_or_else(|| panic!("{text}\n{:?}", answer.refused));
    option.planned.composition.iter().filter(|told| told.term == of).map(|told| (told.cost, told.off)).collect()
}

/// The same with what is off to the millimetre.
pub(crate) fn told_to_the_mm(text: &str, of: Term) -> Vec<(f64, f64)> {
    told_of_first(text, of).into_iter().map(|(cost, off)| (cost, off.round())).collect()
}

/// The piece of this name in an option.
pub(crate) fn piece<'a>(answer: &'a Answer, option: &'a RankedOption, name: &str) -> OptionPiece<'a> {
    let mut pieces = option.pieces(&answer.brief);
    pieces.find(|one| one.piece.name == name).unwrap_or_else(|| panic!("no {name} in {}", option.key))
}

/// The figures of one dimension of a piece.
pub(crate) fn figures(sizes: &PieceSizes, dimension: Dimension) -> DimensionRange {
    sizes.get(dimension).unwrap()
}

/// The largest `together` of one dimension of a piece over some options; `None` where there is none.
pub(crate) fn largest<'a>(
    answer: &'a Answer,
    options: impl IntoIterator<Item = &'a RankedOption>,
    name: &str,
    dimension: Dimension,
) -> Option<f64> {
    let sizes = options.into_iter().map(|option| figures(piece(answer, option, name).sizes, dimension).together);
    sizes.max_by(f64::total_cmp)
}

/// Every second seat stands opposite the main one.
pub(crate) fn facing(option: &RankedOption) -> bool {
    let seats = option.choices.seats();
    !seats.is_empty() && seats.iter().all(|seat| seat.place == SecondPlace::Opposite)
}

/// The name of a wall, where there is one.
pub(crate) fn wall(answer: &Answer, wall: Option<WallId>) -> Option<&str> {
    wall.map(|wall| Thing::Wall(wall).name(&answer.brief))
}

/// What an option leaves out, by names.
pub(crate) fn left_out<'a>(answer: &'a Answer, option: &RankedOption) -> Vec<&'a str> {
    option.layout.left_out.iter().map(|piece| Thing::Piece(*piece).name(&answer.brief)).collect()
}
