//! Who gets what where fit is asked of the solver. The sizes of an option say what each piece may be by itself: together
//! pieces within them need not fit, and pieces beyond them may, where a deeper sofa stands beside a smaller table.
//!
//! What each room is to get is laid out with its very pieces. What does not fit is refused, with what is learnt from that,
//! and all is assigned anew, until every set has its plan. Where something is wanting still, the program is solved as if
//! every piece that is as asked for had a place ([`hope`](super::hope)); each set that it then builds on is solved in its
//! room, and one that fits becomes an answer of the room. So it goes on until nothing is built on hope: what then is
//! served is the most that can be.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use rayon::prelude::*;

use super::asks::{Asks, Told};
use super::assign::assign;
use super::hoped::{Built, InRoom, first_alike, hoped, lacks_nothing};
use super::pick::{Pick, RefusedSet, Set};
use super::statement::Refusals;
use super::{Asking, Assignment, By, Owned, SetsAsked, StockRoom, proof};
use crate::Limits;
use crate::answer::Answer;

/// How far the work goes, counted and never timed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Effort {
    /// For each part of each step of a program, in the unit of [`Whole::solve`](crate::program::whole::Whole::solve).
    pub work: u64,
    /// Sets that are hoped for and solved before no more are asked; as many solves go to what is refused in one room.
    pub sets: usize,
}

/// The rooms with the sets that were asked of the solver, who gets what of them, and how that stands.
#[derive(Debug, Clone)]
pub struct Staged {
    /// The bookings, in the order given.
    pub rooms: Vec<Asking>,
    /// Who gets what.
    pub found: Assignment,
    /// Each room planned with the very pieces that it got: every arrangement is tried, not the one alone that the assignment was made
    /// for. `None` where nothing goes out to a room.
    pub plans: Vec<Option<Answer>>,
}

/// The best assignment where fit is asked of the solver: of must-haves as many as any sets serve that fit; then of points as
/// many as the options and the sets found allow. Whatever is served has a plan with its very pieces.
#[must_use]
pub fn assign_by_fit(rooms: &[Asking], stock: &[Owned], limits: &Limits, effort: Effort) -> Staged {
    let mut search = Search::of(rooms, stock, limits, effort);
    loop {
        let found = search.best();
        // Only what is told is planned: all before is only tried for a place.
        if !search.lay_out(&found) {
            return search.staged(found);
        }
    }
}

struct Search<'a> {
    stock: &'a [Owned],
    limits: &'a Limits,
    effort: Effort,
    rooms: Vec<Asking>,
    /// Of each booking, the first of the same room.
    first: Vec<usize>,
    /// What was hoped for and asked.
    known: BTreeSet<InRoom>,
    /// Sets that were tried for a place, and have one as far as is known.
    tried: BTreeSet<InRoom>,
    /// Rooms as laid out.
    plans: BTreeMap<InRoom, Answer>,
    asked: SetsAsked,
    /// Solves that went to what is refused in a room, by its first booking.
    trials: BTreeMap<usize, usize>,
}

impl<'a> Search<'a> {
    fn of(rooms: &[Asking], stock: &'a [Owned], limits: &'a Limits, effort: Effort) -> Self {
        let first = (0..rooms.len()).map(|place| {
            let is_same = |other: &Asking| is_same_room(&other.room, &rooms[place].room);
            rooms.iter().position(is_same).unwrap_or(place)
        });
        Self {
            stock,
            limits,
            effort,
            first: first.collect(),
            rooms: rooms.to_vec(),
            known: BTreeSet::new(),
            tried: BTreeSet::new(),
            plans: BTreeMap::new(),
            asked: SetsAsked::default(),
            trials: BTreeMap::new(),
        }
    }

    /// The best assignment of what may fit, sets that no option holds among it.
    fn best(&mut self) -> Assignment {
        let mut found = self.settled();
        while !lacks_nothing(&self.rooms, &found) && self.ask_for_more(&found) {
            let refused = self.asked.refused;
            found = self.settled();
            if self.asked.refused == refused {
                break;
            }
        }
        found
    }

    /// The best assignment of what is not refused, every set of which was tried for a place.
    fn settled(&mut self) -> Assignment {
        loop {
            let found = assign(&self.rooms, self.stock, self.effort.work);
            let sets = self.sets_of(&found).into_iter().filter(|set| !self.tried.contains(set)).collect();
            let mut any = false;
            for (set, told) in self.each(sets, |asks, set| asks.may_fit(set)) {
                match self.taken(set.0, told) {
                    Some(()) => drop(self.tried.insert(set)),
                    None => any = true,
                }
            }
            if !any {
                return found;
            }
        }
    }

    /// What the bookings get, each set once.
    fn sets_of(&self, found: &Assignment) -> BTreeSet<InRoom> {
        (0..self.rooms.len()).filter_map(|room| self.set_of(room, found)).collect()
    }

    /// What is told of sets, side by side.
    fn each<T: Send>(
        &self,
        sets: Vec<InRoom>,
        ask: impl Fn(&Asks<'_>, &Set) -> Told<T> + Sync,
    ) -> Vec<(InRoom, Told<T>)> {
        let ask = |set: InRoom| {
            let told = ask(&Asks::of(&self.rooms[set.0], self.stock, self.limits), &set.1);
            (set, told)
        };
        sets.into_par_iter().with_max_len(1).map(ask).collect()
    }

    /// What was found of a set that the options have the sizes for; `None` where it is refused, which is kept.
    fn taken<T>(&mut self, first: usize, Told { result, solved }: Told<T>) -> Option<T> {
        let refused = match result {
            Ok(found) => return Some(found),
            Err(refused) => refused,
        };
        let trials = self.trials.entry(first).or_default();
        *trials += solved;
        let is_spent = *trials >= self.effort.sets;
        self.asked.refused += usize::from(refused.is_decided);
        self.refuse(first, refused);
        if is_spent {
            self.shut(first);
        }
        None
    }

    /// What a booking gets, each row by the first that is alike; `None` where nothing goes out.
    fn set_of(&self, room: usize, found: &Assignment) -> Option<InRoom> {
        let furnished = found.rooms.get(room).filter(|furnished| furnished.option.is_some())?;
        let pick = |(asked, by): (usize, By)| match by {
            By::Stock { row } => Some(first_alike(&self.rooms[room], self.stock, Pick { asked, row })),
            _ => None,
        };
        let set = furnished.asked.iter().map(|one| one.by).enumerate().filter_map(pick);
        Some((self.first[room], set.collect()))
    }

    /// Plans each room with what it is to get; whether any set was refused.
    fn lay_out(&mut self, found: &Assignment) -> bool {
        let sets = self.sets_of(found).into_iter().filter(|set| !self.plans.contains_key(set)).collect();
        let mut any = false;
        for (set, told) in self.each(sets, |asks, set| asks.lay_out(set)) {
            match self.taken(set.0, told) {
                Some(plan) => drop(self.plans.insert(set, plan)),
                None => any = true,
            }
        }
        any
    }

    fn refuse(&mut self, first: usize, refused: RefusedSet) {
        self.asked.not_decided += usize::from(!refused.is_decided);
        self.add(first, &|room| room.refused.push(refused.clone()));
    }

    /// The work of a room is spent: nothing goes to it, since its sets were not all laid out.
    fn shut(&mut self, first: usize) {
        self.asked.spent = true;
        for asked in self.rooms[first].main_seats() {
            for row in 0..self.stock.len() {
                let places = (0..self.rooms[first].asked().len()).filter(|place| *place != asked);
                let beside = places.flat_map(|asked| (0..self.stock.len()).map(move |row| Pick { asked, row }));
                let refused =
                    RefusedSet { picks: vec![Pick { asked, row }], beside: beside.collect(), is_decided: false };
                self.add(first, &|room| room.refused.push(refused.clone()));
            }
        }
    }

    /// Asks until nothing is built on hope or the effort is spent; whether any set was found to fit.
    fn ask_for_more(&mut self, start: &Assignment) -> bool {
        let before = self.asked.fitting;
        loop {
            let (stated, solved) = hoped(&self.rooms, self.stock, start, Refusals::All, self.effort.work);
            let built = Built { rooms: &self.rooms, stock: self.stock, first: &self.first, stated: &stated };
            let mut sets = built.on_hope(&solved, &self.known);
            if sets.is_empty() {
                break;
            }
            // A program that is not solved to its end may build on what is known already.
            sets.retain(|set| !self.known.contains(set));
            if sets.is_empty() || self.asked.solved >= self.effort.sets {
                self.asked.spent = true;
                break;
            }
            self.known.extend(sets.iter().cloned());
            self.ask(sets);
        }
        self.asked.fitting > before
    }

    /// Asks the solver of these, side by side.
    fn ask(&mut self, sets: Vec<InRoom>) {
        for ((first, _), Told { result, .. }) in self.each(sets, |asks, set| asks.ask(set)) {
            self.asked.solved += 1;
            match result {
                Ok(found) => {
                    self.asked.fitting += 1;
                    self.add(first, &|room| room.sets.push(found.clone()));
                }
                Err(refused) => self.refuse(first, refused),
            }
        }
    }

    /// Changes the room of all bookings of it.
    fn add(&mut self, first: usize, change: &dyn Fn(&mut StockRoom)) {
        let mut changed: Vec<(Arc<StockRoom>, Arc<StockRoom>)> = Vec::new();
        for (asking, _) in self.rooms.iter_mut().zip(&self.first).filter(|(_, of)| **of == first) {
            let known = changed.iter().find(|(was, _)| Arc::ptr_eq(was, &asking.room)).map(|(_, now)| Arc::clone(now));
            let now = known.unwrap_or_else(|| {
                let mut room = StockRoom::clone(&asking.room);
                change(&mut room);
                Arc::new(room)
            });
            changed.push((std::mem::replace(&mut asking.room, Arc::clone(&now)), now));
        }
    }

    /// What was found, with what was asked and what can be at most by that, and the plan of each room.
    fn staged(mut self, found: Assignment) -> Staged {
        let plan = |room: usize| self.plans.get(&self.set_of(room, &found)?).cloned();
        let plans = (0..self.rooms.len()).map(plan).collect();
        let found = proof::told(&self.rooms, self.stock, found, self.effort.work);
        let found = Assignment { sets: std::mem::take(&mut self.asked), ..found };
        Staged { rooms: self.rooms, found, plans }
    }
}

/// Whether two bookings are of one room, or of rooms that are alike.
fn is_same_room(one: &Arc<StockRoom>, other: &Arc<StockRoom>) -> bool {
    Arc::ptr_eq(one, other) || (one.answer.asked == other.answer.asked && one == other)
}
