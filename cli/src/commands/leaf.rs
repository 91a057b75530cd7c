//! Writing a sheet of words and tables in the form that is wanted.

use crate::args::LeafForm;
use crate::destination::Destination;
use crate::drawing::{Stock, pdf};
use crate::failure::Failure;
use crate::outlet::{Look, Outlet};
use crate::render::leaf::{self, Leaf};

/// Writes it in the form that was asked for, or else that of the file's ending, or else as text.
pub(super) fn write(
    sheet: &Leaf,
    (asked, stock): (Option<LeafForm>, Stock),
    destination: &Destination,
    stdout: &mut Outlet<'_>,
) -> Result<(), Failure> {
    let of_ending = || destination.extension().and_then(|ending| LeafForm::of_ending(&ending));
    let look = if *destination == Destination::Stdout { stdout.look() } else { Look::PLAIN };
    let written = match asked.or_else(of_ending).unwrap_or(LeafForm::Text) {
        LeafForm::Text => leaf::text(sheet, look).into_bytes(),
        LeafForm::Html => leaf::html(sheet).into_bytes(),
        LeafForm::Pdf if *destination == Destination::Stdout && stdout.is_terminal() => {
            return Err(Failure::NoText("PDF"));
        }
        LeafForm::Pdf => pdf(&leaf::pages(sheet, stock))?,
    };
    destination.write(&written, stdout)
}
