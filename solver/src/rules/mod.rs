//! One file per rule: what it forbids, as alternatives of linear rows that mend it.
//!
//! A rule sees one piece, or two, under one stand each, and says what must hold of them: a [`Requirement`]. The search
//! picks among alternatives; nothing is decided here. Ways through are measured in `routes` and turned into
//! requirements in [`route`].
//!
//! What it rests on, cited from memory: a rule that can hold in one of several ways is a disjunction of linear rows (Balas 1979,
//! "Disjunctive programming"). That two convex shapes keep apart is one by the directions in which an edge of either separates
//! them, the edges of the shape of places that one of them may not take beside the other (Lozano-Perez 1983, "Spatial planning:
//! a configuration space approach").

mod centring;
pub(crate) mod comfort;
mod context;
mod doorways;
mod facing;
mod focus;
mod free_standing;
mod fronts;
mod group;
mod groups;
mod held;
pub(crate) mod held_off;
mod hung;
mod keep_clear;
mod layout_rule;
mod level;
mod linear;
mod linear_outline;
mod nearly_square;
mod off_wall;
mod on_wall;
mod overlap;
mod pose;
mod requirement;
mod return_run;
pub mod route;
mod seat_to_table;
mod separation;
mod sizes_of_kind;
mod tolerance;
pub(crate) mod turned;
mod turning_circle;
mod under_slope;
mod variables;
mod within_walls;

pub use context::{RuleContext, Walls};
pub(crate) use focus::faces_one;
pub use layout_rule::LayoutRule;
pub(crate) use level::on_one_side;
pub use linear::{Linear, LinearPoint};
pub use linear_outline::LinearOutline;
pub(crate) use off_wall::furthest_off;
pub use off_wall::{FOOT, PAST_ENDS};
pub use pose::Pose;
pub use requirement::{Alternative, Arc, Cause, Requirement, With};
pub(crate) use separation::{apart, beyond, out_of_polygon};
pub use tolerance::TOLERANCE;
pub use variables::{CostSlot, PieceVariables, SizeVariables, Variables};

/// Every rule, in the order in which they are asked.
pub static RULES: &[&dyn LayoutRule] = &[
    &within_walls::WithinWalls,
    &off_wall::OffWall,
    &keep_clear::OutOfFixed,
    &doorways::DoorSwing,
    &doorways::DoorLanding,
    &doorways::LatchSide,
    &keep_clear::KeepClear,
    &keep_clear::WindowFront,
    &under_slope::UnderSlope,
    &overlap::NoOverlap,
    &seat_to_table::SeatToTable,
    &seat_to_table::TableToMedia,
    &facing::Facing,
    &fronts::FreeFronts,
    &group::Group,
    &turned::TurnedToHeart,
    &groups::Groups,
    &free_standing::FreeStanding,
    &held::Held,
    &sizes_of_kind::Steps,
    &sizes_of_kind::Alike,
    &turning_circle::TurningCircle,
];

/// What settles ties, asked where sizes alone leave a choice.
pub static TIES: &[&dyn LayoutRule] = &[&centring::Centring];
