//! What walls hold and what stands for good: windows, doorways, radiators, fires, sockets, pillars; and their names.

use elbowroom_model::{Fireplace, ItemKind, Point, Slope, View, WallItem};

use super::figure::Figure;
use super::frame::way;
use super::outline::{THICKNESS, gap};
use super::{Purpose, doors};
use crate::drawing::{At, Dash, Fill, Label, Mark, Path, Pen, Tone, hand, hatch};
use crate::words::plan as words;

/// Type of names, mm.
const TYPE: f64 = hand::FIGURES;

/// All of them.
pub(super) fn draw(figure: &mut Figure<'_>) {
    figure.put(Mark::Layer("fixed"));
    for fixed in &figure.shown.brief().room.fixed {
        let ring = figure.frame.all(&fixed.corners);
        match fixed.step() {
            Some(ends) => {
                figure.labels.mind_ring(&ring);
                step(figure, ends);
            }
            None => {
                figure.labels.body(ring.clone());
                solid(figure, &ring);
            }
        }
    }
    slopes(figure);
    figure.put(Mark::Layer("items"));
    for item in &figure.shown.brief().room.items {
        match &item.kind {
            ItemKind::Window(_) => window(figure, item),
            ItemKind::Door(door) => doors::door(figure, item, door),
            ItemKind::Opening(_) => doors::opening(figure, item),
            ItemKind::Radiator(radiator) => body(figure, item, radiator.depth),
            ItemKind::Fireplace(fire) => fireplace(figure, item, fire),
            ItemKind::Socket(_) if figure.purpose == Purpose::Working => socket(figure, item),
            ItemKind::Socket(_) => {}
        }
    }
}

/// What is written outside the wall that it is in: its name and width; `None` of what stands at the wall.
fn named_outside(figure: &Figure<'_>, item: &WallItem) -> Option<String> {
    let width = figure.shown.tape(item.width);
    match &item.kind {
        ItemKind::Socket(_) | ItemKind::Radiator(_) | ItemKind::Fireplace(_) => None,
        ItemKind::Window(window) if window.view == View::Liked => Some(words::liked(&item.name, &width)),
        ItemKind::Window(_) | ItemKind::Door(_) | ItemKind::Opening(_) => Some(words::opening(&item.name, &width)),
    }
}

/// The names of windows and doorways outside the walls that they are in; those that find no room there.
pub(super) fn name_outside<'a>(figure: &mut Figure<'a>) -> Vec<(&'a WallItem, String)> {
    let items = figure.shown.brief().room.items.iter();
    let mut named: Vec<_> = items.filter_map(|item| Some((item, named_outside(figure, item)?))).collect();
    named.retain(|(item, words)| !is_put_outside(figure, item, words));
    named
}

/// The names of what stands at walls and on the floor, and of what found no room outside.
pub(super) fn name(figure: &mut Figure<'_>, left_over: &[(&WallItem, String)]) {
    name_slopes(figure);
    for item in &figure.shown.brief().room.items {
        let (words, depth) = match &item.kind {
            ItemKind::Radiator(radiator) => (item.name.clone(), radiator.depth),
            ItemKind::Fireplace(fire) => (item.name.clone(), fire.depth),
            _ => continue,
        };
        put_inside(figure, item, &words, depth);
    }
    for (item, words) in left_over {
        put_inside(figure, item, words, 0.0);
    }
    for fixed in &figure.shown.brief().room.fixed {
        let count = fixed.corners.len().max(1) as f64;
        let middle = figure.frame.at(fixed.corners.iter().fold(Point::default(), |sum, at| sum + *at) * (1.0 / count));
        figure.labels.place(&Label {
            ground: Some(Tone::Paper),
            // A step is a line, and what stands beside it may lie on its middle.
            over: fixed.step().is_none(),
            ..Label::new(middle, vec![middle], TYPE, fixed.name.clone())
        });
    }
}

/// A name along a wall, beside the middle of what it holds, and half of its height with what is kept free of it.
fn along_wall(figure: &Figure<'_>, item: &WallItem, words: &str) -> Option<(Label, f64)> {
    let room = &figure.shown.brief().room;
    let ((left, right), wall) = (room.ends(item)?, room.wall(item.wall)?);
    let face = figure.frame.at((left + right) * 0.5);
    let label = Label { turned: upright(way(wall.along())), ..Label::new(face, Vec::new(), TYPE, words) };
    let half = label.size().1 / 2.0 + 0.6;
    Some((label, half))
}

/// Places along the wall about one beside it.
fn slid(figure: &Figure<'_>, item: &WallItem, middle: At) -> Vec<At> {
    let along = figure.shown.brief().room.wall(item.wall).map_or_else(At::default, |wall| way(wall.along()));
    [0.0, 3.0, -3.0, 6.0, -6.0, 10.0, -10.0].map(|step| middle + along * step).to_vec()
}

/// Whether a name found room outside the wall.
fn is_put_outside(figure: &mut Figure<'_>, item: &WallItem, words: &str) -> bool {
    let Some((label, half)) = along_wall(figure, item, words) else { return true };
    let places = slid(figure, item, label.of + way(figure.outward(item)) * (figure.frame.length(THICKNESS) + half));
    figure.labels.place_if_clear(&Label { places, ..label })
}

/// A name before the front of what is `depth` deep; of what is in the wall, before the wall.
fn put_inside(figure: &mut Figure<'_>, item: &WallItem, words: &str, depth: f64) {
    let Some((label, half)) = along_wall(figure, item, words) else { return };
    let inward = way(-figure.outward(item));
    let places = slid(figure, item, label.of + inward * (figure.frame.length(depth) + half));
    let into = if depth > 0.0 { depth / 2.0 } else { -THICKNESS / 2.0 };
    let of = label.of + inward * figure.frame.length(into);
    figure.labels.place(&Label { of, places, ground: Some(Tone::Floor), ..label });
}

/// A line this near to upright is upright, degrees: its words read from below.
const SQUARE: f64 = 1e-6;

/// How far words along a line on the sheet are turned so that they never stand on their heads, degrees clockwise.
pub(super) fn upright(along: At) -> f64 {
    let turned = along.y.atan2(along.x).to_degrees();
    match turned {
        turned if turned > 90.0 - SQUARE => turned - 180.0,
        turned if turned <= -90.0 - SQUARE => turned + 180.0,
        turned => turned,
    }
}

/// Both faces of the wall and the pane between them.
fn window(figure: &mut Figure<'_>, item: &WallItem) {
    let Some(gap) = gap(figure.shown.brief(), item) else { return };
    let [left, right, right_out, left_out] = gap.map(|at| figure.frame.at(at));
    let frame = [left, right, right_out, left_out];
    figure.put(Path::ring(frame, Some(Pen::ink(hand::FITTINGS)), Fill::Tone(Tone::Paper)));
    figure.put(Path::line([left.middle(left_out), right.middle(right_out)], Pen::ink(hand::FITTINGS)));
}

/// What stands at a wall for good.
fn body(figure: &mut Figure<'_>, item: &WallItem, depth: f64) {
    let Some((left, right)) = figure.shown.brief().room.ends(item) else { return };
    let into = -figure.outward(item) * depth;
    let ring = figure.frame.all(&[left, right, right + into, left + into]);
    figure.labels.body(ring.clone());
    solid(figure, &ring);
}

/// How deep the mouth of a fire is drawn into its breast: at most so much of the breast's depth.
const MOUTH: f64 = 0.6;

/// How much narrower the back of a mouth is drawn than its front, at each end: of its depth.
const SPLAY: f64 = 0.35;

/// A chimney breast, with the fire's mouth cut into its front.
fn fireplace(figure: &mut Figure<'_>, item: &WallItem, fire: &Fireplace) {
    body(figure, item, fire.depth);
    let Some((left, right)) = figure.shown.brief().room.mouth_ends(item) else { return };
    if fire.opening.is_none() {
        return;
    }
    let (into, width) = (-figure.outward(item), (right - left).norm());
    let deep = fire.depth * MOUTH;
    let splay = (right - left) * ((deep * SPLAY).min(width / 4.0) / width.max(1.0));
    let (front, back) = (into * fire.depth, into * (fire.depth - deep));
    let ring = figure.frame.all(&[left + front, left + splay + back, right - splay + back, right + front]);
    figure.put(Path::ring(ring, Some(Pen::ink(hand::FITTINGS)), Fill::Tone(Tone::Paper)));
}

/// A grey body with close hatching.
fn solid(figure: &mut Figure<'_>, ring: &[At]) {
    figure.put(Path::ring(ring.iter().copied(), None, Fill::Tone(Tone::Fixed)));
    for line in hatch(ring, 45.0, 1.3) {
        figure.put(Path::line(line, Pen::of(hand::FITTINGS, Tone::Grey)));
    }
    figure.put(Path::ring(ring.iter().copied(), Some(Pen::ink(hand::FITTINGS)), Fill::None));
}

/// Where ceilings begin to fall toward a wall: a broken line over its length.
fn slopes(figure: &mut Figure<'_>) {
    for (_, line) in slope_lines(figure) {
        figure.labels.mind(line);
        figure.put(Path::line(line, Pen::of(hand::FITTINGS, Tone::Grey).broken(Dash::Dashed)));
    }
}

/// How far each of them falls, beside its line.
fn name_slopes(figure: &mut Figure<'_>) {
    for (slope, line) in slope_lines(figure) {
        let Some(wall) = figure.shown.brief().room.wall(slope.wall) else { continue };
        let words = words::ceiling_falls(&figure.shown.tape(slope.from), &figure.shown.tape(slope.to));
        let along = way(wall.along());
        let middle = line[0].middle(line[1]) - way(wall.inward()) * 2.0;
        let places = [0.0, 8.0, -8.0, 16.0, -16.0].map(|step| middle + along * step).to_vec();
        let turned = upright(along);
        figure.labels.place(&Label {
            turned,
            tone: Tone::Grey,
            ..Label::new(line[0].middle(line[1]), places, TYPE, words)
        });
    }
}

fn slope_lines<'a>(figure: &Figure<'a>) -> Vec<(&'a Slope, [At; 2])> {
    let room = &figure.shown.brief().room;
    let line = |slope: &'a Slope| {
        let wall = room.wall(slope.wall)?;
        let out = wall.inward() * slope.over;
        Some((slope, [wall.start + out, wall.end + out].map(|at| figure.frame.at(at))))
    };
    room.slopes.iter().filter_map(line).collect()
}

/// Depth of the strip that shows a step, mm: a tread's edge.
const NOSING: f64 = 60.0;

/// The edge of a step, and the line of its nosing beside it.
fn step(figure: &mut Figure<'_>, [from, to]: [Point; 2]) {
    let aside = (to - from).unit().unwrap_or_default().left() * NOSING;
    for (shift, width) in [(Point::default(), hand::OUTLINES), (aside, hand::FITTINGS)] {
        let line = [from + shift, to + shift].map(|at| figure.frame.at(at));
        figure.put(Path::line(line, Pen::ink(width)));
    }
}

/// A half disc on the wall.
fn socket(figure: &mut Figure<'_>, item: &WallItem) {
    const RADIUS: f64 = 1.1;
    let room = &figure.shown.brief().room;
    let Some((place, _)) = room.ends(item) else { return };
    let out = figure.outward(item);
    let place = place - out * room.stands_out(item);
    super::signs::socket(figure, place, way(-out), RADIUS);
}
