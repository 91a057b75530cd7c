//! What must hold of `program`: the engines agree with each other, with a program stated once and solved from nothing by
//! general solvers (`microlp` through `good_lp`; HiGHS behind the feature `highs`), and with every corner tried by hand.

mod corners;
mod examples;
mod made;

use self::made::{Made, Numbers};
use elbowroom_solver::program::relaxation::Relaxation;
use elbowroom_solver::program::{Dense, Engine, MicrolpEngine, Status, tolerance};
use proptest::prelude::{ProptestConfig, any, prop_assert, prop_assert_eq, proptest};

/// Optimum of a made program by an engine, rows in chunks of `chunk`; none where it is infeasible.
fn stepwise<E: Engine>(made: &Made, chunk: usize) -> Option<f64> {
    let mut engine = E::start(&made.objective, &made.bounds);
    for rows in made.rows.chunks(chunk.max(1)) {
        match engine.add(rows) {
            Status::Optimal => {}
            Status::Infeasible => return None,
            status @ (Status::Beaten | Status::Interrupted) => panic!("{status:?}: {made:?}"),
        }
    }
    made.assert_kept(engine.values());
    Some(engine.objective())
}

#[track_caller]
fn assert_same(left: Option<f64>, right: Option<f64>, made: &Made) {
    match (left, right) {
        (None, None) => {}
        (Some(left), Some(right)) => {
            let near = 1e-6 * (1.0 + left.abs().max(right.abs()) / 1e3);
            assert!((left - right).abs() <= near, "{left} against {right}: {made:?}");
        }
        _ => panic!("{left:?} against {right:?}: {made:?}"),
    }
}

/// Programs of every family that the maker knows, `many` of each.
fn programs(many: u64, most_variables: usize) -> impl Iterator<Item = Made> {
    (0..many)
        .flat_map(move |seed| made::FAMILIES.iter().map(move |family| family(&mut Numbers::new(seed), most_variables)))
}

/// The optimum of a program that is solved from nothing, if it has one.
fn from_nothing(made: &Made) -> Option<f64> {
    Relaxation::of(&made.objective, &made.bounds, &made.rows).ok().map(|solved| solved.worth(&made.objective))
}

/// Independent: good_lp on microlp, from nothing (D: both solve the same stated program).
#[test]
fn rows_one_by_one_end_where_a_solve_from_nothing_ends() {
    let mut infeasible = 0;
    for made in programs(500, 24) {
        let whole = from_nothing(&made);
        infeasible += usize::from(whole.is_none());
        assert_same(stepwise::<Dense>(&made, 1), whole, &made);
        assert_same(stepwise::<Dense>(&made, made.rows.len()), whole, &made);
        assert_same(stepwise::<Dense>(&made, 7), whole, &made);
    }
    assert!(infeasible > 100, "too few infeasible programs to mean anything: {infeasible}");
}

/// Ten thousand of them, degenerate and nearly parallel ones among them.
#[test]
fn both_engines_agree_row_by_row() {
    for made in programs(2500, 16) {
        let mut own = Dense::start(&made.objective, &made.bounds);
        let mut other = MicrolpEngine::start(&made.objective, &made.bounds);
        for row in &made.rows {
            let (left, right) = (own.add(std::slice::from_ref(row)), other.add(std::slice::from_ref(row)));
            assert_eq!(left, right, "{made:?}");
            if left != Status::Optimal {
                break;
            }
            assert_same(Some(own.objective()), Some(other.objective()), &made);
        }
        assert_eq!(own.solved(), other.solved());
    }
}

/// Independent: good_lp on microlp, from nothing (D).
#[test]
fn what_cannot_beat_a_figure_is_given_up_and_what_can_is_not() {
    let mut beaten = 0;
    for (seed, made) in programs(200, 24).enumerate() {
        let whole = from_nothing(&made);
        let share = Numbers::new(seed as u64).between(0.9, 1.1);
        let to_beat = whole.unwrap_or(0.0) * share;
        let mut engine = Dense::start(&made.objective, &made.bounds);
        match (engine.add_to_beat(&made.rows, to_beat), whole) {
            (Status::Infeasible, None) => {}
            (Status::Optimal, Some(whole)) => assert_same(Some(engine.objective()), Some(whole), &made),
            (Status::Beaten, whole) => {
                let near = 1e-6 * (1.0 + to_beat.abs() / 1e3);
                assert!(engine.objective() <= to_beat, "{made:?}");
                assert!(whole.is_none_or(|whole| whole <= engine.objective() + near), "{made:?}");
                beaten += 1;
            }
            (status, whole) => panic!("{status:?} against {whole:?}: {made:?}"),
        }
    }
    assert!(beaten > 100, "too few are beaten to mean anything: {beaten}");
}

/// Independent: microlp (D): a first look at a row never promises less than there is.
#[test]
fn a_first_look_at_a_row_hides_nothing() {
    let (mut refused, mut lowered) = (0, 0);
    for made in programs(400, 16) {
        let mut own = Dense::start(&made.objective, &made.bounds);
        let mut other = MicrolpEngine::start(&made.objective, &made.bounds);
        for row in &made.rows {
            let promised = own.probe(row);
            assert!(promised <= own.objective(), "{made:?}");
            lowered += usize::from(promised < own.objective());
            let row = std::slice::from_ref(row);
            if other.add(row) != Status::Optimal {
                refused += usize::from(promised == f64::NEG_INFINITY);
                break;
            }
            assert!(other.objective() <= promised + 1e-6, "{} against {promised}: {made:?}", other.objective());
            own.add(row);
        }
    }
    assert!(refused > 50 && lowered > 1000, "too few to mean anything: {refused} refused, {lowered} lowered");
}

#[test]
fn rows_held_back_count_with_the_next() {
    for made in programs(100, 24) {
        let (first, rest) = made.rows.split_at(made.rows.len() / 2);
        let mut engine = Dense::start(&made.objective, &made.bounds);
        engine.hold(first);
        let found = (engine.add(rest) == Status::Optimal).then(|| engine.objective());
        assert_same(found, stepwise::<Dense>(&made, made.rows.len()), &made);
    }
}

/// A node's memory is used again for another that has met other rows; and a variable whose bounds are one moves nowhere.
/// Independent: microlp (D).
#[test]
fn a_copy_into_what_met_other_rows_goes_on_as_the_original() {
    for (seed, made) in programs(100, 24).enumerate() {
        let mut made = made;
        let mut numbers = Numbers::new(seed as u64);
        for bounds in &mut made.bounds {
            if numbers.below(4) == 0 {
                bounds.1 = bounds.0;
            }
        }
        let engine = || Dense::start(&made.objective, &made.bounds);
        let (first, rest) = made.rows.split_at(made.rows.len() / 2);
        let (mut original, mut copy) = (engine(), engine());
        copy.add(rest);
        if original.add(first) != Status::Optimal {
            continue;
        }
        copy.clone_from(&original);
        let mut untouched = original.clone();
        let found = (copy.add(rest) == Status::Optimal).then(|| copy.objective());
        assert_same(found, from_nothing(&made), &made);
        assert_eq!(untouched.objective(), original.objective());
        assert_same((untouched.add(rest) == Status::Optimal).then(|| untouched.objective()), found, &made);
    }
}

/// Large ones of the size a crowded room makes.
#[test]
fn sixty_variables_and_150_rows_end_where_a_solve_from_nothing_ends() {
    for made in programs(12, 60) {
        let whole = from_nothing(&made);
        assert_same(stepwise::<Dense>(&made, 3), whole, &made);
    }
}

/// Independent: HiGHS, a reference library for linear programs (D).
#[cfg(feature = "highs")]
#[test]
fn highs_finds_the_same_optimum() {
    for made in programs(300, 40) {
        let whole = made.by_highs();
        assert_same(stepwise::<Dense>(&made, 1), whole, &made);
        assert_same(stepwise::<MicrolpEngine>(&made, 4), whole, &made);
    }
}

/// Independent: every corner of the feasible set, tried one after the other (D).
#[test]
fn no_corner_beats_the_optimum() {
    for made in programs(400, 3) {
        let best = corners::best(&made);
        assert_same(stepwise::<Dense>(&made, 1), best, &made);
        assert_same(stepwise::<MicrolpEngine>(&made, 1), best, &made);
    }
}

#[test]
fn another_aim_finds_what_a_fresh_start_finds() {
    for (seed, made) in programs(100, 20).enumerate() {
        let mut engine = Dense::start(&made.objective, &made.bounds);
        let mut other = MicrolpEngine::start(&made.objective, &made.bounds);
        if engine.add(&made.rows) != Status::Optimal || other.add(&made.rows) != Status::Optimal {
            continue;
        }
        let mut numbers = Numbers::new(seed as u64);
        let objective: Vec<f64> = made.objective.iter().map(|_| numbers.between(-2.0, 2.0).round()).collect();
        assert_eq!(engine.aim(&objective), Status::Optimal);
        assert_eq!(other.aim(&objective), Status::Optimal);
        let again = Made { objective, ..made };
        let whole = from_nothing(&again);
        again.assert_kept(engine.values());
        assert_same(Some(engine.objective()), whole, &again);
        assert_same(Some(other.objective()), whole, &again);
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    /// Law: a row more never raises the optimum, and one that the point keeps changes nothing.
    #[test]
    fn a_row_more_never_gains(seed in any::<u64>()) {
        let made = made::room(&mut Numbers::new(seed), 30);
        let mut engine = Dense::start(&made.objective, &made.bounds);
        let mut before = engine.objective();
        for row in &made.rows {
            let kept = row.excess(engine.values()) <= 0.0;
            if engine.add(std::slice::from_ref(row)) != Status::Optimal {
                prop_assert!(!kept);
                break;
            }
            prop_assert!(engine.objective() <= before + tolerance::FEASIBLE);
            prop_assert!(!kept || engine.objective() == before);
            before = engine.objective();
        }
    }

    /// Law: the same rows in the same order give the same bits, from a clone or not.
    #[test]
    fn same_rows_same_bits(seed in any::<u64>()) {
        let made = made::room(&mut Numbers::new(seed), 30);
        let mut engine = Dense::start(&made.objective, &made.bounds);
        let mut again = Dense::start(&made.objective, &made.bounds);
        for rows in made.rows.chunks(3) {
            let mut copy = engine.clone();
            prop_assert_eq!(engine.add(rows), again.add(rows));
            copy.add(rows);
            prop_assert_eq!(engine.values(), again.values());
            prop_assert_eq!(engine.values(), copy.values());
        }
    }
}
