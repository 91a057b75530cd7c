//! The laws again over rooms out of bytes: every kind of piece, chairs at an angle, posts, fires, profiles, clearances and
//! wishes of their own, which ordinary drawn rooms have few of.

use elbowroom_model::scenario;
use proptest::prelude::{Strategy, any, proptest};

use super::few;
use super::slack::assert_loosening_loses_nothing;
use super::told::{Image, WHERE_PROVEN, assert_image, assert_shuffled};
use crate::support::from_bytes;
use crate::support::plan::Plan;

/// Any sound room out of bytes.
fn rooms() -> impl Strategy<Value = Plan> {
    proptest::collection::vec(any::<u8>(), 60..120).prop_filter_map("a sound room", |bytes| {
        let plan = from_bytes::plan(&bytes);
        scenario::read(&plan.text(), None).is_ok().then_some(plan)
    })
}

proptest! {
    #![proptest_config(few(6))]

    #[test]
    fn a_mirrored_room_mirrors_its_options(plan in rooms()) {
        assert_image(&plan, Image::Mirrored, WHERE_PROVEN);
    }

    #[test]
    fn a_turned_room_turns_its_options(plan in rooms(), degrees in 1.0_f64..359.0) {
        assert_image(&plan, Image::Turned(degrees), WHERE_PROVEN);
    }

    #[test]
    fn a_shuffled_file_says_the_same(plan in rooms(), by in 1_usize..5) {
        assert_shuffled(&plan, by, WHERE_PROVEN);
    }

    #[test]
    fn loosening_a_rule_loses_nothing(plan in rooms(), rule in any::<u8>(), keep in 0.4_f64..0.95) {
        assert_loosening_loses_nothing(&plan, usize::from(rule), keep);
    }
}
