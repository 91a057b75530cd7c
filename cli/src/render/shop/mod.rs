//! What `shop` tells: each candidate under the piece of the room that it can be, what would make it fit, the best sets.

mod spreadsheet;

use elbowroom_model::listing::Money;
use elbowroom_model::{Brief, Rounding, Unit};
use elbowroom_solver::shop::{CandidateFound, SetFound, SetsFound, ShopFound};

pub(crate) use spreadsheet::csv;

use crate::render::rank::setting_out;
use crate::text::look::Look;
use crate::text::page::Page;
use crate::text::table::{Stand, Table};
use crate::words::lengths::{shop_unit, shopped, sign, taped_bare};
use crate::words::shop as words;

/// All that the page is made from.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Told<'a> {
    /// What was asked.
    pub brief: &'a Brief,
    /// What came out.
    pub found: &'a ShopFound,
    /// The currency of the list.
    pub currency: Option<&'a str>,
}

impl Told<'_> {
    const fn units(&self) -> Unit {
        self.brief.units
    }

    /// `1299.00 EUR`.
    fn price(&self, money: Money) -> String {
        self.currency.map_or_else(|| money.words(), |currency| format!("{} {currency}", money.words()))
    }
}

/// The page of a list against a room.
pub(crate) fn text(told: &Told<'_>, budget: Option<Money>, look: Look) -> String {
    let mut page = Page::new(look);
    let found = told.found;
    let fit = found.candidates.iter().filter(|one| goes(one)).count();
    let unit = sign(shop_unit(told.units()));
    page.strong(&words::summary(&found.room, fit, found.candidates.len(), unit));
    let rows = found.rows.iter().map(|row| (Some(row.name.as_str()), words::row(&row.name, row.count, row.needed)));
    for (row, heading) in rows.chain([(None, words::NO_ROW.to_owned())]) {
        let of_row: Vec<&CandidateFound> = found.candidates.iter().filter(|one| one.row.as_deref() == row).collect();
        if !of_row.is_empty() {
            page.heading(&heading);
            candidates(&mut page, told, &of_row);
        }
    }
    would_help(&mut page, found);
    if let Some(found) = &found.sets {
        sets(&mut page, told, found, budget);
    }
    if !found.notices.is_empty() {
        page.heading(crate::words::NOTICES);
        for notice in &found.notices {
            page.entry(2, notice);
        }
    }
    page.into_text()
}

/// Whether a candidate fits and gets in.
pub(super) fn goes(one: &CandidateFound) -> bool {
    one.fits && one.way.as_ref().is_none_or(|way| way.carried.gets_in)
}

fn candidates(page: &mut Page, told: &Told<'_>, of_row: &[&CandidateFound]) {
    let mut table = Table::new(&[("", Stand::Left), ("", Stand::Right), ("", Stand::Right), ("", Stand::Left)]);
    for one in of_row {
        let sides = [Some(one.width), one.return_length, Some(one.depth)];
        let size =
            sides.into_iter().flatten().map(|side| taped_bare(told.units(), side)).collect::<Vec<_>>().join(" x ");
        let price = one.price.map_or_else(String::new, |price| told.price(price));
        table.row([one.name.clone(), size, price, verdict(told, one)]);
    }
    page.table(2, &table);
}

/// What is said of one candidate.
fn verdict(told: &Told<'_>, one: &CandidateFound) -> String {
    let figure = |length: f64, rounding| shopped(told.units(), length, rounding);
    let mut said = Vec::new();
    if let Some(best) = one.options.first() {
        said.push(words::fits(one.options.len(), best.score, &lower_first(&best.title)));
        let left = one
            .left
            .iter()
            .map(|left| words::left(left.dimension.key(), &figure(left.by, Rounding::Down), left.or_more));
        said.extend(words::room_left(&left.collect::<Vec<_>>()));
    } else if let Some(why) = &one.why_not {
        said.push(why.clone());
    } else {
        let misses = one.misses.iter().map(|miss| (miss.dimension, figure(miss.by, Rounding::Up)));
        said.push(words::misses(&misses.collect::<Vec<_>>()));
    }
    for beyond in &one.beyond {
        said.push(words::beyond(beyond.dimension.key(), &taped_bare(told.units(), beyond.by.abs()), beyond.by > 0.0));
    }
    let fails = one.way.iter().flat_map(|way| &way.carried.parts).find_map(|part| part.fails.as_ref());
    if let Some(fails) = fails {
        let by = fails.short_by.map(|by| taped_bare(told.units(), by));
        said.push(words::does_not_get_in(by.as_deref(), fails.asks, &fails.at));
    }
    said.join(" ")
}

fn lower_first(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |first| first.to_lowercase().chain(chars).collect())
}

fn would_help(page: &mut Page, found: &ShopFound) {
    let helped: Vec<&CandidateFound> = found.candidates.iter().filter(|one| !one.remedies.is_empty()).collect();
    if helped.is_empty() {
        return;
    }
    page.heading(words::WOULD_HELP);
    for one in helped {
        let remedies: Vec<&str> = one.remedies.iter().map(|remedy| remedy.sentence.as_str()).collect();
        page.entry(2, &words::would_help(&one.name, &remedies));
    }
}

fn sets(page: &mut Page, told: &Told<'_>, found: &SetsFound, budget: Option<Money>) {
    page.heading(&words::sets(found.sets.len(), budget.map(|budget| told.price(budget)).as_deref()));
    if let Some(why) = &found.impossible {
        page.paragraph(2, why);
    }
    for pair in &found.pairs {
        page.entry(2, &words::pair(&pair.between, &pair.why));
    }
    if let Some(cheapest) = &found.cheapest {
        page.paragraph(2, words::CHEAPEST);
        set(page, told, cheapest, None);
    }
    for (place, one) in found.sets.iter().enumerate() {
        set(page, told, one, Some(place + 1));
    }
    page.gap();
    if !found.without.is_empty() {
        page.paragraph(2, &words::without(&found.without));
    }
    if !found.unpriced.is_empty() {
        page.paragraph(2, &words::unpriced(&found.unpriced));
    }
    page.faint(2, &words::solved(found.solved, found.proven));
}

fn set(page: &mut Page, told: &Told<'_>, set: &SetFound, place: Option<usize>) {
    page.gap();
    let price = set.price.map(|price| told.price(price));
    let option = &set.option;
    page.strong(&words::set(place, option.score, price.as_deref(), set.liking));
    for piece in &set.pieces {
        let candidate = piece.candidate.as_deref().unwrap_or(words::LEFT_OUT);
        page.labelled(3, &piece.row, 20, &words::set_piece(candidate, piece.count));
    }
    page.paragraph(3, &words::set_options(set.options, &option.title));
    setting_out(page, told.brief, option, &words::set_called(place));
}
