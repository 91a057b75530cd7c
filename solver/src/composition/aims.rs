//! What a plan aims at: the size that people usually want of each piece, as this arrangement and its wall have it.

use elbowroom_model::{Brief, Clearance, Dimension, Piece, PieceId, SeatForm, SizeRange};

use super::free_stretch::longest_stretch;
use crate::arrangement::Arrangement;
use crate::site::Site;

/// A size under nine tenths of its aim costs four times as much a millimetre.
const NEARLY: f64 = 0.9;
const FAR_UNDER: f64 = 4.0;

/// A main sofa aims at two thirds of its wall's free stretch, within these shares of usual (common practice, no source).
const SHARE_OF_WALL: f64 = 2.0 / 3.0;
const LEAST_OF_USUAL: f64 = 0.9;
const MOST_OF_USUAL: f64 = 1.1;

/// A coffee table aims at this share of its sofa (half to two thirds: common practice, no source).
const SHARE_OF_SOFA: f64 = 0.55;

/// A coffee table before a corner sofa aims at so much of its usual depth: its bay holds it narrow (common practice, no
/// source).
const ALONG_RETURN: f64 = 1.5;

/// A piece that counts so much pays once for a millimetre of shortfall.
const PLAIN_WEIGHT: f64 = 3.0;

/// What one dimension aims at, mm, and what a millimetre less costs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct SizeAim {
    /// The least that it may have.
    least: f64,
    /// The aim.
    pub(crate) aim: f64,
    /// What a millimetre costs from nine tenths of the aim on; four times that below.
    slope: f64,
}

impl SizeAim {
    /// Upper bounds of the two variables of a size: to nine tenths of the aim, and on to the aim.
    pub(crate) fn steps(&self) -> (f64, f64) {
        let up = (NEARLY * self.aim - self.least).max(0.0);
        (up, (self.aim - self.least - up).max(0.0))
    }

    /// What a millimetre of each counts.
    pub(crate) const fn slopes(&self) -> (f64, f64) {
        (FAR_UNDER * self.slope, self.slope)
    }

    /// What the whole way from least to aim counts.
    pub(crate) fn whole(&self) -> f64 {
        let ((up, beyond), (first, second)) = (self.steps(), self.slopes());
        up * first + beyond * second
    }
}

/// The aims of every piece of an arrangement, in the order of the brief.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Aims {
    /// Each in the order of [`Dimension::ALL`].
    pieces: Vec<Vec<Option<SizeAim>>>,
}

impl Aims {
    /// The aims in an arrangement.
    pub(crate) fn of(brief: &Brief, site: &Site, arrangement: &Arrangement) -> Self {
        let sofa = main_width(brief, site, arrangement);
        let aims = |(id, piece): (PieceId, &Piece)| {
            let usual = |dimension| match dimension {
                Dimension::Width if id == arrangement.main_seat => sofa,
                Dimension::Width if piece.is_table_of_main_group() => table_width(brief, arrangement, piece, sofa),
                Dimension::Depth if piece.is_table_of_main_group() => table_depth(brief, arrangement, piece),
                _ => piece.range(dimension).map_or(0.0, |range| range.usual),
            };
            let wanted = |dimension| brief.aimed(piece, dimension).unwrap_or_else(|| usual(dimension));
            let aims =
                Dimension::ALL.iter().map(|dimension| Some(aim(piece, piece.range(*dimension)?, wanted(*dimension))));
            aims.collect()
        };
        Self { pieces: brief.pieces().map(aims).collect() }
    }

    /// The aim as it is told: none for what comes in steps.
    pub(crate) fn told(&self, piece: PieceId, dimension: Dimension) -> Option<f64> {
        self.get(piece, dimension).filter(|aim| aim.slope > 0.0).map(|aim| aim.aim)
    }

    /// The aim of one dimension of a piece.
    pub(crate) fn get(&self, piece: PieceId, dimension: Dimension) -> Option<SizeAim> {
        let place = Dimension::ALL.iter().position(|one| *one == dimension)?;
        self.pieces.get(piece.0)?.get(place).copied().flatten()
    }
}

/// What comes in steps aims at nothing: the terms choose among them.
fn aim(piece: &Piece, range: SizeRange, wanted: f64) -> SizeAim {
    let (aim, slope) =
        if piece.steps.is_empty() { (wanted, (piece.weight / PLAIN_WEIGHT).max(1.0)) } else { (range.most, 0.0) };
    SizeAim { least: range.least, aim: aim.clamp(range.least, range.most), slope }
}

/// Two thirds of what is free of its wall, near usual.
fn main_width(brief: &Brief, site: &Site, arrangement: &Arrangement) -> f64 {
    let Some(seat) = brief.piece(arrangement.main_seat) else { return 0.0 };
    let usual = seat.width.usual;
    if seat.kind.traits().seat != Some(SeatForm::Straight) {
        return usual;
    }
    let wall = arrangement.choices.seat_back.and_then(|wall| site.wall(wall));
    let free = wall.map(|wall| longest_stretch(brief, site, wall).length());
    free.map_or(usual, |free| (SHARE_OF_WALL * free).clamp(LEAST_OF_USUAL * usual, MOST_OF_USUAL * usual))
}

/// Before a corner sofa, whose bay holds it narrow, it is longer along the return.
fn table_depth(brief: &Brief, arrangement: &Arrangement, table: &Piece) -> f64 {
    let seat = brief.piece(arrangement.main_seat).and_then(|seat| seat.kind.traits().seat);
    if seat == Some(SeatForm::Corner) { ALONG_RETURN * table.depth.usual } else { table.depth.usual }
}

/// Over half of its sofa; before a corner sofa what its bay leaves.
fn table_width(brief: &Brief, arrangement: &Arrangement, table: &Piece, sofa: f64) -> f64 {
    let Some(seat) = brief.piece(arrangement.main_seat) else { return table.width.usual };
    if seat.kind.traits().seat == Some(SeatForm::Corner) {
        let free = seat.bay_of(sofa) - 2.0 * brief.rules.get(Clearance::SeatToTable);
        return free.max(table.width.least).min(table.width.usual);
    }
    (SHARE_OF_SOFA * sofa).min(MOST_OF_USUAL * table.width.usual)
}
