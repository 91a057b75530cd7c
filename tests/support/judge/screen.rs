//! Seat and screen: on the axis, within a turn of the head, nothing between.

use crate::support::checker::plane::{Polygon, add, counter_clockwise, length, minus};

use super::room::shared_area;
use super::standing::{Run, Standing};
use super::{Mark, Odd, Scene};

/// How far the screen's middle may lie off the axis, mm.
const OFF_AXIS: f64 = 150.0;
/// How far a head turns, degrees.
const TURN: f64 = 45.0;
/// So near the unit nothing is in the way of a view any more, mm.
const BEFORE_UNIT: f64 = 800.0;
/// One looks over fixed things as low as this, mm.
const LOW: f64 = 600.0;
/// Less than this of a shape that reaches into the view is rounding, mm2: a strip of half a millimetre along a metre.
const ROUNDED: f64 = 500.0;
/// The same of a wall along a whole view.
const ROUNDED_WALL: f64 = 2000.0;

pub(super) fn odd(scene: &Scene) -> Vec<Odd> {
    let (Some(main), Some(screen)) = (scene.main(), scene.screen()) else { return Vec::new() };
    let mut all = Vec::new();
    let off = main.front().aside(screen.middle()).abs();
    if scene.faces_screen() && off > OFF_AXIS && !is_beside_the_fire(scene, main) {
        all.push(Odd::of(Mark::ScreenOffAxis, &[&screen.name], off));
    }
    let turn = looking(main, screen).turn_to(screen.middle());
    if turn > TURN {
        all.push(Odd::of(Mark::HeadTurn, &[&main.name], turn));
    }
    if let Some(view) = view(scene, main, screen) {
        all.extend(between(scene, &view));
    }
    all
}

/// Whether the main seat faces the fire, with the screen beside that: in the alcove of a chimney breast it is where most people
/// have it. Section 9 does not know this; fresh eyes asked for it (common practice, no source).
fn is_beside_the_fire(scene: &Scene, main: &Standing) -> bool {
    let front = main.front();
    scene.room.hearths.iter().any(|hearth| front.ahead(*hearth) > 0.0 && front.aside(*hearth).abs() < front.width / 2.0)
}

/// The run of the main seat from which one turns least to the screen.
fn looking(main: &Standing, screen: &Standing) -> Run {
    let turn = |run: &Run| run.turn_to(screen.middle());
    let other = main.returns().into_iter().min_by(|one, other| turn(one).total_cmp(&turn(other)));
    let front = main.front();
    other.filter(|run| turn(run) < turn(&front)).unwrap_or(front)
}

/// From the middle half of the front to near the unit: straight ahead where the seat faces it, else narrowing to its
/// middle. `None` where they are nearer than that.
fn view(scene: &Scene, main: &Standing, screen: &Standing) -> Option<Polygon> {
    if scene.faces_screen() {
        let front = main.front();
        let far = front.ahead(screen.front().middle) - BEFORE_UNIT;
        return (far > 1.0).then(|| front.strip(front.width / 4.0, 1.0, far));
    }
    let run = looking(main, screen);
    let away = minus(screen.middle(), run.middle);
    let share = 1.0 - BEFORE_UNIT / length(away).max(1.0);
    let ends = [-1.0, 1.0].map(|side| run.place(side * run.width / 4.0, 1.0));
    let toward = |from| add(from, minus(screen.middle(), from), share);
    (share > 0.0).then(|| counter_clockwise(vec![ends[0], ends[1], toward(ends[1]), toward(ends[0])]))
}

fn between(scene: &Scene, view: &[[f64; 2]]) -> Vec<Odd> {
    let mut all = Vec::new();
    let beyond = scene.room.beyond(view);
    if beyond > ROUNDED_WALL {
        all.push(Odd::of(Mark::Between, &["a wall"], beyond));
    }
    for block in scene.room.blocks.iter().filter(|block| block.height > LOW) {
        let shared = shared_area(&block.shape, view);
        if shared > ROUNDED {
            all.push(Odd::of(Mark::Between, &[&block.name], shared));
        }
    }
    let pieces = scene.pieces.iter().enumerate().filter(|(place, _)| Some(*place) != scene.main);
    for (_, piece) in pieces.filter(|(_, piece)| !piece.is_screen() && !piece.is_flat() && !piece.is_low_table()) {
        let shared: f64 = piece.parts.iter().map(|part| shared_area(part, view)).sum();
        if shared > ROUNDED {
            all.push(Odd::of(Mark::Between, &[&piece.name], shared));
        }
    }
    all
}
