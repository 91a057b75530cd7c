//! A piece under one of its stands: its axes are known, its place and sizes are variables.

use elbowroom_model::{Hand, Piece, PieceId, Point, WallId};

use super::linear::{Linear, LinearPoint};
use super::linear_outline::{LinearOutline, LinearStretch};
use super::requirement::{Alternative, Cause, Requirement};
use super::variables::PieceVariables;
use crate::arrangement::{Role, Stand, Standing};
use crate::layout::{Placed, Size};

/// A piece under one of its stands.
#[derive(Debug, Clone, PartialEq)]
pub struct Pose {
    /// Its place in the brief.
    pub id: PieceId,
    /// The piece.
    pub piece: Piece,
    /// What it does in the group.
    pub role: Role,
    /// How it stands.
    pub stand: Stand,
    /// Hand of a corner sofa.
    pub hand: Option<Hand>,
    /// Its variables.
    pub variables: PieceVariables,
    /// Its anchor.
    pub anchor: LinearPoint,
    /// Its parts, as in [`Placed::parts`], but the return whole: it overlaps the main run at the corner.
    pub parts: Vec<LinearOutline>,
}

impl Pose {
    /// A piece of a standing under one of its stands; its place counts from `origin`.
    #[must_use]
    pub fn of(piece: Piece, variables: PieceVariables, origin: Point, standing: &Standing, stand: Stand) -> Self {
        let anchor = LinearPoint::fixed(origin)
            .moved(stand.facing.left(), &Linear::variable(variables.across))
            .moved(stand.facing, &Linear::variable(variables.out));
        let Standing { piece: id, role, hand, .. } = *standing;
        let mut pose = Self { id, piece, role, stand, hand, variables, anchor, parts: Vec::new() };
        pose.parts = pose.all_parts();
        pose
    }

    /// It lies flat and stops nothing.
    #[must_use]
    pub fn is_flat(&self) -> bool {
        self.piece.kind.is_flat()
    }

    /// Rugs lie under anything.
    #[must_use]
    pub fn lies_under(&self) -> bool {
        self.piece.kind.lies_under()
    }

    /// Unit vector to the left of one who sits on it.
    #[must_use]
    pub const fn left(&self) -> Point {
        self.stand.facing.left()
    }

    /// From the anchor along the main run; see [`Placed::along`].
    #[must_use]
    pub fn along(&self) -> Point {
        match self.hand {
            Some(Hand::Left) => -self.left(),
            Some(Hand::Right) | None => self.left(),
        }
    }

    /// The wall at its back.
    #[must_use]
    pub const fn wall(&self) -> Option<WallId> {
        self.stand.at_wall
    }

    /// Along its back.
    #[must_use]
    pub fn width(&self) -> Linear {
        self.variables.width.size()
    }

    /// Away from its back.
    #[must_use]
    pub fn depth(&self) -> Linear {
        self.variables.depth.size()
    }

    /// Length of the return.
    #[must_use]
    pub fn return_length(&self) -> Option<Linear> {
        self.variables.return_length.map(|size| size.size())
    }

    /// Length of the second return.
    #[must_use]
    pub fn second_return(&self) -> Option<Linear> {
        self.variables.second_return.map(|size| size.size())
    }

    /// How deep the return is.
    #[must_use]
    pub fn deep_return(&self) -> Linear {
        self.variables.return_depth.unwrap_or(self.variables.depth).size()
    }

    /// The front of the main run that people sit along, both ends from the anchor in direction [`Pose::along`]: of a corner
    /// sofa its bay, from the return to the second one or the free end.
    #[must_use]
    pub fn bay(&self) -> (Linear, Linear) {
        match (self.hand, self.variables.second_return) {
            (None, _) => self.stretch(),
            (Some(_), None) => (self.deep_return(), self.width()),
            (Some(_), Some(_)) => (self.deep_return(), self.width().plus(&self.depth(), -1.0)),
        }
    }

    /// The middle of that front, on the line of the back.
    #[must_use]
    pub fn middle_of_bay(&self) -> LinearPoint {
        if self.hand.is_none() {
            return self.anchor.clone();
        }
        let mut half = Linear::default().plus(&self.width(), 0.5).plus(&self.deep_return(), 0.5);
        if self.variables.second_return.is_some() {
            half = half.plus(&self.depth(), -0.5);
        }
        self.anchor.clone().moved(self.along(), &half)
    }

    /// The return and the second one, as far as it has them, each with the way that its front looks.
    pub fn returns(&self) -> impl Iterator<Item = (&LinearOutline, Point)> {
        let ways = [self.along(), -self.along()];
        self.parts.get(1..).unwrap_or_default().iter().zip(ways).filter(|_| self.hand.is_some())
    }

    /// Those of them that have a back: a chaise has none.
    pub(crate) fn returns_with_backs(&self) -> impl Iterator<Item = (&LinearOutline, Point)> {
        self.returns().skip(usize::from(self.piece.chaise))
    }

    /// The stretch along its back: both ends, from the anchor in direction [`Pose::along`].
    #[must_use]
    pub fn stretch(&self) -> (Linear, Linear) {
        match self.hand {
            Some(_) => (Linear::default(), self.width()),
            None => (Linear::default().plus(&self.width(), -0.5), Linear::default().plus(&self.width(), 0.5)),
        }
    }

    /// The stretch of its front that stays at every size down to the least, from the anchor in direction
    /// [`Pose::along`]: of a corner sofa from the return out.
    #[must_use]
    pub fn least_front(&self) -> (f64, f64) {
        let least = self.piece.width.least;
        match self.hand {
            Some(_) => (0.0, least),
            None => (-least / 2.0, least / 2.0),
        }
    }

    /// A rectangle in its own axes: a stretch along its back, both ends, by a stretch toward its front.
    #[must_use]
    pub fn block(&self, along: [&Linear; 2], out: [&Linear; 2]) -> LinearOutline {
        let across = LinearStretch { way: self.along(), ends: along };
        LinearOutline::block(&self.anchor, across, LinearStretch { way: self.stand.facing, ends: out })
    }

    /// The same asked of each of its parts: `ways` gives what meets it.
    pub fn each_part<'p>(
        &'p self,
        cause: Cause,
        ways: impl Fn(&LinearOutline) -> Vec<Alternative> + 'p,
    ) -> impl Iterator<Item = Requirement> + 'p {
        self.parts.iter().map(move |part| Requirement { cause, alternatives: ways(part) })
    }

    /// The main run of a corner sofa, the whole of any other piece.
    #[must_use]
    pub fn main(&self) -> &LinearOutline {
        // `all_parts` always gives at least the main run.
        &self.parts[0]
    }

    /// Where its middle lies in its own axis to the left, and the anchor's place toward its front.
    #[must_use]
    pub fn middle_of_back(&self) -> LinearPoint {
        match self.hand {
            Some(_) => self.anchor.clone().moved(self.along(), &Linear::default().plus(&self.width(), 0.5)),
            None => self.anchor.clone(),
        }
    }

    /// How it stands at a point of the program.
    #[must_use]
    pub fn placed(&self, values: &[f64]) -> Placed {
        let size = Size {
            width: self.width().at(values),
            return_length: self.return_length().map(|length| length.at(values)),
            second_return: self.second_return().map(|length| length.at(values)),
            depth: self.depth().at(values),
            return_depth: self.variables.return_depth.map(|depth| depth.size().at(values)),
        };
        Placed {
            piece: self.id,
            at_wall: self.stand.at_wall,
            anchor: self.anchor.at(values),
            facing: self.stand.facing,
            hand: self.hand,
            size,
        }
    }

    fn all_parts(&self) -> Vec<LinearOutline> {
        let zero = Linear::default();
        let (from, to) = self.stretch();
        let mut parts = vec![self.block([&from, &to], [&zero, &self.depth()])];
        if let (Some(_), Some(return_length)) = (self.hand, self.return_length()) {
            parts.push(self.block([&zero, &self.deep_return()], [&zero, &return_length]));
        }
        if let (Some(_), Some(length)) = (self.hand, self.second_return()) {
            let (width, depth) = (self.width(), self.depth());
            parts.push(self.block([&width.clone().plus(&depth, -1.0), &width], [&zero, &length]));
        }
        parts
    }
}
