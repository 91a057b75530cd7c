//! What is chosen on the page and stands in no file: pins, the unit that it is read in, what a client gets.

use std::fs;

use serde_json::json;

use super::served::{Served, demo};
use crate::program::{program, run};

/// A room that is worked out, and its options by their keys.
fn ranked() -> (Served, Vec<String>) {
    let served = Served::file(&demo("which-hand.yaml"));
    served.get("/room/room.yaml/options");
    assert_eq!(served.settled()["stage"], "done");
    let keys = served.keys();
    assert!(keys.len() > 2, "{keys:?}");
    (served, keys)
}

fn query(name: &str, keys: &[&String]) -> String {
    keys.iter().map(|key| format!("{name}={}", key.replace('/', "%2F"))).collect::<Vec<_>>().join("&")
}

#[test]
fn pinned_options_stand_side_by_side_as_compare_sets_them() {
    let (served, keys) = ranked();
    let [one, two, three] = [&keys[0], &keys[1], &keys[2]];
    let page = served.get(&format!("/room/room.yaml/compare?{}", query("pin", &[one, three]))).text();
    let room = served.room().display().to_string();
    let html = run(&["compare", &room, one, three, "--format", "html"]).stdout;
    // The same tables, cell for cell, and as many plans.
    let cells =
        |page: &str| page.split("<td").skip(1).map(|rest| rest.split("</td>").next().unwrap().to_owned()).collect();
    let (shown, made): (Vec<String>, Vec<String>) = (cells(&page), cells(&html));
    assert!(made.len() > 10 && shown == made, "{shown:?}\n{made:?}");
    assert_eq!(page.matches("<figure>").count(), 2);
    assert!(!page.contains("style=\""), "the page's policy forbids styles that stand at what they style");
    // What can be had as a file is what the command line makes.
    for (sheet, form) in [("compare.txt", "text"), ("compare.html", "html"), ("compare.pdf", "pdf")] {
        let asked = query("option", &[two, one, three]);
        let sent = served.get(&format!("/room/room.yaml/sheet/{sheet}?{asked}"));
        let made = program(&["compare", &room, two, one, three, "--format", form]).output().unwrap().stdout;
        assert!(sent.status == 200 && !made.is_empty() && sent.body == made, "{sheet}");
    }
    // Too few, one twice, and one that is gone are told.
    for asked in [String::new(), query("pin", &[one]), query("pin", &[one, one])] {
        let page = served.get(&format!("/room/room.yaml/compare?{asked}")).text();
        assert!(page.contains("Pin two or three options") && !page.contains("<figure>"), "{asked}");
    }
    let page = served.get(&format!("/room/room.yaml/compare?{}&pin=no%2Fsuch", query("pin", &[one, two]))).text();
    assert!(page.contains("no longer among those that fit") && page.contains("<figure>"));
}

#[test]
fn a_client_gets_chosen_options_with_no_score_and_the_same_as_the_command_line_makes() {
    let (served, keys) = ranked();
    let room = served.room().display().to_string();
    let sent = served.get(&format!("/room/room.yaml/sheet/share.html?{}", query("option", &[&keys[2], &keys[0]])));
    assert_eq!(sent.status, 200);
    let page = sent.text();
    assert_eq!(page, run(&["share", &room, &keys[2], &keys[0]]).stdout);
    assert!(page.find(&format!("Option: {}", keys[2])) < page.find(&format!("Option: {}", keys[0])));
    let said = page.replace("http://www.w3.org/2000/svg", "").to_lowercase();
    for untold in ["score", "http:", "https:", " src=", "url(http"] {
        assert!(!said.contains(untold), "{untold}");
    }
    assert_eq!(run(&["share", &room, "--top", "2"]).stdout.matches("<figure>").count(), 2);
    let twice = run(&["share", &room, "1", "1"]);
    assert!(twice.code != Some(0) && twice.stdout.is_empty(), "{}", twice.stderr);
}

#[test]
fn lengths_are_told_in_the_unit_that_is_chosen_and_the_file_keeps_its_own() {
    let (served, keys) = ranked();
    let text = fs::read_to_string(served.room()).unwrap();
    let mut heads = served.heads();
    heads[2].push_str(&format!("; elbowroom-units-{}=in", served.port));
    let get = |path: &str| served.asked("GET", path, &heads, "");
    let furnish = get("/room/room.yaml/furnish").text();
    // 210 cm are 82.677 in and 280 cm 110.236 in by the inch of 25.4 mm; a tape reads eighths.
    assert!(furnish.contains("value=\"82 5/8..110 1/4 in\"") && furnish.contains("data-unit=\"in\""), "{furnish}");
    assert!(!served.get("/room/room.yaml/furnish").text().contains("data-unit"));
    for screen in ["measure", "options", "compare", "try", "sheets"] {
        let page = get(&format!("/room/room.yaml/{screen}")).text();
        assert!(page.contains("<option value=\"in\" selected>"), "{screen}");
        let told = page.replace("as the file, cm", "");
        assert!(!told.contains(" cm<") && !told.contains(" cm "), "{screen}: {page}");
    }
    let asked = query("option", &[&keys[0]]);
    let sent = get(&format!("/room/room.yaml/sheet/tape.txt?{asked}"));
    let room = served.room().display().to_string();
    assert_eq!(sent.text(), run(&["tape", &room, "--option", &keys[0], "--units", "in"]).stdout);
    let judged = served.asked("POST", "/room/room.yaml/judge", &heads, &json!({ "key": keys[0] }).to_string()).json();
    assert_eq!(judged["unit"], json!({ "sign": "in", "mm": 25.4 }));
    assert_eq!(fs::read_to_string(served.room()).unwrap(), text);
    // A cookie that names no unit is as none.
    let mut odd = served.heads();
    odd[2].push_str(&format!("; elbowroom-units-{}=<b>", served.port));
    assert_eq!(
        served.asked("GET", "/room/room.yaml/furnish", &odd, "").text(),
        served.get("/room/room.yaml/furnish").text()
    );
}

#[test]
fn walls_are_drawn_as_they_are_typed_and_nothing_is_saved() {
    let served = Served::file(&demo("which-hand.yaml"));
    let text = demo("which-hand.yaml");
    served.get("/room/room.yaml/measure");
    let drawn = |to: &str| served.get(&format!("/room/room.yaml/outline?at=walls.1.length&to={to}"));
    let longer = drawn("%229%20m%22");
    assert!(
        longer.status == 200 && longer.text().contains("9 m") | longer.text().contains("900 cm"),
        "{}",
        longer.text()
    );
    assert!(longer.text().contains("class=\"gap\""));
    // What is no length yet, and what is no place of the file, leaves the walls as they are.
    assert_eq!(drawn("%22about%22").status, 200);
    assert_eq!(served.get("/room/room.yaml/outline?at=walls.99.length&to=1").status, 422);
    assert_eq!(fs::read_to_string(served.room()).unwrap(), text);
    assert_eq!(served.get("/room/room.yaml/stage").json()["step"], 1);
}
