//! Sofas by how many sit on them: a place is 27 in wide, with 9 in for both arms (common practice, no source).

use elbowroom_model::{Brief, Fault, Piece, scenario};

fn read(row: &str) -> Result<Brief, Vec<Fault>> {
    let walls = "units: cm\nwalls:\n  - { length: 500, holds: [{ kind: door, at: 20, width: 83, swings: slides, leads_to: entrance }] }\n  - { length: 400 }\n  - { length: 500 }\n  - { length: 400 }\npieces:\n";
    scenario::read(&format!("{walls}  - {row}\n"), None)
}

fn sofa(row: &str) -> Piece {
    read(row).unwrap().pieces.remove(0)
}

#[test]
fn a_sofa_for_so_many_has_room_for_them_at_its_usual_size() {
    let places = |width: f64| ((width - 228.6) / 685.8 + 0.05).floor();
    for seats in 2..=4_u32 {
        let sofa = sofa(&format!("{{ kind: sofa, seats: {seats} }}"));
        // A drawing-office list has three on 2100, some 7 cm a place less than 27 in.
        assert!(places(sofa.width.usual + 190.0) >= f64::from(seats), "{seats}: {:?}", sofa.width);
        assert!(sofa.width.least <= sofa.width.usual && sofa.width.usual <= sofa.width.most);
        assert_eq!(sofa.seats, None, "places at a dining table");
    }
    let [two, three] = [2, 3].map(|seats| sofa(&format!("{{ kind: sofa, seats: {seats} }}")).width);
    assert!(two.most <= three.least, "{two:?} {three:?}");
    // The published usual of a three-seater is that of a sofa of which nothing is said.
    assert_eq!(three.usual, sofa("{ kind: sofa }").width.usual);
}

#[test]
fn a_width_of_its_own_holds_within_what_is_sold_for_so_many() {
    let sofa = sofa("{ kind: sofa, seats: 2, width: 150..170 }");
    assert_eq!((sofa.width.least, sofa.width.most), (1500.0, 1700.0));
}

#[test]
fn more_than_the_table_knows_is_told() {
    let faults = read("{ kind: sofa, seats: 9 }").unwrap_err();
    assert_eq!((faults[0].code, faults[0].item.as_deref()), ("too_many_seats", Some("sofa")));
    assert!(faults[0].message.contains("2, 3, 4"), "{}", faults[0].message);
    let faults = read("{ kind: armchair, seats: 2 }").unwrap_err();
    assert_eq!(faults[0].code, "key_of_another_kind");
}
