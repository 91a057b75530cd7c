//! Each check of this folder, for whoever makes files after what of the program they reach.

use std::cell::LazyCell;

use super::mutation::once;

thread_local! {
    static JOURNALS: LazyCell<super::journal::Journals> = LazyCell::new(super::journal::Journals::new);
}

/// A table of bookings.
pub fn bookings(bytes: &[u8]) {
    once(bytes, super::bookings::check);
}

/// Lines of rooms.
pub fn lines(bytes: &[u8]) {
    once(bytes, super::lines::check);
}

/// What is kept of a run.
pub fn journal(bytes: &[u8]) {
    JOURNALS.with(|journals| once(bytes, |bytes, draw| journals.check(bytes, draw)));
}
