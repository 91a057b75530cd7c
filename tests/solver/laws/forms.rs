//! The laws of images and the re-checks over rooms with each form of sofa: a chaise deeper than its sofa, a U with returns alike
//! and unlike, pairs, a day bed.

use elbowroom_model::Dimension;
use elbowroom_solver::Limits;

use super::told::{Apart, Image, WITHIN_PROOF, assert_alike};
use crate::support::plan::{Plan, PlanPiece, What};
use crate::support::ranked::{brief_of, figures, ranked_brief, ranked_briefly};

/// Where several places of a seat that stands free cost the same, the score is that of any of them: a plain corner sofa is as far
/// apart from its image in this room.
const SEVERAL_PLACES: Apart = Apart { score: 8.0, ..WITHIN_PROOF };

fn room() -> Plan {
    let window = What::Window { sill: 800.0, head: 2100.0, view: "liked", must_reach: false };
    Plan::rectangle(5600.0, 4800.0)
        .doorway(0, "hall door", 250.0, 830.0, "entrance")
        .hold(1, "window", 700.0, 1400.0, window)
}

fn chaise() -> PlanPiece {
    let sofa = PlanPiece::of("corner-sofa").range("width", 2300.0, 2600.0).range("return", 1500.0, 1750.0);
    sofa.range("return_depth", 950.0, 1100.0).range("depth", 880.0, 950.0).also("chaise", true)
}

fn u(second: (f64, f64)) -> PlanPiece {
    let sofa = PlanPiece::of("corner-sofa").range("width", 3000.0, 3500.0).range("return", 1600.0, 1900.0);
    sofa.range("second_return", second.0, second.1).range("depth", 850.0, 950.0)
}

/// Rooms with each form; the narrow table finds its place in a bay.
fn rooms() -> Vec<Plan> {
    let table = || PlanPiece::of("coffee-table").range("width", 450.0, 1000.0);
    let media = || PlanPiece::of("media-unit");
    let pair = |pair: &str| PlanPiece::of("sofa").also("count", 2).also("pair", pair).range("width", 1500.0, 2200.0);
    vec![
        room().piece(chaise()).piece(table()).piece(media()),
        room().piece(u((1600.0, 1900.0))).piece(table()).piece(media()),
        room().piece(u((1400.0, 1500.0)).also("chaise", true)).piece(table()).piece(media()),
        room().piece(pair("facing")).piece(table()),
        room().piece(pair("corner")).piece(table()).piece(media()),
        room().piece(PlanPiece::of("day-bed")).piece(PlanPiece::of("armchair")).piece(table()).piece(media()),
    ]
}

#[test]
fn a_mirrored_room_mirrors_every_form() {
    for plan in rooms() {
        let text = plan.text();
        let (one, other) = (ranked_briefly(&text), ranked_briefly(&plan.mirrored().text()));
        assert!(!one.options.is_empty(), "{text}");
        assert_alike(&one, Image::Mirrored, &other, SEVERAL_PLACES, &text);
    }
}

#[test]
fn a_turned_room_turns_every_form() {
    for plan in rooms() {
        let text = plan.text();
        let (one, other) = (ranked_briefly(&text), ranked_briefly(&plan.turned(37.0).text()));
        assert_alike(&one, Image::Turned(37.0), &other, SEVERAL_PLACES, &text);
    }
}

/// A U is told in one width, so that what stands in its bay keeps its place whatever smaller piece is bought.
#[test]
fn a_u_is_told_in_the_width_that_it_is_planned_in() {
    let plan = room().piece(u((1600.0, 1900.0))).piece(PlanPiece::of("coffee-table").range("width", 450.0, 1000.0));
    let answer = ranked_brief(&brief_of(&plan.text()), Limits::default());
    for option in &answer.options {
        assert_eq!(option.choices.hand, None, "two returns alike have no hand");
        let sofa = option.pieces(&answer.brief).next().unwrap().sizes;
        let width = figures(sofa, Dimension::Width);
        assert_eq!(
            (width.least, width.together, width.alone.unwrap_or(width.planned)),
            (width.planned, width.planned, width.planned)
        );
        assert!(figures(sofa, Dimension::SecondReturn).least < 1601.0);
    }
}
