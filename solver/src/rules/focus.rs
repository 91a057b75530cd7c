//! What a main seat faces beside a screen: a fire.

use elbowroom_model::{ItemId, Point};

use super::RuleContext;
use crate::arrangement::face;

/// What draws the eye of whoever faces so more than a screen beside it would.
pub(crate) fn faces_one(room: &RuleContext<'_>, facing: Point) -> Option<ItemId> {
    let mut draw = room.brief.room.items().filter(|(_, item)| room.brief.wishes.draw_to(&item.kind));
    draw.find_map(|(id, _)| {
        let place = room.site.mouth_of(room.brief, id)?;
        face(place.inward, facing).then_some(id)
    })
}
