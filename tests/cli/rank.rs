//! What `rank` says of the demo rooms, on the page and as JSON.

use serde_json::Value;

use crate::program::{Ended, root, run, run_with};
use crate::screens::scenarios;

/// Lines at the head of the full page that hold the answer.
const HEAD: usize = 30;

fn scenario(name: &str) -> String {
    root().join("scenarios").join(name).display().to_string()
}

/// A result as JSON, without the one figure that differs from run to run.
fn json(args: &[&str]) -> (Ended, Value) {
    let ended = run(args);
    let mut value: Value = serde_json::from_str(&ended.stdout).unwrap();
    let seconds = value["work"].as_object_mut().unwrap().remove("seconds").unwrap();
    assert!(seconds.as_f64().unwrap() > 0.0);
    (ended, value)
}

#[test]
fn the_head_of_the_full_page_answers_which_wall_which_hand_how_large_why_and_how_firm() {
    let file = scenario("canal-flat.yaml");
    let page = run(&["rank", &file, "--full"]);
    assert_eq!((page.code, page.stderr.as_str()), (Some(0), ""));
    let (_, result) = json(&["rank", &file, "--json"]);
    let best = &result["options"][0];
    let screen = page.stdout.lines().take(HEAD).collect::<Vec<_>>().join("\n");
    // Lines break: words are compared with single spaces.
    let words = screen.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(words.contains(best["title"].as_str().unwrap()), "{screen}");
    assert!(screen.contains(best["choices"]["seat_back"].as_str().unwrap_or("free")), "{screen}");
    let hand = best["choices"]["hand"].as_str().unwrap();
    assert!(screen.contains(&format!("{hand}: the return is on your {hand} as you sit")), "{screen}");
    for piece in best["pieces"].as_array().unwrap() {
        let row = screen.lines().find(|line| line.trim_start().starts_with(piece["name"].as_str().unwrap())).unwrap();
        let width = &piece["range"]["width"];
        let (least, most) = (width["least"].as_f64().unwrap(), width["together"].as_f64().unwrap());
        // Up for a least, down for a most, to a whole centimetre; a thousandth of a millimetre is rounding.
        let range = format!("{}-{}", ((least - 1e-3) / 10.0).ceil(), ((most + 1e-3) / 10.0).floor());
        assert!(row.contains(&range), "{range} is not in {row}");
    }
    let share = best["first_place_share"].as_f64().unwrap();
    let shifts = if share < 1.0 && share > 0.995 { "over 99".to_owned() } else { format!("{:.0}", share * 100.0) };
    assert!(words.contains(&format!("stays first in {shifts} of 100 shifts")), "{screen}");
    let top = best["criteria"].as_array().unwrap().iter().filter(|it| screen.contains(it["name"].as_str().unwrap()));
    assert!(top.count() >= 2, "{screen}");
}

#[test]
fn every_demo_room_gets_options_or_a_remedy() {
    for scenario in scenarios() {
        let (ended, result) = json(&["rank", "--json", "--top", "1", scenario.to_str().unwrap()]);
        let (options, remedies) = (result["options"].as_array().unwrap(), result["remedies"].as_array().unwrap());
        assert_eq!(result["format"], "elbowroom-result/1");
        if options.is_empty() {
            assert_eq!(ended.code, Some(3), "{scenario:?}");
            assert!(!remedies.is_empty(), "{scenario:?}");
        } else {
            assert_eq!(ended.code, Some(0), "{scenario:?}");
            let shares: f64 = options.iter().map(|option| option["first_place_share"].as_f64().unwrap()).sum();
            let is_aside = |option: &Value| !option["set_aside"].is_null();
            let sum = if options.iter().all(is_aside) { 0.0 } else { 1.0 };
            assert!((shares - sum).abs() < 1e-5, "{scenario:?}: {shares}");
            for aside in options.iter().skip_while(|option| !is_aside(option)) {
                assert!(is_aside(aside), "{scenario:?}: {} stands behind what is set aside", aside["key"]);
                assert!(
                    aside["first_place_share"] == 0.0 && aside["turns_if"].is_null(),
                    "{scenario:?}: {}",
                    aside["key"]
                );
                assert!(aside["set_aside"]["why"].as_str().unwrap().starts_with("Set aside: "), "{scenario:?}");
            }
        }
    }
}

#[test]
fn threads_and_runs_change_nothing() {
    let file = scenario("which-hand.yaml");
    let (_, one) = json(&["rank", "--json", &file, "--threads", "1"]);
    let (_, two) = json(&["rank", "--json", &file, "--threads", "2"]);
    let (_, again) = json(&["rank", "--json", &file]);
    assert_eq!(one, two);
    assert_eq!(one, again);
}

#[test]
fn by_one_criterion_its_scores_fall() {
    let (_, result) = json(&["rank", "--json", "--top", "1", "--by", "view", &scenario("canal-flat.yaml")]);
    let view = |option: &Value| {
        let criteria = option["criteria"].as_array().unwrap();
        criteria.iter().find(|it| it["name"] == "view").unwrap()["score"].as_f64().unwrap()
    };
    let options = result["options"].as_array().unwrap();
    // Within what stands alike: what eases rules, or is set aside, is behind whatever its view.
    let tier = |option: &Value| (option["set_aside"].is_null(), option["eased"].as_array().map(Vec::len));
    let alike = options.windows(2).filter(|pair| tier(&pair[0]) == tier(&pair[1]));
    let falls: Vec<bool> = alike.map(|pair| view(&pair[0]) >= view(&pair[1]) - 1e-9).collect();
    assert!(!falls.is_empty() && falls.into_iter().all(|falls| falls), "{options:#?}");
}

/// The best of each family with the number of those like it, or every option where that is asked for.
#[test]
fn the_best_of_each_family_is_told_with_how_many_are_like_it() {
    let file = scenario("canal-flat.yaml");
    let (_, result) = json(&["rank", "--json", "--top", "1", &file]);
    let options = result["options"].as_array().unwrap();
    let is_best = |option: &&Value| option["family"] == option["key"];
    let best: Vec<&Value> = options.iter().filter(is_best).collect();
    assert!(1 < best.len() && best.len() < options.len(), "{} families of {}", best.len(), options.len());
    let heads = |args: &[&str]| {
        let page = run(&[&["rank", &file], args].concat()).stdout;
        let is_head = |line: &&str| line.split_once(". ").is_some_and(|(rank, _)| rank.parse::<usize>().is_ok());
        let (others, _) = page.split_once("\nSetting out").unwrap();
        let mut heads: Vec<usize> =
            others.lines().filter(is_head).map(|line| line.split_once(". ").unwrap().0.parse().unwrap()).collect();
        heads.dedup();
        (heads, others.to_owned())
    };
    let places =
        |options: &[&Value]| options.iter().map(|it| it["rank"].as_u64().unwrap() as usize).collect::<Vec<_>>();
    let (told, page) = heads(&["--top", "2"]);
    assert_eq!(told, places(&best[..2]), "{page}");
    for one in &best[..2] {
        let like_it = options.iter().filter(|option| option["family"] == one["key"]).count() - 1;
        assert!(like_it == 0 || page.contains(&format!("and {like_it} like it: option")), "{page}");
    }
    assert_eq!(best.len() == 2, !page.contains("to put the main seat: --top"), "{page}");
    assert_eq!(heads(&["--all", "--top", "3"]).0, [1, 2, 3]);
    assert_eq!(heads(&["--all"]).0, (1..=options.len()).collect::<Vec<_>>());
}

/// The figures of those that are shown cost a search each, so the best of a family alone has them, or each option with `--all`.
#[test]
fn only_what_is_shown_has_the_most_each_size_could_be_alone() {
    let file = scenario("which-hand.yaml");
    for (args, counts_all) in [(["--top", "2"].as_slice(), false), (["--top", "2", "--all"].as_slice(), true)] {
        let (_, result) = json(&[&["rank", "--json", &file], args].concat());
        let mut left = 2;
        for option in result["options"].as_array().unwrap() {
            let counts = left > 0 && (counts_all || option["family"] == option["key"]);
            left -= usize::from(counts);
            let alone = &option["pieces"][0]["range"]["width"]["alone"];
            assert_eq!(alone.is_number(), counts, "{args:?}: {}", option["key"]);
        }
    }
}

#[test]
fn another_unit_changes_the_words_and_not_the_result() {
    let file = scenario("narrow.yaml");
    let page = run(&["rank", "--units", "in", "--top", "1", &file]).stdout;
    assert!(page.contains("Sizes to shop by, in:") && page.contains("1/2"), "{page}");
    let (_, metric) = json(&["rank", "--json", "--top", "1", &file]);
    let (_, inches) = json(&["rank", "--json", "--top", "1", "--units", "in", &file]);
    let sizes = |result: &Value| -> Vec<Value> {
        let options = result["options"].as_array().unwrap().iter();
        options.flat_map(|option| option["pieces"].as_array().unwrap().clone()).map(|it| it["size"].clone()).collect()
    };
    assert_eq!(sizes(&metric), sizes(&inches));
}

#[test]
fn nothing_fits_says_what_would_help() {
    let page = run(&["rank", &scenario("nothing-fits.yaml")]);
    assert_eq!((page.code, page.stderr.as_str()), (Some(3), ""));
    assert!(page.stdout.contains("Nothing fits as asked."), "{}", page.stdout);
    assert!(page.stdout.contains("What would help"), "{}", page.stdout);
}

#[test]
fn the_work_is_explained_where_that_is_asked_for() {
    let file = scenario("which-hand.yaml");
    let told = run(&["rank", &file, "--explain-work"]);
    assert_eq!((told.code, told.stderr.as_str()), (Some(0), ""));
    let (page, work) = told.stdout.split_once("\nWork\n").unwrap();
    assert_eq!(page.lines().next(), run(&["rank", &file]).stdout.lines().next());
    let said = [
        "32 arrangements searched",
        "given up",
        "Dead ends",
        "walkway",
        "plans and largest pieces",
        "every rule checked again",
    ];
    for what in said {
        assert!(work.contains(what), "{what}: {work}");
    }
}

/// A sofa of 2.1 cm is one of 2.1 m: the answer is that of another room, and its screen says so first.
#[test]
fn a_likely_slip_of_the_file_stands_on_the_first_screen() {
    let room = "units: cm
walls:
  - { name: north, length: 460, holds: [{ kind: window, at: 100, width: 180, sill: 0.9 }] }
  - { name: east, length: 380 }
  - { name: south, length: 460, holds: [{ kind: door, name: hall door, at: 30, width: 83, swings: slides, leads_to: entrance }] }
  - { name: west, length: 380 }
pieces:
  - { kind: sofa, width: 2.1 }
";
    let told = run_with(&["rank", "-"], room.as_bytes());
    assert_eq!((told.code, told.stderr.as_str()), (Some(0), ""));
    let words = told.stdout.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(words.contains("Check first The sill of the window is 0.9 cm"), "{}", told.stdout);
    assert!(words.contains("It would be 0.9 m then. One figure more is told by `check`."), "{}", told.stdout);
    let sound = room.replace("2.1", "210").replace("0.9", "90");
    assert!(!run_with(&["rank", "-"], sound.as_bytes()).stdout.contains("Check first"));
}
