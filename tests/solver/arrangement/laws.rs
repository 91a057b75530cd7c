//! Laws of the options: mirrored, turned, shuffled rooms, smaller least sizes.

use std::collections::{BTreeMap, BTreeSet};

use elbowroom_model::{Brief, Hinge, Piece, PieceId, PieceKind, Room, WallId};
use elbowroom_solver::arrangement::{Arrangement, Relation};
use proptest::prelude::{Just, ProptestConfig, Strategy, prop_assert, prop_assert_eq, proptest};

use super::plan::{armchairs, brief, corner_sofa, door, media_unit, piece, room, sofa, window};
use super::{keys, of};
use crate::support::rooms::{mirrored, turned};

/// An L of any proportions, a door in one wall, a window in another.
fn ells() -> impl Strategy<Value = Room> {
    let side = 1500.0..4000.0_f64;
    (side.clone(), side.clone(), side.clone(), side, 0.0..1.0_f64, 0_usize..6).prop_map(|(a, b, c, d, share, wall)| {
        let corners = [(0.0, 0.0), (a, 0.0), (a, -b), (a + c, -b), (a + c, -b - d), (0.0, -b - d)];
        let mut plan = room(&corners, &["north", "north-east", "step", "east", "south", "west"]);
        let at = share * (plan.walls[wall].length() - 830.0);
        plan.items.push(door("hall door", wall, at, 830.0, Hinge::Left));
        plan.items.push(window("bay", (wall + 3) % 6, 100.0, 1200.0, 450.0));
        plan
    })
}

fn pieces() -> impl Strategy<Value = Vec<Piece>> {
    (proptest::bool::ANY, proptest::bool::ANY, 0_usize..3).prop_map(|(corner, screen, second)| {
        let mut pieces = vec![if corner { corner_sofa() } else { sofa() }];
        pieces.extend(screen.then(media_unit));
        pieces.push(piece("books", PieceKind::Bookcase, (600.0, 1500.0), (250.0, 400.0)));
        pieces.push(piece("low table", PieceKind::CoffeeTable, (600.0, 1500.0), (400.0, 900.0)));
        match second {
            0 => {}
            1 => pieces.push(piece("settee", PieceKind::Sofa, (1300.0, 1600.0), (800.0, 900.0))),
            _ => pieces.extend(armchairs(pieces.len())),
        }
        pieces
    })
}

/// What an arrangement decides and leaves open, in names: the same however the file is ordered.
fn told(arrangement: &Arrangement, brief: &Brief) -> BTreeMap<String, BTreeSet<String>> {
    let wall = |wall: Option<WallId>| wall.map_or("free".to_owned(), |wall| brief.room.walls[wall.0].name.clone());
    let relation = |relation: Relation| match relation {
        Relation::Alone => "alone".to_owned(),
        Relation::Before { seat } => format!("before {}", brief.piece_name(seat)),
        Relation::Faces { seat } => format!("faces {}", brief.piece_name(seat)),
        Relation::Beside { seat, left } => format!("beside {} {left}", brief.piece_name(seat)),
        Relation::Behind { seat } => format!("behind {}", brief.piece_name(seat)),
        Relation::Under { seat } => format!("under {}", brief.piece_name(seat)),
    };
    let standing = |standing: &elbowroom_solver::arrangement::Standing| {
        let stand = |stand: &elbowroom_solver::arrangement::Stand| {
            format!("{:?} {:?} {} {}", standing.role, standing.hand, wall(stand.at_wall), relation(stand.relation))
        };
        (brief.piece_name(standing.piece).to_owned(), standing.stands.iter().map(stand).collect())
    };
    arrangement.standings.iter().map(standing).collect()
}

fn all_told(brief: &Brief) -> BTreeMap<String, BTreeMap<String, BTreeSet<String>>> {
    let found = of(brief);
    let dropped = found.dropped.iter().map(|dropped| (format!("dropped {}", dropped.arrangement.key), BTreeMap::new()));
    found.arrangements.iter().map(|a| (a.key.clone(), told(a, brief))).chain(dropped).collect()
}

/// Left for right, in keys and in what is told.
fn swapped(text: &str) -> String {
    let swap = [("left", "\u{1}"), ("right", "left"), ("\u{1}", "right"), ("Left", "\u{1}"), ("Right", "Left")];
    let swap = swap.into_iter().chain([("\u{1}", "Right"), ("true", "\u{1}"), ("false", "true"), ("\u{1}", "false")]);
    let text = swap.fold(text.to_owned(), |text, (from, to)| text.replace(from, to));
    // Chairs on both sides are named from the left.
    text.replace("right-left", "left-right")
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn a_mirrored_room_has_the_mirrored_arrangements(plan in ells(), pieces in pieces()) {
        // Only what is decided: which of two like chairs takes which side is no decision.
        let decided = |brief: &Brief| -> BTreeSet<String> { all_told(brief).into_keys().collect() };
        let mirror = brief(mirrored(&plan), pieces.clone());
        let plain = brief(plan, pieces);
        let expected: BTreeSet<String> = decided(&plain).iter().map(|key| swapped(key)).collect();
        prop_assert_eq!(decided(&mirror), expected);
    }

    #[test]
    fn a_turned_room_has_the_same_arrangements(plan in ells(), pieces in pieces(), angle in 0.0..std::f64::consts::TAU) {
        let turned = brief(turned(&plan, angle), pieces.clone());
        prop_assert_eq!(all_told(&turned), all_told(&brief(plan, pieces)));
    }

    #[test]
    fn a_shuffled_file_has_the_same_arrangements(
        plan in ells(),
        (pieces, order) in pieces().prop_flat_map(|pieces| {
            let order: Vec<usize> = (0..pieces.len()).collect();
            (Just(pieces), Just(order).prop_shuffle())
        }),
    ) {
        let mut shuffled: Vec<Piece> = order.iter().map(|place| pieces[*place].clone()).collect();
        let first_of_pair = shuffled.iter().position(|piece| piece.alike.is_some());
        for piece in shuffled.iter_mut().filter(|piece| piece.alike.is_some()) {
            piece.alike = first_of_pair.map(PieceId);
        }
        let shuffled = all_told(&brief(plan.clone(), shuffled));
        let plain = all_told(&brief(plan, pieces));
        prop_assert_eq!(shuffled.keys().collect::<Vec<_>>(), plain.keys().collect::<Vec<_>>());
    }

    /// Loosening never loses an option: a longer wall, a smaller least size.
    #[test]
    fn a_smaller_least_size_loses_no_arrangement(plan in ells(), pieces in pieces(), share in 0.3..1.0_f64) {
        let before = keys(&of(&brief(plan.clone(), pieces.clone())));
        let smaller = pieces.into_iter().map(|mut piece| {
            piece.width.least *= share;
            piece.depth.least *= share;
            piece
        });
        prop_assert!(before.is_subset(&keys(&of(&brief(plan, smaller.collect())))));
    }

    #[test]
    fn every_arrangement_is_whole(plan in ells(), pieces in pieces()) {
        let asked = brief(plan, pieces);
        for arrangement in of(&asked).arrangements {
            prop_assert_eq!(arrangement.standings.len(), asked.pieces.len());
            for (place, standing) in arrangement.standings.iter().enumerate() {
                prop_assert_eq!(standing.piece, PieceId(place));
                prop_assert!(!standing.stands.is_empty() || !asked.pieces[place].needed);
                for stand in &standing.stands {
                    prop_assert!((stand.facing.norm() - 1.0).abs() < 1e-12);
                }
            }
        }
    }
}
