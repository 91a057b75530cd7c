//! What `shop` tells: each candidate under the piece of the room that it can be, what would make it fit, the best sets.

mod spreadsheet;

use elbowroom_model::listing::{ListedPiece, Money};
use elbowroom_model::{Rounding, Unit};
use elbowroom_solver::Size;
use elbowroom_solver::shop::{CandidateFound, Costs, Impossible, Row, SetFound, SetsFound, ShopFound};

pub(crate) use spreadsheet::candidate_rows;

use crate::render::rank::setting_out;
use crate::text::look::Look;
use crate::text::page::Page;
use crate::text::table::{Stand, Table};
use crate::words::answer::{SIDES, tells_sides, title, title_within};
use crate::words::lengths::{shop_unit, shopped, sign, taped_bare};
use crate::words::shop::{self as words, Names};
use crate::words::size::size;

/// All that the page is made from.
#[derive(Debug, Clone, Copy)]
pub(crate) struct ShopPage<'a> {
    /// What was asked, and what candidates and rows are called.
    pub names: Names<'a>,
    /// What came out.
    pub found: &'a ShopFound,
    /// What is to be told beside it.
    pub notices: &'a [String],
    /// The currency of the list.
    pub currency: Option<&'a str>,
}

impl ShopPage<'_> {
    const fn units(&self) -> Unit {
        self.names.brief.units
    }

    /// `1299.00 EUR`.
    fn price(&self, money: Money) -> String {
        self.currency.map_or_else(|| money.words(), |currency| format!("{} {currency}", money.words()))
    }
}

/// The page of a list against a room.
pub(crate) fn text(told: &ShopPage<'_>, budget: Option<Money>, look: Look) -> String {
    let mut page = Page::new(look);
    let found = told.found;
    let fit = found.candidates.iter().filter(|one| one.goes()).count();
    let unit = sign(shop_unit(told.units()));
    page.strong(&words::summary(&told.names.brief.room.name, fit, found.candidates.len(), unit));
    let heading = |(place, row): (usize, &Row)| words::row(told.names.row(place), row.pieces.len(), row.needed);
    let rows = found.rows.iter().enumerate().map(|(place, row)| (Some(place), heading((place, row))));
    for (row, heading) in rows.chain([(None, words::NO_ROW.to_owned())]) {
        let candidates_of_list = told.names.listed.iter().zip(&found.candidates);
        let of_row: Vec<Candidate<'_>> = candidates_of_list.filter(|(_, one)| one.row == row).collect();
        if !of_row.is_empty() {
            page.heading(&heading);
            candidates(&mut page, told, &of_row);
        }
    }
    would_help(&mut page, told);
    if let Some(found) = &found.sets {
        sets(&mut page, told, found, budget);
    }
    if found.candidates.iter().flat_map(|one| &one.options).any(|option| tells_sides(&option.choices)) {
        page.paragraph(0, SIDES);
    }
    if !told.notices.is_empty() {
        page.heading(crate::words::NOTICES);
        for notice in told.notices {
            page.entry(2, notice);
        }
    }
    page.into_text()
}

/// Room left is told on the page where it is less than this, mm: of more, nobody asks how much.
const HANDS_BREADTH: f64 = 100.0;

/// A candidate as listed and as found.
type Candidate<'a> = (&'a ListedPiece, &'a CandidateFound);

fn candidates(page: &mut Page, told: &ShopPage<'_>, of_row: &[Candidate<'_>]) {
    let mut table = Table::new(&[("", Stand::Left), ("", Stand::Right), ("", Stand::Right), ("", Stand::Left)]);
    for (listed, found) in of_row {
        let ListedPiece { width, return_length, second_return, depth, return_depth, .. } = **listed;
        let listed_size = Size { width, return_length, second_return, depth, return_depth };
        let size = size(listed_size, " x ", |side| taped_bare(told.units(), side));
        let price = listed.price.map_or_else(String::new, |price| told.price(price));
        table.row([listed.name.clone(), size, price, verdict(told, listed, found)]);
    }
    page.table(2, &table);
}

/// What is said of one candidate.
fn verdict(told: &ShopPage<'_>, listed: &ListedPiece, one: &CandidateFound) -> String {
    let figure = |length: f64, rounding| shopped(told.units(), length, rounding);
    let mut said = Vec::new();
    if let Some(best) = one.options.first() {
        said.push(words::fits(one.options.len(), best.score, &title_within(told.names.brief, best)));
        let left = one
            .left
            .iter()
            .filter(|left| !left.or_more && left.by < HANDS_BREADTH)
            .map(|left| words::left(left.dimension.words(), &figure(left.by, Rounding::Down)));
        said.extend(words::room_left(&left.collect::<Vec<_>>()));
    } else {
        said.push(no_place(told, listed, one));
    }
    for beyond in &one.beyond {
        said.push(words::beyond(beyond.dimension.words(), &taped_bare(told.units(), beyond.by.abs()), beyond.by > 0.0));
    }
    said.extend(no_way(told, one));
    said.join(" ")
}

/// Why a candidate has no place in the room.
fn no_place(told: &ShopPage<'_>, listed: &ListedPiece, one: &CandidateFound) -> String {
    let misses = one.misses.iter();
    let misses = misses.map(|miss| (miss.dimension, shopped(told.units(), miss.by, Rounding::Up)));
    words::why_not(told.names, listed, one).unwrap_or_else(|| words::misses(&misses.collect::<Vec<_>>()))
}

/// Why a candidate cannot be carried in; `None` where it can.
fn no_way(told: &ShopPage<'_>, one: &CandidateFound) -> Option<String> {
    let fails = one.way.iter().flat_map(|way| &way.carried.parts).find_map(|part| part.fails.as_ref())?;
    let by = fails.short_by.map(|by| taped_bare(told.units(), by));
    let at = told.names.brief.way.as_ref().map_or("", |way| crate::words::way::at(way, fails.at));
    Some(words::does_not_get_in(by.as_deref(), fails.asks, at))
}

/// Why a candidate does not go; empty where it does.
fn why_not(told: &ShopPage<'_>, listed: &ListedPiece, one: &CandidateFound) -> String {
    let place = (!one.fits()).then(|| no_place(told, listed, one));
    place.into_iter().chain(no_way(told, one)).collect::<Vec<_>>().join(" ")
}

fn would_help(page: &mut Page, told: &ShopPage<'_>) {
    let all = told.names.listed.iter().zip(&told.found.candidates);
    let helped: Vec<Candidate<'_>> = all.filter(|(_, one)| !one.remedies.is_empty()).collect();
    if helped.is_empty() {
        return;
    }
    page.heading(words::WOULD_HELP);
    for (listed, one) in helped {
        page.entry(2, &words::would_help(&listed.name, &words::remedies(told.names.brief, one)));
    }
}

fn sets(page: &mut Page, told: &ShopPage<'_>, found: &SetsFound, budget: Option<Money>) {
    page.heading(&words::sets(found.sets.len(), budget.map(|budget| told.price(budget)).as_deref()));
    if let Some(why) = &found.impossible {
        impossible(page, told, why);
    }
    for (place, one) in found.sets.iter().enumerate() {
        set(page, told, one, Some(place + 1));
    }
    page.gap();
    if found.sets.len() > 1 {
        page.faint(2, words::OF_EACH_THE_BEST);
    }
    if !found.without.is_empty() {
        let rows: Vec<&str> = found.without.iter().map(|row| told.names.row(*row)).collect();
        page.paragraph(2, &words::without(&rows));
    }
    if !found.unpriced.is_empty() {
        let names: Vec<&str> = found.unpriced.iter().map(|place| told.names.candidate(*place)).collect();
        page.paragraph(2, &words::unpriced(&names));
    }
    page.faint(2, &words::solved(found.solved, found.proven));
}

fn impossible(page: &mut Page, told: &ShopPage<'_>, why: &Impossible) {
    page.paragraph(2, &words::impossible(told.names, why));
    match why {
        Impossible::Pairs(pairs) => {
            for pair in pairs {
                let between = pair.between.map(|place| told.names.candidate(place));
                page.entry(2, &words::pair(between, &words::nearest(told.names.brief, pair)));
            }
        }
        Impossible::OverBudget(cheapest) => {
            page.paragraph(2, words::CHEAPEST);
            set(page, told, cheapest, None);
        }
        Impossible::NothingListed | Impossible::NoneFor(_) | Impossible::NotAllTogether => {}
    }
}

fn set(page: &mut Page, told: &ShopPage<'_>, set: &SetFound, place: Option<usize>) {
    page.gap();
    let price = set.price.map(|price| told.price(price));
    let option = &set.option;
    page.strong(&words::set(place, option.score, price.as_deref(), set.liking));
    for piece in &set.pieces {
        let candidate = piece.candidate.map(|place| told.names.candidate(place));
        let count = told.names.count(piece.row);
        page.labelled(3, told.names.row(piece.row), 20, &words::set_piece(candidate, count));
    }
    page.paragraph(3, &words::set_options(set.options, &title(&set.brief, option)));
    if let Some(costs) = &set.costs {
        self::costs(page, told, set, costs);
    }
    setting_out(page, &set.brief, option, &words::set_called(place));
}

/// What a set costs beside the next better one, and what a smaller piece would save.
fn costs(page: &mut Page, told: &ShopPage<'_>, set: &SetFound, costs: &Costs) {
    if let (Some(better), Some(own)) = (&costs.better, set.price) {
        let more = Money { hundredths: better.price.hundredths.saturating_sub(own.hundredths) };
        page.paragraph(3, &words::better(better.score, &told.price(better.price), &told.price(more)));
    }
    if let Some(saving) = &costs.saving {
        let unit = shop_unit(told.units());
        let each = saving.saves.hundredths as f64 * unit.millimetres() / saving.less;
        // A price of a list is far below what a float counts exactly.
        let each = Money { hundredths: each.round() as u64 };
        let pieces = [saving.dearest, saving.smaller].map(|place| told.names.candidate(place));
        let less = taped_bare(told.units(), saving.less);
        let less = format!("{less} {} less in {}", sign(unit), saving.dimension.words());
        page.paragraph(3, &words::saving(pieces, &less, &told.price(saving.saves), &told.price(each), unit));
    }
}
