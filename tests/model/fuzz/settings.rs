//! Settings with something wrong somewhere, a line each before an empty one, put upon the room that stands below it.

use elbowroom_model::{Only, scenario};

use super::mutation::{Draw, fuzz};
use super::told::{brief_holds, faults_hold};

/// More settings than anybody gives.
const MOST: usize = 12;

/// Settings are told where they are taken, and otherwise refused in words; none of them is one that changes nothing.
pub(crate) fn check(bytes: &[u8], _: &mut Draw) {
    let text = String::from_utf8_lossy(bytes);
    let (settings, scenario) = text.split_once("\n\n").unwrap_or((&text, "units: cm\n"));
    let settings: Vec<String> = settings.split('\n').take(MOST).map(str::to_owned).collect();
    let bare = scenario::read(scenario, None);
    assert_eq!(scenario::read_set(scenario, None, &[]), bare, "no setting, and reads otherwise");
    match scenario::read_set(scenario, None, &settings) {
        Ok(brief) => {
            brief_holds(&brief);
            assert!(brief.notices.len() >= settings.len(), "a setting is not told: {settings:?}");
            assert_eq!(scenario::read_set(scenario, None, &settings), Ok(brief), "reads otherwise");
        }
        Err(faults) => faults_hold(&faults, scenario),
    }
    if let Ok(brief) = bare {
        for setting in &settings {
            if let Err(fault) = Only::read(setting, &brief.room, &brief.pieces) {
                faults_hold(&[*fault], scenario);
            }
        }
    }
}

#[test]
fn settings_with_something_wrong_are_taken_or_refused() {
    fuzz("settings", 1_000, check);
}
