//! The sizes laid out together are a safe envelope: whoever buys any set of pieces under them has room for it.

use std::collections::BTreeMap;

use elbowroom_model::{Brief, Dimension, PieceId, SizeRange};
use elbowroom_solver::answer::RankedOption;
use elbowroom_solver::{Answer, Limits};
use proptest::prelude::proptest;

use super::drawn::rooms;
use super::few;
use super::told::{Image, by_decisions, decisions};
use crate::support::ranked::{brief_of, figures, ranked_brief};

/// The brief with every piece bought: between its least and what it is laid out at, `shares` saying how far up.
fn bought(brief: &Brief, option: &RankedOption, shares: &[f64]) -> Brief {
    let mut shares = shares.iter().copied().cycle();
    let mut brief = brief.clone();
    for (place, piece) in brief.pieces.iter_mut().enumerate() {
        let sizes = option.sizes_of(PieceId(place)).unwrap();
        let mut size = |dimension: Dimension| {
            let laid_out = figures(sizes, dimension);
            SizeRange::fixed(laid_out.least + shares.next().unwrap() * (laid_out.together - laid_out.least))
        };
        piece.width = size(Dimension::Width);
        piece.depth = size(Dimension::Depth);
        piece.return_length = piece.return_length.map(|_| size(Dimension::Return));
    }
    brief
}

fn solved(brief: &Brief) -> Answer {
    ranked_brief(brief, Limits { shown: 0, ..Limits::default() })
}

proptest! {
    #![proptest_config(few(6))]

    /// Any set of sizes at or under `together` fits in the same arrangement.
    #[test]
    fn whatever_is_bought_under_together_fits(
        plan in rooms(),
        shares in proptest::collection::vec(0.0_f64..=1.0, 12),
        pick in 0_usize..8,
    ) {
        let text = plan.text();
        let brief = brief_of(&text);
        let answer = solved(&brief);
        if answer.options.is_empty() {
            return Ok(());
        }
        let option = &answer.options[pick % answer.options.len()];
        let bought = bought(&brief, option, &shares);
        let again = solved(&bought);
        let found: BTreeMap<_, _> = by_decisions(&again, Image::Same);
        let sizes: Vec<_> = bought.pieces.iter().map(|piece| (&piece.name, piece.width.most, piece.depth.most)).collect();
        assert!(found.contains_key(&decisions(&answer, option, Image::Same)), "{}: {sizes:?}\n{text}", option.key);
    }

    /// least <= together <= alone <= most, for every dimension of every option that is shown.
    #[test]
    fn the_four_figures_are_in_order(plan in rooms()) {
        let text = plan.text();
        let brief = brief_of(&text);
        let answer = ranked_brief(&brief, Limits::default());
        for (place, option) in answer.options.iter().enumerate() {
            for one in option.pieces(&brief) {
                for dimension in one.piece.dimensions() {
                    let range = figures(one.sizes, dimension);
                    let alone = range.alone.unwrap_or(range.together);
                    let ordered = range.least <= range.together && range.together <= alone && alone <= range.most;
                    assert!(ordered, "{} {}: {range:?}\n{text}", option.key, one.piece.name);
                    assert!(range.alone.is_some() || place >= Limits::default().shown, "{}\n{text}", option.key);
                }
            }
        }
    }
}
