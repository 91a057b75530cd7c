//! Ways with their letters, where each is narrowest, and the sight lines.

use elbowroom_solver::routes::{LineWalked, Route};

use super::figure::Figure;
use super::furniture::on_floor;
use super::signs;
use crate::drawing::{At, Fill, Label, Mark, Path, Tone, Weight, edges, hand};
use crate::words::plan as words;

/// Type of letters and widths, mm.
const TYPE: f64 = hand::NAMES;
/// Type of the words where a way ends, mm.
const SMALL: f64 = hand::FIGURES;
/// From the end of a way to what one steps into, mm.
const BEFORE: f64 = 0.6;
/// A leader to where one steps in costs less than this, mm.
const NEAR: f64 = 26.0;
/// Ways that end this near to each other end together, mm.
const TOGETHER: f64 = 6.0;
/// A way that enters a piece by no more than this only touches it, mm.
const HAIR: f64 = 0.15;

/// A way as it is drawn.
pub(super) struct Walked {
    line: Vec<At>,
    /// At its end one steps in past a table, or over it.
    steps_in: bool,
}

/// The letter of a way, by its place: A, B, ... Z, AA, ...
pub(crate) fn letter(place: usize) -> String {
    let last = char::from(b'A' + u8::try_from(place % 26).unwrap_or(0));
    if place < 26 { last.to_string() } else { format!("{}{last}", letter(place / 26 - 1)) }
}

/// The lines walked, with an arrow where each ends; they are for `name` to name.
pub(super) fn draw(figure: &mut Figure<'_>) -> Vec<Walked> {
    figure.put(Mark::Layer("ways"));
    let walked = walked(figure);
    walked.iter().for_each(|way| draw_line(figure, way));
    figure.put(Mark::Layer("pinches"));
    for route in figure.shown.routes() {
        draw_pinch(figure, route);
    }
    walked
}

/// One of them alone, by its place.
pub(super) fn draw_one(figure: &mut Figure<'_>, place: usize) {
    if let Some(way) = walked(figure).get(place) {
        draw_line(figure, way);
    }
    if let Some(route) = figure.shown.routes().get(place) {
        draw_pinch(figure, route);
    }
}

fn draw_line(figure: &mut Figure<'_>, Walked { line, .. }: &Walked) {
    for leg in line.windows(2) {
        figure.labels.bar([leg[0], leg[1]]);
    }
    if let [.., before, last] = line.as_slice() {
        let back = (*before - *last).unit();
        let side = back.right() * 0.7;
        let foot = *last + back * 1.8;
        figure.put(Path::ring([*last, foot + side, foot - side], None, Fill::Tone(Tone::Blue)));
    }
    figure.put(Path::line(line.iter().copied(), signs::WAY));
}

fn draw_pinch(figure: &mut Figure<'_>, route: &Route) {
    if let Some(pinch) = &route.pinch {
        let at = pinch.at.map(|at| figure.frame.at(at));
        figure.labels.bar(at);
        signs::pinch(at).into_iter().for_each(|mark| figure.put(mark));
    }
}

/// The line of each way on the sheet, up to the first piece that it would run over.
fn walked(figure: &Figure<'_>) -> Vec<Walked> {
    let parts = on_floor(&figure.shown).flat_map(|one| one.parts());
    let bodies: Vec<Vec<At>> = parts.map(|part| figure.frame.all(&part)).collect();
    let drawn = |walk: &LineWalked| {
        let walked = up_to(&figure.frame.all(&walk.line), &bodies);
        Walked { steps_in: walked.steps_in || walk.steps_in, ..walked }
    };
    figure.plan.walks.iter().map(drawn).collect()
}

/// A line up to where it first goes into a body, a little before it.
fn up_to(line: &[At], bodies: &[Vec<At>]) -> Walked {
    let mut kept: Vec<At> = line.iter().copied().take(1).collect();
    for leg in line.windows(2) {
        let length = (leg[1] - leg[0]).length();
        let entered = bodies.iter().filter_map(|body| enters([leg[0], leg[1]], body));
        let first = entered.fold(f64::INFINITY, f64::min);
        if first.is_finite() {
            kept.push(leg[0] + (leg[1] - leg[0]).unit() * (first * length - BEFORE).max(0.0));
            return Walked { line: kept, steps_in: true };
        }
        kept.push(leg[1]);
    }
    Walked { line: kept, steps_in: false }
}

/// The share of a line at which it goes into a convex body by more than a hair.
fn enters([from, to]: [At; 2], body: &[At]) -> Option<f64> {
    let middle = body.iter().fold(At::default(), |sum, at| sum + *at) * (1.0 / body.len().max(1) as f64);
    let (mut low, mut high) = (0.0_f64, 1.0_f64);
    for [start, end] in edges(body) {
        let across = (end - start).unit().right();
        let inward = if (middle - start).dot(across) < 0.0 { across * -1.0 } else { across };
        let [first, last] = [from, to].map(|at| (at - start).dot(inward) - HAIR);
        match (first > 0.0, last > 0.0) {
            (true, true) => {}
            (false, false) => return None,
            (false, true) => low = low.max(first / (first - last)),
            (true, false) => high = high.min(first / (first - last)),
        }
    }
    (low < high).then_some(low)
}

/// Where ways end at what one steps into; once where two of them end together.
fn step_in(figure: &mut Figure<'_>, walked: &[Walked]) {
    let mut ends: Vec<At> = Vec::new();
    for end in walked.iter().filter(|way| way.steps_in).filter_map(|way| way.line.last().copied()) {
        if ends.iter().all(|other| (*other - end).length() > TOGETHER) {
            ends.push(end);
        }
    }
    for of in ends {
        let label = Label { tone: Tone::Blue, ..Label::new(of, Vec::new(), SMALL, words::STEP_IN) };
        let (width, height) = label.size();
        let (across, down) = (width / 2.0 + 1.2, height / 2.0 + 1.0);
        let ways = [
            (across, 0.0),
            (-across, 0.0),
            (0.0, down),
            (0.0, -down),
            (across, down),
            (across, -down),
            (-across, down),
            (-across, -down),
        ];
        let places = ways.map(|(x, y)| of + At::new(x, y)).to_vec();
        // What has no room there is told in the list of ways alone: a long leader is taken for a line that measures.
        figure.labels.place_if_near(&Label { places, ..label }, NEAR);
    }
}

/// Each way's letter and width, at its pinch.
pub(super) fn name(figure: &mut Figure<'_>, walked: &[Walked]) {
    step_in(figure, walked);
    for (place, route) in figure.shown.routes().iter().enumerate() {
        name_way(figure, place, walked.get(place), route);
    }
}

/// That of one of them alone, by its place.
pub(super) fn name_one(figure: &mut Figure<'_>, place: usize) {
    if let Some(route) = figure.shown.routes().get(place) {
        let walked = walked(figure);
        name_way(figure, place, walked.get(place), route);
    }
}

fn name_way(figure: &mut Figure<'_>, place: usize, walked: Option<&Walked>, route: &Route) {
    let Some((of, way)) = named_at(figure, walked, route) else { return };
    let text = format!("{} {}", letter(place), figure.shown.tape(route.width));
    let label = Label { tone: Tone::Blue, ground: Some(Tone::Floor), ..Label::new(of, Vec::new(), TYPE, text.clone()) };
    let label = Label { lines: vec![(text, Weight::Bold)], ..label };
    let across = way.right();
    let half = label.half(across) + 0.8;
    let places = [half, -half, half + 2.5, -half - 2.5].map(|off| of + across * off);
    let slid = [2.5, -2.5, 5.0, -5.0].into_iter().flat_map(|step| places.map(|at| at + way * step));
    let places = places.into_iter().chain(slid).collect();
    figure.labels.place(&Label { places, ..label });
}

/// The place that a way is named at, and a direction there that the name stands beside.
fn named_at(figure: &Figure<'_>, walked: Option<&Walked>, route: &Route) -> Option<(At, At)> {
    if let Some(pinch) = &route.pinch {
        let [from, to] = pinch.at.map(|at| figure.frame.at(at));
        return Some((from.middle(to), (to - from).unit()));
    }
    let line = &walked?.line;
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
        figure.labels.mind(line);
        figure.put(Path::line(line, signs::SIGHT));
    }
}
