//! One stock, many rooms: which piece that is owned goes into which room, and on which days.
//!
//! [`offered`] solves a room for what a stock has, as it was asked for and with what may stand in. [`fit`] says which
//! pieces have a place in it: every set of pieces at or under the sizes that one of its options allows together fits, so
//! nothing is solved again. Where that leaves a must-have without a piece, or a room without its seat, [`by_fit`] asks the
//! solver: of any set that is as asked for ([`hope`]) the room is solved with its very sizes ([`set`]). [`statement`] writes the whole as a program of yes and no, and
//! [`assign`] solves it in steps: the must-haves of the rooms that come first, then those of the next, then everything
//! else by points. A room is served as a set: nothing goes out to it without its main seat, and [`nearest`] says what comes
//! nearest to what cannot be had. [`planned`] plans each room again with the very pieces that it got. [`more`] asks what one more piece would bring. Lists, dates and words are not known here: days are
//! numbers. [`moves`] says what is carried on which.

mod assign;
mod by_fit;
mod fit;
mod hope;
mod more;
mod moves;
mod nearest;
mod offered;
mod planned;
mod room;
mod set;
mod statement;
mod tolerance;

use elbowroom_model::{Dimension, PieceId};
use std::sync::Arc;

use elbowroom_model::listing::ListedPiece;

pub use assign::assign;
pub use by_fit::{Effort, Staged, assign_by_fit};
pub use more::{OneMore, Tried, more};
pub use moves::{Move, Stop, moves};
pub use offered::room_for;
pub use planned::plans;
pub use room::{Chosen, SolvedSet, StockRoom};

/// Days from the first to the last, both included, each by its number.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Days {
    /// The first.
    pub from: i32,
    /// The last.
    pub to: i32,
}

impl Days {
    /// Some day is in both.
    #[must_use]
    pub const fn overlap(self, other: Self) -> bool {
        self.from <= other.to && other.from <= self.to
    }

    /// `day` is one of them.
    #[must_use]
    pub const fn hold(self, day: i32) -> bool {
        self.from <= day && day <= self.to
    }
}

/// Pieces of one row of the stock that are not there on some days.
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
    /// Some would fit, and all of them are in other rooms, or out, on these days.
    AllTaken,
    /// No main seat can be had, and nothing goes out by itself.
    NotStaged,
}

#[cfg(test)]
mod tests {
    use super::Days;

    #[test]
    fn days_overlap_where_one_day_is_in_both() {
        let days = |from, to| Days { from, to };
        assert!(days(1, 3).overlap(days(3, 5)) && days(3, 5).overlap(days(1, 3)) && days(1, 9).overlap(days(4, 5)));
        assert!(!days(1, 3).overlap(days(4, 5)));
    }
}
