//! The page on the local network: a second address, and a second token that only looks. Any address of the loopback net
//! stands for one of a network, which not every machine that runs this has.

#![cfg(target_os = "linux")]

use std::fs;
use std::io::{Read, Write};
use std::net::TcpStream;

use serde_json::json;

use super::served::{Served, demo};
use crate::program::run;

const ADDRESS: &str = "127.0.0.2";

/// What a request to the second address brings: its head and body.
fn asked(port: u16, token: &str, request: &str, body: &str) -> String {
    let mut stream = TcpStream::connect((ADDRESS, port)).unwrap();
    let heads = format!(
        "Host: {ADDRESS}:{port}\r\nOrigin: http://{ADDRESS}:{port}\r\nCookie: elbowroom-{port}={token}\r\nConnection: close"
    );
    let length = body.len();
    write!(stream, "{request} HTTP/1.1\r\n{heads}\r\nContent-Length: {length}\r\n\r\n{body}").unwrap();
    let mut all = Vec::new();
    stream.read_to_end(&mut all).unwrap();
    String::from_utf8_lossy(&all).into_owned()
}

#[test]
fn one_token_looks_and_the_other_changes() {
    let text = demo("which-hand.yaml");
    let mut served = Served::with(&text, &["--lan=127.0.0.2"]);
    let port = served.port;
    let told = served.told_of_lan();
    assert!(told.contains("not encrypted") && told.contains('\u{2588}'), "{told}");
    let tokens: Vec<&str> = told.split("/enter/").skip(1).map(|rest| rest.split_whitespace().next().unwrap()).collect();
    let (change, look) = (tokens[0], tokens[1]);
    assert!(change == served.token && look != change);
    let begins = |answered: &str, status: u16| answered.starts_with(&format!("HTTP/1.1 {status}"));
    for path in ["options", "compare", "sheets", "stage"] {
        let request = format!("GET /room/room.yaml/{path}");
        assert!(
            begins(&asked(port, look, &request, ""), 200) && begins(&asked(port, change, &request, ""), 200),
            "{path}"
        );
        assert!(begins(&asked(port, "", &request, ""), 401));
    }
    served.settled();
    let page = asked(port, look, "GET /room/room.yaml/options", "");
    assert!(page.contains("id=\"first\""));
    for form in ["<form", "data-at=", "id=\"undo\"", "data-step=", "type=\"range\"", "data-do=", "/try", "/measure"] {
        assert!(!page.contains(form), "{form}");
    }
    // Screens that change something lead back to those that do not, and no request changes anything.
    for screen in ["measure", "furnish", "try"] {
        assert!(begins(&asked(port, look, &format!("GET /room/room.yaml/{screen}"), ""), 303), "{screen}");
        assert!(begins(&asked(port, look, &format!("GET /room/room.yaml/part/{screen}"), ""), 404), "{screen}");
    }
    let step = json!({ "from": 1, "changes": [{ "do": "set", "at": "name", "to": "theirs" }] }).to_string();
    for path in ["/room/room.yaml/step", "/room/room.yaml/work", "/room/room.yaml/judge", "/new", "/rename"] {
        let answered = asked(port, look, &format!("POST {path}"), &step);
        assert!(begins(&answered, 403) && answered.contains("lets you look"), "{path}: {answered}");
    }
    assert_eq!(fs::read_to_string(served.room()).unwrap(), text);
    assert!(begins(&asked(port, change, "POST /room/room.yaml/step", &step), 200));
    assert!(fs::read_to_string(served.room()).unwrap().contains("theirs"));
}

#[test]
fn nothing_listens_on_the_network_unless_it_is_asked_for() {
    let served = Served::file(&demo("which-hand.yaml"));
    assert!(TcpStream::connect((ADDRESS, served.port)).is_err());
    // An address that is none of this machine's (TEST-NET-3, RFC 5737) is told.
    let ended = run(&["page", ".", "--lan=203.0.113.1"]);
    assert!(ended.code == Some(1) && ended.stderr.contains("cannot listen"), "{:?} {}", ended.code, ended.stderr);
    assert_eq!(run(&["page", ".", "--lan=here"]).code, Some(2));
}
