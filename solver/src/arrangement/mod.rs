//! The discrete options: which wall the seat's back takes, which way it faces, which hand a corner sofa has, where the
//! media unit and the second seats stand.
//!
//! Only decisions that a person would call a different option; what is left (the wall of a bookcase, the side of a
//! lamp) is a choice of [`Stand`] inside the search. No size is found here.

mod apart;
mod as_it_stands;
mod as_placed;
mod bounds;
mod cast;
mod direction;
mod enumerate;
mod media;
mod naming;
mod only;
mod other_pieces;
mod seating;
mod second_seat;
mod stand;
mod stretch;
mod tolerance;
mod turn;

pub use bounds::{NoRoom, NoRoomAt};
pub(crate) use direction::{alike, face};
pub use enumerate::{Dropped, Enumeration, MOST_ARRANGEMENTS, enumerate};
pub use stand::{Arrangement, Choices, Relation, Role, SecondSeat, Stand, Standing};
pub use stretch::Obstacle;
pub use turn::Turn;
