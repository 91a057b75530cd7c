//! Prose of what `rank` tells.

use std::fmt::Write;

use elbowroom_model::article::the;
use elbowroom_model::{Brief, Hand, ItemId, PieceId, WallId};
use elbowroom_solver::answer::{RankedOption, Thing, TurnsIf, Work};
use elbowroom_solver::sizes::Holding;

use super::answer::{holding, title};
use super::figures::counted;
use super::firm::{comes_first, stays_first};
use crate::words::tolerance::WHOLE;

/// Label: which wall, which way.
pub(crate) const SEATING: &str = "Seating";
/// Label: the hand of a corner sofa.
pub(crate) const HAND: &str = "Hand";
/// Label: where the screen is.
pub(crate) const SCREEN: &str = "Screen";
/// Label: how firm the order is.
pub(crate) const FIRM: &str = "How firm";
/// Before the criterion that an option is ranked by alone.
pub(crate) const BY: &str = "by";
/// Over what holds each size.
pub(crate) const HELD_BY: &str = "held by";
/// Of a piece that stands at no wall.
pub(crate) const FREE: &str = "free";
/// Of a size that no one thing holds, nor two together.
pub(crate) const WHOLE_ROOM: &str = "the room as a whole";
/// Of a size that nothing in the room holds.
pub(crate) const NO_LARGER: &str = "no larger is asked for or sold";
/// Over where a route is narrowest.
pub(crate) const NARROWEST: &str = "narrowest";
/// Over pieces that found no room; `proven`: there is none for them.
pub(crate) const fn left_out(proven: bool) -> &'static str {
    if proven { "Left out, for it did not fit" } else { "Left out, for no place was found" }
}
/// What a seat faces.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Faced {
    /// The wall straight ahead.
    pub wall: WallId,
    /// The window, fireplace, door or opening on it, straight ahead.
    pub item: Option<ItemId>,
}

/// Which wall the seating takes and what it faces.
pub(crate) fn seating(brief: &Brief, back: Option<WallId>, faced: Option<&Faced>) -> String {
    let wall = |wall| the(Thing::Wall(wall).name(brief));
    let back = back.map_or_else(|| "stands free of the walls".to_owned(), |back| format!("back to {}", wall(back)));
    match faced {
        Some(Faced { wall: faced, item: Some(item) }) => {
            format!("{back}, facing {} and its {}", wall(*faced), Thing::Item(*item).name(brief))
        }
        Some(Faced { wall: faced, item: None }) => format!("{back}, facing {}", wall(*faced)),
        None => back,
    }
}

/// Which hand a corner sofa has.
pub(crate) fn hand(hand: Hand, beside: Option<&str>) -> String {
    let toward = beside.map_or_else(String::new, |wall| format!(", toward {}", the(wall)));
    let hand = hand.key();
    format!("{hand}: the return is on your {hand} as you sit{toward}")
}

/// Where the screen is and how far off.
pub(crate) fn screen(brief: &Brief, wall: WallId, distance: Option<&str>) -> String {
    let distance = distance.map_or_else(String::new, |distance| format!(", {distance} from the seat's front"));
    format!("on {}{distance}", the(Thing::Wall(wall).name(brief)))
}

/// How firm the first place is and what would turn it.
pub(crate) fn firm(
    brief: &Brief,
    best: &RankedOption,
    options: usize,
    undecided: usize,
    rival: Option<(&TurnsIf, f64, &RankedOption)>,
) -> String {
    let mut text = format!("score {:.0} of 100", best.score);
    let is_aside = best.set_aside.is_some();
    if options > 1 || is_aside {
        let _ = write!(text, "; {}", stays_first(brief, best));
    }
    match rival {
        _ if options == 1 && undecided == 0 => text.push_str("; nothing else fits"),
        _ if options == 1 => text.push_str("; nothing else was found that fits"),
        _ if is_aside => {}
        Some((turn, now, rival)) => {
            let (name, to) = (super::criteria::name(turn.criterion), wish(turn.weight, now));
            let _ = write!(text, "; {name} at {to} instead of {now} would put option {} first", rival.rank);
        }
        None => text.push_str("; no change of one wish turns it"),
    }
    text
}

/// A wish to two places, rounded away from the present one so that it still turns the order.
fn wish(weight: f64, now: f64) -> f64 {
    let hundredths = weight * 100.0;
    // What is a whole number of hundredths but for rounding stays one.
    let near = hundredths.round();
    if (hundredths - near).abs() < WHOLE {
        return near / 100.0;
    }
    (if weight > now { hundredths.ceil() } else { hundredths.floor() }) / 100.0
}

/// Over the reasons.
pub(crate) const fn why(alone: bool) -> &'static str {
    if alone { "   How it scores" } else { "   Why first (score, and the others on average)" }
}

/// A score beside the mean of the others: `88 (61)`.
pub(crate) fn against_mean(score: f64, mean: Option<f64>) -> String {
    mean.map_or_else(|| format!("{score:.0}"), |mean| format!("{score:.0} ({mean:.0})"))
}

/// Row: what of a return is not as the main run.
pub(crate) const ITS_RETURN: &str = "  its return";
/// Row: the return at the other end.
pub(crate) const ITS_SECOND_RETURN: &str = "  its second return";

/// Over the sizes.
pub(crate) fn sizes(unit: &str) -> String {
    format!("   Sizes to shop by, {unit}: in this plan (at least-at most); all at their most still fit together")
}

/// Over what the plan of the first option gives up.
pub(crate) const GIVES_UP: &str = "   What this plan gives up";

/// What holds a size of a piece, and by which clearance: `hall door swing`, `media unit (passage)`.
pub(crate) fn holder(brief: &Brief, piece: PieceId, by: &Holding) -> String {
    if *by == Holding::Most {
        return NO_LARGER.to_owned();
    }
    let (is_clearance, key) = (by.rule().clearance().is_some(), rule(by.rule().key()));
    let by = holding(brief, piece, by);
    let said = key.split(' ').next_back().is_some_and(|last| by.ends_with(last));
    if is_clearance && !said { format!("{by} ({key})") } else { by }
}

/// `width, depth: hall door swing; return: the most asked for`; no dimensions where there is but one reason.
pub(crate) fn held(told: &[(String, Vec<&str>)]) -> String {
    match told {
        [(by, _)] => by.clone(),
        told => {
            let each: Vec<String> = told.iter().map(|(by, of)| format!("{}: {by}", of.join(", "))).collect();
            each.join("; ")
        }
    }
}

/// Over what each size could be alone.
pub(crate) fn alone(unit: &str) -> String {
    format!("If all else gave way to one size, {unit}")
}

/// `width up to 248`.
pub(crate) fn dimension_up_to(dimension: &str, most: &str) -> String {
    format!("{dimension} up to {most}")
}

/// Over a sketch.
pub(crate) const SKETCH: &str = "Sketch of option 1, not to scale: `elbowroom draw` draws it true";

/// What the signs of a sketch mean, and its numbers.
pub(crate) fn sketch_signs(numbered: &[String]) -> String {
    let signs = "\u{2591} window  \u{2592} door  \u{b7} opening";
    if numbered.is_empty() { signs.to_owned() } else { format!("{signs}  {}", numbered.join("  ")) }
}

/// Over the other options; `one_by_one`: each by itself, and not the best of each family.
pub(crate) fn others(unit: &str, one_by_one: bool) -> String {
    let which = if one_by_one { "Other options" } else { "The best of each other way to put the main seat" };
    format!("{which} (sizes as planned, {unit}; scores against option 1)")
}

/// The first option again, where others are like it: `1. as above, and 3 like it: options 4, 7 and 9`.
pub(crate) fn first_again(like_it: &str) -> String {
    format!("1. as above, {like_it}")
}

/// The line of another option.
pub(crate) fn other(brief: &Brief, option: &RankedOption) -> String {
    format!("{}. {}", option.rank, title(brief, option))
}

/// How an option stands in the order, and how it differs from the first.
pub(crate) fn standing(brief: &Brief, option: &RankedOption, apart: &str) -> String {
    let proven = if option.largest.proven { "" } else { "; its sizes are not proven largest" };
    format!("score {:.0}, {}; {apart}{proven}", option.score, comes_first(brief, option))
}

/// Of sizes that the search could not prove largest, where that is so.
pub(crate) fn unproven(option: &RankedOption) -> Option<String> {
    let short = (option.largest.bound - option.largest.objective) / option.largest.objective.abs().max(1.0) * 100.0;
    (!option.largest.proven).then(|| {
        format!(
            "Everything fits, but the search stopped early: in all, sizes could be up to {:.1} % larger.",
            short.max(0.1)
        )
    })
}

/// A piece, or several alike, with its size.
pub(crate) fn sized(label: &str, count: usize, size: &str) -> String {
    if count == 1 { format!("{label} {size}") } else { format!("{label} each {size}") }
}

/// How an option differs from the first.
pub(crate) fn apart(differences: &[(f64, f64, &str)], dominating: Option<usize>, never_first: bool) -> String {
    let scores: Vec<String> = differences.iter().map(|(_, by, name)| format!("{name} {by:+.0}")).collect();
    let mut text = if scores.is_empty() { "scores as option 1".to_owned() } else { scores.join(", ") };
    match dominating {
        Some(rank) => {
            let _ = write!(text, "; option {rank} is at least as good in everything");
        }
        None if never_first => text.push_str("; never first, whatever you prefer"),
        None => {}
    }
    text
}

/// What the option that stands first is called where it is set out.
pub(crate) const FIRST: &str = "option 1";

/// Over where each piece stands.
pub(crate) fn places(called: &str, unit: &str) -> String {
    format!(
        "Setting out {called}, {unit} along each wall from its left end as you face it (low-tack tape, full size, before \
         you buy)"
    )
}

/// Where a piece that stands free is measured from.
pub(crate) fn place_free(distances: &[(String, String)]) -> String {
    let each: Vec<String> = distances.iter().map(|(wall, off)| format!("{off} from {}", the(wall))).collect();
    each.join(", ")
}

/// Over the routes.
pub(crate) fn ways(unit: &str) -> String {
    format!("Walking routes through option 1, {unit}")
}

/// `hall door to dining opening`.
pub(crate) fn route(brief: &Brief, ends: [Thing; 2]) -> String {
    let [from, to] = ends.map(|end| end.name(brief));
    format!("{from} to {to}")
}

/// `coffee table and media unit`.
pub(crate) fn between(brief: &Brief, two: [Thing; 2]) -> String {
    let [one, other] = two.map(|thing| thing.name(brief));
    format!("{one} and {other}")
}

/// Over the gaps.
pub(crate) fn gaps(unit: &str) -> String {
    format!("Gaps in option 1, {unit}")
}

/// A rule's key in words: `seat to table`.
pub(crate) fn rule(key: &str) -> String {
    key.replace('_', " ")
}

/// What it took.
pub(crate) fn work(work: &Work) -> String {
    format!(
        "{}, {}, {:.2} s. Setting out full size comes before buying; local codes come before any of this.",
        counted(work.arrangements, "arrangement", "arrangements"),
        counted(work.programs, "program", "programs"),
        work.seconds
    )
}
