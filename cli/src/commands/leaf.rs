//! Writing a sheet of words and tables in the form that is wanted.

use super::form;
use crate::args::LeafForm;
use crate::drawing::{Stock, pdf};
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

/// Writes it.
pub(super) fn write(
    sheet: &Leaf,
    form: LeafForm,
    stock: Stock,
    destination: &Destination,
    stdout: &mut Outlet<'_>,
) -> Result<(), Failure> {
    let look = if *destination == Destination::Stdout { stdout.look() } else { Look::PLAIN };
    let written = match form {
        LeafForm::Text => leaf::text(sheet, look).into_bytes(),
        LeafForm::Html => leaf::html(sheet).into_bytes(),
        LeafForm::Pdf => pdf(&leaf::pages(sheet, stock))?,
    };
    destination.write(&written, stdout)
}
