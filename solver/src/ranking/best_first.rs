//! Options by falling score.

use super::tolerance::TIE;

/// Places by falling score; what ties with the best of a run keeps the order handed in.
pub(super) fn best_first(scores: &[f64]) -> Vec<usize> {
    let mut order: Vec<usize> = (0..scores.len()).collect();
    order.sort_by(|one, other| scores[*other].total_cmp(&scores[*one]));
    let mut from = 0;
    while from < order.len() {
        let top = scores[order[from]];
        let tied = order[from..].iter().take_while(|option| top - scores[**option] <= TIE).count().max(1);
        order[from..from + tied].sort_unstable();
        from += tied;
    }
    order
}
