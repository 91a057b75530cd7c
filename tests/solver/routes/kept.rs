//! What is kept of a floor for all layouts changes no width: the first route that is too narrow is the one that measuring each
//! from nothing finds.

use elbowroom_model::{Brief, Point, scenario};
use elbowroom_solver::arrangement::enumerate;
use elbowroom_solver::routes::{Demand, Floor, Widest, demands};
use elbowroom_solver::search::{Aim, Effort, RoomContext, search};
use elbowroom_solver::{Layout, Site};

use crate::support::varied::Draw;

/// The demo rooms, and those that stand for hard ones.
const FOLDERS: [&str; 2] =
    [concat!(env!("CARGO_MANIFEST_DIR"), "/../scenarios"), concat!(env!("CARGO_MANIFEST_DIR"), "/../benches/rooms")];

/// Pieces are moved by this at most in each direction, mm: far enough to block ways, and to stand in them.
const FURTHEST: u64 = 600;

/// Layouts made of each that was found.
const MOVED: usize = 8;

#[test]
fn the_first_way_that_is_too_narrow_is_the_one_that_measuring_each_finds() {
    let (mut draw, mut narrow, mut wide) = (Draw(7), 0, 0);
    for (name, brief) in rooms() {
        let site = Site::of(&brief);
        let (ground, floor) = (RoomContext::of(&brief, &site), Floor::of(&brief, &site));
        let needed: Vec<_> = brief.pieces().filter(|(_, piece)| piece.needed).map(|(id, _)| id).collect();
        let effort = Effort::of(Aim::These(&needed), 200);
        for arrangement in enumerate(&brief, &site).arrangements.iter().step_by(5) {
            let Some(found) = search(&ground, &floor, arrangement, effort).found else { continue };
            for _ in 0..MOVED {
                let layout = moved(&found.layout, &mut draw);
                let first = floor.first_too_narrow(&brief, &layout);
                let each = demands(&brief, &layout).into_iter();
                let mut each = each.map(|demand| (demand, floor.widest(&brief, &layout, &demand)));
                let expected = each.find(|(_, widest)| !widest.passes());
                let told = |found: Option<&(Demand, Widest)>| {
                    found.map(|(demand, widest)| (*demand, (widest.width * 1e6).round()))
                };
                assert_eq!(told(first.as_ref()), told(expected.as_ref()), "{name} {}: {layout:?}", arrangement.key);
                *(if first.is_some() { &mut narrow } else { &mut wide }) += 1;
            }
        }
    }
    assert!(narrow > 50 && wide > 20, "{narrow} too narrow, {wide} wide enough");
}

fn rooms() -> Vec<(String, Brief)> {
    let files = FOLDERS.iter().flat_map(|folder| std::fs::read_dir(folder).unwrap());
    let is_room = |path: &std::path::PathBuf| path.extension().is_some_and(|ending| ending == "yaml");
    let mut paths: Vec<_> = files.map(|file| file.unwrap().path()).filter(is_room).collect();
    paths.sort();
    let read = |path: &std::path::PathBuf| scenario::read(&std::fs::read_to_string(path).unwrap(), None).unwrap();
    paths.iter().map(|path| (path.display().to_string(), read(path))).collect()
}

/// The layout with each piece moved a little, or not.
fn moved(layout: &Layout, draw: &mut Draw) -> Layout {
    let mut layout = layout.clone();
    for placed in &mut layout.placed {
        let mut by = || if draw.one_in(2) { 0.0 } else { draw.from(0, 2 * FURTHEST) as f64 - FURTHEST as f64 };
        placed.anchor = placed.anchor + Point::new(by(), by());
    }
    layout
}
