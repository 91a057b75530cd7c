//! Prose of the answer on one screen.

use elbowroom_model::article::the;
use elbowroom_model::{Brief, Criterion, Hand};
use elbowroom_solver::answer::RankedOption;

use super::answer::title;
use super::criteria;
use super::firm::set_aside_shortly;

/// Label: which wall, which way.
pub(crate) const WHICH_WALL: &str = "Which wall";
/// Label: the hand of a corner sofa.
pub(crate) const WHICH_HAND: &str = "Which hand";
/// Label: sizes to shop by.
pub(crate) const HOW_LARGE: &str = "How large";
/// Label: the strongest reason.
pub(crate) const WHY: &str = "Why";
/// Label: the worst that the plan gives up.
pub(crate) const GIVES_UP_LABEL: &str = "Gives up";

/// Label: figures of the file that are likely slips.
pub(crate) const CHECK_FIRST: &str = "Check first";

/// A figure that is likely a slip, and how many more there are.
pub(crate) fn to_check(first: &str, more: usize) -> String {
    match more {
        0 => first.to_owned(),
        1 => format!("{first} One figure more is told by `check`."),
        _ => format!("{first} {more} figures more are told by `check`."),
    }
}

/// Over the other families, a line each, with what they are ranked by.
pub(crate) fn other_ways(told: usize, all: usize, by: Option<Criterion>) -> String {
    let by = by.map_or("score", criteria::name);
    match told {
        told if told == all => format!("Other ways to put the main seat ({by})"),
        _ => format!("Other ways to put the main seat, the next {told} of {all} ({by})"),
    }
}

/// The caution of the short page.
pub(crate) const BEFORE_BUYING: &str =
    "Before you buy: tape it out full size, keep exits free; local codes come first.";
/// Where the rest is.
pub(crate) const FULL: &str = "--full tells all that is known; `draw`, `tape` and `card` make the sheets.";
/// The same where nothing fits.
pub(crate) const FULL_OF_NOTHING: &str = "--full tells why, of each arrangement, and all cautions.";

/// How large a piece may be, and how large it is in the plan.
pub(crate) fn up_to(label: &str, count: usize, most: &str, planned: &str) -> String {
    let label = if count == 1 { label.to_owned() } else { format!("{label} each") };
    if most == planned { format!("{label} {most}") } else { format!("{label} up to {most} (drawn {planned})") }
}

/// The sizes in one.
pub(crate) fn all_up_to(sizes: &[String], unit: &str) -> String {
    format!("{}, in {unit}", sizes.join(", "))
}

/// An option in a line, with its score, or that by which all are ranked, and with why one of a lower score may stand before it.
pub(crate) fn in_a_line(brief: &Brief, option: &RankedOption, by: Option<Criterion>) -> String {
    let judgement = by.and_then(|by| option.judgement(by));
    let score = judgement.map_or_else(
        || format!("{:.0}", option.score),
        |judgement| format!("{} {:.0}", criteria::name(judgement.criterion), judgement.score),
    );
    format!("{}. {} ({score}{})", option.rank, title(brief, option), standing(option))
}

/// What stands behind others whatever its score is.
fn standing(option: &RankedOption) -> String {
    match (option.set_aside, option.eased_rules()) {
        (Some(aside), _) => format!("; set aside: {}", set_aside_shortly(&aside)),
        (None, 0) => String::new(),
        (None, 1) => ", eases a rule".to_owned(),
        (None, many) => format!(", eases {many} rules"),
    }
}

/// Which hand a corner sofa has, in a few words.
pub(crate) fn which_hand(hand: Hand, beside: Option<&str>) -> String {
    let toward = beside.map_or_else(String::new, |wall| format!(", toward {}", the(wall)));
    format!("{} as you sit{toward}", hand.key())
}
