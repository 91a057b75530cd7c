//! What if: `--set` and `--only`, and options side by side.

use serde_json::Value;

use crate::program::{Ended, root, run, run_with};

fn scenario(name: &str) -> String {
    root().join("scenarios").join(name).display().to_string()
}

fn json(args: &[&str]) -> Value {
    let ended = run(args);
    let mut value: Value = serde_json::from_str(&ended.stdout).unwrap_or_else(|_| panic!("{ended:?}"));
    value.as_object_mut().unwrap().remove("work");
    value
}

fn keys(result: &Value) -> Vec<String> {
    let options = result["options"].as_array().unwrap().iter();
    options.map(|option| option["key"].as_str().unwrap().to_owned()).collect()
}

fn refused(ended: &Ended, said: &str) {
    assert_eq!((ended.code, ended.stdout.as_str()), (Some(2), ""), "{ended:?}");
    assert!(ended.stderr.contains(said), "{said}: {}", ended.stderr);
}

#[test]
fn only_looks_at_the_options_that_are_decided_so_and_scores_them_alike() {
    let file = scenario("canal-flat.yaml");
    let all = json(&["rank", "--json", "--top", "1", &file]);
    let only = json(&["rank", "--json", "--top", "1", &file, "--only", "seat_back=Party Wall", "--only", "hand=left"]);
    let wanted: Vec<&Value> = all["options"]
        .as_array()
        .unwrap()
        .iter()
        .filter(|it| it["choices"]["seat_back"] == "party wall" && it["choices"]["hand"] == "left")
        .collect();
    let found = only["options"].as_array().unwrap();
    assert!(!wanted.is_empty() && wanted.len() < all["options"].as_array().unwrap().len());
    assert_eq!(
        wanted.iter().map(|it| &it["key"]).collect::<Vec<_>>(),
        found.iter().map(|it| &it["key"]).collect::<Vec<_>>()
    );
    for (wanted, found) in wanted.iter().zip(found) {
        assert_eq!(wanted["score"], found["score"]);
    }
    let shares: f64 = found.iter().map(|it| it["first_place_share"].as_f64().unwrap()).sum();
    assert!((shares - 1.0).abs() < 1e-5, "{shares}");
    assert!(only["notices"].as_array().unwrap().iter().any(|it| it.as_str().unwrap().contains("party wall")));
}

#[test]
fn values_of_one_decision_are_alternatives() {
    let file = scenario("pair-of-armchairs.yaml");
    let one = |only: &[&str]| {
        let mut args = vec!["rank", "--json", "--top", "1", &file];
        args.extend(only.iter().flat_map(|it| ["--only", it]));
        let mut keys = keys(&json(&args));
        keys.sort();
        keys
    };
    let mut both = one(&["facing=east wall"]);
    both.extend(one(&["facing=bridge window"]));
    both.sort();
    assert!(!both.is_empty());
    assert_eq!(one(&["facing=east wall", "facing=bridge wall"]), both);
    let opposite = one(&["second_seats=opposite"]);
    assert!(
        !opposite.is_empty() && opposite.iter().all(|key| !key.contains("left") && !key.contains("right")),
        "{opposite:?}"
    );
    assert_eq!(one(&["armchair 1=opposite", "armchair 2=opposite"]), opposite);
}

#[test]
fn a_decision_that_no_option_has_is_told() {
    let ended = run(&["rank", &scenario("narrow.yaml"), "--only", "hand=left"]);
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(3), ""));
    assert!(ended.stdout.contains("--only"), "{}", ended.stdout);
}

#[test]
fn a_setting_gives_what_the_file_gives_when_it_says_so() {
    let file = scenario("canal-flat.yaml");
    let text = std::fs::read_to_string(&file).unwrap();
    let written = text.replace("passage: 64 ", "passage: 80 ").replace("  - kind: coffee-table\n", "");
    assert_ne!(text, written);
    let set = json(&["rank", "--json", "--top", "2", &file, "--set", "passage=80", "--set", "coffee table=none"]);
    let ended = run_with(&["rank", "--json", "--top", "2", "-"], written.as_bytes());
    let written: Value = serde_json::from_str(&ended.stdout).unwrap();
    assert_eq!(set["options"], written["options"]);
    assert_eq!(set["rules"], written["rules"]);
}

#[test]
fn what_a_setting_changes_is_told_first() {
    let file = scenario("which-hand.yaml");
    let page = run(&["rank", "--top", "1", &file, "--set", "corner sofa.width=210..212"]).stdout;
    let head: Vec<&str> = page.lines().take(2).collect();
    assert!(head[0].contains("With corner sofa.width=210..212, against the file as it is"), "{page}");
    assert!(head[1].contains("fit"), "{page}");
    let change = page.split("\n\n").next().unwrap();
    assert!(change.contains("corner sofa") && change.contains("narrower"), "{page}");
    let same = run(&["rank", "--top", "1", &file]).stdout;
    assert!(!same.contains("against the file"), "{same}");
}

/// The head that tells what a setting changes, its lines joined.
fn changes(file: &str, setting: &str) -> String {
    let page = run(&["rank", "--top", "1", file, "--set", setting]).stdout;
    page.split("\n\n").next().unwrap().split_whitespace().collect::<Vec<_>>().join(" ")
}

/// What a key says without the seats about the main one and the screen: `canal-wall`, `canal-wall/left`.
fn without_company(key: &str, company: &str) -> String {
    key.split('/').filter(|part| !part.starts_with(company)).collect::<Vec<_>>().join("/")
}

#[test]
fn an_option_is_the_same_one_without_an_optional_seat() {
    let file = scenario("narrow.yaml");
    let before = keys(&json(&["rank", "--json", "--top", "1", &file]));
    let now = keys(&json(&["rank", "--json", "--top", "1", &file, "--set", "armchair=none"]));
    // Each stood before, with the armchair or without it, and some of them only with it.
    let same = |key: &String| before.iter().any(|other| without_company(other, "armchair") == *key);
    assert!(!now.is_empty() && now.iter().all(same), "{now:?} {before:?}");
    assert!(now.iter().any(|key| !before.contains(key)), "{now:?} {before:?}");
    let told = changes(&file, "armchair=none");
    for never in ["Gained", "Lost", "did not fit", "does not fit", "no option"] {
        assert!(!told.contains(never), "{never}: {told}");
    }
    assert!(told.contains("now without the armchair, before with it"), "{told}");
    assert!(told.contains("of before stand now only without the armchair"), "{told}");
}

#[test]
fn of_a_pair_the_one_that_went_is_told_by_its_own_name() {
    let told = changes(&scenario("everyday.yaml"), "armchair.count=1");
    assert!(told.contains("now without armchair 2, before with it"), "{told}");
    assert!(!told.contains("armchair 1, before") && !told.contains("armchair 1 left out"), "{told}");
    assert!(!told.contains("Gained") && !told.contains("Lost"), "{told}");
}

#[test]
fn an_option_is_the_same_one_without_its_screen() {
    let told = changes(&scenario("which-hand.yaml"), "media unit=none");
    assert!(told.contains("now without the media unit, before with it"), "{told}");
    assert!(!told.contains("Gained") && !told.contains("Lost"), "{told}");
}

#[test]
fn what_could_not_be_asked_for_before_did_not_fail_to_fit() {
    let file = std::fs::read_to_string(scenario("which-hand.yaml")).unwrap();
    let left = file.replace("hand: either", "hand: left");
    assert_ne!(file, left);
    let args = ["rank", "--top", "1", "-", "--set", "corner sofa.hand=right"];
    let told = run_with(&args, left.as_bytes()).stdout;
    let told = told.split("\n\n").next().unwrap().split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(told.contains("before, it was no option") && !told.contains("did not fit"), "{told}");
}

#[test]
fn bad_settings_and_choices_are_refused_with_what_was_meant() {
    let file = scenario("canal-flat.yaml");
    for command in [&["rank", &file][..], &["compare", &file, "1", "2"], &["check", &file]] {
        let with = |more: &[&str]| run(&[command, more].concat());
        refused(&with(&["--set", "coffe table.width=120cm"]), "coffee table.width");
        refused(&with(&["--set", "coffee table.width=120cn"]), "cm");
        refused(&with(&["--set", "coffee table.widht=120cm"]), "width");
        refused(&with(&["--set", "view=9"]), "0 to 5");
        refused(&with(&["--set", "view"]), "sets nothing");
        refused(&with(&["--set", "corner sofa=none"]), "no seat");
        refused(&with(&["--set", "\u{1b}[2J=1"]), "nothing named");
        if command[0] != "check" {
            refused(&with(&["--only", "seat_bck=canal wall"]), "seat_back");
            refused(&with(&["--only", "seat_back=canal wal"]), "canal wall");
            refused(&with(&["--only", "hand"]), "no choice");
        }
    }
}

#[test]
fn all_faults_of_settings_are_told_at_once() {
    let ended = run(&["rank", &scenario("canal-flat.yaml"), "--set", "vew=1", "--set", "passage=x", "--set", "talk=7"]);
    refused(&ended, "3 faults");
}

#[test]
fn options_side_by_side_are_refused_where_they_are_not_two() {
    let file = scenario("canal-flat.yaml");
    refused(&run(&["compare", &file, "1"]), "OPTION");
    refused(&run(&["compare", &file, "1", "1"]), "twice");
    refused(&run(&["compare", &file, "1", "99"]), "99");
    refused(&run(&["compare", &file, "1", "no/such/key"]), "no/such/key");
    let nothing = run(&["compare", &scenario("nothing-fits.yaml"), "1", "2"]);
    assert_eq!(nothing.code, Some(3), "{nothing:?}");
}

#[test]
fn options_side_by_side_turned_about_swap_gain_and_cost() {
    let file = scenario("canal-flat.yaml");
    let sentence = |one: &str, other: &str| {
        let page = run(&["compare", &file, one, other]).stdout;
        let from = page.find("gains on").unwrap();
        page[from..].split("\n\n").next().unwrap().split_whitespace().collect::<Vec<_>>().join(" ")
    };
    let (there, back) = (sentence("1", "2"), sentence("2", "1"));
    // What has a sign: the criteria that were gained, and those that were paid with.
    let signed = |told: &str, sign: char| {
        let words: Vec<&str> = told.split([' ', ',', '.']).collect();
        let pairs = words.windows(2).filter(|pair| pair[1].starts_with(sign));
        pairs.map(|pair| pair[0].to_owned()).collect::<std::collections::BTreeSet<_>>()
    };
    let (gained, paid) = there.split_once("It pays with:").unwrap();
    assert!(!signed(gained, '+').is_empty() && signed(gained, '-').is_empty(), "{there}");
    assert!(!signed(paid, '-').is_empty() && signed(paid, '+').is_empty(), "{there}");
    assert_eq!(signed(gained, '+'), signed(back.split_once("It pays with:").unwrap().1, '-'), "{there}\n{back}");
    assert_eq!(signed(paid, '-'), signed(back.split_once("It pays with:").unwrap().0, '+'), "{there}\n{back}");
}
