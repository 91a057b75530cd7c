//! Rules of comfort: what makes a layout that keeps every other rule one to live in. Each holds of the plan and of the
//! largest pieces alike; each is eased, at a cost above all else, where no layout keeps it.

mod before_opening;
mod behind_seat;
mod between_seats;
mod dining_places;
mod easing;
mod figure;
mod front_open;
mod fronts;
mod in_use;
mod leg_room;
mod return_off_wall;
mod screen_axis;
mod screen_sight;
mod screen_turn;
mod solid_wall;
mod table_axis;

pub(crate) use easing::{EASED, eased, may_be_eased};
pub(crate) use fronts::axis;
pub(crate) use screen_sight::{LOW, beside as sight_beside};

use super::LayoutRule;

/// Every rule of comfort, in the order in which they are asked.
pub(crate) static COMFORT: &[&dyn LayoutRule] = &[
    &leg_room::LegRoom,
    &front_open::FrontOpen,
    &between_seats::BetweenSeats,
    &table_axis::TableAxis,
    &screen_axis::ScreenAxis,
    &screen_turn::ScreenTurn,
    &screen_sight::ScreenSight,
    &solid_wall::SolidWall,
    &before_opening::BeforeOpening,
    &behind_seat::BehindSeat,
    &return_off_wall::ReturnOffWall,
    &in_use::InUse,
    &dining_places::DiningPlaces,
];
