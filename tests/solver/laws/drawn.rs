//! Rooms drawn at random: rectangles, L-shapes and oblique ones, with doors, a window and one to four pieces.

use elbowroom_model::scenario;
use proptest::prelude::{Strategy, any};

use crate::support::plan::{At, Plan, PlanPiece, Side, What};

/// Outline of a drawn room.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Shape {
    Rectangle,
    Corner,
    Oblique,
}

/// The furniture of a drawn room.
const SUITES: [&[&str]; 9] = [
    &["sofa"],
    &["sofa", "media-unit"],
    &["sofa", "coffee-table", "media-unit"],
    &["corner-sofa", "media-unit"],
    &["corner-sofa", "coffee-table", "media-unit"],
    &["sofa", "armchair", "coffee-table"],
    &["sofa", "media-unit", "bookcase"],
    &["sofa", "coffee-table", "media-unit", "armchair"],
    &["sofa", "desk"],
];

/// Any sound room of any shape.
pub(crate) fn rooms() -> impl Strategy<Value = Plan> {
    of_shape(vec![Shape::Rectangle, Shape::Corner, Shape::Oblique])
}

/// Any sound rectangle.
pub(super) fn rectangles() -> impl Strategy<Value = Plan> {
    of_shape(vec![Shape::Rectangle])
}

fn of_shape(shapes: Vec<Shape>) -> impl Strategy<Value = Plan> {
    let size = (340_u32..600, 290_u32..480);
    let cuts = (10_u32..40, 10_u32..40, 0_usize..4);
    let places = (any::<[u32; 8]>(), 0_usize..3);
    let wanted = (0..SUITES.len(), any::<bool>(), 0_u32..3);
    let shape = proptest::sample::select(shapes);
    (shape, size, cuts, places, wanted).prop_filter_map("a sound room", |(shape, size, cuts, places, wanted)| {
        let corners = outline(shape, size, cuts);
        let plan = furnished(with_items(Plan::of(&corners), places), wanted);
        scenario::read(&plan.text(), None).is_ok().then_some(plan)
    })
}

/// Corners clockwise, in whole centimetres told in mm.
fn outline(shape: Shape, (width, depth): (u32, u32), (cut_x, cut_y, corner): (u32, u32, usize)) -> Vec<At> {
    let (w, d) = (f64::from(width) * 10.0, f64::from(depth) * 10.0);
    let whole = |share: u32, of: f64| (of * f64::from(share) / 100.0 / 10.0).round() * 10.0;
    let (cx, cy) = (whole(cut_x, w), whole(cut_y, d));
    match shape {
        Shape::Rectangle => vec![(0.0, 0.0), (w, 0.0), (w, -d), (0.0, -d)],
        Shape::Oblique => {
            let (sx, sy) = (cx / 3.0, cy / 3.0);
            vec![(0.0, 0.0), (w, -sy), (w - sx, -d), (sx, -d + sy)]
        }
        Shape::Corner => match corner {
            0 => vec![(cx, 0.0), (w, 0.0), (w, -d), (0.0, -d), (0.0, -cy), (cx, -cy)],
            1 => vec![(0.0, 0.0), (w - cx, 0.0), (w - cx, -cy), (w, -cy), (w, -d), (0.0, -d)],
            2 => vec![(0.0, 0.0), (w, 0.0), (w, -d + cy), (w - cx, -d + cy), (w - cx, -d), (0.0, -d)],
            _ => vec![(0.0, 0.0), (w, 0.0), (w, -d), (cx, -d), (cx, -d + cy), (0.0, -d + cy)],
        },
    }
}

/// An entrance, often a second doorway, and a window, each on a wall of its own.
fn with_items(plan: Plan, (draw, second): ([u32; 8], usize)) -> Plan {
    let walls = plan.walls.len();
    let first = draw[0] as usize % walls;
    let place = |wall: usize, width: f64, draw: u32| {
        let room = plan.length(wall) - width - 20.0;
        (room > 0.0).then(|| 10.0 + (room * f64::from(draw % 1000) / 1000.0 / 10.0).round() * 10.0)
    };
    let hinge = [Some(Side::Left), Some(Side::Right), None][draw[1] as usize % 3];
    let mut drawn = plan.clone();
    if let Some(at) = place(first, 820.0, draw[2]) {
        drawn = drawn.hold(first, "hall door", at, 820.0, What::Door { hinge, leads_to: "entrance" });
    }
    let other = (first + 1 + draw[3] as usize % (walls - 1)) % walls;
    if let (true, Some(at)) = (second > 0, place(other, 900.0, draw[4])) {
        let what = What::Opening { leads_to: "kitchen", stance: ["open", "away", "none"][draw[5] as usize % 3] };
        drawn = drawn.hold(other, "kitchen opening", at, 900.0, what);
    }
    let lit = (0..walls).map(|step| (first + step) % walls).find(|wall| *wall != first && *wall != other);
    if let Some((wall, at)) = lit.and_then(|wall| Some((wall, place(wall, 1400.0, draw[6])?))) {
        let sill = if draw[7] % 2 == 0 { 600.0 } else { 900.0 };
        let what = What::Window { sill, head: 2100.0, view: "liked", must_reach: false };
        drawn = drawn.hold(wall, "window", at, 1400.0, what);
    }
    drawn
}

fn furnished(mut plan: Plan, (suite, snug, pillar): (usize, bool, u32)) -> Plan {
    plan.profile = if snug { "snug" } else { "easy" };
    plan.measured_within = 5.0;
    for kind in SUITES[suite] {
        plan = plan.piece(PlanPiece::of(kind).also("name", format!("the {}", kind.replace('-', " "))));
    }
    if pillar == 0 {
        let (x, y) = middle(&plan);
        plan = plan.block("post", (x - 900.0, y + 700.0), (x - 700.0, y + 900.0));
    }
    plan
}

/// Middle of the corners, in whole centimetres told in mm.
pub(super) fn middle(plan: &Plan) -> At {
    let count = plan.walls.len() as f64;
    let sum = plan.walls.iter().fold((0.0, 0.0), |(x, y), wall| (x + wall.start.0, y + wall.start.1));
    ((sum.0 / count / 10.0).round() * 10.0, (sum.1 / count / 10.0).round() * 10.0)
}
