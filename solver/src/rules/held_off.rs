//! What on a wall holds a piece off it: a low window that it is taller than, a radiator, a fire, a chimney breast.

use elbowroom_model::{Clearance, ItemId, ItemKind, Point};

use super::{Linear, Pose, RuleContext};
use crate::program::Row;
use crate::site::{SiteWall, WallPlace};

/// What holds a piece off its wall lies behind so much of it at least, mm: what merely touches its line is beside it.
const BEHIND: f64 = 5.0;

/// Something that holds a piece off its wall.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Holder {
    /// How far off, mm.
    pub(crate) needs: f64,
    /// From here, mm along the wall.
    low: f64,
    /// To here.
    high: f64,
}

impl Holder {
    /// It lies behind a piece that stands from `low` to `high` along the wall.
    pub(crate) fn is_behind(&self, low: &Linear, high: &Linear) -> [Row; 2] {
        [low.at_most(self.high - BEHIND), high.at_least(self.low + BEHIND)]
    }
}

/// All that holds a piece off a wall.
pub(crate) fn held_off(context: &RuleContext<'_>, pose: &Pose, wall: &SiteWall) -> Vec<Holder> {
    let items = context.brief.room.items().filter(|(_, item)| item.wall == wall.id);
    let at = |place: Point| (place - wall.start).dot(wall.along);
    let holder = |(needs, WallPlace { left, right, .. }): (f64, WallPlace)| Holder {
        needs,
        low: at(left).min(at(right)),
        high: at(left).max(at(right)),
    };
    items.flat_map(|(id, item)| needs_of(context, pose, id, &item.kind)).map(holder).collect()
}

/// How far off the wall something on it holds a piece, and where along it: a breast by its depth beside its fire.
fn needs_of(context: &RuleContext<'_>, pose: &Pose, id: ItemId, kind: &ItemKind) -> Vec<(f64, WallPlace)> {
    let whole = context.site.place_of(context.brief, id);
    if pose.piece.kind.hangs() {
        let breast = match kind {
            ItemKind::Fireplace(fire) => Some(fire.depth),
            _ => None,
        };
        return breast.zip(whole).into_iter().collect();
    }
    let clear = match kind {
        ItemKind::Window(window) if pose.piece.height > window.sill => {
            Some(context.brief.rules.get(Clearance::WindowFront))
        }
        ItemKind::Radiator(radiator) => Some(radiator.depth + radiator.keep_clear),
        ItemKind::Fireplace(fire) => Some(fire.depth + fire.keep_clear),
        _ => None,
    };
    let breast = match kind {
        ItemKind::Fireplace(fire) => fire.opening.map(|_| fire.depth),
        _ => None,
    };
    let clear = clear.zip(context.site.mouth_of(context.brief, id));
    clear.into_iter().chain(breast.zip(whole)).collect()
}
