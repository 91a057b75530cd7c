//! The plan itself, without the sheet round it.

use elbowroom_model::{Point, WallItem};
use elbowroom_solver::answer::OptionPiece;
use elbowroom_solver::plan::{Plan, plan};
use elbowroom_solver::routes::Route;
use elbowroom_solver::setting_out::SettingOut;

use super::frame::Frame;
use super::{Shown, gaps, items, pieces, points, turning, walls, ways, zones};
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
        let frame = Frame::within(shown.brief(), area);
        Self::drawn(shown, frame, area)
    }

    /// The plan at this scale on a sheet of its own size.
    pub(crate) fn alone(shown: Shown<'a>, scale: Scale) -> (Sheet, Vec<String>) {
        let (frame, area) = Frame::at_scale(shown.brief(), scale);
        let drawn = Self::drawn(shown, frame, &area);
        let sheet = Sheet {
            paper: Paper { width: area.width, height: area.height },
            title: words::title(shown.brief(), shown.option),
            description: description(&shown),
            marks: drawn.marks,
        };
        (sheet, drawn.key)
    }

    fn drawn(shown: Shown<'a>, frame: Frame, area: &Area) -> Drawn {
        let plan = plan(shown.brief(), &shown.option.layout);
        let mut figure = Self { shown, plan, frame, labels: Labels::new(*area), marks: Vec::new() };
        zones::draw(&mut figure);
        pieces::draw(&mut figure);
        pieces::seats(&mut figure);
        ways::sights(&mut figure);
        items::draw(&mut figure);
        walls::draw(&mut figure);
        turning::draw(&mut figure);
        gaps::draw(&mut figure);
        ways::draw(&mut figure);
        walls::measure(&mut figure);
        pieces::name(&mut figure);
        ways::name(&mut figure);
        gaps::name(&mut figure);
        turning::name(&mut figure);
        items::name(&mut figure);
        figure.finished()
    }

    /// The room and the pieces on the floor, with the points that a tape starts from and the corners that it finds: as large
    /// as a sheet so wide and high holds it, and the sheet that it takes.
    pub(crate) fn to_set_out(shown: Shown<'a>, out: &SettingOut, widest: &Paper) -> (Paper, Drawn) {
        let (frame, paper) = Frame::filling(shown.brief(), widest);
        let (plan, labels) = (plan(shown.brief(), &shown.option.layout), Labels::new(paper.within(0.0)));
        let mut figure = Self { shown, plan, frame, labels, marks: Vec::new() };
        pieces::draw(&mut figure);
        items::draw(&mut figure);
        walls::draw(&mut figure);
        turning::draw(&mut figure);
        points::draw(&mut figure, out);
        points::name(&mut figure, out);
        walls::measure(&mut figure);
        pieces::named(&mut figure, |piece| points::place_and_name(out, piece));
        turning::name(&mut figure);
        items::name(&mut figure);
        (paper, figure.finished())
    }

    /// All marks, labels on top.
    fn finished(self) -> Drawn {
        let (labels, key) = self.labels.finished();
        let mut marks = self.marks;
        marks.push(Mark::Layer("labels"));
        marks.extend(labels);
        Drawn { scale: self.frame.scale, marks, key }
    }

    pub(super) fn put(&mut self, mark: impl Into<Mark>) {
        self.marks.push(mark.into());
    }

    /// The way out of the room through what a wall holds.
    pub(super) fn outward(&self, item: &WallItem) -> Point {
        self.shown.brief().room.wall(item.wall).map_or_else(Point::default, |wall| -wall.inward())
    }
}

/// Sizes and ways in words.
pub(super) fn description(shown: &Shown<'_>) -> String {
    let brief = shown.brief();
    let size = |one: OptionPiece<'_>| format!("{} {}", one.piece.name, pieces::size(shown, one.sizes));
    let way = |(place, route): (usize, &Route)| {
        words::way(brief, &ways::letter(place), route, &shown.tape(route.width), &shown.tape(route.needs))
    };
    let sizes: Vec<String> = shown.option.pieces(brief).map(size).collect();
    let ways: Vec<String> = shown.option.routes.iter().enumerate().map(way).collect();
    words::description(&sizes, &ways)
}
