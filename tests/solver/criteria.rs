//! What must hold of `criteria`.

mod group;
mod heart;
mod laws;
mod room;
mod stage;
