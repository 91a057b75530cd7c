//! Prose of what setting something otherwise does.

use elbowroom_solver::answer::{Answer, RankedOption};
use elbowroom_solver::comparison::Changed;

use super::answer::{title, title_within};

/// Label: how many options fit.
pub(crate) const OPTIONS: &str = "Options";
/// Label: options that fit now.
pub(crate) const GAINED: &str = "Gained";
/// Label: options that fit no more.
pub(crate) const LOST: &str = "Lost";
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
pub(crate) fn first(now: &Answer, changed: &Changed<'_>) -> String {
    let now_answer = now;
    let title = |option: &RankedOption| title(&now.brief, option);
    match changed.first {
        [_, None] => "nothing fits now".to_owned(),
        [None, Some(now)] => format!("{}, score {:.0}; before, nothing fitted", title(now), now.score),
        [Some(before), Some(now)] if before.key == now.key => {
            format!("stays {}, {}", title_within(&now_answer.brief, now), score(before.score, now.score))
        }
        [Some(_), Some(now)] => match changed.was {
            Some(was) => format!("{}, {}; it was option {}", title(now), score(was.score, now.score), was.rank),
            None => format!("{}, score {:.0}; before, it did not fit", title(now), now.score),
        },
    }
}

/// What became of what was first before, where something else is first now.
pub(crate) fn former(answer: &Answer, changed: &Changed<'_>) -> Option<String> {
    let [Some(before), Some(now)] = changed.first else { return None };
    (before.key != now.key).then(|| match changed.former_first {
        Some(former) => {
            format!(
                "{}, first before, is option {} now, {}",
                title(&answer.brief, before),
                former.rank,
                score(before.score, former.score)
            )
        }
        None => format!("{}, first before, does not fit now", title(&answer.brief, before)),
    })
}

fn score(before: f64, now: f64) -> String {
    if (before - now).abs() < 0.5 {
        format!("score {now:.0} as before")
    } else {
        format!("score {now:.0} instead of {before:.0}")
    }
}

/// How one option differs from what it was.
pub(crate) fn of_option(rank: usize, told: &[String]) -> String {
    if told.is_empty() {
        format!("of option {rank}: as before")
    } else {
        format!("of option {rank}: {}", told.join("; "))
    }
}
