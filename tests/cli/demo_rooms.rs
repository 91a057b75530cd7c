//! Every demo room, solved and checked a second time from the result format alone.

use crate::program::{root, run};
use crate::support::checker;
use crate::support::ranked::brief_of;

fn complaints(name: &str) -> Vec<String> {
    let file = root().join("scenarios").join(name).with_extension("yaml");
    let brief = brief_of(&std::fs::read_to_string(&file).unwrap());
    checker::complaints(&brief, &run(&["rank", "--json", &file.display().to_string()]).stdout)
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
    everyday: "everyday",
    facing_sofas: "facing-sofas",
    feet_and_inches: "feet-and-inches",
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
    studio: "studio",
    wheelchair: "wheelchair",
    which_hand: "which-hand",
}
