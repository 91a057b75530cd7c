//! What comes out: ranked options, what was refused, what would help. Fields are in the order of the result format.
//!
//! Lengths mm, angles degrees counter-clockwise from +x, areas m2, plan coordinates.

mod view;

use elbowroom_model::{Clearance, Point, Rule};
use serde::Serialize;

pub use crate::answer::Work;
use crate::layout::Size;

/// The whole result of one room.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Outcome {
    /// Name and version of the format.
    pub format: &'static str,
    /// The room as closed.
    pub room: RoomFound,
    /// The clearances in force.
    pub rules: RulesInForce,
    /// Every option that fits, best first.
    pub options: Vec<OptionFound>,
    /// Arrangements that do not fit.
    pub refused: Vec<Refused>,
    /// What would help, where nothing fits.
    pub remedies: Vec<Remedy>,
    /// Cautions, assumptions, what was left out.
    pub notices: Vec<String>,
    /// What it took.
    pub work: Work,
}

impl Outcome {
    /// How many arrangements were not decided within the work allowed: nobody knows whether they fit.
    #[must_use]
    pub fn undecided(&self) -> usize {
        self.refused.iter().filter(|refused| refused.rule == elbowroom_model::Rule::Work).count()
    }
}

/// The format that [`Outcome`] is written in.
pub const FORMAT: &str = "elbowroom-result/1";

/// The room as closed.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RoomFound {
    /// Its name.
    pub name: String,
    /// Clockwise, walls as measured.
    pub outline: Vec<Point>,
    /// m2.
    pub area: f64,
    /// How far the survey failed to close; `None` where walls give coordinates or diagonals were fitted.
    pub misclosure: Option<MisclosureFound>,
}

/// How far the survey failed to close.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct MisclosureFound {
    /// End minus start, mm.
    pub vector: Point,
    /// It was spread over the walls.
    pub spread: bool,
}

/// The clearances in force: profile, then every rule by its key.
#[derive(Debug, Clone, PartialEq)]
pub struct RulesInForce {
    /// Name of the profile they start from.
    pub profile: String,
    /// Each rule with its figure, mm; `None` where it is not in force.
    pub figures: Vec<(Clearance, Option<f64>)>,
}

impl Serialize for RulesInForce {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeMap;
        let mut map = serializer.serialize_map(Some(self.figures.len() + 1))?;
        map.serialize_entry("profile", &self.profile)?;
        for (rule, figure) in &self.figures {
            map.serialize_entry(rule.key(), figure)?;
        }
        map.end()
    }
}

/// An option that fits.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct OptionFound {
    /// From 1.
    pub rank: usize,
    /// Stable name of the arrangement.
    pub key: String,
    /// The arrangement in words.
    pub title: String,
    /// The decisions.
    pub choices: ChoicesFound,
    /// 0 to 100.
    pub score: f64,
    /// Share of the ways to weigh it that put it first.
    pub first_place_share: f64,
    /// An option at least as good in every criterion and better in one.
    pub dominated_by: Option<String>,
    /// No weighting puts it strictly first.
    pub never_first: bool,
    /// Its place by size, from 1: what settles ties of scores.
    pub by_size: usize,
    /// The least change of one wish that puts another in its place.
    pub turns_if: Option<TurnsIf>,
    /// Each criterion that applies.
    pub criteria: Vec<CriterionFound>,
    /// Pieces as they stand.
    pub pieces: Vec<PieceFound>,
    /// Pieces that found no room.
    pub left_out: Vec<LeftOut>,
    /// Clear distances that a rule asks for.
    pub gaps: Vec<GapFound>,
    /// Routes from every entrance.
    pub routes: Vec<RouteFound>,
    /// Where a wheelchair can turn; `None` where no rule asks for it.
    pub turning_circle: Option<TurningCircleFound>,
    /// Value of the sizes laid out.
    pub size_value: f64,
    /// Size value less the small terms that settle ties.
    pub objective: f64,
    /// No layout of the arrangement has more.
    pub bound: f64,
    /// The bound lies within a thousandth of the objective and every alternative was covered.
    pub proven: bool,
}

/// The decisions of an option.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ChoicesFound {
    /// Wall behind the main seat; `None`: free-standing.
    pub seat_back: Option<String>,
    /// Degrees.
    pub facing: f64,
    /// `left` or `right`; `None` where the main seat is no corner sofa.
    pub hand: Option<String>,
    /// Wall of the media unit; `None` without one.
    pub media_wall: Option<String>,
    /// Second seats and where they stand: `opposite`, `left`, `right`.
    pub second_seats: Vec<SecondSeatFound>,
}

/// Where a second seat stands.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SecondSeatFound {
    /// Its name.
    pub name: String,
    /// `opposite`, `left` or `right` of the main seat, as one sits.
    pub place: String,
}

/// What would turn the order.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct TurnsIf {
    /// The wish to change.
    pub criterion: elbowroom_model::Criterion,
    /// To this, 0 to 5.
    pub weight: f64,
    /// Key of the option that then stands first.
    pub then_first: String,
}

/// One criterion of an option.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct CriterionFound {
    /// Which.
    pub name: elbowroom_model::Criterion,
    /// 0 to 100.
    pub score: f64,
    /// The wish, 0 to 5.
    pub weight: f64,
    /// A figure that a tape can check.
    pub figure: f64,
    /// Unit of the figure: `deg`, `mm`, `percent`, `count`.
    pub unit: &'static str,
    /// A sentence made from the figure.
    pub reason: String,
    /// Where the yardstick comes from.
    pub basis: String,
}

/// A piece as it stands.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PieceFound {
    /// Its name.
    pub name: String,
    /// Its kind.
    pub kind: elbowroom_model::PieceKind,
    /// The wall it stands at; `None`: it stands free.
    pub at_wall: Option<String>,
    /// Convex, counter-clockwise.
    pub parts: Vec<Vec<Point>>,
    /// Degrees.
    pub facing: f64,
    /// mm.
    pub height: f64,
    /// As laid out.
    pub size: Size,
    /// What each dimension may be.
    pub range: RangeFound,
    /// What holds each dimension.
    pub held_by: Vec<HeldBy>,
}

/// The figures of each dimension.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct RangeFound {
    /// Along its back.
    pub width: DimensionFound,
    /// Of a corner sofa.
    #[serde(rename = "return")]
    pub return_length: Option<DimensionFound>,
    /// Away from its back.
    pub depth: DimensionFound,
}

/// The figures of one dimension, mm.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct DimensionFound {
    /// The least that still does its work.
    pub least: f64,
    /// As laid out.
    pub together: f64,
    /// The most it could be if every other piece gave way; `None` beyond the options shown.
    pub alone: Option<f64>,
    /// The most that is sold or asked for.
    pub most: f64,
}

/// What holds a dimension.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct HeldBy {
    /// Which dimension.
    pub dimension: elbowroom_model::Dimension,
    /// In the room's own words: `hall door swing`.
    pub by: String,
    /// The rule: `door_swing`, `room`, `most`, or a clearance.
    pub rule: Rule,
}

/// A piece that found no room.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct LeftOut {
    /// Its name.
    pub name: String,
    /// Why, one sentence.
    pub why: String,
}

/// A clear distance that a rule asks for.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct GapFound {
    /// Names of the two.
    pub between: [String; 2],
    /// As laid out, mm.
    pub clear: f64,
    /// By the rule, mm.
    pub needs: f64,
    /// The rule.
    pub rule: Clearance,
}

/// A route as told.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RouteFound {
    /// Name of the entrance.
    pub from: String,
    /// Name of the item or piece.
    pub to: String,
    /// Width of the widest disc that can travel it, mm.
    pub width: f64,
    /// What it must have, mm.
    pub needs: f64,
    /// Where it is narrowest; `None` where nothing but its own mouths limits it.
    pub pinch: Option<PinchFound>,
    /// Shortest walk, mm.
    pub length: Option<f64>,
}

/// Where a route is narrowest.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PinchFound {
    /// Names of what stands on either side.
    pub between: [String; 2],
    /// Nearest places on the two.
    pub at: [Point; 2],
}

/// A free circle to turn a wheelchair in, which an entrance leads to.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct TurningCircleFound {
    /// Its middle.
    pub centre: Point,
    /// What the rule asks for, mm.
    pub diameter: f64,
}

/// An arrangement that does not fit.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Refused {
    /// Stable name of the arrangement.
    pub key: String,
    /// One sentence.
    pub why: String,
    /// The rule that fails.
    pub rule: Rule,
    /// mm; `None` where it is no one length.
    pub short_by: Option<f64>,
}

/// The least change that helps, where nothing fits.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Remedy {
    /// One sentence.
    pub sentence: String,
    /// One change, or the least pair.
    pub changes: Vec<Change>,
}

/// One change.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Change {
    /// `piece.dimension`, a piece (left out), a clearance's key, or a wall.
    pub what: String,
    /// The new figure, mm; `None`: left out.
    pub to: Option<f64>,
    /// How much that is, mm; `None`: left out.
    pub by: Option<f64>,
}
