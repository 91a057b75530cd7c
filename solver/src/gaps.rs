//! The clear distances that rules ask for, as a finished layout has them.

use elbowroom_model::{Brief, Clearance, Piece, Point};

use crate::answer::{Gap, Thing};
use crate::arrangement::face;
use crate::geometry::{Convex, gap};
use crate::layout::{Layout, Placed, Size};
use crate::site::Site;

/// Two lengths of one gap that differ by less are the same, mm: results tell places to a thousandth.
const SAME_GAP: f64 = 1e-3;

/// What lies before less of a front than this lies beside it, and what reaches behind it by less lies before it, mm: no
/// tape tells it from flush, and as much may come of rounding, for the re-check pulls in half a millimetre on either side.
const FLUSH: f64 = 1.0;

/// Every gap that a rule asks for and that this layout has, in the order of the pieces.
#[must_use]
pub fn gaps(brief: &Brief, site: &Site, layout: &Layout) -> Vec<Gap> {
    measured(brief, site, layout).into_iter().map(|(gap, _)| gap).collect()
}

/// The same gaps, each with the two places between which it is measured: from the first of the two to the second.
#[must_use]
pub fn measured(brief: &Brief, site: &Site, layout: &Layout) -> Vec<(Gap, [Point; 2])> {
    let measure = Measure { brief, site, layout };
    let mut found = Vec::new();
    for (order, first) in layout.placed.iter().enumerate() {
        for second in &layout.placed[order + 1..] {
            found.extend(measure.between(first, second));
        }
    }
    found.extend(layout.placed.iter().filter_map(|placed| measure.before(placed)));
    found
}

/// What a piece is among those that sit together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Part {
    Seat,
    Table,
    Screen,
}

impl Part {
    fn of(brief: &Brief, piece: &Piece) -> Option<Self> {
        let parts = [
            (piece.kind.is_seat(), Self::Seat),
            (piece.kind.stands_before_seat(), Self::Table),
            (brief.is_watched(piece), Self::Screen),
        ];
        parts.into_iter().find_map(|(is_such, part)| is_such.then_some(part))
    }
}

/// A gap and the two places between which it is measured.
type Measured = (Gap, [Point; 2]);

struct Measure<'a> {
    brief: &'a Brief,
    site: &'a Site,
    layout: &'a Layout,
}

impl Measure<'_> {
    fn between(&self, first: &Placed, second: &Placed) -> Option<Measured> {
        let (a, b) = (self.piece(first)?, self.piece(second)?);
        match (Part::of(self.brief, a)?, Part::of(self.brief, b)?) {
            (Part::Table, Part::Seat) => self.table(second, first),
            (Part::Seat, Part::Table) => self.table(first, second),
            (Part::Table, Part::Screen) | (Part::Screen, Part::Table) => Some(self.passage(first, second)),
            (Part::Seat, Part::Screen) => self.fronts(first, second, Clearance::ScreenToSeat),
            (Part::Screen, Part::Seat) => self.fronts(second, first, Clearance::ScreenToSeat),
            (Part::Seat, Part::Seat) => self.fronts(first, second, Clearance::FacingSeats),
            (Part::Table, Part::Table) | (Part::Screen, Part::Screen) => None,
        }
    }

    /// Between table and screen.
    fn passage(&self, first: &Placed, second: &Placed) -> Measured {
        let gap = gap(&first.main(), &second.main());
        // Square to both where they are parallel; else between their nearest places.
        let is_told = |[from, to]: &[Point; 2]| ((*to - *from).norm() - gap.clear).abs() < SAME_GAP;
        let at = level(first, second).filter(is_told).unwrap_or(gap.at);
        (self.told(first, second, gap.clear, Clearance::Passage), at)
    }

    /// Straight before the front of the seat that it serves.
    fn table(&self, seat: &Placed, table: &Placed) -> Option<Measured> {
        let clear = along(&table.main(), -seat.facing, seat) - front_of(seat);
        let serves = (clear - self.brief.rules.get(Clearance::SeatToTable)).abs() < 1.0 && overlap(seat, table);
        serves.then(|| (self.told(seat, table, clear, Clearance::SeatToTable), ahead(seat, &table.main(), clear)))
    }

    fn fronts(&self, seat: &Placed, other: &Placed, rule: Clearance) -> Option<Measured> {
        if !face(seat.facing, other.facing) || !overlap(seat, other) {
            return None;
        }
        let clear = along(&other.main(), -seat.facing, seat) - front_of(seat);
        (clear > 0.0).then(|| (self.told(seat, other, clear, rule), ahead(seat, &other.main(), clear)))
    }

    /// What is free before storage, a desk or a long side of a dining table, to whatever comes first.
    fn before(&self, placed: &Placed) -> Option<Measured> {
        let piece = self.piece(placed)?;
        let rule = piece.keeps_clear()?;
        if piece.kind.is_dined_at() && placed.size.depth > placed.size.width {
            let before = from_ends(placed).into_iter().filter_map(|table| self.before_front(&table, rule));
            return before.min_by(|a, b| a.0.clear.total_cmp(&b.0.clear));
        }
        self.before_front(placed, rule)
    }

    fn before_front(&self, placed: &Placed, rule: Clearance) -> Option<Measured> {
        let front = front_of(placed);
        let pieces = self.layout.placed.iter().filter(|other| other.piece != placed.piece && !self.is_flat(other));
        let pieces = pieces.flat_map(|other| other.parts().into_iter().map(|part| (Thing::Piece(other.piece), part)));
        let bodies = self.site.bodies.iter().map(|body| (body.id.into(), body.shape.clone()));
        let walls = self.site.walls.iter().map(|wall| {
            let behind = [wall.start, wall.end, wall.end - wall.inward, wall.start - wall.inward];
            (Thing::Wall(wall.id), Convex::counter_clockwise(behind))
        });
        let ahead_of = pieces.chain(bodies).chain(walls).filter_map(|(thing, shape)| {
            let shape = strip(placed, &shape)?;
            let clear = along(&shape, -placed.facing, placed) - front;
            (clear > -FLUSH).then_some((thing, clear.max(0.0), shape))
        });
        let (thing, clear, shape) = ahead_of.min_by(|a, b| a.1.total_cmp(&b.1))?;
        let between = [Thing::Piece(placed.piece), thing];
        let found = Gap { between, clear, needs: self.brief.rules.get(rule), rule };
        Some((found, ahead(placed, &shape, clear)))
    }

    fn told(&self, first: &Placed, second: &Placed, clear: f64, rule: Clearance) -> Gap {
        let between = [first.piece, second.piece].map(Thing::Piece);
        Gap { between, clear, needs: self.brief.rules.get(rule), rule }
    }

    fn piece(&self, placed: &Placed) -> Option<&Piece> {
        self.brief.piece(placed.piece)
    }

    fn is_flat(&self, placed: &Placed) -> bool {
        self.piece(placed).is_some_and(|piece| piece.kind.is_flat())
    }
}

/// How far before the seat's anchor the shape begins, against `towards`.
fn along(shape: &Convex, towards: Point, seat: &Placed) -> f64 {
    -shape.support(towards) - seat.anchor.dot(seat.facing)
}

/// From the front of `seat` straight ahead by `clear`, in the middle of what it and `shape` have in common sideways.
fn ahead(seat: &Placed, shape: &Convex, clear: f64) -> [Point; 2] {
    let (left, main) = (seat.left(), seat.main());
    let aside = middle_of_common(left, &main, shape) - seat.anchor.dot(left);
    let from = seat.anchor + left * aside + seat.facing * front_of(seat);
    [from, from + seat.facing * clear]
}

/// The two places of a gap that is square to the first of two pieces, where they stand before each other.
fn level(first: &Placed, second: &Placed) -> Option<[Point; 2]> {
    let (one, other) = (first.main(), second.main());
    [first.facing, -first.facing, first.left(), -first.left()].into_iter().find_map(|way| {
        let (from, to) = (one.support(way), -other.support(-way));
        let across = way.left();
        let shared = one.support(across).min(other.support(across)) + one.support(-across).min(other.support(-across));
        let base = across * middle_of_common(across, &one, &other);
        (to > from && shared > FLUSH).then(|| [base + way * from, base + way * to])
    })
}

/// Along `across`, the middle of what two shapes have in common.
fn middle_of_common(across: Point, one: &Convex, other: &Convex) -> f64 {
    let (high, low) =
        (one.support(across).min(other.support(across)), -one.support(-across).min(other.support(-across)));
    (high + low) / 2.0
}

/// A table as seen from either of its ends.
fn from_ends(table: &Placed) -> [Placed; 2] {
    let Size { width, depth, .. } = table.size;
    [table.left(), -table.left()].map(|facing| Placed {
        anchor: table.anchor + table.facing * (depth / 2.0) - facing * (width / 2.0),
        facing,
        size: Size { width: depth, depth: width, ..table.size },
        ..table.clone()
    })
}

const fn front_of(placed: &Placed) -> f64 {
    placed.size.depth
}

/// Whether the two overlap sideways, as the first one sits.
fn overlap(seat: &Placed, other: &Placed) -> bool {
    let (left, main, shape) = (seat.left(), seat.main(), other.main());
    let low = (-main.support(-left)).max(-shape.support(-left));
    main.support(left).min(shape.support(left)) - low > FLUSH
}

/// The part of a shape straight before a piece's back, over the piece's width less what is flush at either end.
fn strip(placed: &Placed, shape: &Convex) -> Option<Convex> {
    let (left, main) = (placed.left(), placed.main());
    let within = shape.clipped(left, main.support(left) - FLUSH)?;
    within.clipped(-left, main.support(-left) - FLUSH)
}
