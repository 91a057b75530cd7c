//! What is carried on which day, with all that the store's list says of it.

use elbowroom_model::listing::ListedPiece;
use elbowroom_solver::Size;
use elbowroom_solver::stock::{Move, Stop};

use super::days::written;
use super::store::Store;
use crate::result::carried::{Carried, what};

/// Cubic millimetres in a cubic metre.
const CUBIC_METRE: f64 = 1e9;

/// The moves told; `places`: of each room that was served, its place among the bookings.
pub(crate) fn carried(moves: &[Move], store: &Store, places: &[usize]) -> Vec<Carried> {
    let place = |room: usize| places.get(room).copied();
    let ends = |one: &Move| match (one.from, one.to) {
        (Stop::Van { from, to }, _) | (_, Stop::Van { from, to }) => (place(from), place(to)),
        (from, to) => (of_room(from).and_then(place), of_room(to).and_then(place)),
    };
    let told = |one: &Move| {
        let (piece, kept) = (&store.owned.get(one.row)?.piece, store.kept.get(one.row)?);
        let (from, to) = ends(one);
        Some(Carried {
            day: written(one.day),
            what: what(one),
            from,
            to,
            line: piece.line,
            name: piece.name.clone(),
            count: one.count,
            size: size(piece),
            height: piece.height,
            mass: kept.mass,
            people: kept.people,
            parts: (!piece.parts.is_empty()).then_some(piece.parts.len()),
            volume: volume(piece),
            place: kept.place.clone(),
        })
    };
    moves.iter().filter_map(told).collect()
}

/// The room at a stop.
const fn of_room(stop: Stop) -> Option<usize> {
    match stop {
        Stop::Room(room) => Some(room),
        Stop::Store | Stop::Van { .. } => None,
    }
}

/// The sizes of a listed piece.
pub(crate) const fn size(piece: &ListedPiece) -> Size {
    let ListedPiece { width, depth, return_length, second_return, return_depth, .. } = *piece;
    Size { width, return_length, second_return, depth, return_depth }
}

/// What a piece fills in a van: its parts, or the runs that it stands in, up to its height.
fn volume(piece: &ListedPiece) -> Option<f64> {
    if !piece.parts.is_empty() {
        return Some(piece.parts.iter().map(|part| part.sides.iter().product::<f64>()).sum::<f64>() / CUBIC_METRE);
    }
    let deep = piece.return_depth.unwrap_or(piece.depth);
    let returns = [piece.return_length.map(|length| (length, deep)), piece.second_return.map(|it| (it, piece.depth))];
    // The corner is the main run's.
    let returns = returns.into_iter().flatten().map(|(length, deep)| (length - piece.depth).max(0.0) * deep);
    let floor = piece.width * piece.depth + returns.sum::<f64>();
    piece.height.map(|height| floor * height / CUBIC_METRE)
}

#[cfg(test)]
mod tests {
    use elbowroom_model::listing::{Asked, read};

    use super::volume;

    #[test]
    fn a_volume_is_that_of_what_stands_there_or_is_not_known() {
        let text = "kind,name,width (m),return (m),depth (m),height (m),parts\n\
                    corner-sofa,A,3,2,1,0.8,\nsofa,B,2,,1,,\nsofa,C,2,,1,0.8,1 x 1 x 0.5 m; 1 x 1 x 0.25 m\n";
        let listing = read(text.as_bytes(), &Asked { most_rows: 9, ..Asked::default() }).unwrap();
        let told: Vec<_> = listing.pieces.iter().map(volume).collect();
        // 3 x 1 and 1 x 1 of floor, 0.8 high; unknown; the boxes.
        assert!((told[0].unwrap() - 3.2).abs() < 1e-9);
        assert_eq!(told[1], None);
        assert!((told[2].unwrap() - 0.75).abs() < 1e-9);
    }
}
