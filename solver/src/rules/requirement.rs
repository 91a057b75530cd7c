//! What a rule asks of a layout: one of several alternatives, each a few linear rows.

use std::sync;

use elbowroom_model::{FixedId, ItemId, PieceId, Point, Rule, WallId};

use super::linear::LinearPoint;
use super::tolerance::{FAN_STEP, LEAST_PART, SAME_TERM, TOLERANCE};
use crate::program::Row;
use crate::routes::Demand;

/// One thing that must hold: at least one of the alternatives.
#[derive(Debug, Clone, PartialEq)]
pub struct Requirement {
    /// What asks for it, in a form that can be put in the room's words.
    pub cause: Cause,
    /// At least one of these must hold; a single one always holds.
    pub alternatives: Vec<Alternative>,
}

/// One way to meet a requirement.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Alternative {
    /// All of these must hold.
    pub rows: Vec<Row>,
    /// A round gap must hold too: see [`Arc::rows`] for the rows that a program can hold it by.
    pub arc: Option<Arc>,
    /// Where not empty, one of these must hold too: a search that finds no place for the rows need not try any of them.
    pub finer: Vec<Alternative>,
    /// What taking it costs besides, where it is a way out and no way to meet the requirement: 0 for all others.
    pub cost: f64,
}

/// A corner that must stay `radius` away from another, seen under an angle between two directions.
#[derive(Debug, Clone, PartialEq)]
pub struct Arc {
    /// From the one corner to the other.
    pub between: sync::Arc<LinearPoint>,
    /// How far they must be apart, mm.
    pub radius: f64,
    /// Unit vector where the sector starts.
    pub from: Point,
    /// Unit vector where it ends, counter-clockwise.
    pub to: Point,
}

/// Why something must hold.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Cause {
    /// The rule.
    pub rule: Rule,
    /// The piece that must obey.
    pub piece: PieceId,
    /// What it must keep from, or stand to.
    pub with: With,
}

impl Cause {
    /// Whether it is asked of this piece, or of another for its sake.
    #[must_use]
    pub fn is_of(&self, piece: PieceId) -> bool {
        self.piece == piece || self.with == With::Piece(piece)
    }
}

/// What a piece keeps from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum With {
    /// Itself alone.
    Itself,
    /// A wall.
    Wall(WallId),
    /// Something on a wall.
    Item(ItemId),
    /// A fixed thing.
    Fixed(FixedId),
    /// Another piece.
    Piece(PieceId),
    /// A way through.
    Route(Demand),
}

impl Requirement {
    /// Something that must hold with no choice.
    #[must_use]
    pub fn always(cause: Cause, rows: Vec<Row>) -> Self {
        Self { cause, alternatives: vec![Alternative::of_rows(rows)] }
    }

    /// The same with each round gap as the polygon around it: never less, and rows alone.
    #[must_use]
    pub fn with_polygons(self) -> Self {
        Self { cause: self.cause, alternatives: with_polygons(self.alternatives) }
    }

    /// Whether it holds at `values`.
    #[must_use]
    pub fn holds(&self, values: &[f64]) -> bool {
        self.alternatives.iter().any(|alternative| alternative.holds(values))
    }
}

fn with_polygons(alternatives: Vec<Alternative>) -> Vec<Alternative> {
    let mut found: Vec<Alternative> = Vec::new();
    for mut alternative in alternatives {
        let ways = match alternative.arc.take() {
            Some(arc) => arc.fan(),
            None => vec![Alternative { finer: with_polygons(alternative.finer), ..alternative }],
        };
        for way in ways {
            if !found.iter().any(|other| other.is_nearly(&way)) {
                found.push(way);
            }
        }
    }
    found
}

impl Alternative {
    /// These rows and no more.
    #[must_use]
    pub const fn of_rows(rows: Vec<Row>) -> Self {
        Self { rows, arc: None, finer: Vec::new(), cost: 0.0 }
    }

    /// A way out that is taken at a cost, with these rows.
    #[must_use]
    pub const fn at_cost(rows: Vec<Row>, cost: f64) -> Self {
        Self { rows, arc: None, finer: Vec::new(), cost }
    }

    /// Whether it holds at `values`; a round gap by its true distance.
    #[must_use]
    pub fn holds(&self, values: &[f64]) -> bool {
        self.cost == 0.0
            && self.rows.iter().all(|row| row.excess(values) <= TOLERANCE)
            && self.arc.as_ref().is_none_or(|arc| arc.holds(values))
            && (self.finer.is_empty() || self.finer.iter().any(|finer| finer.holds(values)))
    }

    /// By how much what is broken most of it is broken at `values`, mm; 0 where nothing is.
    #[must_use]
    pub fn shortfall(&self, values: &[f64]) -> f64 {
        let rows = self.rows.iter().map(|row| row.excess(values)).fold(0.0, f64::max);
        self.arc.as_ref().map_or(rows, |arc| rows.max(arc.out_of_sector(values)))
    }

    /// The rows that each make it hold by itself: what was looked for with it need not be looked for again where they hold.
    pub fn sufficient(&self) -> impl Iterator<Item = &Row> {
        let own = self.only_row().into_iter();
        let implies = |row: &Row| self.rows.iter().all(|coarse| row.terms == coarse.terms && row.most <= coarse.most);
        own.chain(self.finer.iter().filter_map(Self::only_row).filter(move |row| implies(row)))
    }

    /// Its row, where it asks for no more than that.
    fn only_row(&self) -> Option<&Row> {
        match &self.rows[..] {
            [only] if self.arc.is_none() && self.finer.is_empty() && self.cost == 0.0 => Some(only),
            _ => None,
        }
    }

    /// The same rows and nothing else, rounding aside.
    pub(crate) fn is_nearly(&self, other: &Self) -> bool {
        let plain = |one: &Self| one.arc.is_none() && one.finer.is_empty() && one.cost == 0.0;
        let same = |(a, b): (&Row, &Row)| {
            let terms = a.terms.iter().zip(&b.terms);
            a.terms.len() == b.terms.len()
                && (a.most - b.most).abs() <= TOLERANCE
                && terms.into_iter().all(|(a, b)| a.0 == b.0 && (a.1 - b.1).abs() <= SAME_TERM)
        };
        plain(self)
            && plain(other)
            && self.rows.len() == other.rows.len()
            && self.rows.iter().zip(&other.rows).all(same)
    }
}

impl Arc {
    /// How much nearer than its radius the corner is at `values`, mm.
    #[must_use]
    pub fn excess(&self, values: &[f64]) -> f64 {
        self.radius - self.between.at(values).norm()
    }

    /// Angle of the sector, radians.
    #[must_use]
    pub fn angle(&self) -> f64 {
        self.from.turn_to(self.to)
    }

    /// The direction half-way.
    #[must_use]
    pub fn middle(&self) -> Point {
        (self.from + self.to).unit().unwrap_or(self.from)
    }

    /// The sector as an alternative.
    #[must_use]
    pub const fn as_alternative(self) -> Alternative {
        Alternative { rows: Vec::new(), arc: Some(self), finer: Vec::new(), cost: 0.0 }
    }

    /// What a program can hold of it: in its cone, beyond its chord.
    #[must_use]
    pub fn rows(&self) -> [Row; 3] {
        [
            self.between.along(self.from.left()).at_least(0.0),
            self.between.along(self.to.left()).at_most(0.0),
            self.between.along(self.middle()).at_least(self.chord()),
        ]
    }

    /// Whether the corner is in the sector, and far enough.
    #[must_use]
    pub fn holds(&self, values: &[f64]) -> bool {
        let between = self.between.at(values);
        between.norm() >= self.radius - TOLERANCE
            && between.dot(self.from.left()) >= -TOLERANCE
            && between.dot(self.to.left()) <= TOLERANCE
    }

    /// By how much the rows are broken at `values`, mm.
    fn out_of_sector(&self, values: &[f64]) -> f64 {
        let between = self.between.at(values);
        let cone = between.dot(self.to.left()).max(-between.dot(self.from.left()));
        cone.max(self.chord() - between.dot(self.middle()))
    }

    fn chord(&self) -> f64 {
        self.radius * (self.angle() / 2.0).cos()
    }

    /// Directions across the sector, [`FAN_STEP`] apart at most, each an alternative: beyond the tangent there.
    #[must_use]
    pub fn fan(&self) -> Vec<Alternative> {
        let steps = (self.angle() / FAN_STEP).ceil().max(1.0);
        let towards = |step: usize| {
            let (sin, cos) = (self.angle() * step as f64 / steps).sin_cos();
            self.from * cos + self.from.left() * sin
        };
        let beyond = |towards: Point| vec![self.between.along(towards).at_least(self.radius)];
        (0..=steps as usize).map(|step| Alternative::of_rows(beyond(towards(step)))).collect()
    }

    /// Both halves of the sector, each with the end of it that it adjoins.
    #[must_use]
    pub fn towards_ends(self) -> [(Self, Point); 2] {
        let (from, to, middle) = (self.from, self.to, self.middle());
        [(Self { to: middle, ..self.clone() }, from), (Self { from: middle, ..self }, to)]
    }

    /// The sector cut in two where the corner lies at `values`, or half-way where that is near one of its ends.
    #[must_use]
    pub fn cut(&self, values: &[f64]) -> [Self; 2] {
        let least = self.angle() * LEAST_PART;
        let towards = self.between.at(values).unit().unwrap_or(self.middle());
        let is_inside = |from: Point, to: Point| from.turn_to(to) >= least;
        let inside = is_inside(self.from, towards) && is_inside(towards, self.to);
        let at = if inside { towards } else { self.middle() };
        [Self { to: at, ..self.clone() }, Self { from: at, ..self.clone() }]
    }

    /// The safe row at `values`: beyond the tangent in the present direction, held within the sector.
    #[must_use]
    pub fn tangent(&self, values: &[f64]) -> Row {
        let towards = self.between.at(values).unit().unwrap_or(self.middle());
        let towards = match (self.from.cross(towards) < 0.0, towards.cross(self.to) < 0.0) {
            (true, _) => self.from,
            (_, true) => self.to,
            _ => towards,
        };
        self.between.along(towards).at_least(self.radius)
    }
}
