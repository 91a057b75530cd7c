//! Screen: how far and how far off its axis the seats are, and what light falls on it.

use elbowroom_model::article::{capital, the};
use elbowroom_model::piece::{screen_height, screen_width};
use elbowroom_model::{Brief, Criterion, ItemKind, Piece, PieceKind, Point, WallItem};

use super::Judgement;
use super::curve::{mean, through};
use super::seat_places::{SITTING_EYE, SeatPlace, middle_eye};
use super::setting::{Setting, windows};
use super::sight::angle_between;
use super::sun::low_sun_through;
use crate::layout::Placed;

const BASIS: &str = "SMPTE EG 18: the screen fills 30 degrees from the farthest seat (published, second-hand); ITU-R BT.1127 and \
                     BT.500: 1.5 to 3 picture heights (published, from memory); screens square to windows (published, workplace \
                     guides)";

/// The angle that a screen should fill from the farthest seat, degrees: SMPTE EG 18 (published, second-hand).
const FARTHEST: f64 = 30.0;

/// Nearest seat in picture heights for pictures of high definition (BBC R&D, ITU-R BT.1127; published).
pub const HIGH_DEFINITION: f64 = 3.0;

/// The same for ultra-high definition (same source).
pub const ULTRA_HIGH_DEFINITION: f64 = 1.5;

/// Angle off the axis of the screen, degrees, to score: 30 is the limit of ITU-R BT.500 (from memory), the rest ours.
const OFF_AXIS: [(f64, f64); 4] = [(0.0, 100.0), (30.0, 100.0), (60.0, 40.0), (90.0, 0.0)];

/// How far a sitter turns to the screen, degrees, to score (common practice, no source).
const TURN: [(f64, f64); 4] = [(0.0, 100.0), (30.0, 100.0), (90.0, 30.0), (180.0, 0.0)];

/// What the parts count (ours, no source).
const DISTANCE: f64 = 0.35;
const AXIS: f64 = 0.2;
const TURNED: f64 = 0.2;
const LIGHT: f64 = 0.25;

/// What a screen over a fire takes off, and each degree that its middle lies higher than an easy lift of the eyes.
const OVER_FIRE: f64 = 40.0;
const EASY_LIFT: f64 = 15.0;

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

pub(super) fn judge(setting: &Setting) -> Option<Judgement> {
    let watched = Watched::of(setting)?;
    let (piece, placed) = setting.main_seat()?;
    let places = || setting.places.iter().map(|place| watched.from(place));
    let seen = mean(places().map(|seat| watched.score_of(&seat)))?;
    let light = Light::of(setting, &watched);
    let over_fire = over_fire(setting, &watched);
    let distance = (watched.middle - middle_eye(placed)).norm();
    let lift = through(&[(0.0, 0.0), (30.0, 30.0)], watched.lift(distance) - EASY_LIFT);
    let score = (seen + LIGHT * light.score() - OVER_FIRE * over_fire - lift).max(0.0);

    let worst = places().map(|seat| seat.off_axis).fold(0.0, f64::max);
    let mut reason = watched.distance_reason(setting, &the(&piece.name), distance);
    reason += &format!(", and no seat place is more than {worst:.0} degrees off its axis");
    reason += &light.reason();
    if over_fire > 0.0 {
        reason += "; it hangs over the fire, where it is hot and high";
    } else if lift > 0.5 {
        reason += &format!("; its middle lies {:.0} degrees above the eyes", watched.lift(distance));
    }
    Some(Judgement::new(Criterion::Screen, score, (distance, "mm"), capital(&reason) + ".", BASIS))
}

pub(super) fn left_out(brief: &Brief) -> Option<String> {
    let none = !brief.pieces.iter().any(|piece| piece.kind.carries_screen());
    none.then(|| "Screen is left out: no media unit is asked for.".to_owned())
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
    fn of(setting: &Setting<'a>) -> Option<Self> {
        let (piece, placed) = setting.placed(PieceKind::carries_screen).next()?;
        let middle = placed.anchor + placed.facing * (placed.size.depth / 2.0);
        Some(Self { piece, placed, middle })
    }

    fn from(&self, place: &SeatPlace) -> Viewer {
        let way = self.middle - place.eye;
        let off_axis = angle_between(self.placed.facing, -way);
        Viewer { distance: way.norm(), off_axis, turn: angle_between(place.facing, way) }
    }

    /// All of a place's score but the light.
    fn score_of(&self, seat: &Viewer) -> f64 {
        let distance = self.piece.screen.map_or(100.0, |diagonal| through(&distances(diagonal), seat.distance));
        DISTANCE * distance + AXIS * through(&OFF_AXIS, seat.off_axis) + TURNED * through(&TURN, seat.turn)
    }

    /// How far the middle of the picture lies above the eyes, degrees.
    fn lift(&self, distance: f64) -> f64 {
        let middle = self.piece.height + self.piece.screen.map_or(0.0, screen_height) / 2.0;
        (middle - SITTING_EYE).atan2(distance).to_degrees()
    }

    fn distance_reason(&self, setting: &Setting, seat: &str, distance: f64) -> String {
        let is = format!("the middle of {seat} is {} from the screen", setting.words(distance));
        self.piece.screen.map_or(is.clone(), |diagonal| {
            let far = setting.words(distance_filling(FARTHEST, diagonal));
            let near = setting.words(ULTRA_HIGH_DEFINITION * screen_height(diagonal));
            format!("{is} ({near} is the nearest, it fills 30 degrees from {far})")
        })
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

/// The windows that the screen mirrors, and those that dazzle from behind it.
struct Light<'a> {
    mirrored: Glare<'a>,
    behind: Glare<'a>,
}

/// The plan angle of windows in a bad place, degrees, as it counts with the sun, and the worst window.
#[derive(Default)]
struct Glare<'a> {
    angle: f64,
    worst: Option<(&'a WallItem, f64)>,
}

/// Glare to score: a window's width of it is much (ours, no source).
const GLARE: [(f64, f64); 2] = [(0.0, 100.0), (45.0, 0.0)];

/// A window where no low sun comes in against one where it always does (ours, no source).
const SUNLESS: f64 = 0.6;
const SUNNY: f64 = 1.8;

impl<'a> Light<'a> {
    fn of(setting: &Setting<'a>, watched: &Watched) -> Self {
        let Some((_, seat)) = setting.main_seat() else {
            return Self { mirrored: Glare::default(), behind: Glare::default() };
        };
        let eye = middle_eye(seat);
        let mut light = Self { mirrored: Glare::default(), behind: Glare::default() };
        for (item, _) in windows(setting.brief()) {
            let Some((left, right)) = setting.brief().room.ends(item) else { continue };
            let sun =
                low_sun_through(setting.brief(), item.wall).map_or(1.0, |share| SUNLESS + (SUNNY - SUNLESS) * share);
            light.mirrored.add(item, sun * weighed_angle(watched.middle, watched.placed.facing, left, right, 60.0));
            light.behind.add(item, sun * weighed_angle(eye, watched.middle - eye, left, right, 40.0));
        }
        light
    }

    fn score(&self) -> f64 {
        through(&GLARE, self.mirrored.angle + self.behind.angle)
    }

    fn reason(&self) -> String {
        let glare = |glare: &Glare, what: &str| {
            glare.worst.filter(|(_, angle)| *angle > 2.0).map(|(item, _)| format!("; {} {what}", the(&item.name)))
        };
        let told: String =
            [glare(&self.mirrored, "faces it and is mirrored in it"), glare(&self.behind, "is behind it and dazzles")]
                .into_iter()
                .flatten()
                .collect();
        if told.is_empty() { "; no window faces it or is behind it".to_owned() } else { told }
    }
}

impl<'a> Glare<'a> {
    fn add(&mut self, item: &'a WallItem, angle: f64) {
        self.angle += angle;
        if angle > self.worst.map_or(0.0, |(_, worst)| worst) {
            self.worst = Some((item, angle));
        }
    }
}

/// Plan angle between two marks, degrees, each direction by how near it is to `ahead`: 1 there, falling evenly to 0 at
/// `edge` degrees aside.
fn weighed_angle(from: Point, ahead: Point, first: Point, second: Point, edge: f64) -> f64 {
    let signed = |mark: Point| {
        let way = mark - from;
        angle_between(ahead, way).copysign(ahead.cross(way))
    };
    let (a, b) = (signed(first), signed(second));
    let (low, high) = (a.min(b), a.max(b));
    if high - low > 180.0 {
        // The marks lie on either side of straight behind.
        return 0.0;
    }
    // Integral of the tent from 0 to x.
    let upto = |x: f64| {
        let x = x.clamp(-edge, edge);
        x - x * x.abs() / (2.0 * edge)
    };
    upto(high) - upto(low)
}

/// Share of the media unit's width that stands before a fireplace of its wall.
fn over_fire(setting: &Setting, watched: &Watched) -> f64 {
    let room = &setting.brief().room;
    let fires = room.items.iter().filter(|item| matches!(item.kind, ItemKind::Fireplace(_)));
    let shares = fires.filter(|item| watched.placed.at_wall == Some(item.wall)).filter_map(|item| {
        let (left, right) = room.ends(item)?;
        let along = room.wall(item.wall)?.along();
        let (middle, half) = (watched.placed.anchor.dot(along), watched.placed.size.width / 2.0);
        let common = right.dot(along).min(middle + half) - left.dot(along).max(middle - half);
        Some((common / (2.0 * half)).clamp(0.0, 1.0))
    });
    shares.fold(0.0, f64::max)
}
