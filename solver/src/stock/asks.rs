//! Sets of the stock asked of the solver: laid out in their room with their very sizes.

use elbowroom_model::{Brief, PieceId};

use super::decided::is_decided;
use super::fit::Stage;
use super::pick::{Pick, RefusedSet, Set};
use super::refused::{is_of_any_size, may_help};
use super::set::{Served, served};
use super::{Asked, Asking, Owned, SolvedSet};
use crate::answer::Answer;
use crate::shop::{NoSet, best_score, may_fit};
use crate::{Limits, Unwatched, rank};

/// Most places that a refusal is shown to hold for whatever stands there: each doubles what is solved for that.
const MOST_OPEN: usize = 2;

/// Asks the solver of sets in the room of a booking.
pub(super) struct Asks<'a> {
    pub(super) asking: &'a Asking,
    asked: Vec<Asked>,
    heads: Vec<usize>,
    stock: &'a [Owned],
    limits: &'a Limits,
}

/// What came of asking, and how many sets were solved for it.
pub(super) struct Told<T> {
    pub(super) result: Result<T, RefusedSet>,
    pub(super) solved: usize,
}

impl<'a> Asks<'a> {
    pub(super) fn of(asking: &'a Asking, stock: &'a [Owned], limits: &'a Limits) -> Self {
        Self { asking, asked: asking.asked(), heads: asking.main_seats(), stock, limits }
    }

    /// Whether the set may fit: a layout was found, or it is not known that there is none. Much less work than a plan.
    pub(super) fn may_fit(&self, set: &Set) -> Told<()> {
        match self.base(set) {
            None => self.not_of_a_furnishing(set),
            Some((_, base)) if may_fit(&self.served(base, set).alone()) => Told { result: Ok(()), solved: 0 },
            Some((_, base)) => self.refused(base, set),
        }
    }

    /// The room planned with the very pieces of `set` and nothing else; a plan that is told has an option.
    pub(super) fn lay_out(&self, set: &Set) -> Told<Answer> {
        let Some((_, base)) = self.base(set) else { return self.not_of_a_furnishing(set) };
        let answer = rank(&self.served(base, set).alone(), self.limits, &Unwatched);
        if !answer.options.is_empty() {
            return Told { result: Ok(answer), solved: 0 };
        }
        if is_decided(&answer) { self.refused(base, set) } else { self.not_decided(set) }
    }

    /// The room with the set and more, where it fits: every option has a place for it.
    pub(super) fn ask(&self, set: &Set) -> Told<SolvedSet> {
        let Some((furnishing, base)) = self.base(set) else { return self.not_of_a_furnishing(set) };
        match score(&self.served(base, set).alone()) {
            Ok(_) => match self.fitting(furnishing, base, set) {
                Some(found) => Told { result: Ok(found), solved: 1 },
                None => self.not_decided(set),
            },
            Err(NoSet::NotDecided) => self.not_decided(set),
            Err(NoSet::DoesNotFit) => self.refused(base, set),
        }
    }

    /// The furnishing of the kinds of the set.
    fn base(&self, set: &Set) -> Option<(usize, &'a Brief)> {
        let is_of = |(_, answer): &(usize, &Answer)| {
            set.iter().all(|pick| {
                let piece = self.asked.get(pick.asked).and_then(|asked| answer.asked.piece(*asked.pieces.first()?));
                piece.map(|piece| piece.kind) == self.stock.get(pick.row).map(|owned| owned.piece.kind)
            })
        };
        self.asking.room.answers().enumerate().find(is_of).map(|(place, answer)| (place, &answer.asked))
    }

    fn served(&self, base: &Brief, set: &Set) -> Served {
        let row_of = |place: usize| set.iter().find(|pick| pick.asked == place).map(|pick| pick.row);
        served(base, &self.asked, self.stock, &row_of)
    }

    /// What is learnt from a set that does not fit: of it the part that does not fit either, and what cannot help that. A
    /// main seat is not tried to be spared: all else stands about it.
    fn refused<T>(&self, base: &Brief, set: &Set) -> Told<T> {
        let (mut core, mut open, mut solved) = (set.clone(), Vec::new(), 1);
        let spared = set.iter().filter(|pick| !self.heads.contains(&pick.asked));
        let (helping, others): (Vec<&Pick>, Vec<&Pick>) = spared.partition(|pick| self.may_help(pick.row));
        // What is none of the sizes that are tried cannot be shown to help at none of them: it stays, or its own set comes back.
        let helping = helping.into_iter().filter(|pick| self.is_of_any_size(base, pick));
        for pick in others.into_iter().chain(helping) {
            let without: Set = core.iter().filter(|other| *other != pick).copied().collect();
            let mut more: Vec<usize> = open.clone();
            if self.may_help(pick.row) {
                more.push(pick.asked);
            }
            if more.len() <= MOST_OPEN && self.fits_with_none_of(base, &without, &more, &mut solved) {
                (core, open) = (without, more);
            }
        }
        let beside = self.beside(base, &core, &open);
        Told { result: Err(RefusedSet { picks: core, beside, is_decided: true }), solved }
    }

    /// What holds a set that nobody knows the fit of is not known either.
    fn not_decided<T>(&self, set: &Set) -> Told<T> {
        let beside = self.places_but_of(set).collect();
        Told { result: Err(RefusedSet { picks: set.clone(), beside, is_decided: false }), solved: 1 }
    }

    /// No furnishing of the room has these kinds together.
    fn not_of_a_furnishing<T>(&self, set: &Set) -> Told<T> {
        let beside = self.places_but_of(set).collect();
        Told { result: Err(RefusedSet { picks: set.clone(), beside, is_decided: true }), solved: 0 }
    }

    /// Each row of the stock in each place that the set has nothing in.
    fn places_but_of<'b>(&'b self, set: &'b Set) -> impl Iterator<Item = Pick> + 'b {
        let places = (0..self.asked.len()).filter(|place| set.iter().all(|pick| pick.asked != *place));
        places.flat_map(|asked| (0..self.stock.len()).map(move |row| Pick { asked, row }))
    }

    fn may_help(&self, row: usize) -> bool {
        self.stock.get(row).is_none_or(|owned| may_help(owned.piece.kind))
    }

    /// Whether the set fits neither by itself nor with anything of any size in some of the `open` places: proven.
    fn fits_with_none_of(&self, base: &Brief, set: &Set, open: &[usize], solved: &mut usize) -> bool {
        let served = self.served(base, set);
        (0..1_usize << open.len()).all(|which| {
            let there = open.iter().enumerate().filter(|(bit, _)| which >> bit & 1 == 1).map(|(_, place)| *place);
            let there = there.filter_map(|place| self.asked.get(place)).flat_map(|asked| asked.pieces.clone());
            *solved += 1;
            matches!(score(&served.with_any(&there.collect::<Vec<_>>())), Err(NoSet::DoesNotFit))
        })
    }

    /// What may stand beside the core of a refusal that was shown to hold whatever stands in the `open` places.
    fn beside(&self, base: &Brief, core: &Set, open: &[usize]) -> Vec<Pick> {
        let is_shown = |pick: &Pick| open.contains(&pick.asked) && self.is_of_any_size(base, pick);
        self.places_but_of(core).filter(|pick| !self.may_help(pick.row) || is_shown(pick)).collect()
    }

    /// Whether what is picked is among the sizes that its place may have.
    fn is_of_any_size(&self, base: &Brief, pick: &Pick) -> bool {
        let piece = self.asked.get(pick.asked).and_then(|asked| base.piece(*asked.pieces.first()?));
        let both = piece.zip(self.stock.get(pick.row));
        both.is_some_and(|(piece, owned)| is_of_any_size(piece, &owned.piece))
    }

    /// The room with the set, its options those that hold it and are built about one of the room's main seats.
    fn fitting(&self, furnishing: usize, base: &Brief, set: &Set) -> Option<SolvedSet> {
        let served = self.served(base, set);
        let with_more = || rank(&served.with_room_for_more(base), self.limits, &Unwatched);
        let alone = || {
            let answer = rank(&served.alone(), self.limits, &Unwatched);
            Answer { asked: served.brief.clone(), outside: served.unserved.clone(), ..answer }
        };
        let mut answer = self.holding(with_more(), set);
        if answer.options.is_empty() {
            answer = self.holding(alone(), set);
        }
        (!answer.options.is_empty()).then_some(SolvedSet { furnishing, answer })
    }

    fn holding(&self, mut answer: Answer, set: &Set) -> Answer {
        let seats: Vec<PieceId> =
            self.heads.iter().filter_map(|head| self.asked.get(*head)).flat_map(|it| it.pieces.clone()).collect();
        let mut options = std::mem::take(&mut answer.options);
        options.retain(|option| {
            let stage = Stage { room: &self.asking.room, answer: &answer, option };
            let is_built_about_one = seats.iter().any(|seat| answer.solved_as(*seat) == Some(option.main_seat));
            is_built_about_one
                && set.iter().all(|pick| {
                    let both = self.asked.get(pick.asked).zip(self.stock.get(pick.row));
                    both.is_some_and(|(asked, owned)| stage.takes(asked, pick.row, &owned.piece))
                })
        });
        Answer { options, ..answer }
    }
}

fn score(brief: &Brief) -> Result<f64, NoSet> {
    if may_fit(brief) { best_score(brief) } else { Err(NoSet::DoesNotFit) }
}
