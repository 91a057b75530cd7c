//! What a sheet says in words beside its plan: title, sizes, ways, signs, numbers, cautions.

use elbowroom_solver::plan::{Plan, ZoneKind};

use super::key::Sign;
use super::{Shown, pieces, ways};
use crate::drawing::{Area, At, Mark, Text, Weight, wrapped};
use crate::words::answer as said;
use crate::words::plan as words;
use elbowroom_model::ItemKind;

/// Space between blocks, mm.
const BLOCK: f64 = 2.6;
/// From foot to foot of two lines, in sizes of the type.
const LINE: f64 = 1.3;
/// Width of a sign before its words, mm.
const SIGN: f64 = 9.0;

/// Broken things that a sheet tells: the list in the terminal has them all.
const BROKEN: usize = 24;

/// A line of the panel, with what stands before it.
enum Line {
    /// Words.
    Words { text: String, size: f64, weight: Weight },
    /// Words over others, which stand in one column with the first of them.
    Heading { text: String },
    /// A sign in its own small area, drawn when it is known where.
    Sign { sign: Sign, text: &'static str },
    /// Space.
    Space,
}

/// What a panel is made from.
#[derive(Clone, Copy)]
pub(super) struct About<'a> {
    /// The option that the sheet shows.
    pub shown: Shown<'a>,
    /// What its plan shows.
    pub plan: &'a Plan,
    /// What each number on the plan stands for.
    pub key: &'a [String],
}

/// The lines of a panel, broken for its width, all small print in one type.
pub(super) struct Panel {
    lines: Vec<Line>,
    width: f64,
    small: f64,
}

/// A title as a sheet has room for: names that somebody wrote without end leave no cautions off it.
pub(super) fn cut(title: &str, longest: usize) -> String {
    let short: String = title.chars().take(longest).collect();
    if short.len() < title.len() { format!("{short}...") } else { short }
}

impl Panel {
    /// Everything that a working sheet says beside its plan, below what heads it.
    pub(super) fn full(mut self, about: &About<'_>) -> Self {
        self.broken(&about.shown);
        self.sizes_and_ways(&about.shown, about.plan);
        self.numbers(about.key, about.shown.breaches());
        self.signs(&about.shown, about.plan);
        self.cautions(&about.shown);
        self
    }

    /// What no sheet may leave out, for one that has no room for more.
    pub(super) fn short(mut self, about: &About<'_>) -> Self {
        self.broken(&about.shown);
        self.cautions(&about.shown);
        self.numbers(about.key, about.shown.breaches());
        self
    }

    /// One with nothing on it yet.
    pub(super) const fn new(width: f64, small: f64) -> Self {
        Self { lines: Vec::new(), width, small }
    }

    /// How wide it is, mm.
    pub(super) const fn width(&self) -> f64 {
        self.width
    }

    /// What is broken, by the numbers on the plan.
    fn broken(&mut self, shown: &Shown<'_>) {
        let Shown::AsItStands { room, .. } = shown else { return };
        if room.broken.is_empty() {
            return;
        }
        self.heading(crate::words::judge::BROKEN);
        for (place, breach) in room.broken.iter().enumerate().take(BROKEN) {
            self.print(&words::numbered(place + 1, &said::broken(&room.brief, breach)));
        }
        if room.broken.len() > BROKEN {
            self.print(&words::more_broken(room.broken.len() - BROKEN));
        }
    }

    fn sizes_and_ways(&mut self, shown: &Shown<'_>, plan: &Plan) {
        self.heading(&match shown {
            Shown::Option { .. } => words::sizes(shown.unit()),
            Shown::AsItStands { .. } => words::sizes_as_they_stand(shown.unit()),
        });
        for one in shown.pieces() {
            let turned = shown.turned(one.placed.piece);
            self.print(&words::sized(&one.piece.name, &pieces::size(shown, one.piece, one.size), turned));
        }
        if !shown.routes().is_empty() {
            self.heading(&words::ways(shown.unit()));
        }
        for (place, route) in shown.routes().iter().enumerate() {
            let (has, needs) = (shown.tape(route.width), shown.tape(route.needs));
            let way = words::way(shown.brief(), &ways::letter(place), route, &has, &needs);
            let steps_in = plan.walks.get(place).is_some_and(|walk| walk.steps_in);
            self.print(&if steps_in { words::way_that_steps_in(&way) } else { way });
        }
    }

    /// What the labels that found no room say; `after`: so many numbers stand for what is broken.
    pub(super) fn numbers(&mut self, key: &[String], after: usize) {
        if !key.is_empty() {
            self.heading(words::NUMBERS);
        }
        for (place, text) in key.iter().enumerate() {
            self.print(&words::numbered(after + place + 1, text));
        }
    }

    fn signs(&mut self, shown: &Shown<'_>, plan: &Plan) {
        let zone = |kind| plan.zones.iter().any(|zone| zone.kind == kind);
        let socket = shown.brief().room.items.iter().any(|item| matches!(item.kind, ItemKind::Socket(_)));
        let pinched = shown.routes().iter().any(|route| route.pinch.is_some());
        let all = [
            (zone(ZoneKind::Swing), Sign::Zone(ZoneKind::Swing), words::SWING),
            (zone(ZoneKind::Landing), Sign::Zone(ZoneKind::Landing), words::LANDING),
            (zone(ZoneKind::KeepClear), Sign::Zone(ZoneKind::KeepClear), words::KEEP_CLEAR),
            (!shown.routes().is_empty(), Sign::Way, words::WAY),
            (pinched, Sign::Pinch, words::PINCH),
            (!plan.sight_lines.is_empty(), Sign::Sight, words::SIGHT),
            (shown.turning_circle().is_some(), Sign::Turn, words::TURN),
            (!shown.gaps().is_empty(), Sign::Gap, words::GAP),
            (matches!(shown, Shown::Option { .. }), Sign::FromWalls, words::FROM_WALLS),
            (!plan.seats.is_empty(), Sign::Seat, words::SEAT),
            (socket, Sign::Socket, words::SOCKET),
            (shown.breaches() > 0, Sign::Broken, words::BROKEN),
        ];
        self.heading(words::SIGNS);
        self.lines.extend(
            all.into_iter().filter(|(is_there, ..)| *is_there).map(|(_, sign, text)| Line::Sign { sign, text }),
        );
    }

    /// What is eased, what is to be heeded, and what nobody measured; what the reading of the file has to say is for screens.
    pub(super) fn cautions(&mut self, shown: &Shown<'_>) {
        self.heading(words::CAUTIONS);
        let (eased, notices) = match *shown {
            Shown::Option { answer, option } => {
                (said::all_eased(&answer.brief, option), said::cautions_of(answer, option))
            }
            Shown::AsItStands { room, answer } => (Vec::new(), said::cautions_as_it_stands(room, answer)),
        };
        for sentence in eased.iter().chain(&notices) {
            self.print(sentence);
        }
        let choices = match *shown {
            Shown::Option { option, .. } => &option.choices,
            Shown::AsItStands { room, .. } => &room.choices,
        };
        if said::tells_sides(choices) {
            self.print(said::SIDES);
        }
        self.print(words::WALLS);
    }

    /// A little room between blocks.
    pub(super) fn space(&mut self) {
        self.lines.push(Line::Space);
    }

    /// How high all lines are, one below the other, mm.
    pub(super) fn height(&self) -> f64 {
        self.lines.iter().map(|line| self.height_of(line)).sum()
    }

    fn heading(&mut self, text: &str) {
        self.space();
        self.lines.push(Line::Heading { text: text.to_owned() });
    }

    /// A sentence in small print.
    pub(super) fn print(&mut self, text: &str) {
        self.words(text, self.small, Weight::Book);
    }

    /// Words, broken into lines; further lines stand in a little.
    pub(super) fn words(&mut self, text: &str, size: f64, weight: Weight) {
        for line in wrapped(text, size, weight, self.width) {
            self.lines.push(Line::Words { text: line, size, weight });
        }
    }

    fn height_of(&self, line: &Line) -> f64 {
        match line {
            Line::Words { size, .. } => size * LINE,
            Line::Heading { .. } => self.small * LINE,
            Line::Sign { .. } => (self.small * LINE).max(3.6),
            Line::Space => BLOCK,
        }
    }

    /// How high what stands in one column with a line below it is: with a heading its first line.
    fn kept_with(&self, place: usize) -> f64 {
        match self.lines.get(place..) {
            Some([Line::Heading { .. }, next, ..]) => self.height_of(next),
            _ => 0.0,
        }
    }

    /// The marks in columns, the first filled first, and whether they hold all of it; what they do not is left off.
    pub(super) fn in_columns(&self, columns: &[Area]) -> (Vec<Mark>, bool) {
        let mut marks = vec![Mark::Layer("panel")];
        let mut rest = columns.iter();
        let Some(mut column) = rest.next() else { return (marks, false) };
        let mut down = 0.0;
        for (place, line) in self.lines.iter().enumerate() {
            let height = self.height_of(line);
            if down + height + self.kept_with(place) > column.height {
                let Some(next) = rest.next() else { return (marks, false) };
                (column, down) = (next, 0.0);
            }
            if down == 0.0 && matches!(line, Line::Space) {
                continue;
            }
            let at = At::new(column.at.x, column.at.y + down);
            match line {
                Line::Words { text, size, weight } => {
                    let text = Text::new(at + At::new(0.0, *size), *size, text.clone());
                    marks.push(Text { weight: *weight, ..text }.into());
                }
                Line::Heading { text } => {
                    marks.push(Text::new(at + At::new(0.0, self.small), self.small, text.clone()).bold().into());
                }
                Line::Sign { sign, text } => {
                    let area = Area::new(at.x, at.y + 0.4, SIGN - 1.5, height - 0.8);
                    marks.extend(sign.drawn(&area));
                    let foot = at + At::new(SIGN, height / 2.0 + self.small * 0.36);
                    marks.push(Text::new(foot, self.small, *text).into());
                }
                Line::Space => {}
            }
            down += height;
        }
        (marks, true)
    }
}
