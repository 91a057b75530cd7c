//! The plans of picked sets: the very pieces stand in them, and both checks find every rule kept.

use elbowroom_solver::Limits;
use elbowroom_solver::answer::Answer;
use elbowroom_solver::arrangement::Arrangement;
use elbowroom_solver::stock::{Asking, By, Days, Furnished, Owned, assign, plans};
use elbowroom_solver::verify::{CheckedRoom, verify};

use super::enumeration::WORK;
use super::{asking, drawn};
use crate::support::checker::{self, Part};
use crate::support::varied::Draw;
use crate::verify::told;

/// Draws of a stock, the rooms that each serves, and its rows.
const DRAWS: u64 = 6;
const ROOMS: u64 = 3;
const ROWS: usize = 14;

/// The first option of a plan keeps every rule, and those of comfort too where it says so.
pub(super) fn assert_kept(plan: &Answer) {
    let (brief, best) = (&plan.brief, &plan.options[0]);
    let json = told(brief, &best.layout.placed, &best.routes);
    for part in [Part::Places, Part::Routes] {
        assert_eq!(checker::of_part(brief, &json, part), Vec::<String>::new(), "{}", best.key);
    }
    if best.eased.is_empty() {
        assert_eq!(checker::of_part(brief, &json, Part::Comfort), Vec::<String>::new(), "{}", best.key);
    }
    let (key, choices, main_seat) = (best.key.clone(), best.choices.clone(), best.main_seat);
    let arrangement = Arrangement { key, choices, main_seat, standings: Vec::new() };
    let broken = verify(&CheckedRoom::of(brief), &best.layout, &arrangement, &best.routes);
    assert!(broken.is_empty(), "{}: {broken:?}", best.key);
}

/// Each picked piece that stands has its own size.
fn assert_own_sizes(plan: &Answer, (asking, furnished): (&Asking, &Furnished), stock: &[Owned]) -> usize {
    let mut picked = 0;
    for (asked, fulfilled) in asking.asked().iter().zip(&furnished.asked) {
        let By::Stock { row } = fulfilled.by else { continue };
        let (name, own) = (asking.room.answer.asked.piece_name(asked.pieces[0]), &stock[row].piece);
        let found = plan.options[0].pieces(&plan.brief).find(|found| found.piece.name == name);
        let Some(found) = found else { continue };
        let size = found.placed.size;
        assert!((size.width - own.width).abs() < 0.5 && (size.depth - own.depth).abs() < 0.5, "{name}: {size:?}");
        picked += 1;
    }
    picked
}

#[test]
fn the_plan_of_every_picked_set_keeps_every_rule() {
    let (mut plans_seen, mut pieces_seen) = (0, 0);
    for seed in 0..DRAWS {
        let mut draw = Draw(seed);
        let rooms: Vec<Asking> =
            (0..ROOMS).map(|room| asking(ROOMS * seed + room, Days { from: 0, to: 0 }, 1)).collect();
        let stock: Vec<Owned> = (0..ROWS).map(|place| drawn(&mut draw, place)).collect();
        let found = assign(&rooms, &stock, WORK);
        let planned = plans(&rooms, &stock, &found, &Limits { shown: 0, ..Limits::default() });
        for ((asking, furnished), plan) in rooms.iter().zip(&found.rooms).zip(planned) {
            let Some(plan) = plan.filter(|plan| !plan.options.is_empty()) else { continue };
            assert_kept(&plan);
            pieces_seen += assert_own_sizes(&plan, (asking, furnished), &stock);
            plans_seen += 1;
        }
    }
    assert!(plans_seen >= 8 && pieces_seen >= 2 * plans_seen, "{plans_seen} plans, {pieces_seen} pieces");
}
