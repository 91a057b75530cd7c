//! From the text of a scenario to what came of it, and the questions that tests ask of that.
#![allow(dead_code, reason = "each suite asks its own questions")]

use elbowroom_model::{Brief, Dimension, scenario};
use elbowroom_solver::outcome::{DimensionFound, OptionFound, PieceFound};
use elbowroom_solver::{Limits, Outcome, Unwatched, rank};

/// The brief that a sound text holds; a panic that tells its faults otherwise.
pub(crate) fn brief_of(text: &str) -> Brief {
    scenario::read(text, None).unwrap_or_else(|faults| panic!("{faults:#?}\n{text}"))
}

/// Ranks the text as it stands, every option with the figures of those that are shown.
pub(crate) fn ranked(text: &str) -> Outcome {
    ranked_brief(&brief_of(text), Limits::default())
}

/// Ranks without the figures that only options that are shown get: faster.
pub(crate) fn ranked_briefly(text: &str) -> Outcome {
    ranked_brief(&brief_of(text), Limits { shown: 0, ..Limits::default() })
}

/// Ranks a brief under limits.
pub(crate) fn ranked_brief(brief: &Brief, limits: Limits) -> Outcome {
    Outcome::of(&rank(brief, &limits, &Unwatched))
}

/// The piece of this name in an option.
pub(crate) fn piece<'a>(option: &'a OptionFound, name: &str) -> &'a PieceFound {
    option.pieces.iter().find(|piece| piece.name == name).unwrap_or_else(|| panic!("no {name} in {}", option.key))
}

/// The figures of one dimension of a piece.
pub(crate) fn figures(piece: &PieceFound, dimension: Dimension) -> DimensionFound {
    match dimension {
        Dimension::Width => piece.range.width,
        Dimension::Depth => piece.range.depth,
        Dimension::Return => piece.range.return_length.unwrap(),
    }
}

/// The largest `together` of one dimension of a piece over some options; `None` where there is none.
pub(crate) fn largest<'a>(
    options: impl IntoIterator<Item = &'a OptionFound>,
    name: &str,
    dimension: Dimension,
) -> Option<f64> {
    let sizes = options.into_iter().map(|option| figures(piece(option, name), dimension).together);
    sizes.max_by(f64::total_cmp)
}

/// Every second seat stands opposite the main one.
pub(crate) fn facing(option: &OptionFound) -> bool {
    let seats = &option.choices.second_seats;
    !seats.is_empty() && seats.iter().all(|seat| seat.place == "opposite")
}
