//! The page in a real browser: needs node, Chromium, and the packages playwright-core and axe-core on `NODE_PATH`; where
//! `ELBOWROOM_BROWSER` names the browser (as the gate does) it runs, elsewhere it says that it did not.

use std::fs;
use std::process::Command;

use super::served::{Served, demo};
use crate::program::{program, root};

/// A room called as somebody would call it who means harm.
const HARM: &str = "<script>alert(1)</script>";

#[test]
#[allow(clippy::print_stderr, reason = "what was not tested is to be seen")]
fn the_main_job_is_done_in_a_real_browser() {
    let Ok(browser) = std::env::var("ELBOWROOM_BROWSER") else {
        eprintln!("NOTE: ELBOWROOM_BROWSER names no browser: the page was not tried in one.");
        return;
    };
    let text = demo("which-hand.yaml").replace("Ropewalk 7, upper flat", HARM);
    let served = Served::file(&text);
    let kept = served.folder.path().join("kept");
    fs::create_dir(&kept).unwrap();
    let script = root().join("tests/cli/browser/page.cjs");
    let run =
        Command::new("node").arg(script).args([browser.as_str(), &served.link(), HARM]).arg(&kept).output().unwrap();
    let told = String::from_utf8_lossy(&[run.stdout, run.stderr].concat()).into_owned();
    assert!(told.is_empty(), "{told}");
    // The size that was typed and the wish that was moved are in the file, and nothing else is other.
    let now = fs::read_to_string(served.room()).unwrap();
    assert!(now.contains("width: 210..265"), "{now}");
    for line in text.lines().filter(|line| line.contains('#')) {
        assert!(now.contains(line), "{line} is gone");
    }
    let key = fs::read_to_string(kept.join("key")).unwrap();
    let room = served.room().display().to_string();
    for (file, form) in [("plan.svg", "svg"), ("plan.pdf", "pdf")] {
        let made = program(&["draw", &room, "--option", &key, "--format", form]).output().unwrap().stdout;
        assert!(made == fs::read(kept.join(file)).unwrap(), "{file} is another than the command line's");
    }
}
