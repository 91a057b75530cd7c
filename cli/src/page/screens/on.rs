//! What a screen is made from.

use super::filter::Filter;
use crate::page::room::Seen;

/// What a screen is made from.
#[derive(Clone, Copy)]
pub(in crate::page) struct On<'a> {
    /// The name of the room's file.
    pub(in crate::page) file: &'a str,
    /// The room.
    pub(in crate::page) seen: &'a Seen,
    /// The wall that is measured, from 0.
    pub(in crate::page) wall: usize,
    /// The option that is looked at, by its key.
    pub(in crate::page) option: Option<&'a str>,
    /// Which options are shown.
    pub(in crate::page) filter: &'a Filter,
}
