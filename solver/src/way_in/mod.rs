//! Whether a piece can be carried in: the box it is, in each way it can be held, against each point of the way.
//!
//! [`turn`] has the exact formula of the turn from one hall into another, [`clear`] what each point asks of a box that is
//! held in one way, [`carried`] follows a piece from the street to the room, [`cap`] lowers the sizes of a brief to what
//! gets in, [`stopped`] says what a piece that does not would have to be, [`take_off`] what would have to come off it or its
//! doors. A piece of a brief is a box here, and so is one of a list but where the list tells what it looks like from its end:
//! then it is turned to where the hull of that is narrowest. Sloping backs and soft corners that give a little are not counted
//! on.

mod cap;
mod carried;
mod clear;
mod found;
mod held;
mod stopped;
mod take_off;
mod tolerance;
pub mod turn;

pub use cap::most_that_gets_in;
pub(crate) use cap::{Blocked, Narrowed, brief_by_the_way, narrowed};
pub use carried::{Carried, Failed, PartCarried, PoseTried, Tight, carried};
pub use clear::Asks;
pub use found::{Assumed, LookedFor, PieceIn, WayIn, of_a_brief, of_a_list, way_in};
pub use held::{Pose, narrowest};
pub(crate) use stopped::eased;
pub use take_off::{Legs, TakeOff};
