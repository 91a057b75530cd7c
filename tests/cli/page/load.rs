//! Many at once, one that reads slowly, and a room that is changed again before it is solved.

use std::io::{Read, Write};
use std::net::TcpStream;
use std::thread;
use std::time::{Duration, Instant};

use serde_json::json;

use super::served::{Served, demo};

const AT_ONCE: usize = 200;

#[test]
fn two_hundred_at_once_and_slow_readers_leave_it_answering() {
    let served = Served::file(&demo("which-hand.yaml"));
    served.get("/room/room.yaml/options");
    served.settled();
    // They ask and never read, or never end to ask.
    let heads = served.heads().join("\r\n");
    let slow: Vec<TcpStream> = (0..8)
        .map(|which| {
            let mut stream = TcpStream::connect(("127.0.0.1", served.port)).unwrap();
            let end = if which % 2 == 0 { "\r\n\r\n" } else { "" };
            write!(stream, "GET /room/room.yaml/options HTTP/1.1\r\n{heads}{end}").unwrap();
            stream
        })
        .collect();
    let statuses: Vec<u16> = thread::scope(|scope| {
        let asking: Vec<_> =
            (0..AT_ONCE).map(|_| scope.spawn(|| served.get("/room/room.yaml/options").status)).collect();
        asking.into_iter().map(|one| one.join().unwrap()).collect()
    });
    assert_eq!(statuses, [200; AT_ONCE]);
    drop(slow);
    let begun = Instant::now();
    assert_eq!(served.get("/room/room.yaml/stage").status, 200);
    assert!(begun.elapsed() < Duration::from_secs(5));
}

#[test]
fn a_stale_run_is_not_waited_for() {
    let served = Served::file(&demo("which-hand.yaml"));
    served.get("/room/room.yaml/options");
    let mut now = served.get("/room/room.yaml/stage").json();
    for width in [230, 240, 250, 260, 270] {
        let change = json!([{ "do": "set", "at": "pieces.0.width", "to": format!("210..{width}") }]);
        let told = served.post("/room/room.yaml/step", &json!({ "from": now["step"], "changes": change }));
        assert_eq!(told.status, 200);
        now = told.json();
    }
    let last = served.settled();
    assert_eq!((last["stage"].as_str(), &last["of"]), (Some("done"), &now["step"]));
}

#[test]
fn work_that_is_stopped_stays_so_until_somebody_has_it_go_on() {
    let served = Served::file(&demo("which-hand.yaml"));
    served.get("/room/room.yaml/options");
    let halted = served.asked("POST", "/room/room.yaml/work", &served.heads(), "halt").json();
    // A quick machine may have been done.
    assert!(matches!(halted["stage"].as_str(), Some("stopped" | "done")), "{halted}");
    assert_eq!(served.settled()["stage"], halted["stage"]);
    served.asked("POST", "/room/room.yaml/work", &served.heads(), "go-on");
    assert_eq!(served.settled()["stage"], "done");
}

#[test]
fn whoever_holds_connections_open_and_asks_for_nothing_is_let_go() {
    let served = Served::file(&demo("which-hand.yaml"));
    served.get("/room/room.yaml/options");
    served.settled();
    // More than are let in at once; some begin to ask and never end.
    let held: Vec<TcpStream> = (0..450)
        .map(|which| {
            let mut stream = TcpStream::connect(("127.0.0.1", served.port)).unwrap();
            if which % 2 == 0 {
                write!(stream, "GET /room/room.yaml/options HTTP/1.1\r\nHost: x\r\n").unwrap();
            }
            stream
        })
        .collect();
    let begun = Instant::now();
    assert_eq!(served.get("/room/room.yaml/stage").status, 200);
    assert!(begun.elapsed() < Duration::from_secs(20), "{:?}", begun.elapsed());
    for mut stream in held {
        stream.set_read_timeout(Some(Duration::from_secs(20))).unwrap();
        // Told that it took too long, or closed: not held.
        let mut answer = Vec::new();
        let ended = stream.read_to_end(&mut answer);
        assert!(ended.is_ok() || ended.is_err_and(|why| why.kind() != std::io::ErrorKind::WouldBlock));
    }
}

/// What a browser fetches before the first screen stands, in bytes before compression: 100 kB at most.
#[test]
fn the_first_screen_is_light() {
    for room in ["canal-flat.yaml", "open-plan.yaml", "two-groups.yaml"] {
        let served = Served::file(&demo(room));
        served.get("/room/room.yaml/options");
        served.settled();
        let page = served.get("/room/room.yaml/options").text();
        assert!(page.contains("id=\"first\""));
        let linked =
            page.split("href=\"").chain(page.split("src=\"")).skip(1).filter_map(|rest| rest.split('"').next());
        let kinds = [".css", ".js", ".svg"];
        let mut parts: Vec<&str> = linked.filter(|part| kinds.iter().any(|kind| part.ends_with(kind))).collect();
        parts.extend(["/book.ttf", "/bold.ttf"]);
        parts.sort_unstable();
        parts.dedup();
        assert!(parts.len() >= 9, "{parts:?}");
        let weights: Vec<usize> = parts.iter().map(|part| served.get(part).body.len()).collect();
        let all = page.len() + weights.iter().sum::<usize>();
        assert!(all < 100_000, "{room}: {all}; page {}, {parts:?} {weights:?}", page.len());
    }
}
