//! Branch and bound against brute force: small rooms whose best layout lies on a grid, so that trying every place of the
//! grid finds the very value that the search must find.
//!
//! Rooms, blocks, ranges, usual sizes and clearances are whole steps, walls are square and no route is asked for: then
//! every vertex of every program is a whole step too. The brute force shares nothing with the solver but the value of a
//! size.

use elbowroom_model::{Brief, Dimension};
use elbowroom_solver::Limits;
use elbowroom_solver::answer::RankedOption;
use proptest::prelude::{Strategy, proptest};

use crate::laws::few;
use crate::support::plan::{Plan, PlanPiece};
use crate::support::ranked::{brief_of, ranked_brief, wall as wall_of};

/// One step of the grid, mm.
const STEP: f64 = 100.0;
/// A piece may stand this many steps off its wall: a foot is 304.8 mm, and no gap is kept here.
const OFF: i32 = 3;
/// From the seat's front to the screen's, steps.
const SCREEN: i32 = 15;
/// Before a bookcase, steps.
const FRONT: i32 = 6;

/// Whole steps, `low` to `high` in both directions.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Patch {
    x: (i32, i32),
    y: (i32, i32),
}

impl Patch {
    fn meets(self, other: Self) -> bool {
        overlap(self.x, other.x) > 0 && overlap(self.y, other.y) > 0
    }
}

fn overlap(one: (i32, i32), other: (i32, i32)) -> i32 {
    one.1.min(other.1) - one.0.max(other.0)
}

/// A room from (0, 0), with what stands in it for good; y grows away from the back wall.
#[derive(Debug, Clone, PartialEq)]
struct Hall {
    width: i32,
    depth: i32,
    blocks: Vec<Patch>,
}

impl Hall {
    /// The same room seen with the next wall clockwise at the back: its left end is the new origin.
    fn turned(&self) -> Self {
        let turn = |block: &Patch| Patch { x: block.y, y: (self.width - block.x.1, self.width - block.x.0) };
        Self { width: self.depth, depth: self.width, blocks: self.blocks.iter().map(turn).collect() }
    }

    fn free(&self, place: Patch) -> bool {
        let inside = place.x.0 >= 0 && place.x.1 <= self.width && place.y.0 >= 0 && place.y.1 <= self.depth;
        inside && !self.blocks.iter().any(|block| block.meets(place))
    }

    /// Every free place at the back wall for these widths and this depth.
    fn at_back(&self, widths: (i32, i32), depth: i32) -> Vec<Patch> {
        let mut places = Vec::new();
        for width in widths.0..=widths.1 {
            for left in 0..=(self.width - width) {
                let at = |off| Patch { x: (left, left + width), y: (off, off + depth) };
                places.extend((0..=OFF).map(at).filter(|place| self.free(*place)));
            }
        }
        places
    }

    /// The plan: wall `a` is the back wall, and the first corner its left end.
    fn plan(&self) -> Plan {
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
fn seen_from_first(hall: &Hall, place: Patch, turns: usize) -> Patch {
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

/// What a piece of the brief is worth at this width.
fn value(brief: &Brief, piece: usize, width: i32) -> f64 {
    let piece = &brief.pieces[piece];
    piece.weight * piece.range(Dimension::Width).unwrap().value(f64::from(width) * STEP)
}

/// The best value of a sofa at the back wall and a screen at the wall that it faces.
fn best_with_screen(hall: &Hall, brief: &Brief) -> Option<f64> {
    let opposite = hall.turned().turned();
    let screens = opposite.at_back((10, 20), 4);
    let screens: Vec<Patch> = screens.into_iter().map(|place| seen_from_first(hall, place, 2)).collect();
    let sofas = hall.at_back((15, 27), 9);
    let pair = |sofa: &Patch, screen: &Patch| {
        let fits = screen.y.0 - sofa.y.1 >= SCREEN && overlap(sofa.x, screen.x) > 0;
        fits.then(|| value(brief, 0, sofa.x.1 - sofa.x.0) + value(brief, 1, screen.x.1 - screen.x.0))
    };
    let values = sofas.iter().flat_map(|sofa| screens.iter().filter_map(move |screen| pair(sofa, screen)));
    values.max_by(f64::total_cmp)
}

/// The best value of a sofa at the back wall and a bookcase at any wall, nothing before it.
fn best_with_books(hall: &Hall, brief: &Brief) -> Option<f64> {
    let sofas = hall.at_back((15, 27), 9);
    let mut seen = hall.clone();
    let mut best: Option<f64> = None;
    for turns in 0..4 {
        for books in seen.at_back((6, 12), 3) {
            let worth = value(brief, 1, books.x.1 - books.x.0);
            let kept = Patch { x: books.x, y: (books.y.0, books.y.1 + FRONT) };
            let kept = seen_from_first(hall, kept, turns);
            for sofa in sofas.iter().filter(|sofa| !sofa.meets(kept)) {
                let sum = value(brief, 0, sofa.x.1 - sofa.x.0) + worth;
                best = Some(best.map_or(sum, |best| best.max(sum)));
            }
        }
        seen = seen.turned();
    }
    best
}

/// Holds the search to the brute force, wall by wall.
fn agree(hall: &Hall, plan: &Plan, faces: bool, brute: impl Fn(&Hall, &Brief) -> Option<f64>) {
    const WALLS: [&str; 4] = ["wall a", "wall b", "wall c", "wall d"];
    let text = plan.text();
    let brief = brief_of(&text);
    let answer = ranked_brief(&brief, Limits { shown: 0, ..Limits::default() });
    let mut seen = hall.clone();
    for (turns, wall) in WALLS.into_iter().enumerate() {
        let best = brute(&seen, &brief);
        let opposite = WALLS[(turns + 2) % 4];
        let same = |option: &&RankedOption| {
            let choices = &option.choices;
            wall_of(&answer, choices.seat_back) == Some(wall)
                && (!faces || wall_of(&answer, choices.media_wall) == Some(opposite))
        };
        let found = answer.options.iter().filter(same).map(|option| (option.largest.size_value, option.largest.proven));
        let found = found.max_by(|one, other| one.0.total_cmp(&other.0));
        match (best, found) {
            (None, None) => {}
            (Some(best), Some((value, proven))) => {
                // A proof holds within a thousandth, and the terms that settle ties are a thousandth too.
                let slack = best.abs() * 2e-3 + 1.0;
                assert!((value - best).abs() <= slack, "{wall}: brute {best}, search {value} ({proven})\n{text}");
            }
            (brute, search) => panic!("{wall}: brute {brute:?}, search {search:?}\n{text}"),
        }
        seen = seen.turned();
    }
}

fn halls() -> impl Strategy<Value = Hall> {
    let block = (0_i32..30, 0_i32..30, 1_i32..8, 1_i32..8);
    (22_i32..36, 22_i32..36, proptest::collection::vec(block, 0..3)).prop_map(|(width, depth, blocks)| {
        let block = |(x, y, dx, dy): (i32, i32, i32, i32)| {
            let (x, y) = (x.min(width - 1), y.min(depth - 1));
            Patch { x: (x, (x + dx).min(width)), y: (y, (y + dy).min(depth)) }
        };
        Hall { width, depth, blocks: blocks.into_iter().map(block).collect() }
    })
}

proptest! {
    #![proptest_config(few(12))]

    /// A sofa and the screen it faces.
    #[test]
    fn sofa_and_screen_equal_brute_force(hall in halls()) {
        let plan = hall
            .plan()
            .clear("screen_to_seat", f64::from(SCREEN) * STEP)
            .piece(PlanPiece::of("sofa").range("width", 1500.0, 2700.0).range("depth", 900.0, 900.0))
            .piece(PlanPiece::of("media-unit").range("width", 1000.0, 2000.0).range("depth", 400.0, 400.0));
        agree(&hall, &plan, true, best_with_screen);
    }

    /// A sofa and a bookcase that may stand at any wall.
    #[test]
    fn sofa_and_bookcase_equal_brute_force(hall in halls()) {
        let plan = hall
            .plan()
            .clear("storage_front", f64::from(FRONT) * STEP)
            .piece(PlanPiece::of("sofa").range("width", 1500.0, 2700.0).range("depth", 900.0, 900.0))
            .piece(PlanPiece::of("bookcase").range("width", 600.0, 1200.0).range("depth", 300.0, 300.0));
        agree(&hall, &plan, false, best_with_books);
    }
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
