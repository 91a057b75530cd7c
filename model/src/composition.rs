//! The terms of composition: what makes a plan that keeps every rule a good one.

use serde::{Deserialize, Serialize};
use strum::{IntoStaticStr, VariantArray};

/// One term of a plan. The order is the order in which equals are told.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, IntoStaticStr, VariantArray,
)]
#[serde(rename_all = "snake_case")]
#[strum(serialize_all = "snake_case")]
pub enum Term {
    /// The screen stands off the main seat's axis.
    ScreenAside,
    /// The screen stands beside a fire that the main seat faces.
    ScreenByFocus,
    /// The coffee table stands off the axis of its seat.
    TableAside,
    /// The rug lies off that axis.
    RugAside,
    /// A liked window, or the fire, that the main seat faces lies off its axis.
    FocusAside,
    /// A fire that much is wished of lies off it.
    FireAside,
    /// The main seat is far from a fire that much is wished of.
    FireFar,
    /// A fire beside seats that face each other is not amid the floor between them.
    FocusAmid,
    /// The same of a fire that is wished for.
    FireAmid,
    /// A seat opposite stands off the axis.
    OppositeAside,
    /// Seats left and right are not mirrored, or two on one side are out of line.
    Mirrored,
    /// The middle of a pair lies off the axis, or off the table's middle.
    PairAside,
    /// The coffee table is over two thirds of its sofa.
    TableWide,
    /// A seat at one side stands away from the table's middle.
    SideAlong,
    /// A chair that is turned looks past the table's middle.
    LooksPast,
    /// A chair stands turned where it could stand square.
    Turned,
    /// A second seat is far from the table.
    ToTable,
    /// Something high stands in the view of the screen, or close to it.
    Beam,
    /// The screen lies more aside than ahead.
    ScreenBeside,
    /// Fronts that face each other are far apart.
    FrontsApart,
    /// A screen beside a corner sofa stands off the middle of the return that faces it.
    ReturnAside,
    /// The screen is further off than it is easily seen.
    ScreenFar,
    /// The screen stands before a window.
    BeforeWindow,
    /// The screen stands or hangs over a radiator.
    OverHeater,
    /// A second seat is parted from the main one by a step in the floor.
    BeyondStep,
    /// A media unit stands off the middle of the screen that hangs, or at another wall.
    UnderScreen,
    /// A piece is not drawn up to its wall.
    OffWall,
    /// A piece is off the middle of its stretch of wall.
    OffMiddle,
    /// The screen of a group that stands free is off the middle of its stretch of wall, and the group with it.
    ScreenOffMiddle,
    /// The rug hardly reaches under the main seat.
    RugUnderMain,
    /// The rug ends under the coffee table, or just past it.
    RugPastTable,
    /// The rug hardly reaches under another seat.
    RugUnderSecond,
    /// The rug is hardly longer than the sofa.
    RugShort,
    /// The rug is larger than its least.
    RugLarge,
    /// The rug lies in the way of a door's leaf.
    RugInSwing,
    /// Something that is none of its group stands on the rug, or half on it.
    RugUnderOther,
    /// A lamp or side table stands away from the end of its seat.
    AtEnd,
    /// It stands before or behind where a hand finds it.
    AlongEnd,
    /// Two of a kind stand at one end.
    TwoAtEnd,
    /// A side table stands at another seat than the main one.
    BySecondSeat,
    /// Tall storage stands close beside a seat.
    BesideStorage,
    /// A dining table stands close to a seat.
    DiningBySeat,
    /// Floor behind a main seat that stands free.
    FloorBehind,
    /// Floor behind a main seat that gathers with others about a fire at its side.
    FloorBehindFireside,
    /// Floor between a main seat that stands free and the end of the room where one dines.
    FloorToDining,
    /// A second seat stands before the fire with its back to it.
    BackToFire,
    /// The same where much is wished of the fire.
    BackToWishedFire,
    /// A dining table stands where seats would gather about the fire.
    DiningAtFire,
    /// Floor behind a return that stands free.
    ReturnBehind,
    /// The main seat has a liked view at its back, and none before or beside it.
    BackToView,
    /// The main seat has its back to the widest liked view, of which much is wished.
    BackToWishedView,
    /// A return of it has a liked view at its back.
    ReturnBackToView,
    /// Storage stands far from the group.
    StorageFar,
    /// Storage stands at another wall than the screen.
    StorageApart,
    /// Floor that is to stay open lies where people work or walk up to what they use.
    OpenFloorInUse,
    /// A seat is turned away from the group.
    TurnedAway,
    /// Two seats of a group of its own stand far apart.
    GroupWide,
    /// A seat of such a group, or a desk, stands far from every window.
    FarFromWindow,
    /// A second seat, or one of such a group, stands in the straight way from door to door.
    InWay,
    /// A seat stands close before a doorway with its back to it.
    AcrossOpening,
    /// Storage stands where the open leaf of a door hides it.
    BehindLeaf,
    /// The main seat stands close to where the leaf of a door sweeps.
    ByDoor,
    /// A second seat does.
    SecondByDoor,
    /// A main way cuts between a seat and its table, the main seat and the screen, or two seats that face.
    WayAcross,
    /// A lamp or side table stands close to a main way.
    SmallByWay,
    /// Floor that one could stand on, and cannot walk to.
    CutOff,
}

impl Term {
    /// Every term, in the order they are told.
    pub const ALL: &[Self] = Self::VARIANTS;

    /// The term as results write it: `screen_aside`.
    #[must_use]
    pub fn key(self) -> &'static str {
        self.into()
    }
}

/// What a term costs, in millimetres of shortfall of a piece that counts 3.
#[derive(Debug, Clone, Copy, PartialEq, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Price {
    /// A millimetre beyond `free`.
    pub cost: f64,
    /// What is free, mm.
    pub free: f64,
    /// A millimetre beyond `far`, where that is more.
    pub steep: Option<f64>,
    /// From here on `steep` counts, mm.
    pub far: f64,
    /// What it costs once.
    pub flat: f64,
}
