//! Two sofas of one row that the file pairs.

use elbowroom_model::Pair;

use super::placing::{FACING, face};
use super::plane::dot;
use super::stand::Stand;

/// Two sofas that the file pairs: opposite within ten degrees, one before the other; or at a right angle within ten.
pub(crate) fn complaints(stands: &[Stand<'_>]) -> Vec<String> {
    let mut all = Vec::new();
    for (i, first) in stands.iter().enumerate() {
        for second in &stands[i + 1..] {
            if first.piece.alike.is_none() || first.piece.alike != second.piece.alike {
                continue;
            }
            let keeps = match first.piece.pair {
                Pair::Either => true,
                Pair::Facing => face(first, second),
                Pair::Corner => dot(first.facing, second.facing).abs() <= FACING.to_radians().sin(),
            };
            if !keeps {
                all.push(format!("group: {} and {} are no pair as asked", first.name(), second.name()));
            }
        }
    }
    all
}
