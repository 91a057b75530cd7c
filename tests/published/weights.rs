//! Weights, ranks and shares of first place against published figures and exact arithmetic on them.
//!
//! Tags: P published, D derived from published definitions by exact arithmetic.

use elbowroom_model::{Criterion, Wishes};
use elbowroom_solver::ranking::{Draws, Entrant, ratings};

/// Draws that the tolerances ask for.
const DRAWS: usize = 20_000;

/// Options that are judged by the first criteria, one score (0 to 1) each.
fn options<const N: usize>(scores: &[[f64; N]]) -> Vec<Entrant> {
    let row = |row: &[f64; N]| Criterion::ALL.iter().copied().zip(row.iter().map(|score| score * 100.0)).collect();
    scores.iter().map(|scores| Entrant { scores: row(scores), ..Entrant::default() }).collect()
}

/// Wishes of so much each: a wish of 1 is drawn from 0 to 2, so that what counts is a mean of scores weighed by numbers
/// that are even from 0 to 1.
fn all(wish: f64) -> Wishes {
    Criterion::ALL.iter().fold(Wishes::default(), |all, criterion| all.with(*criterion, wish))
}

fn shares<const N: usize>(scores: &[[f64; N]], wish: f64) -> Vec<f64> {
    ratings(&options(scores), &all(wish), None).iter().map(|standing| standing.share).collect()
}

fn assert_near(found: &[f64], expected: &[f64], within: f64) {
    assert_eq!(found.len(), expected.len());
    for (found, expected) in found.iter().zip(expected) {
        assert!((found - expected).abs() <= within, "{found} is not {expected} within {within}");
    }
}

/// Mean of the weights drawn for these wishes.
fn mean_weights(wishes: &[f64]) -> Vec<f64> {
    let mut sums = vec![0.0; wishes.len()];
    let mut draws = Draws::new(wishes);
    for _ in 0..DRAWS {
        for (sum, weight) in sums.iter_mut().zip(draws.draw()) {
            *sum += weight;
        }
    }
    sums.iter().map(|sum| sum / DRAWS as f64).collect()
}

/// Equal wishes weigh alike on the mean, by symmetry (D). A wish of nothing stays nothing, and without any all weigh alike.
#[test]
fn equal_wishes_weigh_alike_on_the_mean_and_a_wish_of_nothing_stays_nothing() {
    assert_near(&mean_weights(&[1.0, 1.0, 0.0]), &[0.5, 0.5, 0.0], 0.005);
    assert_near(&mean_weights(&[0.0, 0.0, 0.0]), &[1.0 / 3.0; 3], 1e-12);
}

/// 5 is shifted from 4 to 5 alone, 0.5 from 0 to 1.5: one weight x of the second against y of the first gives on the mean
/// 1 / 1.5 times the integral of x / (x + y) over y from 4 to 5 and x from 0 to 1.5 (D, by quadrature: 0.1373).
#[test]
fn a_wish_at_the_end_of_the_scale_is_shifted_inward_alone() {
    assert_near(&mean_weights(&[5.0, 0.5]), &[0.8627, 0.1373], 0.002);
}

/// First-rank acceptability as defined by Lahdelma, Hokkanen and Salminen 1998, for two weights that are each even from 0
/// to 1: their ratio is below a, where a is 1 at most, with a probability of a / 2 (P, ratio of two uniform numbers). (1, 0)
/// leads (0.6, 0.6) where the second weight is under 2/3 of the first, and (0, 1) the other way round (D, exact).
#[test]
fn a_compromise_between_two_extremes_is_first_in_a_third_of_the_shifts() {
    assert_near(&shares(&[[1.0, 0.0], [0.0, 1.0], [0.6, 0.6]], 1.0), &[1.0 / 3.0; 3], 0.02);
}

/// (1, 0) leads (0.5, 0.6) where the second weight is under 5/6 of the first (D, exact, as before).
#[test]
fn an_extreme_against_a_compromise_is_first_in_five_twelfths_of_the_shifts() {
    assert_near(&shares(&[[1.0, 0.0], [0.5, 0.6]], 1.0), &[5.0 / 12.0, 7.0 / 12.0], 0.02);
}

/// (1, 0, 0) leads (0, 1, 1) where one of three even numbers is more than the other two together: with a probability of
/// 1/6 (P, Irwin 1927 and Hall 1927: that two even numbers and 1 less a third sum to under 1).
#[test]
fn one_weight_outdoes_two_others_in_a_sixth_of_the_shifts() {
    assert_near(&shares(&[[1.0, 0.0, 0.0], [0.0, 1.0, 1.0]], 1.0), &[1.0 / 6.0, 5.0 / 6.0], 0.02);
}

/// Options that are each best in one criterion and nothing elsewhere share the first place evenly (D, by symmetry).
#[test]
fn unit_options_share_the_first_place_evenly() {
    let unit = [[1.0, 0.0, 0.0, 0.0], [0.0, 1.0, 0.0, 0.0], [0.0, 0.0, 1.0, 0.0], [0.0, 0.0, 0.0, 1.0]];
    assert_near(&shares(&unit, 3.0), &[0.25; 4], 0.02);
}

/// A wish of 3 is shifted from 2 to 4, so no weight is twice another: (1, 0.4) leads (0.4, 0.7) where the first weighs more
/// than half of the second, which it always does (D, exact).
#[test]
fn what_no_shift_of_a_step_overturns_stays_first_in_all() {
    assert_eq!(shares(&[[1.0, 0.4], [0.4, 0.7]], 3.0), [1.0, 0.0]);
}

/// (0.4, 0.4) lies below the line from (1, 0) to (0, 1): no weights put it first though neither dominates it; (0.6, 0.6)
/// lies above (D).
#[test]
fn what_lies_below_the_line_between_two_others_is_never_first_though_none_dominates_it() {
    let below = ratings(&options(&[[1.0, 0.0], [0.0, 1.0], [0.4, 0.4]]), &Wishes::default(), None);
    assert_eq!(below.iter().map(|standing| standing.never_first).collect::<Vec<_>>(), [false, false, true]);
    assert!(below.iter().all(|standing| standing.dominated_by.is_none()));
    let above = ratings(&options(&[[1.0, 0.0], [0.0, 1.0], [0.6, 0.6]]), &Wishes::default(), None);
    assert!(above.iter().all(|standing| !standing.never_first));
}
