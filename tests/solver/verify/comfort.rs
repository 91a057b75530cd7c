//! The rules of comfort: each passes at its edge and fails just past it, in both checks.
//!
//! Leg room is 12 in at least, 16 to 18 in usual (Panero and Zelnik 1979, from memory); the turn of the head 35 degrees, 15
//! preferred, and up to 60 (NUREG-0700 rev. 3, 11.3.1.2-2, published). All other figures are common practice, no source.

mod dining;
mod eased;
mod returns;
mod screen;
mod seats;
mod walls;

use elbowroom_model::Brief;
use elbowroom_solver::Placed;

use super::{broken, second_check};
use crate::support::checker::Part;

/// Just past an edge: rounding explains a millimetre, no more.
const PAST: f64 = 1.1;

/// The layout that `at` makes keeps every rule at `edge`, and breaks `rule` alone at `past`.
fn edge(rule: &str, brief: &Brief, edge: f64, past: f64, at: impl Fn(f64) -> Vec<Placed>) {
    holds(brief, at(edge));
    breaks(rule, brief, at(past));
}

fn holds(brief: &Brief, pieces: Vec<Placed>) {
    assert_eq!(second_check(brief, &pieces, &[], Part::Comfort), [""; 0], "checked again");
    assert_eq!(second_check(brief, &pieces, &[], Part::Places), [""; 0], "checked again");
    assert_eq!(broken(brief, pieces), [""; 0]);
}

fn breaks(rule: &str, brief: &Brief, pieces: Vec<Placed>) {
    let found = second_check(brief, &pieces, &[], Part::Comfort);
    assert!(found.len() == 1 && found[0].contains(rule), "{rule} past its edge, checked again: {found:?}");
    assert_eq!(second_check(brief, &pieces, &[], Part::Places), [""; 0], "checked again");
    assert_eq!(broken(brief, pieces), [rule]);
}
