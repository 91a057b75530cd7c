//! What the work consisted of: what was searched and given up, by which rule, and how long each part took.

use std::time::Duration;

use elbowroom_solver::Part;
use elbowroom_solver::answer::Work;

use crate::text::look::Look;
use crate::text::page::Page;
use crate::text::table::{Stand, Table};
use crate::words::work as words;

/// Rules told that left no place; the JSON has them all.
const TOLD: usize = 8;

/// The page on the work.
pub(crate) fn explained(work: &Work, parts: &[(Part, Duration)], look: Look) -> String {
    let mut page = Page::new(look);
    page.heading(words::HEAD);
    for line in words::searched(work) {
        page.entry(3, &line);
    }
    page.heading(words::DEAD_ENDS);
    let mut rules: Vec<_> = work.dead_ends.iter().collect();
    rules.sort_by_key(|(rule, count)| (std::cmp::Reverse(**count), rule.key()));
    let mut table = Table::new(&[("", Stand::Left), ("", Stand::Right)]);
    for (rule, count) in rules.into_iter().take(TOLD) {
        table.row([words::rule(rule.key()), count.to_string()]);
    }
    page.table(3, &table);
    page.heading(words::TOOK);
    let mut table = Table::new(&[("", Stand::Left), (words::MILLISECONDS, Stand::Right), (words::SHARE, Stand::Right)]);
    let whole: f64 = parts.iter().map(|(_, took)| took.as_secs_f64()).sum();
    for (part, took) in parts {
        let took = took.as_secs_f64();
        let share = 100.0 * took / whole.max(f64::MIN_POSITIVE);
        table.row([words::part(*part).to_owned(), format!("{:.1}", took * 1e3), format!("{share:.0} %")]);
    }
    page.table(3, &table);
    let text = page.into_text();
    format!("\n{text}")
}
