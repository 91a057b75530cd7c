//! An option is told by what stands, and once: what an arrangement names and a layout leaves out is in no title, and makes
//! no option of its own.

use std::collections::BTreeSet;

use elbowroom_model::{Only, PieceId, PieceKind, SecondPlace, WallId};
use elbowroom_solver::Limits;
use elbowroom_solver::answer::{Answer, RankedOption};
use proptest::prelude::proptest;

use crate::laws::drawn::rooms;
use crate::laws::few;
use crate::support::plan::{Plan, PlanPiece, Side, What};
use crate::support::ranked::{brief_of, ranked_brief, ranked_briefly};

/// Every option names what stands, none is told twice, and every arrangement that was looked at is accounted for.
fn assert_told_once(answer: &Answer, text: &str) {
    let mut decided = BTreeSet::new();
    for option in &answer.options {
        let stands = |piece: PieceId| option.layout.of(piece);
        let screens = answer.brief.pieces().filter(|(_, piece)| piece.kind == PieceKind::MediaUnit);
        let screens: Vec<_> = screens.filter_map(|(id, _)| stands(id)).map(|placed| placed.at_wall).collect();
        let wall = option.choices.media_wall;
        assert!(wall.is_none() || screens.contains(&wall), "{}: {screens:?}\n{text}", option.key);
        assert_eq!(wall.is_none(), option.key.contains("no-screen") || screens.is_empty(), "{}\n{text}", option.key);
        for seat in option.choices.seats() {
            assert!(stands(seat.piece).is_some(), "{}: {:?} does not stand\n{text}", option.key, seat.piece);
        }
        assert!(decided.insert(decisions(answer, option)), "{} is told twice\n{text}", option.key);
    }
    let keys = answer.options.iter().map(|option| &option.key).chain(answer.refused.iter().map(|refusal| &refusal.key));
    let keys: Vec<_> = keys.collect();
    assert_eq!(keys.len(), keys.iter().collect::<BTreeSet<_>>().len(), "keys are of a kind: {keys:#?}\n{text}");
    let told = keys.len() + answer.work.twins;
    assert_eq!(answer.work.arrangements, told, "none is lost\n{text}");
    for (place, option) in answer.options.iter().enumerate() {
        let twin = answer.options[..place].iter().find(|other| other.layout.placed == option.layout.placed);
        assert!(twin.is_none(), "{} lies as {}\n{text}", option.key, twin.unwrap().key);
    }
}

/// What a person would decide an option by.
fn decisions(answer: &Answer, option: &RankedOption) -> (Option<WallId>, i64, String, Vec<(PieceId, SecondPlace)>) {
    let choices = &option.choices;
    let row = |seat: PieceId| answer.brief.piece(seat).unwrap().alike.unwrap_or(seat);
    let mut seats: Vec<_> = choices.seats().iter().map(|seat| (row(seat.piece), seat.place)).collect();
    seats.sort_unstable();
    let facing = elbowroom_solver::answer::degrees(choices.facing).round() as i64 % 360;
    (choices.seat_back, facing, format!("{:?} {:?}", choices.hand, choices.media_wall), seats)
}

/// A slanted room in which a seat that stands free leaves no room for a screen before some of the walls.
fn slanted() -> String {
    let corners = [(0.0, 0.0), (5200.0, -240.0), (4810.0, -3160.0), (390.0, -2920.0)];
    let optional = |kind| PlanPiece::of(kind).also("needed", false);
    let door = What::Door { hinge: Some(Side::Right), leads_to: "entrance" };
    let window = What::Window { sill: 900.0, head: 2100.0, view: "plain", must_reach: false };
    let sofa = PlanPiece::of("sofa").range("width", 1800.0, 2060.0);
    let plan = Plan { measured_within: 5.0, ..Plan::of(&corners) }.piece(sofa);
    let plan = plan.piece(optional("media-unit").also("screen", "50 in")).piece(optional("bookcase"));
    plan.hold(2, "hall door", 2070.0, 820.0, door).hold(3, "window", 200.0, 1400.0, window).text()
}

/// A narrow room with a pillar before wall a: within 400 mm of the axis of any sofa at that wall (1.8 m at least, so its
/// middle lies 0.9 to 2.1 m along, and the pillar 1.2 to 1.8) nothing may stand between it and a screen.
fn with_a_pillar_amid() -> String {
    let sofa = PlanPiece::of("sofa").range("width", 1800.0, 2060.0);
    let screen = PlanPiece::of("media-unit").also("needed", false).also("screen", "50 in");
    let plan =
        Plan::rectangle(3000.0, 5200.0).piece(sofa).piece(screen).block("pillar", (1200.0, -2300.0), (1800.0, -1900.0));
    plan.doorway(2, "hall door", 100.0, 820.0, "entrance").text()
}

#[test]
fn a_screen_that_found_no_room_is_on_no_wall() {
    let text = with_a_pillar_amid();
    let answer = ranked_briefly(&text);
    assert_told_once(&answer, &text);
    assert!(answer.work.twins > 0, "{:#?}", answer.options.iter().map(|option| &option.key).collect::<Vec<_>>());
}

/// Held to a wall, the screen stands there or the arrangement does not fit.
#[test]
fn a_screen_that_is_asked_for_at_a_wall_is_not_left_out() {
    let mut brief = brief_of(&slanted());
    let mut refused = 0;
    for (wall, _) in brief.clone().room.walls() {
        brief.only = vec![Only::MediaWall(Some(wall))];
        let answer = ranked_brief(&brief, Limits { shown: 0, ..Limits::default() });
        assert!(answer.options.iter().all(|option| option.choices.media_wall == Some(wall)));
        assert_told_once(&answer, "held to a wall");
        refused += answer.refused.len();
    }
    assert!(refused > 0, "an arrangement that was told without its screen does not fit with it");
}

#[test]
fn a_seat_that_found_no_room_is_in_no_place() {
    let sofa = PlanPiece::of("sofa").range("width", 1600.0, 2000.0);
    let chairs = PlanPiece::of("armchair").also("count", 2).also("needed", false);
    let plan = Plan::rectangle(3000.0, 2700.0).piece(sofa).piece(chairs);
    let text = plan.doorway(2, "hall door", 200.0, 820.0, "entrance").text();
    let answer = ranked_briefly(&text);
    assert_told_once(&answer, &text);
    let alone = |option: &&RankedOption| option.choices.second_seats.is_empty();
    let alone: Vec<_> = answer.options.iter().filter(alone).map(|option| option.key.as_str()).collect();
    // Two seats that face each other are 5 ft apart: sofa and chair stand opposite in no room under 3.1 m.
    assert!(!alone.is_empty() && alone.iter().all(|key| !key.contains("armchair")), "{alone:?}");
}

proptest! {
    #![proptest_config(few(6))]

    /// Whatever need not stand, what is told stands.
    #[test]
    fn every_option_is_told_once_by_what_stands(plan in rooms()) {
        let mut plan = plan;
        for piece in plan.pieces.iter_mut().skip(1) {
            *piece = piece.clone().also("needed", false);
        }
        let text = plan.text();
        assert_told_once(&ranked_briefly(&text), &text);
    }
}
