//! Two or three options side by side: what one pays for what one gains, then decision by decision, criterion by criterion,
//! size by size, way by way.

mod compared;
mod rows;
mod sheet;

pub(crate) use compared::Compared;
pub(crate) use sheet::sheet;

use elbowroom_model::Brief;
use elbowroom_solver::answer::RankedOption;
use elbowroom_solver::comparison::{Apart, Side, Trade, trade};

use crate::text::look::Look;
use crate::text::page::Page;
use crate::words::answer as said;
use crate::words::apart::words as words_of;
use crate::words::compare as words;
use crate::words::lengths::{shop_unit, sign};

/// Differences of one sort told in a sentence; the tables hold them all.
const TOLD_OF_A_SORT: usize = 3;
/// Criteria whose reasons are told.
const REASONS: usize = 4;

/// The page.
pub(crate) fn text(compared: &Compared<'_>, look: Look) -> String {
    let mut page = Page::new(look);
    page.paragraph(0, &words::summary(&compared.brief().room));
    for line in crate::words::order::lines(compared.brief()) {
        page.entry(0, &line);
    }
    for option in compared.options {
        page.strong(&words::option(compared.brief(), option));
    }
    page.heading(words::TRADE);
    for sentence in sentences(compared) {
        page.entry(3, &sentence);
    }
    page.heading(words::DECISIONS);
    page.table(3, &rows::decisions(compared));
    page.heading(words::SCORES);
    page.table(3, &rows::scores(compared));
    reasons(&mut page, compared);
    page.heading(&words::sizes(sign(shop_unit(compared.units()))));
    page.table(3, &rows::sizes(compared));
    let ways = rows::ways(compared);
    if !ways.is_empty() {
        page.heading(&words::ways(sign(shop_unit(compared.units()))));
        page.table(3, &ways);
    }
    notices(&mut page, compared);
    page.into_text()
}

/// What each option after the first gains and pays, against the first.
fn sentences(compared: &Compared<'_>) -> Vec<String> {
    let Some((first, others)) = compared.options.split_first() else { return Vec::new() };
    others.iter().map(|option| sentence(compared.brief(), option, first)).collect()
}

fn sentence(brief: &Brief, option: &RankedOption, first: &RankedOption) -> String {
    let Trade { gains, costs } = trade(Side { brief, option }, Side { brief, option: first });
    let told = |all: &[Apart]| words_of(brief, brief, told(all));
    words::trade(option.rank, first.rank, &told(&gains), &told(&costs))
}

/// The first few of each sort.
fn told(all: &[Apart]) -> Vec<&Apart> {
    let mut told: Vec<&Apart> = Vec::new();
    for apart in all {
        let alike = told.iter().filter(|it| std::mem::discriminant(**it) == std::mem::discriminant(apart)).count();
        if alike < TOLD_OF_A_SORT {
            told.push(apart);
        }
    }
    told
}

/// Why the criteria that tell the options apart the most judge as they do.
fn reasons(page: &mut Page, compared: &Compared<'_>) {
    for (name, of_each) in rows::apart_most(compared).into_iter().take(REASONS) {
        page.paragraph(3, &words::why(name.key()));
        for (rank, reason) in of_each {
            page.labelled(5, &words::head(rank), 16, &reason);
        }
    }
}

fn notices(page: &mut Page, compared: &Compared<'_>) {
    let notices = said::notices_of(compared.answer, compared.options);
    if notices.is_empty() {
        return;
    }
    page.heading(crate::words::NOTICES);
    for notice in &notices {
        page.entry(2, notice);
    }
}
