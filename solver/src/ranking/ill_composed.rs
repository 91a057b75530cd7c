//! Plans that are composed far worse than others of the room: means hide that no designer would draw them.
//!
//! Scores of view, ways and the like are means over a dozen criteria, among which composition is one (`balance`), whose marks
//! end at 0 however ill a plan is composed. A sofa adrift with its chairs left out then leads for the sake of a window. Where
//! the room has a plan that is composed far better, what is composed ill stands behind it; but not behind one that bought its
//! ease by passing over what is wished for strongly: a group that turns from the fire has nothing to line up with.

use elbowroom_model::{Criterion, Wishes};

use super::set_aside::{Lapse, SetAside};
use super::tier::Entrant;

/// A plan is composed far worse than the best of the room where it costs so much more, in millimetres of shortfall of a piece
/// that counts 3 (tuned over rooms of real dwellings and drawn ones, no source): thirty points of balance, a third of what a
/// chair is worth, or a sofa with a strip of a metre lost behind it.
const FAR_WORSE: f64 = 750.0;

/// What costs more than this (balance under 25, the same as the least of a must) is composed ill where the room can be composed
/// well, and what costs less is not
const ILL: f64 = 1875.0;

/// but beside a plan that costs so much less: twice what is far worse.
const WELL_BESIDE: f64 = 1500.0;

/// What meets a strong wish may cost so much more than a plan that passes over it: a wished view turned from, and far less than
/// a chair is worth.
const FOR_A_WISH: f64 = 1000.0;

/// A wish from here on is strong: a must but one
const STRONG: f64 = 4.0;

/// and is passed over by a plan that scores so much less in it: what parts good from middling in most criteria.
const PASSED_OVER: f64 = 15.0;

/// What sets an option with these scores aside where it is composed ill.
pub fn ill_composed(scores: impl IntoIterator<Item = (Criterion, f64)>) -> SetAside {
    let balance = scores.into_iter().find(|(criterion, _)| *criterion == Criterion::Balance);
    let score = balance.map_or(0.0, |(_, score)| score);
    SetAside { criterion: Criterion::Balance, score, lapse: Lapse::IllComposed }
}

/// Adds to what could set each option aside that it is composed ill, where another, which gives all that is asked for comfort,
/// breaks no must of any kind and passes over no strong wish that this one meets, is composed far better.
pub(crate) fn set_ill_composed_aside(entrants: &mut [Entrant], wishes: &Wishes) {
    let is_foremost = |entrant: &&Entrant| entrant.eased == 0 && entrant.set_aside(wishes).is_none();
    let foremost: Vec<&Entrant> = entrants.iter().filter(is_foremost).collect();
    let least = |of: &mut dyn Iterator<Item = &&Entrant>| of.map(|it| it.composed).fold(f64::INFINITY, f64::min);
    let best = least(&mut foremost.iter());
    let is_ill = |entrant: &Entrant| {
        let alike = least(&mut foremost.iter().filter(|other| !passes_over(other, entrant, wishes)));
        entrant.composed > most_beside(alike).min(most_beside(best).max(best + FOR_A_WISH))
    };
    let ill: Vec<bool> = entrants.iter().map(is_ill).collect();
    for (entrant, _) in entrants.iter_mut().zip(ill).filter(|(_, is_ill)| *is_ill) {
        let ill = ill_composed(entrant.scores.iter().copied());
        entrant.lapses.push(ill);
    }
}

/// Whether `one` gives far less than `other` of what is wished for strongly; composition is weighed already.
fn passes_over(one: &Entrant, other: &Entrant, wishes: &Wishes) -> bool {
    let score =
        |entrant: &Entrant, of: Criterion| entrant.scores.iter().find(|(it, _)| *it == of).map(|(_, score)| *score);
    let mut strong = other.scores.iter().filter(|(of, _)| *of != Criterion::Balance && wishes.get(*of) >= STRONG);
    strong.any(|(of, met)| score(one, *of).is_some_and(|given| given < met - PASSED_OVER))
}

/// The most that a plan may cost beside the best of its room.
fn most_beside(best: f64) -> f64 {
    (best + FAR_WORSE).max(ILL.min(best + WELL_BESIDE))
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
        assert_eq!(lapses(vec![entrant(1900.0, 0), entrant(300.0, 0), entrant(1790.0, 0)]), [true, false, false]);
        assert_eq!(lapses(vec![entrant(1900.0, 0), entrant(1000.0, 0), entrant(1870.0, 0)]), [true, false, false]);
        assert_eq!(lapses(vec![entrant(2260.0, 0), entrant(1500.0, 0), entrant(2240.0, 0)]), [true, false, false]);
        // Marks end at 0; costs do not.
        assert_eq!(lapses(vec![entrant(4060.0, 0), entrant(3300.0, 0), entrant(4040.0, 0)]), [true, false, false]);
    }

    #[test]
    fn what_eases_a_rule_of_comfort_is_no_better_plan() {
        assert_eq!(lapses(vec![entrant(6500.0, 0), entrant(300.0, 1)]), [false, false]);
        assert_eq!(lapses(vec![entrant(6500.0, 1), entrant(300.0, 1)]), [false, false]);
    }

    /// A group that turns from the fire has nothing to line up with: that makes no other a bad plan, but one that costs more
    /// than the wish is worth.
    #[test]
    fn what_passes_over_a_strong_wish_sets_aside_only_what_costs_far_more_to_meet_it() {
        let by_the_fire = |fireside: f64, composed: f64| Entrant {
            scores: vec![(Criterion::Fireside, fireside), (Criterion::Balance, 0.0)],
            ..entrant(composed, 0)
        };
        let aside_at = |wish: f64, composed: f64| {
            let mut entrants = [by_the_fire(30.0, 2200.0), by_the_fire(80.0, composed)];
            set_ill_composed_aside(&mut entrants, &Wishes::default().with(Criterion::Fireside, wish));
            entrants.map(|entrant| !entrant.lapses.is_empty())
        };
        assert_eq!(aside_at(3.0, 3100.0), [false, true]);
        assert_eq!(aside_at(4.0, 3100.0), [false, false]);
        assert_eq!(aside_at(4.0, 3300.0), [false, true]);
    }
}
