//! Writing a sheet of words and tables in the form that is wanted.

use super::{form, letters};
use crate::args::LeafForm;
use crate::drawing::{Stock, Typeface, pdf};
use crate::process::destination::Destination;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::render::leaf::{self, Leaf};
use crate::text::look::Look;
use crate::words;

/// The form that was asked for, or else that of the file's ending, or else text.
///
/// # Errors
/// The ending tells no form; a form that is no text would go to a terminal.
pub(super) fn form(
    asked: Option<LeafForm>,
    destination: &Destination,
    stdout: &Outlet<'_>,
) -> Result<LeafForm, Failure> {
    let form = form::form(asked, destination, &[])?.unwrap_or(LeafForm::Text);
    match form {
        LeafForm::Text | LeafForm::Html => {}
        LeafForm::Pdf => form::see_terminal("PDF", words::LEAF_INSTEAD, destination, stdout)?,
    }
    Ok(form)
}

/// A sheet of words and tables, and how it is written.
#[derive(Clone, Copy)]
pub(super) struct Made<'s> {
    pub(super) sheet: &'s Leaf,
    pub(super) form: LeafForm,
    /// On paper: its size.
    pub(super) stock: Stock,
    /// On paper: what it is lettered in. A browser has fonts of its own.
    pub(super) typeface: &'s Typeface,
}

/// Writes it.
pub(super) fn write(
    made: &Made<'_>,
    destination: &Destination,
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<(), Failure> {
    let Made { sheet, form, stock, typeface } = *made;
    let look = if *destination == Destination::Stdout { stdout.look() } else { Look::PLAIN };
    let written = match form {
        LeafForm::Text => leaf::text(sheet, look).into_bytes(),
        LeafForm::Html => leaf::html(sheet).into_bytes(),
        LeafForm::Pdf => {
            let pages = leaf::pages(sheet, stock);
            letters::tell(&pages, typeface, stderr);
            pdf(&pages, typeface)?
        }
    };
    destination.write(&written, stdout)
}
