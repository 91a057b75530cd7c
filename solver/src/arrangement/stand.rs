//! How each piece of an arrangement may stand.

use elbowroom_model::{Brief, Hand, PieceId, Point, SecondPlace, WallId};

use super::turn::Turn;

/// The decisions that make one option.
#[derive(Debug, Clone, PartialEq)]
pub struct Choices {
    /// The wall behind the main seat; `None`: it stands free.
    pub seat_back: Option<WallId>,
    /// The wall that a main seat which stands free looks straight at; `None` for one at a wall.
    pub faced: Option<WallId>,
    /// Unit vector that the main seat faces.
    pub facing: Point,
    /// Hand of the corner sofa; `None` where the main seat is none.
    pub hand: Option<Hand>,
    /// The wall of the media unit; `None` without one.
    pub media_wall: Option<WallId>,
    /// Where the second seats stand, those of one row of the file together.
    pub second_seats: Vec<Vec<SecondSeat>>,
}

impl Choices {
    /// The second seats in the order of the brief.
    #[must_use]
    pub fn seats(&self) -> Vec<SecondSeat> {
        let mut seats: Vec<SecondSeat> = self.second_seats.iter().flatten().copied().collect();
        seats.sort_by_key(|seat| seat.piece);
        seats
    }
}

/// Where one second seat stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SecondSeat {
    /// The seat, by its place in the brief.
    pub piece: PieceId,
    /// Opposite the main seat or to a side of it.
    pub place: SecondPlace,
    /// Hand of a corner sofa.
    pub hand: Option<Hand>,
}

/// One way to furnish the room: the decisions, and for each piece the ways it may stand under them.
#[derive(Debug, Clone, PartialEq)]
pub struct Arrangement {
    /// Stable name, the same from run to run: `canal-wall/left/stair-wall`.
    pub key: String,
    /// The decisions.
    pub choices: Choices,
    /// The main seat, by its place in the brief.
    pub main_seat: PieceId,
    /// For each piece of the brief, in its order.
    pub standings: Vec<Standing>,
}

impl Arrangement {
    /// What the screen does; `None` where the arrangement has none.
    #[must_use]
    pub fn screen_role(&self) -> Option<Role> {
        let standing = self.standings.iter().filter(|standing| !standing.stands.is_empty());
        standing.map(|standing| standing.role).find(|role| role.is_screen())
    }

    /// How many second seats stand opposite the main one.
    #[must_use]
    pub fn seats_opposite(&self) -> usize {
        let opposite = |standing: &&Standing| standing.role == Role::Opposite && !standing.stands.is_empty();
        self.standings.iter().filter(opposite).count()
    }

    /// Whether two pieces could change places and the room would be the same: they are alike and have one part to play.
    #[must_use]
    pub fn are_twins(&self, brief: &Brief, one: PieceId, other: PieceId) -> bool {
        let role = |piece: PieceId| self.standings.iter().find(|standing| standing.piece == piece).map(|it| it.role);
        let alike = brief.piece(one).zip(brief.piece(other)).is_some_and(|(one, other)| one.is_twin_of(other));
        alike && role(one) == role(other)
    }
}

/// The ways one piece may stand: a single one is decided, several are chosen from inside the search.
#[derive(Debug, Clone, PartialEq)]
pub struct Standing {
    /// The piece, by its place in the brief.
    pub piece: PieceId,
    /// What it does in the group.
    pub role: Role,
    /// Hand of a corner sofa.
    pub hand: Option<Hand>,
    /// In an order that geometry gives (clockwise from the main seat's back), never names. Empty where the arrangement
    /// leaves out a piece that need not stand: a media unit in one without a screen, what no wall is long enough for.
    pub stands: Vec<Stand>,
}

/// One way a piece may stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stand {
    /// The wall behind its back; `None`: it stands free.
    pub at_wall: Option<WallId>,
    /// Unit vector from its back to its front.
    pub facing: Point,
    /// How it stands to another piece.
    pub relation: Relation,
    /// How a chair is turned from a square-on way; `None`: it is not.
    pub turn: Option<Turn>,
}

/// What a piece does in the group.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Role {
    /// The seat that the arrangement is built about.
    MainSeat,
    /// A second seat opposite the main one, facing it.
    Opposite,
    /// A second seat to the left of the main one (as one sits), facing across.
    LeftOf,
    /// A second seat to the right of the main one (as one sits), facing across.
    RightOf,
    /// The media unit opposite the main seat, which faces it.
    Screen,
    /// The media unit at the wall that a corner sofa's return faces.
    ScreenBeside,
    /// The coffee table.
    Table,
    /// A seat of a group of its own, beside the main one.
    Apart,
    /// Everything else.
    Other,
}

impl Role {
    /// What carries the screen.
    #[must_use]
    pub const fn is_screen(self) -> bool {
        match self {
            Self::Screen | Self::ScreenBeside => true,
            Self::MainSeat
            | Self::Opposite
            | Self::LeftOf
            | Self::RightOf
            | Self::Table
            | Self::Apart
            | Self::Other => false,
        }
    }

    /// A seat beside the main one.
    #[must_use]
    pub const fn is_second_seat(self) -> bool {
        match self {
            Self::Opposite | Self::LeftOf | Self::RightOf => true,
            Self::MainSeat | Self::Screen | Self::ScreenBeside | Self::Table | Self::Apart | Self::Other => false,
        }
    }
}

impl From<SecondPlace> for Role {
    fn from(place: SecondPlace) -> Self {
        match place {
            SecondPlace::Opposite => Self::Opposite,
            SecondPlace::Left => Self::LeftOf,
            SecondPlace::Right => Self::RightOf,
        }
    }
}

impl Relation {
    /// The seat it stands to.
    #[must_use]
    pub const fn seat(self) -> Option<PieceId> {
        match self {
            Self::Alone => None,
            Self::Before { seat }
            | Self::Faces { seat }
            | Self::Beside { seat, .. }
            | Self::Behind { seat }
            | Self::Under { seat } => Some(seat),
        }
    }
}

/// How a piece stands to another, as linear rows say it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Relation {
    /// To none.
    Alone,
    /// Straight before the main seat: `seat_to_table` off, sideways within it at every size.
    Before {
        /// The seat it serves.
        seat: PieceId,
    },
    /// Faces the front of a seat, fronts overlapping sideways.
    Faces {
        /// The seat it faces.
        seat: PieceId,
    },
    /// Beside a seat within arm's reach, on the seat's left (as one sits) or right.
    Beside {
        /// The seat.
        seat: PieceId,
        /// On the left, as one sits.
        left: bool,
    },
    /// Behind a seat, back to back with it, within its width.
    Behind {
        /// The seat.
        seat: PieceId,
    },
    /// Under the front of a seat and its table (rugs).
    Under {
        /// The seat.
        seat: PieceId,
    },
}
