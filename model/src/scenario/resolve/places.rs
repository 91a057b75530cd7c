//! Where pieces stand in the room as it is.

use super::names::Names;
use crate::dimension::Dimension;
use crate::nearest::nearest;
use crate::piece::Piece;
use crate::point::Point;
use crate::quote::quoted;
use crate::report::{Of, Report, Taken};
use crate::room::{Room, WallId};
use crate::scenario::check;
use crate::scenario::document::{Document, PlaceRow};
use crate::stands_at::StandsAt;
use crate::yaml::Trail;

/// What is needed to read the places.
pub(super) struct Places<'a> {
    pub(super) document: &'a Document,
    pub(super) names: &'a Names,
    /// `None` where the room has a fault.
    pub(super) room: Option<&'a Room>,
}

impl Places<'_> {
    /// Gives each of `pieces` its place, where the file has one.
    pub(super) fn resolve(&self, pieces: &mut [Piece], report: &mut Report<'_>) {
        let root = Trail::default().key("pieces");
        for (place, row) in self.document.pieces.iter().flatten().enumerate() {
            let (at, names) = (root.index(place), &self.names.pieces[place]);
            let (Some(row), Some(name)) = (row, names.first()) else { continue };
            let hold = row.hold.unwrap_or(false);
            let Some(given) = &row.place else {
                if hold && !report.was_told(&at.key("place")) {
                    let message = format!("{name} is to be held, and the file does not say where it stands.");
                    let remedy = "Give its `place`, such as `{ wall: party wall, from: 58 }`, or leave `hold` out.";
                    report.add(&at.key("hold"), "hold_without_place", name, message, remedy.to_owned());
                }
                continue;
            };
            if names.len() > 1 {
                let message = format!("One `place` is given for {} pieces, {name} and those like it.", names.len());
                let remedy = "Give each piece a row of its own, with its `place`.".to_owned();
                report.add(&at.key("place"), "place_of_several", name, message, remedy);
                continue;
            }
            let Some(piece) = pieces.iter_mut().find(|piece| piece.name == *name) else { continue };
            let one = One { names: self.names, room: self.room, piece, at: &at.key("place") };
            let stands = one.read(given, report);
            piece.held = hold && stands.is_some();
            piece.stands = stands;
        }
    }
}

/// Reads one place.
struct One<'a> {
    names: &'a Names,
    room: Option<&'a Room>,
    piece: &'a Piece,
    at: &'a Trail,
}

impl One<'_> {
    fn read(&self, row: &PlaceRow, report: &mut Report<'_>) -> Option<StandsAt> {
        let by_wall = row.wall.is_some() || row.from.is_some() || row.off.is_some();
        let by_point = row.at.is_some() || row.facing.is_some();
        let stands = match (by_wall, by_point) {
            (true, true) => {
                let message = format!("The place of {} is given by a wall and by coordinates.", self.piece.name);
                let remedy = "Keep `wall`, `from` and `off`, or `at` and `facing`.".to_owned();
                report.add(self.at, "place_mixed", &self.piece.name, message, remedy);
                return None;
            }
            (_, false) => self.at_wall(row, report),
            (false, true) => self.at_point(row, report),
        }?;
        self.has_one_hand(report)?;
        let room = self.room?;
        check::places::in_the_room(self.piece, &stands, room, self.at, report).then_some(())?;
        self.tell_sizes(report);
        Some(stands)
    }

    fn at_wall(&self, row: &PlaceRow, report: &mut Report<'_>) -> Option<StandsAt> {
        let name = &self.piece.name;
        let wall = match &row.wall {
            Some(wall) => self.wall(wall, report),
            None => self.missing("wall", "the wall behind it, with `from`; or `at` and `facing`", report),
        };
        let from = match &row.from {
            Some(from) => report.length(from, &self.at.key("from"), Of { item: name, figure: "from" }, Taken::FromZero),
            None if row.wall.is_none() => None,
            None => {
                self.missing("from", "how far its nearer end is from the left end of the wall, as you face it", report)
            }
        };
        let off = match &row.off {
            Some(off) => report.length(off, &self.at.key("off"), Of { item: name, figure: "off" }, Taken::FromZero),
            None => Some(self.piece.off_wall),
        };
        Some(StandsAt::Wall { wall: wall?, from: from?, off: off? })
    }

    fn at_point(&self, row: &PlaceRow, report: &mut Report<'_>) -> Option<StandsAt> {
        let of = Of { item: &self.piece.name, figure: "at" };
        let back = match &row.at {
            Some([x, y]) => {
                let at = self.at.key("at");
                let x = report.length(x, &at.index(0), of, Taken::Any);
                let y = report.length(y, &at.index(1), of, Taken::Any);
                x.zip(y).map(|(x, y)| Point::new(x, y))
            }
            None => self.missing("at", "plan coordinates [x, y] of the middle of its back", report),
        };
        let facing = match row.facing {
            Some(degrees) => self.facing(degrees, report),
            None => self.missing("facing", "the way it faces, degrees counter-clockwise from +x", report),
        };
        Some(StandsAt::Place { back: back?, facing: facing? })
    }

    fn wall(&self, wall: &str, report: &mut Report<'_>) -> Option<WallId> {
        let walls = &self.names.walls;
        let found = walls.iter().position(|name| name == wall);
        if found.is_none() {
            let known = || walls.iter().map(|name| quoted(name)).collect::<Vec<_>>().join(", ");
            let remedy = nearest(wall, walls.iter().map(String::as_str)).map_or_else(
                || format!("The walls are {}.", known()),
                |near| format!("Did you mean `{}`?", quoted(near)),
            );
            let message = format!("{} stands at `{}`, and there is no such wall.", self.piece.name, quoted(wall));
            report.add(&self.at.key("wall"), "unknown_wall", &self.piece.name, message, remedy);
        }
        found.map(WallId)
    }

    fn facing(&self, degrees: f64, report: &mut Report<'_>) -> Option<Point> {
        if (-360.0..=360.0).contains(&degrees) {
            return Some(Point::toward(degrees));
        }
        let name = &self.piece.name;
        let message = format!("{name} faces {degrees} degrees; it must lie between -360 and 360.");
        let remedy = "Give degrees counter-clockwise from +x: 0 is to the right, 90 up the plan.".to_owned();
        report.add(&self.at.key("facing"), "facing_out_of_range", name, message, remedy);
        None
    }

    /// Tells that `key` is missing, unless its fault was told.
    fn missing<T>(&self, key: &str, what: &str, report: &mut Report<'_>) -> Option<T> {
        if !report.was_told(&self.at.key(key)) {
            let name = &self.piece.name;
            let message = format!("The place of {name} has no `{key}`.");
            report.add(self.at, "missing_key", name, message, format!("Give `{key}`: {what}."));
        }
        None
    }

    /// What stands has one hand, where a hand says anything of it.
    fn has_one_hand(&self, report: &mut Report<'_>) -> Option<()> {
        if self.piece.hands.len() < 2 || self.piece.has_like_returns() {
            return Some(());
        }
        let name = &self.piece.name;
        let message = format!("{name} stands in its place, and the file does not say on which side its return is.");
        let remedy = "Give `hand`: left or right, as you sit on the main run.".to_owned();
        report.add(self.at, "missing_key", name, message, remedy);
        None
    }

    /// Tells which sizes of what stands are taken as usual.
    fn tell_sizes(&self, report: &mut Report<'_>) {
        let unknown = |dimension: &Dimension| !self.piece.size_is_known(*dimension);
        let sizes = self.piece.dimensions().into_iter().filter(unknown);
        let said = sizes.filter_map(|dimension| {
            let size = self.piece.size_as_it_stands(dimension)?;
            Some(format!("{} {}", dimension.key(), report.words(size)))
        });
        let said: Vec<String> = said.collect();
        if !said.is_empty() {
            let name = &self.piece.name;
            report.notice(format!(
                "{name} stands in its place with sizes left open; as it stands it is taken as usual: {}.",
                said.join(", ")
            ));
        }
    }
}
