//! What a kind of piece is: the columns of its row in the table.

use crate::rules::Clearance;

/// What a kind of piece is, by what solver and outputs must know of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Traits {
    /// One sits on it; in this form.
    pub seat: Option<SeatForm>,
    /// What one does at its front, where that is no seat's.
    pub front: Front,
    /// Where it may stand.
    pub stands: Stands,
    /// How much of it there is to see and to walk into.
    pub body: Body,
    /// It hangs on its wall and takes no floor.
    pub hangs: bool,
    /// A way must lead to its front.
    pub is_led_to: bool,
    /// What stays clear of pieces about it.
    pub keeps_clear: KeepsClear,
    /// The gap behind its back at a wall, where its row of the file gives none; `None`: it may touch.
    pub off_wall: Option<Clearance>,
    /// One puts something down on it from a seat.
    pub is_surface: bool,
    /// It gives light to read by.
    pub gives_light: bool,
    /// It needs a socket.
    pub needs_power: bool,
    /// One moves it aside where a wheelchair turns, or a seat that it belongs to is walked up to.
    pub moves_aside: bool,
    /// Width and depth are one size, unless the file gives two.
    pub is_square: bool,
    /// It stands at a wall with no window, radiator or fire, where there is one.
    pub wants_inner_wall: bool,
    /// How a plan shows it.
    pub drawn: Drawn,
}

/// The form of a seat.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SeatForm {
    /// Two runs joined at a right angle: it has a return, on the left or the right hand, with or without a back.
    Corner,
    /// One run of places.
    Straight,
    /// One run of places that one may lie on: as long as a bed, whatever the room.
    DayBed,
    /// One place.
    Single,
}

/// What one does at a front.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Front {
    /// Nothing: it has none, or it is a seat's.
    None,
    /// One looks at the screen that it carries.
    Watched,
    /// One opens it, or takes something out.
    Opened,
    /// One sits at it on a chair.
    SatAt,
    /// People sit along both long sides.
    DinedAt,
}

/// Where a kind of piece may stand.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stands {
    /// Where the arrangement places its seats: at a wall or free.
    AsSeat,
    /// Before the main seat.
    BeforeSeat,
    /// Under the seating.
    UnderSeats,
    /// At either end of a seat.
    BesideSeats,
    /// At a wall.
    AtWall,
    /// With a long side at a wall, or free.
    AtWallOrFree,
    /// At a wall, or with its back to that of a main seat which stands free.
    AtWallOrBehindSeat,
}

/// How much of a piece there is to see and to walk into.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Body {
    /// Flat on the floor: one walks over it, it hides nothing, it comes rolled.
    Flat,
    /// Floor that stays open: one walks over it, and nothing but rugs lies on it.
    Open,
    /// So slender that one sees and reaches past it.
    Slender,
    /// It stands in the way.
    Solid,
}

/// What stays clear of pieces about a piece.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum KeepsClear {
    /// Nothing but what every piece keeps.
    Nothing,
    /// So much before its front.
    Before(Clearance),
    /// So much along both long sides, less one that stands at a wall.
    AlongSides {
        /// For those who sit there.
        seated: Clearance,
        /// Where people pass behind them.
        passing: Clearance,
    },
}

/// How a plan shows a piece.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Drawn {
    /// Under all others, with a border.
    Rug,
    /// Under all others, by its edge alone.
    OpenFloor,
    /// With arms, back and seat cushions.
    Upholstered,
    /// With rounded corners.
    Padded,
    /// With a stroke at its front, and the screen that stands on it.
    WithFront,
    /// As a thick bar.
    Screen,
    /// As a ring with a cross.
    Lamp,
    /// As a ring with its pot.
    Plant,
    /// The outline alone.
    Plain,
}
