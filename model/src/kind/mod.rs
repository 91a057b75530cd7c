//! The kinds of piece, and what each is.

mod table;
mod traits;

use enum_map::Enum;
use serde::{Deserialize, Serialize};
use strum::{EnumString, IntoStaticStr, VariantArray};

pub use traits::{Body, Drawn, Front, KeepsClear, SeatForm, Stands, Traits};

/// The kinds of piece.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Serialize,
    Deserialize,
    schemars::JsonSchema,
    Enum,
    EnumString,
    IntoStaticStr,
    VariantArray,
)]
#[serde(rename_all = "kebab-case")]
#[strum(serialize_all = "kebab-case")]
pub enum PieceKind {
    /// A straight sofa.
    Sofa,
    /// Two runs joined at a right angle.
    CornerSofa,
    /// A seat for one.
    Armchair,
    /// The low table before the main seat.
    CoffeeTable,
    /// A small table beside a seat.
    SideTable,
    /// What carries the screen.
    MediaUnit,
    /// Tall shelves at a wall.
    Bookcase,
    /// Low storage at a wall.
    Sideboard,
    /// A place to write.
    Desk,
    /// A table to eat at, with chairs along both long sides.
    DiningTable,
    /// A standing lamp.
    FloorLamp,
    /// Lies flat under the seating.
    Rug,
    /// A screen hung on a wall.
    WallScreen,
    /// Storage on the floor, to the waist or the chest: a chest of drawers, a cupboard.
    Cabinet,
    /// A long seat with no back, for shoes, books or a guest: nobody sits there with the others.
    Bench,
    /// A plant in a pot.
    Plant,
    /// A long narrow table, at a wall or behind a seat that stands free.
    Console,
    /// An upright piano.
    Piano,
    /// A low padded seat or footrest that one pushes about: nobody is counted on it.
    Pouf,
    /// A cushion on the floor to sit on: nobody is counted on it.
    FloorCushion,
    /// Floor that stays open and can be reached: a play mat, a place for a cot or for exercise.
    OpenFloor,
    /// A long seat that one may lie on as well, its one front along a long side.
    DayBed,
}

impl PieceKind {
    /// Every kind, in the order of the vocabulary.
    pub const ALL: &[Self] = Self::VARIANTS;

    /// The kind as a scenario file writes it: `corner-sofa`.
    #[must_use]
    pub fn key(self) -> &'static str {
        self.into()
    }

    /// The keys of the kinds of which something holds: `corner-sofa`, or several with `or` between.
    #[must_use]
    pub fn keys_where(holds: impl Fn(Self) -> bool) -> String {
        let keys: Vec<&str> = Self::ALL.iter().filter(|kind| holds(**kind)).map(|kind| kind.key()).collect();
        keys.join(" or ")
    }

    /// The kind in words: `corner sofa`.
    #[must_use]
    pub fn words(self) -> String {
        self.key().replace('-', " ")
    }

    /// One sits on it.
    #[must_use]
    pub const fn is_seat(self) -> bool {
        self.traits().seat.is_some()
    }

    /// A seat of two runs: it has a return, a hand, and a chaise where its return has no back.
    #[must_use]
    pub const fn has_return(self) -> bool {
        matches!(self.traits().seat, Some(SeatForm::Corner))
    }

    /// A seat for one, which may stand turned toward the others.
    #[must_use]
    pub const fn may_turn(self) -> bool {
        matches!(self.traits().seat, Some(SeatForm::Single))
    }

    /// One opens it: what carries a screen is not counted.
    #[must_use]
    pub const fn is_storage(self) -> bool {
        matches!(self.traits().front, Front::Opened)
    }

    /// It carries the screen that seats turn to.
    #[must_use]
    pub const fn carries_screen(self) -> bool {
        matches!(self.traits().front, Front::Watched)
    }

    /// It hangs on its wall, over what is lower than its lower edge, and takes no floor.
    #[must_use]
    pub const fn hangs(self) -> bool {
        self.traits().hangs
    }

    /// People eat at it, along both long sides.
    #[must_use]
    pub const fn is_dined_at(self) -> bool {
        matches!(self.traits().front, Front::DinedAt)
    }

    /// People sit at it on chairs, which its height does not tell of.
    #[must_use]
    pub const fn is_sat_at(self) -> bool {
        matches!(self.traits().front, Front::SatAt | Front::DinedAt)
    }

    /// A sofa of one run, sold by how many sit on it.
    #[must_use]
    pub const fn is_sold_by_places(self) -> bool {
        matches!(self.traits().seat, Some(SeatForm::Straight))
    }

    /// The file may say for how many it is.
    #[must_use]
    pub const fn has_places(self) -> bool {
        self.is_dined_at() || self.is_sold_by_places()
    }

    /// It stands before the main seat, at the distance of [`crate::Clearance::SeatToTable`].
    #[must_use]
    pub const fn stands_before_seat(self) -> bool {
        matches!(self.traits().stands, Stands::BeforeSeat)
    }

    /// It lies flat: one walks over it and sees over it.
    #[must_use]
    pub const fn is_flat(self) -> bool {
        matches!(self.traits().body, Body::Flat | Body::Open)
    }

    /// It lies flat and other pieces stand on it: a rug.
    #[must_use]
    pub const fn lies_under(self) -> bool {
        matches!(self.traits().body, Body::Flat)
    }

    /// It is floor that stays open: nothing but rugs lies on it, no door swings over it, and nobody buys it.
    #[must_use]
    pub const fn stays_open(self) -> bool {
        matches!(self.traits().body, Body::Open)
    }

    /// One sits at it to work, by daylight where that can be: a desk, and no piano, whose wall is an inner one.
    #[must_use]
    pub const fn is_worked_at(self) -> bool {
        matches!(self.traits().front, Front::SatAt) && !self.traits().wants_inner_wall
    }

    /// It stands in the way of eye and arm: neither flat nor slender.
    #[must_use]
    pub const fn is_solid(self) -> bool {
        matches!(self.traits().body, Body::Solid)
    }

    /// It may stand where legs have room: one puts them up on it, or pushes it aside.
    #[must_use]
    pub const fn stands_in_leg_room(self) -> bool {
        matches!(self.traits().stands, Stands::BesideSeats) && self.traits().moves_aside
    }

    /// A way must lead to its front.
    #[must_use]
    pub const fn is_led_to(self) -> bool {
        self.traits().is_led_to
    }
}
