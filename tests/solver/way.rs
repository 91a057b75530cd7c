//! What can be carried in: the turn against a search over all motions, each point of a way at its edge and a hair past it,
//! the sizes that a way holds, and seats by what they look like from their end.

mod motion;
mod points;
mod rooms;
mod sections;
