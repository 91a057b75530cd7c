//! What each point of the way asks of a box that is held in one way.

use elbowroom_model::way_in::{LandingTurn, PointKind, WayPoint};
use strum::IntoStaticStr;

use super::held::Held;
use super::tolerance::JUST_PASSES;
use super::turn::longest;
use crate::best_by;

/// What a point asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum Asks {
    /// It must not be too wide.
    Width,
    /// It must not be too high.
    Height,
    /// It must not be too long to turn.
    Turn,
    /// It must not be too long for the car of a lift, or for a landing.
    Length,
    /// It must not be too high for the slope.
    Headroom,
}

impl Asks {
    /// Its stable name.
    #[must_use]
    pub fn key(self) -> &'static str {
        self.into()
    }
}

/// How one demand is met.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Clear {
    pub(crate) asks: Asks,
    /// What is left, mm; below 0: what is missing.
    pub(crate) spare: f64,
}

impl Clear {
    fn of(asks: Asks, has: f64, needs: f64) -> Self {
        Self { asks, spare: has - needs }
    }

    /// The box passes.
    pub(crate) fn passes(&self) -> bool {
        self.spare >= -JUST_PASSES
    }
}

/// The demand of `point` that `held` meets worst, every clear width and height taken `within` less.
pub(crate) fn clear(point: &WayPoint, held: Held, within: f64) -> Clear {
    let less = |length: f64| length - within;
    let ceiling = |ceiling: Option<f64>| ceiling.map(|it| Clear::of(Asks::Height, less(it), held.tall));
    let all = match point.kind {
        PointKind::Door { width, height, from } => {
            let turn = from.map(|from| turned(less(from), less(width), held));
            let straight = Clear::of(Asks::Width, less(width), held.short);
            vec![Some(turn.unwrap_or(straight)), Some(Clear::of(Asks::Height, less(height), held.tall))]
        }
        PointKind::Hall { width, ceiling: high } => {
            vec![Some(Clear::of(Asks::Width, less(width), held.short)), ceiling(high)]
        }
        PointKind::Turn { from, to, ceiling: high } => vec![Some(turned(less(from), less(to), held)), ceiling(high)],
        PointKind::Stairs { width, headroom, pitch } => {
            vec![
                Some(Clear::of(Asks::Width, less(width), held.short)),
                Some(Clear::of(Asks::Headroom, less(headroom), upward(held, pitch))),
            ]
        }
        PointKind::Landing { turn, from, pitch, depth, width, ceiling: high } => {
            let on_landing = |held: Held| {
                // Of a half turn the piece lies along the landing between its two turns.
                let along = (turn == LandingTurn::Half).then(|| Clear::of(Asks::Length, less(width), held.long));
                let high = high.map(|it| Clear::of(Asks::Height, less(it), held.tall));
                worst([Some(turned(less(from), less(depth), held)), along, high])
            };
            // Level, or as it came up the flight; whichever leaves more.
            let (level, sloped) = (on_landing(held), on_landing(sloped(held, pitch)));
            vec![Some(if sloped.spare > level.spare { sloped } else { level })]
        }
        PointKind::Lift { door, height, width, depth, ceiling: high } => {
            vec![
                Some(Clear::of(Asks::Height, less(height), held.tall)),
                ceiling(high),
                Some(in_car(less(door), less(width), less(depth), held)),
            ]
        }
    };
    worst(all)
}

/// The demand that is met worst.
fn worst(all: impl IntoIterator<Item = Option<Clear>>) -> Clear {
    let worst = best_by(all.into_iter().flatten(), |clear| -clear.spare);
    worst.unwrap_or(Clear { asks: Asks::Width, spare: f64::INFINITY })
}

/// The box round what is held with its longer side in the slope of a flight, in the plane of the stairs (D): seen from above
/// it is shorter, and it reaches higher.
fn sloped(held: Held, pitch: f64) -> Held {
    let (sin, cos) = pitch.sin_cos();
    let along = held.long * cos + held.tall * sin;
    Held { long: along.max(held.short), short: along.min(held.short), tall: held.long * sin + held.tall * cos }
}

fn turned(from: f64, to: f64, held: Held) -> Clear {
    let narrow = from.min(to);
    if held.short > narrow {
        return Clear::of(Asks::Width, narrow, held.short);
    }
    Clear::of(Asks::Turn, longest(from, to, held.short), held.long)
}

/// What it takes straight up on a slope: carried along the slope, or held level; whichever is less.
fn upward(held: Held, pitch: f64) -> f64 {
    let along = held.tall / pitch.cos();
    let level = |side: f64| held.tall + side * pitch.tan();
    along.min(level(held.long)).min(level(held.short))
}

/// Straight in by the door and square to the walls, lengthways or sideways; whichever leaves more.
fn in_car(door: f64, width: f64, depth: f64, held: Held) -> Clear {
    let way = |across: f64, along: f64| {
        let (wide, deep) = (Clear::of(Asks::Width, door.min(width), across), Clear::of(Asks::Length, depth, along));
        if wide.spare < deep.spare { wide } else { deep }
    };
    let (lengthways, sideways) = (way(held.short, held.long), way(held.long, held.short));
    if sideways.spare > lengthways.spare { sideways } else { lengthways }
}
