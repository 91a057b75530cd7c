//! The rows of a comparison: one for each thing that can be held against each other, a cell for each option.

use elbowroom_model::{Criterion, Dimension, PieceId, WallId};
use elbowroom_solver::answer::{PieceSizes, RankedOption, Thing};

use super::compared::Compared;
use crate::render::rank::wall_faced;
use crate::words::answer::reason;
use crate::words::compare as words;
use crate::words::criteria;
use crate::words::lengths::{planned_range, taped_bare};

/// Scores nearer than this tell no options apart.
const SAME: f64 = 3.0;

/// Rows of one subject.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Rows {
    /// Over what stands between the label and the options; nothing where nothing does.
    pub(super) between: Option<&'static str>,
    /// The rows.
    pub(super) rows: Vec<Row>,
}

/// One row.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Row {
    /// What is held against each other.
    pub(super) label: String,
    /// What holds for all options beside it.
    pub(super) between: Option<String>,
    /// Of each option.
    pub(super) cells: Vec<String>,
    /// It tells no options apart.
    same: bool,
}

/// What differs, and what does not.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Split {
    /// Rows whose cells differ.
    pub(super) apart: Rows,
    /// The others, each with its label.
    pub(super) alike: Vec<String>,
}

impl Rows {
    fn new(between: Option<&'static str>) -> Self {
        Self { between, rows: Vec::new() }
    }

    /// Adds a row.
    fn put(&mut self, label: String, between: Option<String>, cells: Vec<String>) {
        let same = cells.windows(2).all(|pair| pair[0] == pair[1]);
        self.rows.push(Row { label, between, cells, same });
    }

    /// What differs, and what does not.
    pub(super) fn split(self) -> Split {
        let (alike, rows): (Vec<Row>, Vec<Row>) = self.rows.into_iter().partition(|row| row.same);
        let told = |row: Row| words::alike(&row.label, &row.cells);
        Split { apart: Self { rows, ..self }, alike: alike.into_iter().map(told).collect() }
    }
}

/// The decisions of each option.
pub(super) fn decisions(compared: &Compared<'_>) -> Rows {
    let (mut rows, brief) = (Rows::new(None), compared.brief());
    let mut put = |label: &str, of: &dyn Fn(&RankedOption) -> String| {
        rows.put(label.to_owned(), None, compared.options.iter().map(|option| of(option)).collect());
    };
    let wall = |wall: Option<WallId>, none: &str| {
        wall.map_or_else(|| none.to_owned(), |wall| Thing::Wall(wall).name(brief).to_owned())
    };
    put(words::BACK, &|option| wall(option.choices.seat_back, words::FREE));
    put(words::FACING, &|option| wall(wall_faced(brief, option), words::NONE));
    if compared.options.iter().any(|option| option.choices.hand.is_some()) {
        put(words::HAND, &|option| option.choices.hand.map_or_else(|| words::NONE.to_owned(), words::hand));
    }
    if compared.options.iter().any(|option| option.choices.media_wall.is_some()) {
        put(words::SCREEN, &|option| wall(option.choices.media_wall, words::NONE));
    }
    let mut seats: Vec<PieceId> = Vec::new();
    for seat in compared.options.iter().flat_map(|option| option.choices.seats()) {
        if !seats.contains(&seat.piece) {
            seats.push(seat.piece);
        }
    }
    for piece in seats {
        put(Thing::Piece(piece).name(brief), &|option| {
            let seat = option.choices.seats().into_iter().find(|seat| seat.piece == piece);
            seat.map_or(words::NONE, |seat| seat.place.key()).to_owned()
        });
    }
    rows
}

/// The scores, the wish before them; then how firm each is. Scores that are near one another are the same.
pub(super) fn scores(compared: &Compared<'_>) -> Rows {
    let mut rows = Rows::new(Some(words::WEIGHT));
    let whole = compared.options.iter().map(|option| words::score(option.score)).collect();
    rows.put(words::WHOLE.to_owned(), Some(String::new()), whole);
    let firm = compared.options.iter().map(|option| words::firm(option)).collect();
    rows.put(words::FIRM.to_owned(), Some(String::new()), firm);
    for first in compared.options.first().map_or(&[][..], |option| &option.judgements) {
        let weight = compared.brief().wishes.get(first.criterion);
        let each: Vec<Option<f64>> =
            compared.options.iter().map(|option| option.judgement(first.criterion).map(|it| it.score)).collect();
        let cells = each.iter().map(|score| score.map_or_else(String::new, words::score)).collect();
        rows.put(criteria::name(first.criterion).to_owned(), Some(words::weight(weight)), cells);
        let scores: Vec<f64> = each.iter().copied().flatten().collect();
        if let Some(row) = rows.rows.last_mut() {
            row.same = scores.len() == each.len() && spread(&scores) < SAME;
        }
    }
    rows
}

/// From the least to the most.
fn spread(scores: &[f64]) -> f64 {
    scores.iter().copied().fold(f64::NEG_INFINITY, f64::max) - scores.iter().copied().fold(f64::INFINITY, f64::min)
}

/// Criteria that tell the options apart, the most first, with the reason of each option.
pub(super) fn apart_most(compared: &Compared<'_>) -> Vec<(Criterion, Vec<(usize, String)>)> {
    let (Some(first), brief) = (compared.options.first(), compared.brief()) else { return Vec::new() };
    let mut found = Vec::new();
    for criterion in first.judgements.iter().map(|it| it.criterion) {
        let each = compared.options.iter().filter_map(|option| {
            let it = option.judgement(criterion)?;
            Some((it.score, (option.rank, reason(brief, &it.finding))))
        });
        let (scores, reasons): (Vec<f64>, Vec<(usize, String)>) = each.unzip();
        let spread = spread(&scores);
        let weight = brief.wishes.get(criterion);
        if spread >= SAME && weight > 0.0 {
            found.push((spread * weight, criterion, reasons));
        }
    }
    found.sort_by(|one, other| other.0.total_cmp(&one.0));
    found.into_iter().map(|(_, criterion, reasons)| (criterion, reasons)).collect()
}

/// The sizes as planned, and to shop by: least to most together.
pub(super) fn sizes(compared: &Compared<'_>) -> Rows {
    let mut rows = Rows::new(None);
    for (piece, asked) in compared.brief().pieces() {
        let each: Vec<Option<&PieceSizes>> = compared.options.iter().map(|option| option.sizes_of(piece)).collect();
        for dimension in dimensions(&each) {
            let size = |sizes: &Option<&PieceSizes>| {
                let found = sizes.and_then(|sizes| sizes.get(dimension));
                let range = found.map(|it| planned_range(compared.units(), &it));
                range.unwrap_or_else(|| words::NONE.to_owned())
            };
            rows.put(words::of_piece(&asked.name, dimension.words()), None, each.iter().map(size).collect());
        }
    }
    rows
}

/// The dimensions that a piece has in any option; none where it stands in none.
fn dimensions(each: &[Option<&PieceSizes>]) -> Vec<Dimension> {
    let has = |dimension: &Dimension| each.iter().flatten().any(|sizes| sizes.get(*dimension).is_some());
    Dimension::ALL.iter().copied().filter(has).collect()
}

/// The walking routes: what each needs, and how wide it is.
pub(super) fn ways(compared: &Compared<'_>) -> Rows {
    let mut rows = Rows::new(Some(words::NEEDS));
    let mut told = Vec::new();
    for route in compared.options.iter().flat_map(|option| &option.routes) {
        let ends = [route.from, route.to];
        if told.contains(&ends) {
            continue;
        }
        told.push(ends);
        let label = crate::words::rank::route(compared.brief(), ends.map(Thing::from));
        let cells = compared.options.iter().map(|option| {
            let same = option.routes.iter().find(|it| [it.from, it.to] == ends);
            same.map_or_else(|| words::NONE.to_owned(), |it| taped_bare(compared.units(), it.width))
        });
        rows.put(label, Some(taped_bare(compared.units(), route.needs)), cells.collect());
    }
    rows
}
