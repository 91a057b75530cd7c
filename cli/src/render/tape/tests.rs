//! The sheet rebuilt: every corner from the numbers that are printed on it and from nothing else, against the layout.

mod rebuilt;
mod rooms;

use elbowroom_model::{Brief, Point, Unit, scenario};
use elbowroom_solver::answer::RankedOption;
use elbowroom_solver::{Limits, Unwatched, rank};
use proptest::prelude::{ProptestConfig, proptest};

use super::{Laid, leaf};
use crate::render::leaf::text;
use crate::text::look::Look;
use rebuilt::Rebuilt;

/// How near a rebuilt corner must come, mm (ours, no source).
const NEAR: f64 = 10.0;

/// Rebuilds every option of a scenario; how many there were.
fn rebuild_all(scenario: &str, units: Option<Unit>, room: Room) -> usize {
    let mut brief = scenario::read(scenario, None).unwrap_or_else(|faults| panic!("{faults:#?}\n{scenario}"));
    brief.units = units.unwrap_or(brief.units);
    let answer = rank(&brief, &Limits { shown: 0, ..Limits::default() }, &Unwatched);
    for option in &answer.options {
        let laid = Laid { answer: &answer, option, roll: 50_000.0, plan: None };
        let sheet = text(&leaf(&laid), Look::PLAIN);
        check(&answer.brief, option, &sheet, room);
    }
    answer.options.len()
}

/// Where the sheet's measures are laid out.
#[derive(Clone, Copy, PartialEq)]
enum Room {
    /// In the room rebuilt from the sheet's own lengths.
    Rebuilt,
    /// In the room itself, as on the floor: one whose diagonals cut it into thin triangles is rebuilt from rounded lengths
    /// some millimetres off, which is no error of a piece.
    Itself,
}

/// Holds a rebuilt sheet against the option.
fn check(brief: &Brief, option: &RankedOption, sheet: &str, room: Room) {
    let told = || format!("{}\n{sheet}", option.key);
    // The sheet's own frame: its first wall from (0, 0) to the right.
    let (start, along) = (brief.room.walls[0].start, brief.room.walls[0].along());
    let own = |at: Point| ((at - start).dot(along), (at - start).dot(along.left()));
    let from = |at: &(f64, f64), other: &(f64, f64)| (at.0 - other.0).hypot(at.1 - other.1);
    let outline: Vec<(f64, f64)> = brief.room.outline().into_iter().map(own).collect();
    let rebuilt = Rebuilt::of(sheet, (room == Room::Itself).then_some(&outline[..]));
    assert_eq!(rebuilt.pieces.len(), option.sizes.len(), "{}", told());
    for one in option.pieces(brief) {
        let (name, parts) = (&one.piece.name, one.parts());
        let corners = &rebuilt.pieces.iter().find(|(told, _)| told == name).unwrap_or_else(|| panic!("{}", told())).1;
        // Each return adds two corners.
        let expected = 2 + 2 * parts.len();
        assert_eq!(corners.len(), expected, "{name}: {}", told());
        let all: Vec<(f64, f64)> = parts.iter().flatten().map(|at| own(*at)).collect();
        let mut taken: Vec<usize> = corners
            .iter()
            .map(|corner| {
                let far = |at: &(f64, f64)| from(at, corner);
                let nearest =
                    (0..all.len()).min_by(|one, other| far(&all[*one]).total_cmp(&far(&all[*other]))).unwrap();
                let off = far(&all[nearest]);
                assert!(off < NEAR, "{name}: {corner:?} is {off:.1} mm off\n{}", told());
                nearest
            })
            .collect();
        taken.sort_unstable();
        taken.dedup();
        assert_eq!(taken.len(), expected, "{name}: two corners are one\n{}", told());
    }
    let centre = option.turning_circle.map(|circle| own(circle.centre));
    assert_eq!(rebuilt.circle.is_some(), centre.is_some(), "{}", told());
    for (rebuilt, centre) in rebuilt.circle.iter().zip(&centre) {
        let off = from(rebuilt, centre);
        assert!(off < NEAR, "the circle is {off:.1} mm off\n{}", told());
    }
}

#[test]
fn every_corner_of_every_demo_option_is_rebuilt_from_its_sheet() {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../scenarios");
    let mut options = 0;
    let files = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    for path in files.filter(|path| path.extension().is_some_and(|extension| extension == "yaml")) {
        options += rebuild_all(&std::fs::read_to_string(path).unwrap(), None, Room::Rebuilt);
    }
    assert!(options > 100, "{options}");
}

#[test]
fn a_tape_in_inches_rebuilds_as_well() {
    for name in ["oblique", "measured-badly", "canal-flat"] {
        let path = format!("{}/../scenarios/{name}.yaml", env!("CARGO_MANIFEST_DIR"));
        let text = std::fs::read_to_string(path).unwrap();
        assert!(rebuild_all(&text, Some(Unit::Inch), Room::Rebuilt) > 0, "{name}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 24, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn every_corner_in_drawn_rooms_is_rebuilt_from_its_sheet(room in rooms::room()) {
        rebuild_all(&room, None, Room::Itself);
    }
}

#[test]
fn the_drawn_rooms_have_options() {
    let found = rooms::SOUND.iter().map(|room| rebuild_all(room, None, Room::Itself)).sum::<usize>();
    assert!(found > 4, "{found}");
}
