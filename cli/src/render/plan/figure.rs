//! A plan under way: what is drawn so far, and what it is drawn from.

use elbowroom_model::{Point, WallItem};
use elbowroom_solver::plan::Plan;

use super::frame::Frame;
use super::{Purpose, Shown};
use crate::drawing::{Area, Labels, Mark, Scale};

/// A plan under way.
pub(super) struct Figure<'a> {
    pub(super) shown: Shown<'a>,
    pub(super) purpose: Purpose,
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
    /// A plan with nothing on it yet; labels stay within `area`.
    pub(super) fn new(shown: Shown<'a>, purpose: Purpose, plan: Plan, frame: Frame, area: Area) -> Self {
        let labels = Labels::new(area).counting_after(shown.breaches());
        Self { shown, purpose, plan, frame, labels, marks: Vec::new() }
    }

    /// All marks, labels on top.
    pub(super) fn finished(self) -> Drawn {
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
