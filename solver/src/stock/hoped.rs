//! What would be served if all that is as asked for fitted, but for what was refused; and the sets that are built on that.

use std::collections::BTreeSet;

use super::assign::{Solved, solve_for};
use super::hope::{are_alike, is_no_smaller};
use super::pick::{Pick, Set};
use super::statement::{Refusals, Statement, Use};
use super::{Asking, Assignment, Furnished, Owned};

/// A set in the room of a booking, the first of that room.
pub(super) type InRoom = (usize, Set);

/// Every must-have is served, and every room that anything fits in is staged.
pub(super) fn lacks_nothing(rooms: &[Asking], found: &Assignment) -> bool {
    let is_staged = |(asking, one): (&Asking, &Furnished)| one.option.is_some() || asking.room.has_no_option();
    found.must.iter().all(|served| served.count.found == served.of as i64)
        && rooms.iter().zip(&found.rooms).all(is_staged)
}

/// What would be served if all that is as asked for fitted, and as little as can be built on that, from `start`.
pub(super) fn hoped(
    rooms: &[Asking],
    stock: &[Owned],
    start: &Assignment,
    refusals: Refusals,
    work: u64,
) -> (Statement, Solved) {
    let stated = Statement::hoping(rooms, stock, refusals);
    let staged = stated.choices.iter().map(|choice| if stated.is_hoped_for(choice.0, choice.1) { 1 } else { 2 });
    let staged = std::iter::repeat_n(0, stated.uses.len()).chain(staged).collect();
    let solved = solve_for(rooms, &stated, staged, &stated.as_found(start), work);
    (stated, solved)
}

/// What a program with hopes means.
pub(super) struct Built<'a> {
    pub(super) rooms: &'a [Asking],
    pub(super) stock: &'a [Owned],
    /// Of each booking, the first of the same room.
    pub(super) first: &'a [usize],
    pub(super) stated: &'a Statement,
}

impl Built<'_> {
    /// The sets that are built on hope, each with the first booking of its room, once. Each piece is as small as is free,
    /// which fits as a rule where anything does; where that set is `known`, the very one that was built on.
    pub(super) fn on_hope(&self, solved: &Solved, known: &BTreeSet<InRoom>) -> Vec<InRoom> {
        let is_in = |variable: usize| solved.point.get(variable).copied().unwrap_or(false);
        let mut sets: Vec<Set> = vec![Vec::new(); self.rooms.len()];
        for (_, one) in self.stated.uses.iter().enumerate().filter(|(place, _)| is_in(*place)) {
            sets[one.room].push(Pick { asked: one.asked, row: one.row });
        }
        let mut once: Vec<InRoom> = Vec::new();
        for (place, (room, pattern)) in self.stated.choices.iter().enumerate() {
            if !is_in(self.stated.uses.len() + place) || !self.stated.is_hoped_for(*room, *pattern) {
                continue;
            }
            let own = sets[*room].clone();
            self.make_small(*room, &mut sets);
            let mut set = (self.first[*room], self.first_alike(*room, &sets[*room]));
            if known.contains(&set) {
                set.1 = self.first_alike(*room, &own);
                sets[*room] = own;
            }
            if !once.contains(&set) {
                once.push(set);
            }
        }
        once
    }

    fn first_alike(&self, room: usize, set: &Set) -> Set {
        set.iter().map(|pick| first_alike(&self.rooms[room], self.stock, *pick)).collect()
    }

    /// Makes each piece of a room as small as is free.
    fn make_small(&self, room: usize, sets: &mut [Set]) {
        for place in 0..sets[room].len() {
            let pick = sets[room][place];
            for one in self.stated.uses.iter().filter(|one| one.room == room && one.asked == pick.asked) {
                let both = self.stock.get(sets[room][place].row).zip(self.stock.get(one.row));
                let is_smaller = both.is_some_and(|(now, other)| {
                    is_no_smaller(&now.piece, &other.piece) && !are_alike(&now.piece, &other.piece)
                });
                if is_smaller && self.is_free(one, sets) {
                    sets[room][place].row = one.row;
                }
            }
        }
    }

    /// Whether a use has its pieces on every day of its booking beside what all `sets` take.
    fn is_free(&self, one: &Use, sets: &[Set]) -> bool {
        let (Some(owned), Some(asking)) = (self.stock.get(one.row), self.rooms.get(one.room)) else { return false };
        let begins = self.rooms.iter().map(|it| it.days.from).chain(owned.away.iter().map(|away| away.days.from));
        let mut days = begins.filter(|day| asking.days.hold(*day)).chain([asking.days.from]);
        days.all(|day| {
            let there = self.rooms.iter().zip(sets).filter(|(it, _)| it.days.hold(day));
            let used: u32 = there.map(|(it, set)| used(it, set, one.row)).sum();
            used + one.count <= owned.there_on(day)
        })
    }
}

/// The pick by the first row that a room cannot tell from its own, and that can be carried in where that can.
pub(super) fn first_alike(asking: &Asking, stock: &[Owned], pick: Pick) -> Pick {
    let is_like = |(row, owned): (usize, &Owned)| {
        asking.room.lets_in(row) == asking.room.lets_in(pick.row)
            && stock.get(pick.row).is_some_and(|it| are_alike(&it.piece, &owned.piece))
    };
    Pick { row: stock.iter().enumerate().position(is_like).unwrap_or(pick.row), ..pick }
}

/// How many of a row a set takes.
fn used(asking: &Asking, set: &Set, row: usize) -> u32 {
    let asked = asking.asked();
    let of = set.iter().filter(|pick| pick.row == row).filter_map(|pick| asked.get(pick.asked));
    u32::try_from(of.map(|asked| asked.pieces.len()).sum::<usize>()).unwrap_or(u32::MAX)
}
