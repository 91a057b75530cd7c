//! An assignment of stock, room by room, as JSON; the pick list and its rows are made from it too.

use elbowroom_model::listing::Money;
use elbowroom_model::{Dimension, Fault, Hand, PieceKind};
use elbowroom_solver::Size;
use elbowroom_solver::stock::{By, Days, Miss, Proven, Served, SetsAsked, Tried};
use serde::{Serialize, Serializer};

use super::carried::Carried;
use super::sets_asked::sets_asked;
use super::short;

/// Name and version of the format. What `across` was in the first is two rows since, `collected` and `delivered`; `rank` of an
/// arrangement, and `dimension` and `by` of what comes nearest, may be null.
pub(crate) const FORMAT: &str = "elbowroom-stock/2";
/// How the file of everything starts, whatever the version: what it is known again by.
pub(crate) const STOCK_START: &str = "{\n  \"format\": \"elbowroom-stock/";

/// The whole.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct StockResult {
    /// Name and version of the format.
    pub format: &'static str,
    /// No other assignment is better.
    pub proven: bool,
    /// Must-haves by priority.
    #[serde(serialize_with = "served")]
    pub must: Vec<Served>,
    /// Points of everything.
    #[serde(serialize_with = "proven")]
    pub points: Proven,
    /// Sets that no option of their room holds, solved in the room itself.
    #[serde(serialize_with = "sets_asked")]
    pub sets: SetsAsked,
    /// The bookings, in the order given.
    pub rooms: Vec<BookingResult>,
    /// What is carried on which day, by days; nothing where the bookings give none.
    pub carried: Vec<Carried>,
    /// What one more piece would bring.
    pub one_more: OneMoreResult,
    /// What must be told of the store's list.
    pub notices: Vec<String>,
}

/// Must-haves of the rooms of one priority.
#[derive(Serialize)]
struct ServedResult {
    /// 1 comes before 2.
    priority: u32,
    /// How many there are.
    of: usize,
    /// How many are served.
    #[serde(serialize_with = "proven")]
    count: Proven,
}

fn served<S: Serializer>(all: &[Served], serializer: S) -> Result<S::Ok, S::Error> {
    serializer.collect_seq(all.iter().map(|&Served { priority, of, count }| ServedResult { priority, of, count }))
}

/// A figure that was made as large as it could be found, and what it can be at most.
#[derive(Serialize)]
struct ProvenResult {
    /// As found.
    found: i64,
    /// It can be no larger than this.
    at_most: i64,
}

fn proven<S: Serializer>(&Proven { found, at_most }: &Proven, serializer: S) -> Result<S::Ok, S::Error> {
    ProvenResult { found, at_most }.serialize(serializer)
}

/// What was tried of one more piece, and what of it would bring most.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct OneMoreResult {
    /// As found.
    pub tried: Tried,
    /// What the row of the stock is called that it would be one more of.
    pub like: Option<String>,
}

impl Serialize for OneMoreResult {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let best = self.tried.best.as_ref().map(|best| BestResult {
            kind: best.kind,
            width: best.width,
            like: self.like.as_deref(),
            return_length: best.return_length,
            depth: best.depth,
            least: best.least.map(LeastResult::of),
            hand: best.hand,
            must: &best.must,
            points: best.points,
        });
        TriedResult { best, tried: self.tried.tried, of: self.tried.of }.serialize(serializer)
    }
}

/// What was tried and what of it would bring most.
#[derive(Serialize)]
struct TriedResult<'a> {
    /// The best; null where no piece would bring anything.
    best: Option<BestResult<'a>>,
    /// Pieces tried.
    tried: usize,
    /// Pieces that might have been tried.
    of: usize,
}

/// The least sizes of a piece, mm.
#[derive(Serialize)]
struct LeastResult {
    width: f64,
    #[serde(rename = "return")]
    return_length: Option<f64>,
    depth: f64,
}

impl LeastResult {
    const fn of(size: Size) -> Self {
        Self { width: size.width, return_length: size.return_length, depth: size.depth }
    }
}

/// One more piece, and what it would bring.
#[derive(Serialize)]
struct BestResult<'a> {
    /// Its kind.
    kind: PieceKind,
    /// At most, mm.
    width: f64,
    /// What it would be one more of; null: any piece of these sizes.
    like: Option<&'a str>,
    /// A corner sofa's.
    #[serde(rename = "return")]
    return_length: Option<f64>,
    /// Away from its back.
    depth: f64,
    /// What it is at least, mm; null where it is one more of a row of the stock.
    least: Option<LeastResult>,
    /// The hand, where only one of them helps.
    hand: Option<Hand>,
    /// Must-haves more than there can be without it, those of the first priority first.
    must: &'a [i64],
    /// Points more than there can be without it.
    points: i64,
}

/// A booking.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct BookingResult {
    /// Where the room came from.
    pub source: String,
    /// Its name.
    pub name: Option<String>,
    /// Whom it is for; empty where nobody says.
    pub client: String,
    /// Where it is; empty where nobody says.
    pub address: String,
    /// When it is furnished.
    #[serde(skip)]
    pub days: Option<Days>,
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
    /// Why nothing goes out to it, where no main seat can be had.
    pub not_stageable: Option<NotStageable>,
    /// What it asks for.
    pub asked: Vec<AskedResult>,
}

/// Why a room cannot be staged.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct NotStageable {
    /// One sentence.
    pub sentence: String,
    /// The piece that comes nearest to its main seat, and is free.
    pub nearest: Option<NearestPiece>,
}

/// A piece that comes nearest to what cannot be had.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct NearestPiece {
    /// Line of the store's list.
    pub line: usize,
    /// Its name.
    pub name: String,
    /// What keeps it out.
    pub miss: Miss,
}

/// The same, as JSON.
#[derive(Serialize)]
struct NearestResult<'a> {
    line: usize,
    name: &'a str,
    /// What keeps it out: `size`, `sill` (it rises above that of a window), `way` (it cannot be carried in).
    kept_out_by: &'static str,
    /// The dimension that is furthest off; null where it is no matter of size.
    dimension: Option<Dimension>,
    /// How far beyond what the room takes, mm; below 0: how far short.
    by: Option<f64>,
}

impl Serialize for NearestPiece {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let (kept_out_by, dimension, by) = match self.miss {
            Miss::Size { dimension, by } => ("size", Some(dimension), Some(by)),
            Miss::Sill => ("sill", None, None),
            Miss::Way => ("way", None, None),
        };
        NearestResult { line: self.line, name: &self.name, kept_out_by, dimension, by }.serialize(serializer)
    }
}

/// An arrangement.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct Arrangement {
    /// Its place among the room's options as asked; null where only these very pieces make it.
    pub rank: Option<usize>,
    /// How many options these very pieces make, of which this is the first.
    pub of: usize,
    /// Its stable name.
    pub key: String,
    /// In words.
    pub title: String,
    /// The score of the plan with these very pieces.
    pub score: f64,
}

/// What a room asks for, and what became of it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct AskedResult {
    /// Names in the room's own words.
    pub names: Vec<String>,
    /// It must be served.
    pub must: bool,
    /// What serves it.
    pub piece: Option<PickedPiece>,
    /// In words, where another kind stands in; null where the kind asked for serves, or nothing does.
    pub in_place_of: Option<String>,
    /// Where none fits: the piece of the stock that comes nearest.
    pub nearest: Option<NearestPiece>,
    /// The row of the stock that serves it, or why none does: `no_option`, `not_decided`, `none_of_kind`, `none_fits`,
    /// `none_fits_beside`, `not_decided_beside`, `too_few_alike`, `all_taken`, `not_staged`.
    #[serde(rename = "short", serialize_with = "short::short")]
    pub by: By,
}

/// A piece of the stock.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct PickedPiece {
    /// Line of the store's list.
    pub line: usize,
    /// Its name.
    pub name: String,
    /// How many of it.
    pub count: usize,
    /// Width, return, depth, mm, as far as it has them.
    pub size: Vec<f64>,
    /// Each of its sizes.
    #[serde(skip)]
    pub sizes: Size,
    /// Where it is.
    #[serde(rename = "where")]
    pub place: String,
    /// What one of it is worth.
    pub value: Option<Money>,
}

impl StockResult {
    /// Bookings by their first days, then in the order given.
    pub(crate) fn by_day(&self) -> Vec<&BookingResult> {
        let mut rooms: Vec<&BookingResult> = self.rooms.iter().collect();
        rooms.sort_by_key(|room| room.days.map(|days| days.from));
        rooms
    }
}
