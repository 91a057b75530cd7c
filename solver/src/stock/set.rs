//! A set of pieces of the stock in a room: the room with these very pieces, and whether the solver finds a place for them.

use elbowroom_model::listing::ListedPiece;
use elbowroom_model::{Brief, Dimension, Piece, PieceId, SizeRange};

use super::fit::Stage;
use super::{Asked, Asking, Owned, SolvedSet};
use crate::answer::Answer;
use crate::shop::{NoSet, best_score, may_fit, stand_in};
use crate::{Limits, Unwatched, rank};

/// A row of the stock in a place of what a room asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Pick {
    /// Place in what the room asks for.
    pub(super) asked: usize,
    /// Row of the stock.
    pub(super) row: usize,
}

/// What stands in a room together, by places.
pub(super) type Set = Vec<Pick>;

/// A room with the very pieces that serve it.
pub(super) struct Served {
    /// What serves has its own sizes and no others; the rest is there as it was asked for.
    brief: Brief,
    /// What nothing serves, in the order of the brief.
    unserved: Vec<PieceId>,
}

/// The room of `base` with the rows of the stock that serve what is `asked` for.
pub(super) fn served(
    base: &Brief,
    asked: &[Asked],
    stock: &[Owned],
    row_of: &dyn Fn(usize) -> Option<usize>,
) -> Served {
    let (mut brief, mut unserved) = (base.clone(), Vec::new());
    for (place, asked) in asked.iter().enumerate() {
        let listed = row_of(place).and_then(|row| stock.get(row)).map(|owned| &owned.piece);
        for id in &asked.pieces {
            match (listed, brief.piece_mut(*id)) {
                (Some(listed), Some(piece)) => *piece = in_place_of(piece, listed),
                _ => unserved.push(*id),
            }
        }
    }
    unserved.sort_unstable();
    Served { brief, unserved }
}

/// The piece as the stock has it. Of a corner sofa whose hand nobody says either is taken.
fn in_place_of(piece: &Piece, listed: &ListedPiece) -> Piece {
    let hands = if listed.hands.is_empty() { piece.hands.clone() } else { listed.hands.clone() };
    stand_in(piece, &ListedPiece { hands, ..listed.clone() })
}

impl Served {
    /// The room with what serves it, and nothing else.
    pub(super) fn alone(&self) -> Brief {
        self.unserved.iter().rev().fold(self.brief.clone(), |brief, id| crate::refusal::without(&brief, *id))
    }

    /// The same with all else where there is room for it, and what serves as large as that leaves room for: whatever lies
    /// between is served by one plan.
    fn with_room_for_more(&self, base: &Brief) -> Brief {
        let mut brief = self.brief.clone();
        for (id, was) in base.pieces() {
            let Some(piece) = brief.piece_mut(id) else { continue };
            if self.unserved.contains(&id) {
                piece.needed = false;
                continue;
            }
            for dimension in Dimension::ALL {
                if let Some((range, was)) = piece.range_mut(*dimension).zip(was.range(*dimension)) {
                    let most = was.most.max(range.least);
                    *range = SizeRange { least: range.least, usual: was.usual.clamp(range.least, most), most };
                }
            }
        }
        brief
    }
}

/// What the solver says of a set.
pub(super) enum Fits {
    /// The room with the set, whose every option has a place for it.
    Yes(Box<SolvedSet>),
    /// These of it have no place together, whatever else there is.
    No(Set),
    /// It is not known.
    NotDecided(Set),
}

/// Asks the solver of sets in the room of a booking.
pub(super) struct Asks<'a> {
    pub(super) asking: &'a Asking,
    pub(super) stock: &'a [Owned],
    pub(super) limits: &'a Limits,
}

impl Asks<'_> {
    /// Whether `set` fits, and how many sets were solved for that.
    pub(super) fn ask(&self, set: &Set) -> (Fits, usize) {
        let asked = self.asking.asked();
        let Some((furnishing, base)) = self.base(&asked, set) else { return (Fits::No(set.clone()), 0) };
        match self.score(base, &asked, set) {
            Ok(_) => (self.fitting(furnishing, base, &asked, set), 1),
            Err(NoSet::NotDecided) => (Fits::NotDecided(set.clone()), 1),
            Err(NoSet::DoesNotFit) => {
                let (core, solved) = self.core(base, &asked, set);
                (Fits::No(core), 1 + solved)
            }
        }
    }

    /// The furnishing of the kinds of the set.
    fn base(&self, asked: &[Asked], set: &Set) -> Option<(usize, &Brief)> {
        let is_of = |(_, answer): &(usize, &Answer)| {
            set.iter().all(|pick| {
                let piece = asked.get(pick.asked).and_then(|asked| answer.asked.piece(*asked.pieces.first()?));
                piece.map(|piece| piece.kind) == self.stock.get(pick.row).map(|owned| owned.piece.kind)
            })
        };
        self.asking.room.answers().enumerate().find(is_of).map(|(place, answer)| (place, &answer.asked))
    }

    fn served(&self, base: &Brief, asked: &[Asked], set: &Set) -> Served {
        served(base, asked, self.stock, &|place| set.iter().find(|pick| pick.asked == place).map(|pick| pick.row))
    }

    fn score(&self, base: &Brief, asked: &[Asked], set: &Set) -> Result<f64, NoSet> {
        let alone = self.served(base, asked, set).alone();
        if may_fit(&alone) { best_score(&alone) } else { Err(NoSet::DoesNotFit) }
    }

    /// A part of the set that does not fit either, none of which can be spared; a main seat is not tried to be spared.
    fn core(&self, base: &Brief, asked: &[Asked], set: &Set) -> (Set, usize) {
        let heads = self.asking.main_seats();
        let (mut core, mut solved) = (set.clone(), 0);
        for pick in set.iter().filter(|pick| !heads.contains(&pick.asked)) {
            let without: Set = core.iter().filter(|other| *other != pick).copied().collect();
            solved += 1;
            if matches!(self.score(base, asked, &without), Err(NoSet::DoesNotFit)) {
                core = without;
            }
        }
        (core, solved)
    }

    /// The room with the set, its options those that hold it and are built about one of the room's main seats.
    fn fitting(&self, furnishing: usize, base: &Brief, asked: &[Asked], set: &Set) -> Fits {
        let served = self.served(base, asked, set);
        let with_more = || {
            let brief = served.with_room_for_more(base);
            rank(&brief, self.limits, &Unwatched)
        };
        let alone = || {
            let answer = rank(&served.alone(), self.limits, &Unwatched);
            Answer { asked: served.brief.clone(), outside: served.unserved.clone(), ..answer }
        };
        let mut answer = self.holding(with_more(), asked, set);
        if answer.options.is_empty() {
            answer = self.holding(alone(), asked, set);
        }
        if answer.options.is_empty() {
            Fits::NotDecided(set.clone())
        } else {
            Fits::Yes(Box::new(SolvedSet { furnishing, answer }))
        }
    }

    fn holding(&self, mut answer: Answer, asked: &[Asked], set: &Set) -> Answer {
        let heads = self.asking.main_seats();
        let seats: Vec<PieceId> =
            heads.iter().filter_map(|head| asked.get(*head)).flat_map(|it| it.pieces.clone()).collect();
        let mut options = std::mem::take(&mut answer.options);
        options.retain(|option| {
            let stage = Stage { room: &self.asking.room, answer: &answer, option };
            let is_built_about_one = seats.iter().any(|seat| answer.solved_as(*seat) == Some(option.main_seat));
            is_built_about_one
                && set.iter().all(|pick| {
                    let both = asked.get(pick.asked).zip(self.stock.get(pick.row));
                    both.is_some_and(|(asked, owned)| stage.takes(asked, pick.row, &owned.piece))
                })
        });
        Answer { options, ..answer }
    }
}
