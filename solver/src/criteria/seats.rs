//! Seats: how many sit here, how near the pieces come to the sizes people usually want, and where a cup can stand.

use elbowroom_model::article::capital;
use elbowroom_model::{Brief, Criterion, Piece};

use super::Judgement;
use super::curve::{mean, through, weighted_mean};
use super::seat_places::{SeatPlace, measure_of_places};
use super::setting::Setting;
use crate::geometry::gap;
use crate::layout::{Placed, Size};

const BASIS: &str =
    "27 in a seat place after 9 in for the arms (common practice); sizes against the usual ones of the size table";

/// How far one reaches for a cup from the cushion, mm, to share: 450 (common practice), and nothing at twice that.
const REACH: [(f64, f64); 2] = [(450.0, 1.0), (900.0, 0.0)];

/// What the parts count (ours, no source).
const PLACES: f64 = 0.35;
const SIZES: f64 = 0.45;
const SURFACES: f64 = 0.2;

pub(super) fn judge(setting: &Setting) -> Option<Judgement> {
    let brief = setting.brief();
    let sizes = weighted_mean(brief.pieces().flat_map(|(place, piece)| {
        let placed = setting.scene.layout.of(place);
        against_usual(piece, placed).into_iter().map(|share| (share, piece.weight))
    }))?;
    let reached: Vec<f64> = setting.places.iter().map(|place| surface(setting, place)).collect();
    let surfaces = mean(reached.iter().copied())?;
    let score = 100.0 * (PLACES * places_against_usual(setting)? + SIZES * sizes + SURFACES * surfaces);

    let count = setting.places.len();
    let mut reason = format!("{count} {} here", if count == 1 { "sits" } else { "sit" });
    reason += &format!("; the pieces have {:.0} % of their usual sizes", 100.0 * sizes);
    let within = reached.iter().filter(|share| **share > 0.999).count();
    reason += &format!(
        "; {within} of {count} seat places {} a surface within {}",
        if within == 1 { "has" } else { "have" },
        setting.words(REACH[0].0)
    );
    let left_out = setting.scene.layout.left_out.iter().map(|piece| setting.name(*piece));
    let left_out = super::setting::listed(left_out);
    if !left_out.is_empty() {
        reason += &format!("; {left_out} found no room");
    }
    Some(Judgement::new(Criterion::Seats, score, (count as f64, "count"), capital(&reason) + ".", BASIS))
}

/// A seat is always asked for.
pub(super) const fn left_out(_brief: &Brief) -> Option<String> {
    None
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

/// Seat places, fractions counted, against what the seats have at their usual sizes; at most 1.
fn places_against_usual(setting: &Setting) -> Option<f64> {
    let seats = setting.brief().pieces().filter(|(_, piece)| piece.kind.is_seat());
    let (mut here, mut usual) = (0.0, 0.0);
    for (place, piece) in seats {
        let size = Size {
            width: piece.width.usual,
            return_length: piece.return_length.map(|range| range.usual),
            depth: piece.depth.usual,
        };
        let of_usual = measure_of_places(piece, size);
        let of_placed = setting.scene.layout.of(place).map_or(0.0, |placed| measure_of_places(piece, placed.size));
        usual += of_usual;
        here += of_placed.min(of_usual);
    }
    (usual > 0.0).then(|| here / usual)
}

/// How well a place reaches a surface to put something down on, 0 to 1.
fn surface(setting: &Setting, place: &SeatPlace) -> f64 {
    let tables = setting.placed(|kind| kind.traits().is_surface);
    let reach = tables.map(|(_, table)| through(&REACH, gap(&place.cushion, &table.main()).clear));
    reach.fold(0.0, f64::max)
}
