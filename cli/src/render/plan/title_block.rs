//! The title block of a client's sheet: the answer in one large line, the clearances that matter, cautions in a small block,
//! what the drawing is, and room for a date.

use super::matters::Matter;
use super::panel::{Panel, cut};
use super::{Purpose, Shown, rulers};
use crate::drawing::{Area, At, Mark, Path, Pen, Scale, Text, Tone, Weight, width_of, wrapped};
use crate::words::answer as said;
use crate::words::plan as words;

/// Between the two columns, mm.
const BETWEEN: f64 = 7.0;
/// Share of the width that the answer takes.
const ANSWER: f64 = 0.56;
/// Types of the answer, mm: the largest that needs no more lines than it may have.
const LARGE: [f64; 3] = [5.2, 4.4, 3.6];
/// Type of cautions and of what the drawing is, mm.
const SMALL_PRINT: f64 = 2.0;
/// Characters that the name of a room may have, and the answer.
const LONGEST_NAME: usize = 120;
const LONGEST_ANSWER: usize = 300;
/// Lines that the answer may have.
const LINES: usize = 2;
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
        let mut cautions = Panel::new(width - BETWEEN - left, small.min(SMALL_PRINT));
        cautions.cautions(&titled.shown, Purpose::Client);
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
        let mut marks = vec![Mark::Layer("title-block"), Path::line(line, Pen::of(0.35, Tone::Ink)).into()];
        marks.extend(self.answer.in_columns(&[answer]).0);
        marks.extend(self.cautions.in_columns(&[cautions]).0);
        let strip = Area::new(all.at.x, all.bottom() - rulers::STRIP, all.width, rulers::STRIP);
        marks.extend(rulers::strip(&strip, scale, shown.units()));
        marks.push(self.imprint(&strip, shown, scale));
        marks
    }

    /// Scale, paper, unit, version and room for a date, below the check line.
    fn imprint(&self, strip: &Area, shown: &Shown<'_>, scale: Scale) -> Mark {
        let text = words::imprint(&words::scale(&scale.to_string(), self.paper, shown.unit()));
        let width = width_of(&text, SMALL_PRINT, Weight::Book);
        Text::new(At::new(strip.right() - width, strip.bottom() - 0.2), SMALL_PRINT, text).into()
    }
}

fn answer(titled: &Titled<'_>, width: f64, small: f64) -> Panel {
    let Titled { shown, matters, key, .. } = titled;
    let brief = shown.brief();
    let mut panel = Panel::new(width, small);
    panel.words(&words::headed(&cut(&brief.room.name, LONGEST_NAME), &shown.which()), small + 0.3, Weight::Bold);
    for line in crate::words::order::lines(brief) {
        panel.print(&line);
    }
    let large = cut(&shown.answer_line(), LONGEST_ANSWER);
    let fits = |size: &&f64| wrapped(&large, **size, Weight::Bold, width).len() <= LINES;
    let size = LARGE.iter().find(fits).or(LARGE.last()).copied().unwrap_or(small);
    panel.space();
    panel.words(&large, size, Weight::Bold);
    panel.space();
    for matter in *matters {
        panel.print(&matter.said);
    }
    panel.numbers(key, 0);
    panel
}

/// The sentences of what is eased come with the cautions; the answer is the option's title with the size to shop by.
impl Shown<'_> {
    fn answer_line(&self) -> String {
        match self {
            Shown::Option { answer, option } => {
                let main = option.pieces(&answer.brief).find(|one| one.placed.piece == option.main_seat);
                let most = main.map(|one| {
                    let [planned, most] = [one.sizes.planned(), one.sizes.together()]
                        .map(|size| super::pieces::size(self, one.piece, size));
                    words::at_most(&one.piece.name, &planned, &most, self.unit())
                });
                words::answer(&said::title(&answer.brief, *option), most.as_deref())
            }
            Shown::AsItStands { room, .. } => said::title(&room.brief, *room),
        }
    }

    fn which(&self) -> String {
        match self {
            Shown::Option { answer, option } => words::option(option, answer.options.len()),
            Shown::AsItStands { room, .. } => words::as_it_stands(room.broken.len()),
        }
    }
}
