//! Musts: a wish of 5 is one, and what breaks one is set aside, however well it does elsewhere. Means hide vetoes.

use elbowroom_model::Criterion;

use crate::criteria::{Finding, Judgement};

/// A wish of so much is a must.
const MUST: f64 = 5.0;

/// From so much on a wish for the fireside is meant: a main seat with its back to the fire is no fireside.
const FIRESIDE_MEANT: f64 = 3.0;

/// From so much on a wish for balance is meant: the wish of a file that says nothing of it.
const COMPOSITION_MEANT: f64 = 3.0;

/// A criterion that is a must scores at least this (ours, no source: a quarter of full marks is no yes).
const LEAST_OF_A_MUST: f64 = 25.0;

/// Somebody turns the head to the screen by no more than this, degrees: the natural turn of a handbook (Architectural
/// Institute of Japan 1980, second-hand).
const SCREEN_TURN: f64 = 45.0;

/// What sets an option aside.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SetAside {
    /// The criterion that it fails in.
    pub criterion: Criterion,
    /// Its score there, 0 to 100.
    pub score: f64,
    /// How it fails.
    pub lapse: Lapse,
}

/// How an option fails.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Lapse {
    /// No sitter has the screen within 45 degrees of the way that they face.
    OutOfSight,
    /// The fire lies behind the main seat.
    FireBehind,
    /// It scores too little in what is a must.
    Poor,
    /// It is composed ill where the room has plans that are composed far better.
    IllComposed,
}

impl Lapse {
    /// The wish for its criterion from which the lapse sets an option aside; 0: it does whatever the wishes.
    #[must_use]
    pub const fn from_wish(self) -> f64 {
        match self {
            Self::OutOfSight => 0.0,
            Self::FireBehind => FIRESIDE_MEANT,
            Self::Poor => MUST,
            Self::IllComposed => COMPOSITION_MEANT,
        }
    }
}

/// All that could set an option aside, each under the wishes for which it does ([`Lapse::from_wish`]); in the order of the
/// judgements.
#[must_use]
pub fn lapses(judgements: &[Judgement]) -> Vec<SetAside> {
    judgements.iter().flat_map(of_one).collect()
}

fn of_one(judgement: &Judgement) -> impl Iterator<Item = SetAside> + use<> {
    let own = match &judgement.finding {
        Finding::Screen(screen) if !screen.seats_anyone_within(SCREEN_TURN) => Some(Lapse::OutOfSight),
        Finding::Fireside(fireside) if fireside.is_behind_main_seat() => Some(Lapse::FireBehind),
        _ => None,
    };
    let poor = (judgement.score < LEAST_OF_A_MUST).then_some(Lapse::Poor);
    let (criterion, score) = (judgement.criterion, judgement.score);
    own.into_iter().chain(poor).map(move |lapse| SetAside { criterion, score, lapse })
}
