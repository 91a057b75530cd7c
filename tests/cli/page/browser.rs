//! The page in a real browser: needs node, Chromium, and the packages playwright-core and axe-core on `NODE_PATH`; where
//! `ELBOWROOM_BROWSER` names the browser (as the gate does) it runs, elsewhere it says that it did not.

use std::fs;
use std::process::Command;

use super::served::{Served, demo};
use crate::program::{program, root};

/// A room called as somebody would call it who means harm.
const HARM: &str = "<script>alert(1)</script>";

/// The browser, where one is named.
#[allow(clippy::print_stderr, reason = "what was not tested is to be seen")]
fn browser() -> Option<String> {
    let browser = std::env::var("ELBOWROOM_BROWSER").ok();
    if browser.is_none() {
        eprintln!("NOTE: ELBOWROOM_BROWSER names no browser: the page was not tried in one.");
    }
    browser
}

/// What a script finds wrong.
fn wrong(script: &str, args: &[&str]) -> String {
    let script = root().join("tests/cli/browser").join(script);
    let run = Command::new("node").arg(script).args(args).output().unwrap();
    String::from_utf8_lossy(&[run.stdout, run.stderr].concat()).into_owned()
}

#[test]
fn rooms_of_a_folder_are_duplicated_and_renamed_in_a_real_browser() {
    let Some(browser) = browser() else { return };
    let served = Served::folder(&[("one.yaml", &demo("which-hand.yaml")), ("two.yml", &demo("studio.yaml"))]);
    let told = wrong("folder.cjs", &[&browser, &served.link()]);
    assert!(told.is_empty(), "{told}");
    let rooms = served.folder.path().join("rooms");
    let mut names: Vec<_> = fs::read_dir(&rooms).unwrap().map(|entry| entry.unwrap().file_name()).collect();
    names.sort();
    assert_eq!(names, ["Quay 4.yml", "answers", "one, copy.yaml", "one.yaml"]);
    assert_eq!(fs::read_to_string(rooms.join("Quay 4.yml")).unwrap(), demo("studio.yaml"));
}

#[cfg(target_os = "linux")]
#[test]
fn whoever_may_only_look_sees_no_form_in_a_real_browser() {
    let Some(browser) = browser() else { return };
    let mut served = Served::with(&demo("which-hand.yaml"), &["--lan=127.0.0.2"]);
    let told = served.told_of_lan();
    let link = told.split_whitespace().filter(|word| word.contains("/enter/")).nth(1).unwrap();
    let told = wrong("look.cjs", &[&browser, link]);
    assert!(told.is_empty(), "{told}");
    assert_eq!(fs::read_to_string(served.room()).unwrap(), demo("which-hand.yaml"));
}

#[test]
fn pieces_are_tried_elsewhere_in_a_real_browser() {
    let Some(browser) = browser() else { return };
    let served = Served::file(&demo("everyday.yaml"));
    let told = wrong("try.cjs", &[&browser, &served.link()]);
    assert!(told.is_empty(), "{told}");
    assert_eq!(fs::read_to_string(served.room()).unwrap(), demo("everyday.yaml"));
}

#[test]
fn what_an_option_is_made_of_is_touched_in_a_real_browser() {
    let Some(browser) = browser() else { return };
    let served = Served::file(&demo("canal-flat.yaml"));
    let told = wrong("touched.cjs", &[&browser, &served.link()]);
    assert!(told.is_empty(), "{told}");
    assert_eq!(fs::read_to_string(served.room()).unwrap(), demo("canal-flat.yaml"));
}

#[test]
fn a_list_is_tried_in_the_room_in_a_real_browser() {
    let Some(browser) = browser() else { return };
    let served = Served::file(&demo("which-hand.yaml"));
    let list = crate::program::root().join("scenarios/shop/basket.csv").display().to_string();
    let told = wrong("shop.cjs", &[&browser, &served.link(), &list]);
    assert!(told.is_empty(), "{told}");
    assert_eq!(fs::read_to_string(served.room()).unwrap(), demo("which-hand.yaml"));
}

#[test]
fn two_windows_and_what_is_chosen_hold_in_a_real_browser() {
    let Some(browser) = browser() else { return };
    let served = Served::folder(&[("room.yaml", &demo("which-hand.yaml"))]);
    let rooms = served.folder.path().join("rooms");
    fs::write(rooms.join("basket.csv"), demo("shop/basket.csv")).unwrap();
    let room = rooms.join("room.yaml").display().to_string();
    let told = wrong("windows.cjs", &[&browser, &served.link(), &room]);
    assert!(told.is_empty(), "{told}");
}

#[test]
fn screens_read_on_a_phone_and_on_a_desk_in_a_real_browser() {
    let Some(browser) = browser() else { return };
    // Names as long as nobody would type them.
    let text = demo("canal-flat.yaml").replace("name: reading lamp", &format!("name: {}", "w".repeat(3000)));
    assert!(text.len() > 3000);
    let served = Served::file(&text);
    let told = wrong("looks.cjs", &[&browser, &served.link()]);
    assert!(told.is_empty(), "{told}");
}

#[test]
fn the_main_job_is_done_in_a_real_browser() {
    let Some(browser) = browser() else { return };
    let text = demo("which-hand.yaml").replace("Ropewalk 7, upper flat", HARM);
    let served = Served::file(&text);
    let kept = served.folder.path().join("kept");
    fs::create_dir(&kept).unwrap();
    let told = wrong("page.cjs", &[&browser, &served.link(), HARM, kept.to_str().unwrap()]);
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
    // What the client marked names the option that was shown first, and what was written.
    let answer = fs::read_to_string(kept.join("my-answer.txt")).unwrap();
    assert!(answer.contains("Chosen: A. ") && answer.ends_with("Note: <b>We like it</b>\n"), "{answer}");
    let chosen = answer.lines().find_map(|line| line.strip_prefix("Option: ")).unwrap();
    assert_eq!(program(&["draw", &room, "--option", chosen]).output().unwrap().status.code(), Some(0), "{answer}");
    // Typed in inches into a file of centimetres.
    assert!(now.contains("depth: 37 in"), "{now}");
}
