//! Whether a piece can be carried in: the box it is, in each way it can be held, against each point of the way.
//!
//! [`turn`] has the exact formula of the turn from one hall into another, [`clear`] what each point asks of a box that is
//! held in one way, [`carried`] follows a piece from the street to the room, [`cap`] lowers the sizes of a brief to what
//! gets in, [`stopped`] says what a piece that does not would have to be. A piece is a box here, or, of a seat that a list tells of, what it looks like from its
//! end; sloping backs and soft corners that give a little are not counted on.

mod cap;
mod carried;
mod clear;
mod found;
mod held;
mod stopped;
mod tolerance;
pub mod turn;

pub use cap::most_that_gets_in;
pub(crate) use cap::{Blocked, Narrowed, brief_by_the_way, narrowed};
pub use carried::{Carried, Failed, PartCarried, PoseTried, Tight, carried};
pub use clear::Asks;
pub use found::{Assumed, PieceIn, WayIn, of_a_brief, of_a_list, way_in};
pub use held::{Pose, turned};
pub(crate) use stopped::eased;
