//! What is refused, one family of faults a file: each tells what is wrong, by how much, and the remedy.

pub(super) mod at_hand;
pub(super) mod counter;
pub(super) mod fixed;
pub(super) mod items;
pub(super) mod limits;
pub(super) mod meant_unit;
pub(super) mod places;
pub(super) mod plausible;
pub(super) mod stopped;
pub(super) mod swing;
pub(super) mod walls;
