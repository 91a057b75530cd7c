//! Ways: how easily one walks through the room, and whether the main routes leave the group in peace.

use elbowroom_model::article::{capital, the};
use elbowroom_model::{Brief, Clearance, Criterion, PieceId, PieceKind, Point};

use super::Judgement;
use super::curve::{mean, through, weighted_mean};
use super::setting::{Setting, entrances, middle_of_item};
use crate::best_by;
use crate::geometry::{Convex, Segment};
use crate::layout::Placed;
use crate::routes::{End, Route};

const BASIS: &str = "HUD Manual of Acceptable Practices 1973 and 2010 ADA Standards 403.5.1: 36 in for main traffic (published); \
                     routes behind a group rather than through it (common practice)";

/// Width over what is needed, to score (ours, no source): just enough is fair, half as much again is full.
const WIDTH: [(f64, f64); 3] = [(0.9, 0.0), (1.0, 60.0), (1.5, 100.0)];

/// The straight way over the walk, to score (ours, no source).
const STRAIGHT: [(f64, f64); 2] = [(0.4, 0.0), (1.0, 100.0)];

/// What a main route counts against a lesser one (ours, no source).
const MAIN: f64 = 2.0;

/// What width counts against length (ours, no source).
const OF_WIDTH: f64 = 0.6;

/// What a main route takes off that cuts through the group over this length or more, mm (ours, no source).
const CUT: f64 = 30.0;
const CUT_LENGTH: f64 = 1000.0;

pub(super) fn judge(setting: &Setting) -> Option<Judgement> {
    let walks: Vec<Walk> = setting.scene.routes.iter().map(|route| Walk::of(setting, route)).collect();
    let eases = walks.iter().map(|walk| (walk.ease(), if walk.is_main() { MAIN } else { 1.0 }));
    let score = weighted_mean(eases)? - CUT * mean(walks.iter().filter(|w| w.is_main()).map(Walk::cut)).unwrap_or(0.0);
    let tightest = best_by(&walks, |walk| -walk.room())?;
    let reason = capital(&reason(setting, &walks, tightest)) + ".";
    Some(Judgement::new(Criterion::Ways, score.max(0.0), (tightest.route.width, "mm"), reason, BASIS))
}

pub(super) fn left_out(brief: &Brief) -> Option<String> {
    let none = entrances(brief).next().is_none();
    none.then(|| "Ways is left out: with no entrance there is no route to judge.".to_owned())
}

fn reason(setting: &Setting, walks: &[Walk], tightest: &Walk) -> String {
    let brief = setting.brief();
    let route = tightest.route;
    let mut reason = format!(
        "the tightest way, {} to {}, is {} wide where {} is asked for",
        route.from.name(brief),
        route.to.name(brief),
        brief.units.words(route.width, elbowroom_model::Rounding::Down),
        setting.words(route.needs),
    );
    let main = walks.iter().filter(|walk| walk.is_main());
    let longest = best_by(main.clone(), |walk| -walk.straight);
    if let Some(walk) = longest.filter(|walk| walk.straight < 0.95) {
        let more = 100.0 * (1.0 / walk.straight - 1.0);
        reason += &format!("; {} is {more:.0} % longer than straight", walk.named(brief));
    }
    let cuts = main.clone().filter_map(|walk| Some((walk, walk.through.as_ref()?)));
    match best_by(cuts, |(_, through)| through.length) {
        Some((walk, through)) => reason + &format!("; {} cuts between {}", walk.named(brief), through.words(setting)),
        None => match main.clone().find(|walk| walk.behind) {
            Some(walk) => reason + &format!("; {} goes behind the group", walk.named(brief)),
            None if main.count() > 0 => reason + "; no main way cuts through the group",
            None => reason,
        },
    }
}

/// A route, judged.
struct Walk<'a> {
    route: &'a Route,
    /// The straight way over the walk, 0 to 1.
    straight: f64,
    through: Option<Through>,
    /// A main route that passes the back of the main seat.
    behind: bool,
}

/// What a route cuts through, and over what length, mm.
struct Through {
    seat: PieceId,
    other: PieceId,
    length: f64,
}

impl Through {
    fn words(&self, setting: &Setting) -> String {
        format!("{} and {}", the(setting.name(self.seat)), the(setting.name(self.other)))
    }
}

impl<'a> Walk<'a> {
    fn of(setting: &Setting, route: &'a Route) -> Self {
        let ends = end_of(setting, route.from).zip(end_of(setting, route.to));
        let direct = ends.map_or(0.0, |(from, to)| (to - from).norm());
        let straight = route.length.filter(|length| *length > 0.0).map_or(1.0, |length| (direct / length).min(1.0));
        let line = setting.line_of(route);
        let through = line.and_then(|line| cuts(setting, line));
        Self { route, straight, through, behind: line.is_some_and(|line| passes_behind(setting, line)) }
    }

    fn is_main(&self) -> bool {
        self.route.rule == Clearance::Walkway
    }

    /// Width over what is needed.
    fn room(&self) -> f64 {
        if self.route.needs > 0.0 { self.route.width / self.route.needs } else { f64::INFINITY }
    }

    fn ease(&self) -> f64 {
        OF_WIDTH * through(&WIDTH, self.room()) + (1.0 - OF_WIDTH) * through(&STRAIGHT, self.straight)
    }

    fn cut(&self) -> f64 {
        self.through.as_ref().map_or(0.0, |through| (through.length / CUT_LENGTH).min(1.0))
    }

    fn named(&self, brief: &Brief) -> String {
        format!("{} to {}", self.route.from.name(brief), self.route.to.name(brief))
    }
}

/// The middle of an end: of a doorway, or of the front of a piece.
fn end_of(setting: &Setting, end: End) -> Option<Point> {
    match end {
        End::Item(id) => middle_of_item(setting.brief(), id),
        End::Piece(piece) => {
            let (left, right) = setting.scene.layout.of(piece)?.front();
            Some((left + right) * 0.5)
        }
    }
}

/// What a main route cuts through: between the main seat and its table, or it and the screen.
fn cuts(setting: &Setting, line: &[Point]) -> Option<Through> {
    let (_, seat) = setting.main_seat()?;
    let others = setting.placed(PieceKind::stands_before_seat).chain(setting.placed(PieceKind::carries_screen));
    let cut = others.filter_map(|(_, other)| {
        let group = between(seat, other);
        let length: f64 = line.windows(2).map(|leg| Segment::new(leg[0], leg[1]).length_inside(&group)).sum();
        (length > 0.0).then_some(Through { seat: seat.piece, other: other.piece, length })
    });
    best_by(cut, |through| through.length)
}

/// Whether a line passes square behind the middle of the main seat's back.
fn passes_behind(setting: &Setting, line: &[Point]) -> bool {
    let Some((_, seat)) = setting.main_seat() else { return false };
    let from = seat.back_middle();
    line.windows(2).any(|leg| {
        let side = |point: Point| (point - from).dot(seat.left());
        let (first, last) = (side(leg[0]), side(leg[1]));
        let met = || leg[0] + (leg[1] - leg[0]) * (first / (first - last));
        first * last < 0.0 && (met() - from).dot(seat.facing) < 0.0
    })
}

/// What lies between the front of a seat and the side of another piece that is turned to it.
fn between(seat: &Placed, other: &Placed) -> Convex {
    let (left, right) = seat.front();
    let faces_it = other.facing.dot(seat.facing) < 0.0;
    let depth = if faces_it { other.size.depth } else { 0.0 };
    let middle = other.back_middle() + other.facing * depth;
    let half = other.left() * (other.size.width / 2.0);
    let (near, far) = if faces_it { (middle + half, middle - half) } else { (middle - half, middle + half) };
    Convex::counter_clockwise([left, right, near, far])
}
