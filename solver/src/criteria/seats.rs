//! Seats: how many sit here, how near the pieces as planned come to the sizes people usually want, and where a cup can stand.
//!
//! Usual sizes are those of `model/data/sizes.yaml`, places those of [`super::seat_places`]; a surface at hand is common practice.

use elbowroom_model::{Brief, Piece, PieceId};

use super::criteria_context::CriteriaContext;
use super::curve::{Curve, mean, weighted_mean};
use super::judged::{FigureUnit, Judged, Missing};
use super::seat_places::{SeatPlace, measure_of_places};
use super::tolerance::WHOLE;
use super::yardstick::Yardstick;
use crate::geometry::gap;
use crate::layout::{Placed, Size};

/// How far one reaches for a cup from the cushion, mm (common practice, no source).
const AT_HAND: f64 = 450.0;

/// The same to share: nothing at twice that.
const REACH: Curve = Curve(&[(AT_HAND, 1.0), (900.0, 0.0)]);

/// What the parts count (ours, no source).
const PLACES: f64 = 0.35;
const SIZES: f64 = 0.45;
const SURFACES: f64 = 0.2;

/// What seats is made of.
#[derive(Debug, Clone, PartialEq)]
pub struct SeatsFinding {
    /// Seat places.
    pub places: usize,
    /// Seat places that the household wants; `None`: as many as the pieces have at their usual sizes.
    pub wanted: Option<u32>,
    /// The planned sizes against the usual ones, 0 to 1: what could be larger counts no more.
    pub sizes: f64,
    /// Places with a surface at hand.
    pub with_surface: usize,
    /// What is at hand, mm.
    pub at_hand: f64,
    /// Pieces that found no room.
    pub left_out: Vec<PieceId>,
}

/// The yardstick. Where no seat stands there are no places, and none has a surface.
pub(super) struct Seats;

impl Yardstick for Seats {
    type Subject<'a> = ();
    type Finding = SeatsFinding;

    /// A seat is always asked for.
    fn subject(_brief: &Brief) -> Result<(), Missing> {
        Ok(())
    }

    fn judge<'a>(context: &CriteriaContext<'a>, (): &()) -> Judged<Self::Finding> {
        let sizes = sizes_against_usual(context);
        let reached: Vec<f64> = context.all_places().map(|place| surface(context, place)).collect();
        let surfaces = mean(reached.iter().copied()).unwrap_or(0.0);
        let wanted = context.brief().household.people;
        let places = wanted.map_or_else(|| places_against_usual(context), |people| enough(reached.len(), people));
        let score = 100.0 * (PLACES * places + SIZES * sizes + SURFACES * surfaces);
        let finding = SeatsFinding {
            places: reached.len(),
            wanted,
            sizes,
            with_surface: reached.iter().filter(|share| **share > WHOLE).count(),
            at_hand: AT_HAND,
            left_out: context.in_room.layout.left_out.clone(),
        };
        let count = finding.places as f64;
        Judged::new(score, count, FigureUnit::Count, finding)
    }
}

/// Mean over all dimensions of all pieces, by the weights of the pieces; where none has a weight all count alike.
fn sizes_against_usual(context: &CriteriaContext) -> f64 {
    let pieces = context.brief().pieces();
    let shares: Vec<(f64, f64)> = pieces
        .flat_map(|(place, piece)| {
            let shares = against_usual(piece, context.in_room.layout.of(place));
            shares.into_iter().map(|share| (share, piece.weight))
        })
        .collect();
    let alike = || mean(shares.iter().map(|(share, _)| *share));
    weighted_mean(shares.iter().copied()).or_else(alike).unwrap_or(1.0)
}

/// Each dimension against the usual one, at most 1; nothing for a piece that found no room.
fn against_usual(piece: &Piece, placed: Option<&Placed>) -> Vec<f64> {
    let share = |dimension| {
        let (usual, size) =
            (piece.range(dimension)?.usual, placed.map_or(0.0, |p| p.size.get(dimension).unwrap_or(0.0)));
        (usual > 0.0).then(|| (size / usual).min(1.0))
    };
    piece.dimensions().into_iter().filter_map(share).collect()
}

/// Seat places against the people who are to sit; at most 1.
fn enough(places: usize, people: u32) -> f64 {
    (places as f64 / f64::from(people.max(1))).min(1.0)
}

/// Seat places, fractions counted, against what the seats have at their usual sizes; at most 1.
fn places_against_usual(context: &CriteriaContext) -> f64 {
    let seats = context.brief().pieces().filter(|(_, piece)| piece.kind.is_seat());
    let (mut here, mut usual) = (0.0, 0.0);
    for (place, piece) in seats {
        let of_usual = measure_of_places(piece, Size::of_piece(piece, |range| range.usual));
        let of_placed = context.in_room.layout.of(place).map_or(0.0, |placed| measure_of_places(piece, placed.size));
        usual += of_usual;
        here += of_placed.min(of_usual);
    }
    if usual > 0.0 { here / usual } else { 0.0 }
}

/// How well a place reaches a surface to put something down on, 0 to 1.
fn surface(context: &CriteriaContext, place: &SeatPlace) -> f64 {
    let tables = context.placed(|kind| kind.traits().is_surface);
    let reach = tables.map(|(_, table)| REACH.at(gap(&place.cushion, &table.main()).clear));
    reach.fold(0.0, f64::max)
}
