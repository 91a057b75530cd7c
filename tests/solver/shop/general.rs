//! The best of very many sets, chosen a second time by HiGHS (D: a reference library for mixed-integer programs): it
//! names the best choice of one candidate for each piece, a ranking says whether that fits, and if it does not the choice
//! is ruled out and the next best is named.

use std::fmt::Write as _;

use elbowroom_model::listing::ListedPiece;
use elbowroom_model::{Brief, PieceKind};
use elbowroom_solver::shop::{Order, SetFound};
use highs::{Col, HighsModelStatus, RowProblem, Sense};

use super::{bought, list, room, sets, solved};
use crate::support::varied::Draw;

const ROOM: &str = "
units: cm
measured_within: 0
walls:
  - { name: north, length: 380, holds: [{ kind: window, at: 100, width: 160, sill: 90, view: liked }] }
  - { name: east, length: 320 }
  - { name: south, length: 380, holds: [{ kind: door, name: hall door, at: 20, width: 85, hinge: left, swings: in, leads_to: entrance }] }
  - { name: west, length: 320 }
pieces:
  - { kind: sofa, width: 150..260, depth: 80..105 }
  - { kind: coffee-table, width: 60..130, depth: 40..80 }
  - { kind: media-unit, width: 100..240, depth: 35..60 }
  - { kind: bookcase, name: books, width: 60..120, depth: 25..40, height: 180 }
clearances: { profile: snug }
";
/// The kinds of the room's pieces, each with the sizes that are drawn for it: some too large.
const KINDS: [(PieceKind, [u64; 4]); 4] = [
    (PieceKind::Sofa, [160, 360, 80, 130]),
    (PieceKind::CoffeeTable, [60, 190, 40, 130]),
    (PieceKind::MediaUnit, [100, 300, 35, 70]),
    (PieceKind::Bookcase, [60, 200, 25, 50]),
];
/// Candidates for each.
const EACH: usize = 12;
/// Sets that are compared.
const TOP: usize = 3;
/// Choices that are ruled out at most.
const MOST_RULED_OUT: usize = 400;

fn drawn(seed: u64) -> Vec<ListedPiece> {
    let mut draw = Draw(seed);
    let mut text = "kind,name,width cm,depth cm,price,score\n".to_owned();
    for (kind, [narrow, wide, shallow, deep]) in KINDS {
        for place in 0..EACH {
            let (width, depth) = (draw.from(narrow, wide), draw.from(shallow, deep));
            // Large ones are cheaper and liked, so that some of what is best does not fit.
            let large = (width - narrow) * 60 / (wide - narrow);
            let (price, score) = (draw.from(50, 900) + 8 * (60 - large), large / 2 + draw.from(0, 70));
            let _ = writeln!(text, "{},{} {place},{width},{depth},{price},{score}", kind.key(), kind.key());
        }
    }
    list(&text)
}

/// What a candidate counts: hundredths of its price, or thousandths of a point.
fn worth(order: Order, candidate: &ListedPiece) -> f64 {
    match order {
        Order::Liking => candidate.score.unwrap() * 1000.0,
        _ => candidate.price.unwrap().hundredths as f64,
    }
}

/// The worths of the best sets that fit and cost `budget` at most, and how many better ones do not fit.
fn best(brief: &Brief, candidates: &[ListedPiece], order: Order, budget: f64) -> (Vec<f64>, usize) {
    let (mut found, mut ruled_out): (Vec<f64>, Vec<Vec<usize>>) = (Vec::new(), Vec::new());
    while found.len() < TOP {
        let mut program = RowProblem::default();
        let columns: Vec<Col> =
            candidates.iter().map(|one| program.add_integer_column(worth(order, one), 0.0..=1.0)).collect();
        for (kind, _) in KINDS {
            let of_kind = candidates.iter().zip(&columns).filter(|(one, _)| one.kind == kind);
            program.add_row(1.0..=1.0, of_kind.map(|(_, column)| (*column, 1.0)).collect::<Vec<_>>());
        }
        let prices = candidates.iter().zip(&columns).map(|(one, column)| (*column, worth(Order::Price, one)));
        program.add_row(..=budget, prices.collect::<Vec<_>>());
        for set in &ruled_out {
            program.add_row(..=set.len() as f64 - 1.0, set.iter().map(|one| (columns[*one], 1.0)).collect::<Vec<_>>());
        }
        let sense = if order == Order::Liking { Sense::Maximise } else { Sense::Minimise };
        let mut model = program.optimise(sense);
        model.make_quiet();
        model.set_option("mip_rel_gap", 0.0);
        model.set_option("mip_abs_gap", 0.5);
        let solution = model.solve();
        if solution.status() == HighsModelStatus::Infeasible {
            break;
        }
        assert_eq!(solution.status(), HighsModelStatus::Optimal);
        let values = solution.get_solution();
        let set: Vec<usize> = (0..candidates.len()).filter(|place| values.columns()[*place] > 0.5).collect();
        if fits(brief, candidates, &set) {
            found.push(set.iter().map(|one| worth(order, &candidates[*one])).sum());
        }
        ruled_out.push(set);
        assert!(ruled_out.len() < MOST_RULED_OUT, "too few sets fit to mean anything");
    }
    let not_fitting = ruled_out.len() - found.len();
    (found, not_fitting)
}

fn fits(brief: &Brief, candidates: &[ListedPiece], set: &[usize]) -> bool {
    let put = |brief: Brief, one: &usize| {
        let candidate = &candidates[*one];
        let id = KINDS.iter().position(|(kind, _)| *kind == candidate.kind).unwrap();
        bought(&brief, id, [candidate.width, candidate.depth])
    };
    !solved(&set.iter().fold(brief.clone(), put)).options.is_empty()
}

#[test]
fn the_best_of_many_thousand_sets_are_those_that_a_general_solver_names() {
    let (brief, mut too_large) = (room(ROOM), 0);
    for seed in 0..2 {
        let candidates = drawn(seed);
        let told = |order: Order, set: &SetFound| -> f64 {
            let chosen = set.pieces.iter().filter_map(|piece| piece.candidate);
            chosen.map(|place| worth(order, &candidates[place])).sum()
        };
        for order in [Order::Price, Order::Liking] {
            let budget = 350_000;
            let found = sets(&brief, &candidates, order, Some(budget), TOP);
            assert!(found.proven, "seed {seed} {order:?}: {} solved", found.solved);
            let worths: Vec<f64> = found.sets.iter().map(|set| told(order, set)).collect();
            let (wanted, ruled_out) = best(&brief, &candidates, order, budget as f64);
            assert_eq!(worths, wanted, "seed {seed} {order:?}");
            too_large += ruled_out;
            assert_eq!(worths.len(), TOP);
        }
    }
    assert!(too_large >= 10, "{too_large} of the choices do not fit: nothing is asked of the search");
}
