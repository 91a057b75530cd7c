//! Programs of yes and no against every point there is.

use elbowroom_solver::program::Row;
use elbowroom_solver::program::relaxation::{Relaxation, Without};
use elbowroom_solver::program::whole::Whole;

use crate::support::varied::Draw;

fn drawn(draw: &mut Draw) -> Whole {
    let variables = draw.from(1, 10) as usize;
    let mut objective = || (0..variables).map(|_| draw.from(0, 12) as i64 - 2).collect::<Vec<i64>>();
    let objectives = vec![objective(), objective()];
    let rows = (0..draw.from(0, 8)).map(|_| {
        let terms =
            (0..draw.from(1, 4)).map(|_| (draw.from(0, variables as u64 - 1) as usize, draw.from(0, 4) as f64 - 1.0));
        let terms: Vec<(usize, f64)> = terms.collect();
        // Nothing is always allowed, so there is a point to start from.
        Row::at_most(terms, draw.from(0, 4) as f64)
    });
    let rows = rows.collect();
    Whole { variables, objectives, rows, first: (0..variables.min(2)).collect() }
}

/// The best of all points, step by step.
fn best(program: &Whole) -> Vec<i64> {
    let points = (0..1_u32 << program.variables)
        .map(|bits| (0..program.variables).map(|variable| bits >> variable & 1 == 1).collect::<Vec<bool>>());
    let keeps = |point: &Vec<bool>| {
        let values: Vec<f64> = point.iter().map(|is_in| f64::from(u8::from(*is_in))).collect();
        program.rows.iter().all(|row| row.excess(&values) <= 1e-9)
    };
    points.filter(keeps).map(|point| worths(program, &point)).max().unwrap()
}

/// Step by step, what a point is worth.
fn worths(program: &Whole, point: &[bool]) -> Vec<i64> {
    let of = |objective: &Vec<i64>| objective.iter().zip(point).map(|(worth, is_in)| worth * i64::from(*is_in)).sum();
    program.objectives.iter().map(of).collect()
}

#[test]
fn a_drawn_program_is_solved_as_by_trying_every_point() {
    for seed in 0..600 {
        let program = drawn(&mut Draw(seed));
        let found = program.solve(&vec![false; program.variables], u64::MAX);
        let worths: Vec<i64> = found.steps.iter().map(|step| step.worth).collect();
        assert_eq!(worths, best(&program), "seed {seed}: {program:?}");
        assert!(found.steps.iter().all(|step| step.bound == step.worth), "seed {seed}: {found:?}");
    }
}

#[test]
fn a_limit_on_the_work_leaves_a_bound_that_is_true() {
    for seed in 0..200 {
        let program = drawn(&mut Draw(seed));
        let (short, all) = (program.solve(&vec![false; program.variables], 0), best(&program));
        let told: Vec<i64> = short.steps.iter().map(|step| step.worth).collect();
        assert_eq!(told, worths(&program, &short.point), "seed {seed}: not of the point that is handed on");
        assert!(short.nodes <= 2 * program.variables, "seed {seed}: {short:?}");
        assert!(short.steps[0].worth <= all[0] && all[0] <= short.steps[0].bound, "seed {seed}: {short:?}");
    }
}

/// A relaxation that starts from a solved one ends where one from nothing ends (D: both solve the same program).
#[test]
fn a_variable_fixed_in_a_solved_program_is_as_if_it_had_been_fixed_before() {
    let mut fixed = 0;
    for seed in 0..300 {
        let mut draw = Draw(seed);
        let program = drawn(&mut draw);
        let objective: Vec<f64> = program.objectives[0].iter().map(|worth| *worth as f64).collect();
        let mut bounds = vec![(0.0, 1.0); program.variables];
        let mut at = Relaxation::of(&objective, &bounds, &program.rows).unwrap();
        for variable in 0..program.variables {
            let value = draw.from(0, 1) as f64;
            bounds[variable] = (value, value);
            let anew = Relaxation::of(&objective, &bounds, &program.rows);
            let from_there = at.fixed(variable, value);
            let worth =
                |found: &Result<Relaxation, Without>| found.as_ref().map(|it| it.worth(&objective)).map_err(|it| *it);
            match (worth(&from_there), worth(&anew)) {
                (Ok(one), Ok(other)) => assert!((one - other).abs() < 1e-6, "seed {seed}: {one} against {other}"),
                (one, other) => assert_eq!(one, other, "seed {seed}"),
            }
            let Ok(next) = from_there else { break };
            (at, fixed) = (next, fixed + 1);
        }
    }
    assert!(fixed > 500, "{fixed}");
}
