//! Whole arrangements: what the search calls best is what a general solver proves best of the same stated program.

mod milp;
mod prepared;
mod ranges;
mod tuned;

use elbowroom_solver::Site;
use elbowroom_solver::arrangement::enumerate;
use elbowroom_solver::routes::Floor;
use elbowroom_solver::search::{RoomContext, Sought, search_stated, stated};

const ROOMS: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../benches/rooms");

/// Rooms of which every arrangement is compared.
const ROOMS_COMPARED: [&str; 2] = ["lock-house", "quay-front"];

/// How far two solvers may be apart, as a share of what both call best: rounding of either.
const ALIKE: f64 = 1e-6;

/// Independent: HiGHS, a reference library for mixed-integer programs (D).
#[test]
fn branch_and_bound_finds_what_highs_proves_best() {
    let compared = compared(Sought::Largest, &ROOMS_COMPARED);
    assert!(compared >= 4, "too few arrangements fit to mean anything: {compared}");
}

/// The same of plans: aims, terms and what they cost once.
#[test]
fn branch_and_bound_plans_what_highs_proves_best() {
    let compared = compared(Sought::Plan, &ROOMS_COMPARED);
    assert!(compared >= 4, "too few arrangements fit to mean anything: {compared}");
}

/// And of sizes alone, with nothing that settles ties.
#[test]
fn branch_and_bound_finds_the_sizes_that_highs_proves_best() {
    let compared = compared(Sought::Sizes, &ROOMS_COMPARED[..1]);
    assert!(compared >= 4, "too few arrangements fit to mean anything: {compared}");
}

/// Arrangements that fit, all of which both solvers find the same best of, by the program as stated and by what is left of it
/// when it was made ready.
fn compared(sought: Sought, rooms: &[&str]) -> usize {
    let mut compared = 0;
    for room in rooms {
        let text = std::fs::read_to_string(format!("{ROOMS}/{room}.yaml")).unwrap();
        let brief = elbowroom_model::scenario::read(&text, None).unwrap();
        let site = Site::of(&brief);
        let (ground, floor) = (RoomContext::of(&brief, &site), Floor::of(&brief, &site));
        for arrangement in &enumerate(&brief, &site).arrangements {
            let program = stated(&ground, arrangement, sought).unwrap();
            let whole = milp::best(&program, f64::NEG_INFINITY);
            let own = search_stated(&ground, &floor, arrangement, sought, 1_000_000, f64::NEG_INFINITY);
            let own = own.found.map(|found| found.objective);
            for (writer, whole) in [("as stated", whole), ("made ready", tuned::best(&program, f64::NEG_INFINITY))] {
                assert!(are_alike(own, whole), "{room} {} {writer}: {own:?} {whole:?}", arrangement.key);
            }
            if let Some(own) = own {
                let better = tuned::best(&program, own - 1.0);
                assert!(are_alike(Some(own), better), "{room} {}: {own} {better:?}", arrangement.key);
                // A binary that is nearly whole, of an easing that costs 100000, lets the same layout pass for a better one.
                let better = tuned::best(&program, own + 1.0);
                let is_none = better.is_none() || are_alike(Some(own), better);
                assert!(is_none, "{room} {}: {better:?} above {own}", arrangement.key);
                compared += 1;
            }
        }
    }
    compared
}

/// Both none, or both the same but for rounding.
fn are_alike(own: Option<f64>, whole: Option<f64>) -> bool {
    match (own, whole) {
        (None, None) => true,
        (Some(own), Some(whole)) => (own - whole).abs() <= ALIKE * whole.abs().max(1.0),
        _ => false,
    }
}
