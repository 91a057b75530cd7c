//! The title block of a client's sheet: the answer in one large line, the clearances that matter, cautions in a small block,
//! what the drawing is, and room for a date.

use super::head::head;
use super::matters::Matter;
use super::panel::Panel;
use super::{Shown, rulers};
use crate::drawing::{Area, At, Mark, Path, Pen, Scale, hand};

/// Between the two columns, mm.
const BETWEEN: f64 = 7.0;
/// Share of the width that the answer takes.
const ANSWER: f64 = 0.56;
/// Above the words, below the line that parts them from the plan, mm.
const ABOVE: f64 = 3.5;

/// A title block, its lines broken for its width.
pub(super) struct TitleBlock {
    answer: Panel,
    cautions: Panel,
    width: f64,
    most: f64,
    paper: &'static str,
}

/// How wide a title block is, and how high at most, mm.
#[derive(Debug, Clone, Copy)]
pub(super) struct Room {
    pub(super) width: f64,
    pub(super) most: f64,
}

/// What a title block is made from.
#[derive(Clone, Copy)]
pub(super) struct Titled<'a> {
    /// What the sheet shows.
    pub(super) shown: Shown<'a>,
    /// The name of its paper.
    pub(super) paper: &'static str,
    /// The clearances that matter most.
    pub(super) matters: &'a [Matter],
    /// What each number on the plan stands for.
    pub(super) key: &'a [String],
}

impl TitleBlock {
    /// For a sheet that has room for one so wide and at most so high, its small print in this type.
    pub(super) fn new(titled: &Titled<'_>, room: Room, small: f64) -> Self {
        let Room { width, most } = room;
        let left = (width - BETWEEN) * ANSWER;
        let answer = answer(titled, left, small);
        let mut cautions = Panel::new(width - BETWEEN - left, small.min(hand::FIGURES));
        cautions.cautions(&titled.shown);
        Self { answer, cautions, width, most, paper: titled.paper }
    }

    /// Whether all of it has room.
    pub(super) fn is_whole(&self) -> bool {
        self.all() <= self.most
    }

    /// What it takes, mm: what has no room is left off.
    pub(super) fn height(&self) -> f64 {
        self.all().min(self.most)
    }

    fn all(&self) -> f64 {
        ABOVE + self.answer.height().max(self.cautions.height()) + rulers::STRIP
    }

    /// Its marks at the foot of an area.
    pub(super) fn marks(&self, all: &Area, shown: &Shown<'_>, scale: Scale) -> Vec<Mark> {
        let top = all.bottom() - self.height();
        let height = self.height() - ABOVE - rulers::STRIP;
        let left = (self.width - BETWEEN) * ANSWER;
        let columns = [(all.at.x, left), (all.at.x + left + BETWEEN, self.width - left - BETWEEN)];
        let [answer, cautions] = columns.map(|(x, width)| Area::new(x, top + ABOVE, width, height + 0.1));
        let line = [At::new(all.at.x, top), At::new(all.right(), top)];
        let mut marks = vec![Mark::Layer("title-block"), Path::line(line, Pen::ink(hand::OUTLINES)).into()];
        marks.extend(self.answer.in_columns(&[answer]).0);
        marks.extend(self.cautions.in_columns(&[cautions]).0);
        let strip = Area::new(all.at.x, all.bottom() - rulers::STRIP, all.width, rulers::STRIP);
        marks.extend(rulers::strip(&strip, scale, shown.units()));
        marks.push(rulers::imprint(&strip, scale, self.paper, shown.unit()));
        marks
    }
}

fn answer(titled: &Titled<'_>, width: f64, small: f64) -> Panel {
    let mut panel = Panel::new(width, small);
    head(&mut panel, &titled.shown);
    panel.space();
    for matter in titled.matters {
        panel.print(&matter.said);
    }
    panel.numbers(titled.key, 0);
    panel
}
