//! Sofas by how many sit on them: a place is 27 in wide, with 9 in for both arms (common practice, no source).

use elbowroom_model::{Brief, Fault, Hand, Pair, Piece, scenario};

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

/// As many as the file says; else as sofas of that width are sold for, a drawing-office list's two on 1500 and three on 2100
/// among them.
#[test]
fn a_sofa_seats_as_many_as_it_is_sold_for() {
    let any = sofa("{ kind: sofa }").sits;
    assert_eq!([1300.0, 1500.0, 2100.0, 2800.0].map(|width| any.at(width)), [Some(1), Some(2), Some(3), Some(4)]);
    assert_eq!(sofa("{ kind: sofa, seats: 2, width: 150 }").sits.at(1500.0), Some(2));
    assert_eq!(sofa("{ kind: corner-sofa }").sits.at(2300.0), None);
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

#[test]
fn two_sofas_may_be_a_pair() {
    let pair = |how: &str| read(&format!("{{ kind: sofa, count: 2{how} }}")).unwrap().pieces[1].pair;
    assert_eq!([pair(", pair: facing"), pair(", pair: corner")], [Pair::Facing, Pair::Corner]);
    assert_eq!([pair(", pair: either"), pair("")], [Pair::Either; 2]);
}

#[test]
fn a_pair_is_of_two_that_both_stand() {
    let code = |row: &str| read(row).unwrap_err()[0].code;
    assert_eq!(code("{ kind: sofa, pair: facing }"), "pair_not_of_two");
    assert_eq!(code("{ kind: sofa, count: 3, pair: corner }"), "pair_not_of_two");
    assert_eq!(code("{ kind: sofa, count: 2, pair: facing, needed: false }"), "pair_left_out");
    assert!(read("{ kind: sofa, count: 2, pair: either, needed: false }").is_ok_and(|brief| !brief.pieces[0].needed));
    assert_eq!(code("{ kind: corner-sofa, count: 2, pair: facing }"), "key_of_another_kind");
}

#[test]
fn a_return_may_have_a_depth_of_its_own() {
    let deep = |row: &str| sofa(&format!("{{ kind: corner-sofa, depth: 90..95{row} }}"));
    assert_eq!(deep("").return_depth, None);
    let chaise = deep(", chaise: true, return_depth: 80..110");
    assert_eq!(chaise.return_depth.map(|own| (own.least, own.most)), Some((800.0, 1100.0)));
    // Three hand's breadths of the main run are left beyond the chaise (ours, no source).
    let narrow = deep(", width: 160..170, return_depth: 80..160").return_depth.unwrap();
    assert_eq!((narrow.least, narrow.most), (800.0, 1400.0));
    let faults = read("{ kind: corner-sofa, width: 120, depth: 80, return_depth: 100 }").unwrap_err();
    assert_eq!(faults[0].code, "run_too_short");
    assert!(faults[0].message.contains("beyond the return, 100 cm deep"), "{}", faults[0].message);
    assert_eq!(read("{ kind: sofa, return_depth: 90 }").unwrap_err()[0].code, "key_of_another_kind");
}

#[test]
fn a_second_return_makes_a_u() {
    let u = |row: &str| sofa(&format!("{{ kind: corner-sofa, second_return: 150..190{row} }}"));
    let plain = u("");
    // The first is like the second unless it is given too; its width is that of a U.
    assert_eq!(plain.return_length, plain.second_return);
    assert!(plain.width.least >= 2800.0 && plain.has_like_returns(), "{:?}", plain.width);
    assert_eq!(plain.hands, [Hand::Left], "two returns alike: either hand is the same sofa");
    for own in [", return: 150..210", ", chaise: true", ", return_depth: 100"] {
        assert_eq!((u(own).hands.len(), u(own).has_like_returns()), (2, false), "{own}");
    }
    let faults = read("{ kind: corner-sofa, second_return: 170, width: 240, depth: 95 }").unwrap_err();
    assert_eq!(faults[0].code, "run_too_short");
    assert_eq!(faults[0].remedy, "Give a width of 250 cm or more: 60 cm between the returns.");
    let faults = read("{ kind: corner-sofa, second_return: 100, depth: 95 }").unwrap_err();
    assert!(faults[0].message.starts_with("The second_return of corner sofa is 100 cm"), "{}", faults[0].message);
    assert_eq!(read("{ kind: armchair, second_return: 150 }").unwrap_err()[0].code, "key_of_another_kind");
}

#[test]
fn a_day_bed_is_as_long_as_a_bed() {
    // A single mattress is 90 x 200 cm, or 39 x 75 in (common practice, no source).
    let bed = sofa("{ kind: day-bed }");
    assert_eq!((bed.width.usual, bed.depth.usual), (2000.0, 900.0));
    let told = read("{ kind: daybed }").unwrap().notices;
    assert!(told.iter().any(|notice| notice.text.contains("day-bed")), "{told:?}");
}
