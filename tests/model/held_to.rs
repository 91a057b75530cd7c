//! Who lives in a room, which decisions its options are held to, and the words at the heads of its pages.

use elbowroom_model::{Hand, Household, Only, Order, SecondPlace, WallId};

use crate::plain_room::{brief, changed, faults, with};

fn notices(text: &str) -> Vec<String> {
    brief(text).notices.into_iter().map(|notice| notice.text).collect()
}

#[test]
fn a_household_is_read_and_what_it_changes_is_told() {
    let text = with("household: { people: 5, children: true }\n");
    assert_eq!(brief(&text).household, Household { people: Some(5), children: Some(true) });
    assert_eq!(
        notices(&text),
        [
            "5 places to sit are wanted (`household`): the criterion `seats` counts against that.",
            "Children live here: what to heed for them is told among these notices, of the pieces and of where they stand."
        ]
    );
    let without = with("household: { children: false }\n");
    assert_eq!(brief(&without).household, Household { people: None, children: Some(false) });
    assert_eq!(notices(&without), ["No children live here: the caution for children is left out."]);
    assert_eq!(notices(&with("")), Vec::<String>::new());
}

#[test]
fn a_household_of_nobody_and_of_halves_is_refused() {
    for (people, code) in [("0", "not_positive"), ("2.5", "wrong_type"), ("many", "wrong_type"), ("-1", "wrong_type")] {
        let told = faults(&with(&format!("household: {{ people: {people} }}\n")));
        assert_eq!((told.len(), told[0].code), (1, code), "{people}: {told:#?}");
    }
    assert_eq!(faults(&with("household: { peple: 3 }\n"))[0].remedy, "Did you mean `people`?");
}

#[test]
fn decisions_are_read_one_or_several() {
    let more = "kind: corner-sofa }\n  - { kind: armchair, count: 2 }\n  - { kind: media-unit";
    let text = changed(&[("kind: coffee-table", more)])
        + "only: { seat_back: [party wall, free], hand: left, armchair 1: opposite }\nexclude: { facing: bay, media_wall: none }\n";
    let wanted = brief(&text).wanted;
    let chair = Only::SecondSeat(
        brief(&text).pieces().find(|(_, it)| it.name == "armchair 1").map(|(id, _)| id),
        SecondPlace::Opposite,
    );
    let seat = [Only::SeatBack(Some(WallId(2))), Only::SeatBack(None)];
    assert_eq!(wanted.only, [chair, Only::Hand(Hand::Left), seat[0], seat[1]]);
    assert_eq!(wanted.exclude, [Only::Facing(WallId(0)), Only::MediaWall(None)]);
    assert_eq!(brief(&text).only, []);
}

#[test]
fn decisions_that_are_not_known_are_told_in_their_lines_with_the_nearest() {
    let cases = [
        ("only: { seat_bak: party wall }", "Did you mean `seat_back`?"),
        ("only: { seat_back: [free, party wal] }", "Did you mean `party wall`?"),
        ("exclude: { facing: dinning side }", "Did you mean `dining side`?"),
        ("exclude: { hand: up }", "Known here: left, right."),
    ];
    for (line, remedy) in cases {
        let told = faults(&with(&format!("{line}\n")));
        assert_eq!((told.len(), told[0].code), (1, "unknown_choice"), "{line}: {told:#?}");
        assert_eq!((told[0].remedy.as_str(), told[0].place.map(|place| place.line)), (remedy, Some(19)), "{line}");
    }
    for line in ["only: { facing: 3 }", "only: [facing]", "only: { facing: { wall: bay } }"] {
        assert_eq!(faults(&with(&format!("{line}\n")))[0].code, "wrong_type", "{line}");
    }
    assert_eq!(faults(&with("only: { hand: left, hand: right }\n"))[0].code, "key_twice");
}

#[test]
fn words_at_the_head_are_kept_as_words() {
    let text = with("room:\n  client: \"<b>A & B</b>\"\n  note: |\n    {{ run }}\n    $(this)\n");
    let told = Order { client: Some("<b>A & B</b>".to_owned()), note: Some("{{ run }} $(this)".to_owned()) };
    assert_eq!(brief(&text).order, told);
    assert_eq!(brief(&with("room: { note: ' ' }\n")).order, Order::default());
    assert_eq!(faults(&with("room: { note: \"a\\e[31mb\" }\n"))[0].code, "control_character");
    assert_eq!(faults(&with(&format!("room: {{ note: {} }}\n", "x".repeat(301))))[0].code, "too_many");
}
