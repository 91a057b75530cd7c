//! The judge of plans, judged: for each mark a plan that has it and one, a hand's breadth away, that has not.
//!
//! Plans are made by hand: a room 6 by 5 m with a sofa at its south wall, looking north at the screen, two armchairs
//! mirrored about its table, a lamp and a side table at its ends, a rug; and one with a corner sofa in its south-west corner.

mod before;
mod behind;
mod group;
mod laid;
mod reads;
mod screen;

use crate::support::checker::plane::{P, Polygon};
use crate::support::judge::room::{Block, Doorway, Room};
use crate::support::judge::standing::{Sizes, Standing};
use crate::support::judge::{Kept, Mark, Scene, odd};

const EAST: f64 = 0.0;
const NORTH: f64 = 90.0;
const WEST: f64 = 180.0;
const SOUTH: f64 = 270.0;

/// Unit vector of a compass direction of the plan.
fn way(degrees: f64) -> P {
    [degrees.to_radians().cos().round(), degrees.to_radians().sin().round()]
}

fn block(low: P, high: P) -> Polygon {
    vec![low, [high[0], low[1]], high, [low[0], high[1]]]
}

/// A piece that stands free, with the middle of its back here.
fn piece(kind: &str, [x, y]: P, degrees: f64, [width, depth]: P) -> Standing {
    let facing = way(degrees);
    let [half_x, half_y] = [facing[1], facing[0]].map(|share| (share * width / 2.0).abs());
    let front = [x + facing[0] * depth, y + facing[1] * depth];
    let low = [x.min(front[0]) - half_x, y.min(front[1]) - half_y];
    let high = [x.max(front[0]) + half_x, y.max(front[1]) + half_y];
    let height = match kind {
        "rug" => 0.0,
        "coffee-table" => 430.0,
        "side-table" => 550.0,
        "media-unit" => 500.0,
        "bookcase" => 1800.0,
        "floor-lamp" => 1550.0,
        _ => 850.0,
    };
    Standing {
        name: kind.to_owned(),
        kind: kind.to_owned(),
        parts: vec![block(low, high)],
        facing,
        height,
        at_wall: None,
        chaise: false,
        least: Sizes::default(),
    }
}

/// The room, with a door at the north end of its east wall.
fn room() -> Room {
    let door = Doorway {
        name: "door".to_owned(),
        ends: [[6000.0, 3000.0], [6000.0, 3830.0]],
        inward: [-1.0, 0.0],
        may_be_backed: false,
    };
    Room {
        outline: block([0.0, 0.0], [6000.0, 5000.0]),
        doorways: vec![door],
        windows: Vec::new(),
        heaters: Vec::new(),
        hearths: Vec::new(),
        blocks: Vec::new(),
    }
}

const KEPT: Kept = Kept { seat_to_table: 400.0, walkway: 900.0 };

/// The plan with the sofa, odd in nothing.
fn living() -> Scene {
    let named = |name: &str, piece: Standing| Standing { name: name.to_owned(), ..piece };
    let sofa = piece("sofa", [3000.0, 50.0], NORTH, [2100.0, 950.0]);
    let pieces = vec![
        Standing { at_wall: Some("south wall".to_owned()), ..sofa },
        named("west chair", piece("armchair", [975.0, 1700.0], EAST, [900.0, 950.0])),
        named("east chair", piece("armchair", [5025.0, 1700.0], WEST, [900.0, 950.0])),
        piece("coffee-table", [3000.0, 1400.0], NORTH, [1000.0, 600.0]),
        piece("media-unit", [3000.0, 4950.0], SOUTH, [1600.0, 450.0]),
        piece("floor-lamp", [1715.0, 350.0], NORTH, [350.0, 350.0]),
        piece("side-table", [4335.0, 350.0], NORTH, [450.0, 450.0]),
        piece("rug", [3000.0, 500.0], NORTH, [3000.0, 2400.0]),
    ];
    Scene { room: room(), kept: KEPT, pieces, main: Some(0) }
}

/// The plan with the corner sofa: its return along the west wall, its bay from 1050 to 2350 mm, screen on the bay's axis.
fn cornered() -> Scene {
    let run = piece("corner-sofa", [1200.0, 50.0], NORTH, [2300.0, 1000.0]);
    let sofa = Standing {
        parts: vec![run.parts[0].clone(), block([50.0, 1050.0], [1050.0, 2350.0])],
        at_wall: Some("south wall".to_owned()),
        ..run
    };
    let pieces = vec![
        sofa,
        piece("coffee-table", [1700.0, 1450.0], NORTH, [500.0, 600.0]),
        piece("media-unit", [1700.0, 4950.0], SOUTH, [1600.0, 450.0]),
        piece("armchair", [4000.0, 1750.0], WEST, [900.0, 950.0]),
        piece("floor-lamp", [550.0, 2410.0], NORTH, [350.0, 350.0]),
    ];
    Scene { room: room(), kept: KEPT, pieces, main: Some(0) }
}

impl Scene {
    /// With a piece moved.
    fn moved(mut self, name: &str, [x, y]: P) -> Self {
        let piece = self.pieces.iter_mut().find(|piece| piece.name == name).unwrap();
        piece.parts.iter_mut().flatten().for_each(|corner| *corner = [corner[0] + x, corner[1] + y]);
        self
    }

    /// With all but the screen moved away from the south wall.
    fn moved_out(self, by: f64) -> Self {
        let names: Vec<String> = self.pieces.iter().map(|piece| piece.name.clone()).collect();
        let group = names.iter().filter(|name| *name != "media-unit");
        group.fold(self, |scene, name| scene.moved(name, [0.0, by]))
    }

    /// With a piece that stands otherwise, under its old name and at its old wall.
    fn with(mut self, name: &str, other: Standing) -> Self {
        let piece = self.pieces.iter_mut().find(|piece| piece.name == name).unwrap();
        *piece = Standing { name: name.to_owned(), at_wall: piece.at_wall.take(), ..other };
        self
    }

    /// With one more piece.
    fn and(mut self, piece: Standing) -> Self {
        self.pieces.push(piece);
        self
    }

    fn without(mut self, name: &str) -> Self {
        self.pieces.retain(|piece| piece.name != name);
        self
    }

    /// With the main seat at no wall.
    fn free(mut self) -> Self {
        self.pieces[0].at_wall = None;
        self
    }

    /// With a change to the room.
    fn in_room(mut self, change: impl FnOnce(&mut Room)) -> Self {
        change(&mut self.room);
        self
    }

    /// With a fixed thing.
    fn fixed(self, low: P, high: P, height: f64) -> Self {
        let fixed = Block { name: "counter".to_owned(), shape: block(low, high), height };
        self.in_room(|room| room.blocks.push(fixed))
    }

    fn has(&self, mark: Mark) -> bool {
        odd(self).iter().any(|odd| odd.mark == mark)
    }
}

/// The plan is odd in this alone.
#[track_caller]
fn only(mark: Mark, scene: &Scene) {
    let found = odd(scene);
    assert!(!found.is_empty() && found.iter().all(|odd| odd.mark == mark), "{mark:?}: {found:?}");
    assert!(found.iter().all(|odd| !odd.figure.is_nan()), "{found:?}");
}

/// The plan is odd in nothing.
#[track_caller]
fn clean(scene: &Scene) {
    assert_eq!(odd(scene), []);
}

#[test]
fn the_plans_to_start_from_are_odd_in_nothing() {
    clean(&living());
    clean(&cornered());
}
