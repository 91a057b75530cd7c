//! Laws that must hold of every room: properties over rooms drawn at random, the same ones on every run.
//!
//! One file a family of laws; `drawn` makes the rooms and `told` says what two results must share to be the same.

mod angles;
pub(crate) mod drawn;
mod every_kind;
mod forms;
mod image;
mod judged;
mod order;
mod sizes;
mod slack;
mod told;
mod with_more;
mod words;

use proptest::test_runner::{Config, RngSeed};

/// Few cases, drawn alike on every run and every machine; `PROPTEST_CASES` asks for more, `PROPTEST_RNG_SEED` for others.
pub(crate) fn few(cases: u32) -> Config {
    let asked = |name: &str| std::env::var(name).ok().and_then(|text| text.parse::<u64>().ok());
    Config {
        cases: asked("PROPTEST_CASES").and_then(|cases| u32::try_from(cases).ok()).unwrap_or(cases),
        rng_seed: RngSeed::Fixed(asked("PROPTEST_RNG_SEED").unwrap_or(1)),
        failure_persistence: None,
        max_shrink_iters: 64,
        ..Config::default()
    }
}
