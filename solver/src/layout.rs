//! A finished layout: which pieces stand where, how large, facing which way.

use elbowroom_model::{Brief, Dimension, Hand, Piece, PieceId, Point, SizeRange, WallId};

use crate::geometry::Convex;
use crate::rules::Cause;

/// The sizes of one piece as laid out, mm.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Size {
    /// Along its back (of a corner sofa: of the main run, the corner included).
    pub width: f64,
    /// Whole length of a corner sofa's return, the corner included.
    pub return_length: Option<f64>,
    /// Whole length of a second return, at the other end of the main run.
    pub second_return: Option<f64>,
    /// Away from its back.
    pub depth: f64,
    /// Depth of the return, where it has one of its own.
    pub return_depth: Option<f64>,
}

impl Size {
    /// The sizes that `of` takes from the ranges of a piece.
    #[must_use]
    pub fn of_piece(piece: &Piece, of: impl Fn(SizeRange) -> f64) -> Self {
        Self {
            width: of(piece.width),
            return_length: piece.return_length.map(&of),
            second_return: piece.second_return.map(&of),
            depth: of(piece.depth),
            return_depth: piece.return_depth.map(&of),
        }
    }

    /// The size in one dimension; `None` where the piece has no such dimension.
    #[must_use]
    pub const fn get(&self, dimension: Dimension) -> Option<f64> {
        match dimension {
            Dimension::Width => Some(self.width),
            Dimension::Return => self.return_length,
            Dimension::SecondReturn => self.second_return,
            Dimension::Depth => Some(self.depth),
            Dimension::ReturnDepth => self.return_depth,
        }
    }

    /// The same size with one dimension changed.
    #[must_use]
    pub const fn with(mut self, dimension: Dimension, size: f64) -> Self {
        match dimension {
            Dimension::Width => self.width = size,
            Dimension::Return => self.return_length = Some(size),
            Dimension::SecondReturn => self.second_return = Some(size),
            Dimension::Depth => self.depth = size,
            Dimension::ReturnDepth => self.return_depth = Some(size),
        }
        self
    }

    /// How deep the return is.
    #[must_use]
    pub fn deep_return(&self) -> f64 {
        self.return_depth.unwrap_or(self.depth)
    }

    /// From where to where along the main run of a corner sofa people sit along its front, from the outer corner: beyond the
    /// return, to the second one or the free end.
    #[must_use]
    pub fn bay(&self) -> (f64, f64) {
        let second = if self.second_return.is_some() { self.depth } else { 0.0 };
        (self.deep_return(), self.width - second)
    }
}

/// One piece as it stands.
///
/// Its own axes are `facing` and [`Placed::left`], the left of one who sits on it (or stands with the back to its back).
/// For a piece at a wall `left` is the wall's own direction, from its left to its right end as seen from inside.
#[derive(Debug, Clone, PartialEq)]
pub struct Placed {
    /// Its place in [`Brief::pieces`].
    pub piece: PieceId,
    /// The wall it stands at; `None`: it stands free.
    pub at_wall: Option<WallId>,
    /// Middle of its back edge; of a corner sofa the outer corner, where both backs meet.
    pub anchor: Point,
    /// Unit vector from its back to its front.
    pub facing: Point,
    /// Side of a corner sofa's return, as one sits on the main run.
    pub hand: Option<Hand>,
    /// Its sizes.
    pub size: Size,
}

impl Placed {
    /// Unit vector to the left of one who sits on it.
    #[must_use]
    pub const fn left(&self) -> Point {
        self.facing.left()
    }

    /// From the anchor along the main run, for a corner sofa: away from the return. For other pieces: to the left.
    #[must_use]
    pub fn along(&self) -> Point {
        match self.hand {
            Some(Hand::Left) => -self.left(),
            Some(Hand::Right) | None => self.left(),
        }
    }

    /// The part of each return, with the way that who sits there faces: along the main run, away from its own end of it.
    pub fn returns(&self) -> impl Iterator<Item = (Convex, Point)> {
        self.parts().into_iter().skip(1).zip([self.along(), -self.along()])
    }

    /// Convex, counter-clockwise, disjoint parts: one rectangle, or the main run whole and then each return less its corner.
    #[must_use]
    pub fn parts(&self) -> Vec<Convex> {
        let Size { width, return_length, second_return, depth, .. } = self.size;
        match (self.hand, return_length) {
            (Some(_), Some(return_length)) => {
                let deep = self.size.deep_return();
                let both = [self.block(0.0, width, 0.0, depth), self.block(0.0, deep, depth, return_length)];
                let second = second_return.map(|length| self.block(width - depth, width, depth, length));
                both.into_iter().chain(second).collect()
            }
            _ => vec![self.block(-width / 2.0, width / 2.0, 0.0, depth)],
        }
    }

    /// The main run of a corner sofa, the whole of any other piece.
    #[must_use]
    pub fn main(&self) -> Convex {
        match self.hand {
            Some(_) => self.block(0.0, self.size.width, 0.0, self.size.depth),
            None => self.block(-self.size.width / 2.0, self.size.width / 2.0, 0.0, self.size.depth),
        }
    }

    /// Both ends of its front edge (of a corner sofa: of the main run, the part before a return left out): the left
    /// one, then the right one, as one sits.
    #[must_use]
    pub fn front(&self) -> (Point, Point) {
        let at = |along: f64| self.anchor + self.along() * along + self.facing * self.size.depth;
        let (from, to) = self.size.bay();
        match self.hand {
            Some(Hand::Left) => (at(from), at(to)),
            Some(Hand::Right) => (at(to), at(from)),
            None => (at(self.size.width / 2.0), at(-self.size.width / 2.0)),
        }
    }

    /// Middle of its back edge (of a corner sofa: of the main run's).
    #[must_use]
    pub fn back_middle(&self) -> Point {
        match self.hand {
            Some(_) => self.anchor + self.along() * (self.size.width / 2.0),
            None => self.anchor,
        }
    }

    /// A rectangle in the piece's own axes: `from..to` along, `near..far` toward the front; counter-clockwise.
    #[must_use]
    pub fn block(&self, from: f64, to: f64, near: f64, far: f64) -> Convex {
        let at = |along: f64, out: f64| self.anchor + self.along() * along + self.facing * out;
        let corners = [at(from, near), at(to, near), at(to, far), at(from, far)];
        Convex::counter_clockwise(corners)
    }
}

/// Every piece that stands, as it stands.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Layout {
    /// Pieces that stand, in the order of [`Brief::pieces`].
    pub placed: Vec<Placed>,
    /// Pieces with `needed: false` that found no room, by their place in [`Brief::pieces`].
    pub left_out: Vec<PieceId>,
    /// Centre of the turning circle, where one is asked for.
    pub turning_circle: Option<Point>,
    /// Rules of comfort that no layout of the arrangement keeps, and that this one therefore gives only in part.
    pub eased: Vec<Cause>,
}

impl Layout {
    /// How the piece at `piece` in [`Brief::pieces`] stands; `None` where it was left out.
    #[must_use]
    pub fn of(&self, piece: PieceId) -> Option<&Placed> {
        self.placed.iter().find(|placed| placed.piece == piece)
    }

    /// Sum over the pieces that stand and their dimensions of weight times the value of the size. A piece with
    /// `needed: false` counts from zero.
    #[must_use]
    pub fn size_value(&self, brief: &Brief) -> f64 {
        self.value_by(brief, |placed, dimension, _| placed.size.get(dimension))
    }

    /// The same with every size of what stands at its most: no layout of these pieces has more.
    #[must_use]
    pub(crate) fn most_size_value(&self, brief: &Brief) -> f64 {
        self.value_by(brief, |placed, dimension, range| placed.size.get(dimension).map(|_| range.most))
    }

    fn value_by(&self, brief: &Brief, size: fn(&Placed, Dimension, SizeRange) -> Option<f64>) -> f64 {
        let value = |placed: &Placed| {
            let Some(piece) = brief.piece(placed.piece) else { return 0.0 };
            let of = |dimension| {
                let range = piece.range(dimension)?;
                Some(value_of(piece, range, size(placed, dimension, range)?))
            };
            piece.dimensions().into_iter().filter_map(of).sum::<f64>() * piece.weight
        };
        self.placed.iter().map(value).sum()
    }
}

/// Value of one dimension, before the piece's weight.
fn value_of(piece: &Piece, range: SizeRange, size: f64) -> f64 {
    if piece.needed { range.value(size) } else { range.value(size) + range.least }
}
