//! Plans that are composed far worse than others of the room: means hide that no designer would draw them.
//!
//! Scores of view, ways and the like are means over a dozen criteria, among which composition is one (`balance`). A sofa adrift
//! with chairs out of line then leads for the sake of a window. Where the room has plans that are composed well, what is
//! composed ill stands behind them.

use elbowroom_model::{Criterion, Wishes};

use super::set_aside::{Lapse, SetAside};
use super::tier::Entrant;

/// A plan is composed ill under this (ours, no source: the same as the least of a must).
const ILL: f64 = 25.0;

/// And well from here on (tuned over rooms of real dwellings and drawn ones, no source).
const WELL: f64 = 40.0;

/// Adds to what could set each option aside that it is composed ill, where another, which gives all that is asked for comfort,
/// is composed well and breaks no must of any kind.
pub(crate) fn set_ill_composed_aside(entrants: &mut [Entrant], wishes: &Wishes) {
    let is_well = |entrant: &Entrant| {
        let is_foremost = entrant.eased == 0 && entrant.set_aside(wishes).is_none();
        is_foremost && balance(entrant).is_some_and(|balance| balance >= WELL)
    };
    if !entrants.iter().any(is_well) {
        return;
    }
    for entrant in entrants {
        if let Some(score) = balance(entrant).filter(|balance| *balance < ILL) {
            entrant.lapses.push(SetAside { criterion: Criterion::Balance, score, lapse: Lapse::IllComposed });
        }
    }
}

fn balance(entrant: &Entrant) -> Option<f64> {
    entrant.scores.iter().find(|(criterion, _)| *criterion == Criterion::Balance).map(|(_, score)| *score)
}

#[cfg(test)]
mod tests {
    use elbowroom_model::{Criterion, Wishes};

    use super::set_ill_composed_aside;
    use crate::ranking::{Entrant, Lapse};

    fn entrant(balance: f64, eased: usize) -> Entrant {
        Entrant { scores: vec![(Criterion::Balance, balance)], eased, lapses: Vec::new() }
    }

    fn lapses(mut entrants: Vec<Entrant>) -> Vec<bool> {
        set_ill_composed_aside(&mut entrants, &Wishes::default());
        entrants.iter().map(|entrant| entrant.lapses.iter().any(|it| it.lapse == Lapse::IllComposed)).collect()
    }

    #[test]
    fn what_is_composed_ill_stands_behind_what_is_composed_well() {
        assert_eq!(lapses(vec![entrant(0.0, 0), entrant(70.0, 0), entrant(25.0, 0)]), [true, false, false]);
    }

    #[test]
    fn where_nothing_is_composed_well_nothing_is_set_aside() {
        assert_eq!(lapses(vec![entrant(0.0, 0), entrant(39.0, 0)]), [false, false]);
        // What eases a rule of comfort is no better plan.
        assert_eq!(lapses(vec![entrant(0.0, 0), entrant(80.0, 1)]), [false, false]);
    }
}
