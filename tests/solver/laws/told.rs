//! What an option says, told apart from the order in which the file named things.

use std::collections::BTreeMap;

use elbowroom_model::{Hand, SecondPlace};
use elbowroom_solver::answer::{Answer, DimensionRange, RankedOption, Thing, degrees};

use crate::support::ranked::{figures, wall};

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
    let facing = match image {
        Image::Same => degrees(choices.facing),
        Image::Mirrored => 180.0 - degrees(choices.facing),
        Image::Turned(by) => degrees(choices.facing) + by,
    };
    let name = |seat| Thing::Piece(seat).name(&answer.brief).to_owned();
    let mut seats: Vec<_> = choices.seats().into_iter().map(|seat| (name(seat.piece), place(seat.place))).collect();
    seats.sort();
    // In hundredths of a degree: far finer than any two ways to face, far coarser than rounding.
    let facing = (facing.rem_euclid(360.0) * 100.0).round() as i64 % 36_000;
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

/// How far two tellings of one option may be apart.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Apart {
    /// Any size, mm.
    pub(super) size: f64,
    /// The score, of 100.
    pub(super) score: f64,
}

/// A proof stops within a thousandth of the best, which is a millimetre or two of one size; and where a piece has room
/// to spare its place may settle elsewhere in another telling, which moves a score a little though no size.
pub(super) const WITHIN_PROOF: Apart = Apart { size: 2.0, score: 5.0 };

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
        let are_as_good = costs_no_more(mine.value, its.value) && costs_no_more(its.value, mine.value);
        assert!(are_as_good || !mine.proven || !its.proven, "{}", told(&format!("{mine:?} {its:?}")));
        let planned = |answer, option| sizes_as(answer, option, |range| range.planned);
        let largest = (sizes(one, option), sizes(other, twin));
        if are_near(&planned(one, option), &planned(other, twin), apart.size) {
            assert!(are_near(&largest.0, &largest.1, apart.size), "{}", told(&format!("{largest:?}")));
        }
        let (mine, its) = (option.score, twin.score);
        assert!((mine - its).abs() <= apart.score, "{}", told(&format!("score {mine} {its}")));
    }
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
