//! What would have to come off a piece, or off the doors on its way, before it gets in.

use elbowroom_model::way_in::{PointKind, Way};

use super::carried::Carried;
use super::tolerance::JUST_PASSES;

/// How much wider a doorway is without its leaf, which open still stands before one jamb, mm: the thickness of a light leaf
/// (common practice, no source).
const LEAF: f64 = 35.0;

/// Legs under a piece, mm high.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Legs {
    /// Its list says that they come off.
    ComeOff(f64),
    /// Its list says how high they are, and not whether they come off.
    Listed(f64),
    /// Nobody says whether it has any. Asked for: the most that is looked for; found: the least that would do.
    UpTo(f64),
}

/// What comes off, and how the piece gets in then.
#[derive(Debug, Clone, PartialEq)]
pub struct TakeOff {
    /// Its legs.
    pub legs: Option<Legs>,
    /// Doors whose leaf is lifted off its hinges, by their places on the way.
    pub leaves: Vec<usize>,
    /// How much wider each of them is then, mm.
    pub wider: f64,
    /// How it is carried then.
    pub carried: Carried,
}

/// Whether a piece gets in by a way, with so many mm of legs off.
type By<'a> = dyn Fn(&Way, f64) -> Carried + 'a;

/// What would have to come off a piece that does not get in: its legs, or the leaves of doors; both where neither is enough.
pub(super) fn take_off(way: &Way, legs: Option<Legs>, by: &By<'_>) -> Vec<TakeOff> {
    let alone = [without_legs(way, legs, &[], by), without_leaves(way, None, by)];
    let alone: Vec<TakeOff> = alone.into_iter().flatten().collect();
    if alone.is_empty() { without_leaves(way, legs, by).into_iter().collect() } else { alone }
}

/// The piece without its legs, of legs that nobody tells of the least that would do, with these doors without their leaves.
fn without_legs(way: &Way, legs: Option<Legs>, leaves: &[usize], by: &By<'_>) -> Option<TakeOff> {
    let way = &wider(way, leaves);
    let (legs, off) = match legs? {
        legs @ (Legs::ComeOff(off) | Legs::Listed(off)) => (legs, off),
        Legs::UpTo(most) => {
            let least = least_off(most, &|off| by(way, off).gets_in)?;
            (Legs::UpTo(least), least)
        }
    };
    let carried = by(way, off);
    carried.gets_in.then(|| TakeOff { legs: Some(legs), leaves: leaves.to_vec(), wider: LEAF, carried })
}

/// The piece with as few leaves lifted off as do, and without its legs where there are `legs`.
fn without_leaves(way: &Way, legs: Option<Legs>, by: &By<'_>) -> Option<TakeOff> {
    let off = |leaves: &[usize]| match legs {
        Some(_) => without_legs(way, legs, leaves, by),
        None => {
            let carried = by(&wider(way, leaves), 0.0);
            carried.gets_in.then(|| TakeOff { legs: None, leaves: leaves.to_vec(), wider: LEAF, carried })
        }
    };
    let is_door = |at: &usize| matches!(way.points[*at].kind, PointKind::Door { .. });
    let mut leaves: Vec<usize> = (0..way.points.len()).filter(is_door).collect();
    let mut best = off(&leaves).filter(|_| !leaves.is_empty())?;
    for at in leaves.clone() {
        let fewer: Vec<usize> = leaves.iter().copied().filter(|leaf| *leaf != at).collect();
        if let Some(found) = off(&fewer).filter(|_| !fewer.is_empty()) {
            (best, leaves) = (found, fewer);
        }
    }
    Some(best)
}

/// The way with these doors wider by their leaves.
fn wider(way: &Way, leaves: &[usize]) -> Way {
    let mut wider = way.clone();
    for (_, point) in wider.points.iter_mut().enumerate().filter(|(at, _)| leaves.contains(at)) {
        if let PointKind::Door { width, .. } = &mut point.kind {
            *width += LEAF;
        }
    }
    wider
}

/// The least up to `most` that `does`, where more does too; `None` where the most does not.
fn least_off(most: f64, does: &dyn Fn(f64) -> bool) -> Option<f64> {
    let (mut low, mut high) = (0.0, most);
    if !does(high) {
        return None;
    }
    while high - low > JUST_PASSES {
        let middle = f64::midpoint(low, high);
        if does(middle) { high = middle } else { low = middle }
    }
    Some(high)
}
