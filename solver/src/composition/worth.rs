//! What a piece that need not stand is worth by standing.

use elbowroom_model::{Criterion, Piece, Stands, Wishes};

/// Of a wish of 3; by the wish that it serves, a third at least (tuned over rooms of real dwellings, no source).
const SEAT: f64 = 2500.0;
const STORAGE: f64 = 1000.0;
const SMALL: f64 = 600.0;

/// The wish that counts once.
const PLAIN_WISH: f64 = 3.0;

/// What a piece that need not stand is worth, in millimetres of shortfall of a piece that counts 3.
pub(crate) fn worth(piece: &Piece, wishes: &Wishes) -> f64 {
    let kind = piece.kind;
    let (worth, wish) = if kind.is_seat() {
        (SEAT, wishes.get(Criterion::Seats).max(1.0))
    } else if kind.traits().gives_light {
        (SMALL, wishes.get(Criterion::Daylight))
    } else if kind.is_flat() || kind.traits().stands == Stands::BesideSeats {
        (SMALL, PLAIN_WISH)
    } else {
        (STORAGE, PLAIN_WISH)
    };
    worth * f64::max(wish / PLAIN_WISH, 1.0 / PLAIN_WISH)
}
