//! Prose of what setting something otherwise does.

use elbowroom_model::article::the;
use elbowroom_model::{Brief, PieceId};
use elbowroom_solver::answer::Answer;
use elbowroom_solver::comparison::{Changed, Counterpart};
use elbowroom_solver::refusal::Why;

use super::answer::{title, title_within};
use super::figures::counted;

/// Options that are told by their places; of more only how many there are.
const RANKS: usize = 6;

/// Label: how many options fit.
pub(crate) const OPTIONS: &str = "Options";
/// Label: options that fit now.
pub(crate) const GAINED: &str = "Gained";
/// Label: options that fit no more.
pub(crate) const LOST: &str = "Lost";
/// Label: options that stand with other pieces.
pub(crate) const OTHERWISE: &str = "Pieces";
/// Label: what is first.
pub(crate) const FIRST: &str = "First";
/// Label: scores.
pub(crate) const SCORES: &str = "Scores";
/// Label: sizes.
pub(crate) const SIZES: &str = "Sizes";
/// Label: ways.
pub(crate) const WAYS: &str = "Ways";
/// Label: what was first.
pub(crate) const FORMER: &str = "Former";

/// Over what changes.
pub(crate) fn heading(set: &[String]) -> String {
    format!("With {}, against the file as it is", set.join(", "))
}

/// How many options fit now, and how many did.
pub(crate) fn count(before: usize, now: usize) -> String {
    if before == now { format!("{now} fit, as before") } else { format!("{now} fit instead of {before}") }
}

/// Titles, and how many more there are.
pub(crate) fn titles(titles: &[String], more: usize) -> String {
    let told = titles.join("; ");
    if more > 0 { format!("{told}; and {more} more") } else { told }
}

/// What is first now.
pub(crate) fn first(before: &Answer, now: &Answer, changed: &Changed<'_>) -> String {
    match changed.first {
        [_, None] if now.undecided() > 0 => "nothing was found that fits now".to_owned(),
        [_, None] => "nothing fits now".to_owned(),
        [None, Some(is)] => {
            let fitted = if before.undecided() > 0 { "nothing was found that fits" } else { "nothing fitted" };
            format!("{}, score {:.0}; before, {fitted}", title(&now.brief, is), is.score)
        }
        [Some(_), Some(is)] => match &changed.was {
            None => {
                let was = absent(before, &is.key, ["it was not decided", "it did not fit", "it was no option"]);
                format!("{}, score {:.0}; before, {was}", title(&now.brief, is), is.score)
            }
            Some(was) => {
                let pieces =
                    pieces_now(now, before, was).map_or_else(String::new, |told| format!("; it stands {told}"));
                let score = score(was.option.score, is.score);
                if changed.first_stays() {
                    format!("stays {}, {score}{pieces}", title_within(&now.brief, is))
                } else {
                    format!("{}, {score}; it was option {}{pieces}", title(&now.brief, is), was.option.rank)
                }
            }
        },
    }
}

/// What became of what was first before, where something else is first now.
pub(crate) fn former(before: &Answer, now: &Answer, changed: &Changed<'_>) -> Option<String> {
    let [Some(was), Some(_)] = changed.first else { return None };
    if changed.first_stays() {
        return None;
    }
    let title = title(&before.brief, was);
    Some(match &changed.former_first {
        Some(former) => {
            let pieces =
                pieces_then(before, now, former).map_or_else(String::new, |told| format!("; it stands {told}"));
            let (rank, score) = (former.option.rank, score(was.score, former.option.score));
            format!("{title}, first before, is option {rank} now, {score}{pieces}")
        }
        None => {
            let is = absent(now, &was.key, ["was not decided now", "does not fit now", "is no option now"]);
            format!("{title}, first before, {is}")
        }
    })
}

/// Options that stand with other pieces than before, by what came and went; `told`: how many such rows are told.
pub(crate) fn otherwise(before: &Answer, now: &Answer, changed: &Changed<'_>, told: usize) -> Option<String> {
    let now_told = changed.otherwise.iter().filter_map(|(is, was)| Some((pieces_now(now, before, was)?, is.rank)));
    let then_told = changed.merged.iter().filter_map(|(was, is)| Some((pieces_only(before, now, is)?, was.rank)));
    // What is first says so itself.
    let now_rows = by_pieces(now_told).into_iter().filter(|(_, ranks)| ranks.as_slice() != [1]);
    let rows = now_rows.map(|(pieces, ranks)| stands(&ranks, "", &pieces));
    let then_rows = by_pieces(then_told).into_iter();
    let rows: Vec<String> =
        rows.chain(then_rows.map(|(pieces, ranks)| stands(&ranks, " of before", &pieces))).collect();
    let more = rows.len().saturating_sub(told);
    let rows: Vec<String> = rows.into_iter().take(told).collect();
    (!rows.is_empty()).then(|| titles(&rows, more))
}

/// Places under what is said of them alike, in the order in which it comes.
fn by_pieces(told: impl Iterator<Item = (String, usize)>) -> Vec<(String, Vec<usize>)> {
    let mut rows: Vec<(String, Vec<usize>)> = Vec::new();
    for (pieces, rank) in told {
        match rows.iter_mut().find(|(known, _)| *known == pieces) {
            Some((_, ranks)) => ranks.push(rank),
            None => rows.push((pieces, vec![rank])),
        }
    }
    rows
}

/// `options 3 and 5 stand now without armchair 2, before with it`.
fn stands(ranks: &[usize], of: &str, pieces: &str) -> String {
    match ranks {
        [one] => format!("option {one}{of} stands {pieces}"),
        many => format!("{}{of} stand {pieces}", options(many)),
    }
}

/// `options 3, 5 and 7`; of many only how many there are.
fn options(ranks: &[usize]) -> String {
    if ranks.len() > RANKS {
        return counted(ranks.len(), "option", "options");
    }
    let ranks: Vec<String> = ranks.iter().map(ToString::to_string).collect();
    format!("options {}", and(&ranks))
}

/// `here` is what stands now: `now without armchair 2, before with it`.
fn pieces_now(now: &Answer, before: &Answer, was: &Counterpart<'_>) -> Option<String> {
    pieces("now", "before", [names(&now.brief, &was.only_here), names(&before.brief, &was.only_there)])
}

/// `here` is what stood before: `now without armchair 2, before with it`.
fn pieces_then(before: &Answer, now: &Answer, is: &Counterpart<'_>) -> Option<String> {
    pieces("now", "before", [names(&now.brief, &is.only_there), names(&before.brief, &is.only_here)])
}

/// `here` is what stood before: `now only without armchair 2`.
fn pieces_only(before: &Answer, now: &Answer, is: &Counterpart<'_>) -> Option<String> {
    let [with, without] = [names(&now.brief, &is.only_there), names(&before.brief, &is.only_here)];
    let all = [("with", &with), ("without", &without)].into_iter().filter(|(_, names)| !names.is_empty());
    let all: Vec<String> = all.map(|(how, names)| format!("{how} {}", and(names))).collect();
    (!all.is_empty()).then(|| format!("now only {}", and(&all)))
}

/// What stands at one time alone and at the other alone.
fn pieces(here: &str, there: &str, [with, without]: [Vec<String>; 2]) -> Option<String> {
    let it = |names: &[String]| if names.len() == 1 { "it" } else { "them" };
    match (with.is_empty(), without.is_empty()) {
        (true, true) => None,
        (false, true) => Some(format!("{here} with {}, {there} without {}", and(&with), it(&with))),
        (true, false) => Some(format!("{here} without {}, {there} with {}", and(&without), it(&without))),
        (false, false) => {
            Some(format!("{here} with {} and without {}, {there} the other way round", and(&with), and(&without)))
        }
    }
}

fn names(brief: &Brief, pieces: &[PieceId]) -> Vec<String> {
    pieces.iter().map(|piece| the(brief.piece_name(*piece))).collect()
}

/// `a, b and c`.
fn and(all: &[String]) -> String {
    match all {
        [] => String::new(),
        [one] => one.clone(),
        [all @ .., last] => format!("{} and {last}", all.join(", ")),
    }
}

/// Why an answer has no option of this key: it was given up, it was refused, or nobody asked.
fn absent<'a>(answer: &Answer, key: &str, [undecided, refused, unasked]: [&'a str; 3]) -> &'a str {
    match answer.refused.iter().find(|refusal| refusal.key == key) {
        Some(refusal) if refusal.why == Why::NotDecided => undecided,
        Some(_) => refused,
        None => unasked,
    }
}

fn score(before: f64, now: f64) -> String {
    let [before, now] = [before, now].map(|score| format!("{score:.0}"));
    if before == now { format!("score {now} as before") } else { format!("score {now} instead of {before}") }
}

/// How one option differs from what it was.
pub(crate) fn of_option(rank: usize, told: &[String]) -> String {
    if told.is_empty() {
        format!("of option {rank}: as before")
    } else {
        format!("of option {rank}: {}", told.join("; "))
    }
}
