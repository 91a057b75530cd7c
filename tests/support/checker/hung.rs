//! What hangs on a wall: on the wall itself or the front of a breast, over what is lower, before no window or doorway.

use elbowroom_model::{Brief, ItemKind, PieceKind, WallItem};

use super::placing::SLACK;
use super::plane::{P, extent, minus};
use super::room::{Ground, Wall, Zone};
use super::stand::Stand;

/// The kind of the screens that seats turn to: those that hang, where the brief has any that counts.
pub(crate) fn watched(brief: &Brief) -> PieceKind {
    // One that hangs only if it fits takes nothing from a unit with a screen of its own.
    let own = brief.pieces.iter().any(|piece| piece.kind == PieceKind::MediaUnit && piece.screen.is_some());
    let hung = brief.pieces.iter().any(|piece| piece.kind == PieceKind::WallScreen && (piece.needed || !own));
    if hung { PieceKind::WallScreen } else { PieceKind::MediaUnit }
}

/// The screens that seats turn to.
pub(crate) fn screens<'s, 'a>(brief: &Brief, stands: &'s [Stand<'a>]) -> impl Iterator<Item = &'s Stand<'a>> {
    let kind = watched(brief);
    stands.iter().filter(move |stand| stand.piece.kind == kind)
}

/// Whether one of two hangs over the other.
pub(crate) fn over(first: &Stand<'_>, second: &Stand<'_>) -> bool {
    let over =
        |hung: &Stand<'_>, low: &Stand<'_>| hung.hung_at().is_some_and(|edge| low.piece.height_with_screen() <= edge);
    over(first, second) || over(second, first)
}

/// Whether a piece hangs clear over a zone of the room, or before the breast of the fire that the zone belongs to.
pub(crate) fn clears(brief: &Brief, ground: &Ground, stand: &Stand<'_>, zone: &Zone) -> bool {
    let Some(edge) = stand.hung_at() else { return false };
    let fixed = brief.room.fixed.iter().find(|fixed| fixed.name == zone.item);
    let item = brief.room.items.iter().find(|item| item.name == zone.item);
    let fire = item.and_then(|item| match &item.kind {
        ItemKind::Fireplace(fire) => Some((item, fire)),
        _ => None,
    });
    match (zone.rule, fixed, fire) {
        ("fixed", Some(fixed), _) => fixed.height.is_some_and(|height| height <= edge),
        ("fixed", _, Some((_, fire))) => fire.height.is_some_and(|height| height <= edge),
        ("keep_clear", _, Some((item, _))) => {
            wall_of(ground, stand).is_some_and(|wall| is_before(brief, wall, item, stand))
        }
        _ => false,
    }
}

/// What is wrong with how a piece hangs.
pub(crate) fn complaints(brief: &Brief, ground: &Ground, stand: &Stand<'_>) -> Vec<String> {
    if stand.hung_at().is_none() {
        return Vec::new();
    }
    let say = |what: String| format!("6 off_wall: {} {what}", stand.name());
    let Some(wall) = wall_of(ground, stand) else { return vec![say("hangs on no wall".to_owned())] };
    let off = extent(&stand.main(), wall.inward).0 - extent(&wall.ends[..1], wall.inward).0;
    let items = || brief.room.items.iter().filter(|item| brief.room.walls[item.wall.0].name == wall.name);
    let breasts = items().filter_map(|item| match &item.kind {
        ItemKind::Fireplace(fire) if is_before(brief, wall, item, stand) => Some(fire.depth),
        _ => None,
    });
    let mut all = Vec::new();
    if !std::iter::once(0.0).chain(breasts).any(|depth| (off - depth).abs() <= SLACK) {
        all.push(say(format!("hangs {off:.1} off its wall")));
    }
    let (from, to) = extent(&stand.main(), wall.along);
    for item in items() {
        let stops = match &item.kind {
            ItemKind::Door(_) | ItemKind::Opening(_) => true,
            ItemKind::Window(window) => stand.piece.height_with_screen() > window.sill,
            _ => false,
        };
        let (left, right) = span(brief, wall, item);
        if stops && to.min(right) - from.max(left) > SLACK {
            all.push(say(format!("hangs before {}", item.name)));
        }
    }
    all
}

fn wall_of<'g>(ground: &'g Ground, stand: &Stand<'_>) -> Option<&'g Wall> {
    ground.walls.iter().find(|wall| Some(&wall.name) == stand.at_wall.as_ref())
}

/// Whether an item of its wall reaches as far to both sides.
fn is_before(brief: &Brief, wall: &Wall, item: &WallItem, stand: &Stand<'_>) -> bool {
    let ((from, to), (left, right)) = (extent(&stand.main(), wall.along), span(brief, wall, item));
    brief.room.walls[item.wall.0].name == wall.name && from >= left - SLACK && to <= right + SLACK
}

/// From where to where an item is along its wall.
fn span(brief: &Brief, wall: &Wall, item: &WallItem) -> (f64, f64) {
    let start: P = super::room::xy(brief.room.walls[item.wall.0].start);
    let from = super::plane::dot(minus(start, [0.0, 0.0]), wall.along) + item.at;
    (from, from + item.width)
}
