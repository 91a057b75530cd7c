//! Routes of layouts in rooms that are easy to get wrong. Each figure follows from the room's own measures (D); mm.

use elbowroom_model::{
    Brief, Clearance, Door, Fireplace, Hand, Hinge, ItemId, ItemKind, LeadsTo, Piece, PieceId, PieceKind, Point,
    Radiator, SizeRange, Swings, View, WallId, Window,
};
use elbowroom_solver::routes::{Demand, End, Floor, HeldToEmptyRoom, Route, ShapeId, all, demands};
use elbowroom_solver::{Layout, Placed, Site, Size};

use crate::support::rooms::{Furnish, outline, piece, rectangle};

fn door(leads_to: &str) -> ItemKind {
    let leads_to = if leads_to == "entrance" { LeadsTo::Entrance } else { LeadsTo::Space(leads_to.to_owned()) };
    ItemKind::Door(Door { hinge: Some(Hinge::Left), swings: Swings::Out, opens_to: None, leads_to })
}

fn window() -> ItemKind {
    ItemKind::Window(Window { sill: 900.0, head: 2100.0, view: View::Plain, opens: true, must_reach: true })
}

fn radiator(depth: f64) -> ItemKind {
    ItemKind::Radiator(Radiator { depth, height: 600.0, keep_clear: 100.0 })
}

/// A piece of a kind that may shrink to this width.
fn least(kind: PieceKind, width: f64) -> Piece {
    Piece { width: SizeRange { least: width, usual: width, most: 4000.0 }, ..piece(kind) }
}

/// Where the back's middle stands, which way it faces, its width and depth.
type Place = ((f64, f64), (f64, f64), f64, f64);

/// The layout with the pieces of the brief, in its order.
fn layout(places: &[Place]) -> Layout {
    let place = |(piece, &((x, y), facing, width, depth)): (usize, &Place)| Placed {
        piece: PieceId(piece),
        at_wall: None,
        anchor: Point::new(x, y),
        facing: Point::new(facing.0, facing.1),
        hand: None,
        size: Size { width, depth, ..Size::default() },
    };
    Layout { placed: places.iter().enumerate().map(place).collect(), ..Layout::default() }
}

const UP: (f64, f64) = (0.0, 1.0);
const DOWN: (f64, f64) = (0.0, -1.0);
const LEFT: (f64, f64) = (-1.0, 0.0);

fn routes(brief: &Brief, layout: &Layout) -> Vec<Route> {
    all(brief, &Site::of(brief), layout)
}

fn the_route(brief: &Brief, layout: &Layout) -> Route {
    let mut routes = routes(brief, layout);
    assert_eq!(routes.len(), 1, "{routes:?}");
    routes.remove(0)
}

fn about(found: f64, expected: f64) -> bool {
    (found - expected).abs() < 0.01
}

/// 4800 x 3600 with a hall door in the middle of the south wall.
fn room() -> Brief {
    rectangle(4800.0, 3600.0).rule(Clearance::Walkway, 900.0).rule(Clearance::Passage, 600.0).item(
        "hall door",
        2,
        2000.0,
        800.0,
        door("entrance"),
    )
}

#[test]
fn a_seat_that_faces_away_is_reached_round_its_wider_end() {
    let brief = room().piece(least(PieceKind::Sofa, 1500.0));
    // Faces the north wall; 700 free at its right-hand end (east), 300 at its left.
    let layout = layout(&[((2200.0, -2000.0), UP, 3800.0, 900.0)]);
    let route = the_route(&brief, &layout);
    assert!(about(route.width, 700.0), "{route:?}");
    assert_eq!(route.needs, 600.0);
    let part = ShapeId::Part { piece: PieceId(0), part: 0 };
    assert!(
        route
            .pinch
            .is_some_and(|pinch| pinch.between.contains(&part) && pinch.between.contains(&ShapeId::Wall(WallId(1))))
    );
    let length = route.length.unwrap();
    assert!(length > 2500.0 && length < 6000.0, "{length}");
}

#[test]
fn a_window_with_a_radiator_is_reached_at_the_radiators_front() {
    let brief = room().item("window", 0, 1500.0, 1200.0, window()).item("radiator", 0, 1600.0, 1000.0, radiator(110.0));
    let floor = Floor::of(&brief, &Site::of(&brief));
    let mouth = floor.mouth(&brief, &Layout::default(), End::Item(ItemId(1))).unwrap();
    assert_eq!(mouth.at, [Point::new(1600.0, -110.0), Point::new(2600.0, -110.0)]);
    let route = the_route(&brief, &Layout::default());
    assert!(about(route.width, 800.0), "the doorway is the narrower mouth: {route:?}");
    // A sideboard whose front is 500 before the radiator's.
    let brief = brief.piece(piece(PieceKind::MediaUnit));
    let before = layout(&[((2100.0, -1010.0), UP, 2000.0, 400.0)]);
    let before = Layout {
        placed: before.placed.into_iter().map(|p| Placed { anchor: Point::new(2100.0, -1010.0), ..p }).collect(),
        ..before
    };
    let route = the_route(&brief, &before);
    assert!(about(route.width, 500.0), "{route:?}");
}

#[test]
fn a_cupboard_flush_with_the_wall_counts_beside_a_door_and_a_rug_does_not() {
    let brief = rectangle(4800.0, 3600.0)
        .rule(Clearance::Walkway, 900.0)
        .rule(Clearance::Passage, 600.0)
        .item("hall door", 2, 2000.0, 800.0, door("entrance"))
        .item("kitchen door", 0, 2000.0, 900.0, door("kitchen"))
        .piece(piece(PieceKind::MediaUnit))
        .piece(piece(PieceKind::Rug));
    // The doorway runs from x = 2000 to 2800 and is widened by 50 at each side; the cupboard's end stands at 2820.
    let layout = layout(&[((3320.0, -3600.0), UP, 1000.0, 400.0), ((2400.0, -3000.0), UP, 2000.0, 1000.0)]);
    let route = the_route(&brief, &layout);
    assert!(about(route.width, 870.0), "{route:?}");
    assert_eq!(route.needs, 900.0);
    assert_eq!(route.length, None, "a disc of 900 does not pass");
}

#[test]
fn two_entrances_on_one_wall_have_one_route_between_them() {
    let brief = rectangle(4800.0, 3600.0)
        .rule(Clearance::Walkway, 900.0)
        .item("front door", 0, 1000.0, 760.0, door("entrance"))
        .item("garden door", 0, 1800.0, 760.0, door("entrance"));
    let route = the_route(&brief, &Layout::default());
    // Neither is widened past the middle of the 40 between them, so the other ends take up 120.
    let floor = Floor::of(&brief, &Site::of(&brief));
    let demand = demands(&brief, &Layout::default())[0];
    let [first, second] = floor.mouths(&brief, &Layout::default(), &demand).unwrap();
    assert!(about(first.stretch[0].x, 880.0) && about(first.stretch[1].x, 1780.0), "{first:?}");
    assert!(about(second.stretch[0].x, 1780.0) && about(second.stretch[1].x, 2680.0), "{second:?}");
    assert!(about(route.width, 900.0) && route.pinch.is_none(), "{route:?}");
    // From the middle of the one to the middle of the other, round the end that both share: half a circle of 450.
    let expected = std::f64::consts::PI * 450.0;
    assert!((route.length.unwrap() / expected - 1.0).abs() < 0.01, "{route:?}");
}

#[test]
fn the_mouth_of_a_corner_sofa_runs_from_its_return_to_its_least_main_run() {
    let sofa = least(PieceKind::CornerSofa, 2000.0);
    let brief = room().piece(sofa).piece(piece(PieceKind::CoffeeTable));
    let corner = Placed {
        piece: PieceId(0),
        at_wall: Some(WallId(0)),
        anchor: Point::new(4800.0, 0.0),
        facing: Point::new(0.0, -1.0),
        hand: Some(Hand::Left),
        size: Size { width: 2600.0, return_length: Some(1900.0), depth: 1000.0, ..Size::default() },
    };
    let mut with_sofa = Layout { placed: vec![corner], ..Layout::default() };
    let floor = Floor::of(&brief, &Site::of(&brief));
    let mouth = floor.mouth(&brief, &with_sofa, End::Piece(PieceId(0))).unwrap();
    assert_eq!(mouth.at, [Point::new(3800.0, -1000.0), Point::new(2800.0, -1000.0)]);
    assert!(about(the_route(&brief, &with_sofa).width, 800.0));
    // Its own table in the corner is left out; one that stands farther than a passage from its front counts.
    let table = |y: f64| layout(&[((0.0, 0.0), DOWN, 0.0, 0.0), ((3300.0, y), DOWN, 1000.0, 600.0)]).placed[1].clone();
    with_sofa.placed.push(table(-1400.0));
    assert!(about(the_route(&brief, &with_sofa).width, 800.0));
    with_sofa.placed[1] = table(-1700.0);
    let route = the_route(&brief, &with_sofa);
    assert!(route.chain.contains(&ShapeId::Part { piece: PieceId(1), part: 0 }), "{route:?}");
}

#[test]
fn a_return_beside_its_mouth_stops_the_widening_and_the_other_end_takes_it_up() {
    let brief = room().rule(Clearance::Passage, 1200.0).piece(least(PieceKind::CornerSofa, 2000.0));
    let corner = Placed {
        piece: PieceId(0),
        at_wall: Some(WallId(0)),
        anchor: Point::new(0.0, 0.0),
        facing: Point::new(0.0, -1.0),
        hand: Some(Hand::Right),
        size: Size { width: 2600.0, return_length: Some(1900.0), depth: 1000.0, ..Size::default() },
    };
    let layout = Layout { placed: vec![corner], ..Layout::default() };
    let floor = Floor::of(&brief, &Site::of(&brief));
    let demand = demands(&brief, &layout)[0];
    let [_, mouth] = floor.mouths(&brief, &layout, &demand).unwrap();
    let ends = mouth.stretch.map(|end| end.x);
    assert!(about(ends[0].min(ends[1]), 1000.0) && about(ends[0].max(ends[1]), 2200.0), "{ends:?}");
}

#[test]
fn what_the_empty_room_lacks_is_told_and_not_asked_of_the_furniture() {
    // A kitchen door in a wall of 700 at the end of a narrow part, and a post 650 from the far wall.
    let brief = rectangle(4800.0, 3600.0)
        .rule(Clearance::Walkway, 900.0)
        .item("hall door", 2, 2000.0, 800.0, door("entrance"))
        .item("kitchen door", 1, 200.0, 700.0, door("kitchen"))
        .fixed("counter", &[(3900.0, -2950.0), (4200.0, -2950.0), (4200.0, -650.0), (3900.0, -650.0)])
        .piece(piece(PieceKind::MediaUnit));
    let site = Site::of(&brief);
    let floor = Floor::of(&brief, &site);
    let demand = Demand { from: ItemId(0), to: End::Item(ItemId(1)), rule: Clearance::Walkway };
    assert!(about(floor.needs(&brief, &demand), 650.0), "{}", floor.needs(&brief, &demand));
    let held = floor.held_to_empty_room(&brief);
    assert!(matches!(held[..], [HeldToEmptyRoom { demand: narrow, gives }] if narrow == demand && about(gives, 650.0)));
    assert!(floor.widest(&brief, &Layout::default(), &demand).passes());
    // Furniture that narrows it further is still refused.
    let pinched = layout(&[((3600.0, 0.0), DOWN, 1000.0, 400.0)]);
    let found = floor.widest(&brief, &pinched, &demand);
    assert!(!found.passes(), "{found:?}");
    assert!(found.links.iter().any(|link| link.gap < 650.0 && link.gap > 0.0), "{found:?}");
}

#[test]
fn what_is_known_within_a_tolerance_is_narrower_by_it() {
    // A counter 700 from the wall, both known within 10: 680 is left.
    let brief = rectangle(4800.0, 3600.0)
        .within(10.0)
        .rule(Clearance::Walkway, 900.0)
        .item("hall door", 3, 1500.0, 900.0, door("entrance"))
        .item("kitchen door", 1, 1500.0, 900.0, door("kitchen"))
        .fixed("counter", &[(2000.0, -2900.0), (2500.0, -2900.0), (2500.0, 0.0), (2000.0, 0.0)]);
    let route = the_route(&brief, &Layout::default());
    assert!(about(route.width, 680.0), "{route:?}");
}

#[test]
fn a_fireplace_stops_a_walker_where_its_breast_stands() {
    let fire = ItemKind::Fireplace(Fireplace { depth: 400.0, opening: None, height: None, keep_clear: 900.0 });
    let brief = room().item("fireplace", 0, 1900.0, 1000.0, fire).rule(Clearance::Passage, 700.0);
    let brief = brief.piece(least(PieceKind::Desk, 600.0));
    // The desk stands from the west wall to x = 3000, its front 620 before the breast; its mouth lies west of the breast.
    let layout = layout(&[((1500.0, -2020.0), UP, 3000.0, 1000.0)]);
    let route = the_route(&brief, &layout);
    assert!(about(route.width, 620.0), "{route:?}");
    let pinch = route.pinch.unwrap();
    assert!(pinch.between.contains(&ShapeId::Item(ItemId(1))), "{pinch:?}");
    assert!(pinch.between.contains(&ShapeId::Part { piece: PieceId(0), part: 0 }), "{pinch:?}");
}

#[test]
fn a_walk_round_an_outside_corner_is_a_taut_cord() {
    // An L-shaped room, 3000 wide in both wings; both doorways as wide as the rule, so the centre passes at their middles.
    let corners = [(0.0, 0.0), (3000.0, 0.0), (3000.0, -3000.0), (6000.0, -3000.0), (6000.0, -6000.0), (0.0, -6000.0)];
    let brief = outline(&corners, &["north", "inner east", "inner north", "east", "south", "west"])
        .rule(Clearance::Walkway, 900.0)
        .item("hall door", 0, 2000.0, 900.0, door("entrance"))
        .item("kitchen door", 3, 100.0, 900.0, door("kitchen"));
    let route = the_route(&brief, &Layout::default());
    // The corner (3000, -3000) with 450 round it, from (2450, 0) to (6000, -3550).
    let (radius, apart) = (450.0_f64, 550.0_f64.hypot(3000.0));
    let between = 1.5 * std::f64::consts::PI - 2.0 * (550.0_f64 / 3000.0).atan();
    let arc = between - 2.0 * (radius / apart).acos();
    let expected = 2.0 * (apart * apart - radius * radius).sqrt() + radius * arc;
    assert!((route.length.unwrap() / expected - 1.0).abs() < 0.001, "{:?} {expected}", route.length);
}

#[test]
fn a_turning_circle_is_found_where_it_just_fits_and_a_table_may_stand_in_it() {
    let wheelchair = |kind: PieceKind| {
        room().rule(Clearance::TurningCircle, 1500.0).piece(piece(kind)).piece(piece(PieceKind::CoffeeTable))
    };
    // A wide piece leaves 1500 before the south wall, no more; a coffee table stands in it.
    let deep = |depth: f64| layout(&[((2400.0, 0.0), DOWN, 4800.0, depth), ((1000.0, -3500.0), UP, 800.0, 500.0)]);
    let brief = wheelchair(PieceKind::Sofa);
    let floor = Floor::of(&brief, &Site::of(&brief));
    let centre = floor.find_circle(&brief, &deep(2100.0)).unwrap();
    assert!(about(centre.y, -2850.0), "{centre:?}");
    assert!(floor.circle_is_free(&brief, &deep(2100.0), centre));
    let reached = floor.circle_width(&brief, &deep(2100.0), End::Item(ItemId(0)), centre);
    assert!(reached.passes(), "{reached:?}");
    assert_eq!(floor.find_circle(&brief, &deep(2101.0)), None);
}

#[test]
fn a_turning_circle_out_of_reach_does_not_count() {
    // A board shuts off the part of the room where the circle would fit, but for a gap of 600.
    let brief = rectangle(4800.0, 3600.0)
        .rule(Clearance::Walkway, 900.0)
        .rule(Clearance::TurningCircle, 1500.0)
        .item("hall door", 3, 100.0, 900.0, door("entrance"))
        .piece(piece(PieceKind::Bookcase));
    let floor = Floor::of(&brief, &Site::of(&brief));
    let board = |gap: f64| layout(&[((1600.0, -(3600.0 + gap) / 2.0), LEFT, 3600.0 - gap, 300.0)]);
    assert_eq!(floor.find_circle(&brief, &board(600.0)), None);
    assert!(floor.find_circle(&brief, &board(900.0)).is_some());
}
