//! The page of a result made by hand: what a real run cannot be made to say is held here.

use elbowroom_model::rules::ClearanceFigure;
use elbowroom_model::{
    Brief, Clearance, Criterion, Dimension, Door, Hinge, ItemKind, LeadsTo, Opening, Piece, PieceKind, Point, Room,
    Rule, Rules, SizeRange, Stance, Survey, Swings, Unit, View, Wall, WallId, WallItem, Window, Wishes,
};
use elbowroom_solver::outcome::{
    ChoicesFound, CriterionFound, DimensionFound, FORMAT, GapFound, HeldBy, OptionFound, PieceFound, PinchFound,
    RangeFound, Refused, Remedy, RoomFound, RouteFound, RulesInForce, TurnsIf, Work,
};
use elbowroom_solver::{Outcome, Size};

use super::{Told, text};
use crate::text::look::Look;

fn wall(name: &str, start: (f64, f64), end: (f64, f64)) -> Wall {
    Wall { name: name.into(), start: Point::new(start.0, start.1), end: Point::new(end.0, end.1) }
}

fn piece(name: &str, kind: PieceKind, weight: f64, alike: Option<usize>) -> Piece {
    let range = SizeRange { least: 600.0, usual: 900.0, most: 1200.0 };
    Piece {
        name: name.into(),
        kind,
        width: range,
        depth: range,
        return_length: (kind == PieceKind::CornerSofa).then_some(range),
        steps: vec![],
        square: false,
        height: 850.0,
        screen: None,
        hands: vec![],
        chaise: false,
        off_wall: 50.0,
        needed: true,
        passing: false,
        seats: None,
        alike,
        weight,
    }
}

fn brief() -> Brief {
    let item = |name: &str, wall, at, width, kind| WallItem { name: name.into(), wall: WallId(wall), at, width, kind };
    let window = Window { sill: 450.0, head: 2300.0, view: View::Liked, opens: true, must_reach: false };
    let door = Door { hinge: Some(Hinge::Left), swings: Swings::In, leads_to: LeadsTo::Entrance };
    Brief {
        room: Room {
            name: "Canal-side flat, front room".into(),
            walls: vec![
                wall("canal wall", (0.0, 0.0), (4860.0, 0.0)),
                wall("stair wall", (4860.0, 0.0), (4860.0, -3720.0)),
                wall("party wall", (4860.0, -3720.0), (0.0, -3720.0)),
                wall("dining side", (0.0, -3720.0), (0.0, 0.0)),
            ],
            items: vec![
                item("bay", 0, 820.0, 2200.0, ItemKind::Window(window)),
                item("hall door", 1, 200.0, 830.0, ItemKind::Door(door)),
                item(
                    "dining opening",
                    3,
                    600.0,
                    2000.0,
                    ItemKind::Opening(Opening { leads_to: LeadsTo::Space("dining".into()), stance: Stance::Open }),
                ),
            ],
            fixed: vec![],
            ceiling: Some(2550.0),
            latitude: None,
            bearing: None,
            measured_within: 10.0,
            survey: Survey::default(),
        },
        pieces: vec![
            piece("corner sofa", PieceKind::CornerSofa, 3.0, None),
            piece("media unit", PieceKind::MediaUnit, 1.5, None),
            piece("coffee table", PieceKind::CoffeeTable, 1.0, None),
            piece("armchair 1", PieceKind::Armchair, 1.5, Some(3)),
            piece("armchair 2", PieceKind::Armchair, 1.5, Some(3)),
            piece("books", PieceKind::Bookcase, 0.75, None),
        ],
        rules: Rules::new("easy", |_| ClearanceFigure::default()),
        wishes: Wishes::default().with(Criterion::View, 5.0),
        notices: vec![],
        only: vec![],
        units: Unit::Centimetre,
        way: None,
    }
}

fn of(least: f64, together: f64, alone: f64, most: f64) -> DimensionFound {
    DimensionFound { least, together, alone: Some(alone), most }
}

fn stands(
    name: &str,
    kind: PieceKind,
    at_wall: Option<&str>,
    parts: &[(f64, f64, f64, f64)],
    facing: f64,
    range: RangeFound,
    held: &[(Dimension, &str, Rule)],
) -> PieceFound {
    let block = |&(x, y, w, d): &(f64, f64, f64, f64)| {
        vec![Point::new(x, y), Point::new(x + w, y), Point::new(x + w, y + d), Point::new(x, y + d)]
    };
    PieceFound {
        name: name.into(),
        kind,
        at_wall: at_wall.map(Into::into),
        parts: parts.iter().map(block).collect(),
        facing,
        height: 850.0,
        size: Size {
            width: range.width.together,
            return_length: range.return_length.map(|it| it.together),
            depth: range.depth.together,
        },
        range,
        held_by: held.iter().map(|&(dimension, by, rule)| HeldBy { dimension, by: by.into(), rule }).collect(),
    }
}

fn criterion(name: Criterion, score: f64, weight: f64, reason: &str) -> CriterionFound {
    CriterionFound { name, score, weight, figure: 1.0, unit: "mm", reason: reason.into(), basis: "ours".into() }
}

fn best() -> OptionFound {
    use Dimension::{Depth, Return, Width};
    let sofa = RangeFound {
        width: of(1900.0, 2358.0, 2484.0, 2800.0),
        return_length: Some(of(1500.0, 2004.0, 2300.0, 2300.0)),
        depth: of(900.0, 980.0, 980.0, 1050.0),
    };
    let plain = |width, depth| RangeFound { width, return_length: None, depth };
    let chair = plain(of(700.0, 816.0, 900.0, 1016.0), of(700.0, 903.0, 950.0, 1016.0));
    OptionFound {
        rank: 1,
        key: "canal-wall/left/party-wall".into(),
        title: "Back to the canal wall, return on the left, screen on the party wall".into(),
        choices: ChoicesFound {
            seat_back: Some("canal wall".into()),
            facing: 270.0,
            hand: Some("left".into()),
            media_wall: Some("party wall".into()),
            second_seats: vec![],
        },
        score: 78.2,
        first_place_share: 0.64,
        dominated_by: None,
        never_first: false,
        by_size: 1,
        turns_if: Some(TurnsIf {
            criterion: Criterion::Entrance,
            weight: 4.3,
            then_first: "stair-wall/left/dining-side".into(),
        }),
        criteria: vec![
            criterion(
                Criterion::View,
                34.0,
                5.0,
                "The liked window lies behind the seat: it fills 0 degrees from the middle seat.",
            ),
            criterion(
                Criterion::Entrance,
                71.0,
                3.0,
                "The seats look 62 degrees off the way to the hall door; 3 of 4 places see it.",
            ),
            criterion(Criterion::Openness, 92.0, 4.0, "91 % of the dining opening is seen over the seats."),
            criterion(
                Criterion::Ways,
                88.0,
                3.0,
                "The narrowest way, hall door to dining opening, is 94.2 cm wide where 91.4 cm are asked for.",
            ),
            criterion(Criterion::Seats, 81.0, 3.0, "Five seat places; the sofa is 2.36 m of the 2.3 m usual."),
        ],
        pieces: vec![
            stands(
                "media unit",
                PieceKind::MediaUnit,
                Some("party wall"),
                &[(1500.0, -3670.0, 1800.0, 450.0)],
                90.0,
                plain(of(1250.0, 1800.0, 2400.0, 2400.0), of(350.0, 450.0, 610.0, 610.0)),
                &[
                    (Width, "dining landing", Clearance::DoorLanding.into()),
                    (Depth, "screen to seat, 152.4 cm", Clearance::ScreenToSeat.into()),
                ],
            ),
            stands(
                "corner sofa",
                PieceKind::CornerSofa,
                Some("canal wall"),
                &[(2400.0, -1040.0, 2358.0, 980.0), (3778.0, -2064.0, 980.0, 1024.0)],
                270.0,
                sofa,
                &[
                    (Width, "hall door swing", Rule::DoorSwing),
                    (Return, "hall door swing", Rule::DoorSwing),
                    (Depth, "way from hall door to dining opening", Clearance::Walkway.into()),
                ],
            ),
            stands(
                "coffee table",
                PieceKind::CoffeeTable,
                None,
                &[(2600.0, -2000.0, 900.0, 530.0)],
                270.0,
                plain(of(600.0, 1179.0, 1300.0, 1500.0), of(400.0, 534.0, 700.0, 900.0)),
                &[
                    (Width, "corner sofa", Clearance::SeatToTable.into()),
                    (Depth, "64 cm to walk past the media unit", Clearance::Passage.into()),
                ],
            ),
            stands(
                "armchair 1",
                PieceKind::Armchair,
                Some("dining side"),
                &[(60.0, -3600.0, 903.0, 816.0)],
                0.0,
                chair,
                &[
                    (Width, "dining opening", Clearance::Walkway.into()),
                    (Depth, "coffee table", Clearance::Passage.into()),
                ],
            ),
            stands(
                "armchair 2",
                PieceKind::Armchair,
                Some("dining side"),
                &[(60.0, -900.0, 903.0, 816.0)],
                0.0,
                chair,
                &[
                    (Width, "dining opening", Clearance::Walkway.into()),
                    (Depth, "coffee table", Clearance::Passage.into()),
                ],
            ),
        ],
        left_out: vec![elbowroom_solver::outcome::LeftOut {
            name: "books".into(),
            why: "no wall has 80 cm left beside the doors".into(),
        }],
        gaps: vec![
            GapFound {
                between: ["corner sofa".into(), "coffee table".into()],
                clear: 430.0,
                needs: 430.0,
                rule: Clearance::SeatToTable,
            },
            GapFound {
                between: ["corner sofa".into(), "media unit".into()],
                clear: 1812.0,
                needs: 1524.0,
                rule: Clearance::ScreenToSeat,
            },
        ],
        routes: vec![
            RouteFound {
                from: "hall door".into(),
                to: "dining opening".into(),
                width: 942.0,
                needs: 914.4,
                pinch: Some(PinchFound {
                    between: ["coffee table".into(), "media unit".into()],
                    at: [Point::new(0.0, 0.0); 2],
                }),
                length: Some(5310.0),
            },
            RouteFound {
                from: "hall door".into(),
                to: "corner sofa".into(),
                width: 640.0,
                needs: 609.6,
                pinch: None,
                length: None,
            },
        ],
        turning_circle: None,
        size_value: 5012.0,
        objective: 5011.6,
        bound: 5011.6,
        proven: true,
    }
}

fn second() -> OptionFound {
    let mut option = best();
    option.rank = 2;
    option.key = "stair-wall/left/dining-side".into();
    option.title = "Back to the stair wall, return on the left, screen on the dining side".into();
    option.score = 74.4;
    option.first_place_share = 0.36;
    option.turns_if = None;
    (option.bound, option.proven) = (5300.0, false);
    for (criterion, score) in option.criteria.iter_mut().zip([88.0, 52.0, 60.0, 71.0, 80.0]) {
        criterion.score = score;
    }
    option
}

fn outcome(options: Vec<OptionFound>) -> Outcome {
    let brief = brief();
    let refused =
        |key: &str, why: &str, rule: Rule, short_by| Refused { key: key.into(), why: why.into(), rule, short_by };
    Outcome {
        format: FORMAT,
        room: RoomFound { name: brief.room.name.clone(), outline: brief.room.outline(), area: 18.08, misclosure: None },
        rules: RulesInForce {
            profile: "easy".into(),
            figures: Clearance::ALL.iter().map(|&rule| (rule, Some(1.0))).collect(),
        },
        options,
        refused: vec![
            refused(
                "party-wall/right/canal-wall",
                "The way from the hall door to the dining opening is 11 cm too narrow.",
                Clearance::Passage.into(),
                Some(110.0),
            ),
            refused(
                "dining-side/left/stair-wall",
                "The dining side has 112 cm beside its opening, and the corner sofa needs 190 cm.",
                Rule::Room,
                Some(780.0),
            ),
            refused(
                "dining-side/right/stair-wall",
                "The dining side has 112 cm beside its opening, and the corner sofa needs 190 cm.",
                Rule::Room,
                Some(780.0),
            ),
        ],
        remedies: vec![],
        notices: vec!["Keep exits and escape windows free: what is required is local.".into()],
        work: Work { arrangements: 5, programs: 132, seconds: 0.031, ..Work::default() },
    }
}

fn page(outcome: &Outcome, width: usize) -> String {
    text(&Told { brief: &brief(), outcome, shown: 6, by: None, sketch: false }, Look { width, colour: false })
}

#[test]
fn two_options() {
    insta::assert_snapshot!(page(&outcome(vec![best(), second()]), 100));
}

#[test]
fn two_options_in_eighty_columns() {
    insta::assert_snapshot!(page(&outcome(vec![best(), second()]), 80));
}

#[test]
fn nothing_fits() {
    let mut outcome = outcome(vec![]);
    outcome.remedies =
        vec![Remedy { sentence: "A sofa no deeper than 86 cm makes 2 options possible.".into(), changes: vec![] }];
    insta::assert_snapshot!(page(&outcome, 100));
}

#[test]
fn names_never_reach_the_terminal_as_control_codes() {
    let mut option = best();
    option.title = "Back to the \x1b]0;x\x07wall\u{9b}2J".into();
    option.pieces[0].name = "media\x1b[31m unit".into();
    option.criteria[2].reason = "\u{202e}seen".into();
    let mut outcome = outcome(vec![option, second()]);
    outcome.notices.push("a\rb\x08".into());
    let page = page(&outcome, 80);
    assert!(page.chars().all(|character| character == '\n' || !crate::text::safe::is_obeyed(character)), "{page:?}");
}
