//! A piece by itself, as who sits on it sees it: its back at the foot, so that left is left; with lines that measure it.

use elbowroom_model::{Dimension, Hand, PieceId, Point};
use elbowroom_solver::plan::{Plan, Seat};
use elbowroom_solver::{Placed, Size};

use super::figure::Figure;
use super::frame::Frame;
use super::shown::PieceShown;
use super::{Purpose, Shown, furniture, gaps};
use crate::drawing::{Area, At, Mark, Paper, Scale, Sheet, Side, Text, Tone, Weight, width_of};
use crate::words::card as words;

/// Type of measures, mm.
const TYPE: f64 = 2.7;
/// From the piece to a line that measures it, and from there to its words, mm of paper.
const OFF: f64 = 3.0;
/// A piece is drawn no wider and no higher than this, mm of paper.
const MOST: (f64, f64) = (42.0, 36.0);

/// The one scale at which every piece of an option has room.
pub(crate) fn piece_scale(shown: Shown<'_>, pieces: &[PieceId]) -> Scale {
    let all = shown.pieces();
    let sizes = all.iter().filter(|one| pieces.contains(&one.placed.piece)).map(|one| one.placed.size);
    let reduced = sizes.map(|size| {
        let ahead =
            [Some(size.depth), size.return_length, size.second_return].into_iter().flatten().fold(0.0, f64::max);
        (size.width / MOST.0).max(ahead / MOST.1)
    });
    // Rooms are some metres wide: far below what a cast would cut.
    Scale(reduced.fold(1.0, f64::max).ceil() as u32)
}

/// The piece on a sheet of its own size, each size as `told` has it; `None` where it does not stand.
pub(crate) fn piece(
    shown: Shown<'_>,
    piece: PieceId,
    scale: Scale,
    told: impl Fn(Dimension, f64) -> String,
) -> Option<Sheet> {
    let found = shown.pieces().into_iter().find(|one| one.placed.piece == piece)?;
    let (placed, plan) = (turned(found.placed), turned_plan(shown.plan(), found.placed));
    let one = PieceShown { placed: &placed, ..found };
    let measures = measures(&placed);
    let said = |it: &Measure| words::measure(it.dimension, &told(it.dimension, it.length));
    let words: Vec<String> = measures.iter().map(said).collect();
    let wide = |side: Beside| {
        let of_side = measures.iter().zip(&words).filter(|(it, _)| it.side == side);
        of_side.map(|(_, text)| width_of(text, TYPE, Weight::Book) + 2.0 * OFF + 0.5).fold(1.0, f64::max)
    };
    let body = Area::of(one.parts().iter().flatten().map(|at| At::new(scale.on_paper(at.x), -scale.on_paper(at.y))));
    let [left, right] = [Beside::Left, Beside::Right].map(wide);
    let above = if measures.iter().any(|it| it.side == Beside::Above) { 2.0 * OFF + TYPE } else { 1.0 };
    let below = 2.0 * OFF + TYPE;
    // Words below or above a narrow piece stand out over its sides.
    let out = (wide(Beside::Below).max(wide(Beside::Above)) - body.width) / 2.0;
    let [left, right] = [left, right].map(|beside| beside.max(out));
    let paper = Paper { width: left + body.width + right, height: above + body.height + below };
    let origin = At::new(left, above) - body.at;
    let mut figure = Figure::new(shown, Purpose::Client, plan, Frame::about(scale, origin), paper.within(0.0));
    furniture::one(&mut figure, one);
    for (it, text) in measures.iter().zip(&words) {
        measure(&mut figure, it, text);
    }
    let description = words.join(", ");
    Some(Sheet {
        paper,
        title: words::outline(&found.piece.name, placed.hand),
        description,
        marks: figure.finished().marks,
    })
}

/// The piece with its back on the x axis, its front up.
fn turned(placed: &Placed) -> Placed {
    Placed { anchor: Point::default(), facing: Point::new(0.0, 1.0), ..placed.clone() }
}

/// Where people sit, seen so.
fn turned_plan(plan: Plan, placed: &Placed) -> Plan {
    let (facing, left) = (placed.facing, placed.left());
    let way = |way: Point| Point::new(-way.dot(left), way.dot(facing));
    let seats = plan.seats.iter().map(|seat| Seat { at: way(seat.at - placed.anchor), facing: way(seat.facing) });
    Plan { seats: seats.collect(), chairs: Vec::new(), ..plan }
}

/// On which side of the piece a measure stands.
#[derive(Clone, Copy, PartialEq)]
enum Beside {
    Left,
    Right,
    Above,
    Below,
}

/// What is measured, and between which places, which lie on that side.
struct Measure {
    dimension: Dimension,
    length: f64,
    side: Beside,
    ends: [Point; 2],
}

fn measures(placed: &Placed) -> Vec<Measure> {
    let Size { width, return_length, second_return, depth, return_depth } = placed.size;
    let (from, to) = match placed.hand {
        None => (-width / 2.0, width / 2.0),
        Some(Hand::Left) => (0.0, width),
        Some(Hand::Right) => (-width, 0.0),
    };
    let of_hand = |by_left: Beside, by_right: Beside| if placed.hand == Some(Hand::Right) { by_right } else { by_left };
    let upright = |dimension: Dimension, length: f64, side: Beside| {
        let x = if side == Beside::Left { from } else { to };
        Measure { dimension, length, side, ends: [Point::new(x, 0.0), Point::new(x, length)] }
    };
    let level = |dimension: Dimension, [one, other]: [f64; 2], ahead: f64, side: Beside| {
        let ends = [Point::new(one, ahead), Point::new(other, ahead)];
        Measure { dimension, length: other - one, side, ends }
    };
    let mut all = vec![level(Dimension::Width, [from, to], 0.0, Beside::Below)];
    if let Some(length) = return_length {
        all.push(upright(Dimension::Return, length, of_hand(Beside::Left, Beside::Right)));
        if let Some(deep) = return_depth {
            let ends = of_hand(Beside::Left, Beside::Right);
            let across = if ends == Beside::Left { [from, from + deep] } else { [to - deep, to] };
            all.push(level(Dimension::ReturnDepth, across, length, Beside::Above));
        }
    }
    match second_return {
        Some(length) => {
            all.push(upright(Dimension::SecondReturn, length, of_hand(Beside::Right, Beside::Left)));
            // In the bay, where there is nothing beside it.
            let x = (from + to) / 2.0;
            let ends = [Point::new(x, 0.0), Point::new(x, depth)];
            all.push(Measure { dimension: Dimension::Depth, length: depth, side: Beside::Above, ends });
        }
        None => all.push(upright(Dimension::Depth, depth, of_hand(Beside::Right, Beside::Left))),
    }
    all
}

/// A line beside the piece with its words.
fn measure(figure: &mut Figure<'_>, it: &Measure, text: &str) {
    let ends = it.ends.map(|end| figure.frame.at(end));
    let is_upright = (ends[0].x - ends[1].x).abs() < 0.01;
    let foot = TYPE * 0.36;
    let (out, words) = match it.side {
        // The depth of a main run between two returns: over its front.
        Beside::Above if is_upright => (At::default(), ends[1] + At::new(0.0, -OFF * 0.6)),
        Beside::Left => (At::new(-OFF, 0.0), ends[0].middle(ends[1]) + At::new(-1.6 * OFF, foot)),
        Beside::Right => (At::new(OFF, 0.0), ends[0].middle(ends[1]) + At::new(1.6 * OFF, foot)),
        Beside::Above => (At::new(0.0, -OFF), ends[0].middle(ends[1]) + At::new(0.0, -1.5 * OFF)),
        Beside::Below => (At::new(0.0, OFF), ends[0].middle(ends[1]) + At::new(0.0, 1.5 * OFF + TYPE * 0.8)),
    };
    gaps::measure_line(figure, ends.map(|end| end + out), Tone::Grey);
    let wide = width_of(text, TYPE, Weight::Book);
    let lettered = Text::new(words, TYPE, text);
    let lettered = match it.side {
        Beside::Left => Text { at: words - At::new(wide, 0.0), side: Side::Start, ..lettered },
        Beside::Right => lettered,
        Beside::Above | Beside::Below => lettered.centred(),
    };
    figure.put(Mark::from(lettered));
}
