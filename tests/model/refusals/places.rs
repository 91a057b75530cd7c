//! What is wrong with an aim, or with where a piece stands.

use super::{Case, case};
use crate::plain_room::changed;

/// What is wrong with an aim, or with a place.
pub(super) fn cases() -> Vec<Case> {
    let sofa = |keys: &str| changed(&[("kind: sofa, width: 180..240", &format!("kind: sofa, {keys}"))]);
    let at = |place: &str| sofa(&format!("width: 200, depth: 90, place: {{ {place} }}"));
    let told = |code: &'static str| (code, 17, Some("sofa"));
    vec![
        case(
            sofa("width: 180..240, aim: { width: 250 }"),
            told("aim_out_of_range"),
            &["sofa", "250 cm", "10 cm over its most", "240 cm"],
            "between 180 cm and 240 cm",
        ),
        case(
            sofa("width: 180..240, aim: { width: 170 }"),
            told("aim_out_of_range"),
            &["sofa", "10 cm under its least"],
            "widen its `width`",
        ),
        case(
            sofa("width: 200, aim: { width: 210 }"),
            told("aim_beside_fixed_size"),
            &["sofa", "210 cm", "fixed at 200 cm"],
            "as a range",
        ),
        case(
            changed(&[("kind: coffee-table", "kind: rug, aim: { width: 300 }")]),
            ("aim_beside_fixed_size", 18, Some("rug")),
            &["rug", "4 sizes"],
            "range of its own",
        ),
        case(
            sofa("width: 180..240, aim: { return: 200 }"),
            told("key_of_another_kind"),
            &["sofa", "return"],
            "Leave `return` out",
        ),
        case(sofa("aim: bigest"), told("unknown_name"), &["bigest", "sofa"], "`largest`"),
        // The stair wall is 372 cm long: 200 + 200 cm from its left end run 28 cm past its right end.
        case(
            at("wall: stair wall, from: 200"),
            told("place_outside_room"),
            &["sofa", "28 cm past", "party wall"],
            "left end of its wall",
        ),
        // The room reaches down to y = -372 cm: a back at -300 cm and a depth of 90 cm reach to -390 cm.
        case(
            at("at: [200, -300], facing: 270"),
            told("place_outside_room"),
            &["sofa", "18 cm past party wall"],
            "middle of its back",
        ),
        // Corners 12 cm past the stair wall, 18 cm past the party wall and 21.63 cm past where they meet: the farthest is told.
        case(
            at("at: [398, -300], facing: 270"),
            told("place_outside_room"),
            &["sofa", "21.63 cm past stair wall"],
            "middle of its back",
        ),
        case(at("wall: star wall, from: 20"), told("unknown_wall"), &["sofa", "star wall"], "stair wall"),
        case(at("wall: stair wall"), told("missing_key"), &["sofa", "`from`"], "nearer end"),
        case(at("at: [200, -100]"), told("missing_key"), &["sofa", "`facing`"], "degrees"),
        case(
            at("wall: stair wall, from: 20, facing: 90"),
            told("place_mixed"),
            &["sofa", "by a wall and by coordinates"],
            "`at` and `facing`",
        ),
        case(
            at("at: [200, -100], facing: 400"),
            told("facing_out_of_range"),
            &["sofa", "400 degrees", "360"],
            "counter-clockwise",
        ),
        case(
            changed(&[("kind: coffee-table", "kind: floor-lamp, group: reading")]),
            ("group_without_seat", 18, Some("reading")),
            &["`reading`", "no seat"],
            "armchair",
        ),
        case(
            changed(&[("kind: coffee-table", "kind: floor-lamp, at: soffa")]),
            ("unknown_seat", 18, Some("floor lamp")),
            &["floor lamp", "soffa"],
            "`sofa`",
        ),
        case(
            changed(&[("kind: coffee-table", "kind: wall-screen, screen: 55 in, centre: 30")]),
            ("hangs_off_its_wall", 18, Some("wall screen")),
            &["wall screen", "4.24 cm", "the floor"],
            "`centre`",
        ),
        case(sofa("hold: true"), told("hold_without_place"), &["sofa", "held"], "`place`"),
        case(
            changed(&[("kind: coffee-table", "kind: armchair, count: 2, place: { wall: stair wall, from: 150 }")]),
            ("place_of_several", 18, Some("armchair 1")),
            &["2 pieces"],
            "row of its own",
        ),
        case(
            changed(&[("kind: coffee-table", "kind: corner-sofa, place: { wall: stair wall, from: 110 }")]),
            ("missing_key", 18, Some("corner sofa")),
            &["corner sofa", "which side"],
            "`hand`",
        ),
    ]
}
