//! Screen: how far and how far off its axis the seats are, and what light falls on it.
//!
//! The farthest seat rests on SMPTE EG 18, the nearest on ITU-R BT.1127, the angle off the axis on ITU-R BT.500; a screen square
//! to the windows on workplace guides.

use elbowroom_model::{Brief, ItemId, ItemKind, Piece, PieceId, PieceKind, Point, screen_height, screen_width};

use super::criteria_context::CriteriaContext;
use super::curve::Curve;
use super::glare::{Light, ScreenPlace};
use super::judged::{Absent, FigureUnit, Judged, Missing};
use super::on_wall::OnWall;
use super::seat_places::{SITTING_EYE, SeatPlace, middle_eye};
use super::sight::angle_between;
use super::tolerance::SAME_ANGLE;
use super::yardstick::Yardstick;
use crate::layout::Placed;

/// The angle that a screen should fill from the farthest seat, degrees: SMPTE EG 18 (published, second-hand).
const FARTHEST: f64 = 30.0;

/// Nearest seat in picture heights for pictures of high definition (BBC R&D, ITU-R BT.1127; published).
pub const HIGH_DEFINITION: f64 = 3.0;

/// The same for ultra-high definition (same source).
pub const ULTRA_HIGH_DEFINITION: f64 = 1.5;

/// Angle off the axis of the screen, degrees, to score: 30 is the limit of ITU-R BT.500 (from memory), the rest ours.
const OFF_AXIS: Curve = Curve(&[(0.0, 100.0), (30.0, 100.0), (60.0, 40.0), (90.0, 0.0)]);

/// How far a sitter turns to the screen, degrees, to score (common practice, no source).
const TURN: Curve = Curve(&[(0.0, 100.0), (30.0, 100.0), (90.0, 30.0), (180.0, 0.0)]);

/// What the parts count (ours, no source).
const DISTANCE: f64 = 0.35;
const AXIS: f64 = 0.2;
const TURNED: f64 = 0.2;
const LIGHT: f64 = 0.25;

/// What a screen over a fire takes off (ours, no source).
const OVER_FIRE: f64 = 40.0;

/// What is an easy lift of the eyes, degrees (ours, no source), and what each degree beyond it takes off: one, to a most.
const EASY_LIFT: f64 = 15.0;
const LIFTED: Curve = Curve(&[(0.0, 0.0), (30.0, 30.0)]);

/// A lift that takes off less is not worth saying (ours, no source).
const LIFT_WORTH_SAYING: f64 = 0.5;

/// Distance from which a 16:9 screen of this diagonal fills `degrees` of the plan, mm.
///
/// ```
/// use elbowroom_solver::criteria::screen::distance_filling;
/// assert!((distance_filling(30.0, 1000.0) - 1626.4).abs() < 0.1);
/// ```
#[must_use]
pub fn distance_filling(degrees: f64, diagonal: f64) -> f64 {
    screen_width(diagonal) / 2.0 / (degrees / 2.0).to_radians().tan()
}

/// What screen is made of.
#[derive(Debug, Clone, PartialEq)]
pub struct ScreenFinding {
    /// The seat from whose middle it is measured.
    pub seat: PieceId,
    /// From there to the middle of the media unit, mm.
    pub distance: f64,
    /// Distances that suit the screen; `None` where its size is not known.
    pub suits: Option<Suits>,
    /// The seat place farthest off its axis is off by this, degrees.
    pub worst_off_axis: f64,
    /// The sitter who turns the head to it least turns it by this, degrees.
    pub least_turn: f64,
    /// The window that it mirrors most.
    pub mirrored: Option<ItemId>,
    /// The window behind it that dazzles most.
    pub dazzles: Option<ItemId>,
    /// How high it hangs.
    pub hung: Hung,
}

impl ScreenFinding {
    /// Whether somebody has it within so many degrees of the way that the seat faces.
    pub(crate) fn seats_anyone_within(&self, degrees: f64) -> bool {
        self.least_turn <= degrees + SAME_ANGLE
    }
}

/// Distances that suit a screen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Suits {
    /// The nearest, mm.
    pub nearest: f64,
    /// From here it fills 30 degrees, mm.
    pub fills_thirty: f64,
}

/// How high a screen hangs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Hung {
    /// Where one sees it at ease.
    AtEase,
    /// Its middle lies so many degrees above the eyes, more than an easy lift.
    High(f64),
    /// Over the fire.
    OverFire,
}

/// The yardstick. Where no media unit stands there is no screen to watch, and where no seat stands nobody watches it:
/// either counts nothing.
pub(super) struct Screen;

impl Yardstick for Screen {
    /// The foremost media unit of the brief.
    type Subject<'a> = PieceId;
    type Finding = ScreenFinding;

    fn subject(brief: &Brief) -> Result<PieceId, Missing> {
        let unit = brief.pieces().find(|(_, piece)| piece.kind.carries_screen());
        unit.map(|(id, _)| id).ok_or(Missing::MediaUnit)
    }

    fn judge<'a>(context: &CriteriaContext<'a>, unit: &PieceId) -> Judged<Self::Finding> {
        let Some(watched) = Watched::of(context) else {
            return Judged::absent(Absent::Screen(*unit));
        };
        let Some(group) = &context.group else { return Judged::absent(Absent::Seats) };
        let viewers = group.places.map(|place| watched.from(place));
        let seen = viewers.mean(|viewer| watched.score_of(viewer));
        let light = Light::of(context, middle_eye(group.main), &watched.screen());
        let over_fire = over_fire(context, &watched);
        let distance = (watched.middle - middle_eye(group.main)).norm();
        let lift = watched.lift(distance);
        let lifted = LIFTED.at(lift - EASY_LIFT);
        let score = (seen + LIGHT * light.score() - OVER_FIRE * over_fire - lifted).max(0.0);
        let finding = ScreenFinding {
            seat: group.main.piece,
            distance,
            suits: watched.piece.screen.map(Suits::of),
            worst_off_axis: viewers.iter().map(|viewer| viewer.off_axis).fold(0.0, f64::max),
            least_turn: viewers.iter().map(|viewer| viewer.turn).fold(f64::INFINITY, f64::min),
            mirrored: light.mirrored.worth_saying(),
            dazzles: light.behind.worth_saying(),
            hung: if over_fire > 0.0 {
                Hung::OverFire
            } else if lifted > LIFT_WORTH_SAYING {
                Hung::High(lift)
            } else {
                Hung::AtEase
            },
        };
        Judged::new(score, distance, FigureUnit::Millimetres, finding)
    }
}

impl Suits {
    fn of(diagonal: f64) -> Self {
        Self {
            nearest: ULTRA_HIGH_DEFINITION * screen_height(diagonal),
            fills_thirty: distance_filling(FARTHEST, diagonal),
        }
    }
}

/// The screen, and where it stands.
struct Watched<'a> {
    piece: &'a Piece,
    placed: &'a Placed,
    middle: Point,
}

/// One place before it.
struct Viewer {
    distance: f64,
    /// Degrees off the axis of the screen.
    off_axis: f64,
    /// Degrees between the way the seat faces and the way to the screen.
    turn: f64,
}

impl<'a> Watched<'a> {
    fn of(context: &CriteriaContext<'a>) -> Option<Self> {
        let (piece, placed) = context.placed(PieceKind::carries_screen).next()?;
        let middle = placed.anchor + placed.facing * (placed.size.depth / 2.0);
        Some(Self { piece, placed, middle })
    }

    const fn screen(&self) -> ScreenPlace {
        ScreenPlace { middle: self.middle, facing: self.placed.facing }
    }

    fn from(&self, place: &SeatPlace) -> Viewer {
        let way = self.middle - place.eye;
        let off_axis = angle_between(self.placed.facing, -way);
        Viewer { distance: way.norm(), off_axis, turn: angle_between(place.facing, way) }
    }

    /// All of a place's score but the light.
    fn score_of(&self, viewer: &Viewer) -> f64 {
        let distance = self.piece.screen.map_or(100.0, |diagonal| Curve(&distances(diagonal)).at(viewer.distance));
        DISTANCE * distance + AXIS * OFF_AXIS.at(viewer.off_axis) + TURNED * TURN.at(viewer.turn)
    }

    /// How far the middle of the picture lies above the eyes, degrees.
    fn lift(&self, distance: f64) -> f64 {
        let middle = self.piece.height + self.piece.screen.map_or(0.0, screen_height) / 2.0;
        (middle - SITTING_EYE).atan2(distance).to_degrees()
    }
}

/// Distances to score: nothing nearer than half the least, full from 3 picture heights to where the screen fills 30
/// degrees, half where it fills 20.
fn distances(diagonal: f64) -> [(f64, f64); 6] {
    let height = screen_height(diagonal);
    [
        (ULTRA_HIGH_DEFINITION / 2.0 * height, 0.0),
        (ULTRA_HIGH_DEFINITION * height, 70.0),
        (HIGH_DEFINITION * height, 100.0),
        (distance_filling(FARTHEST, diagonal), 100.0),
        (distance_filling(20.0, diagonal), 50.0),
        (distance_filling(10.0, diagonal), 0.0),
    ]
}

/// Share of the media unit's width that stands before a fireplace of its wall.
fn over_fire(context: &CriteriaContext, watched: &Watched) -> f64 {
    let placed = watched.placed;
    let is_behind = |on_wall: &OnWall| {
        matches!(on_wall.item.kind, ItemKind::Fireplace(_)) && placed.at_wall == Some(on_wall.item.wall)
    };
    let shares = OnWall::all(context.brief()).filter(is_behind).map(|fire| {
        let (middle, half) = (placed.anchor.dot(fire.along), placed.size.width / 2.0);
        let common = fire.right.dot(fire.along).min(middle + half) - fire.left.dot(fire.along).max(middle - half);
        (common / (2.0 * half)).clamp(0.0, 1.0)
    });
    shares.fold(0.0, f64::max)
}
