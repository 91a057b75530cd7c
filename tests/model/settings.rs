//! What if: settings change what they name and nothing else, and are refused in words that help.

use elbowroom_model::{Brief, Criterion, Fault, Only, PieceId, SecondPlace, WallId, scenario};

use crate::plain_room::{PLAIN, brief, with};

fn set_in(text: &str, settings: &[&str]) -> Result<Brief, Vec<Fault>> {
    let settings: Vec<String> = settings.iter().map(|setting| (*setting).to_owned()).collect();
    scenario::read_set(text, None, &settings)
}

fn set(settings: &[&str]) -> Brief {
    set_in(PLAIN, settings).unwrap_or_else(|faults| panic!("{settings:?}: {faults:#?}"))
}

#[test]
fn a_setting_is_what_the_file_would_say() {
    let cases = [
        ("sofa.width=200..210", "{ kind: sofa, width: 180..240 }", "{ kind: sofa, width: 200..210 }"),
        (
            "sofa.depth=3 ft 2 in",
            "{ kind: sofa, width: 180..240 }",
            "{ kind: sofa, width: 180..240, depth: 3 ft 2 in }",
        ),
        ("sofa.width=none", "{ kind: sofa, width: 180..240 }", "{ kind: sofa }"),
        ("Coffee-Table.off wall=4", "{ kind: coffee-table }", "{ kind: coffee-table, off_wall: 4 }"),
        ("coffee table=none", "  - { kind: coffee-table }\n", ""),
        ("hall door.swings=out", "swings: in", "swings: out"),
        ("bay.view=liked", "width: 220 }", "width: 220, view: liked }"),
        ("bay=none", "      - { kind: window, name: bay, at: 82, width: 220 }\n", ""),
        ("ceiling=2.4 m", "units: cm", "units: cm\nceiling: 2.4 m"),
        ("passage=70cm", "units: cm", "units: cm\nclearances: { passage: 70cm }"),
        ("seat to table=40", "units: cm", "units: cm\nclearances: { seat_to_table: 40 }"),
        ("clearances.profile=snug", "units: cm", "units: cm\nclearances: { profile: snug }"),
        ("view=5", "units: cm", "units: cm\nwishes: { view: 5 }"),
        ("people=5", "units: cm", "units: cm\nhousehold: { people: 5 }"),
        ("household.children=true", "units: cm", "units: cm\nhousehold: { children: true }"),
        ("room.client=the lock keepers", "units: cm", "units: cm\nroom: { client: the lock keepers }"),
        ("wishes.talk=0.5", "units: cm", "units: cm\nwishes: { talk: 0.5 }"),
    ];
    for (setting, from, to) in cases {
        let mut found = set(&[setting]);
        let notice = found.notices.remove(0);
        assert!(notice.text.contains(setting), "{setting}: {notice:?}");
        assert!(PLAIN.contains(from), "{setting}");
        assert_eq!(found, brief(&PLAIN.replacen(from, to, 1)), "{setting}");
    }
}

#[test]
fn walls_are_set_together_so_that_the_room_closes() {
    let found = set(&["canal wall.length=500", "party wall.length=5 m"]);
    assert_eq!(found.room.walls[0].length(), 5000.0);
    assert_eq!(found.room.walls[2].length(), 5000.0);
}

#[test]
fn later_settings_see_what_earlier_ones_left() {
    let found = set(&["sofa.name=long seat", "long seat.width=200", "view=1", "view=4"]);
    assert_eq!((found.pieces[0].name.as_str(), found.pieces[0].width.most), ("long seat", 2000.0));
    assert_eq!(found.wishes.get(Criterion::View), 4.0);
}

#[test]
fn who_stays_keeps_its_name() {
    let text = with("  - { kind: armchair, width: 70 }\n  - { kind: armchair, width: 80 }\n");
    let found = set_in(&text, &["armchair 1=none"]).unwrap();
    let names: Vec<&str> = found.pieces.iter().map(|piece| piece.name.as_str()).collect();
    assert_eq!(names, ["sofa", "coffee table", "armchair 2"]);
    assert_eq!(found.pieces[2].width.most, 800.0);
    let pair = with("  - { kind: armchair, count: 2 }\n");
    assert_eq!(set_in(&pair, &["armchair=none"]).unwrap().pieces.len(), 2);
    assert_eq!(set_in(&pair, &["armchair 2=none"]).unwrap().pieces.len(), 3);
    assert_eq!(set_in(&pair, &["armchair.width=75"]).unwrap().pieces[3].width.most, 750.0);
}

#[test]
fn what_cannot_be_set_is_told_with_what_was_meant() {
    let cases = [
        ("sofa", "not_a_setting", "coffee table.width=120cm"),
        ("=5", "not_a_setting", "view=5"),
        ("view=", "not_a_setting", "view=5"),
        ("sofa.width=[", "not_a_setting", "passage=70cm"),
        ("coffe table.width=120", "unknown_setting", "`coffee table.width`"),
        ("pasage=60", "unknown_setting", "`passage`"),
        ("cofee table=none", "unknown_setting", "`coffee table`"),
        ("zzz=1", "unknown_setting", "Name a thing"),
        ("units=mm", "unknown_setting", ""),
        ("sofa=200", "unknown_setting", "sofa.width"),
        ("canal wall=none", "unknown_setting", "canal wall.length"),
        ("sofa.widht=200", "unknown_key", "`width`"),
        ("clearances.pasage=60", "unknown_key", "`passage`"),
        ("sofa.width=240..180", "range_backward", "smaller"),
        ("sofa.width=wide", "not_a_length", "number"),
        ("sofa.width=20 cn", "unknown_unit", "cm"),
        ("sofa.width=[1, 2]", "wrong_type", ""),
        ("view=7", "wish_out_of_range", "5"),
        ("sofa=none", "no_seat", "Add"),
        ("hall door.at=360", "item_past_wall_end", "hall door"),
        ("canal wall.length=900", "does_not_close", ""),
        ("sofa.name=bay", "name_twice", "bay"),
    ];
    for (setting, code, remedy) in cases {
        let faults = set_in(PLAIN, &[setting]).expect_err(setting);
        let [fault] = faults.as_slice() else { panic!("{setting}: {faults:#?}") };
        assert_eq!(fault.code, code, "{setting}");
        assert!(fault.remedy.contains(remedy), "{setting}: {fault:?}");
    }
}

#[test]
fn faults_of_settings_and_of_the_file_are_told_at_once() {
    let text = PLAIN.replace("width: 220", "width: 520");
    let faults = set_in(&text, &["pasage=60", "sofa.width=wide"]).unwrap_err();
    let codes: Vec<&str> = faults.iter().map(|fault| fault.code).collect();
    assert_eq!(codes, ["not_a_length", "unknown_setting", "item_past_wall_end"]);
}

#[test]
fn what_is_wanted_of_the_decisions_is_read_in_the_rooms_own_words() {
    let brief = brief(&with("  - { kind: armchair }\n"));
    let cases = [
        ("seat_back=canal wall", Only::SeatBack(Some(WallId(0)))),
        ("seat back = Stair-Wall", Only::SeatBack(Some(WallId(1)))),
        ("seat_back=free", Only::SeatBack(None)),
        ("facing=bay", Only::Facing(WallId(0))),
        ("media_wall=none", Only::MediaWall(None)),
        ("second_seats=left", Only::SecondSeat(None, SecondPlace::Left)),
        ("armchair=opposite", Only::SecondSeat(Some(PieceId(2)), SecondPlace::Opposite)),
    ];
    for (text, wanted) in cases {
        assert_eq!(Only::read(text, &brief.room, &brief.pieces), Ok(wanted), "{text}");
    }
    let refused = [
        ("seat_back", "not_a_choice", "seat_back=canal wall"),
        ("seat_bak=canal wall", "unknown_choice", "`seat_back`"),
        ("seat_back=canel wall", "unknown_choice", "`canal wall`"),
        ("hand=lefty", "unknown_choice", "`left`"),
        ("media_wall=zzz", "unknown_choice", "canal wall, stair wall, party wall, dining side, none"),
        ("armchair=behind", "unknown_choice", "opposite, left, right"),
    ];
    for (text, code, remedy) in refused {
        let fault = Only::read(text, &brief.room, &brief.pieces).unwrap_err();
        assert_eq!(fault.code, code, "{text}");
        assert!(fault.remedy.contains(remedy), "{text}: {fault:?}");
    }
}
