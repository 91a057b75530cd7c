//! Every way to hand out a small stock, tried one by one.

use elbowroom_model::PieceKind;
use elbowroom_solver::answer::{Answer, RankedOption};
use elbowroom_solver::stock::{Asked, Asking, By, Days, Owned, assign, more};

use super::{asking, asking_for, drawn, may_be, owned};
use crate::support::varied::Draw;

/// Most relaxations for a step of a part.
pub(super) const WORK: u64 = 10_000_000_000;

/// Rows of the stock for each thing that each room asks for.
type Handed = Vec<Vec<Option<usize>>>;

/// Must-haves served by priority, then points: what is compared, in this order.
pub(super) type Worth = (Vec<i64>, i64);

/// Whether the rows that a room gets fit there.
type Fits<'a> = dyn Fn(usize, &[Option<usize>]) -> bool + 'a;

/// The best of all ways to hand out the stock by the sizes of the options alone.
pub(super) fn best(rooms: &[Asking], stock: &[Owned]) -> Worth {
    best_of(rooms, stock, &|_, _| true)
}

/// The best of all ways to hand out the stock in which each room gets what fits.
pub(super) fn best_of(rooms: &[Asking], stock: &[Owned], fits: &Fits<'_>) -> Worth {
    let places: Vec<(usize, usize)> = rooms
        .iter()
        .enumerate()
        .flat_map(|(room, asking)| (0..asking.asked().len()).map(move |asked| (room, asked)))
        .collect();
    let mut handed: Handed = rooms.iter().map(|asking| vec![None; asking.asked().len()]).collect();
    let mut best = (vec![0; priorities(rooms).len()], 0);
    hand_out((rooms, stock, fits), &places, &mut handed, &mut best);
    best
}

fn hand_out(
    (rooms, stock, fits): (&[Asking], &[Owned], &Fits<'_>),
    places: &[(usize, usize)],
    handed: &mut Handed,
    best: &mut Worth,
) {
    let Some(((room, asked), rest)) = places.split_first() else {
        let worth = worth(rooms, stock, handed).unwrap_or_default();
        if worth > *best && handed.iter().enumerate().all(|(room, rows)| fits(room, rows)) {
            *best = worth;
        }
        return;
    };
    for row in std::iter::once(None).chain((0..stock.len()).map(Some)) {
        handed[*room][*asked] = row;
        if row.is_none() || is_kept(rooms, stock, handed, *room) {
            hand_out((rooms, stock, fits), rest, handed, best);
        }
    }
    handed[*room][*asked] = None;
}

/// The room's pieces fit side by side in one of its options, and no piece is in two places on one day.
fn is_kept(rooms: &[Asking], stock: &[Owned], handed: &Handed, room: usize) -> bool {
    option_score(&rooms[room], stock, &handed[room]).is_some()
        && (0..60).all(|day| day_is_kept(rooms, stock, handed, day))
}

fn day_is_kept(rooms: &[Asking], stock: &[Owned], handed: &Handed, day: i32) -> bool {
    let mut used = vec![0; stock.len()];
    for (asking, rows) in
        rooms.iter().zip(handed).filter(|(asking, _)| (asking.days.from..=asking.days.to).contains(&day))
    {
        for (asked, row) in asking.asked().iter().zip(rows) {
            if let Some(row) = row {
                used[*row] += asked.pieces.len() as u32;
            }
        }
    }
    let out = |owned: &Owned| -> u32 {
        owned.away.iter().filter(|away| (away.days.from..=away.days.to).contains(&day)).map(|away| away.count).sum()
    };
    stock.iter().zip(used).all(|(owned, used)| used == 0 || used + out(owned) <= owned.piece.count)
}

/// The best score among the options that all pieces of the room fit in.
fn option_score(asking: &Asking, stock: &[Owned], rows: &[Option<usize>]) -> Option<i64> {
    let asked = asking.asked();
    let fits = |option: &(&Answer, &RankedOption)| {
        let mut handed = asked.iter().zip(rows).filter_map(|(asked, row)| Some((asked, (*row)?)));
        handed.all(|(asked, row)| may_be(*option, asked.pieces[0], &stock[row]))
    };
    asking.room.options().filter(fits).map(|(_, option)| option.score.round() as i64).max()
}

/// Places in what a room asks for of the main seats of its options, by their names.
pub(super) fn main_seats(asking: &Asking) -> Vec<usize> {
    let is_main_of = |answer: &Answer, asked: &Asked| {
        let mains: Vec<&str> = answer.options.iter().map(|it| answer.brief.piece_name(it.main_seat)).collect();
        asked.pieces.iter().any(|id| mains.contains(&answer.asked.piece_name(*id)))
    };
    let is_main = |asked: &Asked| asking.room.answers().any(|answer| is_main_of(answer, asked));
    asking.asked().iter().enumerate().filter(|(_, asked)| is_main(asked)).map(|(place, _)| place).collect()
}

/// The priorities of the rooms, the first one first.
pub(super) fn priorities(rooms: &[Asking]) -> Vec<u32> {
    let mut all: Vec<u32> = rooms.iter().map(|asking| asking.priority).collect();
    all.sort_unstable();
    all.dedup();
    all
}

/// What pieces of a row bring where they stand: 100 for each that stands there, up to 50 for its size against the most
/// that is asked for, up to 50 for its score; of another kind than is asked for, 50 less.
pub(super) fn points_of(asking: &Asking, asked: &Asked, owned: &Owned) -> i64 {
    let mut all = asking.room.answers().map(|answer| answer.asked.piece(asked.pieces[0]).unwrap());
    let (wanted, listed) = (all.clone().next().unwrap(), &owned.piece);
    let piece = all.find(|piece| piece.kind == listed.kind).unwrap();
    let standing = if piece.kind == wanted.kind { 100.0 } else { 50.0 };
    let mut sizes = vec![(listed.width, piece.width), (listed.depth, piece.depth)];
    sizes.extend(listed.return_length.zip(piece.return_length));
    let has: f64 = sizes.iter().map(|(size, range)| range.value(*size)).sum();
    let most: f64 = sizes.iter().map(|(_, range)| range.value(range.most)).sum();
    let size = if most > 0.0 { has / most } else { 1.0 };
    let each = (standing + 50.0 * size + listed.score.map_or(25.0, |score| score / 2.0)).round() as i64;
    each * asked.pieces.len() as i64
}

/// What an assignment is worth; `None` where something does not fit or is used twice.
fn worth(rooms: &[Asking], stock: &[Owned], handed: &Handed) -> Option<Worth> {
    let priorities = priorities(rooms);
    let (mut must, mut points) = (vec![0; priorities.len()], 0);
    for (room, asking) in rooms.iter().enumerate() {
        if asking.room.has_no_option() {
            continue;
        }
        if !main_seats(asking).iter().any(|place| handed[room][*place].is_some()) {
            // Nothing goes out without a seat to stage the room about.
            if handed[room].iter().any(Option::is_some) {
                return None;
            }
            continue;
        }
        let step = priorities.iter().position(|priority| *priority == asking.priority).unwrap();
        let weight = (priorities.len() - step) as i64;
        points += weight * option_score(asking, stock, &handed[room])?;
        for (asked, row) in asking.asked().iter().zip(&handed[room]) {
            let Some(row) = row else { continue };
            must[step] += i64::from(asked.must);
            points += weight * points_of(asking, asked, &stock[*row]);
        }
    }
    (0..60).all(|day| day_is_kept(rooms, stock, handed, day)).then_some((must, points))
}

#[test]
fn small_stocks_are_handed_out_as_an_enumeration_does() {
    let solved: Vec<Asking> = (0..6).map(|number| asking(number, Days { from: 0, to: 0 }, 1)).collect();
    for seed in 0..40 {
        let mut draw = Draw(seed);
        let rooms: Vec<Asking> = (0..3)
            .map(|_| {
                let from = draw.from(0, 12) as i32;
                let days = Days { from, to: from + draw.from(0, 10) as i32 };
                Asking { days, priority: draw.from(1, 2) as u32, ..solved[draw.from(0, 5) as usize].clone() }
            })
            .collect();
        let stock: Vec<Owned> = (0..draw.from(4, 7) as usize).map(|place| drawn(&mut draw, place)).collect();
        let found = assign(&rooms, &stock, WORK);
        assert!(found.is_proven(), "seed {seed}: {found:?}");
        let must = found.must.iter().map(|served| served.count.found).collect();
        assert_eq!((must, found.points.found), best(&rooms, &stock), "seed {seed}");
        // What is told is what was counted.
        let row_of = |by: &By| if let By::Stock { row } = by { Some(*row) } else { None };
        let handed: Handed =
            found.rooms.iter().map(|room| room.asked.iter().map(|one| row_of(&one.by)).collect()).collect();
        let told = worth(&rooms, &stock, &handed).expect("a piece that does not fit, or in two rooms on one day");
        assert_eq!(told, best(&rooms, &stock), "seed {seed}");
    }
}

#[test]
fn one_more_piece_brings_what_an_enumeration_says() {
    let solved: Vec<Asking> = (0..4).map(|number| asking(number, Days { from: 0, to: 0 }, 1)).collect();
    for seed in 100..108 {
        let mut draw = Draw(seed);
        let rooms: Vec<Asking> = (0..2).map(|_| solved[draw.from(0, 3) as usize].clone()).collect();
        let stock: Vec<Owned> = (0..3).map(|place| drawn(&mut draw, place)).collect();
        let found = assign(&rooms, &stock, WORK);
        let tried = more(&rooms, &stock, &found, WORK);
        let Some(one) = tried.best else { continue };
        let mut with = stock.clone();
        let size = (one.width, one.return_length, one.depth);
        assert!(one.like.is_none());
        with.push(owned("one more", one.kind, size, 1));
        with.last_mut().unwrap().piece.hands = one.hand.into_iter().collect();
        with.last_mut().unwrap().piece.seats = None;
        let (before, after) = (best(&rooms, &stock), best(&rooms, &with));
        assert_eq!((after.0[0] - before.0[0], after.1 - before.1), (one.must[0], one.points), "seed {seed}: {one:?}");
    }
}

/// Where the assignment is not proven, what a search only failed to find is not told as what a piece brings.
#[test]
fn one_more_piece_beside_an_assignment_that_is_not_proven_is_never_told_to_bring_more_than_it_does() {
    let solved: Vec<Asking> = (0..4).map(|number| asking(number, Days { from: 0, to: 0 }, 1)).collect();
    let mut unproven = 0;
    for seed in 100..112 {
        let mut draw = Draw(seed);
        let rooms: Vec<Asking> = (0..3).map(|_| solved[draw.from(0, 3) as usize].clone()).collect();
        let stock: Vec<Owned> = (0..4).map(|place| drawn(&mut draw, place)).collect();
        let mut found = assign(&rooms, &stock, WORK);
        // Nothing found, as if the work had been gone before anything was.
        found.rooms.iter_mut().flat_map(|room| &mut room.asked).for_each(|one| one.by = By::AllTaken);
        found.must.iter_mut().for_each(|served| served.count.found = 0);
        found.points.found = 0;
        unproven += usize::from(!found.is_proven());
        let Some(one) = more(&rooms, &stock, &found, WORK).best else { continue };
        let mut with = stock.clone();
        match one.like {
            Some(row) => with[row].piece.count += 1,
            None => {
                with.push(owned("one more", one.kind, (one.width, one.return_length, one.depth), 1));
                with.last_mut().unwrap().piece.hands = one.hand.into_iter().collect();
                with.last_mut().unwrap().piece.seats = None;
            }
        }
        let (before, after) = (best(&rooms, &stock), best(&rooms, &with));
        assert!((one.must[0], one.points) <= (after.0[0] - before.0[0], after.1 - before.1), "seed {seed}: {one:?}");
    }
    assert!(unproven > 0);
}

#[test]
fn one_more_makes_up_a_pair() {
    let text = "
units: cm
walls: [{ length: 520 }, { length: 440 }, { length: 520, holds: [{ kind: door, at: 20, width: 83, hinge: left, swings: in, leads_to: entrance }] }, { length: 440 }]
pieces:
  - { kind: sofa, width: 150..220 }
  - { kind: armchair, count: 2 }
";
    let brief = crate::support::ranked::brief_of(text);
    let must = brief.piece_ids().collect();
    let rooms = [Asking { must, ..asking_for(text, Days { from: 0, to: 0 }, 1) }];
    let of = |name, kind, size, count| owned(name, kind, size, count);
    let mut stock = vec![
        of("sofa", PieceKind::Sofa, (2000.0, None, 900.0), 1),
        of("lone chair", PieceKind::Armchair, (750.0, None, 800.0), 1),
        of("wide chair", PieceKind::Armchair, (4000.0, None, 800.0), 1),
    ];
    let found = assign(&rooms, &stock, WORK);
    let tried = more(&rooms, &stock, &found, WORK);
    let one = tried.best.expect("a second chair makes a pair");
    assert_eq!((one.like, tried.of, one.must.as_slice()), (Some(1), 1, &[1][..]));
    let before = best(&rooms, &stock);
    stock[1].piece.count = 2;
    let after = best(&rooms, &stock);
    assert_eq!((after.0[0] - before.0[0], after.1 - before.1), (1, one.points));
}

#[test]
fn a_must_have_comes_before_any_points_and_the_first_priority_before_the_second() {
    let base = asking(0, Days { from: 1, to: 5 }, 1);
    let place = base.must[0];
    let answer = &base.room.answer;
    let piece = answer.asked.piece(place).unwrap();
    let sizes = answer.options[0].sizes_of(answer.solved_as(place).unwrap()).unwrap();
    let size = (sizes.width.least, sizes.return_length.map(|range| range.least), sizes.depth.least);
    let stock = [owned("the only one", piece.kind, size, 1)];
    let later = Asking { priority: 2, ..base.clone() };
    let served = |rooms: &[Asking]| -> Vec<bool> {
        let found = assign(rooms, &stock, WORK);
        found.rooms.iter().map(|room| room.asked.iter().any(|one| matches!(one.by, By::Stock { .. }))).collect()
    };
    assert_eq!(served(&[later.clone(), base.clone()]), [false, true]);
    let idle = Asking { must: Vec::new(), ..base.clone() };
    assert_eq!(
        served(&[idle, later.clone()]),
        [false, true],
        "a must-have of the second priority before what need not be"
    );
    let after = Asking { days: Days { from: 6, to: 9 }, ..later };
    assert_eq!(served(&[after, base]), [true, true], "it is free again the day after");
}
