//! Screen: how far the sitters turn their heads to it, what stands before it, how far and how far off its axis the seats are,
//! and what light falls on it.
//!
//! The turn of the head rests on NUREG-0700, the farthest seat on SMPTE EG 18, the nearest on ITU-R BT.1127, the angle off the
//! axis on ITU-R BT.500; a screen square to the windows on workplace guides.

use elbowroom_model::{Brief, ItemId, ItemKind, Piece, PieceId, Point, screen_height, screen_width};

use super::criteria_context::CriteriaContext;
use super::curve::Curve;
use super::glare::{Light, ScreenPlace};
use super::judged::{Absent, FigureUnit, Judged, Missing};
use super::obstacles::{SCREEN, Whose};
use super::on_wall::OnWall;
use super::seat_places::{SITTING_EYE, SeatPlace, middle_eye};
use super::sight::{Target, angle_between};
use super::tolerance::{IN_FRONT, SAME_ANGLE};
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

/// How far a sitter turns the head to the screen, degrees, to share: NUREG-0700 rev. 3, 11.3.1.2-2 (published; from
/// MIL-STD-1472G) prefers 15, allows 35, and 60 where the head may turn; 45 is easy (Architectural Institute of Japan,
/// handbook 3, 1980, second-hand). The shares are ours: full, good, half, nothing.
pub const HEAD_TURN: Curve = Curve(&[(0.0, 1.0), (15.0, 1.0), (35.0, 0.8), (45.0, 0.5), (60.0, 0.0)]);

/// What the parts count for one who sees the screen with ease (ours, no source).
const DISTANCE: f64 = 0.45;
const AXIS: f64 = 0.25;
const LIGHT: f64 = 0.3;

/// A place that sees less of the picture is worth saying, share (ours, no source).
const CLEAR: f64 = 0.95;

/// Height over width of a picture, where its size is not known: 16:9.
const PICTURE: f64 = 9.0 / 16.0;

/// What a screen over a fire takes off (ours, no source).
const OVER_FIRE: f64 = 40.0;

/// What is an easy lift of the eyes, or for what hangs an easy look down, degrees (ours, no source), and what each degree beyond it takes off: one, to a most.
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
    /// The one who turns it most turns it by this, degrees.
    pub largest_turn: f64,
    /// What the place that sees least of it has before it; `None` where all see it clear.
    pub hidden: Option<HiddenPicture>,
    /// The window that it mirrors most.
    pub mirrored: Option<ItemId>,
    /// The window behind it that dazzles most.
    pub dazzles: Option<ItemId>,
    /// How high it hangs.
    pub hung: Hung,
    /// Of a screen on a wall, where its middle hangs.
    pub on_wall: Option<HungMiddle>,
}

/// Where the middle of a screen on a wall hangs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HungMiddle {
    /// Above the floor, mm.
    pub height: f64,
    /// Above the eyes of one who sits, mm; below them where negative.
    pub over_eyes: f64,
}

impl ScreenFinding {
    /// Whether somebody has it within so many degrees of the way that the seat faces.
    pub(crate) fn seats_anyone_within(&self, degrees: f64) -> bool {
        self.least_turn <= degrees + SAME_ANGLE
    }
}

/// What a seat place does not see of a picture.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HiddenPicture {
    /// Share of it, 0 to 1.
    pub share: f64,
    /// What hides it; `None`: a wall.
    pub by: Option<Whose>,
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
    /// It hangs on a wall with its middle so many degrees below the eyes, more than one looks down with ease.
    Low(f64),
    /// Over the fire.
    OverFire,
}

/// The yardstick. Whoever turns the head far, or has something before the picture, has so much less of all the rest. Where no
/// media unit stands there is no screen to watch, and where no seat stands nobody watches it: either counts nothing.
pub(super) struct Screen;

impl Yardstick for Screen {
    /// The foremost media unit of the brief.
    type Subject<'a> = PieceId;
    type Finding = ScreenFinding;

    fn subject(brief: &Brief) -> Result<PieceId, Missing> {
        let unit = brief.pieces().find(|(_, piece)| brief.is_watched(piece));
        unit.map(|(id, _)| id).ok_or(Missing::MediaUnit)
    }

    fn judge<'a>(context: &CriteriaContext<'a>, unit: &PieceId) -> Judged<Self::Finding> {
        let Some(watched) = Watched::of(context) else {
            return Judged::absent(Absent::Screen(*unit));
        };
        let Some(group) = &context.group else { return Judged::absent(Absent::Seats) };
        let viewers = group.places.map(|place| watched.from(context, place));
        let light = Light::of(context, &watched.screen());
        let seen = viewers.mean(|viewer| watched.score_of(viewer, &light));
        let over_fire = over_fire(context, &watched);
        let distance = (watched.middle - middle_eye(group.main)).norm();
        let lift = watched.lift(distance);
        let strained = if watched.piece.kind.hangs() { lift.abs() } else { lift };
        let lifted = LIFTED.at(strained - EASY_LIFT);
        let score = (seen - OVER_FIRE * over_fire - lifted).max(0.0);
        let middle = watched.piece.hung_centre();
        let worst_seen = viewers.best_by(|viewer| viewer.hidden.share);
        let finding = ScreenFinding {
            seat: group.main.piece,
            distance,
            suits: watched.piece.screen.map(Suits::of),
            worst_off_axis: viewers.iter().map(|viewer| viewer.off_axis).fold(0.0, f64::max),
            least_turn: viewers.iter().map(|viewer| viewer.turn).fold(f64::INFINITY, f64::min),
            largest_turn: viewers.iter().map(|viewer| viewer.turn).fold(0.0, f64::max),
            hidden: Some(worst_seen.hidden).filter(|hidden| 1.0 - hidden.share < CLEAR),
            mirrored: light.mirrored.worth_saying(),
            dazzles: light.behind.worth_saying(),
            hung: if over_fire > 0.0 {
                Hung::OverFire
            } else if lifted > LIFT_WORTH_SAYING {
                if lift < 0.0 { Hung::Low(-lift) } else { Hung::High(lift) }
            } else {
                Hung::AtEase
            },
            on_wall: middle.map(|height| HungMiddle { height, over_eyes: height - SITTING_EYE }),
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
    hidden: HiddenPicture,
}

impl<'a> Watched<'a> {
    fn of(context: &CriteriaContext<'a>) -> Option<Self> {
        let (piece, placed) = context.watched().next()?;
        let middle = placed.anchor + placed.facing * (placed.size.depth / 2.0);
        Some(Self { piece, placed, middle })
    }

    const fn screen(&self) -> ScreenPlace {
        ScreenPlace { middle: self.middle, facing: self.placed.facing }
    }

    /// The picture, on the front of the screen.
    fn picture(&self) -> Target {
        let width = self.piece.screen.map_or(self.placed.size.width, screen_width);
        let height = self.piece.screen.map_or(PICTURE * width, screen_height);
        let middle = self.middle + self.placed.facing * (SCREEN / 2.0 + IN_FRONT);
        let aside = self.placed.left() * (width / 2.0);
        Target {
            left: middle - aside,
            right: middle + aside,
            foot: self.piece.height,
            head: self.piece.height + height,
        }
    }

    fn from(&self, context: &CriteriaContext, place: &SeatPlace) -> Viewer {
        let way = self.middle - place.eye;
        let seen = context.seen_from(place, &self.picture());
        Viewer {
            distance: way.norm(),
            off_axis: angle_between(self.placed.facing, -way),
            turn: angle_between(place.facing, way),
            hidden: HiddenPicture { share: (seen.before - seen.share).clamp(0.0, 1.0), by: seen.hidden_by },
        }
    }

    /// What a place has of the screen, 0 to 100.
    fn score_of(&self, viewer: &Viewer, light: &Light) -> f64 {
        let distance = self.piece.screen.map_or(100.0, |diagonal| Curve(&distances(diagonal)).at(viewer.distance));
        let picture = DISTANCE * distance + AXIS * OFF_AXIS.at(viewer.off_axis) + LIGHT * light.score();
        HEAD_TURN.at(viewer.turn) * (1.0 - viewer.hidden.share) * picture
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
    let shares = OnWall::all(context.brief()).filter(is_behind).filter_map(|fire| {
        let (left, right) = context.brief().room.mouth_ends(fire.item)?;
        let (middle, half) = (placed.anchor.dot(fire.along), placed.size.width / 2.0);
        let common = right.dot(fire.along).min(middle + half) - left.dot(fire.along).max(middle - half);
        Some((common / (2.0 * half)).clamp(0.0, 1.0))
    });
    shares.fold(0.0, f64::max)
}
