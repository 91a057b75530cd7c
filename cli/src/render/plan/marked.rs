//! What is touched, marked on a plan: what it is, what it has to do with, where a way is narrowest.

use elbowroom_model::Point;
use elbowroom_solver::answer::Thing;

use super::figure::Figure;
use super::ways;
use crate::drawing::{Dash, Fill, Mark, Path, Pen, Tone};

/// The line of a mark, mm: heavier than all others of a plan.
const HEAVY: f64 = 0.9;
/// From a pinch to the ring about it, mm.
const ABOUT: f64 = 1.6;

/// What is marked.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Marked {
    /// What is spoken of: its outline is a whole heavy line.
    pub what: Vec<Thing>,
    /// What that has to do with: its outline is broken.
    pub by: Vec<Thing>,
    /// A way, by its place: it is drawn, with a ring about where it is narrowest.
    pub way: Option<usize>,
}

/// The marks; a way itself where the ways are not drawn already.
pub(super) fn draw(figure: &mut Figure<'_>, marked: &Marked, has_ways: bool) {
    if *marked == Marked::default() {
        return;
    }
    figure.put(Mark::Layer("marked"));
    let whole = Pen::of(HEAVY, Tone::Vermilion);
    let of_each = [(&marked.by, whole.broken(Dash::Dashed)), (&marked.what, whole)];
    for (things, pen) in of_each {
        let all: Vec<Vec<Point>> = things.iter().flat_map(|thing| outlines(figure, *thing)).collect();
        for outline in all {
            let places = figure.frame.all(&outline);
            figure.put(match places.len() {
                2 => Path::line(places, pen),
                _ => Path::ring(places, Some(pen), Fill::None),
            });
        }
    }
    let Some(way) = marked.way else { return };
    if !has_ways {
        ways::draw_one(figure, way);
    }
    if let Some(pinch) = figure.shown.routes().get(way).and_then(|route| route.pinch.as_ref()) {
        let [from, to] = pinch.at.map(|at| figure.frame.at(at));
        let radius = (to - from).length() / 2.0 + ABOUT;
        figure.put(Path::circle(from.middle(to), radius, Some(whole), Fill::None));
    }
}

/// Where a thing is: outlines, or a line along a wall.
fn outlines(figure: &Figure<'_>, thing: Thing) -> Vec<Vec<Point>> {
    let room = &figure.shown.brief().room;
    match thing {
        Thing::Piece(piece) => {
            let placed = figure.shown.layout().of(piece);
            placed.map(elbowroom_solver::answer::corners_of).unwrap_or_default()
        }
        Thing::Fixed(fixed) => room.fixed_thing(fixed).map(|fixed| fixed.corners.clone()).into_iter().collect(),
        Thing::Wall(wall) => room.wall(wall).map(|wall| vec![wall.start, wall.end]).into_iter().collect(),
        Thing::Item(item) => {
            let ends = room.item(item).and_then(|item| room.ends(item));
            ends.map(|(from, to)| vec![from, to]).into_iter().collect()
        }
    }
}
