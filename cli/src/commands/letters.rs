//! Letters of names that no font at hand has: sheets leave them as boxes, so they are told.

use crate::drawing::{Sheet, Typeface};
use crate::process::outlet::Outlet;
use crate::words;

/// Tells the letters on these sheets that would be boxes.
pub(super) fn tell(sheets: &[Sheet], typeface: &Typeface, stderr: &mut Outlet<'_>) {
    let lacking = typeface.lacks(sheets);
    if !lacking.is_empty() {
        // What cannot be told spoils no sheet.
        let _ = stderr.write(&words::letters::lacking(&lacking));
    }
}
