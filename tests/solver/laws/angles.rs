//! Rooms with chairs that may be turned have the images of their options too, whatever the order of the file.

use elbowroom_solver::answer::Answer;
use proptest::prelude::{Strategy, proptest};

use super::drawn::rooms;
use super::few;
use super::told::{Image, by_decisions, costs_no_more};
use crate::support::plan::{Plan, PlanPiece};
use crate::support::ranked::ranked_briefly;

/// A sofa with its table, and a chair that may be turned or is to be.
fn with_chair() -> impl Strategy<Value = Plan> {
    (rooms(), proptest::bool::ANY).prop_map(|(mut plan, is_asked)| {
        let turned = if is_asked { "yes" } else { "either" };
        let chair = PlanPiece::of("armchair").also("turned", turned.to_owned());
        plan.pieces = vec![PlanPiece::of("sofa"), chair, PlanPiece::of("coffee-table")];
        plan
    })
}

/// Both tellings have the same options, and those whose plans are proven in both cost as much. (Where the work did not
/// suffice for a proof each telling may have found another plan.)
fn assert_same_plans(one: &Answer, image: Image, other: &Answer, text: &str) {
    let (ours, theirs) = (by_decisions(one, image), by_decisions(other, Image::Same));
    assert_eq!(ours.keys().collect::<Vec<_>>(), theirs.keys().collect::<Vec<_>>(), "{image:?} of\n{text}");
    for (decisions, option) in &ours {
        let (mine, its) = (&option.planned, &theirs[decisions].planned);
        let are_as_good = costs_no_more(mine.value, its.value) && costs_no_more(its.value, mine.value);
        assert!(are_as_good || !mine.proven || !its.proven, "{image:?}: {decisions:?} {mine:?} {its:?}\n{text}");
    }
    let proven = ours.values().filter(|option| option.planned.proven).count();
    assert!(2 * proven >= ours.len(), "{proven} of {} proven in\n{text}", ours.len());
}

proptest! {
    #![proptest_config(few(4))]

    /// Mirrored, turned and shuffled: the same options, as good.
    #[test]
    fn a_chair_at_an_angle_has_its_images(plan in with_chair(), degrees in 1.0_f64..359.0, by in 1_usize..5) {
        let text = plan.text();
        let one = ranked_briefly(&text);
        for (image, plan) in [
            (Image::Mirrored, plan.mirrored()),
            (Image::Turned(degrees), plan.turned(degrees)),
            (Image::Same, plan.shuffled(by)),
        ] {
            assert_same_plans(&one, image, &ranked_briefly(&plan.text()), &text);
        }
    }
}
