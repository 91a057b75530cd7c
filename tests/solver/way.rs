//! What can be carried in: the turn against a search over all motions, each point of a way at its edge and a hair past it,
//! and the sizes that a way holds.

mod motion;
mod points;
mod rooms;
