//! One option from near: what holds a size, where a way is narrowest, what a reason speaks of, and what the plan shows.

use super::served::{Served, demo};
use crate::program::run;

/// A room that is worked out, and the key of its first option as an address has it.
fn ranked(name: &str) -> (Served, String) {
    let served = Served::file(&demo(name));
    served.get("/room/room.yaml/options");
    assert_eq!(served.settled()["stage"], "done");
    let key = served.keys()[0].replace('/', "%2F");
    (served, key)
}

/// The plan of it with this.
fn plan(served: &Served, key: &str, with: &str) -> String {
    let answered = served.get(&format!("/room/room.yaml/plan-with?option={key}&{with}"));
    assert_eq!(answered.status, 200, "{with}: {}", answered.text());
    answered.text()
}

fn told(plan: &str) -> &str {
    plan.split_once("<div class=\"told\"").map_or("", |(_, told)| told)
}

#[test]
fn what_holds_a_size_is_told_in_the_words_of_the_report_and_marked() {
    let (served, key) = ranked("which-hand.yaml");
    let room = served.room().display().to_string();
    let report = run(&["report", &room]).stdout;
    // Of the first option each row of its table of sizes: the piece, the side, the figures, what holds it.
    let first = report.split("<article class=\"option\"").nth(1).unwrap();
    let table = first.split("<table>").find(|table| table.starts_with("<caption>Sizes to shop by"));
    let table = table.unwrap_or_else(|| panic!("{first}"));
    let held: Vec<&str> = table
        .split("<tr>")
        .skip(2)
        .filter_map(|row| row.rsplit_once("</td>")?.0.rsplit_once("<td>"))
        .map(|(_, held)| held)
        .filter(|held| !held.is_empty())
        .collect();
    let all: Vec<String> = (0..9)
        .map(|piece| {
            served.get(&format!("/room/room.yaml/plan-with?option={key}&show=sizes&touched=size-{piece}")).text()
        })
        .collect();
    assert!(held.len() > 3, "{table}");
    for holder in held {
        assert!(all.iter().any(|plan| told(plan).contains(holder)), "{holder}: {all:?}");
    }
    assert!(all[0].contains("class=\"marked\"") && all[0].contains("What holds the size of"), "{}", told(&all[0]));
    // A piece is found by where somebody touches it: over the whole sheet at least one is met, and outside none.
    let met = (1..10).flat_map(|x| (1..9).map(move |y| (x * 10, y * 10)));
    let met = met.filter(|(x, y)| told(&plan(&served, &key, &format!("show=sizes&at={x},{y}"))).contains("What holds"));
    assert!(met.count() > 3);
    assert_eq!(told(&plan(&served, &key, "show=sizes&at=0,0")), "");
}

#[test]
fn each_way_shows_where_it_is_narrowest_and_each_reason_what_it_speaks_of() {
    let (served, key) = ranked("which-hand.yaml");
    let list = served.get(&format!("/room/room.yaml/closer?option={key}")).text();
    let keys: Vec<&str> = list.split("data-touch=\"").skip(1).map(|rest| rest.split('"').next().unwrap()).collect();
    assert!(keys.iter().filter(|key| key.starts_with("way-")).count() > 1, "{keys:?}");
    assert!(keys.iter().filter(|key| key.starts_with("reason-")).count() > 3, "{keys:?}");
    let plain = plan(&served, &key, "show=sizes");
    assert!(told(&plain).is_empty() && !plain.contains("class=\"marked\"") && !plain.contains("class=\"ways\""));
    for touched in keys {
        let marked = plan(&served, &key, &format!("show=sizes&touched={touched}"));
        assert!(told(&marked).contains(&format!("data-of=\"{touched}\"")), "{touched}: {}", told(&marked));
        // Where all of the room stays in use there is nothing to point at.
        let is_marked = marked.contains("class=\"marked\"") && marked.len() > plain.len();
        assert!(is_marked || touched == "reason-upkeep", "{touched}");
        assert!(!touched.starts_with("way-") || told(&marked).contains("wide where it is narrowest"), "{touched}");
    }
    // What is nothing marks nothing; what is no option is not there.
    for none in ["way-99", "reason-none", "size-x", "%3Cscript%3E"] {
        assert!(!plan(&served, &key, &format!("touched={none}")).contains("class=\"marked\""), "{none}");
    }
    assert_eq!(served.get("/room/room.yaml/plan-with?option=none&show=sizes").status, 404);
    assert_eq!(served.get(&format!("/room/room.yaml/plan-with?option={key}&at=x")).status, 404);
}

#[test]
fn the_plan_shows_what_is_chosen_and_nothing_else() {
    let (served, key) = ranked("canal-flat.yaml");
    let shows = |plan: &str, layer: &str| plan.contains(&format!("<g class=\"{layer}\">"));
    let layers = [("ways", "ways"), ("sights", "sight-lines"), ("zones", "zones"), ("largest", "largest")];
    for (chosen, layer) in layers {
        let plan = plan(&served, &key, &format!("show={chosen}"));
        for (_, other) in layers {
            assert_eq!(shows(&plan, other), other == layer, "{chosen}: {other}");
        }
        assert!(!shows(&plan, "gaps") || chosen == "zones", "{chosen}");
    }
    // Each outline is told by its name, and dashed.
    let largest = plan(&served, &key, "show=largest");
    let outlines = largest.split("<g class=\"largest\">").nth(1).unwrap().split("</g>").next().unwrap();
    assert!(outlines.contains("stroke-dasharray"), "{outlines}");
    assert!(largest.contains(" up to "), "{largest}");
    // With sizes alone it is the plan that stands there first.
    let page = served.get("/room/room.yaml/options").text();
    let svg = |text: &str| text.split_once("<svg").unwrap().1.split_once("</svg>").unwrap().0.to_owned();
    let first = page.split_once("id=\"first\"").unwrap().1;
    assert_eq!(svg(first), svg(&plan(&served, &key, "show=sizes")));
}
