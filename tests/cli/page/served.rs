//! A page that is served, and what it answers.

use std::fs;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::{Path, PathBuf};
use std::process::{Child, Stdio};
use std::time::{Duration, Instant};

use serde_json::Value;
use tempfile::{TempDir, tempdir};

use crate::program::{program, root};

/// A page that is served.
pub(super) struct Served {
    pub(super) child: Child,
    pub(super) port: u16,
    pub(super) token: String,
    pub(super) folder: TempDir,
}

/// What was answered.
#[derive(Debug)]
pub(super) struct Answered {
    pub(super) status: u16,
    pub(super) head: String,
    pub(super) body: Vec<u8>,
}

impl Answered {
    pub(super) fn text(&self) -> String {
        String::from_utf8_lossy(&self.body).into_owned()
    }

    pub(super) fn json(&self) -> Value {
        serde_json::from_slice(&self.body).unwrap_or_else(|why| panic!("{why}: {}", self.text()))
    }
}

/// A demo room's text.
pub(super) fn demo(name: &str) -> String {
    fs::read_to_string(root().join("scenarios").join(name)).unwrap()
}

impl Served {
    /// Serves a room of this text.
    pub(super) fn file(text: &str) -> Self {
        Self::with(text, &[])
    }

    /// Serves a folder with these rooms.
    pub(super) fn folder(rooms: &[(&str, &str)]) -> Self {
        let folder = tempdir().unwrap();
        let within = folder.path().join("rooms");
        fs::create_dir(&within).unwrap();
        for (name, text) in rooms {
            fs::write(within.join(name), text).unwrap();
        }
        Self::at(&within, folder, &[])
    }

    /// Serves a room of this text with these flags.
    pub(super) fn with(text: &str, flags: &[&str]) -> Self {
        let folder = tempdir().unwrap();
        let file = folder.path().join("room.yaml");
        fs::write(&file, text).unwrap();
        Self::at(&file, folder, flags)
    }

    fn at(place: &Path, folder: TempDir, flags: &[&str]) -> Self {
        let mut child =
            program(&[&["page", place.to_str().unwrap()], flags].concat()).stdout(Stdio::piped()).spawn().unwrap();
        let mut line = String::new();
        // What comes after it is left for whoever wants it.
        BufReader::with_capacity(1, child.stdout.as_mut().unwrap()).read_line(&mut line).unwrap();
        let link = line.split_whitespace().find(|word| word.starts_with("http://127.0.0.1:")).unwrap();
        let link = link.to_owned();
        Self::of(child, &link, folder)
    }

    /// What was started elsewhere, and told this link.
    pub(super) fn of(child: Child, link: &str, folder: TempDir) -> Self {
        let (address, token) = link.split_once("/enter/").unwrap();
        let port = address.rsplit_once(':').unwrap().1.parse().unwrap();
        Self { child, port, token: token.to_owned(), folder }
    }

    /// What is printed of the local network: both links, and each as a square.
    #[cfg(target_os = "linux")]
    pub(super) fn told_of_lan(&mut self) -> String {
        let (mut told, mut some) = (String::new(), [0_u8; 4096]);
        let out = self.child.stdout.as_mut().unwrap();
        while told.matches("/enter/").count() < 2 {
            let count = out.read(&mut some).unwrap();
            assert!(count > 0, "{told}");
            told.push_str(&String::from_utf8_lossy(&some[..count]));
        }
        told
    }

    /// The file of a room that is served by itself.
    pub(super) fn room(&self) -> PathBuf {
        self.folder.path().join("room.yaml")
    }

    pub(super) fn link(&self) -> String {
        format!("http://127.0.0.1:{}/enter/{}", self.port, self.token)
    }

    /// The heads that a browser sends once it was let in.
    pub(super) fn heads(&self) -> Vec<String> {
        vec![
            format!("Host: 127.0.0.1:{}", self.port),
            format!("Origin: http://127.0.0.1:{}", self.port),
            format!("Cookie: elbowroom-{}={}", self.port, self.token),
        ]
    }

    /// What these very bytes bring.
    pub(super) fn raw(&self, request: &[u8]) -> Answered {
        let mut stream = TcpStream::connect(("127.0.0.1", self.port)).unwrap();
        stream.set_read_timeout(Some(Duration::from_secs(60))).unwrap();
        // What is refused early may not be read to its end.
        let _ = stream.write_all(request);
        let mut all = Vec::new();
        let _ = stream.read_to_end(&mut all);
        let end = all.windows(4).position(|four| four == b"\r\n\r\n").unwrap_or(all.len());
        let head = String::from_utf8_lossy(&all[..end]).into_owned();
        let status = head.split_whitespace().nth(1).and_then(|status| status.parse().ok()).unwrap_or(0);
        let chunked = head.to_lowercase().contains("transfer-encoding: chunked");
        assert!(!chunked, "bodies come whole");
        Answered { status, head, body: all.get(end + 4..).unwrap_or_default().to_vec() }
    }

    /// What a request with these heads brings.
    pub(super) fn asked(&self, method: &str, path: &str, heads: &[String], body: &str) -> Answered {
        let heads: String = heads.iter().map(|head| format!("{head}\r\n")).collect();
        let length = body.len();
        let head = format!("{method} {path} HTTP/1.1\r\n{heads}Connection: close\r\nContent-Length: {length}\r\n\r\n");
        self.raw(&[head.as_bytes(), body.as_bytes()].concat())
    }

    pub(super) fn get(&self, path: &str) -> Answered {
        self.asked("GET", path, &self.heads(), "")
    }

    pub(super) fn post(&self, path: &str, body: &Value) -> Answered {
        self.asked("POST", path, &self.heads(), &body.to_string())
    }

    /// The keys of the options that are shown, best first; each stands at its block and at its plan.
    pub(super) fn keys(&self) -> Vec<String> {
        let page = self.get("/room/room.yaml/part/answers").text();
        page.split("data-key=\"").skip(1).filter_map(|rest| rest.split('"').next()).map(str::to_owned).collect()
    }

    /// How the room stands once nothing is worked on.
    pub(super) fn settled(&self) -> Value {
        let begun = Instant::now();
        loop {
            let stage = self.get("/room/room.yaml/stage").json();
            if stage["stage"] != "busy" || begun.elapsed() > Duration::from_secs(120) {
                return stage;
            }
        }
    }
}

impl Drop for Served {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}
