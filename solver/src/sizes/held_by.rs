//! What holds a size: freed of it, the size grows while all else stays at least as large as it is.

use elbowroom_model::{Dimension, PieceId, Rule};

use super::tolerance::{GROWS, TIGHT};
use crate::program::{DefaultEngine, Engine, Row, Status};
use crate::rules::{Cause, CostSlot, Linear, With};
use crate::search::{Found, RoomContext};

/// A dimension and one of those that hold it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeldBy {
    /// The dimension.
    pub dimension: Dimension,
    /// What holds it.
    pub by: Holding,
}

/// What holds a dimension.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Holding {
    /// The most that is asked for.
    Most,
    /// What can be carried in: the point that stops a larger one, by its place on the way.
    Way(Option<usize>),
    /// A rule.
    Cause(Cause),
}

impl Holding {
    /// The rule.
    #[must_use]
    pub const fn rule(&self) -> Rule {
        match self {
            Self::Most => Rule::Most,
            Self::Way(_) => Rule::Way,
            Self::Cause(cause) => cause.rule,
        }
    }
}

/// Who asks for a row: all rows of one are freed together.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Holder {
    with: With,
    /// The other piece, for what holds between two.
    other: Option<PieceId>,
}

impl Holder {
    fn of(cause: &Cause) -> Self {
        match cause.with {
            With::Piece(other) => {
                Self { with: With::Piece(other.max(cause.piece)), other: Some(other.min(cause.piece)) }
            }
            With::Itself => Self { with: With::Itself, other: Some(cause.piece) },
            with => Self { with, other: None },
        }
    }
}

/// What holds every dimension of every piece that stands in `found`.
#[must_use]
pub fn held_by(room: &RoomContext<'_>, found: &Found) -> Vec<(PieceId, Vec<HeldBy>)> {
    let held = Held { room, found };
    let pieces = found.layout.placed.iter().map(|placed| placed.piece);
    pieces.map(|piece| (piece, held.piece(piece))).collect()
}

struct Held<'a> {
    room: &'a RoomContext<'a>,
    found: &'a Found,
}

impl Held<'_> {
    fn piece(&self, piece: PieceId) -> Vec<HeldBy> {
        let Some(asked) = self.room.brief.piece(piece) else { return Vec::new() };
        asked.dimensions().into_iter().flat_map(|dimension| self.dimension(piece, dimension)).collect()
    }

    fn dimension(&self, piece: PieceId, dimension: Dimension) -> Vec<HeldBy> {
        let (Some(size), Some(range)) = (self.size(piece, dimension), self.range(piece, dimension)) else {
            return Vec::new();
        };
        let now = size.at(&self.found.values);
        let is_u = self.room.brief.piece(piece).is_some_and(|piece| piece.second_return.is_some());
        if is_u && dimension == Dimension::Width && now < range - TIGHT {
            // Nothing holds the width of a U: it is as planned.
            return Vec::new();
        }
        if now >= range - TIGHT {
            return vec![self.at_its_most(piece, dimension)];
        }
        let holders = self.holders();
        let grown = |freed: Vec<Holder>| {
            let size = self.freed(piece, dimension, &freed).filter(|size| *size > now + GROWS)?;
            Some((size, freed))
        };
        // What meets the piece itself is told before what holds it by way of others.
        let (own, others): (Vec<Holder>, Vec<Holder>) = holders.iter().partition(|holder| self.meets(**holder, piece));
        let single = |of: &[Holder]| best(of.iter().filter_map(|holder| grown(vec![*holder])));
        let freed = single(&own).or_else(|| best(pairs(&own).filter_map(grown)));
        let freed = freed.or_else(|| single(&others)).or_else(|| best(pairs(&holders).filter_map(grown)));
        freed.map(|freed| self.causes(dimension, &freed)).unwrap_or_default()
    }

    /// Whether a tight row of the holder is about the piece itself.
    fn meets(&self, holder: Holder, piece: PieceId) -> bool {
        self.tight().any(|(_, cause)| Holder::of(cause) == holder && cause.is_of(piece))
    }

    /// At its most: as asked for, or as the way in allows.
    fn at_its_most(&self, piece: PieceId, dimension: Dimension) -> HeldBy {
        let capped = self.room.brief.way.iter().flat_map(|way| &way.capped);
        let holder = capped.into_iter().find(|capped| (capped.piece, capped.dimension) == (piece, dimension));
        HeldBy { dimension, by: holder.map_or(Holding::Most, |capped| Holding::Way(capped.by)) }
    }

    /// One cause of each holder.
    fn causes(&self, dimension: Dimension, holders: &[Holder]) -> Vec<HeldBy> {
        let cause = |holder: &Holder| {
            let (_, cause) = self.tight().find(|(_, cause)| Holder::of(cause) == *holder)?;
            Some(HeldBy { dimension, by: Holding::Cause(*cause) })
        };
        holders.iter().filter_map(cause).collect()
    }

    /// The most the dimension could be with the rows of some holders taken away and no other size made smaller.
    fn freed(&self, piece: PieceId, dimension: Dimension, freed: &[Holder]) -> Option<f64> {
        let variables = &self.room.variables;
        let target = variables.piece(piece)?.dimension(dimension)?;
        let mut objective = vec![0.0; variables.objective.len()];
        objective[target.up] = 1.0;
        objective[target.beyond] = 1.0;
        let mut bounds = variables.bounds.clone();
        for lacking in variables.pieces.iter().map(|piece| piece.terms[CostSlot::Eased]) {
            // What is eased stays eased, by no more.
            bounds[lacking].1 = self.found.value(lacking);
        }
        let mut engine = DefaultEngine::start(&objective, &bounds);
        let kept = self.found.rows.iter().filter(|(_, cause)| cause.rule != Rule::Centring);
        let kept = kept.filter(|(_, cause)| !freed.contains(&Holder::of(cause))).map(|(row, _)| row.clone());
        let mut rows: Vec<Row> = kept.collect();
        rows.extend(self.others_no_smaller(piece, dimension));
        (engine.add(&rows) == Status::Optimal).then(|| engine.objective() + target.least)
    }

    fn others_no_smaller(&self, piece: PieceId, dimension: Dimension) -> Vec<Row> {
        let mut rows = Vec::new();
        for placed in &self.found.layout.placed {
            for &other in Dimension::ALL {
                if (placed.piece, other) == (piece, dimension) {
                    continue;
                }
                if let Some(size) = self.size(placed.piece, other) {
                    rows.push(size.at_least(size.at(&self.found.values) - TIGHT / 10.0));
                }
            }
        }
        rows
    }

    /// Everything that asks for a tight row, each once, in the order they came.
    fn holders(&self) -> Vec<Holder> {
        let mut found: Vec<Holder> = Vec::new();
        for (_, cause) in self.tight() {
            let holder = Holder::of(cause);
            if !found.contains(&holder) {
                found.push(holder);
            }
        }
        found
    }

    fn tight(&self) -> impl Iterator<Item = &(Row, Cause)> {
        let is_rule = |cause: &Cause| !matches!(cause.rule, Rule::Centring | Rule::Size);
        let rows = self.found.rows.iter();
        rows.filter(move |(row, cause)| is_rule(cause) && row.excess(&self.found.values) > -TIGHT)
    }

    fn size(&self, piece: PieceId, dimension: Dimension) -> Option<Linear> {
        Some(self.room.variables.piece(piece)?.dimension(dimension)?.size())
    }

    fn range(&self, piece: PieceId, dimension: Dimension) -> Option<f64> {
        Some(self.room.brief.piece(piece)?.range(dimension)?.most)
    }
}

/// Every two of these.
fn pairs(holders: &[Holder]) -> impl Iterator<Item = Vec<Holder>> {
    holders.iter().enumerate().flat_map(|(i, a)| holders[..i].iter().map(move |b| vec![*b, *a]))
}

/// Of several that would free a dimension, each with the size that it then has, the one that frees it most; the first of
/// equals.
fn best(all: impl Iterator<Item = (f64, Vec<Holder>)>) -> Option<Vec<Holder>> {
    let larger = |best: (f64, Vec<Holder>), next: (f64, Vec<Holder>)| if next.0 > best.0 + GROWS { next } else { best };
    all.reduce(larger).map(|(_, freed)| freed)
}
