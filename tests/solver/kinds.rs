//! What the kinds of piece beside the group do.

use elbowroom_model::{ItemKind, PieceKind};
use elbowroom_solver::answer::{Answer, RankedOption};

use crate::scenarios::room;
use crate::support::ranked::ranked;

/// The piece of a kind as it stands in an option.
fn of_kind(answer: &Answer, option: &RankedOption, kind: PieceKind) -> Option<elbowroom_solver::Placed> {
    let is_such =
        |placed: &&elbowroom_solver::Placed| answer.brief.piece(placed.piece).is_some_and(|piece| piece.kind == kind);
    option.layout.placed.iter().find(is_such).cloned()
}

/// Common practice: an inner wall, away from heat.
#[test]
fn a_piano_stands_at_a_wall_with_no_window_radiator_or_fire() {
    let answer = ranked(&room("music-room"));
    assert!(answer.options.len() >= 2, "{:#?}", answer.refused);
    for option in &answer.options {
        let piano = of_kind(&answer, option, PieceKind::Piano).expect("it is needed");
        let wall = piano.at_wall.expect("at a wall");
        let is_such =
            |kind: &ItemKind| matches!(kind, ItemKind::Window(_) | ItemKind::Radiator(_) | ItemKind::Fireplace(_));
        let held = answer.brief.room.items.iter().filter(|item| item.wall == wall);
        assert!(!held.clone().any(|item| is_such(&item.kind)), "{}", option.key);
    }
}

#[test]
fn a_console_stands_at_a_wall_or_close_behind_a_sofa_that_stands_free() {
    let answer = ranked(&room("music-room"));
    let mut behind = 0;
    for option in &answer.options {
        let Some(console) = of_kind(&answer, option, PieceKind::Console).filter(|it| it.at_wall.is_none()) else {
            continue;
        };
        let sofa = of_kind(&answer, option, PieceKind::Sofa).expect("it is needed");
        assert!(sofa.at_wall.is_none(), "{}", option.key);
        let off = (sofa.anchor - console.anchor).dot(sofa.facing);
        assert!((-0.01..=100.01).contains(&off), "{}: {off} behind", option.key);
        assert!(console.facing.dot(sofa.facing) < -0.99, "{}", option.key);
        let aside = (sofa.anchor - console.anchor).dot(sofa.left()).abs() + console.size.width / 2.0;
        assert!(aside <= sofa.size.width / 2.0 + 0.01, "{}: past its end", option.key);
        behind += 1;
    }
    assert!(behind > 0, "{:#?}", answer.options.iter().map(|option| &option.key).collect::<Vec<_>>());
}
