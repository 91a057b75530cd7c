//! What a screen is made from.

use elbowroom_model::Unit;

use super::filter::Filter;
use crate::page::guard::Right;
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
    /// The options that are pinned, by their keys, in the order in which they were.
    pub(in crate::page) pinned: &'a [String],
    /// What whoever looks may do.
    pub(in crate::page) right: Right,
    /// The unit that lengths are told in, where it is not the file's.
    pub(in crate::page) units: Option<Unit>,
    /// The lists of pieces beside the room's file.
    pub(in crate::page) lists: &'a [String],
    /// Which options are shown.
    pub(in crate::page) filter: &'a Filter,
}
