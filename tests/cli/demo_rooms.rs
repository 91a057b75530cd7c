//! Every demo room, solved and checked a second time from the result format alone.

use std::collections::BTreeSet;

use serde_json::Value;

use crate::program::{root, run};
use crate::support::checker;
use crate::support::ranked::brief_of;

fn complaints(name: &str) -> Vec<String> {
    let file = root().join("scenarios").join(name).with_extension("yaml");
    let brief = brief_of(&std::fs::read_to_string(&file).unwrap());
    let result = run(&["rank", "--json", &file.display().to_string()]).stdout;
    let mut complaints = checker::complaints(&brief, &result);
    complaints.extend(of_words(&serde_json::from_str(&result).unwrap()));
    complaints
}

/// What is wrong with the words of a result: titles that tell two options alike or name a seat that does not stand, and
/// entries without their sentence.
fn of_words(result: &Value) -> Vec<String> {
    let list = |of: &Value, key: &str| of[key].as_array().cloned().unwrap_or_default();
    let options = list(result, "options");
    let mut complaints = Vec::new();
    let mut titles = BTreeSet::new();
    for option in &options {
        let title = option["title"].as_str().unwrap();
        if !titles.insert(title) || title.contains(char::is_control) || title.contains("Free-standing") {
            complaints.push(format!("title: {title}"));
        }
        // A row of the file is called by its name without the number.
        let row = |piece: &Value| {
            let name = piece["name"].as_str().unwrap();
            name.trim_end_matches(|letter: char| letter.is_ascii_digit()).trim_end().to_owned()
        };
        let standing: BTreeSet<String> = list(option, "pieces").iter().map(row).collect();
        let gone = list(option, "left_out").iter().map(row).filter(|row| !standing.contains(row)).collect::<Vec<_>>();
        complaints.extend(gone.iter().filter(|row| title.contains(row.as_str())).map(|row| format!("{row}: {title}")));
        for entry in list(option, "eased").iter().chain(&list(option, "composition")) {
            let sentence = entry["sentence"].as_str().unwrap_or_default();
            if !sentence.ends_with('.') || sentence.contains('_') {
                complaints.push(format!("sentence: {entry}"));
            }
        }
    }
    complaints
}

/// Demo rooms whose chairs may be turned, or are to be.
#[test]
fn chairs_may_be_turned_in_demo_rooms() {
    let folder = tempfile::tempdir().unwrap();
    for name in ["pair-of-armchairs", "everyday", "oblique"] {
        for turned in ["either", "yes"] {
            let file = root().join("scenarios").join(name).with_extension("yaml");
            let text = std::fs::read_to_string(file).unwrap();
            let text = text.replace("kind: armchair", &format!("kind: armchair, turned: {turned}"));
            assert!(text.contains("turned"), "{name} has no chair");
            let file = folder.path().join(format!("{name}-{turned}.yaml"));
            std::fs::write(&file, &text).unwrap();
            let result = run(&["rank", "--json", &file.display().to_string()]).stdout;
            let complaints = checker::complaints(&brief_of(&text), &result);
            assert!(complaints.is_empty(), "{name} {turned}: {complaints:#?}");
        }
    }
}

macro_rules! demo_rooms {
    ($($test:ident: $name:literal),* $(,)?) => {
        $(#[test]
        fn $test() {
            let complaints = complaints($name);
            assert!(complaints.is_empty(), "{complaints:#?}");
        })*

        /// A room that nobody checks is no demo.
        #[test]
        fn no_demo_room_is_left_out() {
            let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../scenarios");
            let files = std::fs::read_dir(folder).unwrap().map(|file| file.unwrap().file_name().into_string().unwrap());
            let mut names: Vec<String> =
                files.filter_map(|file| file.strip_suffix(".yaml").map(str::to_owned)).collect();
            names.sort();
            assert_eq!(names, [$($name),*]);
        }
    };
}

demo_rooms! {
    alcoves: "alcoves",
    canal_flat: "canal-flat",
    chairs_at_an_angle: "chairs-at-an-angle",
    chaise_and_day_bed: "chaise-and-day-bed",
    everyday: "everyday",
    facing_sofas: "facing-sofas",
    family: "family",
    feet_and_inches: "feet-and-inches",
    film_room: "film-room",
    fire_or_view: "fire-or-view",
    hung_screen: "hung-screen",
    if_it_fits: "if-it-fits",
    measured_badly: "measured-badly",
    music_room: "music-room",
    narrow: "narrow",
    nothing_fits: "nothing-fits",
    oblique: "oblique",
    open_plan: "open-plan",
    open_side: "open-side",
    pair_of_armchairs: "pair-of-armchairs",
    pair_of_sofas: "pair-of-sofas",
    studio: "studio",
    two_groups: "two-groups",
    wheelchair: "wheelchair",
    which_hand: "which-hand",
}
