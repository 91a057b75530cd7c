//! What was measured in a room, what is asked of it, and which rules hold.
//!
//! Here live the vocabulary of the trade as types ([`Room`], [`Piece`], [`Rules`], [`Wishes`]), the checked whole
//! that the solver gets ([`Brief`]), and the reading of the scenario file with every fault it may have.
//! Nothing here solves, and nothing here prints.

pub mod brief;
pub mod fault;
pub mod length;
pub mod opening;
pub mod piece;
pub mod point;
pub mod room;
pub mod rules;
pub mod wishes;

pub use brief::{Brief, Notice};
pub use fault::Fault;
pub use length::{Rounding, Unit};
pub use opening::{Door, Fireplace, Hinge, ItemKind, LeadsTo, Opening, Radiator, Socket, Stance, Swings, View, Window};
pub use piece::{Dimension, Hand, Piece, PieceKind, SizeRange, Step};
pub use point::Point;
pub use room::{Fixed, FixedId, ItemId, Residual, Room, Survey, Wall, WallId, WallItem};
pub use rules::{Rule, Rules};
pub use wishes::{Criterion, Wishes};
