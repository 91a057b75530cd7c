//! What was measured in a room, what is asked of it, and which rules hold.
//!
//! Here live the vocabulary of the trade as types ([`Room`], [`Piece`], [`Rules`], [`Wishes`]), the checked whole
//! that the solver gets ([`Brief`]), and the reading of the scenario file with every fault it may have.
//! Nothing here solves, and nothing here prints.
//!
//! ```
//! let text = "
//! units: cm
//! walls:
//!   - { length: 420, holds: [{ kind: window, at: 100, width: 180, view: liked }] }
//!   - { length: 360 }
//!   - { length: 420, holds: [{ kind: door, at: 20, width: 80, hinge: left, swings: in, leads_to: entrance }] }
//!   - { length: 360 }
//! pieces:
//!   - { kind: sofa, width: 180..240 }
//! ";
//! let brief = elbowroom_model::scenario::read(text, None).map_err(|faults| format!("{faults:#?}"))?;
//! assert_eq!(brief.room.walls[2].name, "wall 3");
//! assert_eq!(brief.pieces[0].width.most, 2400.0);
//! # Ok::<(), String>(())
//! ```

mod aim;
pub mod article;
mod bay;
mod brief;
mod called;
mod carried;
mod composition;
pub(crate) mod corner;
mod dimension;
mod fault;
pub mod filed;
mod fire;
mod focus;
mod furnishing;
mod household;
mod hung;
pub(crate) mod keyed;
mod kind;
pub mod length;
pub mod listing;
pub(crate) mod nearest;
mod notice;
pub mod on_plan;
mod only;
mod opening;
mod order;
mod pair;
mod piece;
mod point;
pub mod quote;
pub(crate) mod report;
pub mod ring;
mod room;
mod rules;
pub mod scenario;
mod screen;
mod sits;
mod stands_at;
pub mod survey;
pub mod tables;
mod turned;
mod unit;
mod used_at;
mod used_floor;
pub mod way_in;
mod wishes;
pub(crate) mod yaml;

pub use aim::{AimedSizes, PieceAim, SizesAim};
pub use brief::Brief;
pub use composition::{Price, Term};
pub use dimension::Dimension;
pub use fault::{Fault, Place};
pub use household::Household;
pub use kind::{Body, Drawn, Front, KeepsClear, PieceKind, SeatForm, Stands, Traits};
pub use nearest::is_a_slip;
pub use notice::Notice;
pub use only::{Only, SecondPlace, Wanted};
pub use opening::{
    Door, FireOpening, Fireplace, Hinge, ItemKind, LeadsTo, Opening, Radiator, Socket, Stance, Swings, View, Window,
};
pub use order::Order;
pub use pair::Pair;
pub use piece::{Hand, Piece, PieceId, SizeRange, Step};
pub use point::Point;
pub use room::{Fixed, FixedId, ItemId, KeptFree, Residual, Room, Slope, Survey, Wall, WallId, WallItem};
pub use rules::{Clearance, ClearanceFigure, Rule, Rules};
pub use screen::{screen_height, screen_width};
pub use sits::{Sits, SitsFrom};
pub use stands_at::{BackOf, StandsAt};
pub use turned::{TURNS, Turned};
pub use unit::{Rounding, Unit};
pub use used_at::UsedAt;
pub use used_floor::UsedFloor;
pub use wishes::{Criterion, Wishes};
