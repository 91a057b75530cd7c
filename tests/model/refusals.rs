//! Every fault: its code, its line, the item in the room's own words, the figure, and a remedy.

mod figures;
mod names;
mod places;
mod stand_ins;
mod text;
mod walls;

use std::collections::BTreeSet;

use crate::plain_room::{changed, faults};

/// A text with one fault, and what is told of it.
struct Case {
    text: String,
    code: &'static str,
    line: usize,
    item: Option<&'static str>,
    /// Words of the message: the item and the figure.
    says: &'static [&'static str],
    /// A word of the remedy.
    remedy: &'static str,
}

fn case(
    text: String,
    (code, line, item): (&'static str, usize, Option<&'static str>),
    says: &'static [&'static str],
    remedy: &'static str,
) -> Case {
    Case { text, code, line, item, says, remedy }
}

fn cases() -> Vec<Case> {
    let families = [
        text::cases(),
        figures::cases(),
        walls::cases(),
        figures::cases_of_corner_sofas(),
        figures::cases_of_pairs(),
        names::cases(),
        places::cases(),
        stand_ins::cases(),
    ];
    families.into_iter().flatten().collect()
}

#[test]
fn each_fault_says_what_where_how_much_and_what_to_do() {
    let wrong: Vec<String> = cases().iter().filter_map(|case| case.wrong()).collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n\n"));
}

impl Case {
    /// What is told otherwise than the case says.
    fn wrong(&self) -> Option<String> {
        let told = faults(&self.text);
        let [fault] = told.as_slice() else {
            return Some(format!("{}: one fault alone, not {told:#?}", self.code));
        };
        let line = fault.place.map_or(0, |place| place.line);
        let sound = (fault.code, line, fault.item.as_deref()) == (self.code, self.line, self.item)
            && self.says.iter().all(|word| fault.message.contains(word))
            && fault.remedy.contains(self.remedy);
        (!sound).then(|| {
            let wanted = (self.code, self.line, self.item, self.says, self.remedy);
            format!("wanted {wanted:?}\ntold {fault:?}")
        })
    }
}

#[test]
fn every_code_that_a_scenario_can_have_is_shown_above() {
    // Of a table alone; what serde alone can find; what no file of real numbers reaches; of what is asked beside the file.
    let beside = ["not_a_setting", "unknown_setting", "not_a_choice", "unknown_choice"];
    let elsewhere = ["weight_out_of_range", "not_understood", "no_outline_fits"].into_iter().chain(beside);
    let shown: BTreeSet<&str> = cases().iter().map(|case| case.code).chain(elsewhere).collect();
    let listed: BTreeSet<&str> = elbowroom_model::Fault::CODES.iter().copied().collect();
    assert_eq!(shown, listed);
}

#[test]
fn all_faults_of_a_file_are_told_at_once_and_in_its_order() {
    let text = changed(&[
        ("units: cm", "units: cmm"),
        ("at: 82", "at: x"),
        ("hinge: left", "hinge: middle"),
        ("180..240", "240..180"),
        ("kind: coffee-table", "kind: coffee-tabel, with: 3"),
    ]) + "wishes: { view: 7 }\nclearances: { pasage: 60 }\n";
    let told: Vec<(&str, usize)> =
        faults(&text).iter().map(|fault| (fault.code, fault.place.map_or(0, |place| place.line))).collect();
    let expected = [
        ("unknown_unit", 2),
        ("not_a_length", 7),
        ("unknown_name", 11),
        ("range_backward", 17),
        ("unknown_kind", 18),
        ("unknown_key", 18),
        ("wish_out_of_range", 19),
        ("unknown_key", 20),
    ];
    assert_eq!(told, expected);
}
