//! The laws again over rooms out of bytes: every kind of piece, chairs at an angle, posts, fires, profiles, clearances and
//! wishes of their own, which ordinary drawn rooms have few of.

use elbowroom_model::{Brief, scenario};
use proptest::prelude::{Strategy, any, proptest};

use super::few;
use super::slack::{assert_no_worse, loosened, solved};
use super::told::{Image, WHERE_PROVEN, assert_alike};
use crate::support::from_bytes;
use crate::support::plan::Plan;
use crate::support::ranked::{brief_of, ranked_briefly};

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
        let text = plan.text();
        let (one, other) = (ranked_briefly(&text), ranked_briefly(&plan.mirrored().text()));
        assert_alike(&one, Image::Mirrored, &other, WHERE_PROVEN, &text);
    }

    #[test]
    fn a_turned_room_turns_its_options(plan in rooms(), degrees in 1.0_f64..359.0) {
        let text = plan.text();
        let (one, other) = (ranked_briefly(&text), ranked_briefly(&plan.turned(degrees).text()));
        assert_alike(&one, Image::Turned(degrees), &other, WHERE_PROVEN, &text);
    }

    #[test]
    fn a_shuffled_file_says_the_same(plan in rooms(), by in 1_usize..5) {
        let text = plan.text();
        let (one, other) = (ranked_briefly(&text), ranked_briefly(&plan.shuffled(by).text()));
        assert_alike(&one, Image::Same, &other, WHERE_PROVEN, &text);
    }

    /// Loosening all that may be loosened by itself, in turn.
    #[test]
    fn loosening_a_rule_loses_nothing(plan in rooms(), rule in any::<u8>(), keep in 0.4_f64..0.95) {
        let text = plan.text();
        let brief = brief_of(&text);
        let (rule, figure) = loosened(&brief, usize::from(rule), keep);
        let loose = Brief { rules: brief.rules.clone().with(rule, figure, "a law"), ..brief.clone() };
        assert_no_worse(&solved(&brief), &solved(&loose), &format!("{} {figure}", rule.key()), &text);
    }
}
