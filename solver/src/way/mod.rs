//! Whether a piece can be carried in: the box it is, in each way it can be held, against each point of the way.
//!
//! [`turn`] has the exact formula of the turn from one hall into another, [`clear`] what each point asks of a box that is
//! held in one way, [`carried`] follows a piece from the street to the room, [`cap`] lowers the sizes of a brief to what
//! gets in, [`stopped`] says what a piece that does not would have to be. A piece is a box here: arms, sloping backs and soft corners that give a little are not counted on.

mod cap;
mod carried;
mod clear;
mod found;
mod held;
mod stopped;
pub mod turn;

pub use cap::most_that_gets_in;
pub(crate) use cap::{Blocked, Narrowed, brief_by_the_way, narrowed};
pub use carried::{Carried, Failed, PartCarried, PoseTried, Tight, carried};
pub use clear::Asks;
pub use found::{FORMAT, PieceIn, PointFound, WayFound, of_a_brief, of_a_list, way_in};
pub use held::Pose;
pub(crate) use stopped::eased;

/// What is not modelled and what to heed, for every page that tells of a way in.
pub const CAUTIONS: [&str; 3] = [
    "Each piece is taken as a box, and each point of the way by itself: handles, skirtings, banisters, slopes, the swing \
     of leaves, wrapping and the carriers' hands are not counted. What has less than 3 cm to spare is likely to scrape.",
    "Measure both the piece and the way twice, the narrowest place of each, and ask who carries it before you buy.",
    "Heavy pieces take two or more people who are used to it: a lift on stairs or over a rail is for trained carriers, \
     and the building may have rules of its own for lifts and stairs.",
];
