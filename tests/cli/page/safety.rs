//! Who is let in, what may be named, and that text of the file never runs.

use std::fs;
use std::process::Command;
use std::time::{Duration, Instant};

use serde_json::json;

use super::served::{Served, demo};

const SCREENS: [&str; 6] = ["measure", "furnish", "options", "compare", "try", "sheets"];

#[test]
fn nothing_is_told_without_the_token() {
    let served = Served::file(&demo("which-hand.yaml"));
    let before = fs::read_to_string(served.room()).unwrap();
    let own = served.heads();
    for path in ["/", "/page.js", "/room/room.yaml/options", "/room/room.yaml/stage", "/room/room.yaml/sheet/plan.svg"]
    {
        let answered = served.asked("GET", path, &own[..1], "");
        assert_eq!(answered.status, 401, "{path}");
        assert!(!answered.text().contains("Ropewalk"));
        let wrong = [own[0].clone(), format!("Cookie: elbowroom-{}={}", served.port, "0".repeat(64))];
        assert_eq!(served.asked("GET", path, &wrong, "").status, 401, "{path}");
    }
    let body = json!({ "from": 1, "changes": [{ "do": "set", "at": "name", "to": "x" }] }).to_string();
    assert_eq!(served.asked("POST", "/room/room.yaml/step", &own[..2], &body).status, 401);
    assert_eq!(served.asked("GET", &format!("/enter/{}", "0".repeat(64)), &own[..1], "").status, 401);
    assert_eq!(fs::read_to_string(served.room()).unwrap(), before);
}

#[test]
fn the_link_lets_in_once_by_a_cookie_that_scripts_and_other_pages_never_see() {
    let served = Served::file(&demo("which-hand.yaml"));
    let answered = served.asked("GET", &format!("/enter/{}", served.token), &served.heads()[..1], "");
    assert_eq!(answered.status, 303);
    let head = answered.head.to_lowercase();
    assert!(head.contains("location: /\r\n"), "{head}");
    for part in ["httponly", "samesite=strict", "path=/"] {
        assert!(head.contains(part), "{head}");
    }
    let page = served.get("/room/room.yaml/options");
    let head = page.head.to_lowercase();
    assert!(head.contains("default-src 'none'; script-src 'self'") && !head.contains("unsafe"), "{head}");
    assert!(head.contains("cache-control: no-store") && head.contains("referrer-policy: no-referrer"));
    assert!(!page.text().contains(&served.token));
}

#[test]
fn who_comes_by_another_name_or_from_another_page_is_refused() {
    let served = Served::file(&demo("which-hand.yaml"));
    let own = served.heads();
    let path = "/room/room.yaml/options";
    for host in ["lodewater.example", "lodewater.example:80", "127.0.0.1", "127.0.0.1:1"] {
        let heads = [format!("Host: {host}"), own[1].clone(), own[2].clone()];
        assert_eq!(served.asked("GET", path, &heads, "").status, 421, "{host}");
        // The link by another name neither.
        let link = format!("/enter/{}", served.token);
        assert_eq!(served.asked("GET", &link, &heads[..1], "").status, 421, "{host}");
    }
    let body = json!({ "from": 1, "step": "undo" }).to_string();
    for origin in ["http://lodewater.example", "null", "http://127.0.0.1:1", "file://"] {
        let heads = [own[0].clone(), format!("Origin: {origin}"), own[2].clone()];
        assert_eq!(served.asked("GET", path, &heads, "").status, 403, "{origin}");
        assert_eq!(served.asked("POST", "/room/room.yaml/step", &heads, &body).status, 403, "{origin}");
    }
    // What changes something must say where it comes from.
    let heads = [own[0].clone(), own[2].clone()];
    assert_eq!(served.asked("POST", "/room/room.yaml/step", &heads, &body).status, 403);
}

#[test]
fn nothing_outside_the_folder_is_read_or_written() {
    let served = Served::folder(&[("one.yaml", &demo("which-hand.yaml"))]);
    let outside = served.folder.path().join("secret.yaml");
    fs::write(&outside, demo("which-hand.yaml")).unwrap();
    #[cfg(unix)]
    std::os::unix::fs::symlink(&outside, served.folder.path().join("rooms/link.yaml")).unwrap();
    assert_eq!(served.get("/room/one.yaml/measure").status, 200);
    let whole = outside.display().to_string().replace('/', "%2F");
    for name in
        ["..%2Fsecret.yaml", "%2E%2E%2Fsecret.yaml", "..%5Csecret.yaml", "link.yaml", "one.yaml%00", &whole, "."]
    {
        for screen in ["measure", "stage", "sheet/plan.svg"] {
            let answered = served.get(&format!("/room/{name}/{screen}"));
            assert_eq!(answered.status, 404, "{name} {screen}: {}", answered.text());
        }
    }
    assert_eq!(served.get("/room/../../secret.yaml").status, 404);
    for name in ["../three", "/tmp/three", "..", "a\u{0}b", ".three", "a/b"] {
        assert_eq!(served.post("/new", &json!({ "name": name })).status, 422, "{name}");
    }
    assert_eq!(served.post("/new", &json!({ "name": "one.yaml" })).status, 409);
    assert_eq!(served.post("/new", &json!({ "name": "Quay 4", "like": "link.yaml" })).status, 404);
    assert_eq!(served.post("/new", &json!({ "name": "Quay 4" })).status, 200);
    assert!(served.folder.path().join("rooms/Quay 4.yaml").exists());
    assert!(served.get("/").text().contains("/room/Quay%204.yaml/options"));
    for of in ["../secret.yaml", "..%2Fsecret.yaml", "link.yaml", &outside.display().to_string(), "four.yaml"] {
        assert_eq!(served.post("/rename", &json!({ "of": of, "name": "ours" })).status, 404, "{of}");
    }
    for name in ["../three", "/tmp/three", "..", "a\u{0}b", ".three", "a/b", "..%2Fthree\\x"] {
        assert_eq!(served.post("/rename", &json!({ "of": "Quay 4.yaml", "name": name })).status, 422, "{name}");
    }
    for name in ["one", "link.yaml"] {
        assert_eq!(served.post("/rename", &json!({ "of": "Quay 4.yaml", "name": name })).status, 409, "{name}");
    }
    // A room that is open goes by its new name alone, and a step to the old one writes nothing.
    assert_eq!(served.get("/room/Quay%204.yaml/measure").status, 200);
    assert_eq!(served.post("/rename", &json!({ "of": "Quay 4.yaml", "name": "Quay 5" })).status, 200);
    assert_eq!(served.get("/room/Quay%204.yaml/measure").status, 404);
    let late = json!({ "from": 1, "changes": [{ "do": "set", "at": "name", "to": "x" }] });
    assert_eq!(served.post("/room/Quay%204.yaml/step", &late).status, 404);
    assert_eq!(served.post("/new", &json!({ "name": "Quay 6", "like": "one.yaml" })).status, 200);
    let rooms = served.folder.path().join("rooms");
    assert_eq!(fs::read_to_string(rooms.join("Quay 6.yaml")).unwrap(), demo("which-hand.yaml"));
    assert_eq!(fs::read_dir(&rooms).unwrap().count(), if cfg!(unix) { 4 } else { 3 });
    assert_eq!(fs::read_to_string(&outside).unwrap(), demo("which-hand.yaml"));
    assert_eq!(fs::read_dir(served.folder.path()).unwrap().count(), 2);
}

#[test]
fn text_of_the_file_never_runs() {
    let harm = "<script>alert(1)</script><img src=x onerror=alert(2)>";
    let quoted = "\"'><svg onload=alert(3)>\"";
    let text = format!(
        "name: \"{harm}\"\nroom: {{ client: \"{harm}\", note: \"{harm}\" }}\nunits: cm\nwalls:\n  - {{ name: {quoted}, length: 420 }}\n  - {{ length: 360, holds: [{{ kind: door, name: \"{harm}\", at: 20, width: 80, hinge: left, swings: in, leads_to: \"{harm}\" }}] }}\n  - {{ length: 420, holds: [{{ kind: window, name: \"a {harm}\", at: 20, width: 80, view: liked }}] }}\n  - {{ length: 360 }}\npieces:\n  - {{ kind: corner-sofa, name: \"b {harm}\" }}\n  - {{ kind: armchair, name: \"c {harm}\" }}\n"
    );
    let served = Served::file(&text);
    for screen in SCREENS {
        served.get(&format!("/room/room.yaml/{screen}"));
    }
    assert_eq!(served.settled()["stage"], "done");
    let keys = served.keys();
    let mut pages: Vec<String> =
        SCREENS.iter().map(|screen| served.get(&format!("/room/room.yaml/{screen}")).text()).collect();
    pages.push(served.get("/room/room.yaml/part/answers").text());
    let pins = [&keys[0], &keys[1]].map(|key| format!("pin={}", key.replace('/', "%2F"))).join("&");
    pages.push(served.get(&format!("/room/room.yaml/compare?{pins}&pin=%3Cscript%3Ealert(1)")).text());
    pages.push(served.get("/room/room.yaml/sheet/share.html").text());
    for page in &pages {
        for raw in ["<script>alert", "<img", "<svg onload", "\u{1b}", "\u{202e}", "'><svg"] {
            assert!(!page.contains(raw), "{raw}");
        }
    }
    assert!(pages[0].contains("&lt;script&gt;alert(1)"));
    // A key as address is no markup either.
    let answered = served.get("/room/room.yaml/options?option=%22%3E%3Cscript%3Ealert(1)%3C%2Fscript%3E&wall=%3Cb%3E");
    assert!(!answered.text().contains("<script>alert") && !answered.text().contains("<b>"));
}

#[test]
fn odd_requests_are_turned_away_and_the_page_stays() {
    let served = Served::file(&demo("which-hand.yaml"));
    served.get("/room/room.yaml/options");
    let large = "x".repeat(1 << 17);
    assert_eq!(served.asked("POST", "/room/room.yaml/step", &served.heads(), &large).status, 413);
    for body in [
        "",
        "{",
        "[]",
        "{\"from\":1}",
        "{\"from\":1,\"changes\":[]}",
        "{\"from\":-1,\"step\":\"undo\"}",
        "{\"from\":1,\"step\":\"x\"}",
    ] {
        assert_eq!(served.asked("POST", "/room/room.yaml/step", &served.heads(), body).status, 400, "{body}");
    }
    for body in [
        "{}",
        "{\"key\":\"x\"}",
        "{\"pieces\":[{\"piece\":99}]}",
        "{\"pieces\":[{\"piece\":0,\"x\":1e308,\"y\":0,\"facing\":0,\"width\":1,\"depth\":1}]}",
    ] {
        assert_eq!(served.asked("POST", "/room/room.yaml/judge", &served.heads(), body).status, 422, "{body}");
    }
    served.raw(b"nonsense\r\n\r\n");
    assert_eq!(served.asked("PUT", "/room/room.yaml/step", &served.heads(), "").status, 405);
    assert_eq!(served.get("/room/room.yaml/options").status, 200);
}

#[cfg(unix)]
#[test]
fn an_interrupt_ends_it_well() {
    let mut served = Served::file(&demo("canal-flat.yaml"));
    // In the middle of its work.
    served.get("/room/room.yaml/options");
    Command::new("kill").args(["-INT", &served.child.id().to_string()]).status().unwrap();
    let begun = Instant::now();
    let ended = loop {
        match served.child.try_wait().unwrap() {
            Some(ended) => break ended,
            None => assert!(begun.elapsed() < Duration::from_secs(10), "it goes on"),
        }
        std::thread::sleep(Duration::from_millis(20));
    };
    assert_eq!(ended.code(), Some(0));
    assert_eq!(fs::read_dir(served.folder.path()).unwrap().count(), 1);
}
