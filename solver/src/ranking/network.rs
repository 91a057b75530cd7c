//! Rows of numbers sorted side by side: which two are compared next does not hang on what was found.

use std::array::from_fn;

/// So many draws are worked out side by side.
pub(super) const ABREAST: usize = 8;

/// One figure of each of the draws that are worked out side by side.
pub(super) type Abreast = [f64; ABREAST];

/// Which rows to compare, in turn, so that any are sorted in the end: Batcher's odd-even merge sort, 1968.
#[derive(Debug, Clone)]
pub(super) struct Network(Vec<(usize, usize)>);

impl Network {
    /// The network for so many rows.
    pub(super) fn of(rows: usize) -> Self {
        let mut pairs = Vec::new();
        let doubled = |from: usize| std::iter::successors(Some(from), |length| Some(length * 2));
        for run in doubled(1).take_while(|run| *run < rows) {
            for apart in std::iter::successors(Some(run), |apart| Some(apart / 2)).take_while(|apart| *apart > 0) {
                let firsts = (apart % run..rows.saturating_sub(apart)).step_by(2 * apart);
                let lows = firsts.flat_map(|first| first..(first + apart).min(rows - apart));
                let of_one_merge = |low: &usize| low / (2 * run) == (low + apart) / (2 * run);
                pairs.extend(lows.filter(of_one_merge).map(|low| (low, low + apart)));
            }
        }
        Self(pairs)
    }

    /// Sorts each draw's figures, the least in the first row. There are as many rows as the network was made for.
    pub(super) fn sort(&self, rows: &mut [Abreast]) {
        for &(low, high) in &self.0 {
            let (before, after) = rows.split_at_mut(high);
            let (low, high) = (&mut before[low], &mut after[0]);
            let (one, other) = (*low, *high);
            // Written as the processor's own least and most, which take several draws at once and do not guess.
            *low = from_fn(|draw| if one[draw] < other[draw] { one[draw] } else { other[draw] });
            *high = from_fn(|draw| if one[draw] > other[draw] { one[draw] } else { other[draw] });
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A network that sorts every row of noughts and ones sorts every row (Knuth, TAOCP 3, 5.3.4, theorem Z).
    #[test]
    fn every_row_of_noughts_and_ones_is_sorted() {
        for rows in 0..=13 {
            let network = Network::of(rows);
            for pattern in 0_u32..1 << rows {
                let mut figures: Vec<Abreast> = (0..rows).map(|row| [f64::from(pattern >> row & 1); ABREAST]).collect();
                network.sort(&mut figures);
                assert!(figures.is_sorted(), "{rows} rows, pattern {pattern:b}: {figures:?}");
            }
        }
    }
}
