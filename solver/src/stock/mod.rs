//! One stock, many rooms: which piece that is owned goes into which room, and on which days.
//!
//! [`offered`] solves a room for what a stock has, as it was asked for and with what may stand in. [`fit`] says which
//! pieces may have a place in it: each at or under the size that one of its options allows. [`statement`] writes the whole as a program of yes and no, and
//! [`assign`] solves it in steps: the must-haves of the rooms that come first, then those of the next, then everything
//! else by points. [`by_fit`] lays out what each room then gets: [`asks`] puts the very pieces ([`set`]) to the solver, and what does
//! not fit is [`refused`] and all is assigned anew. Where a must-have is left without a piece, or a room without its seat,
//! any set that is as asked for ([`hope`]) is asked of the solver too. [`proof`] says what no assignment can better. A room is served as a set: nothing goes out to it
//! without its main seat; [`short`] says why, and [`nearest`] what comes nearest to what cannot be had. [`planned`] plans rooms with
//! given pieces. [`more`] asks what one more piece would bring. Lists, dates and words are not known here: days are
//! numbers. [`moves`] says what is carried on which.

mod asks;
mod assign;
mod by_fit;
mod days;
mod decided;
mod fit;
mod hope;
mod hoped;
mod more;
mod moves;
mod nearest;
mod offered;
mod pick;
mod planned;
mod proof;
mod refused;
mod room;
mod set;
mod short;
mod statement;
mod tolerance;

use elbowroom_model::{Dimension, PieceId};
use std::sync::Arc;

use elbowroom_model::listing::ListedPiece;

pub use assign::assign;
pub use by_fit::{Effort, Staged, assign_by_fit};
pub use days::Days;
pub use more::{OneMore, Tried, more};
pub use moves::{Move, Stop, moves};
pub use offered::room_for;
pub use planned::plans;
pub use room::{Chosen, SolvedSet, StockRoom};

/// Pieces of a row of the stock that are not there on some days.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Away {
    /// When.
    pub days: Days,
    /// How many of them.
    pub count: u32,
}

/// Pieces that are owned, all alike.
#[derive(Debug, Clone, PartialEq)]
pub struct Owned {
    /// What they are, and how many.
    pub piece: ListedPiece,
    /// When some of them are out.
    pub away: Vec<Away>,
}

impl Owned {
    /// How many are there on `day`.
    #[must_use]
    pub fn there_on(&self, day: i32) -> u32 {
        let away = self.away.iter().filter(|away| away.days.hold(day)).map(|away| away.count);
        away.fold(self.piece.count, u32::saturating_sub)
    }
}

/// A room that is to be furnished out of the stock.
#[derive(Debug, Clone)]
pub struct Asking {
    /// The room, what should stand in it, and its options; bookings of one room share it.
    pub room: Arc<StockRoom>,
    /// When it is furnished.
    pub days: Days,
    /// 1 comes before 2.
    pub priority: u32,
    /// Pieces, of the brief as asked, that must be served before anything that need not be.
    pub must: Vec<PieceId>,
}

/// One thing that a room asks for: a piece, or all pieces of a row of its file, which are alike.
#[derive(Debug, Clone, PartialEq)]
pub struct Asked {
    /// The pieces, of the brief as asked; the first stands for all.
    pub pieces: Vec<PieceId>,
    /// It must be served.
    pub must: bool,
}

impl Asking {
    /// What it asks for, in the order of its file.
    #[must_use]
    pub fn asked(&self) -> Vec<Asked> {
        let mut asked: Vec<Asked> = Vec::new();
        for (id, piece) in self.room.answer.asked.pieces().filter(|(_, piece)| !piece.kind.stays_open()) {
            let head = piece.alike.unwrap_or(id);
            let must = self.must.contains(&id);
            match asked.iter_mut().find(|one| one.pieces.first() == Some(&head)) {
                Some(one) => {
                    one.pieces.push(id);
                    one.must |= must;
                }
                None => asked.push(Asked { pieces: vec![id], must }),
            }
        }
        asked
    }

    /// The things asked for that a room is staged about, by their places in [`asked`](Self::asked): the main seat of any of
    /// its options. Nothing else goes out unless one of them does.
    #[must_use]
    pub fn main_seats(&self) -> Vec<usize> {
        let is_main =
            |id: &PieceId| self.room.options().any(|(answer, option)| answer.solved_as(*id) == Some(option.main_seat));
        let asked = self.asked().into_iter().enumerate();
        asked.filter(|(_, asked)| asked.pieces.iter().any(is_main)).map(|(place, _)| place).collect()
    }
}

/// Who gets what.
#[derive(Debug, Clone, PartialEq)]
pub struct Assignment {
    /// Room by room, in the order given.
    pub rooms: Vec<Furnished>,
    /// Must-haves that are served, rooms of the first priority first.
    pub must: Vec<Served>,
    /// Points of everything that is served.
    pub points: Proven,
    /// What was asked of the solver beyond the options of the rooms.
    pub sets: SetsAsked,
    /// Relaxations solved.
    pub nodes: usize,
}

impl Assignment {
    /// Nothing better can be, in any step.
    #[must_use]
    pub fn is_proven(&self) -> bool {
        self.points.is_proven() && self.must.iter().all(|served| served.count.is_proven())
    }
}

/// Sets of the stock that no option of their room holds, asked of the solver.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct SetsAsked {
    /// Sets that were solved.
    pub solved: usize,
    /// Of the rooms' sets those that fit.
    pub fitting: usize,
    /// Sets that an option has the sizes for, and that do not fit when their very pieces are laid out.
    pub refused: usize,
    /// Those of which it is not known whether they fit.
    pub not_decided: usize,
    /// More might be asked, and the effort was spent.
    pub spent: bool,
}

/// Must-haves of the rooms of one priority.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Served {
    /// 1 comes before 2.
    pub priority: u32,
    /// How many there are.
    pub of: usize,
    /// How many are served.
    pub count: Proven,
}

/// A figure that was made as large as it could be found, and what it can be at most.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Proven {
    /// As found.
    pub found: i64,
    /// It can be no larger than this, whatever is tried.
    pub at_most: i64,
}

impl Proven {
    /// It cannot be larger.
    #[must_use]
    pub const fn is_proven(self) -> bool {
        self.found >= self.at_most
    }
}

/// A room as furnished.
#[derive(Debug, Clone, PartialEq)]
pub struct Furnished {
    /// The best option that all its pieces fit in; `None` where nothing fits in the room, or where no main seat can be had
    /// and so nothing goes out.
    pub option: Option<Chosen>,
    /// Where no main seat can be had: the piece of the stock that comes nearest to being one.
    pub nearest: Option<Nearest>,
    /// What it asks for, in the order of its file, with what became of it.
    pub asked: Vec<Fulfilled>,
}

/// A piece of the stock that comes nearest to what is asked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Nearest {
    /// Place in what the room asks for.
    pub asked: usize,
    /// Row of the stock.
    pub row: usize,
    /// What keeps it out.
    pub miss: Miss,
}

/// What keeps a piece out of a place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Miss {
    /// Its size.
    Size {
        /// The dimension that is furthest off.
        dimension: Dimension,
        /// How far beyond what the room takes, mm; below 0: how far short of what it asks for.
        by: f64,
    },
    /// It rises above a window's sill that what is asked for stays under.
    Sill,
    /// It cannot be carried in.
    Way,
}

/// What became of one thing that was asked for.
#[derive(Debug, Clone, PartialEq)]
pub struct Fulfilled {
    /// What was asked for.
    pub asked: Asked,
    /// The row of the stock that serves it, or why none does.
    pub by: By,
    /// Where none fits: the piece that comes nearest.
    pub nearest: Option<Nearest>,
}

/// Who serves, or why nobody does.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum By {
    /// A row of the stock, by its place.
    Stock {
        /// Its place.
        row: usize,
    },
    /// Nothing fits in the room as asked, whatever the stock has.
    NoOption,
    /// Nothing was found that fits in the room as asked, and it is not known whether anything does.
    NotDecided,
    /// The stock has none of the kind.
    NoneOfKind,
    /// It has some, and none of them fits in any option of the room, or in none beside what stands there.
    NoneFits,
    /// Some fit, and of none of them there are as many alike as are asked for.
    TooFewAlike,
    /// Some are free and fit by their sizes, and laid out with what else stands there they do not.
    NoneFitsBeside,
    /// Some are free, and it is not known whether they fit with what else stands there.
    NotDecidedBeside,
    /// Some would fit, and all of them are in other rooms, or out, on these days.
    AllTaken,
    /// No main seat can be had, and nothing goes out by itself.
    NotStaged,
}
