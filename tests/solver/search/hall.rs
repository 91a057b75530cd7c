//! A hall on a grid, seen from each of its walls, and every place at the wall that it is seen from.

use proptest::prelude::Strategy;

use crate::support::plan::Plan;

/// One step of the grid, mm.
pub(super) const STEP: f64 = 100.0;
/// A piece may stand this many steps off its wall: a foot is 304.8 mm, and no gap is kept here.
const OFF: i32 = 3;

/// The walls clockwise, by their names; seen `turns` times turned, the hall has the wall of that place at its back.
pub(super) const WALLS: [&str; 4] = ["wall a", "wall b", "wall c", "wall d"];

/// Whole steps, `low` to `high` in both directions.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Patch {
    pub(super) x: (i32, i32),
    pub(super) y: (i32, i32),
}

impl Patch {
    pub(super) fn meets(self, other: Self) -> bool {
        overlap(self.x, other.x) > 0 && overlap(self.y, other.y) > 0
    }

    pub(super) fn width(self) -> i32 {
        self.x.1 - self.x.0
    }
}

pub(super) fn overlap(one: (i32, i32), other: (i32, i32)) -> i32 {
    one.1.min(other.1) - one.0.max(other.0)
}

/// What is looked for at a wall, in steps of the hall.
#[derive(Debug, Clone, Copy)]
pub(super) struct Sought {
    pub(super) widths: (i32, i32),
    pub(super) depth: i32,
    /// Widths and gaps to the wall are looked at in so many steps at a time.
    pub(super) at_a_time: i32,
}

/// A room from (0, 0), with what stands in it for good; y grows away from the back wall.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Hall {
    pub(super) width: i32,
    pub(super) depth: i32,
    pub(super) blocks: Vec<Patch>,
}

impl Hall {
    /// The same room seen with the next wall clockwise at the back: its left end is the new origin.
    pub(super) fn turned(&self) -> Self {
        let turn = |block: &Patch| Patch { x: block.y, y: (self.width - block.x.1, self.width - block.x.0) };
        Self { width: self.depth, depth: self.width, blocks: self.blocks.iter().map(turn).collect() }
    }

    /// The same room on a grid with so many times the steps.
    pub(super) fn finer(&self, times: i32) -> Self {
        let of = |(low, high): (i32, i32)| (low * times, high * times);
        let blocks = self.blocks.iter().map(|block| Patch { x: of(block.x), y: of(block.y) });
        Self { width: self.width * times, depth: self.depth * times, blocks: blocks.collect() }
    }

    /// Within the room and clear of what stands there for good.
    pub(super) fn free(&self, place: Patch) -> bool {
        let inside = place.x.0 >= 0 && place.x.1 <= self.width && place.y.0 >= 0 && place.y.1 <= self.depth;
        inside && !self.blocks.iter().any(|block| block.meets(place))
    }

    /// Every free place at the back wall.
    pub(super) fn at_back(&self, sought: Sought) -> Vec<Patch> {
        let Sought { widths, depth, at_a_time } = sought;
        let mut places = Vec::new();
        for width in (widths.0..=widths.1).step_by(at_a_time as usize) {
            for left in 0..=(self.width - width) {
                let at = |off| Patch { x: (left, left + width), y: (off * at_a_time, off * at_a_time + depth) };
                places.extend((0..=OFF).map(at).filter(|place| self.free(*place)));
            }
        }
        places
    }

    /// The plan: wall `a` is the back wall, and the first corner its left end.
    pub(super) fn plan(&self) -> Plan {
        let mm = |steps: i32| f64::from(steps) * STEP;
        let mut plan = Plan::rectangle(mm(self.width), mm(self.depth)).bare();
        for (place, block) in self.blocks.iter().enumerate() {
            let (low, high) = ((mm(block.x.0), -mm(block.y.1)), (mm(block.x.1), -mm(block.y.0)));
            plan = plan.block(&format!("block {place}"), low, high);
        }
        plan
    }
}

/// A place seen with another wall at the back, `turns` walls clockwise, as the first wall sees it.
pub(super) fn seen_from_first(hall: &Hall, place: Patch, turns: usize) -> Patch {
    match turns {
        0 => place,
        1 => Patch { x: (hall.width - place.y.1, hall.width - place.y.0), y: place.x },
        2 => Patch {
            x: (hall.width - place.x.1, hall.width - place.x.0),
            y: (hall.depth - place.y.1, hall.depth - place.y.0),
        },
        _ => Patch { x: place.y, y: (hall.depth - place.x.1, hall.depth - place.x.0) },
    }
}

/// Every free place at each wall, by how often the hall is turned to see it, as the first wall sees it.
pub(super) fn at_each_wall(hall: &Hall, sought: Sought) -> Vec<(usize, Patch, Patch)> {
    let mut seen = hall.clone();
    let mut places = Vec::new();
    for turns in 0..4 {
        let here = seen.at_back(sought).into_iter();
        places.extend(here.map(|place| (turns, place, seen_from_first(hall, place, turns))));
        seen = seen.turned();
    }
    places
}

/// Halls with up to two blocks in them.
pub(super) fn halls() -> impl Strategy<Value = Hall> {
    let block = (0_i32..30, 0_i32..30, 1_i32..8, 1_i32..8);
    (22_i32..36, 22_i32..36, proptest::collection::vec(block, 0..3)).prop_map(|(width, depth, blocks)| {
        let block = |(x, y, dx, dy): (i32, i32, i32, i32)| {
            let (x, y) = (x.min(width - 1), y.min(depth - 1));
            Patch { x: (x, (x + dx).min(width)), y: (y, (y + dy).min(depth)) }
        };
        Hall { width, depth, blocks: blocks.into_iter().map(block).collect() }
    })
}

/// Turning the room four times brings it back, and a place at each wall is seen from the first as it stands.
#[test]
fn the_brute_force_turns_rooms_soundly() {
    let hall = Hall { width: 30, depth: 25, blocks: vec![Patch { x: (2, 5), y: (1, 9) }] };
    let mut seen = hall.clone();
    for turns in 0..4 {
        for (own, block) in seen.blocks.iter().zip(&hall.blocks) {
            assert_eq!(seen_from_first(&hall, *own, turns), *block);
        }
        seen = seen.turned();
    }
    assert_eq!(seen, hall);
}
