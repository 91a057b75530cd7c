//! What must hold of `criteria`.

mod absent;
mod composed;
mod group;
mod heart;
mod laws;
mod room;
mod stage;
mod walkers;
