//! Letters of names that no font at hand has: sheets leave them as boxes, so they are told.

use std::collections::BTreeSet;

use crate::drawing::{Sheet, Typeface};
use crate::process::outlet::Outlet;
use crate::words;

/// Tells the letters on these sheets that would be boxes.
pub(super) fn tell(sheets: &[Sheet], typeface: &Typeface, stderr: &mut Outlet<'_>) {
    tell_these(&typeface.lacks(sheets), stderr);
}

/// Tells letters that are boxes, where there are any.
pub(super) fn tell_these(lacking: &BTreeSet<char>, stderr: &mut Outlet<'_>) {
    if !lacking.is_empty() {
        // What cannot be told spoils no sheet.
        let _ = stderr.write(&words::letters::lacking(lacking));
    }
}
