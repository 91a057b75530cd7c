//! What an option says, told apart from the order in which the file named things.

use std::collections::BTreeMap;

use elbowroom_model::{Hand, Point, SecondPlace};
use elbowroom_solver::Placed;
use elbowroom_solver::answer::{Answer, DimensionRange, RankedOption, Thing, degrees};
use elbowroom_solver::refusal::Why;

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

/// Two ways to face, hundredths of a degree, that are one but for rounding.
fn are_one_way(one: i64, other: i64) -> bool {
    let between = (one - other).rem_euclid(36_000);
    between.min(36_000 - between) <= 1
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
    /// Whether the largest sizes are held to their value alone.
    pub(super) traded: bool,
}

/// A proof stops within a thousandth of the best, which is a millimetre or two of one size; and where a piece has room
/// to spare its place may settle elsewhere in another telling, which moves a score a little though no size.
pub(super) const WITHIN_PROOF: Apart = Apart { size: 2.0, score: 5.0, unproven: true, traded: false };

/// The same where what has no proof may be another in another telling, and so may a plan that had to ease a rule: its proof
/// is a hundredth of that.
pub(super) const WHERE_PROVEN: Apart = Apart { size: 10.0, unproven: false, ..WITHIN_PROOF };

/// The same of rooms with pieces that count alike, as two armchairs do: a millimetre of one is as good as one of the other, so
/// that what is proven is what all sizes together are worth.
pub(super) const WHERE_PROVEN_TOGETHER: Apart = Apart { traded: true, ..WHERE_PROVEN };

/// Sizes of one plan, mm: what is held to be no smaller than planned must be planned alike to be as large.
const SAME_SIZE: f64 = 1.0;

/// Both tellings have the same options, none is further apart than that, and no plan is better in one of them by more than
/// its proof leaves open. (Two plans may cost the same, a little more of one piece for a little less of another: what they
/// leave room for is no matter of the telling then.)
pub(super) fn assert_alike(one: &Answer, image: Image, other: &Answer, apart: Apart, text: &str) {
    let ours = by_decisions(one, image);
    let theirs = named_alike(&ours, by_decisions(other, Image::Same));
    assert_same_options((one, &ours), (other, &theirs), apart, &format!("{image:?} of\n{text}"));
    for (decisions, option) in &ours {
        let Some(twin) = theirs.get(decisions) else { continue };
        let told = |what: &str| format!("{image:?}: {decisions:?}: {what}\n{text}");
        let (mine, its) = (&option.planned, &twin.planned);
        let is_proven = mine.proven && its.proven;
        let cost_the_same = (mine.value - its.value).abs() <= SAME_COST;
        let are_as_good = costs_no_more(mine.value, its.value) && costs_no_more(its.value, mine.value);
        assert!(are_as_good || !is_proven, "{}", told(&format!("{mine:?} {its:?}")));
        let planned = |answer, option| sizes_as(answer, option, |range| range.planned);
        let is_same_plan = stand_alike(&stands(one, option, image), &stands(other, twin, Image::Same))
            && are_near(&planned(one, option), &planned(other, twin), apart.size.min(SAME_SIZE));
        let is_sure = apart.unproven || option.largest.proven && twin.largest.proven;
        if is_same_plan && is_sure {
            let largest = (sizes(one, option), sizes(other, twin));
            let is_near = are_near(&largest.0, &largest.1, apart.size);
            let is_worth_as_much = is_worth_as_much(option, twin, apart.size);
            assert!(is_near || apart.traded && is_worth_as_much, "{}", told(&format!("{largest:?}")));
        }
        let are_walked_alike = (told_cost(option) - told_cost(twin)).abs() <= SAME_COST;
        let is_held = apart.unproven || cost_the_same && are_walked_alike;
        let (mine, its) = (option.score, twin.score);
        assert!(!is_held || (mine - its).abs() <= apart.score, "{}", told(&format!("score {mine} {its}")));
    }
}

/// The decisions that two tellings share, by the names that the first has for them.
fn named_alike<'o>(
    ours: &BTreeMap<Decisions, &RankedOption>,
    theirs: BTreeMap<Decisions, &'o RankedOption>,
) -> BTreeMap<Decisions, &'o RankedOption> {
    let are_alike = |one: &Decisions, other: &Decisions| {
        let but_for_facing =
            |(back, _, hand, screen, seats): &Decisions| (back.clone(), *hand, screen.clone(), seats.clone());
        are_one_way(one.1, other.1) && but_for_facing(one) == but_for_facing(other)
    };
    let named = |its: Decisions| ours.keys().find(|mine| are_alike(mine, &its)).cloned().unwrap_or(its);
    theirs.into_iter().map(|(its, option)| (named(its), option)).collect()
}

/// Both have the same options; but where what has no proof may be another, what is found in one may use up the work of the
/// other, which says so then.
fn assert_same_options(
    (one, ours): (&Answer, &BTreeMap<Decisions, &RankedOption>),
    (other, theirs): (&Answer, &BTreeMap<Decisions, &RankedOption>),
    apart: Apart,
    told: &str,
) {
    let keys = |options: &BTreeMap<Decisions, &RankedOption>| options.keys().cloned().collect::<Vec<_>>();
    let is_cut_short = |answer: &Answer| answer.refused.iter().any(|refusal| refusal.why == Why::NotDecided);
    let is_missing_rightly =
        |here: &BTreeMap<Decisions, &RankedOption>, there: &BTreeMap<Decisions, &RankedOption>, answer| {
            let mut missing = here.iter().filter(|(decisions, _)| !there.contains_key(*decisions));
            missing.all(|(_, option)| !apart.unproven && !option.planned.proven && is_cut_short(answer))
        };
    let are_same = is_missing_rightly(ours, theirs, other) && is_missing_rightly(theirs, ours, one);
    assert!(are_same, "{:?}\n{:?}\n{told}", keys(ours), keys(theirs));
}

/// What is told of the plan costs so much: with what walkers make of it, which is asked of the finished plan and no part of
/// its proof.
fn told_cost(option: &RankedOption) -> f64 {
    option.planned.composition.iter().map(|term| term.cost).sum()
}

/// What both have is worth the same, but for what a proof leaves open.
fn is_worth_as_much(one: &RankedOption, other: &RankedOption, apart: f64) -> bool {
    let (mine, its) = (one.largest.size_value, other.largest.size_value);
    (mine - its).abs() <= apart + LARGEST_WITHIN * mine.abs().max(its.abs())
}

/// The largest are proven within this share.
const LARGEST_WITHIN: f64 = 1e-3;

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

/// The wall that a piece stands at, and the way it faces.
type Stands = BTreeMap<String, (Option<String>, i64)>;

/// How each piece of the plan stands, as that reads in the image.
fn stands(answer: &Answer, option: &RankedOption, image: Image) -> Stands {
    let stand = |placed: &Placed| {
        let name = Thing::Piece(placed.piece).name(&answer.brief).to_owned();
        (name, (wall(answer, placed.at_wall).map(str::to_owned), faced(placed.facing, image)))
    };
    option.layout.placed.iter().map(stand).collect()
}

fn stand_alike(ours: &Stands, theirs: &Stands) -> bool {
    let alike = |(name, (at, way)): (&String, &(Option<String>, i64))| {
        theirs.get(name).is_some_and(|(its, other)| its == at && are_one_way(*way, *other))
    };
    ours.len() == theirs.len() && ours.iter().all(alike)
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
