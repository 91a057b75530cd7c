//! The clear distances that a layout is told to have are those that a tape would find.

use elbowroom_model::{Brief, Clearance, PieceId, PieceKind, Point};
use elbowroom_solver::answer::Gap;
use elbowroom_solver::gaps::measured;
use elbowroom_solver::{Layout, Placed, Site, Size};

use crate::support::rooms::{Furnish, piece, rectangle};

const SOUTH: Point = Point::new(0.0, -1.0);
const WEST: Point = Point::new(-1.0, 0.0);

fn placed(piece: usize, back: (f64, f64), facing: Point, (width, depth): (f64, f64)) -> Placed {
    let size = Size { width, depth, ..Size::default() };
    Placed { piece: PieceId(piece), at_wall: None, anchor: Point::new(back.0, back.1), facing, hand: None, size }
}

/// Names and clear distance of every gap in tenths of a millimetre; its two places are as far apart.
fn told(brief: &Brief, placed: Vec<Placed>) -> Vec<(String, f64)> {
    let layout = Layout { placed, ..Layout::default() };
    let gaps = measured(brief, &Site::of(brief), &layout);
    for (gap, [from, to]) in &gaps {
        assert!(((*to - *from).norm() - gap.clear).abs() < 1e-6, "{gap:?} {from:?} {to:?}");
    }
    let names = |gap: &Gap| gap.between.map(|thing| thing.name(brief).to_owned()).join(" - ");
    gaps.iter().map(|(gap, _)| (names(gap), (gap.clear * 10.0).round() / 10.0)).collect()
}

/// A sideboard at the north wall and a media unit at the east wall that stands before its front by so much.
fn before_by(much: f64) -> Vec<(String, f64)> {
    let brief = rectangle(4000.0, 3000.0)
        .rule(Clearance::StorageFront, 450.0)
        .piece(piece(PieceKind::Sideboard))
        .piece(piece(PieceKind::MediaUnit));
    let sideboard = placed(0, (2550.0 + much, 0.0), SOUTH, (2000.0, 400.0));
    told(&brief, vec![sideboard, placed(1, (4000.0, -1658.8), WEST, (1600.0, 450.0))])
}

#[test]
fn a_neighbour_that_is_flush_but_for_rounding_is_not_before_a_front() {
    let to_the_wall = vec![("sideboard - south".to_owned(), 2600.0)];
    for much in [-1e-4, 0.0, 1e-7, 1e-5, 1e-3, 0.4, 0.9] {
        assert_eq!(before_by(much), to_the_wall, "{much} mm before it");
    }
    assert_eq!(before_by(5.0), [("sideboard - media unit".to_owned(), 458.8)]);
}

#[test]
fn a_seat_faces_no_screen_that_it_is_flush_beside() {
    let brief = rectangle(6000.0, 4000.0)
        .rule(Clearance::ScreenToSeat, 1500.0)
        .piece(piece(PieceKind::Sofa))
        .piece(piece(PieceKind::MediaUnit));
    let aside = |by: f64| {
        let sofa = placed(0, (2000.0, 0.0), SOUTH, (2000.0, 900.0));
        let unit = placed(1, (4000.0 - by, -4000.0), Point::new(0.0, 1.0), (2000.0, 400.0));
        told(&brief, vec![sofa, unit])
    };
    assert_eq!(aside(0.4), []);
    assert_eq!(aside(5.0), [("sofa - media unit".to_owned(), 2700.0)]);
}

/// Chairs stand along the long sides, which are the ends of a table that is narrower than it is deep.
#[test]
fn before_a_dining_table_is_before_a_long_side() {
    let brief = rectangle(4000.0, 3000.0).rule(Clearance::DiningChair, 700.0).piece(piece(PieceKind::DiningTable));
    let table = |size| told(&brief, vec![placed(0, (1500.0, -1000.0), SOUTH, size)]);
    assert_eq!(table((1200.0, 800.0)), [("dining table - south".to_owned(), 1200.0)], "its front");
    assert_eq!(table((800.0, 1200.0)), [("dining table - west".to_owned(), 1100.0)], "the nearer of its ends");
}
