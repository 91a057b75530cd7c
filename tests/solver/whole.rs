//! Whole arrangements: what the search calls best is what a general solver proves best of the same stated program.

mod milp;

use elbowroom_solver::Site;
use elbowroom_solver::arrangement::enumerate;
use elbowroom_solver::routes::Floor;
use elbowroom_solver::search::{RoomContext, Sought, search_stated, stated};

const ROOMS: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../benches/rooms");

/// How far two solvers may be apart, as a share of what both call best: rounding of either.
const ALIKE: f64 = 1e-6;

/// Independent: HiGHS, a reference library for mixed-integer programs (D).
#[test]
fn branch_and_bound_finds_what_highs_proves_best() {
    let compared = compared(Sought::Largest);
    assert!(compared >= 4, "too few arrangements fit to mean anything: {compared}");
}

/// The same of plans: aims, terms and what they cost once.
#[test]
fn branch_and_bound_plans_what_highs_proves_best() {
    let compared = compared(Sought::Plan);
    assert!(compared >= 4, "too few arrangements fit to mean anything: {compared}");
}

/// Arrangements that fit, all of which both solvers find the same best of.
fn compared(sought: Sought) -> usize {
    let mut compared = 0;
    for room in ["lock-house", "quay-front"] {
        let text = std::fs::read_to_string(format!("{ROOMS}/{room}.yaml")).unwrap();
        let brief = elbowroom_model::scenario::read(&text, None).unwrap();
        let site = Site::of(&brief);
        let (ground, floor) = (RoomContext::of(&brief, &site), Floor::of(&brief, &site));
        for arrangement in &enumerate(&brief, &site).arrangements {
            let whole = milp::best(&stated(&ground, arrangement, sought).unwrap(), f64::NEG_INFINITY);
            let own = search_stated(&ground, &floor, arrangement, sought, 1_000_000, f64::NEG_INFINITY);
            match (own.found.map(|found| found.objective), whole) {
                (None, None) => {}
                (Some(own), Some(whole)) => {
                    let scale = whole.abs().max(1.0);
                    assert!((own - whole).abs() <= ALIKE * scale, "{room} {}: {own} {whole}", arrangement.key);
                    compared += 1;
                }
                other => panic!("{room} {}: {other:?}", arrangement.key),
            }
        }
    }
    compared
}
