//! The report: by itself, weighed anew by its own script, and in a real browser.
//!
//! The last two need node, Chromium, and the packages playwright-core and axe-core on `NODE_PATH`; where
//! `ELBOWROOM_BROWSER` names the browser (as the gate does) they run, elsewhere they say that they did not.

use std::fs;
use std::path::PathBuf;
use std::process::{Command, Stdio};

use elbowroom_model::{Wishes, scenario};
use elbowroom_solver::answer::Answer;
use elbowroom_solver::{Limits, Unwatched, rank, rewished};
use serde_json::{Value, json};
use tempfile::{TempDir, tempdir};

use crate::program::{root, run};

/// A room called as somebody would call it who means harm.
const HARM: &str = "<script>alert(1)</script>";

fn room(name: &str) -> String {
    fs::read_to_string(root().join("scenarios").join(name)).unwrap()
}

/// A report of `text`, in a folder of its own.
fn reported(text: &str) -> (TempDir, PathBuf, String) {
    let folder = tempdir().unwrap();
    let (file, page) = (folder.path().join("room.yaml"), folder.path().join("report.html"));
    fs::write(&file, text).unwrap();
    let ended = run(&["report", file.to_str().unwrap(), "-o", page.to_str().unwrap()]);
    assert_eq!((ended.code, ended.stdout.as_str(), ended.stderr.as_str()), (Some(0), "", ""));
    let html = fs::read_to_string(&page).unwrap();
    (folder, page, html)
}

/// The browser to test with, or nothing but a note.
#[allow(clippy::print_stderr, reason = "what was not tested is to be seen")]
pub(crate) fn browser() -> Option<String> {
    let browser = std::env::var("ELBOWROOM_BROWSER").ok();
    if browser.is_none() {
        eprintln!("NOTE: ELBOWROOM_BROWSER names no browser: pages were not tried in one.");
    }
    browser
}

#[test]
fn it_is_one_file_under_a_megabyte_that_asks_for_nothing() {
    let (_folder, _, html) = reported(&room("canal-flat.yaml"));
    assert!(html.len() < 1 << 20, "{}", html.len());
    let addresses: Vec<&str> = html.match_indices("://").map(|(place, _)| &html[place - 5..place + 20]).collect();
    assert!(addresses.iter().all(|address| address.contains("http://www.w3.org/2000")), "{addresses:?}");
    assert!(html.contains("default-src &#39;none&#39;"));
    for inline in [" style=\"", " onclick", " onload", "javascript:", "src=\""] {
        assert!(!html.contains(inline), "{inline}");
    }
    let brief = scenario::read(&room("canal-flat.yaml"), None).unwrap();
    let answer = rank(&brief, &Limits { shown: 0, ..Limits::default() }, &Unwatched);
    let drawn: Vec<usize> = answer.families().iter().take(6).map(|family| family.best.rank).collect();
    let waits = |rank: usize, never_first: bool| !never_first && !drawn.contains(&rank);
    let kept = answer
        .options
        .iter()
        .filter(|option| waits(option.rank, option.never_first && option.set_aside.is_none()))
        .count()
        .min(24);
    // Each that is drawn has a plan to live with and one to set out by; what may come to stand first waits with its own.
    assert_eq!(html.matches("<svg").count(), 2 * drawn.len() + kept);
    assert!(html.contains("var(--plan-ink)") && html.contains("--plan-ink:#1a1a1a;"));
}

#[test]
fn the_same_room_gives_the_same_bytes_whatever_the_threads() {
    let file = root().join("scenarios").join("which-hand.yaml").display().to_string();
    let one = run(&["report", &file, "--threads", "1"]).stdout;
    assert!(one == run(&["report", &file, "--threads", "2"]).stdout);
}

#[test]
fn names_are_text() {
    let text = room("which-hand.yaml")
        .replace("Ropewalk 7, upper flat", HARM)
        .replace("hall door", "'</script><img src=x onerror=alert(2)>'");
    let (_folder, _, html) = reported(&text);
    assert!(!html.contains(HARM) && !html.contains("<img"));
    assert!(html.contains("&lt;script&gt;alert(1)&lt;/script&gt;"));
}

#[test]
fn where_nothing_fits_it_tells_what_would_help() {
    let file = root().join("scenarios").join("nothing-fits.yaml").display().to_string();
    let ended = run(&["report", &file]);
    assert_eq!(ended.code, Some(3), "{}", ended.stderr);
    assert!(ended.stdout.contains("What would help") && !ended.stdout.contains("type=\"range\""));
}

/// A hundred weightings, some wishes equal and some nothing, the same ones each time.
fn weightings(criteria: usize) -> Vec<Vec<f64>> {
    let mut state = 7_u64;
    let mut next = |below: u64| {
        state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (state >> 33) % below
    };
    let mut all: Vec<Vec<f64>> = (0..99).map(|_| (0..criteria).map(|_| next(21) as f64 / 4.0).collect()).collect();
    all.push(vec![0.0; criteria]);
    all
}

/// What `rank` finds under those wishes: each option's place by size, its score and its share, best first.
fn ranked(answer: &Answer, names: &[String], wishes: &[f64]) -> Vec<(usize, f64, f64)> {
    let mut given = Wishes::default();
    for &criterion in elbowroom_model::Criterion::ALL {
        let column = names.iter().position(|name| name == criterion.key());
        given = given.with(criterion, column.map_or(0.0, |column| wishes[column]));
    }
    rewished(answer, &given)
        .options
        .iter()
        .map(|option| (option.by_size - 1, option.score, option.first_place_share))
        .collect()
}

#[test]
fn its_sliders_rank_as_rank_does() {
    if browser().is_none() {
        return;
    }
    let text = room("measured-badly.yaml");
    let brief = scenario::read(&text, None).unwrap();
    let answer = rank(&brief, &Limits::default(), &Unwatched);
    let names: Vec<String> = answer.options[0].judgements.iter().map(|it| it.criterion.key().to_owned()).collect();
    let (_folder, page, _) = reported(&text);
    let weightings = weightings(names.len());
    let script = root().join("tests/cli/browser/ranking.cjs");
    let mut node = Command::new("node");
    let mut node = node.arg(script).arg(page).stdin(Stdio::piped()).stdout(Stdio::piped()).spawn().unwrap();
    serde_json::to_writer(node.stdin.take().unwrap(), &json!(weightings)).unwrap();
    let output = node.wait_with_output().unwrap();
    let results: Vec<Value> = serde_json::from_slice(&output.stdout).unwrap();
    assert_eq!(results.len(), 100);
    for (wishes, result) in weightings.iter().zip(&results) {
        let expected = ranked(&answer, &names, wishes);
        let order: Vec<usize> = serde_json::from_value(result["order"].clone()).unwrap();
        assert_eq!(order, expected.iter().map(|(option, ..)| *option).collect::<Vec<_>>(), "{wishes:?}");
        for (option, score, share) in expected {
            assert!((result["scores"][option].as_f64().unwrap() - score).abs() < 1e-3, "{wishes:?}");
            assert_eq!(result["shares"][option].as_f64().unwrap(), share, "{wishes:?}");
        }
    }
}

#[test]
fn in_a_real_browser_all_is_well() {
    let Some(browser) = browser() else { return };
    let text = room("canal-flat.yaml").replace("Canal-side flat, front room", HARM);
    let (_folder, page, _) = reported(&text);
    let script = root().join("tests/cli/browser/report.cjs");
    let output = Command::new("node").arg(script).arg(page).args([browser.as_str(), HARM]).output().unwrap();
    let told = [output.stdout, output.stderr].concat();
    let told = String::from_utf8_lossy(&told);
    assert!(told.is_empty(), "{told}");
}
