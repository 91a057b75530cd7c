//! The terms of a plan, each once.

use super::about_fire::AboutFire;
use super::about_view::AboutView;
use super::apart::GroupApart;
use super::at_wall::AtWall;
use super::axis::OnAxis;
use super::beam::Beam;
use super::before_window::BeforeWindow;
use super::behind::FloorBehind;
use super::dining::DiningBySeat;
use super::doorways::AboutDoorways;
use super::on_one_level::OnOneLevel;
use super::open_floor::OpenFloor;
use super::pairs::Pairs;
use super::plan_term::PlanTerm;
use super::rug::UnderGroup;
use super::rug_clear::ClearOfOthers;
use super::screen::ScreenBefore;
use super::second_seats::SecondSeats;
use super::small::AtSeatsEnd;
use super::storage::BesideStorage;

/// Every term, in the order in which they are asked.
pub(crate) static TERMS: &[&dyn PlanTerm] = &[
    &ScreenBefore,
    &Beam,
    &BeforeWindow,
    &OnAxis,
    &AboutFire,
    &AboutView,
    &SecondSeats,
    &OnOneLevel,
    &Pairs,
    &AtWall,
    &FloorBehind,
    &AtSeatsEnd,
    &UnderGroup,
    &ClearOfOthers,
    &BesideStorage,
    &DiningBySeat,
    &GroupApart,
    &AboutDoorways,
    &OpenFloor,
];
