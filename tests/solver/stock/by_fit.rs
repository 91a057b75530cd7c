//! Where fit is asked of the solver: as many must-haves are served as an enumeration serves that solves every set in its
//! room by itself.

use std::cell::RefCell;
use std::collections::BTreeMap;

use elbowroom_model::listing::ListedPiece;
use elbowroom_model::{Brief, PieceId, PieceKind, SizeRange};
use elbowroom_solver::stock::{Asking, By, Days, Effort, Owned, Staged, assign, assign_by_fit, plans};
use elbowroom_solver::{Limits, Unwatched, rank};

use super::enumeration::WORK;
use super::planned::assert_kept;
use super::{asking_for, owned};
use crate::support::varied::Draw;

pub(super) const EFFORT: Effort = Effort { work: WORK, sets: 200 };
const KINDS: [PieceKind; 3] = [PieceKind::Sofa, PieceKind::CoffeeTable, PieceKind::MediaUnit];

pub(super) fn limits() -> Limits {
    Limits { shown: 0, ..Limits::default() }
}

/// A room so small that a deep sofa leaves little for the table and the bench.
fn tight(width: u64, depth: u64) -> String {
    format!(
        "units: cm\nwalls:\n  - {{ name: north, length: {width}, keep_free: [sofa, media-unit] }}\n  \
         - {{ name: east, length: {depth}, keep_free: [sofa, media-unit], holds: [{{ kind: door, at: {}, width: 80, \
         hinge: right, swings: out, leads_to: entrance }}] }}\n  - {{ name: south, length: {width} }}\n  \
         - {{ name: west, length: {depth} }}\npieces:\n  - {{ kind: sofa, width: 180..260, depth: 80..120 }}\n  \
         - {{ kind: coffee-table, width: 60..140, depth: 40..90 }}\n  \
         - {{ kind: media-unit, screen: 50 in, width: 120..200, depth: 30..60 }}\n",
        depth - 90
    )
}

pub(super) fn now() -> Days {
    Days { from: 0, to: 0 }
}

fn set(sofa: [f64; 2], table: [f64; 2], unit: [f64; 2]) -> Vec<Owned> {
    let sizes = KINDS.into_iter().zip([sofa, table, unit]);
    sizes.map(|(kind, [width, depth])| owned(kind.key(), kind, (width * 10.0, None, depth * 10.0), 1)).collect()
}

pub(super) fn must_served(found: &elbowroom_solver::stock::Assignment) -> Vec<i64> {
    found.must.iter().map(|served| served.count.found).collect()
}

#[test]
fn a_set_that_no_option_holds_is_served_where_it_fits() {
    let rooms = [asking_for(&tight(420, 330), now(), 1)];
    for stock in [set([200.0, 119.0], [100.0, 42.0], [160.0, 32.0]), set([200.0, 95.0], [100.0, 50.0], [160.0, 55.0])] {
        let read_off = assign(&rooms, &stock, WORK);
        assert!(read_off.must[0].count.found < 3, "the options hold it: {read_off:?}");
        let Staged { rooms, found, plans: told } = assign_by_fit(&rooms, &stock, &limits(), EFFORT);
        assert_eq!((must_served(&found), found.is_proven(), found.sets.fitting), (vec![3], true, 1), "{found:?}");
        let plan = plans(&rooms, &stock, &found, &limits()).remove(0).unwrap();
        assert_eq!(told, [Some(plan.clone())]);
        assert_eq!(plan.options[0].layout.placed.len(), 3);
        assert_kept(&plan);
    }
}

#[test]
fn nothing_is_asked_where_every_must_have_is_served() {
    let rooms = [asking_for(&tight(420, 330), now(), 1)];
    let stock = set([190.0, 90.0], [80.0, 45.0], [130.0, 40.0]);
    let Staged { rooms: staged, found, .. } = assign_by_fit(&rooms, &stock, &limits(), EFFORT);
    assert_eq!((must_served(&found), found.sets.solved), (vec![3], 0));
    assert_eq!(staged[0].room, rooms[0].room);
}

/// Rooms alike, and pieces alike, are asked once.
#[test]
fn what_is_alike_is_asked_once() {
    let one = [asking_for(&tight(420, 330), now(), 1)];
    let stock = set([200.0, 119.0], [100.0, 42.0], [160.0, 32.0]);
    let alone = assign_by_fit(&one, &stock, &limits(), EFFORT).found;
    let three: Vec<Asking> = (0..3).map(|_| asking_for(&tight(420, 330), now(), 1)).collect();
    let stock: Vec<Owned> = stock.iter().cycle().take(9).cloned().collect();
    let found = assign_by_fit(&three, &stock, &limits(), EFFORT).found;
    assert_eq!((must_served(&found), found.sets), (vec![9], alone.sets));
}

#[test]
fn where_the_effort_is_spent_what_may_be_is_told() {
    let rooms = [asking_for(&tight(420, 330), now(), 1)];
    let stock = set([200.0, 119.0], [100.0, 42.0], [160.0, 32.0]);
    let found = assign_by_fit(&rooms, &stock, &limits(), Effort { sets: 0, ..EFFORT }).found;
    assert!(found.sets.spent && !found.is_proven(), "{found:?}");
    assert_eq!((found.must[0].count.found, found.must[0].count.at_most), (0, 3));
}

/// Whether rows of the stock fit in a room together, each asked of the solver once; all else is left out.
pub(super) struct Solver<'a> {
    brief: &'a Brief,
    stock: &'a [Owned],
    known: RefCell<BTreeMap<Vec<Option<usize>>, bool>>,
}

impl<'a> Solver<'a> {
    pub(super) fn of(asking: &'a Asking, stock: &'a [Owned]) -> Self {
        Self { brief: &asking.room.answer.asked, stock, known: RefCell::default() }
    }

    pub(super) fn fits(&self, rows: &[Option<usize>]) -> bool {
        if let Some(known) = self.known.borrow().get(rows) {
            return *known;
        }
        let mut brief = self.brief.clone();
        for (place, row) in rows.iter().enumerate().rev() {
            match row {
                Some(row) => {
                    let ListedPiece { width, depth, .. } = self.stock[*row].piece;
                    let piece = brief.piece_mut(PieceId(place)).unwrap();
                    (piece.width, piece.depth) = (SizeRange::fixed(width), SizeRange::fixed(depth));
                }
                None => drop(brief.pieces.remove(place)),
            }
        }
        let fits = !rank(&brief, &limits(), &Unwatched).options.is_empty();
        self.known.borrow_mut().insert(rows.to_vec(), fits);
        fits
    }

    /// Rows for each place, of the kind that is asked for and of sizes that are asked for.
    fn sets(&self) -> Vec<Vec<Option<usize>>> {
        let holds = |range: SizeRange, size: f64| (range.least..=range.most).contains(&size);
        let of = |place: usize| -> Vec<Option<usize>> {
            let asked = &self.brief.pieces[place];
            let can_be = |(_, owned): &(usize, &Owned)| {
                let ListedPiece { kind, width, depth, .. } = owned.piece;
                kind == asked.kind && holds(asked.width, width) && holds(asked.depth, depth)
            };
            let rows = self.stock.iter().enumerate().filter(can_be).map(|(row, _)| Some(row));
            rows.chain([None]).collect()
        };
        let mut sets = Vec::new();
        // Nothing goes out without the sofa.
        for sofa in of(0).into_iter().flatten() {
            for table in of(1) {
                for unit in of(2) {
                    let rows = vec![Some(sofa), table, unit];
                    if self.fits(&rows) {
                        sets.push(rows);
                    }
                }
            }
        }
        sets.push(vec![None; 3]);
        sets
    }
}

/// Must-haves of two rooms, of which the first comes first, in the best of all ways.
fn most(rooms: &[Asking], stock: &[Owned]) -> Vec<i64> {
    let sets: Vec<Vec<Vec<Option<usize>>>> = rooms.iter().map(|asking| Solver::of(asking, stock).sets()).collect();
    let count = |set: &[Option<usize>]| set.iter().flatten().count() as i64;
    let mut best = vec![0, 0];
    for one in &sets[0] {
        for other in &sets[1] {
            let shares = one.iter().flatten().any(|row| other.contains(&Some(*row)));
            if !shares {
                best = best.max(vec![count(one), count(other)]);
            }
        }
    }
    best
}

#[test]
fn as_many_must_haves_are_served_as_by_every_set_solved_by_itself() {
    let (mut more, mut refused) = (0, 0);
    for seed in 0..40 {
        let mut draw = Draw(seed);
        let mut room = |priority| asking_for(&tight(draw.from(34, 44) * 10, draw.from(27, 34) * 10), now(), priority);
        let rooms = [room(1), room(2)];
        if rooms.iter().any(|asking| asking.room.has_no_option()) {
            continue;
        }
        let mut piece = |kind| {
            let (width, depth) = match kind {
                PieceKind::Sofa => (draw.from(18, 26), draw.from(8, 12)),
                PieceKind::CoffeeTable => (draw.from(6, 14), draw.from(4, 9)),
                _ => (draw.from(12, 20), draw.from(3, 6)),
            };
            owned(kind.key(), kind, (width as f64 * 100.0, None, depth as f64 * 100.0), 1)
        };
        let stock: Vec<Owned> = KINDS.into_iter().flat_map(|kind| [piece(kind), piece(kind)]).collect();
        let read_off = assign(&rooms, &stock, WORK);
        let Staged { rooms: staged, found, plans } = assign_by_fit(&rooms, &stock, &limits(), EFFORT);
        assert!(found.must.iter().all(|served| served.count.is_proven()), "seed {seed}: {found:?}");
        assert_eq!(must_served(&found), most(&rooms, &stock), "seed {seed}: {found:?}");
        more += usize::from(must_served(&found) > must_served(&read_off));
        refused += usize::from(found.sets.solved > found.sets.fitting);
        for (asking, (one, plan)) in staged.iter().zip(found.rooms.iter().zip(plans)) {
            let picked = one.asked.iter().filter(|one| matches!(one.by, By::Stock { .. })).count();
            assert_eq!(
                picked,
                plan.map_or(0, |plan| plan.options[0].layout.placed.len()),
                "{}",
                asking.room.answer.asked.room.name
            );
        }
    }
    assert!(more >= 4 && refused >= 4, "{more} rooms served by asking, {refused} with sets that do not fit");
}
