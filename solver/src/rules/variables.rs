//! The variables of one arrangement's program: where each piece stands in its own axes, and its sizes.

use elbowroom_model::{Brief, Dimension, Piece, PieceId, Point, SizeRange};
use enum_map::{Enum, EnumMap};

use super::linear::Linear;
use super::tolerance::{MOST_COST, TIE};

/// Which variable of a piece a term of a plan costs: one that is shared holds the dearer of the two.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Enum)]
pub enum CostSlot {
    /// Aside from an axis.
    Aside,
    /// Along the table, or the end of a seat.
    Along,
    /// Near what it belongs to.
    Near,
    /// Off its wall.
    OffWall,
    /// Off the middle of its wall.
    Middle,
    /// Unlike its twin, ahead.
    TwinAhead,
    /// Unlike its twin, aside.
    TwinAside,
    /// Not on the rug.
    UnderRug,
    /// Whatever else.
    Other,
    /// How much rules of comfort are eased.
    Eased,
}

/// Variables, bounds and objective of one arrangement.
#[derive(Debug, Clone, PartialEq)]
pub struct Variables {
    /// Lower and upper bound of each variable.
    pub bounds: Vec<(f64, f64)>,
    /// What each variable counts.
    pub objective: Vec<f64>,
    /// Pieces in the order of the brief.
    pub pieces: Vec<PieceVariables>,
    /// Where the turning circle lies, in plan axes from `origin`.
    pub circle: Option<(usize, usize)>,
    /// A place amid the room; positions count from here, so that a far origin costs no digits.
    pub origin: Point,
    /// No place of the room is further than this from `origin`, mm.
    pub span: f64,
}

/// The variables of one piece.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PieceVariables {
    /// Place of the anchor to its left, in its own axes, from the origin.
    pub across: usize,
    /// Place of the anchor toward its front.
    pub out: usize,
    /// Along its back.
    pub width: SizeVariables,
    /// Of a corner sofa.
    pub return_length: Option<SizeVariables>,
    /// Of a corner sofa with two returns.
    pub second_return: Option<SizeVariables>,
    /// Of a return that has a depth of its own.
    pub return_depth: Option<SizeVariables>,
    /// Away from its back.
    pub depth: SizeVariables,
    /// How far it is misplaced sideways, and otherwise.
    pub misplaced: [usize; 2],
    /// What the terms of a plan cost it.
    pub terms: EnumMap<CostSlot, usize>,
    /// What it counts by standing at all: 0 for a piece that must stand.
    pub presence: f64,
}

/// The sizes of one piece.
struct Sizes {
    width: SizeVariables,
    return_length: Option<SizeVariables>,
    depth: SizeVariables,
    second_return: Option<SizeVariables>,
    return_depth: Option<SizeVariables>,
}

/// One size: `least + up to usual + beyond`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SizeVariables {
    /// The least.
    pub least: f64,
    /// From least to usual.
    pub up: usize,
    /// From usual to most.
    pub beyond: usize,
}

impl SizeVariables {
    /// The size.
    #[must_use]
    pub fn size(&self) -> Linear {
        Linear { terms: [(self.up, 1.0), (self.beyond, 1.0)].into_iter().collect(), constant: self.least }
    }
}

impl PieceVariables {
    /// The variables of every dimension that the piece has.
    pub fn sizes(&self) -> impl Iterator<Item = SizeVariables> + use<> {
        [Some(self.width), self.return_length, Some(self.depth), self.second_return, self.return_depth]
            .into_iter()
            .flatten()
    }

    /// Whether a variable is one of its own.
    #[must_use]
    pub fn has(&self, variable: usize) -> bool {
        let places = [self.across, self.out].into_iter().chain(self.misplaced);
        let sizes = self.sizes().flat_map(|size| [size.up, size.beyond]);
        places.chain(sizes).chain(self.terms.values().copied()).any(|own| own == variable)
    }

    /// The variables of one dimension.
    #[must_use]
    pub const fn dimension(&self, dimension: Dimension) -> Option<SizeVariables> {
        match dimension {
            Dimension::Width => Some(self.width),
            Dimension::Return => self.return_length,
            Dimension::SecondReturn => self.second_return,
            Dimension::Depth => Some(self.depth),
            Dimension::ReturnDepth => self.return_depth,
        }
    }
}

impl Variables {
    /// The variables of a brief's pieces in a room of this origin and span.
    #[must_use]
    pub fn of(brief: &Brief, origin: Point, span: f64) -> Self {
        let mut found = Self {
            bounds: Vec::new(),
            objective: Vec::new(),
            pieces: Vec::with_capacity(brief.pieces.len()),
            circle: None,
            origin,
            span,
        };
        for piece in &brief.pieces {
            let variables = found.add_piece(piece);
            found.pieces.push(variables);
        }
        if brief.rules.turning_circle().is_some() {
            let (x, y) = (found.add(-span, span, 0.0), found.add(-span, span, 0.0));
            found.circle = Some((x, y));
        }
        found
    }

    /// Sum of what the pieces that need not stand count by standing.
    #[must_use]
    pub fn presence(&self) -> f64 {
        self.pieces.iter().map(|piece| piece.presence).sum()
    }

    /// The variables of one piece.
    #[must_use]
    pub fn piece(&self, id: PieceId) -> Option<&PieceVariables> {
        self.pieces.get(id.0)
    }

    fn add_piece(&mut self, piece: &Piece) -> PieceVariables {
        let span = self.span;
        let (across, out) = (self.add(-span, span, 0.0), self.add(-span, span, 0.0));
        // A pair that need not stand may lose one of the two: each then has its own size, held equal by a rule.
        let twin = piece.alike.filter(|_| piece.needed).and_then(|first| self.piece(first)).cloned();
        let Sizes { width, return_length, depth, second_return, return_depth } = match twin {
            Some(twin) => Sizes {
                width: self.again(twin.width, piece),
                return_length: twin.return_length.map(|size| self.again(size, piece)),
                depth: self.again(twin.depth, piece),
                second_return: twin.second_return.map(|size| self.again(size, piece)),
                return_depth: twin.return_depth.map(|size| self.again(size, piece)),
            },
            None => self.sizes(piece),
        };
        let misplaced = [self.add(0.0, 4.0 * span, -TIE), self.add(0.0, 4.0 * span, -TIE)];
        let terms = EnumMap::from_fn(|_| self.add(0.0, MOST_COST, 0.0));
        let least = piece.dimensions().iter().filter_map(|d| piece.range(*d)).map(|range| range.least).sum::<f64>();
        let presence = if piece.needed { 0.0 } else { piece.weight * least };
        PieceVariables {
            across,
            out,
            width,
            return_length,
            second_return,
            return_depth,
            depth,
            misplaced,
            terms,
            presence,
        }
    }

    fn sizes(&mut self, piece: &Piece) -> Sizes {
        let width = self.size(piece.width, piece.weight);
        let return_length = piece.return_length.map(|range| self.size(range, piece.weight));
        let depth = if piece.square && piece.depth == piece.width {
            self.again(width, piece)
        } else {
            self.size(piece.depth, piece.weight)
        };
        let mut of = |range: Option<SizeRange>| range.map(|range| self.size(range, piece.weight));
        let (second_return, return_depth) = (of(piece.second_return), of(piece.return_depth));
        Sizes { width, return_length, depth, second_return, return_depth }
    }

    /// One size that counts for one more dimension or piece.
    fn again(&mut self, size: SizeVariables, piece: &Piece) -> SizeVariables {
        self.objective[size.up] += piece.weight;
        self.objective[size.beyond] += piece.weight / 4.0;
        size
    }

    fn size(&mut self, range: SizeRange, weight: f64) -> SizeVariables {
        let up = self.add(0.0, range.usual - range.least, weight);
        let beyond = self.add(0.0, range.most - range.usual, weight / 4.0);
        SizeVariables { least: range.least, up, beyond }
    }

    fn add(&mut self, least: f64, most: f64, counts: f64) -> usize {
        self.bounds.push((least, most.max(least)));
        self.objective.push(counts);
        self.bounds.len() - 1
    }
}
