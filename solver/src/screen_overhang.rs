//! Screens that are wider than what carries them, in each option.

use elbowroom_model::{Brief, Piece, PieceId};

use crate::answer::RankedOption;

/// A screen that is wider than the piece that carries it, in some options.
#[derive(Debug, Clone, PartialEq)]
pub struct ScreenOverhang {
    /// The piece that carries it.
    pub piece: PieceId,
    /// How wide the screen is, mm.
    pub screen: f64,
    /// The options in which it is wider, in their order.
    pub over: Vec<Overhang>,
}

/// By how much a screen is wider than its piece in one option.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Overhang {
    /// Rank of the option.
    pub rank: usize,
    /// By so much, both ends together, mm.
    pub by: f64,
}

impl ScreenOverhang {
    /// By how much at most, mm.
    #[must_use]
    pub fn most(&self) -> f64 {
        self.over.iter().map(|over| over.by).fold(0.0, f64::max)
    }

    /// What of it concerns the options of these ranks; `None`: nothing.
    pub(crate) fn of(&self, ranks: &[usize]) -> Option<Self> {
        let over: Vec<Overhang> = self.over.iter().filter(|over| ranks.contains(&over.rank)).copied().collect();
        (!over.is_empty()).then(|| Self { over, ..self.clone() })
    }
}

/// Every screen that is wider than its piece as planned, in the order of the brief.
pub(crate) fn screen_overhangs(brief: &Brief, options: &[RankedOption]) -> Vec<ScreenOverhang> {
    let carriers = brief.pieces().filter_map(|(id, piece)| Some((id, piece, piece.carried_width()?)));
    carriers.filter_map(|(id, piece, screen)| overhang(piece, id, screen, options)).collect()
}

fn overhang(piece: &Piece, id: PieceId, screen: f64, options: &[RankedOption]) -> Option<ScreenOverhang> {
    let over = options.iter().filter_map(|option| {
        let by = piece.screen_beyond(option.layout.of(id)?.size.width)?;
        Some(Overhang { rank: option.rank, by })
    });
    let over: Vec<Overhang> = over.collect();
    (!over.is_empty()).then_some(ScreenOverhang { piece: id, screen, over })
}
