//! Lines of rooms with something wrong somewhere: each gives a room or its fault.

use std::path::Path;

use elbowroom_model::scenario;
use elbowroom_solver::Limits;
use serde_json::json;

use super::mutation::Draw;
use crate::batch::content::Terms;
use crate::batch::given::Given;
use crate::batch::record::{record, told_under, untold};
use crate::batch::rooms::rooms;
use crate::render::batch::room_line::RoomLine;

/// The rooms of a stream.
fn given(mut bytes: &[u8]) -> Vec<Given> {
    rooms(Path::new("-"), &mut bytes).unwrap().given.collect()
}

/// Lines in which something stands, be it no text.
fn lines(bytes: &[u8]) -> usize {
    let says = |line: &&[u8]| match std::str::from_utf8(line) {
        Ok(line) => !line.strip_prefix('\u{feff}').unwrap_or(line).trim().is_empty(),
        Err(_) => true,
    };
    bytes.split(|byte| *byte == b'\n').filter(says).count()
}

/// The line of a room that was read, read back.
fn reads_back(one: &Given) {
    if let Ok(text) = &one.text {
        let again = given(json!({ "source": one.source, "scenario": text }).to_string().as_bytes());
        assert_eq!(again.as_slice(), std::slice::from_ref(one), "reads otherwise");
    }
}

/// Each line in which something stands gives a room or its fault.
///
/// # Panics
/// Where one does not.
pub(super) fn check(bytes: &[u8], _: &mut Draw) {
    let terms = Terms::new(Limits { shown: 1, ..Limits::default() }, None, None);
    let rooms = given(bytes);
    assert_eq!(rooms.len(), lines(bytes), "rooms are lost");
    for one in &rooms {
        reads_back(one);
        let faults = one.text.as_ref().map(|text| (scenario::read(text, None).err().unwrap_or_default(), text));
        if let Ok((faults, text)) = &faults {
            let last = text.split(['\n', '\r']).count();
            let within = |line: usize| (1..=last).contains(&line);
            assert!(
                faults.iter().all(|it| it.place.is_none_or(|place| within(place.line))),
                "lines are off: {faults:?}"
            );
            if faults.is_empty() {
                continue;
            }
        }
        let record = record(one.scenario(), &terms, None).unwrap();
        let whole = told_under(one.source.as_deref(), &record.line).unwrap();
        assert!(!whole.contains(char::is_control), "{whole:?}");
        let (content, line) = untold(&whole).unwrap();
        assert_eq!((content, format!("{{{line}")), (record.content, record.line), "reads otherwise");
        let told = RoomLine::of(&whole).unwrap();
        assert!(told.source == one.source && !told.faults.is_empty() && told.result.is_none());
    }
}

#[test]
fn lines_with_something_wrong_each_give_a_room_or_its_fault() {
    super::mutation::fuzz("lines", 4_000, check);
}
