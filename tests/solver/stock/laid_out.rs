//! Nothing goes out as served that does not fit: sizes that an option allows one by one may not go together.

use elbowroom_model::PieceKind;
use elbowroom_solver::stock::{Asking, By, Owned, Staged, assign, assign_by_fit, plans};

use super::by_fit::{EFFORT, Solver, limits, must_served, now};
use super::enumeration::{WORK, best_of};
use super::planned::assert_kept;
use super::{asking, asking_for, drawn, owned};
use crate::support::varied::Draw;

/// A room whose sofa stands free, with a console behind it that is no longer than the sofa.
fn with_console(width: u64, depth: u64) -> String {
    let wall = |name: &str, length: u64, holds: &str| {
        format!("  - {{ name: {name}, length: {length}, keep_free: [sofa, console]{holds} }}\n")
    };
    let door = ", holds: [{ kind: door, at: 20, width: 80, hinge: left, swings: out, leads_to: entrance }]";
    format!(
        "units: cm\nwalls:\n{}{}{}{}pieces:\n  - {{ kind: sofa, width: 150..260, depth: 80..120 }}\n  \
         - {{ kind: console, at: sofa, width: 100..200, depth: 25..45 }}\n  \
         - {{ kind: coffee-table, width: 60..140, depth: 40..90 }}\n",
        wall("north", width, ""),
        wall("east", depth, door),
        wall("south", width, ""),
        wall("west", depth, ""),
    )
}

fn of(kind: PieceKind, width: f64, depth: f64) -> Owned {
    owned(kind.key(), kind, (width * 10.0, None, depth * 10.0), 1)
}

fn rows_of(asked: &[elbowroom_solver::stock::Fulfilled]) -> Vec<Option<usize>> {
    asked.iter().map(|one| if let By::Stock { row } = one.by { Some(row) } else { None }).collect()
}

#[test]
fn a_console_longer_than_its_sofa_is_not_served() {
    let rooms = [asking_for(&with_console(520, 460), now(), 1)];
    let mut stock = vec![
        of(PieceKind::Sofa, 170.0, 90.0),
        of(PieceKind::Console, 190.0, 35.0),
        of(PieceKind::CoffeeTable, 100.0, 60.0),
    ];
    // By the sizes of the options alone the console would go out.
    assert_eq!(must_served(&assign(&rooms, &stock, WORK)), [3]);
    let Staged { found, plans, .. } = assign_by_fit(&rooms, &stock, &limits(), EFFORT);
    assert_eq!((must_served(&found), found.is_proven()), (vec![2], true), "{found:?}");
    assert!(found.sets.refused > 0, "{found:?}");
    assert_eq!(rows_of(&found.rooms[0].asked), [Some(0), None, Some(2)]);
    assert_eq!(found.rooms[0].asked[1].by, By::NoneFitsBeside);
    let plan = plans[0].as_ref().unwrap();
    assert_eq!(plan.options[0].layout.placed.len(), 2);
    assert_kept(plan);
    // A table lower than is usual helps no console either, and the sofa goes out with it.
    let mut low = stock.clone();
    low[2].piece.height = Some(340.0);
    let beside_low = assign_by_fit(&rooms, &low, &limits(), EFFORT).found;
    assert_eq!(rows_of(&beside_low.rooms[0].asked), [Some(0), None, Some(2)], "{beside_low:?}");
    assert_eq!((must_served(&beside_low), beside_low.is_proven()), (vec![2], true), "{beside_low:?}");
    // One that is shorter is found behind it, and a longer sofa has the long one.
    stock.push(of(PieceKind::Console, 160.0, 35.0));
    let shorter = assign_by_fit(&rooms, &stock, &limits(), EFFORT).found;
    assert_eq!((must_served(&shorter), rows_of(&shorter.rooms[0].asked)), (vec![3], vec![Some(0), Some(3), Some(2)]));
    stock[3] = of(PieceKind::Sofa, 210.0, 90.0);
    let longer = assign_by_fit(&rooms, &stock, &limits(), EFFORT).found;
    assert_eq!((must_served(&longer), rows_of(&longer.rooms[0].asked)), (vec![3], vec![Some(3), Some(1), Some(2)]));
}

/// Two rooms, of which the one comes first, of sofas, consoles behind them and tables: what is served is the best of all
/// that fits when it is laid out, each set by itself.
#[test]
fn what_is_served_is_the_best_of_all_that_fits() {
    let mut refused = 0;
    for seed in 0..24 {
        let mut draw = Draw(seed);
        let mut room =
            |priority| asking_for(&with_console(draw.from(40, 52) * 10, draw.from(34, 44) * 10), now(), priority);
        let rooms = [room(1), room(2)];
        if rooms.iter().any(|asking| asking.room.has_no_option()) {
            continue;
        }
        let mut piece = |kind| match kind {
            PieceKind::Sofa => of(kind, draw.from(15, 22) as f64 * 10.0, draw.from(8, 12) as f64 * 10.0),
            PieceKind::Console => of(kind, draw.from(14, 20) as f64 * 10.0, draw.from(25, 45) as f64),
            _ => of(kind, draw.from(6, 14) as f64 * 10.0, draw.from(4, 9) as f64 * 10.0),
        };
        let kinds = [PieceKind::Sofa, PieceKind::Console, PieceKind::CoffeeTable];
        let stock: Vec<Owned> = kinds.into_iter().flat_map(|kind| [piece(kind), piece(kind)]).collect();
        let Staged { rooms: staged, found, .. } = assign_by_fit(&rooms, &stock, &limits(), EFFORT);
        let solvers: Vec<Solver<'_>> = rooms.iter().map(|asking| Solver::of(asking, &stock)).collect();
        let fits = |room: usize, rows: &[Option<usize>]| rows.iter().all(Option::is_none) || solvers[room].fits(rows);
        assert!(found.is_proven(), "seed {seed}: {found:?}");
        let told = (must_served(&found), found.points.found);
        assert_eq!(told, best_of(&staged, &stock, &fits), "seed {seed}: {found:?}");
        assert!(found.rooms.iter().enumerate().all(|(room, it)| fits(room, &rows_of(&it.asked))), "seed {seed}");
        refused += found.sets.refused;
    }
    assert!(refused > 20, "{refused} sets refused");
}

/// Whatever is told as served stands in the plan that is told with it, at its own size, with every rule kept.
#[test]
fn every_set_that_is_told_has_its_plan() {
    let mut pieces = 0;
    for seed in 0..8 {
        let mut draw = Draw(seed);
        let rooms: Vec<Asking> = (0..3).map(|room| asking(3 * seed + room, now(), 1)).collect();
        let stock: Vec<Owned> = (0..14).map(|place| drawn(&mut draw, place)).collect();
        let Staged { rooms: staged, found, plans: told } = assign_by_fit(&rooms, &stock, &limits(), EFFORT);
        assert_eq!(told, plans(&staged, &stock, &found, &limits()), "seed {seed}");
        for (furnished, plan) in found.rooms.iter().zip(told) {
            let picked = furnished.asked.iter().filter(|one| matches!(one.by, By::Stock { .. }));
            let picked: usize = picked.map(|one| one.asked.pieces.len()).sum();
            assert_eq!(picked > 0, plan.is_some(), "seed {seed}");
            let Some(plan) = plan else { continue };
            let open = plan.brief.pieces.iter().filter(|piece| piece.kind.stays_open()).count();
            assert!(plan.options[0].layout.placed.len() >= picked + open, "seed {seed}: {furnished:?}");
            assert_kept(&plan);
            pieces += picked;
        }
    }
    assert!(pieces > 20, "{pieces} pieces");
}
