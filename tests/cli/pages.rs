//! The pages beside the report in a real browser: card, tape sheet, options side by side, the index of a batch.
//!
//! As of the report: this runs where `ELBOWROOM_BROWSER` names the browser, and says elsewhere that it did not.

use std::fs;
use std::process::Command;

use tempfile::tempdir;

use crate::program::{root, run};
use crate::report::browser;

#[test]
fn card_tape_comparison_and_index_are_well_in_a_real_browser() {
    let Some(browser) = browser() else { return };
    let folder = tempdir().unwrap();
    let path = |name: &str| folder.path().join(name).display().to_string();
    let room = root().join("scenarios/which-hand.yaml").display().to_string();
    for (name, args) in [
        ("card.html", &["card", &room, "--top", "2"][..]),
        ("tape.html", &["tape", &room]),
        ("compare.html", &["compare", &room, "1", "2", "3"]),
    ] {
        let ended = run(&[args, &["-o", &path(name)]].concat());
        assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""), "{name}");
    }
    let rooms = folder.path().join("rooms");
    fs::create_dir(&rooms).unwrap();
    for name in ["narrow.yaml", "nothing-fits.yaml", "studio.yaml"] {
        fs::copy(root().join("scenarios").join(name), rooms.join(name)).unwrap();
    }
    fs::write(rooms.join("wrong.yaml"), "units: furlong\n").unwrap();
    let ended = run(&["batch", rooms.to_str().unwrap(), "-o", &path("out")]);
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
    let script = root().join("tests/cli/browser/pages.cjs");
    let pages = ["card.html", "tape.html", "compare.html", "out/index.html"].map(path);
    let output = Command::new("node").arg(script).arg(browser).args(pages).output().unwrap();
    let told = String::from_utf8(output.stdout).unwrap();
    assert!(output.status.success() && told.is_empty(), "{told}{}", String::from_utf8_lossy(&output.stderr));
}
