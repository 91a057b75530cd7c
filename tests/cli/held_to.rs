//! What a file says of its household, of the decisions it wants, of whom it is for, and of sizes that nothing has.

use serde_json::Value;

use crate::program::{Ended, run_with};

/// A room of 5 m by 4 m with a window and a door, a sofa and what else is asked.
fn room(more: &str) -> String {
    format!(
        "name: Lock room\nunits: cm\nmeasured_within: 1\nwalls:\n  - {{ name: lock wall, length: 500, holds: [{{ kind: window, name: \
         bay, at: 150, width: 200, sill: 90 }}] }}\n  - {{ name: party wall, length: 400 }}\n  - {{ name: hall wall, length: 500, \
         holds: [{{ kind: door, name: hall door, at: 20, width: 83, hinge: left, swings: out, leads_to: entrance }}] }}\n  - {{ \
         name: stair wall, length: 400 }}\npieces:\n  - {{ kind: sofa, width: 180..220 }}\n  - {{ kind: coffee-table }}\n{more}"
    )
}

fn rank(text: &str, more: &[&str]) -> Ended {
    run_with(&[&["rank", "--json", "--top", "1", "-"], more].concat(), text.as_bytes())
}

fn json(ended: &Ended) -> Value {
    serde_json::from_str(&ended.stdout).unwrap_or_else(|_| panic!("{ended:?}"))
}

fn ranked(text: &str) -> Value {
    json(&rank(text, &[]))
}

fn told(result: &Value, words: &str) -> bool {
    result["notices"].as_array().unwrap().iter().any(|notice| notice.as_str().unwrap().contains(words))
}

fn seats(result: &Value) -> &Value {
    let criteria = result["options"][0]["criteria"].as_array().unwrap();
    criteria.iter().find(|criterion| criterion["name"] == "seats").unwrap()
}

/// The walls behind the main seat, each once.
fn backs(result: &Value) -> Vec<String> {
    let options = result["options"].as_array().unwrap().iter();
    let mut backs: Vec<String> =
        options.map(|option| option["choices"]["seat_back"].as_str().unwrap_or("free").to_owned()).collect();
    backs.sort();
    backs.dedup();
    backs
}

#[test]
fn people_are_the_places_that_seats_are_held_against() {
    let [usual, few, many] =
        ["", "household: { people: 2 }\n", "household: { people: 6 }\n"].map(|it| ranked(&room(it)));
    let score = |result: &Value| seats(result)["score"].as_f64().unwrap();
    assert!(score(&many) < score(&few) && score(&few) >= score(&usual), "{}", seats(&many));
    let reason = |result: &Value| seats(result)["reason"].as_str().unwrap().to_owned();
    assert!(reason(&many).contains("fewer than the 6 wanted"), "{}", reason(&many));
    assert!(reason(&few).contains("and 2 are to"), "{}", reason(&few));
    assert!(!reason(&usual).contains("wanted"), "{}", reason(&usual));
    assert!(told(&many, "6 places to sit are wanted"));
}

/// The cautions rest on CPSC's and WCSC's public warnings (from memory): tip-over, window falls, window cords.
#[test]
fn children_bring_cautions_of_what_stands_where() {
    let pieces = "  - { kind: bookcase, name: books, needed: false }\n  - { kind: armchair, count: 2 }\n";
    let of = |children: &str| ranked(&room(&format!("{pieces}{children}")));
    let (nobody_says, here, none) =
        (of(""), of("household: { children: true }\n"), of("household: { children: false }\n"));
    let general = "Where children live";
    // Told once: where children are said to live, by what stands where.
    assert!(told(&nobody_says, general) && !told(&here, general) && !told(&none, general));
    let own =
        ["The books can tip over when a child climbs", "where a child climbs to the bay: ", "Keep cords of lamps"];
    for words in own {
        assert!(told(&here, words), "{words}: {:#?}", here["notices"]);
        assert!(!told(&nobody_says, words) && !told(&none, words), "{words}");
    }
    assert_eq!(here["options"], nobody_says["options"]);
}

#[test]
fn a_file_wants_decisions_as_the_command_line_does() {
    let wanted = "only: { seat_back: [party wall, free] }\n";
    let by_file = ranked(&room(wanted));
    let by_line = json(&rank(&room(""), &["--only", "seat_back=party wall", "--only", "seat_back=free"]));
    assert_eq!(by_file["options"], by_line["options"]);
    assert_eq!(by_file["notices"], by_line["notices"]);
    assert_eq!(backs(&by_file), ["free", "party wall"]);
    let narrowed = json(&rank(&room(wanted), &["--only", "seat_back=party wall"]));
    assert_eq!(backs(&narrowed), ["party wall"]);
    let excluded = ranked(&room("exclude: { seat_back: [party wall, free] }\n"));
    let both: Vec<String> = [backs(&by_file), backs(&excluded)].concat();
    assert_eq!(both.len(), backs(&ranked(&room(""))).len());
    assert!(told(&excluded, "not back to the party wall; not seat free of the walls"), "{:#?}", excluded["notices"]);
}

#[test]
fn where_the_decisions_leave_nothing_the_line_to_loosen_is_told() {
    let shut = room("only: { seat_back: party wall, facing: stair wall }\nexclude: { seat_back: party wall }\n");
    let ended = rank(&shut, &[]);
    assert_eq!(ended.code, Some(3));
    let result = json(&ended);
    let whats: Vec<&str> = result["remedies"]
        .as_array()
        .unwrap()
        .iter()
        .flat_map(|it| it["changes"].as_array().unwrap())
        .map(|it| it["what"].as_str().unwrap())
        .collect();
    assert!(whats.contains(&"exclude.seat_back") || whats.contains(&"only.seat_back"), "{:#?}", result["remedies"]);
    let page = run_with(&["rank", "-"], shut.as_bytes());
    assert_eq!(page.code, Some(3));
    assert!(page.stdout.contains("`seat_back` out of `"), "{}", page.stdout);
    let narrowed = rank(&room("only: { seat_back: party wall }\n"), &["--only", "seat_back=lock wall"]);
    assert_eq!(narrowed.code, Some(3), "{narrowed:?}");
}

#[test]
fn whom_it_is_for_stands_at_every_head_as_words() {
    let text = room("room: { client: \"<script>A & B</script>\", note: \"$(touch x) {{ y }}\" }\n");
    let (folder, plain) = (tempfile::tempdir().unwrap(), "For <script>A & B</script>");
    let file = folder.path().join("room.yaml");
    std::fs::write(&file, &text).unwrap();
    let of = |args: &[&str]| {
        let ended = crate::program::run(&[args, &[file.to_str().unwrap()]].concat());
        assert_eq!(ended.stderr, "", "{args:?}");
        ended.stdout
    };
    for args in [&["rank"][..], &["check"], &["tape", "--format", "text"], &["card", "--format", "text"]] {
        let page = of(args);
        assert!(page.contains(plain) && page.contains("Note: $(touch x) {{ y }}"), "{args:?}: {page}");
    }
    let pages = [&["report"][..], &["tape", "--format", "html"], &["card", "--format", "html"], &["draw"]];
    for args in pages {
        let page = of(&[args, &["-o", "-"]].concat());
        assert!(!page.contains("<script>A") && page.contains("A &amp; B"), "{args:?}: {page}");
    }
    let result = ranked(&text);
    assert_eq!(result["room"]["client"], "<script>A & B</script>");
    assert!(ranked(&room(""))["room"].get("client").is_none());
}

#[test]
fn sizes_that_nothing_has_are_told_by_check_and_rank_alike() {
    let text = room("").replace("180..220", "1800..2200").replace("leads_to: entrance", "leads_to: hallway");
    let words = ["is the file in mm? It would be 1800 mm then.", "is taken as the way in"];
    let (check, result) = (run_with(&["check", "-"], text.as_bytes()), ranked(&text));
    let check = check.stdout.split_whitespace().collect::<Vec<_>>().join(" ");
    for words in words {
        assert!(check.contains(words) && told(&result, words), "{words}: {check}");
    }
}
