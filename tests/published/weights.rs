//! Weights, ranks and shares of first place against published figures and exact arithmetic on them.
//!
//! Tags: P published, D derived from published definitions by exact arithmetic.

use elbowroom_model::{Criterion, Wishes};
use elbowroom_solver::ranking::{Draws, ratings};

/// Draws that the published tolerances ask for.
const DRAWS: usize = 20_000;

/// Options that are judged by the first criteria, one score (0 to 1) each.
fn options<const N: usize>(scores: &[[f64; N]]) -> Vec<Vec<(Criterion, f64)>> {
    let row = |row: &[f64; N]| Criterion::ALL.iter().copied().zip(row.iter().map(|score| score * 100.0)).collect();
    scores.iter().map(row).collect()
}

fn shares<const N: usize>(scores: &[[f64; N]]) -> Vec<f64> {
    ratings(&options(scores), &Wishes::default(), None).iter().map(|standing| standing.share).collect()
}

fn assert_near(found: &[f64], expected: &[f64], within: f64) {
    assert_eq!(found.len(), expected.len());
    for (found, expected) in found.iter().zip(expected) {
        assert!((found - expected).abs() <= within, "{found} is not {expected} within {within}");
    }
}

/// Mean of the weights drawn for wishes that are all different, the largest first.
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

/// Rank-order centroid weights for five criteria (P, as tabulated in texts on multi-attribute weighting); they are the
/// centroid of the weights that keep the order, so draws from those have them as their mean (D).
#[test]
fn weights_that_keep_an_order_of_five_have_the_rank_order_centroid_as_their_mean() {
    assert_near(&mean_weights(&[5.0, 4.0, 3.0, 2.0, 1.0]), &[0.4567, 0.2567, 0.1567, 0.09, 0.04], 0.005);
}

/// The same for three criteria: 11/18, 5/18, 2/18 (D).
#[test]
fn weights_that_keep_an_order_of_three_have_the_rank_order_centroid_as_their_mean() {
    assert_near(&mean_weights(&[5.0, 4.0, 0.5]), &[11.0 / 18.0, 5.0 / 18.0, 2.0 / 18.0], 0.005);
}

/// Equal wishes share the centroid weights of the ranks they hold: (11/18 + 5/18) / 2 each before 2/18 (D). A wish of 0
/// weighs nothing.
#[test]
fn equal_wishes_are_free_between_them_and_a_wish_of_nothing_stays_nothing() {
    assert_near(&mean_weights(&[4.0, 4.0, 2.0, 0.0]), &[8.0 / 18.0, 8.0 / 18.0, 2.0 / 18.0, 0.0], 0.005);
    assert_near(&mean_weights(&[0.0, 0.0, 0.0]), &[1.0 / 3.0; 3], 0.005);
}

/// First-rank acceptability as defined by Lahdelma, Hokkanen and Salminen 1998, uniform weights, two criteria: where w is
/// the first weight, (1, 0) leads (0.6, 0.6) for w > 0.6 and (0, 1) does for w < 0.4 (D, exact).
#[test]
fn a_compromise_between_two_extremes_is_first_in_a_fifth_of_the_ways() {
    assert_near(&shares(&[[1.0, 0.0], [0.0, 1.0], [0.6, 0.6]]), &[0.4, 0.4, 0.2], 0.01);
}

/// The same options: shares of the second place are 0.1, 0.1, 0.8 (D, exact).
#[test]
fn a_compromise_between_two_extremes_is_second_in_four_fifths_of_the_ways() {
    let options = [[1.0, 0.0], [0.0, 1.0], [0.6, 0.6]];
    let mut seconds = [0.0; 3];
    let mut draws = Draws::new(&[3.0, 3.0]);
    for _ in 0..DRAWS {
        let weights = draws.draw();
        let scores = options.map(|[first, second]| first * weights[0] + second * weights[1]);
        let mut order = [0, 1, 2];
        order.sort_by(|one: &usize, other: &usize| scores[*other].total_cmp(&scores[*one]));
        seconds[order[1]] += 1.0 / DRAWS as f64;
    }
    assert_near(&seconds, &[0.1, 0.1, 0.8], 0.01);
}

/// (1, 0) leads (0.5, 0.6) where w > 6/11 (D, exact).
#[test]
fn an_extreme_against_a_compromise_is_first_in_five_elevenths_of_the_ways() {
    assert_near(&shares(&[[1.0, 0.0], [0.5, 0.6]]), &[5.0 / 11.0, 6.0 / 11.0], 0.01);
}

/// Options that are each best in one criterion and nothing elsewhere share the first place evenly (D, by symmetry).
#[test]
fn unit_options_share_the_first_place_evenly() {
    let unit = [[1.0, 0.0, 0.0, 0.0], [0.0, 1.0, 0.0, 0.0], [0.0, 0.0, 1.0, 0.0], [0.0, 0.0, 0.0, 1.0]];
    assert_near(&shares(&unit), &[0.25; 4], 0.01);
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
