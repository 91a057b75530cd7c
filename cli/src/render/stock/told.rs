//! An assignment as it is told, room by room: the pick list, the rows and the JSON are made from this.

use elbowroom_model::Fault;
use elbowroom_model::listing::Money;
use elbowroom_solver::stock::{Proven, Served, Tried};
use serde::Serialize;

/// Name and version of the format.
pub(crate) const FORMAT: &str = "elbowroom-stock/1";
/// How the file of everything starts, whatever the version: what it is known again by.
pub(crate) const STOCK_START: &str = "{\n  \"format\": \"elbowroom-stock/";

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

impl Told {
    /// Bookings by their first days, then in the order given.
    pub(crate) fn by_day(&self) -> Vec<&ToldRoom> {
        let mut rooms: Vec<&ToldRoom> = self.rooms.iter().collect();
        rooms.sort_by(|one, other| one.from.cmp(&other.from));
        rooms
    }
}
