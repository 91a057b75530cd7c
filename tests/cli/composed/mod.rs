//! Plans as somebody who draws rooms would judge them: what comes first in ordinary rooms is odd in next to nothing.
//!
//! Over eleven rooms of real dwellings, the demo rooms and drawn ones, each under two furnishings. To read the table:
//! `cargo test -p elbowroom --test cli composed -- --nocapture`; `ELBOWROOM_DRAWN_ROOMS=200` draws as many, and takes the
//! demo rooms under both furnishings; `ELBOWROOM_ROOMS_TO=folder` keeps the rooms there, to look at what is drawn of them.

mod briefs;
mod drawn;
mod judged;
mod rooms;
mod tally;

use std::path::Path;

use rayon::iter::{IntoParallelRefIterator, ParallelIterator};

use crate::support::judge::Mark;
use judged::Judged;
use rooms::Extent;
use tally::{Share, Tally};

/// First options odd in nothing, in a hundred, at least ...
const CLEAN: f64 = 80.0;
/// ... of those of the demo rooms ...
const CLEAN_DEMO: f64 = 95.0;
/// ... and of those in which nothing is eased.
const CLEAN_UNEASED: f64 = 95.0;
/// First options with any one mark, in a hundred, at most.
const WITH_A_MARK: f64 = 8.0;
/// Optional armchairs that stand, in a hundred, at least: a room without its chairs is easy to keep clean.
const CHAIRS: f64 = 75.0;

fn extent() -> Extent {
    let asked = std::env::var("ELBOWROOM_DRAWN_ROOMS").ok();
    asked.map_or(Extent::Short, |count| Extent::Long(count.parse().expect("ELBOWROOM_DRAWN_ROOMS is a number")))
}

#[test]
#[allow(clippy::print_stdout, reason = "the table is what one runs it for")]
fn first_options_are_odd_in_next_to_nothing() {
    let cases = rooms::cases(extent());
    if let Ok(folder) = std::env::var("ELBOWROOM_ROOMS_TO") {
        rooms::keep(&cases, Path::new(&folder));
    }
    let judged: Vec<Judged> = cases.par_iter().map(judged::judged).collect();
    let tally = Tally(&judged);
    println!("{}", tally.table());
    let under = |what: &str, share: Share, least: f64| {
        let percent = share.percent().filter(|percent| *percent < least)?;
        Some(format!("{what}: {percent:.1} in a hundred, not {least}"))
    };
    let shares = [
        under("odd in nothing", tally.clean(|_| true), CLEAN),
        under("odd in nothing, of the demo rooms", tally.clean(rooms::Group::is_demo), CLEAN_DEMO),
        under("odd in nothing, where nothing is eased", tally.clean_uneased(|_| true), CLEAN_UNEASED),
        under("armchairs that stand", tally.chairs(|_| true), CHAIRS),
    ];
    let marks = Mark::ALL.into_iter().filter_map(|mark| {
        let percent = tally.with(mark).percent().filter(|percent| *percent > WITH_A_MARK)?;
        Some(format!("{mark:?}: {percent:.1} in a hundred, not {WITH_A_MARK} at most"))
    });
    let missed: Vec<String> = shares.into_iter().flatten().chain(marks).collect();
    assert!(missed.is_empty(), "{missed:#?}");
}

/// The table would tell nothing of rooms that are not there, or that no file can hold.
#[test]
fn every_room_to_judge_is_a_sound_scenario() {
    let cases = rooms::cases(Extent::Long(200));
    let count = |group: rooms::Group| cases.iter().filter(|case| case.group == group).count();
    assert_eq!((count(rooms::Group::Real), count(rooms::Group::Drawn)), (22, 400));
    assert!(count(rooms::Group::Demo) == 2 * count(rooms::Group::Own) && count(rooms::Group::Own) >= 10);
    for case in &cases {
        let read = elbowroom_model::scenario::read(&case.text, None);
        assert!(read.is_ok(), "{}: {:?}\n{}", case.name, read.err(), case.text);
    }
}
