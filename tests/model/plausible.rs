//! Figures that nothing built or sold has: what is told of them, and what is asked back.

use crate::plain_room::{brief, changed, faults};

/// The notices of a sound text.
fn notices(text: &str) -> Vec<String> {
    brief(text).notices.into_iter().map(|notice| notice.text).collect()
}

/// The one fault of a text that has one.
fn fault(text: &str) -> elbowroom_model::Fault {
    let mut all = faults(text);
    assert_eq!(all.len(), 1, "{all:#?}");
    all.remove(0)
}

#[test]
fn a_size_that_nothing_sold_has_is_told_with_the_unit_that_was_likely_meant() {
    let sofa = |width: &str| notices(&changed(&[("width: 180..240", &format!("width: {width}"))]));
    assert_eq!(
        sofa("1800..2400"),
        ["The width of the sofa is 1800 cm, and 150 cm to 297.2 cm is usual: is the file in mm? It would be 1800 mm \
          then."]
    );
    assert_eq!(
        sofa("2.1"),
        ["The width of the sofa is 2.1 cm, and 150 cm to 297.2 cm is usual: is the file in m? It would be 2.1 m then."]
    );
    assert_eq!(
        sofa("180 m"),
        ["The width of the sofa is 18000 cm, and 150 cm to 297.2 cm is usual: is it meant in cm? It would be 180 cm \
          then."]
    );
    assert_eq!(
        sofa("50000"),
        ["The width of the sofa is 50000 cm, and 150 cm to 297.2 cm is usual: check the figure and its unit."]
    );
}

#[test]
fn a_range_is_told_only_where_all_of_it_is_out_of_reach() {
    for width in ["1..240", "180..5000", "..5000", "3 ft..", "891", "15"] {
        let told = notices(&changed(&[("width: 180..240", &format!("width: {width}"))]));
        assert_eq!(told, Vec::<String>::new(), "{width}");
    }
}

#[test]
fn what_walls_hold_and_the_ceiling_are_held_to_what_is_built() {
    let text = changed(&[
        ("units: cm", "units: cm\nceiling: 2.5"),
        ("width: 220 }", "width: 220 }\n      - { kind: radiator, at: 330, width: 90, depth: 0.1, height: 5000 }"),
        ("at: 20, width: 83", "at: 20, width: 0.83"),
    ]);
    insta::assert_snapshot!(notices(&text).join("\n"), @r#"
    The ceiling of the room is 2.5 cm, and 200 cm to 500 cm is usual: is the file in m? It would be 2.5 m then.
    The depth of the radiator is 0.1 cm, and 4 cm to 30 cm is usual: is the file in m? It would be 0.1 m then.
    The height of the radiator is 5000 cm, and 15 cm to 220 cm is usual: check the figure and its unit.
    The width of the hall door is 0.83 cm, and 50 cm to 200 cm is usual: is the file in m? It would be 0.83 m then.
    "#);
}

#[test]
fn a_room_of_no_rooms_size_is_refused_with_the_unit_in_which_it_would_be_one() {
    let metres = fault(&changed(&[("units: cm", "units: m")]));
    assert_eq!(metres.code, "too_large");
    assert!(metres.remedy.ends_with("In cm the room would have 18.1 m2."), "{}", metres.remedy);
    let millimetres = fault(&changed(&[("units: cm", "units: mm")]));
    assert_eq!(millimetres.code, "too_small");
    assert!(millimetres.remedy.ends_with("In cm the room would have 18.1 m2."), "{}", millimetres.remedy);
    let inches = notices(&changed(&[("units: cm", "units: in")]).replace("length: 486", "length: 700"));
    let of_the_room =
        "The room has 168 m2, and living rooms have 8 to 50 m2: is the file in cm? The room would then have 26.0 m2.";
    assert!(inches.iter().any(|told| told == of_the_room), "{inches:#?}");
}

#[test]
fn a_ceiling_that_falls_further_out_than_the_room_is_deep_is_told() {
    let falls = |over: &str| {
        let keys = format!("name: party wall\n    ceiling_from: 240\n    ceiling_to: 110\n    ceiling_over: {over}");
        notices(&changed(&[("name: party wall", &keys)]))
            .into_iter()
            .filter(|told| told.contains("check `ceiling_over`"))
            .collect::<Vec<_>>()
    };
    assert_eq!(falls("150"), Vec::<String>::new());
    let told = falls("480");
    assert!(told.len() == 1 && told[0].contains("480 cm") && told[0].contains("372 cm"), "{told:?}");
}

#[test]
fn a_screen_larger_than_any_is_told_with_its_unit_too() {
    let told = notices(&changed(&[("kind: coffee-table", "kind: media-unit, screen: 200 in")]));
    assert!(told.iter().any(|one| one.contains("is 200 in, and 20 in to 120 in is usual")), "{told:?}");
}

#[test]
fn a_bare_screen_that_is_no_screen_in_the_files_unit_is_asked_back_with_both_readings() {
    let screen = |screen: &str| changed(&[("kind: coffee-table", &format!("kind: media-unit, screen: {screen}"))]);
    let asked = fault(&screen("43"));
    assert_eq!((asked.code, asked.place.map(|place| place.line)), ("screen_in_doubt", Some(18)));
    assert_eq!(
        asked.message,
        "`screen` of media unit is 43: by the file's unit 43 cm (16.93 in), and screens have 20 in to 120 in."
    );
    assert_eq!(
        asked.remedy,
        "Write its unit: `43 in` if it is 43 inches (109.22 cm), `43 cm` if it is so small or large."
    );
    assert_eq!(fault(&screen("\"43\"")).code, "screen_in_doubt");
    let millimetres = fault(&screen("1220"));
    assert!(millimetres.remedy.contains("`1220 mm` if it is that in mm (48.03 in)"), "{}", millimetres.remedy);
    for sound in ["43 in", "43 cm", "109", "140", "304.8", "50.8", "\"5 ft\""] {
        assert_eq!(notices(&screen(sound)), Vec::<String>::new(), "{sound}");
    }
    let inches = screen("43").replace("units: cm", "units: in").replace("486", "190").replace("372", "150");
    let inches = inches.replace("at: 82, width: 220", "at: 32, width: 86").replace("180..240", "70..95");
    let read = brief(&inches.replace("at: 20, width: 83", "at: 8, width: 32"));
    assert_eq!(read.pieces[1].screen, Some(43.0 * 25.4));
}
