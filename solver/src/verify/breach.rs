//! A rule that does not hold.

use elbowroom_model::{Dimension, Rule};

use crate::answer::Thing;

/// A rule that a layout breaks: which, what is wrong, between what, by how much.
#[derive(Debug, Clone, PartialEq)]
pub struct Breach {
    /// The rule.
    pub rule: Rule,
    /// What is wrong.
    pub wrong: Wrong,
    /// What breaks it, and what it is broken against.
    pub between: Vec<Thing>,
    /// What is missing, mm.
    pub short_by: f64,
}

/// What is wrong with the first of the things, against the second where there is one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Wrong {
    /// It must stand, and does not.
    LeftOut,
    /// It has no such size.
    NoSize(Dimension),
    /// Its size is none that it may have.
    SizeOutOfRange(Dimension),
    /// Its size can be larger.
    CanGrow(Dimension),
    /// It reaches past a wall.
    PastWall,
    /// The two overlap.
    Overlap,
    /// It stands in what is kept free at the second.
    InZone,
    /// It must stand at a wall, and stands free.
    NoWall,
    /// Its back is at an angle to its wall.
    Askew,
    /// It stands too near to the second.
    TooNear,
    /// It stands too far off its wall.
    TooFarOff,
    /// It stands past the end of its wall.
    PastEnd,
    /// It is turned by none of the angles that it may be, or stands square where it should be turned.
    TurnedOtherwise,
    /// It is turned from the heart of its group.
    TurnedFrom,
    /// The two are of one row, and not turned as mirror images.
    TurnedUnlike,
    /// The fronts of the two are too near to each other.
    FrontsTooNear,
    /// It stands in what is kept clear before the second.
    BeforeFront,
    /// A wall stands in what is kept clear before it.
    WallBeforeFront,
    /// The table lies too near to the front of the seat.
    TableTooNear,
    /// The table lies beside the front of the seat.
    TableBeside,
    /// The table lies too near to the return of the seat.
    TableNearReturn,
    /// The table lies too far before the seat.
    TableTooFar,
    /// It stands between a seat and the table before it.
    BeforeTable,
    /// It does not face the second, with which it is paired.
    PairNotFacing,
    /// It does not stand at a right angle to the second, with which it is paired.
    PairNotSquare,
    /// It has too little room for legs before it, at the second.
    NoLegRoom,
    /// It looks at the second from too near.
    FrontClosed,
    /// Two seats leave no room for an arm between them.
    SeatsTouch,
    /// The table lies off the middle of the front that it serves.
    TableOffAxis,
    /// The screen stands off the axis of the seat that faces it.
    ScreenOffAxis,
    /// The screen makes a sitter turn the head too far.
    ScreenTurned,
    /// It stands between the seat and its screen.
    BeforeScreen,
    /// It has too little wall behind it.
    NoWallBehind,
    /// It stands too near before a doorway or an opening.
    BeforeOpening,
    /// A slot is left behind it.
    SlotBehind,
    /// It stands free with too little behind it, and no reason to.
    NoReasonBehind,
    /// The back of its return is too near to a wall.
    ReturnTooNear,
    /// It stands before the second where people use it.
    BeforeUsed,
    /// The table has fewer places than it is to seat.
    TooFewPlaces,
    /// A chair at the end of the table has too little room, up to the second.
    NoChairAtEnd,
    /// It stands at the second, which is kept free of its kind.
    AtKeptFree,
    /// It is higher than the ceiling is, that falls toward the second.
    UnderSlope,
    /// It stands too near to the seat of another group.
    GroupsTooNear,
    /// It stands away from its group.
    OutOfGroup,
    /// A step parts it from the second, with which it is to be on one level.
    OnOtherLevel,
    /// It stands elsewhere than the file holds it.
    NotInItsPlace,
    /// It is told to be eased, and is never.
    Eased,
    /// There is no circle to turn in.
    NoCircle,
    /// The circle to turn in is not free.
    CircleNotFree,
    /// The circle to turn in is not reached.
    CircleNotReached,
    /// No route is told from the first to the second.
    NoRoute,
    /// The route from the first to the second is too narrow.
    RouteTooNarrow,
    /// What is told to be needed of the route is not what is.
    RouteNeedsOther,
    /// The route is narrower than is told.
    RouteNarrower,
    /// The route is wider than is told.
    RouteWider,
}

impl Breach {
    pub(super) fn new(rule: impl Into<Rule>, wrong: Wrong, between: &[Thing], short_by: f64) -> Self {
        Self { rule: rule.into(), wrong, between: between.to_vec(), short_by }
    }
}
