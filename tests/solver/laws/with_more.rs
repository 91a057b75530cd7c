//! The laws again over rooms with what drawn ones have none of: a second group, a step in the floor, a ceiling that falls, a
//! leaf that opens wide.

use elbowroom_model::scenario;
use proptest::prelude::{Strategy, any, proptest};

use super::told::{Image, WHERE_PROVEN_TOGETHER, assert_image, assert_shuffled};
use super::{drawn, few};
use crate::support::plan::{Plan, PlanPiece, What};

/// Any sound room that has at least one of these.
fn rooms() -> impl Strategy<Value = Plan> {
    (drawn::rooms(), any::<[u8; 8]>()).prop_filter_map("a sound room", |(plan, draw)| {
        let more = with_more(plan.clone(), draw);
        (more != plan && scenario::read(&more.text(), None).is_ok()).then_some(more)
    })
}

fn with_more(mut plan: Plan, draw: [u8; 8]) -> Plan {
    let wants = |place: usize| draw[place] % 2 == 1;
    if wants(0) {
        let opens_to = [100.0, 135.0, 180.0][usize::from(draw[1]) % 3];
        for held in plan.walls.iter_mut().flat_map(|wall| &mut wall.holds) {
            if let What::Door { hinge: Some(hinge), leads_to } = held.what {
                held.what = What::WideDoor { hinge, opens_to, leads_to };
            }
        }
    }
    if wants(2) {
        let wall = usize::from(draw[3]) % plan.walls.len();
        let (low, over) = (900.0 + 100.0 * f64::from(draw[4] % 8), 400.0 + 100.0 * f64::from(draw[5] % 9));
        plan.walls[wall].also = vec![("ceiling_from", 2400.0), ("ceiling_to", low), ("ceiling_over", over)];
    }
    if wants(6) {
        let (x, y) = drawn::middle(&plan);
        let along = 100.0 * f64::from(draw[5] % 8);
        plan.fixed.push(("kerb".to_owned(), vec![(x - 1500.0, y - along), (x + 1500.0, y - along)]));
    }
    if wants(7) {
        let own = |kind| PlanPiece::of(kind).also("group", "reading").also("needed", false);
        plan = plan.piece(own("armchair").also("name", "reading chair")).piece(own("floor-lamp"));
    }
    plan
}

proptest! {
    #![proptest_config(few(3))]

    #[test]
    fn a_mirrored_room_mirrors_its_options(plan in rooms()) {
        assert_image(&plan, Image::Mirrored, WHERE_PROVEN_TOGETHER);
    }

    #[test]
    fn a_turned_room_turns_its_options(plan in rooms(), degrees in 1.0_f64..359.0) {
        assert_image(&plan, Image::Turned(degrees), WHERE_PROVEN_TOGETHER);
    }

    #[test]
    fn a_shuffled_file_says_the_same(plan in rooms(), by in 1_usize..5) {
        assert_shuffled(&plan, by, WHERE_PROVEN_TOGETHER);
    }
}
