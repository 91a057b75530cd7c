//! One row of the pieces: its sizes by the file and the tables, its keys held to its kind.

use super::by_places::SofaOf;
use super::sizes::{common, raised, within};
use crate::corner::{Runs, TooShort};
use crate::dimension::Dimension;
use crate::kind::PieceKind;
use crate::length::{Extent, Measure};
use crate::piece::{Hand, Piece, SizeRange, Step};
use crate::report::{Of, Report, Taken};
use crate::rules::Rules;
use crate::scenario::document::{HandRow, PieceRow};
use crate::screen::screen_width;
use crate::tables::{KindSizes, SeatedStep, TableRange, Tables};
use crate::unit::Rounding;
use crate::yaml::Trail;

/// A key that only some kinds have: its name, whether it is given, and which kinds have it.
type SomeKinds = (&'static str, bool, fn(PieceKind) -> bool);

/// Reads one row.
pub(super) struct Reader<'a> {
    pub(super) row: &'a PieceRow,
    pub(super) kind: PieceKind,
    pub(super) name: &'a str,
    pub(super) at: &'a Trail,
    pub(super) rules: &'a Rules,
}

/// What the row gives for its dimensions.
struct Given {
    width: Option<Extent>,
    return_length: Option<Extent>,
    second_return: Option<Extent>,
    return_depth: Option<Extent>,
    depth: Option<Extent>,
}

impl Reader<'_> {
    pub(super) fn piece(&self, tables: &Tables, report: &mut Report<'_>) -> Option<Piece> {
        let before = report.count();
        let row = self.row;
        self.tell_foreign_keys(report);
        let mut sizes = tables.sizes(self.kind);
        let of = SofaOf { kind: self.kind, name: self.name, seats: row.seats, at: &self.at.key("seats") };
        sizes.width = of.width(&sizes, report).unwrap_or(sizes.width);
        let mut given = Given {
            width: self.extent(&row.width, "width", report),
            return_length: self.extent(&row.return_length, "return", report),
            second_return: self.extent(&row.second_return, "second_return", report),
            return_depth: self.extent(&row.return_depth, "return_depth", report),
            depth: self.extent(&row.depth, "depth", report),
        };
        let flat = if self.kind.is_flat() { Taken::FromZero } else { Taken::AboveZero };
        let height = self.length(&row.height, "height", flat, report).unwrap_or(sizes.height);
        let off_wall = self.length(&row.off_wall, "off_wall", Taken::FromZero, report);
        let screen = self.length(&row.screen, "screen", Taken::AboveZero, report);
        let (seated, steps) = self.steps(&sizes, report);
        let sold_sizes = seated.is_some() || !steps.is_empty();
        let square = self.square(&mut given);
        if report.count() > before {
            return None;
        }
        let of_u = sizes.u_width.as_ref().filter(|_| given.second_return.is_some());
        let (mut width, depth) = (of_u.unwrap_or(&sizes.width).range(), sizes.depth.range());
        if let Some(screen) = screen {
            width = raised(width, screen_width(screen));
        }
        let (width, depth) = seated.unwrap_or((within(width, given.width), within(depth, given.depth)));
        let (width, depth) = if square { common(width, depth) } else { (width, depth) };
        let runs = match sizes.return_length.as_ref().map(TableRange::range) {
            None => None,
            Some(table) => Some(self.held(runs(Runs::two(width, table, depth), sizes.depth.range(), &given), report)?),
        };
        let (width, depth) = runs.map_or((width, depth), |runs| (runs.width, runs.depth));
        Some(Piece {
            name: self.name.to_owned(),
            kind: self.kind,
            width,
            depth,
            return_length: runs.map(|runs| runs.return_length),
            return_depth: runs.and_then(|runs| runs.return_depth),
            second_return: runs.and_then(|runs| runs.second_return),
            steps,
            square,
            height,
            screen,
            hands: self.hands(runs.as_ref()),
            chaise: row.chaise.unwrap_or(false),
            off_wall: off_wall.unwrap_or_else(|| self.default_off_wall()),
            needed: row.needed.unwrap_or(true),
            passing: row.passing.unwrap_or(false),
            seats: row.seats.filter(|_| self.kind.is_dined_at()),
            sits: of.sits(&sizes),
            pair: row.pair.unwrap_or_default(),
            at: Vec::new(),
            group: None,
            alike: None,
            weight: sizes.weight,
            aim: None,
            stands: None,
            held: false,
            turned: row.turned.unwrap_or_default(),
            sold_sizes,
            instead: Vec::new(),
        })
    }

    fn extent(&self, measure: &Option<Measure>, figure: &str, report: &mut Report<'_>) -> Option<Extent> {
        report.extent(measure.as_ref()?, &self.at.key(figure), Of { item: self.name, figure })
    }

    fn length(&self, measure: &Option<Measure>, figure: &str, taken: Taken, report: &mut Report<'_>) -> Option<f64> {
        report.length(measure.as_ref()?, &self.at.key(figure), Of { item: self.name, figure }, taken)
    }

    /// Keys that belong to another kind.
    fn tell_foreign_keys(&self, report: &mut Report<'_>) {
        let row = self.row;
        let of_some: [SomeKinds; 11] = [
            ("hand", row.hand.is_some(), PieceKind::has_return),
            ("return", row.return_length.is_some(), PieceKind::has_return),
            ("second_return", row.second_return.is_some(), PieceKind::has_return),
            ("return_depth", row.return_depth.is_some(), PieceKind::has_return),
            ("chaise", row.chaise.is_some(), PieceKind::has_return),
            ("turned", row.turned.is_some(), PieceKind::may_turn),
            ("screen", row.screen.is_some(), PieceKind::carries_screen),
            ("centre", row.centre.is_some(), PieceKind::hangs),
            ("seats", row.seats.is_some(), PieceKind::has_places),
            ("pair", row.pair.is_some(), PieceKind::is_sold_by_places),
            ("passing", row.passing.is_some(), PieceKind::is_dined_at),
        ];
        for (key, given, has) in of_some {
            if given && !has(self.kind) {
                let message = format!("`{key}` is no key of {}, whose kind is {}.", self.name, self.kind.key());
                let remedy = format!("Leave `{key}` out; it belongs to the kind {}.", PieceKind::keys_where(has));
                report.add(&self.at.key(key), "key_of_another_kind", self.name, message, remedy);
            }
        }
    }

    /// Of what comes in steps and has no sizes of its own: the sizes that its seats ask for, or every step.
    fn steps(&self, sizes: &KindSizes, report: &mut Report<'_>) -> (Option<(SizeRange, SizeRange)>, Vec<Step>) {
        if self.row.width.is_some() || self.row.depth.is_some() {
            return (None, Vec::new());
        }
        let Some(seats) = self.row.seats else {
            return (None, sizes.steps.iter().map(|step| step.size).collect());
        };
        let enough = |step: &&SeatedStep| step.seats.is_some_and(|places| places >= seats);
        if let Some(step) = sizes.steps.iter().find(enough) {
            return (Some((SizeRange::fixed(step.size.width), SizeRange::fixed(step.size.depth))), Vec::new());
        }
        let most = sizes.steps.iter().filter_map(|step| step.seats).max().unwrap_or(0);
        if self.kind.is_dined_at() {
            let message = format!("{} is to seat {seats}; the table knows sizes for {most} at most.", self.name);
            let remedy = "Give its width and depth (24 in, 610 mm, a place along each long side).".to_owned();
            report.add(&self.at.key("seats"), "too_many_seats", self.name, message, remedy);
        }
        (None, Vec::new())
    }

    /// Whether width and depth are one size; what is given for the one then holds for the other.
    fn square(&self, given: &mut Given) -> bool {
        let (width, depth) = (given.width, given.depth);
        let square = self.kind.traits().is_square && (width.is_none() || depth.is_none() || width == depth);
        if square {
            (given.width, given.depth) = (width.or(depth), depth.or(width));
        }
        square
    }

    /// The runs of a corner sofa held to one another; `None` after the fault of one that is too short.
    fn held(&self, given: Runs, report: &mut Report<'_>) -> Option<Runs> {
        if let Some(short) = given.too_short() {
            let keys = [
                (short.which.key(), self.row.return_length.is_some() || short.which != Dimension::Return),
                ("depth", self.row.depth.is_some()),
            ];
            let at = keys.iter().find(|(_, given)| *given).map_or_else(|| self.at.clone(), |(key, _)| self.at.key(key));
            let (message, remedy) = (short.message(self.name, report.units()), short.remedy(report.units()));
            report.add(&at, TooShort::CODE, self.name, message, remedy);
            return None;
        }
        let held = given.held();
        let ends = [
            ("least", Rounding::Up, "width", given.width.least, held.width.least),
            ("least", Rounding::Up, "return", given.return_length.least, held.return_length.least),
            ("most", Rounding::Down, "depth", given.depth.most, held.depth.most),
        ];
        let mut ends: Vec<_> = ends.into();
        if let (Some(was), Some(is)) = (given.second_return, held.second_return) {
            ends.push(("least", Rounding::Up, "second return", was.least, is.least));
        }
        if let (Some(was), Some(is)) = (given.return_depth, held.return_depth) {
            ends.push(("most", Rounding::Down, "depth of the return", was.most, is.most));
        }
        for (end, rounding, key, was, is) in ends.into_iter().filter(|(_, _, _, was, is)| was != is) {
            report.notice(format!(
                "The {end} {key} of {} is taken as {}, not {}: each run of a corner sofa, the corner included, is longer \
                 than the other is deep.",
                self.name,
                report.units().words(is, rounding),
                report.words(was)
            ));
        }
        Some(held)
    }

    /// A U with two returns alike has one: the other is the same sofa.
    fn hands(&self, runs: Option<&Runs>) -> Vec<Hand> {
        let is_own = self.row.chaise == Some(true) || runs.is_some_and(|runs| runs.return_depth.is_some());
        let is_even = !is_own && runs.is_some_and(|runs| runs.second_return == Some(runs.return_length));
        match self.row.hand {
            _ if !self.kind.has_return() => Vec::new(),
            _ if is_even => vec![Hand::Left],
            Some(HandRow::Left) => vec![Hand::Left],
            Some(HandRow::Right) => vec![Hand::Right],
            Some(HandRow::Either) | None => Hand::ALL.to_vec(),
        }
    }

    fn default_off_wall(&self) -> f64 {
        self.kind.traits().off_wall.map_or(0.0, |clearance| self.rules.get(clearance))
    }
}

/// The runs as the file gives them, over those of the table: a return with a depth of its own, a second one. Where the file
/// gives the second alone the first is like it.
fn runs(table: Runs, depth: SizeRange, given: &Given) -> Runs {
    let first = given.return_length.or(given.second_return);
    Runs {
        return_length: within(table.return_length, first),
        second_return: given.second_return.map(|second| within(table.return_length, Some(second))),
        return_depth: given.return_depth.map(|own| within(depth, Some(own))),
        ..table
    }
}
