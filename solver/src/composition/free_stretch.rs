//! The stretches of a wall at which furniture stands: free of doors, openings, fires and low windows.

use elbowroom_model::{Brief, ItemKind, Point};

use crate::best_by;
use crate::site::{Site, SiteWall, WallPlace};

/// Windows lower than this break a stretch of wall, mm: furniture does not stand before them (common practice, no source).
const LOW_SILL: f64 = 700.0;

/// A stretch of a wall, along it, mm.
#[derive(Debug, Clone, Copy)]
pub(super) struct Stretch {
    /// From the start of the wall.
    pub(super) low: f64,
    pub(super) high: f64,
}

impl Stretch {
    pub(super) fn length(&self) -> f64 {
        self.high - self.low
    }
}

/// The longest stretch of a wall free of doors, openings, fires and low windows.
pub(super) fn longest_stretch(brief: &Brief, site: &Site, wall: &SiteWall) -> Stretch {
    let all = free_stretches(brief, site, wall);
    let whole = Stretch { low: 0.0, high: (wall.end - wall.start).norm() };
    best_by(all, |stretch| stretch.length()).unwrap_or(whole)
}

/// The stretches of a wall free of doors, openings, fires and low windows; the whole wall where there is none.
pub(super) fn free_stretches(brief: &Brief, site: &Site, wall: &SiteWall) -> Vec<Stretch> {
    let at = |place: Point| (place - wall.start).dot(wall.along);
    let mut taken: Vec<(f64, f64)> = Vec::new();
    for (id, item) in brief.room.items().filter(|(_, item)| item.wall == wall.id) {
        if let (true, Some(WallPlace { left, right, .. })) = (breaks(&item.kind), site.place_of(brief, id)) {
            taken.push((at(left).min(at(right)), at(left).max(at(right))));
        }
    }
    taken.sort_by(|one, other| one.0.total_cmp(&other.0));
    let length = at(wall.end);
    let (mut from, mut found) = (0.0, Vec::new());
    for (left, right) in taken.into_iter().chain([(length, length)]) {
        if left > from {
            found.push(Stretch { low: from, high: left });
        }
        from = f64::max(from, right);
    }
    if found.is_empty() { vec![Stretch { low: 0.0, high: length }] } else { found }
}

/// Whether furniture at the wall ends where this begins.
fn breaks(kind: &ItemKind) -> bool {
    match kind {
        ItemKind::Door(_) | ItemKind::Opening(_) | ItemKind::Fireplace(_) => true,
        ItemKind::Window(window) => window.sill < LOW_SILL,
        ItemKind::Radiator(_) | ItemKind::Socket(_) => false,
    }
}
