//! Branch and bound against brute force: small rooms whose best layout lies on a grid, so that trying every place of the
//! grid finds the very value that the search must find. `largest` holds the largest pieces to it, `planned` the plan.
//!
//! Rooms, blocks, ranges, aims and clearances are whole steps, walls are square and no route is asked for: then every
//! vertex of every program is a whole step too, or half a one. The brute force shares nothing with the solver but the value
//! of a size.

mod hall;
mod largest;
mod planned;

use elbowroom_model::{Brief, WallId};
use elbowroom_solver::Site;
use elbowroom_solver::arrangement::{Arrangement, enumerate};
use elbowroom_solver::routes::Floor;
use elbowroom_solver::search::{RoomContext, Searched};

use self::hall::{Hall, WALLS};
use crate::support::plan::Plan;
use crate::support::ranked::brief_of;

/// Nodes for one arrangement: enough to prove each of these.
const NODES: usize = 20_000;

/// From the seat's front to the screen's, steps.
const SCREEN: i32 = 15;
/// Before a bookcase, steps.
const FRONT: i32 = 6;

/// The wall behind the sofa, in the place it has among the walls, as the hall is seen with that wall at its back.
struct AtWall<'a> {
    wall: &'a str,
    hall: &'a Hall,
    brief: &'a Brief,
}

/// Every arrangement whose sofa is at a wall, searched, and told with the hall as that wall sees it; `faces` where the
/// screen must be at the wall opposite.
fn at_each_wall(
    hall: &Hall,
    plan: &Plan,
    faces: bool,
    search: impl Fn(&RoomContext<'_>, &Floor, &Arrangement) -> Searched,
    mut holds: impl FnMut(&AtWall<'_>, &[Searched]),
) {
    let brief = brief_of(&plan.text());
    let site = Site::of(&brief);
    let (room, floor) = (RoomContext::of(&brief, &site), Floor::of(&brief, &site));
    let arrangements = enumerate(&brief, &site).arrangements;
    let mut seen = hall.clone();
    for (turns, wall) in WALLS.into_iter().enumerate() {
        let opposite = Some(WallId((turns + 2) % WALLS.len()));
        let is_asked = |arrangement: &&Arrangement| {
            let choices = &arrangement.choices;
            choices.seat_back == Some(WallId(turns)) && (!faces || choices.media_wall == opposite)
        };
        let searched: Vec<_> = arrangements.iter().filter(is_asked).map(|it| search(&room, &floor, it)).collect();
        holds(&AtWall { wall, hall: &seen, brief: &brief }, &searched);
        seen = seen.turned();
    }
}
