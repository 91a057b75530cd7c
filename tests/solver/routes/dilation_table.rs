//! Widths of 120 rooms against a table made by dilation: shapes grown by half a width, the free places put together,
//! bisection over the width.
//!
//! Source: `tests/data/routes.json`, derived (D) with arcs of 1024 sides to the circle, to 0.1 mm; a second method
//! agreed within 0.01 mm. Units mm.

use elbowroom_model::{FixedId, ItemId, Point, WallId};
use elbowroom_solver::geometry::Convex;
use elbowroom_solver::routes::{End, Mouth, Owner, ShapeId, Stop, walk_between, widest_between};
use serde_json::Value;

/// Rounding of the table's figures beyond its own accuracy, mm.
const ROUNDED: f64 = 0.011;

struct Case {
    id: String,
    needs: f64,
    width: f64,
    accuracy: f64,
    passes: bool,
    walls: Vec<Stop>,
    mouths: [CaseMouth; 2],
    shapes: Vec<Stop>,
}

struct CaseMouth {
    mouth: Mouth,
    widened: [Point; 2],
    joined: Vec<usize>,
    own_table: Option<usize>,
}

#[test]
fn widths_agree_with_dilation() {
    let mut wrong = Vec::new();
    for case in cases() {
        let found = widest_between(&case.walls, &mouths(&case), &things(&case), case.needs);
        if (found.width - case.width).abs() > case.accuracy + ROUNDED || found.passes() != case.passes {
            wrong.push(format!("{}: {:.3} instead of {}, chain {:?}", case.id, found.width, case.width, found.chain));
        }
    }
    assert!(wrong.is_empty(), "{} wrong:\n{}", wrong.len(), wrong.join("\n"));
}

#[test]
fn mouths_are_widened_as_in_the_table() {
    for case in cases() {
        for (own, given) in mouths(&case).iter().zip(&case.mouths) {
            let off = |i: usize| (own.stretch[i] - given.widened[i]).norm();
            assert!(off(0) < 2e-3 && off(1) < 2e-3, "{}: {:?} instead of {:?}", case.id, own.stretch, given.widened);
        }
    }
}

#[test]
fn a_disc_that_passes_has_a_walk_and_a_wider_one_has_none() {
    for case in cases() {
        let (mouths, things) = (mouths(&case), things(&case));
        let walk = |diameter: f64| walk_between(&case.walls, &mouths, &things, diameter).map(|walk| walk.length);
        let pinched = widest_between(&case.walls, &mouths, &things, case.needs).pinch.is_some();
        let length = walk(case.width);
        assert_eq!(length.is_some(), case.width > 0.0, "{}: {length:?}", case.id);
        if pinched {
            assert_eq!(walk(case.width + 2.0), None, "{}", case.id);
        }
        let half = walk(case.width / 2.0);
        assert!(half.zip(length).is_none_or(|(half, length)| half <= length + 0.1), "{}: {half:?} {length:?}", case.id);
    }
}

/// Cases that are turned or mirrored copies of others.
const COPIES: [(&str, &str); 6] =
    [("r094", "r008"), ("r095", "r044"), ("r096", "r060"), ("r097", "r060"), ("r098", "r026"), ("r099", "r025")];

#[test]
fn a_walk_is_as_long_in_a_turned_or_mirrored_room() {
    let cases = cases();
    let walk = |id: &str| {
        let case = cases.iter().find(|case| case.id == id).unwrap();
        [1.0, 0.5]
            .map(|share| walk_between(&case.walls, &mouths(case), &things(case), share * case.width).unwrap().length)
    };
    for (copy, original) in COPIES {
        let (copied, original) = (walk(copy), walk(original));
        assert!((0..2).all(|i| (copied[i] - original[i]).abs() < 0.1), "{copy}: {copied:?} instead of {original:?}");
    }
}

#[test]
fn the_two_ends_of_a_route_can_be_swapped() {
    for case in cases() {
        let [first, second] = mouths(&case);
        let there = widest_between(&case.walls, &[first.clone(), second.clone()], &things(&case), case.needs);
        let back = widest_between(&case.walls, &[second, first], &things(&case), case.needs);
        assert!((there.width - back.width).abs() < 1e-6, "{}: {} and {}", case.id, there.width, back.width);
    }
}

#[test]
fn every_link_of_a_chain_is_no_wider_than_its_pinch() {
    for case in cases() {
        let found = widest_between(&case.walls, &mouths(&case), &things(&case), case.needs);
        assert_eq!(found.pinch.is_some(), !found.links.is_empty(), "{}", case.id);
        for link in &found.links {
            assert!(link.gap <= found.width + 1e-9, "{}: {link:?}", case.id);
            let across = (link.at[1] - link.at[0]).norm();
            assert!((across - link.gap).abs() < 0.01, "{}: {link:?}", case.id);
        }
    }
}

fn things(case: &Case) -> Vec<Stop> {
    let left_out = |place: &usize| case.mouths.iter().any(|mouth| mouth.own_table == Some(*place));
    (0..case.shapes.len()).filter(|place| !left_out(place)).map(|place| case.shapes[place].clone()).collect()
}

fn mouths(case: &Case) -> [Mouth; 2] {
    let [first, second] = &case.mouths;
    let also = |mouth: &CaseMouth| mouth.joined.iter().map(|place| case.shapes[*place].clone()).collect::<Vec<_>>();
    let (also_first, also_second) = (also(first), also(second));
    Mouth::widened_pair(
        [first.mouth.clone(), second.mouth.clone()],
        case.needs,
        &case.walls,
        [&also_first, &also_second],
    )
}

fn cases() -> Vec<Case> {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/../tests/data/routes.json");
    let text = std::fs::read_to_string(path).unwrap();
    let table: Vec<Value> = serde_json::from_str(&text).unwrap();
    assert_eq!(table.len(), 120);
    table.iter().map(case).collect()
}

fn case(row: &Value) -> Case {
    let corners = points(&row["walls"]);
    let next = |i: usize| corners[(i + 1) % corners.len()];
    let wall = |i: usize| Stop::stretch(ShapeId::Wall(WallId(i)), corners[i], next(i));
    let shapes: Vec<_> = row["shapes"].as_array().unwrap().iter().map(points).collect();
    let thing = |(i, corners): (usize, &Vec<Point>)| {
        Stop::new(ShapeId::Fixed(FixedId(i)), Convex::counter_clockwise(corners.clone()))
    };
    let end = |i: usize| mouth(&row["mouths"][i], i, &corners, &shapes);
    Case {
        id: row["id"].as_str().unwrap().to_owned(),
        needs: row["needs"].as_f64().unwrap(),
        width: row["width"].as_f64().unwrap(),
        accuracy: row["accuracy"].as_f64().unwrap(),
        passes: row["passes"].as_bool().unwrap(),
        walls: (0..corners.len()).map(wall).collect(),
        mouths: [end(0), end(1)],
        shapes: shapes.iter().enumerate().map(thing).collect(),
    }
}

/// A mouth of the table: its walker stands on the inner side of its wall, or off the shape whose front it is.
fn mouth(row: &Value, place: usize, corners: &[Point], shapes: &[Vec<Point>]) -> CaseMouth {
    let pair = |row: &Value| <[Point; 2]>::try_from(points(row)).unwrap();
    let at = pair(&row["at"]);
    let side = (at[1] - at[0]).unit().unwrap().left();
    let middle = (at[0] + at[1]) * 0.5;
    let (owner, before) = match row["owner"].as_u64() {
        None => {
            let on = |i: &usize| {
                let (start, end) = (corners[*i], corners[(*i + 1) % corners.len()]);
                let along = (end - start).unit().unwrap();
                let (from, off) = (along.dot(middle - start), along.cross(middle - start));
                off.abs() < 1e-3 && from > 0.0 && from < (end - start).norm()
            };
            let wall = (0..corners.len()).find(on).unwrap();
            let inward = (corners[(wall + 1) % corners.len()] - corners[wall]).right();
            (Owner::Wall, if side.dot(inward) > 0.0 { side } else { -side })
        }
        Some(shape) => {
            let shape = shape as usize;
            let heart = Convex::counter_clockwise(shapes[shape].clone()).middle();
            let away = side.dot(middle - heart) > 0.0;
            (Owner::Shape(ShapeId::Fixed(FixedId(shape))), if away { side } else { -side })
        }
    };
    let places = |key: &str| row[key].as_array().into_iter().flatten().map(|v| v.as_u64().unwrap() as usize);
    CaseMouth {
        mouth: Mouth::new(End::Item(ItemId(place)), at, before, owner),
        widened: pair(&row["widened"]),
        joined: places("joined").collect(),
        own_table: row["own_table"].as_u64().map(|place| place as usize),
    }
}

fn points(row: &Value) -> Vec<Point> {
    let coordinate = |point: &Value, i: usize| point[i].as_f64().unwrap();
    row.as_array().unwrap().iter().map(|point| Point::new(coordinate(point, 0), coordinate(point, 1))).collect()
}
