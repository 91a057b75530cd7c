//! What must hold of `criteria`.

mod absent;
mod group;
mod heart;
mod laws;
mod room;
mod stage;
