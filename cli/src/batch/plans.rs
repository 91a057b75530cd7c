//! The small plans beside the rooms' lines: a picture each, named by the content it was drawn from and by nothing else.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use super::content::Content;
use super::whole::Whole;
use crate::failure::Failure;

/// The folder that holds them.
pub(crate) const FOLDER: &str = "plans";
/// How their names end.
const ENDING: &str = ".svg";

/// The plan of a content, as named from the folder of the run.
pub(crate) fn name(content: &str) -> String {
    format!("{FOLDER}/{content}{ENDING}")
}

/// Puts a plan in its place.
pub(crate) fn put(folder: &Path, content: Content, plan: &str) -> Result<(), Failure> {
    let mut file = Whole::start(folder.join(name(&content.to_string())))?;
    file.add(plan)?;
    file.put_soon()
}

/// Takes away the plans of contents that are none of `wanted`. Nothing that is not named as a plan is touched.
pub(crate) fn drop_others(folder: &Path, wanted: &BTreeSet<Content>) {
    let Ok(entries) = fs::read_dir(folder.join(FOLDER)) else { return };
    for entry in entries.flatten() {
        let name = entry.file_name();
        let content = name.to_str().and_then(|name| Content::of_name(name.strip_suffix(ENDING)?));
        if content.is_some_and(|content| !wanted.contains(&content)) {
            // A plan too many does no harm.
            let _ = fs::remove_file(entry.path());
        }
    }
}
