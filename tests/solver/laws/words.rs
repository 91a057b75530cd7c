//! Units and text: inches stay inches, and no name carries a control code through.

use elbowroom_model::scenario;
use proptest::prelude::proptest;

use super::drawn::rooms;
use super::few;
use super::told::{Apart, Image, WITHIN_PROOF, assert_alike, sizes};
use crate::support::plan::text::Tongue;
use crate::support::plan::{Plan, PlanPiece, What};
use crate::support::ranked::ranked_briefly;

/// A parlour in whole inches.
fn parlour(width: u32, depth: u32, door: u32) -> Plan {
    let mut plan = Plan::rectangle(f64::from(width), f64::from(depth))
        .hold(2, "hall door", f64::from(door), 32.0, What::Door { hinge: None, leads_to: "entrance" })
        .piece(PlanPiece::of("sofa").range("width", 60.0, 96.0).range("depth", 32.0, 40.0))
        .piece(PlanPiece::of("coffee-table").range("width", 30.0, 50.0).range("depth", 16.0, 30.0))
        .piece(PlanPiece::of("media-unit").range("width", 48.0, 80.0).range("depth", 14.0, 22.0))
        .clear("seat_to_table", 16.0);
    plan.measured_within = 0.25;
    plan
}

/// No control character but the line end.
fn is_plain(text: &str) -> bool {
    !text.chars().any(|letter| letter.is_control() && letter != '\n')
}

proptest! {
    #![proptest_config(few(4))]

    /// A room told in inches and the same room told in the millimetres they are: the same sizes, with no drift.
    #[test]
    fn inches_are_exact(width in 130_u32..220, depth in 120_u32..180, door in 4_u32..60) {
        let plan = parlour(width, depth, door);
        let text = plan.text_in(Tongue::Inches);
        let (inches, mm) = (ranked_briefly(&text), ranked_briefly(&plan.text_in(Tongue::InchesAsMillimetres)));
        assert_alike(&inches, Image::Same, &mm, Apart { size: 1e-6, score: 1e-6, ..WITHIN_PROOF }, &text);
    }

    /// Names with control codes in them are refused, or come out without.
    #[test]
    fn no_control_code_gets_through(plan in rooms(), code in proptest::sample::select(vec![0_u8, 7, 8, 27, 127, 155])) {
        let escape = format!("\"hall \\x{code:02x}[31mdoor\"");
        let text = plan.text().replace("hall door", &escape).replace("wall a", &format!("\"wall \\x{code:02x} a\""));
        match scenario::read(&text, None) {
            Err(faults) => {
                for fault in faults {
                    let words = format!("{} {} {:?}", fault.message, fault.remedy, fault.item.as_deref().map(is_plain));
                    assert!(is_plain(&words) && fault.item.as_deref().is_none_or(is_plain), "{fault:?}");
                }
            }
            Ok(brief) => {
                let room = &brief.room;
                let names = room.walls.iter().map(|wall| &wall.name).chain(room.items.iter().map(|item| &item.name));
                assert!(names.chain([&room.name]).all(|name| is_plain(name)), "{text}");
            }
        }
    }
}

/// Fixed sizes in inches come back as the very inches.
#[test]
fn a_fixed_size_in_inches_comes_back_exact() {
    let plan = Plan::rectangle(200.0, 160.0).piece(PlanPiece::of("sofa").fixed(84.0, 37.0));
    let answer = ranked_briefly(&plan.text_in(Tongue::Inches));
    assert!(!answer.options.is_empty());
    for option in &answer.options {
        let sizes: Vec<f64> = sizes(&answer, option).into_values().collect();
        assert_eq!(sizes, [37.0 * 25.4, 84.0 * 25.4], "{}", option.key);
    }
}
