//! Two or three options side by side: their plans, what one pays for what one gains, then what differs, decision by
//! decision, criterion by criterion, size by size, way by way; what is the same in all is told once.

mod compared;
mod rows;

pub(crate) use compared::Compared;

use elbowroom_model::Brief;
use elbowroom_solver::answer::RankedOption;
use elbowroom_solver::comparison::{Apart, Side, Trade, trade};

use crate::drawing::Paper;
use crate::render::leaf::{Block, Grid, Head, Leaf, Picture, Set};
use crate::render::plan::{self, Shown};
use crate::words::answer::{SIDES, notices_of, tells_sides};
use crate::words::apart::words as words_of;
use crate::words::compare as words;
use crate::words::criteria;
use crate::words::lengths::{shop_unit, sign};
use rows::{Rows, Split};

/// Differences of one sort told in a sentence; the tables hold them all.
const TOLD_OF_A_SORT: usize = 3;
/// Criteria whose reasons are told.
const REASONS: usize = 4;
/// How high a plan may be on a sheet, mm.
const HIGHEST: f64 = 74.0;

/// The sheet; its plans share this width, mm.
pub(crate) fn leaf(compared: &Compared<'_>, width: f64) -> Leaf {
    let brief = compared.brief();
    let mut leaf = Leaf::new(words::summary(&brief.room)).set(Set::OnItsSide);
    for line in crate::words::order::lines(brief) {
        leaf.put(Block::Words(line));
    }
    leaf.put(Block::Row(plans(compared, width / compared.options.len().max(1) as f64)));
    leaf.put(Block::Heading(words::TRADE.to_owned()));
    leaf.put(Block::List(sentences(compared)));
    let unit = sign(shop_unit(compared.units()));
    let parts = [
        (words::SCORES.to_owned(), words::SCORE, rows::scores(compared), Head::bars as fn(String) -> Head),
        (words::DECISIONS.to_owned(), words::DECISIONS, rows::decisions(compared), Head::words),
        (words::sizes(unit), words::SIZE, rows::sizes(compared), Head::figures),
        (words::ways(unit), words::WAY, rows::ways(compared), Head::figures),
    ];
    let mut same = Vec::new();
    for (heading, subject, rows, column) in parts {
        let is_scores = heading == words::SCORES;
        let Split { apart, alike } = rows.split();
        if !alike.is_empty() {
            same.push(words::same(subject, &alike));
        }
        if apart.rows.is_empty() {
            continue;
        }
        leaf.put(Block::Heading(heading));
        leaf.put(Block::Grid(grid(compared, apart, column)));
        if is_scores {
            reasons(&mut leaf, compared);
        }
    }
    if !same.is_empty() {
        leaf.put(Block::Heading(words::SAME.to_owned()));
        leaf.put(Block::List(same));
    }
    notices(&mut leaf, compared);
    leaf
}

/// The plan of each option, all at one scale.
fn plans(compared: &Compared<'_>, width: f64) -> Vec<Picture> {
    let widest = Paper { width: width - 6.0, height: HIGHEST };
    let plan = |option: &&RankedOption| {
        let alone = plan::for_page(Shown::Option { answer: compared.answer, option }, &widest);
        let key = alone.key.iter().enumerate().map(|(place, text)| words::numbered(place + 1, text));
        Picture { sheet: alone.sheet, caption: words::under(compared.brief(), option, &key.collect::<Vec<_>>()) }
    };
    compared.options.iter().map(plan).collect()
}

/// Rows under a head for each option.
fn grid(compared: &Compared<'_>, rows: Rows, column: fn(String) -> Head) -> Grid {
    let mut heads = vec![Head::words("")];
    heads.extend(rows.between.map(Head::figures));
    heads.extend(compared.options.iter().map(|option| column(words::head(option.rank))));
    let cells = rows.rows.into_iter().map(|row| {
        let between = row.between.filter(|_| rows.between.is_some());
        std::iter::once(row.label).chain(between).chain(row.cells).collect()
    });
    Grid { heads, rows: cells.collect() }
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
fn reasons(leaf: &mut Leaf, compared: &Compared<'_>) {
    for (name, of_each) in rows::apart_most(compared).into_iter().take(REASONS) {
        leaf.put(Block::Part(words::why(criteria::name(name))));
        let rows = of_each.into_iter().map(|(rank, reason)| vec![words::head(rank), reason]).collect();
        leaf.put(Block::Grid(Grid { heads: vec![Head::words(""), Head::words("")], rows }));
    }
}

fn notices(leaf: &mut Leaf, compared: &Compared<'_>) {
    let sides = compared.options.iter().any(|option| tells_sides(&option.choices)).then(|| SIDES.to_owned());
    let notices: Vec<String> = notices_of(compared.answer, compared.options).into_iter().chain(sides).collect();
    if !notices.is_empty() {
        leaf.put(Block::Heading(crate::words::NOTICES.to_owned()));
        leaf.put(Block::List(notices));
    }
}
