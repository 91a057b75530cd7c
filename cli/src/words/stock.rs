//! Prose of one stock for many rooms.

use std::fmt::Write;

use elbowroom_model::article::{a, capital, several, the};
use elbowroom_model::{Dimension, Hand, PieceKind, Rounding, Unit};
use elbowroom_solver::stock::{By, Miss, OneMore, Proven, Served, SetsAsked, Tried};

use super::figures::counted;
use super::lengths::shop_unit;
use super::unit::in_words;

/// Over what is short.
pub(crate) const SHORT: &str = "Short";
/// Over what one more piece would bring.
pub(crate) const ONE_MORE: &str = "One more piece";
/// Of a room that nothing fits in.
pub(crate) const NO_OPTION: &str = "Nothing fits in the room as asked; `elbowroom rank` says what would help.";
/// Of a room in which nothing was found that fits.
pub(crate) const NO_OPTION_FOUND: &str = "Nothing was found that fits in the room as asked; it is not known whether anything \
                                          does. `elbowroom rank` says what helped where it was tried.";
/// Of a room that gets nothing.
pub(crate) const NOTHING_TO_PICK: &str = "Nothing to pick.";
/// At the foot.
pub(crate) const CAUTION: &str = "Measure the way in before loading. Heavy pieces are for two people or a trolley; fix tall storage and \
    televisions to the wall where they come to stand; keep exits free, and three feet between heaters and anything that burns.";

/// How many pieces the bookings ask for, and how many of them come out of the stock.
pub(crate) fn summary(bookings: usize, served: usize, asked: usize, at_fault: usize) -> String {
    let mut text = format!(
        "{}: {served} of {} asked for come out of the stock",
        counted(bookings, "booking", "bookings"),
        counted(asked, "piece", "pieces")
    );
    if at_fault > 0 {
        let _ = write!(text, "; {at_fault} at fault");
    }
    text
}

/// Must-haves by priority; `alike`: some of them are several alike.
pub(crate) fn must(served: &[Served], alike: bool) -> String {
    let what = if alike { "Must-haves served, several alike counted as one" } else { "Must-haves served" };
    let one = |served: &Served| format!("{} of {}", served.count.found, served.of);
    match served {
        [] => "No must-haves.".to_owned(),
        [only] => format!("{what}: {}.", one(only)),
        several => {
            let told: Vec<String> =
                several.iter().map(|served| format!("{} of priority {}", one(served), served.priority)).collect();
            format!("{what}: {}.", told.join(", "))
        }
    }
}

/// That it is proven, or how far it may be from the best.
pub(crate) fn proof(proven: bool, must: &[Served], points: Proven) -> String {
    if proven {
        return "Proven: no other assignment serves more must-haves, the first priority first, nor brings more points, by \
                the sizes that each room's options allow and their scores as planned before anything was picked. Each set \
                that goes out was laid out with its very pieces."
            .to_owned();
    }
    let mut text = "Not proven the best:".to_owned();
    for served in must.iter().filter(|served| !served.count.is_proven()) {
        let _ =
            write!(text, " at most {} must-haves of priority {} can be served;", served.count.at_most, served.priority);
    }
    let share = (points.at_most - points.found) as f64 / (points.at_most.max(1)) as f64;
    let _ = write!(text, " points lie within {:.2} % of the most there can be.", share * 100.0);
    text
}

/// What was asked of the solver: what the sizes of options allow and does not fit, and what they do not hold and may.
pub(crate) fn sets(sets: SetsAsked) -> Vec<String> {
    let refused = (sets.refused > 0).then(|| refused(sets.refused));
    let asked = (sets.solved > 0).then(|| asked(sets));
    refused.into_iter().chain(asked).collect()
}

fn refused(count: usize) -> String {
    let (what, go) =
        (counted(count, "set", "sets"), if count == 1 { "does not fit, and does" } else { "do not fit, and do" });
    format!(
        "Every set is laid out with its very pieces before it is told: {what} that those sizes allow piece by piece {go} not go \
         out."
    )
}

fn asked(sets: SetsAsked) -> String {
    let fitting = match sets.fitting {
        0 => "none of them fits".to_owned(),
        1 => "one fits".to_owned(),
        fitting => format!("{fitting} fit"),
    };
    let mut text = format!(
        "Where by those sizes something would be wanting or did not fit, sets of the stock were solved in the room itself: \
         {} solved, {fitting}",
        counted(sets.solved, "set", "sets")
    );
    if sets.not_decided > 0 {
        let _ = write!(text, "; of {} it is not known within the work allowed", sets.not_decided);
    }
    text.push_str(if sets.spent { "; there are more, which were not asked." } else { "." });
    text
}

/// Over the pick list.
pub(crate) fn to_pick(unit: Unit) -> String {
    format!("To pick, by day and room (sizes in {})", in_words(unit))
}

/// A booking.
pub(crate) fn booking(from: Option<&str>, to: Option<&str>, name: Option<&str>, source: &str) -> String {
    let days = match (from, to) {
        (Some(from), Some(to)) if from == to => format!("{from}: "),
        (Some(from), Some(to)) => format!("{from} to {to}: "),
        _ => String::new(),
    };
    match name {
        Some(name) => format!("{days}{name} ({source})"),
        None => format!("{days}{source}"),
    }
}

/// The arrangement that pieces stand in, the first of so many options of the plan with these very pieces, and what that
/// scores.
pub(crate) fn arrangement(title: &str, of: usize, score: f64) -> String {
    format!("{title} (option 1 of {of} with these pieces, score {score:.0})")
}

/// What stands in for another kind: `a sofa in place of the corner sofa`.
pub(crate) fn in_place_of(kind: PieceKind, wanted: PieceKind, count: usize) -> String {
    let (kind, wanted) = (kind.words(), wanted.words());
    if count > 1 {
        format!("{} in place of {}", several(&kind), several(&wanted))
    } else {
        format!("{} in place of {}", a(&kind), the(&wanted))
    }
}

/// By how much a piece misses: `the nearest, Weir corner, is 2 cm too deep`.
pub(crate) fn miss(name: &str, miss: Miss, unit: Unit) -> String {
    let (dimension, by) = match miss {
        Miss::Size { dimension, by } => (dimension, by),
        Miss::Sill => return format!("the nearest, {name}, rises above a window's sill"),
        Miss::Way => return format!("the nearest, {name}, cannot be carried in by the way that the file gives"),
    };
    let over = by > 0.0;
    let (its, too) = match (dimension, over) {
        (Dimension::Width, true) => ("", "too wide"),
        (Dimension::Width, false) => ("", "too narrow"),
        (Dimension::Depth, true) => ("", "too deep"),
        (Dimension::Depth, false) => ("", "too shallow"),
        (Dimension::Return, true) => ("its return ", "too long"),
        (Dimension::Return, false) => ("its return ", "too short"),
        (Dimension::SecondReturn, true) => ("its second return ", "too long"),
        (Dimension::SecondReturn, false) => ("its second return ", "too short"),
        (Dimension::ReturnDepth, true) => ("its return ", "too deep"),
        (Dimension::ReturnDepth, false) => ("its return ", "too shallow"),
    };
    let by = shop_unit(unit).words(by.abs(), Rounding::Up);
    if its.is_empty() {
        format!("the nearest, {name}, is {by} {too}")
    } else {
        format!("of the nearest, {name}, {its}is {by} {too}")
    }
}

/// That a room gets nothing since no main seat can be had.
pub(crate) fn not_stageable(seats: &[String], why: By, days: Option<(&str, &str)>, nearest: Option<&str>) -> String {
    let seat = seats.join(" or ");
    let days = match days {
        Some((from, to)) if from == to => format!(" on {from}"),
        Some((from, to)) => format!(" from {from} to {to}"),
        None => String::new(),
    };
    let why = match why {
        By::NoneOfKind => format!("the stock has no {seat}"),
        By::NotDecided | By::NotDecidedBeside => {
            format!("it is not known whether a {seat} that is free{days} fits, within the work allowed")
        }
        _ => format!("no {seat} that fits is free{days}"),
    };
    let nearest = nearest.map_or_else(String::new, |nearest| format!("; {nearest}"));
    format!("Not stageable: {why}{nearest}. Nothing else goes out without it.")
}

/// A room that is short of something.
pub(crate) fn short_room(from: Option<&str>, source: &str) -> String {
    match from {
        Some(from) => format!("{from} {source}"),
        None => source.to_owned(),
    }
}

/// A piece that is short.
pub(crate) fn short_piece(name: &str, must: bool) -> String {
    if must { format!("{name} (must)") } else { name.to_owned() }
}

/// Why a piece is short, and what comes nearest where that is known; `None` where something serves.
pub(crate) fn why_short(by: By, nearest: Option<&str>) -> Option<String> {
    let why = match by {
        By::Stock { .. } => return None,
        By::NoOption => "nothing fits in the room as asked",
        By::NotDecided => "it is not known whether anything fits in the room as asked",
        By::NoneOfKind => "the stock has none of the kind",
        By::AllTaken => "what fits is in other rooms, or out, on some of these days",
        By::NoneFits => "none of the stock fits in this arrangement",
        By::NoneFitsBeside => "what is free does not fit beside the rest: laid out with it, no arrangement holds",
        By::NotDecidedBeside => "it is not known whether what is free fits beside the rest",
        By::TooFewAlike => "what fits there are too few of alike",
        By::NotStaged => "nothing goes out without the main seat",
    };
    Some(nearest.map_or_else(|| why.to_owned(), |nearest| format!("{why}: {nearest}")))
}

/// One more piece: `like` a row of the stock of that name, or any of these sizes.
pub(crate) fn which(best: &OneMore, like: Option<&str>, size: &str, unit: &str) -> String {
    let hand = best.hand.map_or("", |hand| match hand {
        Hand::Left => ", its return on the left as one sits",
        Hand::Right => ", its return on the right as one sits",
    });
    match like {
        Some(name) => format!("One more {name}, {size} {unit}{hand},"),
        None => format!("{} of {size} {unit}{hand}", capital(&a(&best.kind.words()))),
    }
}

/// Sizes from the least that will do to the most that fits: `150 to 240`; one where they are the same.
pub(crate) fn from_to(least: Option<&str>, most: &str) -> String {
    least.filter(|least| *least != most).map_or_else(|| most.to_owned(), |least| format!("{least} to {most}"))
}

/// What one more piece would bring; at the least where the assignment is not proven.
pub(crate) fn one_more(which: &str, best: &OneMore, priorities: &[u32], tried: &Tried, proven: bool) -> String {
    let mut brings = Vec::new();
    for (more, priority) in best.must.iter().zip(priorities).filter(|(more, _)| **more != 0) {
        let of = if priorities.len() > 1 { format!(" of priority {priority}") } else { String::new() };
        let count = usize::try_from(more.abs()).unwrap_or_default();
        let sign = if *more > 0 { "more" } else { "fewer" };
        brings.push(format!("{}{of} {sign}", counted(count, "must-have", "must-haves")));
    }
    brings.push(format!("{:+} points", best.points));
    format!(
        "{which} would bring most{}{}: {}. {}",
        if best.least.is_some() { ", at its largest" } else { "" },
        if proven { "" } else { ", at least" },
        brings.join(", "),
        how_many(tried)
    )
}

/// That no piece would bring anything.
pub(crate) fn no_one_more(tried: &Tried, proven: bool) -> String {
    match tried.of {
        0 => "Nothing is short that one more piece could serve.".to_owned(),
        _ if !proven => format!("None is certain to bring anything. {}", how_many(tried)),
        _ => format!("None would bring anything. {}", how_many(tried)),
    }
}

fn how_many(tried: &Tried) -> String {
    let how_many = if tried.tried < tried.of {
        format!("{} of {}, must-haves and small sizes first", tried.tried, tried.of)
    } else {
        format!("{} in all", tried.of)
    };
    format!(
        "Tried, {how_many}: the largest sizes that fit where something is short, and one more of each in stock where \
         several alike are. Two more at once, or a larger piece where one stands already, are not tried."
    )
}
