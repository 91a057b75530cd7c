//! Scenarios with something wrong somewhere: read to a sound brief, or refused with every fault in its place.

use elbowroom_model::filed::{Change, Filed};
use elbowroom_model::scenario;
use serde_json::Value;

use super::mutation::{Draw, fuzz};
use super::told::{brief_holds, faults_hold};

/// The file reads the same each time, whatever ends its lines, and the text can be changed where it has a place.
pub(crate) fn check(bytes: &[u8], draw: &mut Draw) {
    let text = &*String::from_utf8_lossy(bytes);
    match scenario::read(text, None) {
        Ok(brief) => {
            brief_holds(&brief);
            assert_eq!(scenario::read(text, None).as_ref(), Ok(&brief), "reads otherwise");
            // P: YAML 1.2, 5.4: a reader takes each of these for the same end of a line.
            if !text.contains('\r') {
                let again = scenario::read(&text.replace('\n', "\r\n"), None);
                assert_eq!(again.as_ref(), Ok(&brief), "reads otherwise with other ends of lines");
            }
        }
        Err(faults) => faults_hold(&faults, text),
    }
    if let Ok(filed) = Filed::read(text) {
        let at = filed.path_at(draw.from(0, text.len() as u64) as usize);
        let change = match draw.from(0, 2) {
            0 => Change::Set { at, to: Value::from(draw.from(0, 400)) },
            1 => Change::Remove { at },
            _ => Change::Add { at, row: serde_json::json!({ "kind": "pouf" }), before: draw.one_in(2).then_some(0) },
        };
        // What it says of its own accord is held to by `changed` itself: the values and that one change.
        if let Ok(changed) = filed.changed(&change) {
            assert!(Filed::read(&changed).is_ok(), "no more read: {changed}");
        }
    }
}

#[test]
fn scenarios_with_something_wrong_are_read_or_refused() {
    fuzz("scenarios", 1_500, check);
}
