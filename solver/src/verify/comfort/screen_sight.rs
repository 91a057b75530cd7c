//! Nothing tall stands between the main seat and its screen.

use elbowroom_model::{Brief, Clearance, FixedId, ItemId, ItemKind};

use super::edge::{Edge, Reach};
use super::front_open::standing;
use super::measure::{Lengths, Measure};
use super::seat_front::main_front;
use super::watched::Watched;
use crate::answer::Thing;
use crate::geometry::{Convex, meets, overlap_depth};
use crate::verify::breach::Wrong;
use crate::verify::checked_layout::{CheckedLayout, InPlace};
use crate::verify::tolerance::{COMFORT, SLACK};

const RULE: Clearance = Clearance::ScreenSight;

/// What is no higher one sees a screen over, mm: below the eyes of a sitter and the foot of a screen (common practice).
const LOW: f64 = 600.0;

/// Eyes of one who sits, mm, as low as they may be (common practice).
const EYES: f64 = 1100.0;

pub(super) fn measures(scene: &CheckedLayout<'_>) -> Vec<Measure> {
    let wanted = scene.rule(RULE);
    if wanted <= 0.0 {
        return Vec::new();
    }
    Watched::all(scene).iter().flat_map(|watched| of_screen(scene, watched, wanted)).collect()
}

fn of_screen(scene: &CheckedLayout<'_>, watched: &Watched<'_>, wanted: f64) -> Vec<Measure> {
    // A screen that hangs is seen over whatever is no higher than its lower edge, as far as that is under the eyes.
    let hangs = watched.media.piece.kind.hangs();
    let low = if hangs { watched.media.piece.height.clamp(LOW, EYES) } else { LOW };
    let room = standing(scene).into_iter().filter(|(of, _)| height(scene.brief, *of) > low);
    let own = [watched.seat.placed.piece, watched.media.placed.piece];
    // Nobody sees over who sits at a desk or dines.
    let over = |piece: &InPlace<'_>| if piece.piece.kind.is_sat_at() { LOW } else { low };
    let tall = |piece: &&InPlace<'_>| piece.piece.height_with_screen() > over(piece);
    let pieces = scene.standing_but(&own).filter(tall);
    let pieces = pieces.flat_map(|piece| piece.parts.iter().map(|part| (piece.thing(), part.clone())));
    let measure = |(of, shape): (Thing, Convex)| {
        let between = [of, watched.seat.thing(), watched.media.thing()];
        if watched.beside {
            let short_by = beside(watched, &shape)?;
            return Some(Measure::of_no_length(RULE, Wrong::BeforeScreen, &between, short_by));
        }
        let given = ahead(watched, &shape, wanted)?;
        Some(Measure::at_least(RULE, Wrong::BeforeScreen, &between, &Lengths { wanted, given }))
    };
    room.chain(pieces).filter_map(measure).collect()
}

/// How near to the axis a shape comes that lies between front and screen, mm.
fn ahead(watched: &Watched<'_>, shape: &Convex, wanted: f64) -> Option<f64> {
    let strip = Edge { length: 2.0 * (wanted + COMFORT), ..watched.run };
    let to = -watched.media.placed.main().support(-strip.out) - strip.middle.dot(strip.out);
    let between = Reach { from: COMFORT, to: to - COMFORT };
    strip.covered(shape, between).map(Reach::nearest)
}

/// How deep a shape reaches into the rectangle from the bay's middle to the far edge of a screen beside.
fn beside(watched: &Watched<'_>, shape: &Convex) -> Option<f64> {
    let (bay, out, media) = (main_front(watched.seat.placed), watched.run.out, watched.media.placed.main());
    let aside = -media.support(-out) - bay.middle.dot(out);
    let far = media.support(bay.out) - bay.middle.dot(bay.out);
    let at = |aside: f64, ahead: f64| bay.middle + out * aside + bay.out * ahead;
    let corners = [at(0.0, 0.0), at(aside, 0.0), at(aside, far), at(0.0, far)];
    let rectangle = Convex::counter_clockwise(corners).pulled_in(SLACK).filter(|_| aside > 0.0 && far > 0.0)?;
    // A wall has no depth: that it meets the rectangle is enough.
    meets(shape, &rectangle).then(|| overlap_depth(shape, &rectangle).max(COMFORT) + SLACK)
}

/// How high something of the room reaches, mm; what nobody measured hides all that is behind it.
fn height(brief: &Brief, of: Thing) -> f64 {
    let of_item = |item: ItemId| match brief.room.item(item).map(|item| &item.kind) {
        Some(ItemKind::Radiator(radiator)) => Some(radiator.height),
        Some(ItemKind::Fireplace(fire)) => fire.height,
        _ => None,
    };
    let of_fixed = |fixed: FixedId| brief.room.fixed_thing(fixed).and_then(|fixed| fixed.height);
    let height = match of {
        Thing::Item(item) => of_item(item),
        Thing::Fixed(fixed) => of_fixed(fixed),
        Thing::Wall(_) | Thing::Piece(_) => None,
    };
    height.unwrap_or(f64::INFINITY)
}
