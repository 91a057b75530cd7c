//! The re-check of a layout: each rule passes at its edge and fails a hair past it.

mod comfort;
mod group;
mod groups;
mod hung;
mod room;
mod sizes;
mod turned;
mod ways;

use elbowroom_model::{
    Brief, Clearance, Dimension, Door, Hand, Hinge, ItemKind, LeadsTo, PieceId, PieceKind, Point, Swings, WallId,
};
use elbowroom_solver::arrangement::{Arrangement, Choices};
use elbowroom_solver::routes::Route;
use elbowroom_solver::verify::{CheckedRoom, verify};
use elbowroom_solver::{Layout, Placed, Size};
use serde_json::{Value, json};

use crate::support::checker::{self, Part};
use crate::support::rooms::{Furnish, outline, piece, rectangle};

const NORTH: Point = Point::new(0.0, 1.0);
const SOUTH: Point = Point::new(0.0, -1.0);
const WEST: Point = Point::new(-1.0, 0.0);

/// A hair: rounding explains half a millimetre, no more.
const HAIR: f64 = 0.6;

fn arrangement() -> Arrangement {
    let (facing, second_seats) = (SOUTH, Vec::new());
    let choices = Choices { seat_back: None, faced: None, facing, hand: None, media_wall: None, second_seats };
    Arrangement { key: String::new(), choices, main_seat: PieceId(0), standings: Vec::new() }
}

/// Stands with the middle of its back (of a corner sofa: its outer corner) at a place.
fn placed(piece: usize, back: (f64, f64), facing: Point, (width, depth): (f64, f64)) -> Placed {
    let size = Size { width, depth, ..Size::default() };
    Placed { piece: PieceId(piece), at_wall: None, anchor: Point::new(back.0, back.1), facing, hand: None, size }
}

fn at_wall(placed: Placed, wall: usize) -> Placed {
    Placed { at_wall: Some(WallId(wall)), ..placed }
}

fn corner(placed: Placed, hand: Hand, length: f64) -> Placed {
    let size = Size { return_length: Some(length), ..placed.size };
    Placed { hand: Some(hand), size, ..placed }
}

fn broken(brief: &Brief, pieces: Vec<Placed>) -> Vec<&'static str> {
    let layout = Layout { placed: pieces, ..Layout::default() };
    verify(&CheckedRoom::of(brief), &layout, &arrangement(), &[]).into_iter().map(|breach| breach.rule.key()).collect()
}

/// What the second checker says of one part of the rules.
fn second_check(brief: &Brief, placed: &[Placed], routes: &[Route], part: Part) -> Vec<String> {
    checker::of_part(brief, &told(brief, placed, routes), part)
}

/// The layout as a result tells it.
pub(crate) fn told(brief: &Brief, placed: &[Placed], routes: &[Route]) -> Value {
    let piece = |placed: &Placed| {
        let asked = &brief.pieces[placed.piece.0];
        let Size { width, return_length, second_return, depth, return_depth } = placed.size;
        let range = |dimension| {
            let (range, size) = (asked.range(dimension)?, placed.size.get(dimension)?);
            Some(
                json!({ "least": range.least.min(size), "together": size, "alone": null, "most": range.most.max(size) }),
            )
        };
        json!({
            "name": asked.name,
            "kind": asked.kind,
            "at_wall": placed.at_wall.map(|wall| brief.room.walls[wall.0].name.clone()),
            "parts": placed.parts().iter().map(|part| part.corners().to_vec()).collect::<Vec<_>>(),
            "facing": placed.facing.degrees(),
            "size": {
                "width": width,
                "return": return_length,
                "second_return": second_return,
                "depth": depth,
                "return_depth": return_depth,
            },
            "range": {
                "width": range(Dimension::Width),
                "return": range(Dimension::Return),
                "second_return": range(Dimension::SecondReturn),
                "depth": range(Dimension::Depth),
                "return_depth": range(Dimension::ReturnDepth),
            },
        })
    };
    let route = |route: &Route| {
        json!({
            "from": route.from.name(brief),
            "to": route.to.name(brief),
            "width": route.width,
            "needs": route.needs,
        })
    };
    json!({
        "pieces": placed.iter().map(piece).collect::<Vec<_>>(),
        "routes": routes.iter().map(route).collect::<Vec<_>>(),
    })
}

/// The layout that `at` makes keeps every rule at `edge`, and breaks `rule` alone at `past`.
fn edge(rule: &str, brief: &Brief, edge: f64, past: f64, at: impl Fn(f64) -> Vec<Placed>) {
    assert_eq!(broken(brief, at(edge)), [""; 0], "{rule} at its edge");
    assert_eq!(broken(brief, at(past)), [rule], "{rule} past its edge");
    assert_eq!(second_check(brief, &at(edge), &[], Part::Places), [""; 0], "{rule} at its edge, checked again");
    let found = second_check(brief, &at(past), &[], Part::Places);
    assert!(found.len() == 1 && found[0].contains(rule), "{rule} past its edge, checked again: {found:?}");
}

#[test]
fn pieces_do_not_overlap_and_a_rug_may_lie_under_anything() {
    let brief = rectangle(5000.0, 4000.0).piece(piece(PieceKind::Sofa)).piece(piece(PieceKind::SideTable));
    edge("overlap", &brief, 2250.0, 2250.0 - HAIR, |x| {
        vec![placed(0, (1000.0, -1000.0), SOUTH, (2000.0, 900.0)), placed(1, (x, -1200.0), SOUTH, (500.0, 500.0))]
    });
    let brief = rectangle(5000.0, 4000.0).piece(piece(PieceKind::Sofa)).piece(piece(PieceKind::Rug));
    let sofa = placed(0, (1500.0, -1000.0), SOUTH, (2000.0, 900.0));
    let rug = placed(1, (1500.0, -1200.0), SOUTH, (2400.0, 1700.0));
    assert_eq!(broken(&brief, vec![sofa, rug]), [""; 0]);
}

#[test]
fn nothing_but_a_rug_lies_on_floor_that_stays_open() {
    let brief = rectangle(5000.0, 4000.0).piece(piece(PieceKind::OpenFloor)).piece(piece(PieceKind::SideTable));
    let mat = || placed(0, (1000.0, -1000.0), SOUTH, (2000.0, 1500.0));
    edge("overlap", &brief, 2250.0, 2250.0 - HAIR, |x| vec![mat(), placed(1, (x, -1200.0), SOUTH, (500.0, 500.0))]);
    let brief = rectangle(5000.0, 4000.0).piece(piece(PieceKind::OpenFloor)).piece(piece(PieceKind::Rug));
    let with_rug = vec![mat(), placed(1, (1500.0, -1200.0), SOUTH, (2400.0, 1700.0))];
    assert_eq!(broken(&brief, with_rug.clone()), [""; 0]);
    assert_eq!(second_check(&brief, &with_rug, &[], Part::Places), [""; 0]);
}

/// A drawer opens over it; a chair would stand on it.
#[test]
fn floor_that_stays_open_may_lie_before_storage_but_not_where_chairs_stand() {
    let before = |kind: PieceKind, rule: Clearance, y: f64| {
        let brief = rectangle(5000.0, 4000.0).rule(rule, 800.0).piece(piece(kind)).piece(piece(PieceKind::OpenFloor));
        let keeper = at_wall(placed(0, (2500.0, 0.0), SOUTH, (1000.0, 400.0)), 0);
        let both = vec![keeper, placed(1, (2500.0, y), SOUTH, (2000.0, 1500.0))];
        (broken(&brief, both.clone()), second_check(&brief, &both, &[], Part::Places))
    };
    assert_eq!(before(PieceKind::Sideboard, Clearance::StorageFront, -500.0), (vec![], vec![]));
    assert_eq!(before(PieceKind::Desk, Clearance::DeskFront, -1200.0), (vec![], vec![]));
    let (first, second) = before(PieceKind::Desk, Clearance::DeskFront, -1200.0 + HAIR);
    assert_eq!(first, ["desk_front"]);
    assert!(second.len() == 1 && second[0].contains("desk_front"), "{second:?}");
}

#[test]
fn the_corner_that_two_runs_leave_free_is_free() {
    let brief = rectangle(5000.0, 4000.0).piece(piece(PieceKind::CornerSofa)).piece(piece(PieceKind::SideTable));
    edge("overlap", &brief, 900.0, 900.0 - HAIR, |x| {
        let sofa = corner(placed(0, (0.0, 0.0), SOUTH, (2500.0, 900.0)), Hand::Right, 2000.0);
        vec![sofa, placed(1, (x + 250.0, -1000.0), SOUTH, (500.0, 500.0))]
    });
}

fn door(hinge: Hinge) -> ItemKind {
    ItemKind::Door(Door { hinge: Some(hinge), swings: Swings::In, opens_to: None, leads_to: LeadsTo::Entrance })
}

#[test]
fn a_back_stands_off_its_wall_by_its_gap_and_at_most_a_foot_more() {
    let mut sofa = piece(PieceKind::Sofa);
    sofa.off_wall = 50.0;
    let brief = rectangle(5000.0, 4000.0).within(10.0).piece(sofa);
    let at = |y: f64| vec![at_wall(placed(0, (2500.0, y), SOUTH, (2000.0, 900.0)), 0)];
    edge("off_wall", &brief, -60.0, -60.0 + HAIR, at);
    edge("off_wall", &brief, -364.8, -364.8 - HAIR, at);
    edge("off_wall", &brief, 0.0, 0.03, |degrees: f64| {
        let (sin, cos) = degrees.to_radians().sin_cos();
        vec![at_wall(placed(0, (2500.0, -100.0), Point::new(sin, -cos), (2000.0, 900.0)), 0)]
    });
}

#[test]
fn all_but_50_mm_of_a_width_is_before_its_wall() {
    // Wall c ends at a corner that juts out into the room, which goes on beyond; moved in it would be 10 mm longer.
    let corners = [(0.0, 0.0), (6000.0, 0.0), (6000.0, -2000.0), (3000.0, -2000.0), (3000.0, -5000.0), (0.0, -5000.0)];
    let brief = outline(&corners, &["a", "b", "c", "d", "e", "f"]).within(10.0).piece(piece(PieceKind::Sofa));
    edge("off_wall", &brief, 50.0, 50.0 + HAIR, |past: f64| {
        vec![at_wall(placed(0, (4000.0 - past, -1990.0), NORTH, (2000.0, 900.0)), 2)]
    });
}

#[test]
fn storage_stands_at_a_wall() {
    let brief = rectangle(5000.0, 4000.0).piece(piece(PieceKind::Bookcase));
    let free = placed(0, (2500.0, -10.0), SOUTH, (800.0, 300.0));
    assert_eq!(broken(&brief, vec![free.clone()]), ["off_wall"]);
    assert_eq!(broken(&brief, vec![at_wall(free, 0)]), [""; 0]);
}

#[test]
fn storage_and_desks_keep_their_front_clear_over_their_width() {
    let kinds = [
        (PieceKind::Bookcase, Clearance::StorageFront),
        (PieceKind::Sideboard, Clearance::StorageFront),
        (PieceKind::Desk, Clearance::DeskFront),
    ];
    for (kind, rule) in kinds {
        let brief = rectangle(5000.0, 4000.0).rule(rule, 600.0).piece(piece(kind)).piece(piece(PieceKind::SideTable));
        let at = |x: f64, y: f64| {
            vec![at_wall(placed(0, (2500.0, 0.0), SOUTH, (800.0, 300.0)), 0), placed(1, (x, y), SOUTH, (400.0, 400.0))]
        };
        edge(rule.key(), &brief, -900.0, -900.0 + HAIR, |y| at(2500.0, y));
        edge(rule.key(), &brief, 3100.0, 3100.0 - HAIR, |x| at(x, -500.0));
        let rug = rectangle(5000.0, 4000.0).rule(rule, 600.0).piece(piece(kind)).piece(piece(PieceKind::Rug));
        assert_eq!(broken(&rug, at(2500.0, -400.0)), [""; 0]);
    }
}

#[test]
fn chairs_stand_along_both_long_sides_of_a_dining_table() {
    let dining = |passing| {
        let mut table = piece(PieceKind::DiningTable);
        table.passing = passing;
        let brief = rectangle(5000.0, 4000.0)
            .within(10.0)
            .rule(Clearance::DiningChair, 800.0)
            .rule(Clearance::DiningPassing, 950.0);
        brief.piece(table)
    };
    let at = |y: f64| vec![placed(0, (2500.0, y), SOUTH, (1800.0, 900.0))];
    edge("dining_chair", &dining(false), -810.0, -810.0 + HAIR, at);
    edge("dining_chair", &dining(false), -2290.0, -2290.0 - HAIR, at);
    edge("dining_passing", &dining(true), -960.0, -960.0 + HAIR, at);
    // At a wall, that side has no chairs.
    let side = at_wall(placed(0, (2500.0, -10.0), SOUTH, (1800.0, 900.0)), 0);
    assert_eq!(broken(&dining(false), vec![side]), [""; 0]);
    // A piece, a post and a leaf stop a chair.
    let piece_near = dining(false).piece(piece(PieceKind::SideTable));
    edge("dining_chair", &piece_near, -2510.0, -2510.0 + HAIR, |y| {
        vec![placed(0, (2500.0, -810.0), SOUTH, (1800.0, 900.0)), placed(1, (2500.0, y), SOUTH, (400.0, 400.0))]
    });
    let post = [(2450.0, -3000.0), (2550.0, -3000.0), (2550.0, -2900.0), (2450.0, -2900.0)];
    edge("dining_chair", &dining(false).fixed("post", &post), -1190.0, -1190.0 - HAIR, at);
    let leaf = dining(false).item("hall door", 1, 2000.0, 800.0, door(Hinge::Left));
    edge("dining_chair", &leaf, 3290.0, 3290.0 + HAIR, |x| vec![placed(0, (x, -1000.0), SOUTH, (1800.0, 900.0))]);
}

#[test]
fn what_is_needed_stands_and_has_a_size_in_its_range() {
    let brief = rectangle(5000.0, 4000.0).piece(piece(PieceKind::Sofa));
    assert_eq!(broken(&brief, Vec::new()), ["needed"]);
    let sized = |width, depth| broken(&brief, vec![placed(0, (2500.0, -1000.0), SOUTH, (width, depth))]);
    assert_eq!((sized(4000.0, 900.0), sized(4000.0 + HAIR, 900.0)), (vec![], vec!["size"]));
    assert_eq!((sized(2000.0, 200.0), sized(2000.0, 200.0 - HAIR)), (vec![], vec!["size"]));
    let mut spare = piece(PieceKind::Sofa);
    spare.needed = false;
    assert_eq!(broken(&rectangle(5000.0, 4000.0).piece(spare), Vec::new()), [""; 0]);
}
