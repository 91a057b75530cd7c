//! Examples from the literature, and odd programs: what is no number, no row, no room.

use elbowroom_solver::program::relaxation::{Relaxation, Without};
use elbowroom_solver::program::{Dense, Engine, MicrolpEngine, Row, Status, tolerance};

/// E. M. L. Beale's example of 1955, on which the largest-coefficient rule cycles, given bounds; optimum 1/20 (M).
#[test]
fn beales_cycling_example_ends() {
    let objective = [0.75, -150.0, 0.02, -6.0];
    let rows = [
        Row::at_most(vec![(0, 0.25), (1, -60.0), (2, -0.04), (3, 9.0)], 0.0),
        Row::at_most(vec![(0, 0.5), (1, -90.0), (2, -0.02), (3, 3.0)], 0.0),
        Row::at_most(vec![(2, 1.0)], 1.0),
    ];
    let mut engine = Dense::start(&objective, &[(0.0, 1e4); 4]);
    assert_eq!(engine.add(&rows), Status::Optimal);
    assert!((engine.objective() - 0.05).abs() < 1e-9, "{}", engine.objective());
}

/// V. Klee and G. J. Minty's cube of 1972 in `n` dimensions: the optimum is 5^n at the last variable alone (M).
#[test]
fn the_klee_minty_cube_is_climbed() {
    let n = 6;
    let objective: Vec<f64> = (0..n).map(|j| 2f64.powi(n - 1 - j)).collect();
    let rows: Vec<Row> = (0..n)
        .map(|i| {
            let mut terms: Vec<(usize, f64)> = (0..i).map(|j| (j as usize, 2f64.powi(i - j + 1))).collect();
            terms.push((i as usize, 1.0));
            Row::at_most(terms, 5f64.powi(i + 1))
        })
        .collect();
    let mut engine = Dense::start(&objective, &[(0.0, 1e5); 6]);
    assert_eq!(engine.add(&rows), Status::Optimal);
    assert!((engine.objective() - 5f64.powi(n)).abs() < 1e-6, "{}", engine.objective());
}

#[test]
fn what_is_not_a_number_is_refused_for_good() {
    fn refused<E: Engine>() {
        for row in [
            Row { terms: [(0, f64::NAN)].into_iter().collect(), most: 1.0 },
            Row { terms: [(0, 1.0)].into_iter().collect(), most: f64::INFINITY },
            Row { terms: [(9, 1.0)].into_iter().collect(), most: 1.0 },
        ] {
            let mut engine = E::start(&[1.0], &[(0.0, 5.0)]);
            assert_eq!(engine.add(&[row]), Status::Interrupted);
            assert_eq!(engine.add(&[]), Status::Interrupted);
            assert_eq!(engine.values(), [5.0]);
        }
        assert_eq!(E::start(&[f64::NAN], &[(0.0, 1.0)]).add(&[]), Status::Interrupted);
        assert_eq!(E::start(&[1.0], &[(0.0, f64::INFINITY)]).add(&[]), Status::Interrupted);
        assert_eq!(E::start(&[1.0, 1.0], &[(0.0, 1.0)]).add(&[]), Status::Interrupted);
        assert_eq!(E::start(&[1.0], &[(0.0, 1.0)]).aim(&[]), Status::Interrupted);
    }
    refused::<Dense>();
    refused::<MicrolpEngine>();
    assert_eq!(
        Relaxation::of(&[1.0], &[(0.0, 1.0)], &[Row { terms: [(0, f64::NAN)].into_iter().collect(), most: 1.0 }]).err(),
        Some(Without::Answer)
    );
}

#[test]
fn the_last_optimum_outlives_an_infeasible_row() {
    fn outlives<E: Engine>() {
        let mut engine = E::start(&[1.0, 1.0], &[(0.0, 5.0), (0.0, 5.0)]);
        assert_eq!(engine.add(&[Row::at_most(vec![(0, 1.0), (1, 1.0)], 7.0)]), Status::Optimal);
        let before = engine.values().to_vec();
        let mut branch = engine.clone();
        assert_eq!(branch.add(&[Row::at_least(vec![(0, 1.0), (1, 1.0)], 8.0)]), Status::Infeasible);
        assert_eq!(branch.values(), before);
        assert_eq!(branch.add(&[]), Status::Infeasible);
        assert_eq!(engine.add(&[]), Status::Optimal);
        assert_eq!((engine.objective(), branch.solved()), (7.0, 3));
    }
    outlives::<Dense>();
    outlives::<MicrolpEngine>();
}

#[test]
fn rows_without_terms_and_bounds_without_room_are_understood() {
    fn understood<E: Engine>() {
        let mut engine = E::start(&[1.0], &[(2.0, 2.0)]);
        assert_eq!(engine.add(&[Row::at_most(vec![], 0.0)]), Status::Optimal);
        assert_eq!(engine.values(), [2.0]);
        assert_eq!(engine.add(&[Row::at_most(vec![], -1.0)]), Status::Infeasible);
        assert_eq!(E::start(&[1.0], &[(2.0, 1.0)]).add(&[]), Status::Infeasible);
        assert_eq!(E::start(&[], &[]).add(&[]), Status::Optimal);
        let mut engine = E::start(&[1.0], &[(0.0, 3.0)]);
        assert_eq!((engine.add(&[]), engine.objective()), (Status::Optimal, 3.0));
        assert_eq!(engine.add(&[Row::at_most(vec![(0, 1.0), (0, 1.0)], 4.0)]), Status::Optimal);
        assert_eq!(engine.values(), [2.0]);
    }
    understood::<Dense>();
    understood::<MicrolpEngine>();
}

#[test]
fn a_program_solved_from_nothing_may_have_open_bounds() {
    let free = (f64::NEG_INFINITY, f64::INFINITY);
    let rows = [Row::at_most(vec![(0, 1.0), (1, 2.0)], 4.0), Row::at_most(vec![(0, 1.0), (1, -1.0)], 1.0)];
    let solved = Relaxation::of(&[1.0, 0.0], &[free, free], &rows).unwrap();
    assert!((solved.worth(&[1.0, 0.0]) - 2.0).abs() < tolerance::FEASIBLE);
    assert!((solved.point()[1] - 1.0).abs() < tolerance::FEASIBLE);
    assert_eq!(Relaxation::of(&[1.0], &[free], &[]).err(), Some(Without::Answer));
    assert!(Relaxation::of(&[0.0], &[(0.0, 1.0)], &[Row::at_least(vec![(0, 1.0)], 1.0)]).is_ok());
    let beyond = Relaxation::of(&[0.0], &[(0.0, 1.0)], &[Row::at_least(vec![(0, 1.0)], 1.1)]);
    assert_eq!(beyond.err(), Some(Without::Feasible));
}
