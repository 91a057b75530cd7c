//! Share of first place over all ways to weigh the criteria.

use super::TIE;
use super::draws::Draws;
use super::table::Table;

/// Weights drawn: the standard error of a share is then 0.005 at most.
const DRAWS: u32 = 10_000;

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
    // Criterion by criterion, so that the options are weighed side by side.
    let columns: Vec<Vec<f64>> =
        (0..wishes.len()).map(|criterion| table.rows.iter().map(|row| row[criterion]).collect()).collect();
    let mut scores = vec![0.0; count];
    let mut draws = Draws::new(wishes);
    for _ in 0..DRAWS {
        scores.fill(0.0);
        for (column, weight) in columns.iter().zip(draws.draw()) {
            for (score, value) in scores.iter_mut().zip(column) {
                *score += value * weight;
            }
        }
        let best = scores.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let tied = |score: &&f64| best - **score <= TIE;
        let share = 1.0 / scores.iter().filter(tied).count().max(1) as f64;
        for option in (0..count).filter(|option| tied(&&scores[*option])) {
            places[option] += share;
            strictly[option] |= share == 1.0;
        }
    }
    let shares: Vec<f64> = places.iter().map(|places| places / f64::from(DRAWS)).collect();
    FirstPlaces { shares: in_millionths(&shares), strictly }
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
