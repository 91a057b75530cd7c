//! The same assignment stated once more, from what the rooms and the stock say alone, and put to HiGHS (D: a reference
//! library for mixed-integer programs), step by step.

use elbowroom_solver::answer::{Answer, RankedOption};
use elbowroom_solver::stock::{Asking, Owned};
use highs::{Col, HighsModelStatus, Model, RowProblem, Sense};

use super::enumeration::{main_seats, points_of, priorities};
use super::may_be;

/// What a variable stands for.
#[derive(Clone, Copy)]
enum Stands {
    /// An arrangement is chosen, with its score.
    Option(i64),
    /// A piece stands where it must, or where it need not, with its points.
    Piece(bool, i64),
}

/// A variable, and the place of its room's priority, the first being 0.
struct Variable {
    column: Col,
    of: usize,
    stands: Stands,
}

/// Must-haves served by priority, then points, each step solved to its proven best with those before it kept.
///
/// # Panics
/// Where HiGHS does not prove an optimum.
pub(super) fn best(rooms: &[Asking], stock: &[Owned]) -> (Vec<i64>, i64) {
    let priorities = priorities(rooms);
    let mut kept: Vec<i64> = Vec::new();
    for step in 0..=priorities.len() {
        let (mut program, variables) = stated(rooms, stock, &priorities, step);
        for (earlier, worth) in kept.iter().enumerate() {
            let counted =
                variables.iter().map(|it| (it.column, worth_of(it.stands, it.of, (earlier, priorities.len()))));
            let terms: Vec<(Col, f64)> =
                counted.filter(|(_, worth)| *worth != 0).map(|(column, worth)| (column, worth as f64)).collect();
            program.add_row(*worth as f64.., terms);
        }
        kept.push(solved(program));
    }
    let points = kept.pop().unwrap();
    (kept, points)
}

/// What a variable counts in a step.
fn worth_of(stands: Stands, of: usize, (step, steps): (usize, usize)) -> i64 {
    let weight = (steps - of) as i64;
    match stands {
        Stands::Option(score) if step == steps => weight * score,
        Stands::Piece(_, points) if step == steps => weight * points,
        Stands::Piece(true, _) if step == of => 1,
        _ => 0,
    }
}

fn stated(rooms: &[Asking], stock: &[Owned], priorities: &[u32], step: usize) -> (RowProblem, Vec<Variable>) {
    let (mut program, mut variables) = (RowProblem::default(), Vec::new());
    // Of each row of the stock: where it may stand, in which room, how many of it.
    let mut of_row: Vec<Vec<(Col, usize, u32)>> = stock.iter().map(|_| Vec::new()).collect();
    for (room, asking) in rooms.iter().enumerate() {
        let of = priorities.iter().position(|priority| *priority == asking.priority).unwrap();
        let mut add = |program: &mut RowProblem, stands: Stands| {
            let worth = worth_of(stands, of, (step, priorities.len()));
            let column = program.add_integer_column(worth as f64, 0.0..=1.0);
            variables.push(Variable { column, of, stands });
            column
        };
        let options: Vec<((&Answer, &RankedOption), Col)> = asking
            .room
            .options()
            .map(|option| (option, add(&mut program, Stands::Option(option.1.score.round() as i64))))
            .collect();
        program.add_row(..=1.0, options.iter().map(|(_, column)| (*column, 1.0)).collect::<Vec<_>>());
        let mut of_place = Vec::new();
        for asked in asking.asked() {
            let mut here = Vec::new();
            for (row, owned) in stock.iter().enumerate() {
                let fits = |option| may_be(option, asked.pieces[0], owned);
                let holding: Vec<_> = options.iter().filter(|(option, _)| fits(*option)).collect();
                if holding.is_empty() || (owned.piece.count as usize) < asked.pieces.len() {
                    continue;
                }
                let points = points_of(asking, &asked, owned);
                let column = add(&mut program, Stands::Piece(asked.must, points));
                let holding = holding.into_iter().map(|(_, option)| (*option, -1.0));
                program.add_row(..=0.0, std::iter::once((column, 1.0)).chain(holding).collect::<Vec<_>>());
                here.push((column, 1.0));
                of_row[row].push((column, room, asked.pieces.len() as u32));
            }
            program.add_row(..=1.0, here.clone());
            of_place.push(here);
        }
        // Nothing without a main seat.
        let seats = main_seats(asking);
        let seated: Vec<(Col, f64)> =
            seats.iter().flat_map(|place| &of_place[*place]).map(|(col, _)| (*col, -1.0)).collect();
        let chosen: Vec<(Col, f64)> = options.iter().map(|(_, column)| (*column, 1.0)).collect();
        let others =
            of_place.iter().enumerate().filter(|(place, _)| !seats.contains(place)).map(|(_, here)| here.clone());
        for together in others.chain([chosen]).filter(|_| !seats.is_empty()) {
            program.add_row(..=0.0, together.into_iter().chain(seated.iter().copied()).collect::<Vec<_>>());
        }
    }
    let days =
        rooms.iter().map(|asking| asking.days.from).min().unwrap()..=rooms.iter().map(|it| it.days.to).max().unwrap();
    for day in days {
        for (owned, uses) in stock.iter().zip(&of_row) {
            let away = owned.away.iter().filter(|away| (away.days.from..=away.days.to).contains(&day));
            let there = owned.piece.count.saturating_sub(away.map(|away| away.count).sum());
            let on_day =
                uses.iter().filter(|(_, room, _)| (rooms[*room].days.from..=rooms[*room].days.to).contains(&day));
            let terms: Vec<(Col, f64)> = on_day.map(|(column, _, count)| (*column, f64::from(*count))).collect();
            program.add_row(..=f64::from(there), terms);
        }
    }
    (program, variables)
}

fn solved(program: RowProblem) -> i64 {
    let mut model: Model = program.optimise(Sense::Maximise);
    model.make_quiet();
    model.set_option("threads", 1);
    model.set_option("parallel", "off");
    model.set_option("mip_rel_gap", 0.0);
    model.set_option("mip_abs_gap", 0.5);
    model.set_option("time_limit", 600.0);
    let solved = model.solve();
    assert_eq!(solved.status(), HighsModelStatus::Optimal);
    solved.objective_value().round() as i64
}
