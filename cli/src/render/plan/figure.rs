//! The plan itself, without the sheet round it.

use elbowroom_model::{Point, WallItem};
use elbowroom_solver::plan::{Plan, plan};

use super::frame::Frame;
use super::{Shown, gaps, items, pieces, walls, ways, zones};
use crate::drawing::{Area, Labels, Mark, Paper, Scale, Sheet};
use crate::words::plan as words;

/// A plan as it is drawn.
pub(crate) struct Figure<'a> {
    pub(super) shown: Shown<'a>,
    pub(super) plan: Plan,
    pub(super) frame: Frame,
    pub(super) labels: Labels,
    marks: Vec<Mark>,
}

/// A plan as drawn.
pub(crate) struct Drawn {
    /// The scale.
    pub scale: Scale,
    /// All marks.
    pub marks: Vec<Mark>,
    /// What each number on it stands for, from 1.
    pub key: Vec<String>,
}

impl<'a> Figure<'a> {
    /// The plan in the middle of `area`, at the largest listed scale that it holds.
    pub(crate) fn within(shown: Shown<'a>, area: &Area) -> Drawn {
        let frame = Frame::within(shown.brief, area);
        Self::drawn(shown, frame, area)
    }

    /// The plan at this scale on a sheet of its own size.
    pub(crate) fn alone(shown: Shown<'a>, scale: Scale) -> (Sheet, Vec<String>) {
        let (frame, area) = Frame::at_scale(shown.brief, scale);
        let drawn = Self::drawn(shown, frame, &area);
        let sheet = Sheet {
            paper: Paper { width: area.width, height: area.height },
            title: words::title(&shown.outcome.room.name, shown.option),
            description: description(&shown),
            marks: drawn.marks,
        };
        (sheet, drawn.key)
    }

    fn drawn(shown: Shown<'a>, frame: Frame, area: &Area) -> Drawn {
        let plan = plan(shown.brief, shown.option);
        let mut figure = Self { shown, plan, frame, labels: Labels::new(*area), marks: Vec::new() };
        zones::draw(&mut figure);
        pieces::draw(&mut figure);
        ways::sights(&mut figure);
        items::draw(&mut figure);
        walls::draw(&mut figure);
        gaps::draw(&mut figure);
        ways::draw(&mut figure);
        walls::measure(&mut figure);
        pieces::name(&mut figure);
        ways::name(&mut figure);
        gaps::name(&mut figure);
        items::name(&mut figure);
        let (labels, key) = figure.labels.finished();
        let mut marks = figure.marks;
        marks.push(Mark::Layer("labels"));
        marks.extend(labels);
        Drawn { scale: frame.scale, marks, key }
    }

    pub(super) fn put(&mut self, mark: impl Into<Mark>) {
        self.marks.push(mark.into());
    }

    /// The way out of the room through what a wall holds.
    pub(super) fn outward(&self, item: &WallItem) -> Point {
        self.shown.brief.room.wall(item.wall).map_or_else(Point::default, |wall| -wall.inward())
    }
}

/// Sizes and ways in words.
pub(super) fn description(shown: &Shown<'_>) -> String {
    let size = |piece: &elbowroom_solver::outcome::PieceFound| format!("{} {}", piece.name, pieces::size(shown, piece));
    let way = |(place, route): (usize, &elbowroom_solver::outcome::RouteFound)| {
        words::way(&ways::letter(place), route, &shown.tape(route.width), &shown.tape(route.needs))
    };
    let sizes: Vec<String> = shown.option.pieces.iter().map(size).collect();
    let ways: Vec<String> = shown.option.routes.iter().enumerate().map(way).collect();
    words::description(&sizes, &ways)
}
