//! Distances that show, before anything is marked, that the room is the one that was measured.

use elbowroom_model::{Point, Room};

use super::sight::Sight;
use crate::geometry::angle_at;

/// A distance to measure before anything is marked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Checked {
    /// A point, by its place in [`super::SettingOut::points`].
    pub from: usize,
    /// Another.
    pub to: usize,
    /// mm.
    pub length: f64,
}

/// Every wall, and the diagonals that leave the outline no freedom: the room cut into triangles, the sharpest corner of
/// which is as blunt as can be. A room of four corners gets both its diagonals, where both lie inside.
pub(super) fn checks(room: &Room, sight: &Sight<'_>) -> (Vec<Checked>, Vec<Checked>) {
    let corners = room.outline();
    let count = corners.len();
    let between = |from: usize, to: usize| Checked { from, to, length: (corners[to] - corners[from]).norm() };
    let walls = (0..count).map(|wall| between(wall, (wall + 1) % count)).collect();
    let clear = |from: usize, to: usize| sight.is_clear(corners[from], corners[to]);
    let inside = |from: usize, to: usize| sight.is_inside(corners[from], corners[to]);
    if count == 4 {
        let both = [(0, 2), (1, 3)].into_iter().filter(|(from, to)| inside(*from, *to));
        return (walls, both.map(|(from, to)| between(from, to)).collect());
    }
    let cuts = triangles(&corners, &clear).or_else(|| triangles(&corners, &inside)).unwrap_or_default();
    (walls, cuts.into_iter().map(|(from, to)| between(from, to)).collect())
}

/// Cuts the ring into triangles along lines for which `may`; the cuts.
fn triangles(corners: &[Point], may: &dyn Fn(usize, usize) -> bool) -> Option<Vec<(usize, usize)>> {
    let count = corners.len();
    let may_cut = |from: usize, to: usize| to == from + 1 || (from == 0 && to + 1 == count) || may(from, to);
    // The bluntest that the sharpest angle between `from` and `to` can be, and the corner that makes it so.
    let mut best = vec![vec![(f64::NEG_INFINITY, 0_usize); count]; count];
    for (from, row) in best.iter_mut().enumerate() {
        if let Some(next) = row.get_mut(from + 1) {
            *next = (f64::INFINITY, from);
        }
    }
    for reach in 2..count {
        for from in 0..count - reach {
            let to = from + reach;
            if !may_cut(from, to) {
                continue;
            }
            for middle in from + 1..to {
                let sharpest = sharpest([corners[from], corners[middle], corners[to]]);
                let worth = best[from][middle].0.min(best[middle][to].0).min(sharpest);
                if worth > best[from][to].0 {
                    best[from][to] = (worth, middle);
                }
            }
        }
    }
    let whole = best.first()?.last()?.0;
    if whole == f64::NEG_INFINITY {
        return None;
    }
    let mut cuts = cuts_of(&best);
    cuts.sort_unstable();
    Some(cuts)
}

/// The cuts that lead to the best triangles of the whole ring.
fn cuts_of(best: &[Vec<(f64, usize)>]) -> Vec<(usize, usize)> {
    let whole = (0, best.len() - 1);
    let (mut open, mut cuts) = (vec![whole], Vec::new());
    while let Some((from, to)) = open.pop() {
        if to <= from + 1 {
            continue;
        }
        if (from, to) != whole {
            cuts.push((from, to));
        }
        let middle = best[from][to].1;
        open.extend([(from, middle), (middle, to)]);
    }
    cuts
}

fn sharpest([a, b, c]: [Point; 3]) -> f64 {
    angle_at(a, b, c).min(angle_at(b, c, a)).min(angle_at(c, a, b))
}
