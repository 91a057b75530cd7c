//! Plans that are composed far worse than others of the room: means hide that no designer would draw them.
//!
//! Scores of view, ways and the like are means over a dozen criteria, among which composition is one (`balance`), whose marks
//! end at 0 however ill a plan is composed. A sofa adrift with its chairs left out then leads for the sake of a window. Where
//! the room has a plan that is composed far better, what is composed ill stands behind it.

use elbowroom_model::{Criterion, Wishes};

use super::set_aside::{Lapse, SetAside};
use super::tier::Entrant;

/// A plan is composed far worse than the best of the room where it costs so much more, in millimetres of shortfall of a piece
/// that counts 3 (tuned over rooms of real dwellings and drawn ones, no source): three fifths of what a chair is worth, or a
/// sofa with a strip of a metre and a half lost behind it.
const FAR_WORSE: f64 = 1500.0;

/// Where a plan costs no more than this (balance 40) the room can be composed well (tuned likewise, no source),
const WELL: f64 = 1500.0;

/// and what costs more than this (balance under 25, the same as the least of a must) is composed ill beside it.
const ILL: f64 = 1875.0;

/// Where every plan costs more than this (balance 0) the room can be composed ill alone, and only what is far worse than the
/// best stands behind.
const ILL_ALL: f64 = 2500.0;

/// What sets an option with these scores aside where it is composed ill.
pub fn ill_composed(scores: impl IntoIterator<Item = (Criterion, f64)>) -> SetAside {
    let balance = scores.into_iter().find(|(criterion, _)| *criterion == Criterion::Balance);
    let score = balance.map_or(0.0, |(_, score)| score);
    SetAside { criterion: Criterion::Balance, score, lapse: Lapse::IllComposed }
}

/// Adds to what could set each option aside that it is composed ill, where another, which gives all that is asked for comfort
/// and breaks no must of any kind, is composed far better.
pub(crate) fn set_ill_composed_aside(entrants: &mut [Entrant], wishes: &Wishes) {
    let is_foremost = |entrant: &&Entrant| entrant.eased == 0 && entrant.set_aside(wishes).is_none();
    let best = entrants.iter().filter(is_foremost).map(|entrant| entrant.composed).fold(f64::INFINITY, f64::min);
    let most = best + far_worse_than(best);
    for entrant in entrants.iter_mut().filter(|entrant| entrant.composed > most) {
        let ill = ill_composed(entrant.scores.iter().copied());
        entrant.lapses.push(ill);
    }
}

/// How much more than the best of the room is far worse: to the line of what is ill in a room that can be composed well, and
/// from there more by as much as the best falls short of that.
fn far_worse_than(best: f64) -> f64 {
    let to_ill = ILL - WELL;
    let short = ((best - WELL) / (ILL_ALL - WELL)).clamp(0.0, 1.0);
    if best <= WELL { FAR_WORSE.min(ILL - best) } else { to_ill + short * (FAR_WORSE - to_ill) }
}

#[cfg(test)]
mod tests {
    use elbowroom_model::{Criterion, Wishes};

    use super::set_ill_composed_aside;
    use crate::ranking::{Entrant, Lapse};

    fn entrant(composed: f64, eased: usize) -> Entrant {
        Entrant { scores: vec![(Criterion::Balance, 0.0)], composed, eased, lapses: Vec::new() }
    }

    fn lapses(mut entrants: Vec<Entrant>) -> Vec<bool> {
        set_ill_composed_aside(&mut entrants, &Wishes::default());
        entrants.iter().map(|entrant| entrant.lapses.iter().any(|it| it.lapse == Lapse::IllComposed)).collect()
    }

    #[test]
    fn what_is_composed_ill_stands_behind_what_is_composed_well() {
        assert_eq!(lapses(vec![entrant(1900.0, 0), entrant(300.0, 0), entrant(1800.0, 0)]), [true, false, false]);
        assert_eq!(lapses(vec![entrant(1900.0, 0), entrant(1500.0, 0), entrant(1870.0, 0)]), [true, false, false]);
        // Marks end at 0; costs do not.
        assert_eq!(lapses(vec![entrant(6500.0, 0), entrant(3300.0, 0)]), [true, false]);
        assert_eq!(lapses(vec![entrant(4700.0, 0), entrant(3300.0, 0)]), [false, false]);
        // A best of 2000 lies half way between what is composed well and what is not: 938 more is far worse.
        assert_eq!(lapses(vec![entrant(2950.0, 0), entrant(2000.0, 0), entrant(2930.0, 0)]), [true, false, false]);
    }

    #[test]
    fn what_eases_a_rule_of_comfort_is_no_better_plan() {
        assert_eq!(lapses(vec![entrant(6500.0, 0), entrant(300.0, 1)]), [false, false]);
        assert_eq!(lapses(vec![entrant(6500.0, 1), entrant(300.0, 1)]), [false, false]);
    }
}
