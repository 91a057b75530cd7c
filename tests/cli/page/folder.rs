//! What a folder has beyond its rooms: all of them ranked and kept, and the lists of pieces that lie beside them.

use std::fs;
use std::path::PathBuf;
use std::time::{Duration, Instant};

use serde_json::json;

use super::served::{Served, demo};
use crate::program::program;

fn served() -> (Served, PathBuf) {
    let served = Served::folder(&[("hung.yaml", &demo("hung-screen.yaml")), ("none.yaml", &demo("nothing-fits.yaml"))]);
    let rooms = served.folder.path().join("rooms");
    (served, rooms)
}

/// Has all rooms ranked and waits until that is done.
fn rank_all(served: &Served) {
    assert_eq!(served.post("/rank-all", &json!({})).json()["to"], "/");
    let begun = Instant::now();
    while served.get("/ranking").json()["busy"] == true {
        assert!(begun.elapsed() < Duration::from_secs(120));
    }
}

#[test]
fn all_rooms_are_ranked_as_batch_ranks_them_and_what_is_the_same_is_not_solved_again() {
    let (served, rooms) = served();
    #[cfg(unix)]
    {
        fs::write(served.folder.path().join("secret.yaml"), demo("narrow.yaml")).unwrap();
        std::os::unix::fs::symlink(served.folder.path().join("secret.yaml"), rooms.join("link.yaml")).unwrap();
    }
    assert!(!served.get("/").text().contains("that fit"));
    rank_all(&served);
    let page = served.get("/").text();
    assert!(page.contains("that fit.") && page.contains("/answer/hung-"), "{page}");
    let plan = page.split("src=\"").find_map(|rest| rest.strip_prefix("/answer/")?.split('"').next()).unwrap();
    assert!(served.get(&format!("/answer/{plan}")).text().starts_with("<svg"));
    for other in ["..%2Frooms.ndjson", "rooms.ndjson", "index.html", "..%2F..%2Fhung.yaml"] {
        assert_eq!(served.get(&format!("/answer/{other}")).status, 404, "{other}");
    }
    // The same lines as the command's; nothing of where a link leads.
    let kept = fs::read_to_string(rooms.join("answers/rooms.ndjson")).unwrap();
    assert_eq!(kept.lines().count(), 2);
    let alone = program(&["batch", rooms.join("hung.yaml").to_str().unwrap()]).output().unwrap().stdout;
    let after_source = |line: &str| line.split_once(",\"content\"").unwrap().1.to_owned();
    assert_eq!(after_source(kept.lines().next().unwrap()), after_source(String::from_utf8_lossy(&alone).trim_end()));
    // A room that changed is told, and solved again where that is asked for.
    let text = demo("hung-screen.yaml").replace("units:", "# measured again\nunits:");
    fs::write(rooms.join("hung.yaml"), text).unwrap();
    assert!(served.get("/").text().contains("Changed since it was ranked."));
    rank_all(&served);
    assert!(!served.get("/").text().contains("Changed since it was ranked."));
}

#[test]
fn lists_beside_the_rooms_price_a_clients_page_where_that_is_asked_for_and_tell_what_fits() {
    let (served, rooms) = served();
    fs::write(rooms.join("hand.yaml"), demo("which-hand.yaml")).unwrap();
    fs::write(rooms.join("basket.csv"), demo("shop/basket.csv")).unwrap();
    fs::write(served.folder.path().join("secret.csv"), demo("shop/basket.csv")).unwrap();
    let (room, list) = (rooms.join("hand.yaml"), rooms.join("basket.csv"));
    let [room, list] = [&room, &list].map(|path| path.to_str().unwrap());
    let made = |args: &[&str]| program(args).output().unwrap().stdout;
    let plain = served.get("/room/hand.yaml/sheet/share.html");
    assert!(plain.body == made(&["share", room]) && !plain.text().contains("rice"));
    let priced = served.get("/room/hand.yaml/sheet/share.html?list=basket.csv");
    assert!(priced.body == made(&["share", room, "--prices", list]));
    let told = priced.text();
    assert!(told.contains("price from, EUR") && told.contains("1290.00"), "{told}");
    for name in ["Heron", "basket"] {
        assert!(!told.contains(name), "{name} is the shop's own matter");
    }
    for (file, args) in [("shop.txt", &[][..]), ("shop.csv", &["--csv"][..])] {
        let sent = served.get(&format!("/room/hand.yaml/sheet/{file}?list=basket.csv"));
        assert!(sent.status == 200 && sent.body == made(&[&["shop", room, list], args].concat()), "{file}");
    }
    for other in ["..%2Fsecret.csv", "hung.yaml", "none.csv"] {
        assert_eq!(served.get(&format!("/room/hand.yaml/sheet/share.html?list={other}")).status, 404, "{other}");
    }
    assert_eq!(served.get("/room/hand.yaml/sheet/shop.txt").status, 404, "of no list");
    served.get("/room/hand.yaml/options");
    let begun = Instant::now();
    while served.get("/room/hand.yaml/stage").json()["stage"] == "busy" {
        assert!(begun.elapsed() < Duration::from_secs(60));
    }
    let sheets = served.get("/room/hand.yaml/sheets").text();
    assert!(sheets.contains("id=\"sheet-prices\"") && sheets.contains("sheet/shop.csv?list=basket.csv"), "{sheets}");
}

#[test]
fn a_new_room_starts_empty_or_as_an_example() {
    let (served, rooms) = served();
    let started = served.post("/new", &json!({ "name": "Quay 4", "from": "empty" })).json();
    assert_eq!(started["to"], "/room/Quay%204.yaml/measure");
    let text = fs::read_to_string(rooms.join("Quay 4.yaml")).unwrap();
    assert!(text.starts_with("name: Quay 4\n") && text.matches("length: null").count() == 4, "{text}");
    // What is still to be measured is no fault.
    let page = served.get("/room/Quay%204.yaml/measure").text();
    assert!(page.contains("4 walls are still to be measured."), "{page}");
    let stage = served.get("/room/Quay%204.yaml/stage").json();
    assert_eq!((stage["stage"].as_str(), &stage["faults"]), (Some("faulty"), &json!([])));
    let mut from = stage["step"].clone();
    for (wall, length) in [420, 360, 420, 360].into_iter().enumerate() {
        let change = json!([{ "do": "set", "at": format!("walls.{wall}.length"), "to": length }]);
        let told = served.post("/room/Quay%204.yaml/step", &json!({ "from": from, "changes": change }));
        assert_eq!(told.status, 200, "{}", told.text());
        from = told.json()["step"].clone();
    }
    assert_ne!(served.get("/room/Quay%204.yaml/stage").json()["stage"], "faulty");
    assert_eq!(served.post("/new", &json!({ "name": "Lock 5", "from": "example" })).status, 200);
    assert!(fs::read_to_string(rooms.join("Lock 5.yaml")).unwrap().contains("pieces:"));
    assert_eq!(served.post("/new", &json!({ "name": "../x", "from": "empty" })).status, 422);
}

#[test]
fn ranking_all_rooms_tells_how_far_it_is_and_can_be_stopped() {
    let rooms: Vec<(String, String)> = (0..40)
        .map(|number| {
            (format!("r{number:02}.yaml"), demo("narrow.yaml").replace("units:", &format!("# {number}\nunits:")))
        })
        .collect();
    let rooms: Vec<(&str, &str)> = rooms.iter().map(|(name, text)| (name.as_str(), text.as_str())).collect();
    let served = Served::folder(&rooms);
    served.post("/rank-all", &json!({}));
    let told = served.get("/ranking").json();
    assert!(told["told"].as_str().unwrap().contains(" of 40."), "{told}");
    assert_eq!(served.post("/rank-no-more", &json!({})).status, 200);
    let begun = Instant::now();
    while served.get("/ranking").json()["busy"] == true {
        assert!(begun.elapsed() < Duration::from_secs(120));
    }
    let kept = fs::read_to_string(served.folder.path().join("rooms/answers/rooms.ndjson")).unwrap();
    assert!(kept.lines().count() < 40, "it was not stopped: {}", kept.lines().count());
}

/// What a room came to takes megabytes: of many rooms only those that were asked of last keep it.
#[test]
fn answers_of_rooms_that_nobody_asks_of_any_more_are_kept_no_longer() {
    let text = demo("which-hand.yaml");
    let names: Vec<String> = (0..6).map(|room| format!("room-{room}.yaml")).collect();
    let rooms: Vec<(&str, &str)> = names.iter().map(|name| (name.as_str(), text.as_str())).collect();
    let served = Served::folder(&rooms);
    let settled = |name: &str| {
        for _ in 0..300 {
            let stage = served.get(&format!("/room/{name}/stage")).json();
            if stage["stage"] != "busy" {
                assert_eq!(stage["stage"], "done", "{name}");
                return stage["of"].clone();
            }
        }
        panic!("{name} is never done");
    };
    // A step of the first is there to be taken back however many rooms come after it.
    served.get(&format!("/room/{}/options", names[0]));
    let step = serde_json::json!({ "from": 1, "changes": [{ "do": "set", "at": "name", "to": "Quay" }] });
    assert_eq!(served.post(&format!("/room/{}/step", names[0]), &step).status, 200);
    for name in &names {
        served.get(&format!("/room/{name}/options"));
        assert!(!settled(name).is_null());
    }
    // What is known of a room without asking for work: the news of the last rooms have answers, of the first ones none.
    let known = |name: &str| !served.get(&format!("/room/{name}/news")).json()["of"].is_null();
    assert!(known(&names[5]) && known(&names[4]) && known(&names[3]));
    assert!(!known(&names[0]), "the answer of the first room is kept");
    assert!(!settled(&names[0]).is_null(), "it is worked out anew");
    let back = served.post(&format!("/room/{}/step", names[0]), &serde_json::json!({ "from": 2, "step": "undo" }));
    assert_eq!(back.status, 200, "{}", back.text());
    assert_eq!(std::fs::read_to_string(served.folder.path().join("rooms").join(&names[0])).unwrap(), text);
}
