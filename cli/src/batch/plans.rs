//! The small plans beside the rooms' lines: a picture each, named by the content it was drawn from and by nothing else.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use super::content::Content;
use crate::process::failure::Failure;
use crate::process::whole::Whole;
use crate::render::batch::{PLAN_ENDING, PLANS, plan_name};

/// Puts a plan in its place.
pub(crate) fn put(folder: &Path, content: Content, plan: &str) -> Result<(), Failure> {
    let mut file = Whole::start(folder.join(plan_name(&content.to_string())))?;
    file.add(plan)?;
    file.put_soon()
}

/// Takes away the plans of contents that are none of `wanted`. Nothing that is not named as a plan is touched.
pub(crate) fn drop_others(folder: &Path, wanted: &BTreeSet<Content>) {
    let Ok(entries) = fs::read_dir(folder.join(PLANS)) else { return };
    for entry in entries.flatten() {
        let name = entry.file_name();
        let content = name.to_str().and_then(|name| Content::of_name(name.strip_suffix(PLAN_ENDING)?));
        if content.is_some_and(|content| !wanted.contains(&content)) {
            // A plan too many does no harm.
            let _ = fs::remove_file(entry.path());
        }
    }
}
