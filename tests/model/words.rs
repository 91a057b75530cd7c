//! Words that are not the file's own: for the way in, for kinds.

use elbowroom_model::Fault;

use crate::plain_room::{PLAIN, brief, changed, faults, with};

/// The notices of a sound text.
fn notices(text: &str) -> Vec<String> {
    brief(text).notices.into_iter().map(|notice| notice.text).collect()
}

/// The one fault of a text that has one.
fn fault(text: &str) -> Fault {
    let mut all = faults(text);
    assert_eq!(all.len(), 1, "{all:#?}");
    all.remove(0)
}

#[test]
fn words_for_the_way_in_count_where_nothing_else_leads_to_it() {
    for word in ["hallway", "hall", "corridor", "front door", "lobby", "stairs", "Front-Door"] {
        let read = brief(&changed(&[("leads_to: entrance", &format!("leads_to: {word}"))]));
        let word = word.to_lowercase().replace('-', " ");
        assert!(read.room.items[1].kind.leads_to().is_some_and(elbowroom_model::LeadsTo::is_entrance), "{word}");
        let told = format!(
            "Nothing leads to the entrance, so the hall door, which leads to `{word}`, is taken as the way in; `leads_to: \
             entrance` says so."
        );
        assert_eq!(read.notices.into_iter().map(|notice| notice.text).collect::<Vec<_>>(), [told]);
    }
    let door = "{ kind: door, name: upper door, at: 200, width: 80, swings: slides, leads_to: stairs }";
    let entrance = format!("leads_to: entrance }}\n      - {door}");
    assert_eq!(notices(&changed(&[("leads_to: entrance }", &entrance)])), Vec::<String>::new());
    // Of two words the surer one counts.
    let both = brief(&changed(&[("leads_to: entrance }", &entrance.replace("entrance", "hallway"))]));
    let is_entrance =
        |item: &elbowroom_model::WallItem| item.kind.leads_to().map(elbowroom_model::LeadsTo::is_entrance);
    assert_eq!(both.room.items.iter().map(is_entrance).collect::<Vec<_>>(), [None, Some(true), Some(false)]);
}

#[test]
fn other_words_for_a_kind_are_read_as_that_kind_or_asked_back() {
    let told = |word: &str| notices(&changed(&[("kind: sofa", &format!("kind: {word}"))]));
    assert_eq!(told("settee"), ["`settee` is read as the kind sofa."]);
    assert_eq!(told("Couch"), ["`Couch` is read as the kind sofa."]);
    assert_eq!(told("l-shaped sofa"), ["`l-shaped sofa` is read as the kind corner-sofa."]);
    let unit = brief(&changed(&[("kind: coffee-table", "kind: tv stand, screen: 55 in")]));
    assert_eq!((unit.pieces[1].kind.key(), unit.pieces[1].name.as_str()), ("media-unit", "media unit"));
    let asked = fault(&changed(&[("kind: sofa", "kind: loveseat")]));
    assert_eq!(asked.code, "unknown_kind");
    assert_eq!(asked.remedy, "Did you mean `sofa`? Say `seats: 2`, or give its width, often 140 to 180 cm.");
    let table = fault(&changed(&[("kind: coffee-table", "kind: recliner")]));
    assert!(table.remedy.starts_with("Did you mean `armchair`? Give its depth as reclined"), "{}", table.remedy);
}

#[test]
fn other_words_for_what_walls_hold_are_known_too() {
    let outlet = "width: 220 }\n      - { kind: outlet, at: 400 }\n      - { kind: outlet, at: 420 }";
    assert_eq!(notices(&changed(&[("width: 220 }", outlet)])), ["`outlet` is read as the kind socket."]);
    let heater = "width: 220 }\n      - { kind: heater, at: 400, width: 60, depth: 10 }";
    let asked = fault(&changed(&[("width: 220 }", heater)]));
    assert!(asked.remedy.starts_with("Did you mean `radiator`?"), "{}", asked.remedy);
    let bay = "width: 220 }\n      - { kind: bay, at: 400, width: 60 }";
    let asked = fault(&changed(&[("width: 220 }", bay)]));
    assert!(asked.remedy.contains("walls of its own"), "{}", asked.remedy);
}

#[test]
fn other_words_for_keys_name_the_key_where_the_thing_has_it_and_none_that_looks_like_it() {
    let sofa = fault(&changed(&[("kind: sofa", "kind: sofa, length: 200")]));
    assert_eq!((sofa.code, sofa.remedy.as_str()), ("unknown_key", "Did you mean `width`?"));
    let counter = "fixed: [{ kind: counter, length: 200, corners: [[0,-10],[60,-10],[60,-200],[0,-200]] }]\n";
    let asked = fault(&with(counter));
    assert_eq!(asked.remedy, "Known here: corners, height, kind, line, name, use, used_at.");
    let swings = fault(&changed(&[("swings: in", "swings: inwards")]));
    assert_eq!(swings.remedy, "Did you mean `in`?");
}

#[test]
fn a_setting_may_use_such_a_word_too() {
    let settings = ["coffee table.kind=end table".to_owned()];
    let read = elbowroom_model::scenario::read_set(PLAIN, None, &settings).unwrap();
    assert_eq!(read.pieces[1].kind.key(), "side-table");
}
