//! The pieces, each by its outline, with its name and its size.

use elbowroom_model::Drawn;
use elbowroom_model::{Hand, Point, Rounding};
use elbowroom_solver::Size;
use elbowroom_solver::geometry::joined;

use super::figure::Figure;
use super::frame::way;
use super::shown::PieceShown;
use super::{Shown, signs};
use crate::drawing::{Area, At, Dash, Fill, Label, Mark, Path, Pen, Tone, Weight, clipped};
use crate::words::lengths::shopped;
use crate::words::plan as words;

/// Type of names and sizes, mm.
const TYPE: f64 = 2.4;
/// The same where a piece has no room for that.
const SMALL: f64 = 2.0;
/// How much of a seat's depth its back is drawn, as a share.
const BACK: f64 = 0.16;

/// Every piece, rugs below the others and what hangs above them.
pub(super) fn draw(figure: &mut Figure<'_>) {
    figure.put(Mark::Layer("pieces"));
    let pieces = figure.shown.pieces().into_iter();
    let (under, others): (Vec<PieceShown<'_>>, Vec<PieceShown<'_>>) = pieces.partition(|one| lies_under(*one));
    for piece in under {
        dashed(figure, piece);
    }
    chairs(figure);
    let (hung, standing): (Vec<_>, Vec<_>) = others.into_iter().partition(|one| one.piece.kind.hangs());
    for piece in standing.into_iter().chain(hung) {
        match piece.piece.kind.traits().drawn {
            Drawn::Under => {}
            Drawn::WithBack => {
                solid(figure, piece);
                back(figure, piece);
            }
            Drawn::WithFront => {
                solid(figure, piece);
                front(figure, piece);
            }
            Drawn::Plain => solid(figure, piece),
        }
    }
}

/// Drawn below the others; the name of a rug in a corner that they leave free.
fn lies_under(one: PieceShown<'_>) -> bool {
    one.piece.kind.traits().drawn == Drawn::Under
}

fn dashed(figure: &mut Figure<'_>, piece: PieceShown<'_>) {
    let ring = figure.frame.all(&outline(&piece.parts()));
    let pen = Pen::of(0.25, Tone::Grey).broken(Dash::Dashed);
    figure.put(Path::ring(ring, Some(pen), Fill::None));
}

/// Chairs at dining tables: light, since nobody measures them, and under their tables.
fn chairs(figure: &mut Figure<'_>) {
    for chair in figure.plan.chairs.clone() {
        let ring = figure.frame.all(&chair.ring);
        figure.labels.mind_ring(&ring);
        figure.put(Path::ring(ring, Some(Pen::of(0.2, Tone::Grey)), Fill::Tone(Tone::Paper)));
    }
}

fn solid(figure: &mut Figure<'_>, piece: PieceShown<'_>) {
    let ring = figure.frame.all(&outline(&piece.parts()));
    figure.labels.mind_ring(&ring);
    figure.put(Path::ring(ring, Some(Pen::ink(0.35)), Fill::Tone(Tone::Piece)));
}

/// Where people sit.
pub(super) fn seats(figure: &mut Figure<'_>) {
    for seat in figure.plan.seats.clone() {
        let at = figure.frame.at(seat.at);
        for mark in signs::seat(at, way(seat.facing)) {
            figure.put(mark);
        }
        figure.labels.keep_out(Area::round(at, 2.2, 2.2));
    }
}

/// Name and size of each piece.
pub(super) fn name(figure: &mut Figure<'_>) {
    let shown = figure.shown;
    named(figure, |one| vec![(clipped(&one.piece.name), Weight::Bold), (size(&shown, one.size), Weight::Book)]);
}

/// The lines of each piece, within it where they find room, turned where that helps.
pub(super) fn named(figure: &mut Figure<'_>, lines: impl Fn(PieceShown<'_>) -> Vec<(String, Weight)>) {
    for piece in figure.shown.pieces() {
        let parts: Vec<Vec<At>> = piece.parts().iter().map(|part| figure.frame.all(part)).collect();
        let all = Area::of(parts.iter().flatten().copied());
        let Some(middle) = parts.first().map(|part| middle_of(part)) else { continue };
        let lines = lines(piece);
        let ground = match piece.piece.kind {
            kind if kind.stays_open() => Some(Tone::Paper),
            _ => (!lies_under(piece)).then_some(Tone::Piece),
        };
        let level = Label { lines, ground, ..Label::new(middle, Vec::new(), TYPE, "") };
        let small = Label { size: SMALL, ..level.clone() };
        let tries = [(&level, 0.0), (&level, -90.0), (&small, 0.0), (&small, -90.0)];
        let found = tries.into_iter().any(|(label, turned)| {
            let label = Label { turned, ..label.clone() };
            let places = if piece.piece.kind.lies_under() {
                corners_within(&all, &label)
            } else {
                parts.iter().flat_map(|part| within(part, &label)).collect()
            };
            figure.labels.place_if_free(&Label { places, ..label })
        });
        if !found {
            let (width, height) = level.size();
            let (half_width, half_height) = ((all.width + width) / 2.0 + 0.8, (all.height + height) / 2.0 + 0.8);
            let beside = [(half_width, 0.0), (-half_width, 0.0), (0.0, half_height), (0.0, -half_height)];
            let places = beside.map(|(x, y)| all.middle() + At::new(x, y)).to_vec();
            figure.labels.place(&Label { places, ground: Some(Tone::Paper), ..level });
        }
    }
}

/// Places for a label within a part, from its middle outward.
fn within(part: &[At], label: &Label) -> Vec<At> {
    let (middle, area) = (middle_of(part), Area::of(part.iter().copied()));
    let steps = (0..=8).flat_map(|step| [f64::from(step), -f64::from(step)]);
    let places = steps.flat_map(|step| {
        let (down, across) = (step * area.height / 20.0, step * area.width / 20.0);
        [(0.0, down), (across, 0.0), (across, down), (across, -down)].map(|(x, y)| middle + At::new(x, y))
    });
    places.filter(|at| label.block(*at, 0.0).iter().all(|corner| holds(part, *corner))).collect()
}

/// Whether a convex ring holds a place, with a hair to spare.
fn holds(ring: &[At], place: At) -> bool {
    const SPARE: f64 = 0.3;
    let turn = ring
        .iter()
        .zip(ring.iter().cycle().skip(1))
        .map(|(start, end)| (place - *start).dot((*end - *start).unit().right()));
    let (low, high) = turn.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), off| (low.min(off), high.max(off)));
    low >= SPARE || high <= -SPARE
}

/// Inside the corners of an area.
fn corners_within(all: &Area, label: &Label) -> Vec<At> {
    let (width, height) = label.size();
    let inner = Area::round(all.middle(), all.width - width - 1.6, all.height - height - 1.6);
    let [a, b, c, d] = inner.corners();
    vec![d, c, a, b, d.middle(c), a.middle(b)]
}

/// The size as planned, rounded down to what one shops by.
pub(super) fn size(shown: &Shown<'_>, size: Size) -> String {
    let dimensions = [Some(size.width), size.return_length, Some(size.depth)].into_iter().flatten();
    let told: Vec<String> = dimensions.map(|length| shopped(shown.units(), length, Rounding::Down)).collect();
    words::size(&told)
}

/// The outline of a piece of these parts: of a corner sofa both runs as one.
fn outline(parts: &[Vec<Point>]) -> Vec<Point> {
    match parts {
        [main, other] => joined(main, other).unwrap_or_else(|| main.clone()),
        [only, ..] => only.clone(),
        [] => Vec::new(),
    }
}

/// The back of a seat: a line along the back of each run.
fn back(figure: &mut Figure<'_>, seat: PieceShown<'_>) {
    let (facing, depth) = (seat.placed.facing, seat.placed.size.depth * BACK);
    let parts = seat.parts();
    let Some(main) = parts.first() else { return };
    put_line(figure, strip(main, facing, depth), 0.2);
    if let (Some(other), Some(hand)) = (parts.get(1), seat.placed.hand)
        && !seat.piece.chaise
    {
        // Who sits on the return looks along the main run, away from its own end of it.
        let facing = match hand {
            Hand::Left => facing.right(),
            Hand::Right => facing.left(),
        };
        put_line(figure, strip(other, facing, depth), 0.2);
    }
}

/// A short stroke at the middle of a front, so that one sees which way a piece faces.
fn front(figure: &mut Figure<'_>, one: PieceShown<'_>) {
    put_line(figure, strip(&one.main(), -one.placed.facing, one.placed.size.depth * 0.1), 0.15);
}

/// A thin line that labels had better not lie on.
fn put_line(figure: &mut Figure<'_>, line: [Point; 2], width: f64) {
    let line = line.map(|at| figure.frame.at(at));
    figure.labels.mind(line);
    figure.put(Path::line(line, Pen::ink(width)));
}

/// The line across a rectangle `off` from its back, from side to side.
fn strip(ring: &[Point], facing: Point, off: f64) -> [Point; 2] {
    let left = facing.left();
    let support = |way: Point| ring.iter().map(|at| at.dot(way)).fold(f64::NEG_INFINITY, f64::max);
    let base = facing * (off - support(-facing));
    [base + left * support(left), base - left * support(-left)]
}

fn middle_of(places: &[At]) -> At {
    let sum = places.iter().fold(At::default(), |sum, at| sum + *at);
    sum * (1.0 / places.len().max(1) as f64)
}
