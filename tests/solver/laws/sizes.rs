//! The sizes laid out together are a safe envelope: whoever buys any set of pieces under them has room for it.

use std::collections::BTreeMap;

use elbowroom_model::{Brief, Dimension, PieceId, SizeRange};
use elbowroom_solver::Limits;
use elbowroom_solver::answer::{Answer, RankedOption};
use elbowroom_solver::refusal::{Refusal, Why};
use proptest::prelude::proptest;

use super::drawn::rooms;
use super::few;
use super::told::{Decisions, Image, by_decisions, decisions};
use crate::scenarios;
use crate::support::plan::{Plan, PlanPiece};
use crate::support::ranked::{brief_of, figures, largest, ranked_brief, wall};

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

/// What is laid out is told in thousandths of a millimetre: so much less of it surely has its place.
const ROUNDING: f64 = 0.01;

/// The brief with every least raised by a share of what the option lays out beyond it, and all that stands asked for in
/// earnest. Pieces of one row are raised alike, and so are sizes that are tied.
fn raised(brief: &Brief, option: &RankedOption, share: impl Fn(usize, Dimension) -> f64) -> Brief {
    let mut raised = brief.clone();
    for (place, piece) in raised.pieces.iter_mut().enumerate() {
        let Some(sizes) = option.sizes_of(PieceId(place)) else { continue };
        piece.needed = true;
        let (row, is_square) = (piece.alike.map_or(place, |row| row.0), piece.square);
        let up = |range: SizeRange, dimension: Dimension| {
            let tied = if is_square { Dimension::Width } else { dimension };
            let laid_out = figures(sizes, dimension).together;
            let least = range.least + share(row, tied) * (laid_out - ROUNDING - range.least).max(0.0);
            SizeRange { least, usual: range.usual.max(least), ..range }
        };
        piece.width = up(piece.width, Dimension::Width);
        piece.depth = up(piece.depth, Dimension::Depth);
        let is_even = piece.has_like_returns();
        piece.return_length = piece.return_length.map(|range| up(range, Dimension::Return));
        if is_even {
            // Unlike ones would have a hand, which two alike have not.
            piece.second_return = piece.return_length;
        }
    }
    raised
}

/// Whoever asks for what an option offers is offered it: the same decisions, with no more rules of comfort eased.
fn assert_offered(answer: &Answer, option: &RankedOption, raised: &Brief, text: &str) {
    let again = solved(raised);
    let leasts: Vec<_> =
        raised.pieces.iter().map(|piece| (&piece.name, piece.width.least, piece.depth.least)).collect();
    let wanted = decisions(answer, option, Image::Same);
    let offered = by_decisions(&again, Image::Same);
    let exact = offered.get(&wanted);
    let Some(twin) =
        exact.or_else(|| offered.iter().find_map(|(one, twin)| stands_in(one, twin, &wanted).then_some(twin)))
    else {
        // Nobody knows whether it fits, under its own name or under that of the arrangement that it is part of.
        let back = |key: &str| key.split('/').next().map(str::to_owned);
        let of_it = |refusal: &&Refusal| back(&refusal.key) == back(&option.key);
        let whys: Vec<_> = again.refused.iter().filter(of_it).map(|refusal| &refusal.why).collect();
        assert!(whys.contains(&&Why::NotDecided), "{}: not with {leasts:?}\n{whys:#?}\n{text}", option.key);
        return;
    };
    let (was, is) = (&option.layout.eased, &twin.layout.eased);
    assert!(
        !twin.planned.proven || is.len() <= was.len(),
        "{}: from {was:?} to {is:?} with {leasts:?}\n{text}",
        option.key
    );
}

/// The same decisions but for second seats: one that need not stand is left out where it costs more than it is worth, and
/// where nothing is proven nobody knows which of them find a place.
fn stands_in(one: &Decisions, twin: &RankedOption, wanted: &Decisions) -> bool {
    let (back, facing, hand, screen, seats) = one;
    (back, facing, hand, screen) == (&wanted.0, &wanted.1, &wanted.2, &wanted.3)
        && (!twin.planned.proven || seats.iter().all(|seat| wanted.4.contains(seat)))
}

/// Rooms of the demo and some that once went wrong.
pub(super) fn rooms_on_file() -> Vec<(String, String)> {
    let mut rooms = scenarios::rooms();
    for name in ["about-a-post", "back-parlour", "crooked", "settled"] {
        let path = format!("{}/../tests/data/{name}.yaml", env!("CARGO_MANIFEST_DIR"));
        rooms.push((name.to_owned(), std::fs::read_to_string(path).unwrap()));
    }
    rooms
}

#[test]
fn raising_any_least_up_to_together_loses_no_option_of_a_room_on_file() {
    for (name, text) in rooms_on_file() {
        let brief = brief_of(&text);
        let answer = solved(&brief);
        // All of it bought of the best, a third of it of the one in the middle.
        let all = |_, _| 1.0;
        let some = |piece: usize, dimension: Dimension| f64::from((piece + dimension as usize).is_multiple_of(3));
        if let (Some(best), Some(middling)) = (answer.options.first(), answer.options.get(answer.options.len() / 2)) {
            assert_offered(&answer, best, &raised(&brief, best, all), &name);
            assert_offered(&answer, middling, &raised(&brief, middling, some), &name);
        }
    }
}

/// Wall e is 2.5 m long and begins at a corner that juts out into the room: a sofa could go on beyond it.
#[test]
fn what_is_offered_at_a_wall_that_ends_amid_the_room_may_be_asked_for() {
    let corners = [(0.0, 0.0), (6000.0, 0.0), (6000.0, -5000.0), (2500.0, -5000.0), (2500.0, -2500.0), (0.0, -2500.0)];
    let plan = |least: f64| {
        let sofa = PlanPiece::of("sofa").range("width", least, 2970.0);
        Plan { profile: "snug", ..Plan::of(&corners) }.piece(sofa).text()
    };
    let at_wall = |least: f64| {
        let answer = solved(&brief_of(&plan(least)));
        let at_wall = |option: &&RankedOption| wall(&answer, option.choices.seat_back) == Some("wall e");
        largest(&answer, answer.options.iter().filter(at_wall), "sofa", Dimension::Width)
    };
    let offered = at_wall(1500.0).unwrap();
    assert!((2549.0..=2550.0).contains(&offered), "all but 50 mm of it is before the wall: {offered}");
    assert!(at_wall(offered - ROUNDING).is_some_and(|width| width >= offered - ROUNDING));
    assert_eq!(at_wall(offered + 1.0), None);
}

/// A table sold by a range may be bought so narrow that its ends are its long sides, where chairs stand then.
#[test]
fn a_dining_table_bought_narrower_than_deep_has_room_for_its_chairs() {
    let mut depths = Vec::new();
    for (width, depth) in [(4200.0, 3400.0), (4800.0, 3600.0), (5600.0, 4200.0)] {
        let table = PlanPiece::of("dining-table").range("width", 800.0, 1800.0).range("depth", 700.0, 1100.0);
        let sofa = PlanPiece::of("sofa").range("width", 1600.0, 2000.0);
        let plan = Plan { profile: "snug", ..Plan::rectangle(width, depth) }.piece(sofa).piece(table);
        let text = plan.doorway(2, "hall door", 300.0, 820.0, "entrance").text();
        let brief = brief_of(&text);
        let answer = solved(&brief);
        for option in &answer.options {
            let deep = figures(option.sizes_of(PieceId(1)).unwrap(), Dimension::Depth).together;
            let mut bought = brief.clone();
            bought.pieces[1].width = SizeRange::fixed(800.0);
            bought.pieces[1].depth = SizeRange::fixed(deep - ROUNDING);
            let again = solved(&bought);
            let found = by_decisions(&again, Image::Same);
            assert!(found.contains_key(&decisions(&answer, option, Image::Same)), "{}: {deep}\n{text}", option.key);
            depths.push(deep);
        }
    }
    assert!(depths.iter().any(|deep| *deep > 800.0), "some ends are free: {depths:?}");
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

    /// Raising any least to anything up to `together` loses no option.
    #[test]
    fn raising_a_least_up_to_together_loses_no_option(
        plan in rooms(),
        shares in proptest::collection::vec(proptest::option::of(0.0_f64..=1.0), 12),
        pick in 0_usize..8,
    ) {
        let text = plan.text();
        let brief = brief_of(&text);
        let answer = solved(&brief);
        if answer.options.is_empty() {
            return Ok(());
        }
        let option = &answer.options[pick % answer.options.len()];
        let share = |piece: usize, dimension: Dimension| shares[piece * 3 + dimension as usize].unwrap_or(0.0);
        assert_offered(&answer, option, &raised(&brief, option, share), &text);
    }

    /// least <= planned <= together <= alone <= most, for every dimension of every option that is shown.
    #[test]
    fn the_five_figures_are_in_order(plan in rooms()) {
        let text = plan.text();
        let brief = brief_of(&text);
        let answer = ranked_brief(&brief, Limits::default());
        let limits = Limits::default();
        let shown: Vec<usize> = answer.listed(&limits).iter().take(limits.shown).map(|it| it.best.rank).collect();
        for option in &answer.options {
            for one in option.pieces(&brief) {
                for dimension in one.piece.dimensions() {
                    let range = figures(one.sizes, dimension);
                    let alone = range.alone.unwrap_or(range.together);
                    let figures = [range.least, range.planned, range.together, alone, range.most];
                    let ordered = figures.is_sorted();
                    assert!(ordered, "{} {}: {range:?}\n{text}", option.key, one.piece.name);
                    assert!(range.alone.is_some() || !shown.contains(&option.rank), "{}\n{text}", option.key);
                }
            }
        }
    }
}
