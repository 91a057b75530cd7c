//! Share of first place over shifts of the wishes.

use super::contenders::contenders;
use super::draws::{ABREAST, Abreast, Draws};
use super::table::Table;
use super::tolerance::TIE;

/// Shifts drawn: the standard error of a share is then 0.008 at most, and it is told in hundredths.
const DRAWS: usize = 4_096;
/// They come in so many blocks, with none left over.
const BLOCKS: usize = DRAWS / ABREAST;
const _: () = assert!(DRAWS.is_multiple_of(ABREAST));

/// Shares are told in millionths.
const PARTS: usize = 1_000_000;

/// How often each option comes first.
pub(super) struct FirstPlaces {
    /// Share of the draws, in whole millionths that sum to 1; a tie is shared evenly.
    pub(super) shares: Vec<f64>,
    /// It came first alone in some draw.
    pub(super) strictly: Vec<bool>,
}

/// Counts first places over the draws.
pub(super) fn first_places(table: &Table, wishes: &[f64]) -> FirstPlaces {
    let count = table.rows.len();
    let (mut places, mut strictly) = (vec![0.0; count], vec![false; count]);
    let mut draws = Draws::new(wishes);
    let contenders = contenders(&table.rows, draws.shifts());
    let mut scores = vec![[0.0; ABREAST]; contenders.len()];
    for _ in 0..BLOCKS {
        let weights = draws.block();
        for (score, option) in scores.iter_mut().zip(&contenders) {
            *score = weighed(&table.rows[*option], weights);
        }
        let (best, shares) = best_of(&scores);
        for (score, &option) in scores.iter().zip(&contenders) {
            for draw in 0..ABREAST {
                let is_first = best[draw] - score[draw] <= TIE;
                // No branch: who is first cannot be guessed.
                places[option] += if is_first { shares[draw] } else { 0.0 };
                strictly[option] |= is_first & (shares[draw] == 1.0);
            }
        }
    }
    let shares: Vec<f64> = places.iter().map(|places| places / DRAWS as f64).collect();
    FirstPlaces { shares: in_millionths(&shares), strictly }
}

/// An option's score in each of the draws.
fn weighed(row: &[f64], weights: &[Abreast]) -> Abreast {
    let mut score = [0.0; ABREAST];
    for (value, weights) in row.iter().zip(weights) {
        score.iter_mut().zip(weights).for_each(|(score, weight)| *score += value * weight);
    }
    score
}

/// In each of the draws the best score, and the share of each of those that tie for it.
fn best_of(scores: &[Abreast]) -> (Abreast, Abreast) {
    let mut best = [f64::NEG_INFINITY; ABREAST];
    for score in scores {
        best.iter_mut().zip(score).for_each(|(best, score)| *best = best.max(*score));
    }
    let mut tied = [0.0_f64; ABREAST];
    for score in scores {
        let is_tied = |draw: usize| f64::from(u8::from(best[draw] - score[draw] <= TIE));
        tied.iter_mut().enumerate().for_each(|(draw, tied)| *tied += is_tied(draw));
    }
    (best, tied.map(|tied| 1.0 / tied.max(1.0)))
}

/// Shares that sum to 1, rounded to millionths that sum to 1: what is left goes to the largest remainders.
fn in_millionths(shares: &[f64]) -> Vec<f64> {
    let parts: Vec<f64> = shares.iter().map(|share| share * PARTS as f64).collect();
    // Each share lies in 0..=1, so its parts fit.
    let mut whole: Vec<usize> = parts.iter().map(|parts| parts.floor() as usize).collect();
    let mut by_remainder: Vec<usize> = (0..shares.len()).collect();
    by_remainder.sort_by(|one, other| parts[*other].fract().total_cmp(&parts[*one].fract()));
    let left = PARTS.saturating_sub(whole.iter().sum());
    for option in by_remainder.into_iter().cycle().take(left.min(shares.len())) {
        whole[option] += 1;
    }
    whole.into_iter().map(|whole| whole as f64 / PARTS as f64).collect()
}
