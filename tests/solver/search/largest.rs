//! The largest pieces, over all stands of an arrangement; rules of comfort aside.

use elbowroom_model::{Brief, Dimension};
use elbowroom_solver::arrangement::Arrangement;
use elbowroom_solver::routes::Floor;
use elbowroom_solver::search::{Aim, Easing, Effort, RoomContext, search};
use proptest::prelude::proptest;

use super::hall::{Hall, Patch, STEP, Sought, at_each_wall as places, halls, overlap, seen_from_first};
use super::{FRONT, NODES, SCREEN, at_each_wall};
use crate::laws::few;
use crate::support::plan::{Plan, PlanPiece};

const SOFA: Sought = Sought { widths: (15, 27), depth: 9, at_a_time: 1 };
const UNIT: Sought = Sought { widths: (10, 20), depth: 4, at_a_time: 1 };
const BOOKS: Sought = Sought { widths: (6, 12), depth: 3, at_a_time: 1 };

/// What a piece of the brief is worth at this width.
fn value(brief: &Brief, piece: usize, place: Patch) -> f64 {
    let piece = &brief.pieces[piece];
    piece.weight * piece.range(Dimension::Width).unwrap().value(f64::from(place.width()) * STEP)
}

/// The best value of a sofa at the back wall and a screen at the wall that it faces.
fn best_with_screen(hall: &Hall, brief: &Brief) -> Option<f64> {
    let opposite = hall.turned().turned();
    let screens = opposite.at_back(UNIT).into_iter().map(|place| seen_from_first(hall, place, 2));
    let screens: Vec<Patch> = screens.collect();
    let sofas = hall.at_back(SOFA);
    let pair = |sofa: &Patch, screen: &Patch| {
        let fits = screen.y.0 - sofa.y.1 >= SCREEN && overlap(sofa.x, screen.x) > 0;
        fits.then(|| value(brief, 0, *sofa) + value(brief, 1, *screen))
    };
    let values = sofas.iter().flat_map(|sofa| screens.iter().filter_map(move |screen| pair(sofa, screen)));
    values.max_by(f64::total_cmp)
}

/// The best value of a sofa at the back wall and a bookcase at any wall, nothing before it.
fn best_with_books(hall: &Hall, brief: &Brief) -> Option<f64> {
    let sofas = hall.at_back(SOFA);
    let mut best: Option<f64> = None;
    for (turns, books, _) in places(hall, BOOKS) {
        let worth = value(brief, 1, books);
        let kept = seen_from_first(hall, Patch { x: books.x, y: (books.y.0, books.y.1 + FRONT) }, turns);
        for sofa in sofas.iter().filter(|sofa| hall.free(kept) && !sofa.meets(kept)) {
            let sum = value(brief, 0, *sofa) + worth;
            best = Some(best.map_or(sum, |best| best.max(sum)));
        }
    }
    best
}

/// Holds the search to the brute force, wall by wall.
fn agree(hall: &Hall, plan: &Plan, faces: bool, brute: impl Fn(&Hall, &Brief) -> Option<f64>) {
    let effort = Effort { easing: Easing::Ignored, ..Effort::of(Aim::Together, NODES) };
    let searched =
        |room: &RoomContext<'_>, floor: &Floor, arrangement: &Arrangement| search(room, floor, arrangement, effort);
    at_each_wall(hall, plan, faces, searched, |at, searched| {
        let best = brute(at.hall, at.brief);
        let found = searched.iter().filter_map(|searched| searched.found.as_ref());
        let found = found.map(|found| (found.layout.size_value(at.brief), found.is_proven()));
        match (best, found.max_by(|one, other| one.0.total_cmp(&other.0))) {
            (None, None) => {}
            (Some(best), Some((value, proven))) => {
                // A proof holds within a thousandth, and the terms that settle ties are a thousandth too.
                let slack = best.abs() * 2e-3 + 1.0;
                let told = format!("{}: brute {best}, search {value} ({proven})\n{}", at.wall, plan.text());
                assert!((value - best).abs() <= slack, "{told}");
            }
            (brute, search) => panic!("{}: brute {brute:?}, search {search:?}\n{}", at.wall, plan.text()),
        }
    });
}

proptest! {
    #![proptest_config(few(12))]

    /// A sofa and the screen it faces.
    #[test]
    fn sofa_and_screen_equal_brute_force(hall in halls()) {
        let plan = hall
            .plan()
            .clear("screen_to_seat", f64::from(SCREEN) * STEP)
            .piece(PlanPiece::of("sofa").range("width", 1500.0, 2700.0).range("depth", 900.0, 900.0))
            .piece(PlanPiece::of("media-unit").range("width", 1000.0, 2000.0).range("depth", 400.0, 400.0));
        agree(&hall, &plan, true, best_with_screen);
    }

    /// A sofa and a bookcase that may stand at any wall.
    #[test]
    fn sofa_and_bookcase_equal_brute_force(hall in halls()) {
        let plan = hall
            .plan()
            .clear("storage_front", f64::from(FRONT) * STEP)
            .piece(PlanPiece::of("sofa").range("width", 1500.0, 2700.0).range("depth", 900.0, 900.0))
            .piece(PlanPiece::of("bookcase").range("width", 600.0, 1200.0).range("depth", 300.0, 300.0));
        agree(&hall, &plan, false, best_with_books);
    }
}
