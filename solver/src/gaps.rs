//! The clear distances that rules ask for, as a finished layout has them.

use elbowroom_model::{Brief, Piece, PieceKind, Point, Rule};

use crate::geometry::{Convex, gap};
use crate::layout::{Layout, Placed};
use crate::outcome::GapFound;
use crate::site::{BodyId, Site};

/// Fronts within this of opposite face each other: cosine of 10 degrees.
const FACING: f64 = 0.984_807_753_012_208;

/// Every gap that a rule asks for and that this layout has, in the order of the pieces.
#[must_use]
pub fn gaps(brief: &Brief, site: &Site, layout: &Layout) -> Vec<GapFound> {
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

struct Measure<'a> {
    brief: &'a Brief,
    site: &'a Site,
    layout: &'a Layout,
}

impl Measure<'_> {
    fn between(&self, first: &Placed, second: &Placed) -> Option<GapFound> {
        let (a, b) = (self.piece(first)?, self.piece(second)?);
        match (a.kind, b.kind) {
            (PieceKind::CoffeeTable, kind) if kind.is_seat() => self.table(second, first),
            (kind, PieceKind::CoffeeTable) if kind.is_seat() => self.table(first, second),
            (PieceKind::CoffeeTable, PieceKind::MediaUnit) | (PieceKind::MediaUnit, PieceKind::CoffeeTable) => {
                Some(self.told(first, second, gap(&first.main(), &second.main()).clear, Rule::Passage))
            }
            (kind, PieceKind::MediaUnit) if kind.is_seat() => self.fronts(first, second, Rule::ScreenToSeat),
            (PieceKind::MediaUnit, kind) if kind.is_seat() => self.fronts(second, first, Rule::ScreenToSeat),
            (one, other) if one.is_seat() && other.is_seat() => self.fronts(first, second, Rule::FacingSeats),
            _ => None,
        }
    }

    /// Straight before the front of the seat that it serves.
    fn table(&self, seat: &Placed, table: &Placed) -> Option<GapFound> {
        let clear = along(&table.main(), -seat.facing, seat) - front_of(seat);
        let serves = (clear - self.brief.rules.get(Rule::SeatToTable)).abs() < 1.0 && overlap(seat, table);
        serves.then(|| self.told(seat, table, clear, Rule::SeatToTable))
    }

    fn fronts(&self, seat: &Placed, other: &Placed, rule: Rule) -> Option<GapFound> {
        if seat.facing.dot(other.facing) > -FACING || !overlap(seat, other) {
            return None;
        }
        let clear = along(&other.main(), -seat.facing, seat) - front_of(seat);
        (clear > 0.0).then(|| self.told(seat, other, clear, rule))
    }

    /// What is free before storage, a desk or a dining table, to whatever comes first.
    fn before(&self, placed: &Placed) -> Option<GapFound> {
        let piece = self.piece(placed)?;
        let rule = match piece.kind {
            PieceKind::Bookcase | PieceKind::Sideboard => Rule::StorageFront,
            PieceKind::Desk => Rule::DeskFront,
            PieceKind::DiningTable if piece.passing => Rule::DiningPassing,
            PieceKind::DiningTable => Rule::DiningChair,
            _ => return None,
        };
        let front = front_of(placed);
        let pieces = self.layout.placed.iter().filter(|other| other.piece != placed.piece && !self.is_rug(other));
        let pieces = pieces.flat_map(|other| {
            let name = self.name(other);
            other.parts().into_iter().map(move |part| (name.clone(), part))
        });
        let bodies = self.site.bodies.iter().map(|body| (self.body_name(body.id), body.shape.clone()));
        let walls = self.site.walls.iter().map(|wall| {
            let name = self.brief.room.wall(wall.id).map(|wall| wall.name.clone()).unwrap_or_default();
            (
                name,
                Convex::counter_clockwise(vec![wall.start, wall.end, wall.end - wall.inward, wall.start - wall.inward]),
            )
        });
        let ahead = pieces.chain(bodies).chain(walls).filter_map(|(name, shape)| {
            let clear = along(&strip(placed, &shape)?, -placed.facing, placed) - front;
            (clear > -1e-6).then_some((name, clear))
        });
        let (name, clear) = ahead.min_by(|a, b| a.1.total_cmp(&b.1))?;
        let between = [self.name(placed), name];
        Some(GapFound { between, clear, needs: self.brief.rules.get(rule), rule: rule.key().to_owned() })
    }

    fn told(&self, first: &Placed, second: &Placed, clear: f64, rule: Rule) -> GapFound {
        let between = [self.name(first), self.name(second)];
        GapFound { between, clear, needs: self.brief.rules.get(rule), rule: rule.key().to_owned() }
    }

    fn piece(&self, placed: &Placed) -> Option<&Piece> {
        self.brief.pieces.get(placed.piece)
    }

    fn is_rug(&self, placed: &Placed) -> bool {
        self.piece(placed).is_some_and(|piece| piece.kind == PieceKind::Rug)
    }

    fn name(&self, placed: &Placed) -> String {
        self.piece(placed).map(|piece| piece.name.clone()).unwrap_or_default()
    }

    fn body_name(&self, id: BodyId) -> String {
        let room = &self.brief.room;
        match id {
            BodyId::Fixed(id) => room.fixed.get(id.0).map(|fixed| fixed.name.clone()),
            BodyId::Item(id) => room.items.get(id.0).map(|item| item.name.clone()),
        }
        .unwrap_or_default()
    }
}

/// How far before the seat's anchor the shape begins, against `towards`.
fn along(shape: &Convex, towards: Point, seat: &Placed) -> f64 {
    -shape.support(towards) - seat.anchor.dot(seat.facing)
}

const fn front_of(placed: &Placed) -> f64 {
    placed.size.depth
}

/// Whether the two overlap sideways, as the first one sits.
fn overlap(seat: &Placed, other: &Placed) -> bool {
    let (left, main, shape) = (seat.left(), seat.main(), other.main());
    let low = (-main.support(-left)).max(-shape.support(-left));
    main.support(left).min(shape.support(left)) - low > 1e-6
}

/// The part of a shape straight before a piece's back, over the piece's width.
fn strip(placed: &Placed, shape: &Convex) -> Option<Convex> {
    let (left, main) = (placed.left(), placed.main());
    let within = shape.clipped(left, main.support(left) - 1e-6)?;
    within.clipped(-left, main.support(-left) - 1e-6)
}
