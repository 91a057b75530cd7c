//! What an option says, told apart from the order in which the file named things.

use std::collections::BTreeMap;

use elbowroom_model::{Hand, Point, SecondPlace};
use elbowroom_solver::Placed;
use elbowroom_solver::answer::{Answer, DimensionRange, RankedOption, Thing, degrees};

use crate::support::plan::Plan;
use crate::support::ranked::{figures, ranked_briefly, wall};

/// The decisions of an option by names: what makes it the same option in another telling. The wall behind the main seat,
/// the way it faces, its hand, the wall of the screen, and where each second seat stands.
pub(super) type Decisions = (Option<String>, i64, Option<Hand>, Option<String>, Vec<(String, SecondPlace)>);

/// How the image of a plan turns decisions into decisions.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Image {
    /// The plan itself.
    Same,
    /// Left is right.
    Mirrored,
    /// Turned by so many degrees counter-clockwise.
    Turned(f64),
}

/// A way to face as it reads in the image, in hundredths of a degree: far finer than any two ways to face, far coarser than
/// rounding.
fn faced(facing: Point, image: Image) -> i64 {
    let facing = match image {
        Image::Same => degrees(facing),
        Image::Mirrored => 180.0 - degrees(facing),
        Image::Turned(by) => degrees(facing) + by,
    };
    (facing.rem_euclid(360.0) * 100.0).round() as i64 % 36_000
}

/// The decisions as they read in the image.
pub(super) fn decisions(answer: &Answer, option: &RankedOption, image: Image) -> Decisions {
    let choices = &option.choices;
    let is_mirrored = image == Image::Mirrored;
    let hand = choices.hand.map(|hand| match hand {
        Hand::Left if is_mirrored => Hand::Right,
        Hand::Right if is_mirrored => Hand::Left,
        hand => hand,
    });
    let place = |place: SecondPlace| match place {
        SecondPlace::Left if is_mirrored => SecondPlace::Right,
        SecondPlace::Right if is_mirrored => SecondPlace::Left,
        place => place,
    };
    let facing = faced(choices.facing, image);
    let name = |seat| Thing::Piece(seat).name(&answer.brief).to_owned();
    let mut seats: Vec<_> = choices.seats().into_iter().map(|seat| (name(seat.piece), place(seat.place))).collect();
    seats.sort();
    let [back, screen] = [choices.seat_back, choices.media_wall].map(|it| wall(answer, it).map(str::to_owned));
    (back, facing, hand, screen, seats)
}

/// Every size of an option by piece and dimension, mm, as `told` of its figures.
fn sizes_as(
    answer: &Answer,
    option: &RankedOption,
    told: fn(DimensionRange) -> f64,
) -> BTreeMap<(String, &'static str), f64> {
    let mut sizes = BTreeMap::new();
    for one in option.pieces(&answer.brief) {
        for dimension in one.piece.dimensions() {
            sizes.insert((one.piece.name.clone(), dimension.key()), told(figures(one.sizes, dimension)));
        }
    }
    sizes
}

/// The same at the largest that fits together.
pub(super) fn sizes(answer: &Answer, option: &RankedOption) -> BTreeMap<(String, &'static str), f64> {
    sizes_as(answer, option, |range| range.together)
}

/// The options by their decisions as they read in the image.
pub(super) fn by_decisions(answer: &Answer, image: Image) -> BTreeMap<Decisions, &RankedOption> {
    answer.options.iter().map(|option| (decisions(answer, option, image), option)).collect()
}

/// Plans whose costs differ by no more are the same to a proof.
const SAME_COST: f64 = 25.0;

/// How far two tellings of one option may be apart.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Apart {
    /// Any size, mm.
    pub(super) size: f64,
    /// The score, of 100.
    pub(super) score: f64,
    /// Whether sizes without a proof, and scores of plans that do not cost the same, are held to that too.
    pub(super) unproven: bool,
}

/// A proof stops within a thousandth of the best, which is a millimetre or two of one size; and where a piece has room
/// to spare its place may settle elsewhere in another telling, which moves a score a little though no size.
pub(super) const WITHIN_PROOF: Apart = Apart { size: 2.0, score: 5.0, unproven: true };

/// The same where what has no proof may be another in another telling, and so may a plan that had to ease a rule: its proof
/// is a hundredth of that.
pub(super) const WHERE_PROVEN: Apart = Apart { size: 10.0, unproven: false, ..WITHIN_PROOF };

/// Both tellings have the same options, none is further apart than that, and no plan is better in one of them by more than
/// its proof leaves open. (Two plans may cost the same, a little more of one piece for a little less of another: what they
/// leave room for is no matter of the telling then.)
pub(super) fn assert_alike(one: &Answer, image: Image, other: &Answer, apart: Apart, text: &str) {
    let (ours, theirs) = (by_decisions(one, image), by_decisions(other, Image::Same));
    let keys = |options: &BTreeMap<Decisions, &RankedOption>| options.keys().cloned().collect::<Vec<_>>();
    assert_eq!(keys(&ours), keys(&theirs), "{image:?} of\n{text}");
    for (decisions, option) in &ours {
        let twin = theirs[decisions];
        let told = |what: &str| format!("{image:?}: {decisions:?}: {what}\n{text}");
        let (mine, its) = (&option.planned, &twin.planned);
        let is_proven = mine.proven && its.proven;
        let cost_the_same = (mine.value - its.value).abs() <= SAME_COST;
        let are_as_good = costs_no_more(mine.value, its.value) && costs_no_more(its.value, mine.value);
        assert!(are_as_good || !is_proven, "{}", told(&format!("{mine:?} {its:?}")));
        let planned = |answer, option| sizes_as(answer, option, |range| range.planned);
        let largest = (sizes(one, option), sizes(other, twin));
        let is_same_plan = stands(one, option, image) == stands(other, twin, Image::Same)
            && are_near(&planned(one, option), &planned(other, twin), apart.size);
        let is_sure = apart.unproven || option.largest.proven && twin.largest.proven;
        if is_same_plan && is_sure {
            assert!(are_near(&largest.0, &largest.1, apart.size), "{}", told(&format!("{largest:?}")));
        }
        let (mine, its) = (option.score, twin.score);
        let is_held = cost_the_same || apart.unproven;
        assert!(!is_held || (mine - its).abs() <= apart.score, "{}", told(&format!("score {mine} {its}")));
    }
}

/// The image of a plan has the image of its options.
pub(super) fn assert_image(plan: &Plan, image: Image, apart: Apart) {
    let other = match image {
        Image::Same => plan.clone(),
        Image::Mirrored => plan.mirrored(),
        Image::Turned(by) => plan.turned(by),
    };
    let text = plan.text();
    assert_alike(&ranked_briefly(&text), image, &ranked_briefly(&other.text()), apart, &text);
}

/// Walls told from another one on, items and pieces in another order: the same options.
pub(super) fn assert_shuffled(plan: &Plan, by: usize, apart: Apart) {
    let text = plan.text();
    let other = ranked_briefly(&plan.shuffled(by).text());
    assert_alike(&ranked_briefly(&text), Image::Same, &other, apart, &text);
}

/// The wall that each piece of the plan stands at, and the way it faces as that reads in the image.
fn stands(answer: &Answer, option: &RankedOption, image: Image) -> BTreeMap<String, (Option<String>, i64)> {
    let stand = |placed: &Placed| {
        let name = Thing::Piece(placed.piece).name(&answer.brief).to_owned();
        (name, (wall(answer, placed.at_wall).map(str::to_owned), faced(placed.facing, image)))
    };
    option.layout.placed.iter().map(stand).collect()
}

/// The same pieces have sizes no further apart than this.
fn are_near(
    ours: &BTreeMap<(String, &'static str), f64>,
    theirs: &BTreeMap<(String, &'static str), f64>,
    apart: f64,
) -> bool {
    let is_near = |(dimension, size): (_, &f64)| theirs.get(dimension).is_some_and(|its| (its - size).abs() <= apart);
    ours.len() == theirs.len() && ours.iter().all(is_near)
}

/// A plan is proven within 25 of what it costs, or a hundredth; one more for rounding.
pub(super) fn costs_no_more(now: f64, before: f64) -> bool {
    now <= before + f64::max(25.0, now / 100.0) + 1.0
}
