//! The discrete options of a room.

mod plan;

use std::collections::BTreeSet;

use elbowroom_model::Brief;
use elbowroom_solver::Site;
use elbowroom_solver::arrangement::{Enumeration, enumerate};
use plan::{brief, media_unit, rectangle, sofa};

fn of(brief: &Brief) -> Enumeration {
    enumerate(brief, &Site::of(brief))
}

fn keys(found: &Enumeration) -> BTreeSet<String> {
    found.arrangements.iter().map(|arrangement| arrangement.key.clone()).collect()
}

fn strings(keys: &[&str]) -> BTreeSet<String> {
    keys.iter().map(|key| (*key).to_owned()).collect()
}

#[test]
fn a_sofa_and_a_screen_face_each_other_from_wall_to_wall_or_with_the_sofa_free() {
    let found = of(&brief(rectangle(5000.0, 4500.0), vec![sofa(), media_unit()]));
    let expected = [
        "top/bottom",
        "bottom/top",
        "left-side/right-side",
        "right-side/left-side",
        "free-top/top",
        "free-bottom/bottom",
        "free-left-side/left-side",
        "free-right-side/right-side",
    ];
    assert_eq!(keys(&found), strings(&expected));
    assert_eq!(found.dropped, Vec::new());
}
