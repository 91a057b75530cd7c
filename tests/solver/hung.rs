//! Screens that hang: where a media unit is too deep, over what is low, and past those who walk.

use elbowroom_model::{
    Brief, Clearance, Door, ItemKind, LeadsTo, Only, PieceId, PieceKind, Point, SizeRange, Swings, WallId,
};
use elbowroom_solver::answer::RankedOption;
use elbowroom_solver::refusal::{Lever, Remedy};
use elbowroom_solver::routes;
use elbowroom_solver::{Layout, Limits, Placed, Site, Size};

use crate::scenarios::room;
use crate::support::ranked::{brief_of, ranked, ranked_brief};
use crate::support::remedied::remedied;
use crate::support::rooms::{Furnish, piece, rectangle};

fn screen_of(option: &RankedOption, brief: &Brief) -> Option<Placed> {
    let is_hung = |placed: &&Placed| brief.piece(placed.piece).is_some_and(|piece| piece.kind == PieceKind::WallScreen);
    option.layout.placed.iter().find(is_hung).cloned()
}

#[test]
fn a_screen_hangs_where_no_media_unit_fits() {
    let text = room("hung-screen");
    let brief = brief_of(&text);
    let answer = ranked(&text);
    assert!(answer.options.len() >= 2, "{:#?}", answer.refused);
    for option in &answer.options {
        let screen = screen_of(option, &brief).expect("the screen hangs");
        let wall = brief.room.wall(screen.at_wall.expect("on a wall")).unwrap();
        let off = (screen.anchor - wall.start).dot(wall.inward()) - brief.room.measured_within;
        assert!(off.abs() < 0.5, "{}: {off} off its wall", option.key);
        assert_eq!(option.choices.media_wall, screen.at_wall);
    }
}

#[test]
fn where_a_media_unit_does_not_fit_a_wall_is_named_for_the_screen_and_each_remedy_helps() {
    let asked = "{ kind: wall-screen, screen: 43 in, centre: 112 }";
    let text = room("hung-screen").replace(asked, "{ kind: media-unit, screen: 43 in }");
    let brief = brief_of(&text);
    let answer = ranked(&text);
    assert!(answer.options.is_empty() && answer.undecided() == 0, "{:#?}", answer.options.len());
    let hangs = |remedy: &&Remedy| matches!(remedy.changes[0].lever, Lever::Hang(..));
    let hung = answer.remedies.iter().find(hangs);
    let hung = hung.unwrap_or_else(|| panic!("{:#?}", answer.remedies));
    let helped = remedied(&brief, hung).unwrap();
    assert!(matches!(helped.only[..], [Only::MediaWall(Some(_))]));
    let options = ranked_brief(&helped, Limits::default()).options;
    assert!(!options.is_empty());
}

/// 2010 ADA Standards 307.2 and 307.4: what juts out 4 in or less, or hangs 80 in up, is in nobody's way.
#[test]
fn only_a_screen_that_juts_out_at_head_height_narrows_a_way() {
    let door = || ItemKind::Door(Door { hinge: None, swings: Swings::Slides, leads_to: LeadsTo::Entrance });
    let width = |depth: f64, lower_edge: f64| {
        let mut screen = piece(PieceKind::WallScreen);
        (screen.depth, screen.height, screen.screen) = (SizeRange::fixed(depth), lower_edge, Some(1000.0));
        let brief = rectangle(4000.0, 1000.0)
            .rule(Clearance::Walkway, 1000.0)
            .item("hall door", 1, 0.0, 1000.0, door())
            .item("kitchen door", 3, 0.0, 1000.0, door())
            .piece(screen);
        let size = Size { width: 800.0, return_length: None, depth };
        let (anchor, facing) = (Point::new(2000.0, 0.0), Point::new(0.0, -1.0));
        let placed = Placed { piece: PieceId(0), at_wall: Some(WallId(0)), anchor, facing, hand: None, size };
        let layout = Layout { placed: vec![placed], ..Layout::default() };
        routes::all(&brief, &Site::of(&brief), &layout)[0].width
    };
    assert!((width(120.0, 800.0) - 880.0).abs() < 0.5, "{}", width(120.0, 800.0));
    assert!((width(100.0, 800.0) - 1000.0).abs() < 0.5, "{}", width(100.0, 800.0));
    assert!((width(120.0, 2040.0) - 1000.0).abs() < 0.5, "{}", width(120.0, 2040.0));
}
