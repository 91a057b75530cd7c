//! The rules and wishes in force.

use elbowroom_model::{Brief, Clearance, Criterion};

use crate::text::page::Page;
use crate::text::table::{Stand, Table};
use crate::words::check as words;
use crate::words::criteria;
use crate::words::lengths::taped;

/// Each rule with its figure and source, then each wish.
pub(super) fn tell(page: &mut Page, brief: &Brief) {
    page.heading(&words::rules(&brief.rules.profile));
    let mut table = Table::new(&[("", Stand::Left), ("", Stand::Right), ("", Stand::Left)]);
    for &rule in Clearance::ALL.iter().filter(|rule| brief.asks(**rule)) {
        let figure = brief.rules.figure(rule);
        let length = figure.figure.map_or_else(|| words::NOT_IN_FORCE.to_owned(), |length| taped(brief.units, length));
        table.row([rule.key().to_owned(), length, figure.source.clone()]);
    }
    page.table(2, &table);
    page.heading(words::WISHES);
    let wish = |&criterion: &Criterion| format!("{} {}", criteria::name(criterion), brief.wishes.get(criterion));
    page.paragraph(2, &Criterion::ALL.iter().map(wish).collect::<Vec<_>>().join(", "));
}
