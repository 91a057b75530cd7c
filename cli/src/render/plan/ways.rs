//! Ways with their letters, where each is narrowest, and the sight lines.

use elbowroom_solver::routes::Route;

use super::figure::Figure;
use super::signs;
use crate::drawing::{At, Fill, Label, Mark, Path, Tone, Weight};

/// Type of letters and widths, mm.
const TYPE: f64 = 2.3;

/// The letter of a way, by its place: A, B, ... Z, AA, ...
pub(super) fn letter(place: usize) -> String {
    let last = char::from(b'A' + u8::try_from(place % 26).unwrap_or(0));
    if place < 26 { last.to_string() } else { format!("{}{last}", letter(place / 26 - 1)) }
}

/// The lines walked, with an arrow where each ends.
pub(super) fn draw(figure: &mut Figure<'_>) {
    figure.put(Mark::Layer("ways"));
    for walk in figure.plan.walks.clone() {
        let line = figure.frame.all(&walk);
        if let [.., before, last] = line.as_slice() {
            let back = (*before - *last).unit();
            let side = back.right() * 0.7;
            let foot = *last + back * 1.8;
            figure.put(Path::ring([*last, foot + side, foot - side], None, Fill::Tone(Tone::Blue)));
        }
        figure.put(Path::line(line, signs::WAY));
    }
    figure.put(Mark::Layer("pinches"));
    for route in figure.shown.routes() {
        if let Some(pinch) = &route.pinch {
            let at = pinch.at.map(|at| figure.frame.at(at));
            signs::pinch(at).into_iter().for_each(|mark| figure.put(mark));
        }
    }
}

/// Each way's letter and width, at its pinch.
pub(super) fn name(figure: &mut Figure<'_>) {
    for (place, route) in figure.shown.routes().iter().enumerate() {
        let Some((of, way)) = named_at(figure, place, route) else { continue };
        let text = format!("{} {}", letter(place), figure.shown.tape(route.width));
        let label =
            Label { tone: Tone::Blue, ground: Some(Tone::Floor), ..Label::new(of, Vec::new(), TYPE, text.clone()) };
        let label = Label { lines: vec![(text, Weight::Bold)], ..label };
        let (width, height) = label.size();
        let across = way.right();
        let half = (across.x.abs() * width + across.y.abs() * height) / 2.0 + 0.8;
        let places = [half, -half, half + 2.5, -half - 2.5].map(|off| of + across * off);
        let slid = [2.5, -2.5, 5.0, -5.0].into_iter().flat_map(|step| places.map(|at| at + way * step));
        let places = places.into_iter().chain(slid).collect();
        figure.labels.place(&Label { places, ..label });
    }
}

/// The place that a way is named at, and a direction there that the name stands beside.
fn named_at(figure: &Figure<'_>, place: usize, route: &Route) -> Option<(At, At)> {
    if let Some(pinch) = &route.pinch {
        let [from, to] = pinch.at.map(|at| figure.frame.at(at));
        return Some((from.middle(to), (to - from).unit()));
    }
    let line = figure.frame.all(figure.plan.walks.get(place)?);
    let length: f64 = line.windows(2).map(|leg| (leg[1] - leg[0]).length()).sum();
    let mut left = length * 0.5;
    for leg in line.windows(2) {
        let way = leg[1] - leg[0];
        if way.length() >= left {
            return Some((leg[0] + way.unit() * left, way.unit()));
        }
        left -= way.length();
    }
    None
}

/// From each seat place to the liked windows that it sees.
pub(super) fn sights(figure: &mut Figure<'_>) {
    figure.put(Mark::Layer("sight-lines"));
    for line in figure.plan.sight_lines.clone() {
        let line = [line.from, line.to].map(|at| figure.frame.at(at));
        figure.put(Path::line(line, signs::SIGHT));
    }
}
