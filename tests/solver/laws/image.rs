//! A room has no left or right and no north of its own: its images have the images of its options.

use elbowroom_model::PieceId;
use proptest::prelude::proptest;

use super::drawn::rooms;
use super::few;
use super::told::{Image, WITHIN_PROOF, assert_image};
use crate::support::plan::{Plan, PlanPiece, Side, What};
use crate::support::ranked::ranked_briefly;

/// A room with a chair and its lamp apart from the sofa, and a step between the two.
fn in_two_groups() -> Plan {
    let window = What::Window { sill: 900.0, head: 2100.0, view: "plain", must_reach: false };
    let mut plan = Plan::rectangle(5400.0, 3800.0)
        .hold(0, "bay", 3900.0, 1000.0, window)
        .hold(2, "hall door", 3300.0, 830.0, What::Door { hinge: Some(Side::Left), leads_to: "entrance" })
        .piece(PlanPiece::of("sofa").fixed(2000.0, 900.0))
        .piece(PlanPiece::of("media-unit").fixed(1400.0, 450.0))
        .piece(PlanPiece::of("armchair").fixed(800.0, 850.0).also("name", "reading chair").also("group", "reading"))
        .piece(PlanPiece::of("floor-lamp").fixed(350.0, 350.0).also("group", "reading"));
    plan.fixed.push(("step".to_owned(), vec![(3500.0, 0.0), (3500.0, -3800.0)]));
    plan.measured_within = 5.0;
    plan
}

/// What stands apart is no option of its own, and yet the image of a room has the image of its options.
#[test]
fn a_room_in_two_groups_on_two_levels_has_its_images() {
    let plan = in_two_groups();
    let text = plan.text();
    let one = ranked_briefly(&text);
    assert!(!one.options.is_empty(), "{:?}", one.refused);
    assert_image(&plan, Image::Mirrored, WITHIN_PROOF);
    assert_image(&plan, Image::Turned(37.0), WITHIN_PROOF);
}

/// A tight parlour with a corner sofa and a post.
fn tight() -> Plan {
    let liked = What::Window { sill: 900.0, head: 2100.0, view: "liked", must_reach: false };
    let mut plan = Plan::rectangle(3400.0, 3160.0)
        .hold(0, "window", 550.0, 1400.0, liked)
        .hold(1, "kitchen opening", 1130.0, 900.0, What::Opening { leads_to: "kitchen", stance: "away" })
        .hold(3, "hall door", 1750.0, 820.0, What::Door { hinge: Some(Side::Left), leads_to: "entrance" })
        .piece(PlanPiece::of("corner-sofa"))
        .piece(PlanPiece::of("media-unit"));
    plan.fixed.push(("post".to_owned(), vec![(800.0, -880.0), (1000.0, -880.0), (1000.0, -680.0), (800.0, -680.0)]));
    plan.profile = "snug";
    plan.measured_within = 5.0;
    plan
}

/// Corners told to a tenth of a millimetre are not quite square: what stands for the same room has the same options, for no
/// more than twice the work.
#[test]
fn a_turned_room_told_to_a_tenth_is_the_room_that_it_stands_for() {
    let square = ranked_briefly(&tight().text());
    assert!(square.options.len() > 10);
    for degrees in [33.0, 77.7, 120.5, 204.5] {
        let mut plan = tight().turned(degrees);
        let to_a_tenth = |(x, y): (f64, f64)| ((x * 10.0).round() / 10.0, (y * 10.0).round() / 10.0);
        plan.walls.iter_mut().for_each(|wall| wall.start = to_a_tenth(wall.start));
        let turned = ranked_briefly(&plan.text());
        assert_eq!(turned.options.len(), square.options.len(), "{degrees}: {:?}", turned.refused);
        assert!(
            turned.work.programs <= 2 * square.work.programs,
            "{degrees}: {} programs, {}",
            turned.work.programs,
            square.work.programs
        );
    }
}

/// A sofa free in a hooked room, the only way to the chair past the table: one steps by it where it stands close to the chair.
const PAST_THE_TABLE: &str = "units: mm
measured_within: 5
walls:
  - { name: wall f, start: [0, 0] }
  - name: wall e
    start: [0, -2550]
    holds:
      - { kind: door, name: hall door, at: 750, width: 820, hinge: left, swings: in, leads_to: entrance }
  - { name: wall d, start: [-1900, -2550] }
  - { name: wall c, start: [-1900, -3930] }
  - { name: wall b, start: [-5950, -3930] }
  - { name: wall a, start: [-5950, 0] }
fixed:
  - { kind: pillar, name: post, corners: [[-1720, -1260], [-1920, -1260], [-1920, -1460], [-1720, -1460]] }
  - { kind: step, name: kerb, line: [[-4120, -2460], [-1120, -2460]] }
pieces:
  - { kind: sofa, name: sofa }
  - { kind: armchair, name: armchair }
  - { kind: coffee-table, name: coffee table }
clearances: { profile: easy }
";

/// Drawn at random: a table drawn up to the chair opens the way to it with no gap of the chain wider, which the largest of one
/// image knew and that of the other, told as proven, did not.
#[test]
fn a_table_that_comes_close_to_a_chair_opens_the_way_to_it() {
    let answer = ranked_briefly(PAST_THE_TABLE);
    let option = answer.options.iter().find(|option| option.key == "free-wall-a/armchair-left");
    let option = option.unwrap_or_else(|| panic!("{:?}", answer.refused));
    let widths = [0, 1, 2].map(|piece| option.largest.layout.of(PieceId(piece)).map(|placed| placed.size.width));
    assert_eq!(widths, [Some(2972.0), Some(1016.0), Some(1500.0)], "as in the other image: {:?}", option.largest);
}

proptest! {
    #![proptest_config(few(4))]

    /// The mirrored room has every option mirrored, hands and sides swapped.
    #[test]
    fn a_mirrored_room_mirrors_its_options(plan in rooms()) {
        assert_image(&plan, Image::Mirrored, WITHIN_PROOF);
    }

    /// Turning the whole plan by any angle changes no size by more than the proof leaves open.
    #[test]
    fn a_turned_room_keeps_its_sizes(plan in rooms(), degrees in 1.0_f64..359.0) {
        assert_image(&plan, Image::Turned(degrees), WITHIN_PROOF);
    }
}
