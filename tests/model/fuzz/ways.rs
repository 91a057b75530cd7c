//! Ways in with something wrong somewhere: read whole, or refused with every fault in its place.

use elbowroom_model::way_in::{WayFile, read};

use super::mutation::{Draw, fuzz};
use super::told::faults_hold;

/// The way as it was read, each of its points sound; `None` where it is refused in words.
pub(crate) fn read_whole(bytes: &[u8]) -> Option<WayFile> {
    let text = &*String::from_utf8_lossy(bytes);
    match read(text, None) {
        Ok(file) => {
            assert!(!file.way.points.is_empty(), "a way that passes nothing");
            for point in &file.way.points {
                let kind = point.kind;
                assert!(kind.narrowest() > 0.0 && kind.narrowest().is_finite(), "{point:?}");
                assert!(kind.lowest().is_none_or(|lowest| lowest > 0.0), "{point:?}");
            }
            let mut names: Vec<&str> = file.way.points.iter().map(|point| point.name.as_str()).collect();
            names.sort_unstable();
            names.dedup();
            assert_eq!(names.len(), file.way.points.len(), "two of one name");
            assert_eq!(read(text, None).as_ref(), Ok(&file), "reads otherwise");
            Some(file)
        }
        Err(faults) => {
            faults_hold(&faults, text);
            None
        }
    }
}

/// The way is read whole or refused.
pub(crate) fn check(bytes: &[u8], _: &mut Draw) {
    read_whole(bytes);
}

#[test]
fn ways_with_something_wrong_are_read_or_refused() {
    fuzz("ways", 1_000, check);
}
