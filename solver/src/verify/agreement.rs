//! The widths that `routes` finds by chains of shapes against discs that travel here, on rooms drawn at random.

use elbowroom_model::{
    Brief, Clearance, Door, ItemKind, LeadsTo, Opening, PieceId, PieceKind, Point, Radiator, Rule, Stance, Swings,
    View, Window,
};

use super::checked_layout::CheckedLayout;
use super::checked_room::CheckedRoom;
use super::ways::{around, ways};
use crate::arrangement::{Arrangement, Choices};
use crate::layout::{Layout, Placed, Size};
use crate::routes::{Demand, End, Floor, demands};
use crate::site::Site;

#[path = "../../../tests/support/rooms.rs"]
#[expect(dead_code, reason = "the suites use the rest of it")]
mod rooms;
use rooms::{Furnish, outline, piece};

/// Numbers drawn by the rule of Lehmer (Park and Miller 1988, multiplier 48271): the same on every machine.
struct Draw(u64);

impl Draw {
    fn next(&mut self, from: f64, to: f64) -> f64 {
        self.0 = self.0 * 48_271 % 0x7fff_ffff;
        from + (to - from) * (self.0 as f64 / 2_147_483_647.0)
    }

    fn one_of<T: Copy>(&mut self, all: &[T]) -> T {
        all[(self.next(0.0, all.len() as f64) as usize).min(all.len() - 1)]
    }
}

fn room(draw: &mut Draw) -> Brief {
    let (w, d) = (draw.next(3500.0, 6000.0), draw.next(3000.0, 5000.0));
    let slant = draw.next(-400.0, 400.0);
    let rectangle = [(0.0, 0.0), (w, 0.0), (w, -d), (0.0, -d)];
    let oblique = [(0.0, 0.0), (w, slant), (w + slant, -d), (slant, -d - slant)];
    let angle = [(0.0, 0.0), (w, 0.0), (w, -1800.0), (w - 1500.0, -1800.0), (w - 1500.0, -d), (0.0, -d)];
    let names = ["a", "b", "c", "d", "e", "f"];
    let (brief, far) = match draw.one_of(&[0, 1, 2]) {
        0 => (outline(&rectangle, &names), draw.one_of(&[0, 1, 3])),
        1 => (outline(&oblique, &names), draw.one_of(&[0, 1, 3])),
        _ => (outline(&angle, &names), 0),
    };
    let entrance =
        ItemKind::Door(Door { hinge: None, swings: Swings::Slides, opens_to: None, leads_to: LeadsTo::Entrance });
    let other = LeadsTo::Space("kitchen".to_owned());
    let kitchen = ItemKind::Opening(Opening { leads_to: other, stance: Stance::None });
    let window = Window { sill: 900.0, head: 2100.0, view: View::Plain, opens: true, must_reach: true };
    let radiator = ItemKind::Radiator(Radiator { depth: 110.0, height: 600.0, keep_clear: 0.0 });
    let at = draw.next(0.0, 400.0);
    let brief = brief
        .within(draw.one_of(&[0.0, 10.0]))
        .rule(Clearance::Walkway, draw.one_of(&[750.0, 914.4]))
        .rule(Clearance::Passage, draw.one_of(&[457.2, 609.6]))
        .item("hall door", 0, draw.next(0.0, 1200.0), 800.0, entrance)
        .item("kitchen", far, 2300.0, draw.next(600.0, 700.0), kitchen)
        .item("window", 1, at, 1200.0, ItemKind::Window(window))
        .item("radiator", 1, at + draw.one_of(&[0.0, 300.0]), 900.0, radiator);
    let (x, y) = (draw.next(500.0, 3000.0), draw.next(-2500.0, -500.0));
    let mut brief = brief.fixed("post", &[(x, y), (x + 200.0, y), (x + 200.0, y + 200.0), (x, y + 200.0)]);
    brief.room.fixed.iter_mut().for_each(|post| post.use_depth = Some(600.0));
    brief
}

fn furnished(draw: &mut Draw, mut brief: Brief) -> (Brief, Layout) {
    let kinds = [
        PieceKind::Sofa,
        PieceKind::CornerSofa,
        PieceKind::Armchair,
        PieceKind::CoffeeTable,
        PieceKind::Bookcase,
        PieceKind::SideTable,
        PieceKind::Rug,
    ];
    let mut layout = Layout::default();
    for (place, kind) in kinds.into_iter().enumerate() {
        let mut one = piece(kind);
        one.width.least = if kind == PieceKind::CornerSofa { 1500.0 } else { 600.0 };
        brief = brief.piece(one);
        let degrees: f64 = draw.one_of(&[0.0, 90.0, 180.0, 270.0, 30.0]);
        let (sin, cos) = degrees.to_radians().sin_cos();
        let corner = kind == PieceKind::CornerSofa;
        let hand = corner.then(|| draw.one_of(&[elbowroom_model::Hand::Left, elbowroom_model::Hand::Right]));
        let width = if corner { draw.next(1500.0, 2400.0) } else { draw.next(600.0, 1800.0) };
        let return_length = corner.then(|| draw.next(1000.0, 1700.0));
        let size = Size { width, return_length, depth: draw.next(400.0, 900.0), ..Size::default() };
        let anchor = Point::new(draw.next(300.0, 4000.0), draw.next(-3500.0, -300.0));
        let placed = Placed { piece: PieceId(place), at_wall: None, anchor, facing: Point::new(cos, sin), hand, size };
        let mut with = layout.clone();
        with.placed.push(placed);
        if stands(&brief, &with) {
            layout = with;
        }
    }
    (brief, layout)
}

fn arrangement() -> Arrangement {
    Arrangement {
        key: String::new(),
        choices: Choices {
            seat_back: None,
            faced: None,
            facing: Point::new(0.0, -1.0),
            hand: None,
            media_wall: None,
            second_seats: Vec::new(),
        },
        main_seat: PieceId(0),
        standings: Vec::new(),
    }
}

/// In the room, and in nobody's way.
fn stands(brief: &Brief, layout: &Layout) -> bool {
    let arrangement = arrangement();
    let checked = CheckedRoom::of(brief);
    let scene = CheckedLayout::of(&checked, layout, &arrangement);
    let fixed = |breach: &super::Breach| breach.rule == Rule::Fixed;
    super::inside::breaches(&scene).is_empty()
        && super::overlap::breaches(&scene).is_empty()
        && !super::zones::breaches(&scene).iter().any(fixed)
}

#[test]
fn chains_and_travelling_discs_agree_on_every_width() {
    let arrangement = arrangement();
    let mut draw = Draw(20_261_125);
    let mut wrong = Vec::new();
    let (mut compared, mut limited) = (0, 0);
    for case in 0..150 {
        let brief = room(&mut draw);
        let (brief, layout) = furnished(&mut draw, brief);
        let site = Site::of(&brief);
        let floor = Floor::of(&brief, &site);
        let checked = CheckedRoom::of(&brief);
        let scene = CheckedLayout::of(&checked, &layout, &arrangement);
        let ways = ways(&scene);
        let demands = demands(&brief, &layout);
        let ends = |demand: &Demand| (End::Item(demand.from), demand.to);
        let expected: Vec<_> = demands.iter().map(ends).collect();
        assert_eq!(ways.iter().map(|way| (way.from, way.to)).collect::<Vec<_>>(), expected);
        for (way, demand) in ways.iter().zip(&demands) {
            let width = floor.widest(&brief, &layout, demand).width;
            let obstacles = around(&scene, &layout, way);
            let passes = |diameter| way.lets_pass(&scene, &layout, &obstacles, diameter);
            if (width > 0.5 && !passes(width - 0.5)) || passes(width + 0.5) {
                let mut own = (0.0, 2000.0);
                while own.1 - own.0 > 0.01 {
                    let middle = (own.0 + own.1) / 2.0;
                    if passes(middle) { own.0 = middle } else { own.1 = middle }
                }
                wrong.push(format!("room {case}, {demand:?}: told {width:.2}, travelled {:.2}", own.0));
            }
            compared += 1;
            limited += usize::from(width > 0.0 && width < way.asks - 0.5);
        }
    }
    assert!(wrong.is_empty(), "{} of {compared}: {wrong:#?}", wrong.len());
    // Else the drawing has gone astray and the test compares nothing.
    assert!(compared > 400 && limited > 100, "{compared} compared, {limited} with a pinch");
}
