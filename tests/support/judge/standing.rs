//! A piece as it stands: its fronts, its backs and its ends.

use crate::support::checker::plane::{P, Polygon, add, counter_clockwise, dot, extent, left, minus};

/// A piece.
#[derive(Debug, Clone)]
pub(crate) struct Standing {
    pub(crate) name: String,
    /// As files write it.
    pub(crate) kind: String,
    /// Convex; of a corner sofa the main run whole, then each return less the corner.
    pub(crate) parts: Vec<Polygon>,
    /// Unit; of a corner sofa the main run's.
    pub(crate) facing: P,
    pub(crate) height: f64,
    pub(crate) at_wall: Option<String>,
    /// A return without a back.
    pub(crate) chaise: bool,
    /// The least that the file, or else the table, lets it have.
    pub(crate) least: Sizes,
}

/// Sizes of a piece, mm; 0 where it has no such size.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(crate) struct Sizes {
    pub(crate) width: f64,
    pub(crate) depth: f64,
    pub(crate) run: f64,
}

/// A straight line of some width that looks one way: the front of a seat, or its back looking backward.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Run {
    pub(crate) middle: P,
    /// Unit.
    pub(crate) facing: P,
    pub(crate) width: f64,
}

/// An end of a seat, where a lamp may stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct End {
    pub(crate) line: [P; 2],
    /// Unit, away from the seat.
    pub(crate) outward: P,
}

impl Run {
    /// How far a place is to the left of its axis.
    pub(crate) fn aside(&self, p: P) -> f64 {
        dot(minus(p, self.middle), left(self.facing))
    }

    /// How far a place is ahead of it.
    pub(crate) fn ahead(&self, p: P) -> f64 {
        dot(minus(p, self.middle), self.facing)
    }

    /// The place so far aside and ahead.
    pub(crate) fn place(&self, aside: f64, ahead: f64) -> P {
        add(add(self.middle, left(self.facing), aside), self.facing, ahead)
    }

    /// What lies from `near` to `far` ahead of it, over its width less `inset` at each end.
    pub(crate) fn strip(&self, inset: f64, near: f64, far: f64) -> Polygon {
        let half = self.width / 2.0 - inset;
        counter_clockwise(
            [(-half, near), (half, near), (half, far), (-half, far)].map(|(x, y)| self.place(x, y)).into(),
        )
    }

    /// Degrees that one who looks straight ahead from its middle turns to look at a place.
    pub(crate) fn turn_to(&self, p: P) -> f64 {
        self.aside(p).atan2(self.ahead(p)).to_degrees().abs()
    }
}

impl Standing {
    pub(crate) fn is_seat(&self) -> bool {
        ["sofa", "corner-sofa", "day-bed", "armchair"].contains(&self.kind.as_str())
    }

    pub(crate) fn is_corner(&self) -> bool {
        self.parts.len() > 1
    }

    pub(crate) fn is_screen(&self) -> bool {
        ["media-unit", "wall-screen"].contains(&self.kind.as_str())
    }

    pub(crate) fn is_rug(&self) -> bool {
        self.kind == "rug"
    }

    /// One walks and sees over it.
    pub(crate) fn is_flat(&self) -> bool {
        self.is_rug() || self.kind == "open-floor"
    }

    /// Legs go up on it.
    pub(crate) fn is_footrest(&self) -> bool {
        ["pouf", "floor-cushion"].contains(&self.kind.as_str())
    }

    /// What a seat has at its ends, one of each.
    pub(crate) fn is_at_ends(&self) -> bool {
        ["floor-lamp", "side-table"].contains(&self.kind.as_str())
    }

    /// A table so low that one looks over it.
    pub(crate) fn is_low_table(&self) -> bool {
        const LOW: f64 = 600.0;
        self.kind.ends_with("table") && self.height < LOW
    }

    /// To the sitter's left.
    pub(crate) fn across(&self) -> P {
        left(self.facing)
    }

    /// From the right to the left end, measured along [`Self::across`].
    fn sides(&self) -> (f64, f64) {
        extent(&self.parts[0], self.across())
    }

    /// From the back to the front, measured along the way it faces.
    fn deep(&self) -> (f64, f64) {
        extent(&self.parts[0], self.facing)
    }

    fn at(&self, across: f64, along: f64) -> P {
        add(add([0.0, 0.0], self.across(), across), self.facing, along)
    }

    /// Middle of the piece (of a corner sofa: of its main run).
    pub(crate) fn middle(&self) -> P {
        let (sides, deep) = (self.sides(), self.deep());
        self.at(f64::midpoint(sides.0, sides.1), f64::midpoint(deep.0, deep.1))
    }

    pub(crate) fn sizes(&self) -> Sizes {
        let (sides, deep) = (self.sides(), self.deep());
        let longest = self.returns().iter().map(|run| run.width).fold(0.0, f64::max);
        let depth = deep.1 - deep.0;
        Sizes { width: sides.1 - sides.0, depth, run: if self.is_corner() { longest + depth } else { 0.0 } }
    }

    /// A return stands at its left end.
    fn is_left(&self, part: &[P]) -> bool {
        let (low, high) = extent(part, self.across());
        let sides = self.sides();
        f64::midpoint(low, high) > f64::midpoint(sides.0, sides.1)
    }

    /// Its front: of a corner sofa the bay, from the return to the free end or the other return.
    pub(crate) fn front(&self) -> Run {
        let (mut right_end, mut left_end) = self.sides();
        for part in &self.parts[1..] {
            let (low, high) = extent(part, self.across());
            if self.is_left(part) { left_end = left_end.min(low) } else { right_end = right_end.max(high) }
        }
        let middle = self.at(f64::midpoint(right_end, left_end), self.deep().1);
        Run { middle, facing: self.facing, width: left_end - right_end }
    }

    /// The fronts of its returns, over what sticks out before the main run.
    pub(crate) fn returns(&self) -> Vec<Run> {
        let run = |part: &Polygon| {
            let ((low, high), (near, far)) = (extent(part, self.across()), extent(part, self.facing));
            let right = add([0.0, 0.0], self.across(), -1.0);
            let (line, facing) = if self.is_left(part) { (low, right) } else { (high, self.across()) };
            Run { middle: self.at(line, f64::midpoint(near, far)), facing, width: far - near }
        };
        self.parts[1..].iter().map(run).collect()
    }

    /// Its backs, looking backward: over the whole width, and of each return with a back over all its length.
    pub(crate) fn backs(&self) -> Vec<Run> {
        let ((right_end, left_end), (back, _)) = (self.sides(), self.deep());
        let behind = add([0.0, 0.0], self.facing, -1.0);
        let middle = self.at(f64::midpoint(right_end, left_end), back);
        let mut all = vec![Run { middle, facing: behind, width: left_end - right_end }];
        // Of two returns the first is the chaise.
        for (_, part) in self.parts[1..].iter().enumerate().filter(|(place, _)| *place > 0 || !self.chaise) {
            let ((low, high), far) = (extent(part, self.across()), extent(part, self.facing).1);
            let outward = add([0.0, 0.0], self.across(), if self.is_left(part) { 1.0 } else { -1.0 });
            let line = if self.is_left(part) { high } else { low };
            all.push(Run { middle: self.at(line, f64::midpoint(back, far)), facing: outward, width: far - back });
        }
        all
    }

    /// Its ends: a straight seat's sides; of a corner sofa the free end of each run.
    pub(crate) fn ends(&self) -> Vec<End> {
        let ((right_end, left_end), (back, front)) = (self.sides(), self.deep());
        let returns = &self.parts[1..];
        let side = |line: f64, way: f64| End {
            line: [self.at(line, back), self.at(line, front)],
            outward: add([0.0, 0.0], self.across(), way),
        };
        let mut all = Vec::new();
        if !returns.iter().any(|part| self.is_left(part)) {
            all.push(side(left_end, 1.0));
        }
        if returns.iter().all(|part| self.is_left(part)) {
            all.push(side(right_end, -1.0));
        }
        all.extend(returns.iter().map(|part| {
            let ((low, high), far) = (extent(part, self.across()), extent(part, self.facing).1);
            End { line: [self.at(low, far), self.at(high, far)], outward: self.facing }
        }));
        all
    }
}
