//! Every demo room, solved and checked a second time from the result format alone.

use elbowroom_model::scenario;
use elbowroom_solver::{Limits, Outcome, Unwatched, rank};

use crate::support::checker;

fn scenario(name: &str) -> String {
    let path = format!("{}/../scenarios/{name}.yaml", env!("CARGO_MANIFEST_DIR"));
    std::fs::read_to_string(path).unwrap()
}

fn complaints(name: &str) -> Vec<String> {
    let brief = scenario::read(&scenario(name), None).unwrap();
    let outcome = Outcome::of(&rank(&brief, &Limits::default(), &Unwatched));
    checker::complaints(&brief, &serde_json::to_string(&outcome).unwrap())
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
    canal_flat: "canal-flat",
    feet_and_inches: "feet-and-inches",
    fire_or_view: "fire-or-view",
    if_it_fits: "if-it-fits",
    measured_badly: "measured-badly",
    narrow: "narrow",
    nothing_fits: "nothing-fits",
    oblique: "oblique",
    open_side: "open-side",
    pair_of_armchairs: "pair-of-armchairs",
    wheelchair: "wheelchair",
    which_hand: "which-hand",
}
