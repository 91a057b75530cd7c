//! What may stand in for a piece: `instead: [sofa]`.

use elbowroom_model::{Brief, PieceKind};

use crate::plain_room::{brief, changed, faults};

/// The plain room with these pieces.
fn room(pieces: &str) -> String {
    changed(&[("  - { kind: sofa, width: 180..240 }\n  - { kind: coffee-table }\n", pieces)])
}

fn told(pieces: &str) -> Vec<(&'static str, Option<String>)> {
    faults(&room(pieces)).into_iter().map(|fault| (fault.code, fault.item)).collect()
}

fn names(brief: &Brief) -> Vec<&str> {
    brief.pieces.iter().map(|piece| piece.name.as_str()).collect()
}

#[test]
fn a_stand_in_has_the_usual_sizes_of_its_kind_or_its_own() {
    let asked = brief(&room("  - { kind: corner-sofa, instead: [sofa, { kind: armchair, width: 80..95 }] }\n"));
    let sofa = brief(&room("  - { kind: sofa }\n"));
    let [one, other] = asked.pieces[0].instead.as_slice() else { panic!("{:?}", asked.pieces[0].instead) };
    assert_eq!(*one, sofa.pieces[0]);
    assert_eq!((other.kind, other.width.least, other.width.most), (PieceKind::Armchair, 800.0, 950.0));
    assert!(brief(&room("  - { kind: sofa }\n")).other_furnishings().is_empty());
}

#[test]
fn the_other_furnishings_are_all_ways_to_put_stand_ins() {
    let text = room(
        "  - { kind: corner-sofa, instead: [sofa] }\n  - { kind: sideboard, name: oak, instead: [bookcase, cabinet] }\n  \
         - { kind: floor-lamp, at: corner-sofa }\n",
    );
    let others = brief(&text).other_furnishings();
    let told: Vec<_> = others.iter().map(|other| (names(other), other.pieces[1].kind.key())).collect();
    let (corner, sofa) = (vec!["corner sofa", "oak", "floor lamp"], vec!["sofa", "oak", "floor lamp"]);
    assert_eq!(
        told,
        [
            (sofa.clone(), "sideboard"),
            (corner.clone(), "bookcase"),
            (sofa.clone(), "bookcase"),
            (corner, "cabinet"),
            (sofa, "cabinet"),
        ]
    );
    // What stands at a seat stands at the one in its place.
    assert_eq!(others[0].pieces[2].at, ["sofa"]);
    assert_eq!(others[1].pieces[2].at, ["corner sofa"]);
}

#[test]
fn a_row_of_several_is_stood_in_for_as_one() {
    let others = brief(&room("  - { kind: sofa, count: 2, instead: [armchair] }\n")).other_furnishings();
    assert_eq!(others.iter().map(names).collect::<Vec<_>>(), [["armchair 1", "armchair 2"]]);
    assert_eq!(others[0].pieces[1].alike, others[0].pieces[0].alike);
}

#[test]
fn what_cannot_stand_in_is_refused() {
    let item = |name: &str| Some(name.to_owned());
    assert_eq!(told("  - { kind: sofa, instead: [sofa] }\n"), [("stand_in_of_its_kind", item("sofa"))]);
    assert_eq!(
        told("  - { kind: sofa, instead: [armchair, { kind: armchair }] }\n"),
        [("stand_in_twice", item("sofa"))]
    );
    assert_eq!(told("  - { kind: sofa, instead: [bookcase] }\n"), [("stand_in_no_seat", item("sofa"))]);
    assert_eq!(
        told("  - { kind: sofa }\n  - { kind: corner-sofa, instead: [sofa] }\n"),
        [("name_twice", item("corner sofa"))]
    );
    assert_eq!(
        told(
            "  - { kind: sofa, width: 200, depth: 90, instead: [armchair], place: { wall: party wall, from: 50 }, hold: true }\n"
        ),
        [("stand_in_for_held", item("sofa"))]
    );
    assert_eq!(
        told("  - { kind: sofa }\n  - { kind: plant, instead: [open-floor] }\n"),
        [("stand_in_of_open_floor", item("plant"))]
    );
    assert_eq!(
        told("  - { kind: sofa, instead: [{ kind: armchair, width: 90..80 }] }\n").first().map(|fault| fault.0),
        Some("range_backward")
    );
    let many = "  - { kind: sofa, instead: [corner-sofa, armchair] }\n  - { kind: sideboard, instead: [bookcase, cabinet] }\n  \
                - { kind: plant, instead: [floor-lamp] }\n";
    assert_eq!(told(many), [("too_many", None)]);
    assert_eq!(faults(&room("  - { kind: sofa, instead: [corner-sofaa] }\n"))[0].code, "unknown_name");
}

#[test]
fn a_named_piece_keeps_its_name_whatever_stands_in() {
    let text = room("  - { kind: sofa }\n  - { kind: corner-sofa, name: den seat, instead: [sofa] }\n");
    assert_eq!(names(&brief(&text).other_furnishings()[0]), ["sofa", "den seat"]);
}

#[test]
fn other_words_for_kinds_are_put_right() {
    let asked = brief(&room("  - { kind: corner-sofa, instead: [settee] }\n"));
    assert_eq!(asked.pieces[0].instead[0].kind, PieceKind::Sofa);
}
