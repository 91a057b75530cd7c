//! Screens that hang: where a media unit is too deep, over what is low, and past those who walk.

use elbowroom_model::{
    Brief, Clearance, Door, ItemKind, LeadsTo, Only, PieceId, PieceKind, Point, SizeRange, Swings, WallId,
};
use elbowroom_solver::answer::RankedOption;
use elbowroom_solver::judge::{Placement, judge};
use elbowroom_solver::refusal::{Lever, Remedy, Why};
use elbowroom_solver::routes;
use elbowroom_solver::{Layout, Limits, Placed, Site, Size};

use crate::scenarios::room;
use crate::support::ranked::{brief_of, ranked, ranked_brief, ranked_briefly};
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
    let door =
        || ItemKind::Door(Door { hinge: None, swings: Swings::Slides, opens_to: None, leads_to: LeadsTo::Entrance });
    let width = |depth: f64, lower_edge: f64| {
        let mut screen = piece(PieceKind::WallScreen);
        (screen.depth, screen.height, screen.screen) = (SizeRange::fixed(depth), lower_edge, Some(1000.0));
        let brief = rectangle(4000.0, 1000.0)
            .rule(Clearance::Walkway, 1000.0)
            .item("hall door", 1, 0.0, 1000.0, door())
            .item("kitchen door", 3, 0.0, 1000.0, door())
            .piece(screen);
        let size = Size { width: 800.0, depth, ..Size::default() };
        let (anchor, facing) = (Point::new(2000.0, 0.0), Point::new(0.0, -1.0));
        let placed = Placed { piece: PieceId(0), at_wall: Some(WallId(0)), anchor, facing, hand: None, size };
        let layout = Layout { placed: vec![placed], ..Layout::default() };
        routes::all(&brief, &Site::of(&brief), &layout)[0].width
    };
    assert!((width(120.0, 800.0) - 880.0).abs() < 0.5, "{}", width(120.0, 800.0));
    assert!((width(100.0, 800.0) - 1000.0).abs() < 0.5, "{}", width(100.0, 800.0));
    assert!((width(120.0, 2040.0) - 1000.0).abs() < 0.5, "{}", width(120.0, 2040.0));
}

/// A square room with two sofas, a low unit, and a screen.
fn two_sofas(screen: &str) -> String {
    format!(
        "units: cm\nwalls:\n  - {{ name: wa, length: 411 }}\n  - {{ name: wb, length: 488 }}\n  - {{ name: wc, length: 411 }}\n  \
         - {{ name: wd, length: 488, holds: [{{ kind: door, at: 30, width: 81, hinge: left, swings: in, leads_to: entrance }}] \
         }}\npieces:\n  - {{ kind: sofa, count: 2 }}\n{screen}"
    )
}

/// What may be left out hangs on its wall all the same.
#[test]
fn a_screen_that_hangs_only_if_it_fits_hangs_on_its_wall() {
    let answer = ranked_briefly(&two_sofas("  - { kind: wall-screen, screen: 43 in, needed: false }\n"));
    let unsound = answer.refused.iter().filter(|refused| matches!(refused.why, Why::NotVerified(_)));
    assert_eq!(unsound.count(), 0, "{:#?}", answer.refused);
    assert!(answer.options.iter().any(|option| screen_of(option, &answer.brief).is_some()));
}

/// The screen that a unit carries stays the one that is watched beside one that may hang.
#[test]
fn a_screen_that_may_hang_takes_nothing_from_a_unit_with_its_own() {
    let both = "  - { kind: media-unit, screen: 48 in }\n  - { kind: wall-screen, screen: 43 in, needed: false }\n";
    let brief = brief_of(&two_sofas(both));
    let watched = |brief: &Brief| -> Vec<PieceKind> {
        brief.pieces.iter().filter(|piece| brief.is_watched(piece)).map(|piece| piece.kind).collect()
    };
    assert_eq!(watched(&brief), [PieceKind::MediaUnit]);
    assert_eq!(watched(&brief_of(&two_sofas(&both.replace(", needed: false", "")))), [PieceKind::WallScreen]);
    assert_eq!(watched(&brief_of(&two_sofas(&both.replace(", screen: 48 in", "")))), [PieceKind::WallScreen]);
}

/// A low unit stands amid the screen that hangs over it.
#[test]
fn a_unit_stands_under_the_screen_that_hangs() {
    let text = two_sofas("  - { kind: media-unit }\n  - { kind: wall-screen, screen: 43 in }\n")
        .replace("count: 2", "count: 1");
    let answer = ranked_briefly(&text);
    let best = &answer.options[0];
    let screen = screen_of(best, &answer.brief).unwrap();
    let unit =
        best.layout.placed.iter().find(|placed| answer.brief.pieces[placed.piece.0].kind == PieceKind::MediaUnit);
    let unit = unit.unwrap();
    assert_eq!(unit.at_wall, screen.at_wall);
    let aside = (unit.back_middle() - screen.back_middle()).dot(unit.along()).abs();
    assert!(aside < 10.0, "{aside}");
}

/// A desk, 74 cm high, is lower than the screen, whose lower edge is at 80; nobody sees over who works at it (common practice, no
/// source). A cabinet so high hides nothing.
#[test]
fn nobody_sees_a_screen_over_who_sits_at_a_desk_under_it() {
    let broken = |under: &str| {
        let text = format!(
            "units: cm\nwalls:\n  - {{ name: north, length: 500 }}\n  - {{ name: east, length: 450, holds: \
             [{{ kind: door, at: 330, width: 83, hinge: right, swings: out, leads_to: entrance }}] }}\n  \
             - {{ name: south, length: 500 }}\n  - {{ name: west, length: 450 }}\npieces:\n  \
             - {{ kind: sofa, width: 200, depth: 90, place: {{ wall: north, from: 150, off: 5 }} }}\n  \
             - {{ kind: wall-screen, screen: 50 in, centre: 112, place: {{ wall: south, from: 195, off: 0 }} }}\n  \
             - {{ kind: {under}, width: 120, depth: 60, height: 74, place: {{ wall: south, from: 190, off: 5 }} }}\n"
        );
        let brief = brief_of(&text);
        let room = judge(&brief, &Placement::of(&brief).unwrap()).unwrap();
        room.broken.iter().any(|breach| breach.rule == Clearance::ScreenSight.into())
    };
    assert!(broken("desk"));
    assert!(!broken("cabinet"));
}

/// The lower edge of a screen of 43 in whose middle is at 130 cm hangs at 103: over a fire of 90 cm at the wall itself, and on the
/// breast, 40 cm before it, where that is 120 cm high.
#[test]
fn a_screen_hangs_at_the_wall_over_a_low_fire_and_on_the_breast_of_a_high_one() {
    let off = |height: u32| {
        let free = "keep_free: [wall-screen]";
        let text = format!(
            "units: cm\nwalls:\n  - {{ name: north, length: 400, holds: \
             [{{ kind: fireplace, at: 90, width: 220, depth: 40, height: {height} }}] }}\n  - {{ name: east, length: 450, {free}, holds: \
             [{{ kind: door, at: 330, width: 83, hinge: right, swings: out, leads_to: entrance }}] }}\n  \
             - {{ name: south, length: 400, {free} }}\n  - {{ name: west, length: 450, {free} }}\npieces:\n  \
             - {{ kind: sofa, width: 180..220, depth: 90 }}\n  - {{ kind: wall-screen, screen: 43 in, centre: 130 }}\n"
        );
        let answer = ranked_briefly(&text);
        let screen = screen_of(&answer.options[0], &answer.brief).expect("the screen hangs");
        let wall = answer.brief.room.wall(WallId(0)).unwrap();
        (screen.back_middle() - wall.start).dot(wall.inward())
    };
    for (height, expected) in [(90, 0.0), (120, 400.0)] {
        assert!((off(height) - expected).abs() < 30.0, "{height}: {}", off(height));
    }
}
