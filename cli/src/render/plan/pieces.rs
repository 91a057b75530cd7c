//! What is written on the pieces: name and size of each, and where people sit.

use elbowroom_model::{Drawn, Piece, Rounding};
use elbowroom_solver::Size;

use super::figure::Figure;
use super::frame::way;
use super::shown::PieceShown;
use super::{Shown, furniture, signs};
use crate::drawing::{Area, At, Label, Weight, clipped, hand};
use crate::words::lengths::shopped;
use crate::words::plan as words;
use crate::words::size::size as told;

/// Type of names and sizes, mm.
const TYPE: f64 = hand::NAMES;
/// The same where a piece has no room for that.
const SMALL: f64 = hand::FIGURES;
/// Twice the way from the edge of a rug to its name, mm: clear of its border.
const INSET: f64 = 4.6;

/// Two sides that differ by less are one diameter, mm: no tape tells them apart.
const SAME: f64 = 1.0;

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
    named(figure, |one| {
        vec![(clipped(&one.piece.name), Weight::Bold), (size(&shown, one.piece, one.size), Weight::Book)]
    });
}

/// The name of each piece.
pub(super) fn name_alone(figure: &mut Figure<'_>) {
    named(figure, |one| vec![(clipped(&one.piece.name), Weight::Bold)]);
}

/// The size of each piece that has room for it.
pub(super) fn sized(figure: &mut Figure<'_>) {
    let shown = figure.shown;
    for piece in shown.pieces().into_iter().filter(|one| !furniture::lies_under(*one)) {
        let parts: Vec<Vec<At>> = piece.parts().iter().map(|part| figure.frame.all(part)).collect();
        let Some(middle) = parts.first().map(|part| middle_of(part)) else { continue };
        let lines = vec![(size(&shown, piece.piece, piece.size), Weight::Book)];
        let label = Label {
            lines,
            over: true,
            ground: Some(furniture::ground(piece)),
            ..Label::new(middle, Vec::new(), TYPE, "")
        };
        let all = Area::of(parts.iter().flatten().copied());
        let within = [0.0, -90.0].into_iter().any(|turned| {
            let label = Label { turned, ..label.clone() };
            let places = parts.iter().flat_map(|part| within(part, &label)).collect();
            figure.labels.place_if_free(&Label { places, ..label })
        });
        if !within {
            let places = beside(&all, &label);
            figure.labels.place_if_free(&Label { places, ground: None, over: false, ..label });
        }
    }
}

/// Places for a label right, left, below and above of what it names.
fn beside(all: &Area, label: &Label) -> Vec<At> {
    let (width, height) = label.size();
    let (across, down) = ((all.width + width) / 2.0 + 0.8, (all.height + height) / 2.0 + 0.8);
    [(across, 0.0), (-across, 0.0), (0.0, down), (0.0, -down)].map(|(x, y)| all.middle() + At::new(x, y)).to_vec()
}

/// The lines of each piece, within it where they find room, turned where that helps.
pub(super) fn named(figure: &mut Figure<'_>, lines: impl Fn(PieceShown<'_>) -> Vec<(String, Weight)>) {
    for piece in figure.shown.pieces() {
        let parts: Vec<Vec<At>> = piece.parts().iter().map(|part| figure.frame.all(part)).collect();
        let all = Area::of(parts.iter().flatten().copied());
        let Some(middle) = parts.first().map(|part| middle_of(part)) else { continue };
        let lines = lines(piece);
        let ground = Some(furniture::ground(piece));
        let level = Label { lines, ground, ..Label::new(middle, Vec::new(), TYPE, "") };
        let small = Label { size: SMALL, ..level.clone() };
        let tries = [(&level, 0.0), (&level, -90.0), (&small, 0.0), (&small, -90.0)];
        let found = tries.into_iter().any(|(label, turned)| {
            let label = Label { turned, ..label.clone() };
            let places = if furniture::lies_under(piece) {
                all_over(&all, &label)
            } else {
                parts.iter().flat_map(|part| within(part, &label)).collect()
            };
            // A rug leaves its name where nothing stands on it.
            figure.labels.place_if_free(&Label { places, over: !furniture::lies_under(piece), ..label })
        });
        if !found {
            let (places, lies_under) = (beside(&all, &level), furniture::lies_under(piece));
            // A leader to a rug ends where nothing stands on it.
            let bare = || figure.labels.bare(&all_over(&all, &Label::new(middle, Vec::new(), 0.0, "")));
            let of = if lies_under { bare() } else { None };
            figure.labels.place(&Label { places, ground: None, of: of.unwrap_or(middle), ..level });
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

/// Places all over an area: its corners before its edges and its middle.
fn all_over(all: &Area, label: &Label) -> Vec<At> {
    const STEPS: i32 = 8;
    let (width, height) = label.size();
    let inner = Area::round(all.middle(), all.width - width - INSET, all.height - height - INSET);
    if inner.width < 0.0 || inner.height < 0.0 {
        return Vec::new();
    }
    let share = |step: i32| f64::from(step) / f64::from(STEPS);
    let steps = (0..=STEPS).flat_map(|down| (0..=STEPS).map(move |across| (across, down)));
    let mut steps: Vec<(i32, i32)> = steps.collect();
    let off = |step: i32| step.min(STEPS - step);
    steps.sort_by_key(|(across, down)| (off(*across) + off(*down), STEPS - down, STEPS - across));
    steps.into_iter().map(|(x, y)| inner.at + At::new(inner.width * share(x), inner.height * share(y))).collect()
}

/// The size as planned, rounded down to what one shops by; of what is round its diameter.
pub(super) fn size(shown: &Shown<'_>, piece: &Piece, size: Size) -> String {
    let is_round = matches!(piece.kind.traits().drawn, Drawn::Lamp | Drawn::Plant);
    if is_round && (size.width - size.depth).abs() < SAME {
        return words::across(&shopped(shown.units(), size.width, Rounding::Down));
    }
    told(size, words::TIMES, |length| shopped(shown.units(), length, Rounding::Down))
}

fn middle_of(places: &[At]) -> At {
    let sum = places.iter().fold(At::default(), |sum, at| sum + *at);
    sum * (1.0 / places.len().max(1) as f64)
}
