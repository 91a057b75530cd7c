//! What is told of an assignment, room by room: everything that is shown or written is made from this.

use elbowroom_model::Fault;
use elbowroom_model::listing::Money;
use elbowroom_solver::stock::{Asking, Assignment, By, Proven, Served, Tried};
use serde::Serialize;

use super::days::written;
use super::store::Store;

/// Name and version of the format.
const FORMAT: &str = "elbowroom-stock/1";

/// The whole.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct Told {
    /// Name and version of the format.
    pub format: &'static str,
    /// No other assignment is better.
    pub proven: bool,
    /// Must-haves by priority.
    pub must: Vec<Served>,
    /// Points of everything.
    pub points: Proven,
    /// The bookings, in the order given.
    pub rooms: Vec<ToldRoom>,
    /// What one more piece would bring.
    pub one_more: Tried,
}

/// A booking.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct ToldRoom {
    /// Where the room came from.
    pub source: String,
    /// Its name.
    pub name: Option<String>,
    /// The first day.
    pub from: Option<String>,
    /// The last day.
    pub to: Option<String>,
    /// 1 comes before 2.
    pub priority: u32,
    /// What is wrong with it.
    pub faults: Vec<Fault>,
    /// The arrangement that its pieces stand in.
    pub arrangement: Option<Arrangement>,
    /// What it asks for.
    pub asked: Vec<ToldAsked>,
}

/// An arrangement.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct Arrangement {
    /// Its place among the room's options.
    pub rank: usize,
    /// Its stable name.
    pub key: String,
    /// In words.
    pub title: String,
}

/// What a room asks for, and what became of it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct ToldAsked {
    /// Names in the room's own words.
    pub names: Vec<String>,
    /// It must be served.
    pub must: bool,
    /// What serves it.
    pub piece: Option<ToldPiece>,
    /// Why nothing does: `no_option`, `none_of_kind`, `none_fits`, `all_taken`.
    pub short: Option<&'static str>,
}

/// A piece of the stock.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct ToldPiece {
    /// Line of the store's list.
    pub line: usize,
    /// Its name.
    pub name: String,
    /// How many of it.
    pub count: usize,
    /// Width, return, depth, mm.
    pub size: Vec<f64>,
    /// Where it is.
    #[serde(rename = "where")]
    pub place: String,
    /// What one of it is worth.
    pub value: Option<Money>,
}

/// A booking as it went in, for who has a room to show for it.
pub(crate) struct Went<'a> {
    /// Its line as far as it is known without the assignment.
    pub room: ToldRoom,
    /// What the solver was asked; `None` where the room is at fault.
    pub asking: Option<&'a Asking>,
}

/// What is told of `assignment`, whose rooms are those of `went` that have an asking, in their order.
pub(crate) fn told(went: Vec<Went<'_>>, store: &Store, assignment: &Assignment, one_more: Tried) -> Told {
    let mut furnished = assignment.rooms.iter();
    let rooms = went.into_iter().map(|went| {
        let Some((asking, furnished)) = went.asking.and_then(|asking| Some((asking, furnished.next()?))) else {
            return went.room;
        };
        let option = furnished.option.and_then(|option| asking.options.get(option));
        let arrangement = option.map(|option| Arrangement {
            rank: option.rank,
            key: option.key.clone(),
            title: option.title.clone(),
        });
        let asked = furnished.asked.iter().map(|one| ToldAsked {
            names: one.names.clone(),
            must: one.must,
            piece: piece(one.by, one.names.len(), store),
            short: short(one.by),
        });
        ToldRoom { arrangement, asked: asked.collect(), ..went.room }
    });
    Told {
        format: FORMAT,
        proven: assignment.is_proven(),
        must: assignment.must.clone(),
        points: assignment.points,
        rooms: rooms.collect(),
        one_more,
    }
}

fn piece(by: By, count: usize, store: &Store) -> Option<ToldPiece> {
    let By::Stock { row } = by else { return None };
    let (owned, kept) = (store.owned.get(row)?, store.kept.get(row)?);
    let size = [Some(owned.piece.width), owned.piece.return_length, Some(owned.piece.depth)];
    Some(ToldPiece {
        line: owned.piece.line,
        name: owned.piece.name.clone(),
        count,
        size: size.into_iter().flatten().collect(),
        place: kept.place.clone(),
        value: kept.value,
    })
}

const fn short(by: By) -> Option<&'static str> {
    match by {
        By::Stock { .. } => None,
        By::NoOption => Some("no_option"),
        By::NoneOfKind => Some("none_of_kind"),
        By::NoneFits => Some("none_fits"),
        By::AllTaken => Some("all_taken"),
    }
}

/// A span of days as written.
pub(crate) fn written_days(days: Option<elbowroom_solver::stock::Days>) -> (Option<String>, Option<String>) {
    (days.map(|days| written(days.from)), days.map(|days| written(days.to)))
}

impl Told {
    /// Bookings by their first days, then in the order given.
    pub(crate) fn by_day(&self) -> Vec<&ToldRoom> {
        let mut rooms: Vec<&ToldRoom> = self.rooms.iter().collect();
        rooms.sort_by(|one, other| one.from.cmp(&other.from));
        rooms
    }
}
