//! Laws of routes on random rooms: against a grid of the tests' own, and against themselves.

use elbowroom_model::{FixedId, ItemId, Point, WallId};
use elbowroom_solver::geometry::{Convex, gap};
use elbowroom_solver::routes::{End, Mouth, Owner, ShapeId, Stop, walk_between, widest_between};
use proptest::prelude::{Just, Strategy, any, prop_assert, prop_assume, proptest};
use proptest::test_runner::Config;

use crate::laws::few;

use super::grid::{Doorstep, Grid, STEP};

/// A room with a doorway in its left-hand wall and things on the floor; one steps up to the front of the first of them.
#[derive(Debug, Clone)]
struct Scene {
    across: f64,
    up: f64,
    door: f64,
    needs: f64,
    /// The lower right part is shut off: an L-shaped room.
    wing: bool,
    seat: Block,
    others: Vec<Block>,
}

/// A rectangle: its middle, half its width and depth, and the quarter turns of the way it faces (0 is up) with a slant.
#[derive(Debug, Clone, Copy)]
struct Block {
    middle: Point,
    half: (f64, f64),
    facing: Point,
}

impl Block {
    fn corners(&self) -> Vec<Point> {
        let (along, out) = (self.facing.right() * self.half.0, self.facing * self.half.1);
        let middle = self.middle;
        vec![middle - along - out, middle + along - out, middle + along + out, middle - along + out]
    }
}

fn block(across: f64, up: f64) -> impl Strategy<Value = Block> {
    let turn = (0_u8..4, proptest::bool::weighted(0.3), -40.0_f64..40.0);
    let size = (120.0_f64..800.0, 100.0_f64..450.0);
    (300.0..across - 300.0, 300.0..up - 300.0, size, turn).prop_map(|(x, y, half, (quarters, slants, slant))| {
        let degrees = f64::from(quarters) * 90.0 + if slants { slant } else { 0.0 };
        let (sine, cosine) = degrees.to_radians().sin_cos();
        Block { middle: Point::new(x, y), half, facing: Point::new(-sine, cosine) }
    })
}

fn scene() -> impl Strategy<Value = Scene> {
    let drawn = (3600.0_f64..5200.0, 3000.0_f64..4400.0, any::<bool>()).prop_flat_map(|(across, up, wing)| {
        let others = proptest::collection::vec(block(across, up), 2..9);
        let fixed = (Just(across), Just(up), Just(wing), 500.0_f64..1000.0);
        (fixed, 0.0..up - 900.0, block(across, up), others).prop_map(
            |((across, up, wing, needs), door, seat, others)| Scene { across, up, door, needs, wing, seat, others },
        )
    });
    let in_room = drawn.prop_filter("the seat stands in the room", |scene| scene.stands(&scene.seat));
    in_room.prop_map(|scene| {
        let stays = |block: &Block| scene.stands(block) && apart(&scene.seat.corners(), &block.corners());
        Scene { others: scene.others.iter().copied().filter(stays).collect(), ..scene }
    })
}

/// Clear of each other by more than any rounding; what it means to step up to a seat that overlaps a thing is open.
fn apart(first: &[Point], second: &[Point]) -> bool {
    let shape = |corners: &[Point]| Convex::counter_clockwise(corners.to_vec());
    gap(&shape(first), &shape(second)).clear > 1.0
}

impl Scene {
    /// Corners of the outline, clockwise.
    fn outline(&self) -> Vec<Point> {
        let (x, y) = (self.across, self.up);
        let (cut_x, cut_y) = (0.6 * x, 0.45 * y);
        let square = vec![(0.0, 0.0), (0.0, y), (x, y), (x, 0.0)];
        let winged = vec![(0.0, 0.0), (0.0, y), (x, y), (x, cut_y), (cut_x, cut_y), (cut_x, 0.0)];
        let corners = if self.wing { winged } else { square };
        corners.into_iter().map(|(x, y)| Point::new(x, y)).collect()
    }

    fn walls(&self) -> Vec<[Point; 2]> {
        let corners = self.outline();
        (0..corners.len()).map(|i| [corners[i], corners[(i + 1) % corners.len()]]).collect()
    }

    /// Whether the block stands in the room, clear of its walls.
    fn stands(&self, block: &Block) -> bool {
        let in_wing = |at: Point| self.wing && at.x > 0.6 * self.across && at.y < 0.45 * self.up;
        let inside = |at: Point| at.x > 0.0 && at.y > 0.0 && at.x < self.across && at.y < self.up && !in_wing(at);
        let corners = block.corners();
        corners.iter().all(|at| inside(*at)) && self.walls().iter().all(|wall| apart(wall, &corners))
    }
}

/// What both methods get.
struct Posed {
    walls: Vec<[Point; 2]>,
    mouths: [Mouth; 2],
    stops: Vec<Stop>,
    wall_stops: Vec<Stop>,
}

fn posed(scene: &Scene) -> Posed {
    let walls = scene.walls();
    let wall_stops: Vec<Stop> =
        walls.iter().enumerate().map(|(i, wall)| Stop::stretch(ShapeId::Wall(WallId(i)), wall[0], wall[1])).collect();
    let blocks = std::iter::once(&scene.seat).chain(&scene.others).enumerate();
    let stops = blocks
        .map(|(i, block)| Stop::new(ShapeId::Fixed(FixedId(i)), Convex::counter_clockwise(block.corners())))
        .collect();
    let doorway = [Point::new(0.0, scene.door), Point::new(0.0, scene.door + 850.0)];
    let doorway = Mouth::new(End::Item(ItemId(0)), doorway, Point::new(1.0, 0.0), Owner::Wall);
    let Block { middle, half, facing } = scene.seat;
    let front = [-1.0, 1.0].map(|side| middle + facing * half.1 + facing.right() * (side * half.0 * 0.8));
    let front = Mouth::new(End::Item(ItemId(1)), front, facing, Owner::Shape(ShapeId::Fixed(FixedId(0))));
    let mouths = Mouth::widened_pair([doorway, front], scene.needs, &wall_stops, [&[], &[]]);
    Posed { walls, mouths, stops, wall_stops }
}

impl Posed {
    fn grid(&self, scene: &Scene) -> Grid {
        let doorstep = |mouth: &Mouth| Doorstep { ends: mouth.stretch, before: mouth.before };
        let things: Vec<_> = std::iter::once(&scene.seat).chain(&scene.others).map(Block::corners).collect();
        let [first, second] = &self.mouths;
        Grid::new(Point::new(scene.across, scene.up), &self.walls, &things, [doorstep(first), doorstep(second)])
    }

    /// A thing stands in the doorway where its front, widened, runs into it: what a way between the two is then is open.
    fn mouths_are_apart(&self) -> bool {
        apart(&self.mouths[0].stretch, &self.mouths[1].stretch)
    }

    fn width(&self) -> f64 {
        widest_between(&self.wall_stops, &self.mouths, &self.stops, 0.0).width
    }
}

proptest! {
    #![proptest_config(Config { max_global_rejects: 100_000, ..few(24) })]

    /// The width is that of the way over the grid whose least clearance is greatest; the walk is as long as the shortest
    /// way over squares that are clear enough, by what a grid of eight directions can be off.
    #[test]
    fn widths_and_walks_agree_with_a_grid(scene in scene()) {
        let posed = posed(&scene);
        prop_assume!(posed.mouths_are_apart());
        let grid = posed.grid(&scene);
        let cap = posed.mouths.iter().map(Mouth::width).fold(f64::INFINITY, f64::min);
        let (found, seen) = (posed.width(), grid.widest().min(cap));
        prop_assert!((found - seen).abs() <= 3.0 * STEP, "width {found}, over the grid {seen}");
        let diameter = 0.7 * found;
        if diameter > 4.0 * STEP {
            let walk = walk_between(&posed.wall_stops, &posed.mouths, &posed.stops, diameter).map(|walk| walk.length);
            prop_assert!(walk.is_some());
            let walk = walk.unwrap_or_default();
            let tight = grid.length(diameter + 2.0 * STEP);
            prop_assert!(tight.is_none_or(|tight| walk <= tight + 2.0 * STEP), "walk {walk}, over the grid {tight:?}");
            let loose = grid.length(diameter - 3.0 * STEP);
            prop_assert!(loose.is_some_and(|loose| walk >= (loose - 4.0 * STEP) / 1.0824), "walk {walk}, {loose:?}");
        }
    }

    /// One thing more never widens a route, and never shortens a walk.
    #[test]
    fn one_thing_more_never_widens_a_route(scene in scene()) {
        let fewer = Scene { others: scene.others.iter().skip(1).copied().collect(), ..scene.clone() };
        let (posed, fewer) = (posed(&scene), posed(&fewer));
        prop_assert!(posed.width() <= fewer.width() + 1e-6);
        let diameter = 0.9 * posed.width();
        let walk = |posed: &Posed| {
            walk_between(&posed.wall_stops, &posed.mouths, &posed.stops, diameter).map(|walk| walk.length)
        };
        if let (Some(with), Some(without)) = (walk(&posed), walk(&fewer)) {
            prop_assert!(without <= with + 0.1, "{without} without, {with} with");
        }
    }
}

/// A thing stands behind the line of a front and reaches over it beyond its end: it stops nobody who comes straight to the
/// front. A drawn room in which a way of its full width had no walk.
#[test]
fn what_lies_behind_a_front_and_over_its_line_beyond_stops_no_walk_to_it() {
    let slanted = Block {
        middle: Point::new(2086.6, 3191.6),
        half: (396.2, 217.6),
        facing: Point::new(-0.983_473_091_995_956_3, -0.181_054_349_077_599_32),
    };
    let seat = Block { middle: Point::new(1954.4, 2605.5), half: (120.0, 100.0), facing: Point::new(-1.0, 0.0) };
    let scene =
        Scene { across: 5127.0, up: 3872.0, door: 2183.5, needs: 867.5, wing: true, seat, others: vec![slanted] };
    let posed = posed(&scene);
    let (width, over_grid) = (posed.width(), posed.grid(&scene).widest());
    assert!((width - over_grid).abs() <= 3.0 * STEP, "{width}, over the grid {over_grid}");
    for share in [0.5, 0.7, 0.99] {
        let walk = walk_between(&posed.wall_stops, &posed.mouths, &posed.stops, share * width);
        let length = walk.map(|walk| walk.length);
        assert!(length.is_some_and(|length| (length - 1854.4).abs() < 1.0), "{share}: {length:?}");
    }
}
