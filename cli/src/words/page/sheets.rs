//! What the screen of the sheets says.

use elbowroom_solver::answer::RankedOption;

/// What they are.
pub(crate) const ABOUT: &str = "Each is the file that the command line makes of this room, to the last byte.";
/// A field.
pub(crate) const WHICH: &str = "Of which option";
/// A field.
pub(crate) const PAPER: &str = "Paper";
/// Where there is none to make.
pub(crate) const NONE: &str = "Sheets can be had once something fits.";
/// A sheet, and what it is for.
pub(crate) const PLAN: [&str; 2] = ["Plan", "To live with and to set out by, true to scale"];
/// A sheet, and what it is for.
pub(crate) const TAPE: [&str; 2] = ["Tape", "Where each corner is marked on the floor"];
/// A sheet, and what it is for.
pub(crate) const CARD: [&str; 2] = ["Card", "What to take to the shop: how large each piece may be"];
/// A sheet, and what it is for.
pub(crate) const REPORT: [&str; 2] = ["Report", "All of it on one page that opens with no network"];
/// A sheet, and what it is for.
pub(crate) const FOR_A_CLIENT: [&str; 2] = [
    "For a client",
    "Plans, names and sizes on one page, with no scores, no shops, and prices only where you choose them; the client marks one, writes a line, and sends that back as text.",
];
/// A field of it.
pub(crate) const PRICES: &str = "Prices";
/// A choice of it.
pub(crate) const NO_PRICES: &str = "not told";
/// A sheet, and what it is for.
pub(crate) const SHOP: [&str; 2] =
    ["From a list", "Which pieces of a list in this folder fit, and by how much the others miss"];

/// A choice of the prices that a client is told.
pub(crate) fn prices_of(list: &str) -> String {
    format!("the lowest on {list} of what fits")
}

/// Which options it shows.
pub(crate) const SHARES_ONE: &str = "It shows the option chosen above; pin two or three under Options to show those.";
/// A form.
pub(crate) const PDF: &str = "PDF";
/// A form.
pub(crate) const SVG: &str = "SVG";
/// A form.
pub(crate) const PNG: &str = "PNG";
/// A form.
pub(crate) const CSV: &str = "spreadsheet (CSV)";
/// A form.
pub(crate) const TEXT: &str = "text";
/// A form.
pub(crate) const PAGE: &str = "web page";

/// An option in a list.
pub(crate) fn option(option: &RankedOption, title: &str) -> String {
    format!("{}. {title}", option.rank)
}

/// Which options the page for a client shows.
pub(crate) fn shares(count: usize) -> String {
    match count {
        1 => "It shows the option that is pinned.".to_owned(),
        _ => format!("It shows the {count} options that are pinned."),
    }
}

/// What a link keeps, for who hears it alone.
pub(crate) fn download(sheet: &str, form: &str) -> String {
    format!("{sheet} as {form}")
}
