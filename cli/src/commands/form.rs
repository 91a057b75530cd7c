//! The form that a sheet is written in: the one asked for, or else the one that the file's ending tells of.

use clap::ValueEnum;

use crate::args::Form;
use crate::drawing::{Font, Sheet, Typeface, pdf, png, svg};
use crate::process::destination::Destination;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;

/// The form; none where neither the command line nor the file's ending tells one, or where the ending is one of `plain`:
/// text, beside the forms.
///
/// # Errors
/// The ending is that of something else: whoever names a file so wants what it promises.
pub(super) fn form<F: ValueEnum>(
    asked: Option<F>,
    destination: &Destination,
    plain: &[&str],
) -> Result<Option<F>, Failure> {
    let (None, Some(ending)) = (&asked, destination.extension()) else { return Ok(asked) };
    if plain.contains(&ending.as_str()) {
        return Ok(None);
    }
    F::from_str(&ending, true).map(Some).map_err(|_| unknown_ending::<F>(destination, plain))
}

/// The form that the ending of a file tells, where the result itself is printed: a drawing beside it needs a file.
///
/// # Errors
/// No ending, or that of something else.
pub(super) fn form_of_file<F: ValueEnum>(destination: &Destination) -> Result<F, Failure> {
    form(None, destination, &[])?.ok_or_else(|| unknown_ending::<F>(destination, &[]))
}

/// The failure, with the endings that are known.
fn unknown_ending<F: ValueEnum>(destination: &Destination, plain: &[&str]) -> Failure {
    let values = F::value_variants().iter().filter_map(F::to_possible_value);
    let names = values.flat_map(|value| value.get_name_and_aliases().map(str::to_owned).collect::<Vec<_>>());
    let known = names.chain(plain.iter().map(|&ending| ending.to_owned())).collect();
    Failure::UnknownEnding { name: destination.name().unwrap_or_else(|| "-".to_owned()), known }
}

/// Sees that a form which is no text goes to no terminal, where one can choose another form `instead`.
///
/// # Errors
/// It would go to one.
pub(super) fn see_terminal(
    form: &'static str,
    instead: &'static str,
    destination: &Destination,
    stdout: &Outlet<'_>,
) -> Result<(), Failure> {
    let shown = *destination == Destination::Stdout && stdout.is_terminal();
    if shown { Err(Failure::NoText { form, instead }) } else { Ok(()) }
}

/// The same for the forms of drawings.
///
/// # Errors
/// A drawing that is no text would go to a terminal.
pub(super) fn see_drawing(
    form: Form,
    instead: &'static str,
    destination: &Destination,
    stdout: &Outlet<'_>,
) -> Result<(), Failure> {
    match form {
        Form::Svg => Ok(()),
        Form::Png => see_terminal("PNG", instead, destination, stdout),
        Form::Pdf => see_terminal("PDF", instead, destination, stdout),
    }
}

/// Sheets in a form; of a form that holds one sheet, the first.
///
/// # Errors
/// It cannot be drawn, which no sheet of ours should bring about.
pub(super) fn drawn(sheets: &[Sheet], form: Form, typeface: &Typeface) -> Result<Vec<u8>, Failure> {
    let Some(first) = sheets.first() else { return Ok(Vec::new()) };
    match form {
        Form::Svg => Ok(svg(first, Font::Within, typeface).into_bytes()),
        Form::Png => png(first, typeface),
        Form::Pdf => pdf(sheets, typeface),
    }
}
