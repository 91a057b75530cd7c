//! What this member reads, with something wrong somewhere: lines of rooms, what is kept of a run, bookings. Lists of
//! pieces are tried beside the tests of the model.

mod bookings;
mod journal;
mod lines;
#[path = "../../../tests/support/mutation.rs"]
pub(crate) mod mutation;
#[path = "../../../tests/support/rows.rs"]
mod rows;
