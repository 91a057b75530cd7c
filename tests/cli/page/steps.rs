//! What is changed in the page is in the file, with all else as it was; what is downloaded is what the command line makes.

use std::fs;

use serde_json::{Value, json};

use super::served::{Served, demo};
use crate::program::{program, run};

fn step(from: &Value, changes: Value) -> Value {
    json!({ "from": from["step"], "changes": changes })
}

#[test]
fn a_step_changes_its_key_alone_and_two_windows_do_not_lose_one() {
    let text = demo("which-hand.yaml");
    let served = Served::file(&text);
    served.get("/room/room.yaml/furnish");
    let first = served.settled();
    let wider = step(&first, json!([{ "do": "set", "at": "pieces.0.width", "to": "210..270" }]));
    let told = served.post("/room/room.yaml/step", &wider);
    assert_eq!((told.status, told.json()["stage"].as_str()), (200, Some("busy")));
    assert_eq!(fs::read_to_string(served.room()).unwrap(), text.replace("width: 210..280", "width: 210..270"));
    // The other window still has the first text before it: the same place is told, with what stands there.
    let late = served.post("/room/room.yaml/step", &wider);
    assert_eq!((late.status, late.json()["look"].as_bool()), (409, Some(true)));
    assert_eq!((&late.json()["there"], &late.json()["step"]), (&json!(["210..270"]), &told.json()["step"]));
    assert!(late.json()["told"].as_str().unwrap().contains("210..270"));
    // Another place is changed beside it.
    let named =
        served.post("/room/room.yaml/step", &step(&first, json!([{ "do": "set", "at": "name", "to": "Ours" }])));
    assert_eq!((named.status, named.json()["beside"].as_bool()), (200, Some(true)));
    let both = fs::read_to_string(served.room()).unwrap();
    assert!(both.contains("width: 210..270") && both.contains("name: Ours"), "{both}");
    let one = served.post("/room/room.yaml/step", &json!({ "from": named.json()["step"], "step": "undo" }));
    assert_eq!(one.status, 200);
    // Rows that came or went are other rows: what was meant is not guessed.
    let third = served.settled();
    let fewer = step(&third, json!([{ "do": "remove", "at": "pieces.0" }]));
    assert_eq!(served.post("/room/room.yaml/step", &fewer).status, 200);
    let late = step(&third, json!([{ "do": "set", "at": "pieces.1.depth", "to": 50 }]));
    assert_eq!(served.post("/room/room.yaml/step", &late).status, 409);
    served.post("/room/room.yaml/step", &json!({ "from": served.settled()["step"], "step": "undo" }));
    let now = served.settled();
    let back = served.post("/room/room.yaml/step", &json!({ "from": now["step"], "step": "undo" }));
    assert_eq!(back.status, 200);
    assert_eq!(fs::read_to_string(served.room()).unwrap(), text);
}

#[test]
fn what_something_else_wrote_is_told_and_kept() {
    let text = demo("which-hand.yaml");
    let served = Served::file(&text);
    served.get("/room/room.yaml/furnish");
    let now = served.settled();
    let theirs = text.replace("width: 210..280", "width: 200..280");
    fs::write(served.room(), &theirs).unwrap();
    // The same place: nothing is written over.
    let change = json!([{ "do": "set", "at": "pieces.0.width", "to": "210..260" }]);
    let told = served.post("/room/room.yaml/step", &step(&now, change));
    assert_eq!(told.status, 409);
    let sentence = told.json()["told"].as_str().unwrap().to_owned();
    assert!(sentence.contains("changed by something else") && sentence.contains("200..280"), "{sentence}");
    assert_eq!(fs::read_to_string(served.room()).unwrap(), theirs);
    // Another place: theirs stays, ours comes beside it.
    let told = served.post("/room/room.yaml/step", &step(&now, json!([{ "do": "set", "at": "name", "to": "Ours" }])));
    assert_eq!((told.status, told.json()["beside"].as_bool()), (200, Some(true)));
    let both = fs::read_to_string(served.room()).unwrap();
    assert!(both.contains("width: 200..280") && both.contains("name: Ours"), "{both}");
}

#[test]
fn a_page_that_lies_open_hears_what_something_else_wrote() {
    let text = demo("which-hand.yaml");
    let served = Served::file(&text);
    served.get("/room/room.yaml/furnish");
    let now = served.settled();
    assert_eq!(served.get("/room/room.yaml/news").json()["step"], now["step"]);
    fs::write(served.room(), format!("{text}# somebody else was here\n")).unwrap();
    let news = served.get("/room/room.yaml/news").json();
    assert!(news["step"].as_u64() > now["step"].as_u64(), "{news}");
}

#[test]
fn faults_are_told_at_their_fields() {
    let served = Served::file(&demo("which-hand.yaml"));
    served.get("/room/room.yaml/measure");
    let now = served.settled();
    let told =
        served.post("/room/room.yaml/step", &step(&now, json!([{ "do": "set", "at": "walls.1.length", "to": "9 m" }])));
    let told = told.json();
    assert_eq!(told["stage"], "faulty");
    let page = served.get("/room/room.yaml/measure").text();
    assert!(page.contains("class=\"gap\"") && page.contains("gap "), "the gap is drawn");
    let told = served
        .post("/room/room.yaml/step", &step(&told, json!([{ "do": "set", "at": "walls.1.length", "to": "far" }])));
    let faults = told.json()["faults"].clone();
    assert!(faults.as_array().unwrap().iter().any(|fault| fault["at"] == "walls.1.length"), "{faults}");
}

#[test]
fn nothing_fits_tells_what_would_help() {
    let served = Served::file(&demo("nothing-fits.yaml"));
    served.get("/room/room.yaml/options");
    assert_eq!(served.settled()["stage"], "done");
    let page = served.get("/room/room.yaml/options").text();
    assert!(page.contains("What would help"), "{page}");
}

#[test]
fn sheets_are_those_of_the_command_line() {
    let served = Served::file(&demo("which-hand.yaml"));
    served.get("/room/room.yaml/sheets");
    served.settled();
    let keys = served.keys();
    assert!(keys.len() > 1, "{keys:?}");
    let key = keys[1].as_str();
    let asked = key.replace('/', "%2F");
    let room = served.room().display().to_string();
    for (sheet, command, form, paper) in [
        ("plan.svg", "draw", "svg", "a4"),
        ("plan.pdf", "draw", "pdf", "a3"),
        ("tape.pdf", "tape", "pdf", "letter"),
        ("tape.txt", "tape", "text", "a4"),
        ("card.pdf", "card", "pdf", "a4"),
        ("card.html", "card", "html", "a4"),
    ] {
        let sent = served.get(&format!("/room/room.yaml/sheet/{sheet}?option={asked}&paper={paper}"));
        assert_eq!(sent.status, 200, "{sheet}");
        assert!(sent.head.contains(&format!("filename=\"room-{sheet}\"")), "{}", sent.head);
        let args = [command, room.as_str(), "--option", key, "--format", form, "--paper", paper];
        let made = program(&args).output().unwrap();
        assert!(made.stdout == sent.body && !made.stdout.is_empty(), "{sheet}");
    }
    let sent = served.get("/room/room.yaml/sheet/report.html");
    assert!(sent.text() == run(&["report", room.as_str()]).stdout);
    assert_eq!(served.get("/room/room.yaml/sheet/plan.svg?option=nothing").status, 422);
    assert_eq!(served.get("/room/room.yaml/sheet/other.svg").status, 404);
}

#[test]
fn a_moved_piece_is_told_what_it_breaks_and_the_rest_settles_about_it() {
    let served = Served::file(&demo("which-hand.yaml"));
    served.get("/room/room.yaml/options");
    served.settled();
    let key = &served.keys()[0];
    let stood = served.post("/room/room.yaml/judge", &json!({ "key": key })).json();
    assert_eq!(stood["broken"], json!([]), "an option keeps every rule");
    // As `judge` has it: the file with where each piece stands says the same.
    let mut pieces = stood["pieces"].clone();
    let table = pieces.as_array_mut().unwrap().iter_mut().find(|piece| piece["name"] == "coffee table").unwrap();
    table["x"] = json!(table["x"].as_f64().unwrap() + 600.0);
    table["moved"] = json!(true);
    let asked = json!({ "key": key, "pieces": pieces, "before": stood["before"] });
    let moved = served.post("/room/room.yaml/judge", &asked).json();
    assert!(!moved["broken"].as_array().unwrap().is_empty(), "{moved}");
    assert!(moved["broken"].to_string().contains("coffee table"), "{}", moved["broken"]);
    assert_eq!(fs::read_to_string(served.room()).unwrap(), demo("which-hand.yaml"));
    let settled = served.post("/room/room.yaml/settle", &asked);
    assert_eq!(settled.status, 200, "{}", settled.text());
}

#[test]
fn client_and_note_are_typed_on_the_page_and_stand_in_the_file() {
    let text = demo("which-hand.yaml");
    let served = Served::file(&text);
    let page = served.get("/room/room.yaml/measure").text();
    assert!(page.contains("data-at=\"room.client\"") && page.contains("<textarea id=\"room.note\""), "{page}");
    let now = served.settled();
    let both = json!([
        { "do": "set", "at": "room.client", "to": "Quay & Sons" },
        { "do": "set", "at": "room.note", "to": "Two lines\nof it" },
    ]);
    let told = served.post("/room/room.yaml/step", &step(&now, both));
    assert_eq!((told.status, told.json()["faults"].clone()), (200, json!([])), "{}", told.text());
    assert!(served.get("/room/room.yaml/options").text().contains("Quay &amp; Sons"));
    assert!(served.get("/room/room.yaml/measure").text().contains("Two lines\nof it</textarea>"));
}

#[test]
fn options_are_told_apart_by_the_way_they_face() {
    let served = Served::file(&demo("canal-flat.yaml"));
    served.get("/room/room.yaml/options");
    assert_eq!(served.settled()["stage"], "done");
    let page = served.get("/room/room.yaml/options").text();
    let choices: Vec<&str> =
        page.split("name=\"way\" value=\"").skip(1).map(|rest| rest.split('"').next().unwrap()).collect();
    assert!(choices.len() > 2 && choices[0].is_empty(), "{choices:?}");
    let all = page.matches("<article class=\"way\"").count();
    let way = choices[1].replace(' ', "%20");
    let some = served.get(&format!("/room/room.yaml/options?way={way}")).text();
    let count = some.matches("<article class=\"way\"").count();
    assert!(count > 0 && count < all, "{count} of {all}");
    // What is chosen goes along to the other screens.
    assert!(some.contains(&format!("/room/room.yaml/sheets?way={way}")), "{some}");
}

#[test]
fn what_is_too_much_or_no_text_is_told_in_our_words() {
    let served = Served::file(&demo("which-hand.yaml"));
    served.get("/room/room.yaml/options");
    let large = served.asked("POST", "/room/room.yaml/step", &served.heads(), &"x".repeat(1 << 17));
    assert_eq!((large.status, large.json()["told"].is_string()), (413, true));
    let heads = served.heads().join("\r\n");
    let head =
        format!("POST /room/room.yaml/step HTTP/1.1\r\n{heads}\r\nConnection: close\r\nContent-Length: 2\r\n\r\n");
    let odd = served.raw(&[head.as_bytes(), &[0xff, 0xfe]].concat());
    assert_eq!((odd.status, odd.json()["told"].is_string()), (400, true));
}
