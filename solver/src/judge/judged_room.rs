//! What is said of a room as it stands.

use elbowroom_model::{Brief, PieceId};

use crate::answer::{Gap, TurningCircle};
use crate::arrangement::Choices;
use crate::composition::TermCost;
use crate::criteria::Judgement;
use crate::layout::Layout;
use crate::routes::Route;
use crate::verify::Breach;

/// A room as it stands, judged.
#[derive(Debug, Clone, PartialEq)]
pub struct JudgedRoom {
    /// The brief as it was judged, which all ids are places in: nothing taken off for what a measurement may be off.
    pub brief: Brief,
    /// The seat that the room is read from.
    pub main_seat: PieceId,
    /// The decisions that would make this room.
    pub choices: Choices,
    /// Where everything stands.
    pub layout: Layout,
    /// Every rule that does not hold, with what is missing.
    pub broken: Vec<Breach>,
    /// The criteria's scores by the wishes, 0 to 100.
    pub score: f64,
    /// What each criterion that applies says of it.
    pub judgements: Vec<Judgement>,
    /// Clear distances that a rule asks for.
    pub gaps: Vec<Gap>,
    /// Routes from every entrance.
    pub routes: Vec<Route>,
    /// What it costs by the terms of composition, what costs most first.
    pub composition: Vec<TermCost>,
    /// Where a wheelchair can turn; `None` where no rule asks for it, or there is no place.
    pub turning_circle: Option<TurningCircle>,
}
