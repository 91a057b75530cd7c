//! A room has no left or right and no north of its own: its images have the images of its options.

use proptest::prelude::proptest;

use super::drawn::rooms;
use super::few;
use super::told::{Image, WITHIN_PROOF, assert_alike};
use crate::support::ranked::ranked_briefly;

proptest! {
    #![proptest_config(few(4))]

    /// The mirrored room has every option mirrored, hands and sides swapped.
    #[test]
    fn a_mirrored_room_mirrors_its_options(plan in rooms()) {
        let text = plan.text();
        let (one, other) = (ranked_briefly(&text), ranked_briefly(&plan.mirrored().text()));
        assert_alike(&one, Image::Mirrored, &other, WITHIN_PROOF, &text);
    }

    /// Turning the whole plan by any angle changes no size by more than the proof leaves open.
    #[test]
    fn a_turned_room_keeps_its_sizes(plan in rooms(), degrees in 1.0_f64..359.0) {
        let text = plan.text();
        let (one, other) = (ranked_briefly(&text), ranked_briefly(&plan.turned(degrees).text()));
        assert_alike(&one, Image::Turned(degrees), &other, WITHIN_PROOF, &text);
    }
}
