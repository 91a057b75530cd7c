//! A seat by what it looks like from its end, and what would have to come off it.

use elbowroom_model::PieceKind;
use elbowroom_model::listing::{Asked, ListedPiece, read};
use elbowroom_model::way_in::{Load, LoadPart, Profile, WayFile};
use elbowroom_solver::way_in::{Legs, PieceIn, Pose, carried, narrowest, of_a_list, way_in};

use super::points::{door, way};

fn seat(sides: [f64; 3], profile: Profile) -> LoadPart {
    LoadPart { profile: Some(profile), ..LoadPart::of_box("sofa".to_owned(), sides) }
}

/// How narrow a slot the outline of a seat passes, by every half degree and every slot in steps of 2 mm.
fn by_brute_force([_, depth, height]: [f64; 3], profile: Profile) -> f64 {
    let outline = [(0.0, 0.0), (depth, 0.0), (depth, profile.front), (profile.back, height), (0.0, height)];
    let across = |half: u32| {
        let (sin, cos) = (f64::from(half) / 2.0).to_radians().sin_cos();
        let along = outline.map(|(x, y)| x * cos + y * sin);
        along.into_iter().fold(f64::MIN, f64::max) - along.into_iter().fold(f64::MAX, f64::min)
    };
    let passes = |slot: f64| (0..360).any(|half| across(half) <= slot);
    (0..1000).map(|step| 2.0 * f64::from(step)).find(|slot| passes(*slot)).unwrap()
}

#[test]
fn a_seat_is_turned_to_where_its_outline_is_narrowest() {
    let mut narrower = 0;
    for (depth, height, front, back) in [
        (950.0, 850.0, 520.0, 60.0),
        (900.0, 900.0, 500.0, 100.0),
        (1050.0, 950.0, 610.0, 120.0),
        (880.0, 780.0, 610.0, 200.0),
        (1000.0, 700.0, 400.0, 50.0),
    ] {
        let (sides, profile) = ([2100.0, depth, height], Profile { front, back });
        let least = by_brute_force(sides, profile);
        let load = |long: f64| Load { name: "sofa".to_owned(), parts: vec![seat([long, depth, height], profile)] };
        // A slot of the scan lies at most 2 mm over the least, and a quarter of a degree of the diagonal.
        let slack = 2.0 + depth.hypot(height) * 0.25_f64.to_radians();
        assert!(carried(&way(&[door(least, 2000.0)]), &load(2100.0)).gets_in, "{depth} x {height}: {least}");
        assert!(!carried(&way(&[door(least - slack, 2000.0)]), &load(2100.0)).gets_in, "{depth} x {height}: {least}");
        if least < depth.min(height) - slack {
            narrower += 1;
            // Level and tilted; what is short enough also on its end, under a head too low for it to be tilted.
            let tilted = carried(&way(&[door(least, 2000.0)]), &load(2100.0));
            assert_eq!(tilted.parts[0].held, [Pose::Tilted]);
            let low = narrowest(&seat(sides, profile)).unwrap().along - 1.0;
            let on_end = carried(&way(&[door(least, low)]), &load(low));
            assert_eq!(on_end.parts[0].held, [Pose::EndTurned]);
        }
    }
    assert!(narrower >= 3, "{narrower}");
}

fn listed(text: &str) -> Vec<ListedPiece> {
    read(text.as_bytes(), &Asked { most_rows: 100, ..Asked::default() }).unwrap().pieces
}

fn through(width: f64, pieces: &[ListedPiece]) -> Vec<PieceIn> {
    let mut way = way(&[door(width, 2030.0)]);
    way.points[0].name = "front".to_owned();
    let file = WayFile {
        name: "house".to_owned(),
        units: elbowroom_model::Unit::Centimetre,
        way,
        pieces: Vec::new(),
        notices: Vec::new(),
    };
    way_in(&file, pieces, &|_: PieceKind| 850.0).pieces
}

const HEADS: &str =
    "kind,name,width cm,depth cm,height cm,seat_height cm,arm_height cm,back_thickness cm,leg_height cm,legs off\n";

#[test]
fn the_least_that_would_have_to_come_off_is_found() {
    let list = listed(&format!(
        "{HEADS}sofa,a,220,90,85,,,,,\nsofa,b,220,90,85,,,,12,\nsofa,c,220,90,85,,,,,12 cm\nsofa,d,220,98,97,,,,,\n"
    ));
    let found = through(810.0, &list);
    let legs = |piece: &PieceIn| piece.would.iter().filter_map(|off| off.legs).next();
    let Some(Legs::UpTo(least)) = legs(&found[0]) else { panic!("{:?}", found[0].would) };
    // On its back it needs its height: 85 into 81 is 4 too much, more than the leaf of a door.
    assert!((least - 40.0).abs() < 1e-3 && found[0].would.len() == 1 && !found[0].carried.gets_in, "{least}");
    assert_eq!(legs(&found[1]), Some(Legs::Listed(120.0)));
    assert!(found[2].carried.gets_in && found[2].legs_off == Some(120.0) && found[2].would.is_empty());
    // 16 is more than legs usually are: what is left is the leaf's to bring.
    let both = &found[3].would[0];
    let Some(Legs::UpTo(least)) = both.legs else { panic!("{both:?}") };
    assert!((least - 125.0).abs() < 1e-3 && both.leaves == [0], "{both:?}");
    // The leaf alone.
    let found = through(820.0, &list[..1]);
    assert_eq!(
        found[0].would.iter().map(|off| (off.legs.is_some(), off.leaves.len())).collect::<Vec<_>>(),
        [(true, 0), (false, 1)]
    );
}

/// Who decides for somebody that a piece gets in takes nothing as usual: a section that nobody gave is a box.
#[test]
fn what_is_usual_is_taken_where_it_is_told_alone() {
    let list = listed(&format!("{HEADS}sofa,low,220,110,95,30,,20,,\nsofa,known,220,110,95,30,50,8,,\n"));
    let slot = narrowest(&seat([2200.0, 1100.0, 950.0], Profile { front: 500.0, back: 200.0 })).unwrap().across;
    assert!(slot < 949.0, "{slot}");
    let way_of = way(&[door(slot + 0.1, 2030.0)]);
    let by_usual = |width: f64| -> Vec<bool> { through(width, &list).iter().map(|one| one.by_usual_section).collect() };
    assert!(through(slot + 0.1, &list)[0].carried.gets_in);
    assert_eq!((by_usual(slot + 0.1), by_usual(1200.0)), (vec![true, false], vec![false, false]));
    assert!(!of_a_list(&way_of, &list[0], 850.0).carried.gets_in);
    assert!(of_a_list(&way_of, &list[1], 850.0).carried.gets_in);
}

#[test]
fn a_corner_sofa_is_judged_run_by_run() {
    let text = "kind,name,width cm,return cm,second return cm,depth cm,height cm\ncorner-sofa,U,320,200,190,98,80\n";
    let found = through(810.0, &listed(text));
    let parts: Vec<(&str, bool)> =
        found[0].carried.parts.iter().map(|part| (part.name.as_str(), part.gets_in)).collect();
    assert_eq!(parts, [("U, main run", true), ("U, return", true), ("U, second return", true)]);
}
