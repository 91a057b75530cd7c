//! What an option says, told apart from the order in which the file named things.

use std::collections::BTreeMap;

use elbowroom_model::Dimension;
use elbowroom_solver::Outcome;
use elbowroom_solver::outcome::OptionFound;

use crate::support::ranked::figures;

/// The decisions of an option by names: what makes it the same option in another telling.
pub(super) type Decisions = (Option<String>, i64, Option<String>, Option<String>, Vec<(String, String)>);

/// How the image of a plan turns decisions into decisions.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Image {
    /// The plan itself.
    Same,
    /// Left is right.
    Mirrored,
    /// Turned by so many degrees counter-clockwise.
    Turned(f64),
}

/// The decisions as they read in the image.
pub(super) fn decisions(option: &OptionFound, image: Image) -> Decisions {
    let choices = &option.choices;
    let side = |side: &String| match (image, side.as_str()) {
        (Image::Mirrored, "left") => "right".to_owned(),
        (Image::Mirrored, "right") => "left".to_owned(),
        _ => side.clone(),
    };
    let facing = match image {
        Image::Same => choices.facing,
        Image::Mirrored => 180.0 - choices.facing,
        Image::Turned(degrees) => choices.facing + degrees,
    };
    let mut seats: Vec<_> = choices.second_seats.iter().map(|seat| (seat.name.clone(), side(&seat.place))).collect();
    seats.sort();
    // In hundredths of a degree: far finer than any two ways to face, far coarser than rounding.
    let facing = (facing.rem_euclid(360.0) * 100.0).round() as i64 % 36_000;
    (choices.seat_back.clone(), facing, choices.hand.as_ref().map(side), choices.media_wall.clone(), seats)
}

/// Every size of an option by piece and dimension, mm.
pub(super) fn sizes(option: &OptionFound) -> BTreeMap<(String, &'static str), f64> {
    let mut sizes = BTreeMap::new();
    for piece in &option.pieces {
        for dimension in [Dimension::Width, Dimension::Depth] {
            sizes.insert((piece.name.clone(), dimension.key()), figures(piece, dimension).together);
        }
        if let Some(found) = piece.range.return_length {
            sizes.insert((piece.name.clone(), Dimension::Return.key()), found.together);
        }
    }
    sizes
}

/// The options by their decisions as they read in the image.
pub(super) fn by_decisions(outcome: &Outcome, image: Image) -> BTreeMap<Decisions, &OptionFound> {
    outcome.options.iter().map(|option| (decisions(option, image), option)).collect()
}

/// How far two tellings of one option may be apart.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Apart {
    /// Any size, mm.
    pub(super) size: f64,
    /// The score, of 100.
    pub(super) score: f64,
}

/// A proof stops within a thousandth of the best, which is a millimetre or two of one size; and where a piece has room
/// to spare its place may settle elsewhere in another telling, which moves a score a little though no size.
pub(super) const WITHIN_PROOF: Apart = Apart { size: 2.0, score: 5.0 };

/// Both tellings have the same options, and none is further apart than that.
pub(super) fn assert_alike(one: &Outcome, image: Image, other: &Outcome, apart: Apart, text: &str) {
    let Apart { size, score } = apart;
    let (one, other) = (by_decisions(one, image), by_decisions(other, Image::Same));
    let keys = |options: &BTreeMap<Decisions, &OptionFound>| options.keys().cloned().collect::<Vec<_>>();
    assert_eq!(keys(&one), keys(&other), "{image:?} of\n{text}");
    for (decisions, option) in &one {
        let twin = other[decisions];
        let (mine, theirs) = (sizes(option), sizes(twin));
        for (dimension, value) in &mine {
            let same = theirs.get(dimension).is_some_and(|twin| (twin - value).abs() <= size);
            assert!(same, "{image:?}: {decisions:?}: {dimension:?} {value} {:?}\n{text}", theirs.get(dimension));
        }
        let (mine, theirs) = (option.score, twin.score);
        assert!((mine - theirs).abs() <= score, "{image:?}: {decisions:?}: score {mine} {theirs}\n{text}");
    }
}
