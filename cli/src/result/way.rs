//! Whether each piece gets in, as JSON.

use elbowroom_model::way_in::{Way, WayFile};
use elbowroom_solver::way_in::{Failed, Legs, PartCarried, PieceIn, PoseTried, TakeOff, Tight, WayIn};
use serde::Serialize;

use crate::words::way as words;

/// Name and version of the format.
const FORMAT: &str = "elbowroom-way/1";

/// Whether each piece gets in.
#[derive(Debug, Serialize)]
pub(crate) struct WayResult<'a> {
    /// Name and version of the format.
    format: &'static str,
    /// What the house or the room is called.
    name: &'a str,
    /// What is passed, from the street on.
    points: Vec<PointResult<'a>>,
    /// The pieces.
    pieces: Vec<PieceResult<'a>>,
    /// What was assumed, what is not modelled, what to heed.
    notices: &'a [String],
}

/// A point of the way.
#[derive(Debug, Serialize)]
struct PointResult<'a> {
    /// Its name.
    name: &'a str,
    /// Its kind, as a file writes it.
    kind: &'static str,
}

/// Whether a piece gets in.
#[derive(Debug, Serialize)]
pub(crate) struct PieceResult<'a> {
    /// Its name.
    name: &'a str,
    /// Every part gets in.
    gets_in: bool,
    /// Each part; none: it comes rolled.
    parts: Vec<PartResult<'a>>,
    /// The most width, return (0 without one) and depth that get in together, mm.
    most: Option<[f64; 3]>,
    /// It has the one size that it has.
    fixed: bool,
    /// Legs that its list says come off, mm, where it gets in without them alone; its parts are told so.
    legs_off: Option<f64>,
    /// Whether it gets in hangs on a usual cross-section, since its list does not say: as a box it does not.
    by_usual_section: bool,
    /// Where it does not get in: what would have to come off, each by itself.
    would: Vec<TakeOffResult<'a>>,
}

/// What comes off, and how the piece gets in then.
#[derive(Debug, Serialize)]
struct TakeOffResult<'a> {
    /// Its legs.
    legs: Option<LegsResult>,
    /// Names of the doors whose leaf is lifted off its hinges.
    leaves: Vec<&'a str>,
    /// How much wider each of them is then, mm.
    wider: f64,
    /// Each part as it is carried then.
    parts: Vec<PartResult<'a>>,
}

/// Legs under a piece.
#[derive(Debug, Serialize)]
struct LegsResult {
    /// How high they are, or the least that would do, mm.
    height: f64,
    /// What is known of them: `come-off`; `listed`, and not whether they come off; `unknown`.
    known: &'static str,
}

/// Whether a part gets in.
#[derive(Debug, Serialize)]
struct PartResult<'a> {
    /// Its name.
    name: &'a str,
    /// Width, depth, height, mm.
    sides: [f64; 3],
    /// It gets in: in one of the poses, or turned over on the way.
    gets_in: bool,
    /// Each pose kept from the street to the room.
    poses: Vec<PoseResult<'a>>,
    /// How it is held at each point where it gets in.
    held: Vec<&'static str>,
    /// Where least is left when held so.
    tightest: Option<TightResult<'a>>,
    /// Where no pose that it can come in gets it further.
    fails: Option<FailedResult<'a>>,
}

/// A pose kept all the way.
#[derive(Debug, Serialize)]
struct PoseResult<'a> {
    /// The pose.
    pose: &'static str,
    /// Where it fails first.
    fails: Option<FailedResult<'a>>,
}

/// Where a piece fails.
#[derive(Debug, Serialize)]
struct FailedResult<'a> {
    /// Name of the point.
    at: &'a str,
    /// The pose that is nearest to passing.
    pose: &'static str,
    /// What it does not meet.
    asks: &'static str,
    /// mm; `None`: it cannot be brought into the pose.
    short_by: Option<f64>,
}

/// Where least is left.
#[derive(Debug, Serialize)]
struct TightResult<'a> {
    /// Name of the point.
    at: &'a str,
    /// What leaves least.
    asks: &'static str,
    /// mm.
    spare: f64,
}

impl<'a> WayResult<'a> {
    /// The result of `found` with what is to be told beside it.
    pub(crate) fn of(file: &'a WayFile, found: &'a WayIn, notices: &'a [String]) -> Self {
        let points = file.way.points.iter().map(|point| PointResult { name: &point.name, kind: point.kind.key() });
        let pieces = found.pieces.iter().map(|piece| PieceResult::of(&file.way, piece));
        Self { format: FORMAT, name: &file.name, points: points.collect(), pieces: pieces.collect(), notices }
    }
}

impl<'a> PieceResult<'a> {
    /// How one piece comes in by `way`.
    pub(crate) fn of(
        way: &'a Way,
        PieceIn { carried, most, fixed, legs_off, would, by_usual_section, .. }: &'a PieceIn,
    ) -> Self {
        let parts = carried.parts.iter().map(|part| PartResult::of(way, part)).collect();
        let would = would.iter().map(|off| TakeOffResult::of(way, off)).collect();
        let (name, gets_in) = (carried.name.as_str(), carried.gets_in);
        let (fixed, legs_off, by_usual_section) = (*fixed, *legs_off, *by_usual_section);
        Self { name, gets_in, parts, most: *most, fixed, legs_off, by_usual_section, would }
    }
}

impl<'a> TakeOffResult<'a> {
    fn of(way: &'a Way, TakeOff { legs, leaves, wider, carried }: &'a TakeOff) -> Self {
        let parts = carried.parts.iter().map(|part| PartResult::of(way, part)).collect();
        let leaves = leaves.iter().map(|at| words::at(way, *at)).collect();
        Self { legs: legs.map(LegsResult::of), leaves, wider: *wider, parts }
    }
}

impl LegsResult {
    const fn of(legs: Legs) -> Self {
        let (height, known) = match legs {
            Legs::ComeOff(height) => (height, "come-off"),
            Legs::Listed(height) => (height, "listed"),
            Legs::UpTo(height) => (height, "unknown"),
        };
        Self { height, known }
    }
}

impl<'a> PartResult<'a> {
    fn of(way: &'a Way, part: &'a PartCarried) -> Self {
        let pose = |PoseTried { pose, fails }: &PoseTried| PoseResult {
            pose: pose.key(),
            fails: fails.map(|fails| FailedResult::of(way, fails)),
        };
        Self {
            name: &part.name,
            sides: part.sides,
            gets_in: part.gets_in,
            poses: part.poses.iter().map(pose).collect(),
            held: part.held.iter().map(|pose| pose.key()).collect(),
            tightest: part.tightest.map(|Tight { at, asks, spare }| TightResult {
                at: words::at(way, at),
                asks: asks.key(),
                spare,
            }),
            fails: part.fails.map(|fails| FailedResult::of(way, fails)),
        }
    }
}

impl<'a> FailedResult<'a> {
    fn of(way: &'a Way, Failed { at, pose, asks, short_by }: Failed) -> Self {
        Self { at: words::at(way, at), pose: pose.key(), asks: asks.key(), short_by }
    }
}
