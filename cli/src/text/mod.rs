//! Text made fit for where it goes: safe at a terminal, escaped on a page, wrapped and in columns, as cells and as JSON.
//!
//! The ground floor: nothing here knows a room, a file or a command. Escape sequences come from [`page`] alone.

pub(crate) mod cells;
pub(crate) mod digest;
pub(crate) mod json;
pub(crate) mod look;
pub(crate) mod markup;
pub(crate) mod page;
pub(crate) mod safe;
pub(crate) mod table;
pub(crate) mod wide;
pub(crate) mod workbook;
