//! What the rules look at: the checked, and each piece with its parts.

use elbowroom_model::{Brief, Clearance, Piece, PieceId, PieceKind, Point};

use super::checked_room::CheckedRoom;
use super::tolerance::SLACK;
use crate::answer::Thing;
use crate::arrangement::Arrangement;
use crate::geometry::{Convex, apart};
use crate::layout::{Layout, Placed};

/// A layout ready to be checked.
pub(super) struct CheckedLayout<'a> {
    pub(super) brief: &'a Brief,
    pub(super) arrangement: &'a Arrangement,
    pub(super) checked: &'a CheckedRoom<'a>,
    pub(super) pieces: Vec<InPlace<'a>>,
}

/// A piece where it stands.
pub(super) struct InPlace<'a> {
    pub(super) piece: &'a Piece,
    pub(super) placed: &'a Placed,
    /// Its parts as laid out.
    pub(super) parts: Vec<Convex>,
    /// Its parts less the slack: what rounding cannot explain away.
    pub(super) tight: Vec<Convex>,
}

impl<'a> CheckedLayout<'a> {
    pub(super) fn of(checked: &'a CheckedRoom<'a>, layout: &'a Layout, arrangement: &'a Arrangement) -> Self {
        let brief = checked.brief;
        let in_place = |placed: &'a Placed| Some(InPlace::of(brief.piece(placed.piece)?, placed));
        let pieces = layout.placed.iter().filter_map(in_place).collect();
        Self { brief, arrangement, checked, pieces }
    }

    pub(super) fn rule(&self, rule: Clearance) -> f64 {
        self.brief.rules.get(rule)
    }

    /// Pieces of such a kind.
    pub(super) fn those(&self, is_such: fn(PieceKind) -> bool) -> impl Iterator<Item = &InPlace<'a>> {
        self.pieces.iter().filter(move |piece| is_such(piece.piece.kind))
    }

    /// Seats.
    pub(super) fn seats(&self) -> impl Iterator<Item = &InPlace<'a>> {
        self.pieces.iter().filter(|piece| piece.piece.kind.is_seat())
    }

    /// Screens that seats turn to.
    pub(super) fn screens(&self) -> impl Iterator<Item = &InPlace<'a>> {
        self.those(PieceKind::carries_screen).filter(|piece| self.brief.is_watched(piece.piece))
    }

    /// Pieces that no chair stands on, other than these: floor that stays open is one.
    pub(super) fn off_chairs<'s>(&'s self, but: &'s [PieceId]) -> impl Iterator<Item = &'s InPlace<'a>> {
        self.pieces.iter().filter(move |piece| !piece.is_rug() && !but.contains(&piece.placed.piece))
    }

    /// Pieces that are in the way, other than these.
    pub(super) fn standing_but<'s>(&'s self, but: &'s [PieceId]) -> impl Iterator<Item = &'s InPlace<'a>> {
        self.pieces.iter().filter(move |piece| !piece.is_flat() && !but.contains(&piece.placed.piece))
    }
}

impl<'a> InPlace<'a> {
    fn of(piece: &'a Piece, placed: &'a Placed) -> Self {
        let parts = placed.parts();
        let tight = parts.iter().filter_map(|part| part.pulled_in(SLACK)).collect();
        Self { piece, placed, parts, tight }
    }

    /// As what has part in a breach.
    pub(super) const fn thing(&self) -> Thing {
        Thing::Piece(self.placed.piece)
    }

    pub(super) fn is_flat(&self) -> bool {
        self.piece.kind.is_flat()
    }

    pub(super) fn is_rug(&self) -> bool {
        self.is_flat() && !self.piece.kind.stays_open()
    }

    /// Its front edge.
    pub(super) fn front(&self) -> Convex {
        front_of(self.placed)
    }

    /// How far it reaches along `axis`: from, to (of a corner sofa: the main run).
    pub(super) fn extent(&self, axis: Point) -> (f64, f64) {
        let main = self.placed.main();
        (-main.support(-axis), main.support(axis))
    }

    /// Clear distance of the nearest parts of two pieces, mm.
    pub(super) fn apart(&self, other: &Self) -> f64 {
        let nearest = |part: &Convex| other.parts.iter().map(|other| apart(part, other)).fold(f64::INFINITY, f64::min);
        self.parts.iter().map(nearest).fold(f64::INFINITY, f64::min)
    }

    /// The rectangle of `reach` before its front over its width.
    pub(super) fn before(&self, reach: f64) -> Convex {
        let size = self.placed.size;
        self.placed.block(-size.width / 2.0, size.width / 2.0, size.depth, size.depth + reach)
    }
}

/// The front edge of a piece, of a corner sofa the whole main run's.
pub(super) fn front_of(placed: &Placed) -> Convex {
    let main = placed.main();
    let reach = main.support(placed.facing) - SLACK;
    let ends = main.corners().iter().copied().filter(|corner| corner.dot(placed.facing) >= reach);
    Convex::counter_clockwise(ends)
}

/// How much two intervals have in common; negative: how far they are apart.
pub(super) fn common(first: (f64, f64), second: (f64, f64)) -> f64 {
    first.1.min(second.1) - first.0.max(second.0)
}
