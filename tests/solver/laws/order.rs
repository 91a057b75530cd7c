//! The same file gives the same bytes; the order of a file's rows gives nothing.

use proptest::prelude::proptest;
use rayon::ThreadPoolBuilder;

use super::drawn::rooms;
use super::few;
use super::told::{WITHIN_PROOF, assert_shuffled};
use crate::support::ranked::ranked;

/// The answer to its last digit; no clock is in it.
fn answer_on(threads: usize, text: &str) -> String {
    let pool = ThreadPoolBuilder::new().num_threads(threads).build().unwrap();
    pool.install(|| format!("{:?}", ranked(text)))
}

proptest! {
    #![proptest_config(few(4))]

    /// Repeated, and on any number of threads: the same answer, to the last digit.
    #[test]
    fn the_same_answer(plan in rooms()) {
        let text = plan.text();
        let once = answer_on(1, &text);
        for threads in [1, 2, 4] {
            assert!(once == answer_on(threads, &text), "{threads} threads\n{text}");
        }
    }

    /// Walls told from another one on, items and pieces in another order: the same options.
    #[test]
    fn a_shuffled_file_says_the_same(plan in rooms(), by in 1_usize..5) {
        assert_shuffled(&plan, by, WITHIN_PROOF);
    }
}
