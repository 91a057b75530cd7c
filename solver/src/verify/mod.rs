//! The independent re-check of a finished layout: every rule of the result format, from the polygons alone.
//!
//! Nothing is ever told that this has not passed. It shares the brief, the arrangement and the layout with the rest of
//! the solver and no code with the search, its rules, its programs or the site they read: moved-in walls, swings and
//! zones are worked out here a second time, from the brief, with the shapes that the rules name (quarter discs stay
//! round). One file a rule.

#[cfg(test)]
mod agreement;
mod breach;
mod ceiling;
mod checked_layout;
mod checked_room;
mod checked_shape;
mod comfort;
mod envelope;
mod face;
mod fronts;
mod group;
mod groups;
mod growth;
mod held;
mod hung;
mod inside;
mod leaf;
mod level;
mod mouth;
mod off_wall;
mod overlap;
mod pair;
mod resized;
mod sizes;
mod table;
mod tolerance;
mod travel;
mod turned;
mod turning;
mod way;
mod ways;
mod zones;

pub use breach::{Breach, Wrong};
pub use checked_room::CheckedRoom;
pub use comfort::{Shortfall, shortfalls};
pub use envelope::envelope;
pub use growth::{growth, let_out};

use self::checked_layout::CheckedLayout;
use self::comfort::Eased;
use crate::arrangement::Arrangement;
use crate::layout::Layout;
use crate::routes::Route;

/// Every rule that `layout` breaks; empty where all hold.
#[must_use]
pub fn verify(checked: &CheckedRoom<'_>, layout: &Layout, arrangement: &Arrangement, routes: &[Route]) -> Vec<Breach> {
    let scene = CheckedLayout::of(checked, layout, arrangement);
    let mut breaches = sizes::breaches(&scene, layout);
    breaches.extend(standing(&scene));
    breaches.extend(table::out_of_place(&scene));
    breaches.extend(groups::scattered(&scene));
    breaches.extend(held::breaches(&scene));
    breaches.extend(pair::breaches(&scene));
    breaches.extend(turned::breaches(&scene));
    breaches.extend(turning::breaches(&scene, layout));
    let comforts = comfort::measures(&scene);
    breaches.extend(Eased::of(layout, &comforts).breaches(&comforts));
    breaches.extend(comfort::past_easing(layout));
    breaches.extend(ways::told(&scene, layout, routes));
    breaches
}

/// Breaches of the rules that must also hold when pieces are smaller than laid out.
fn standing(scene: &CheckedLayout<'_>) -> Vec<Breach> {
    let rules = [
        inside::breaches,
        overlap::breaches,
        zones::breaches,
        ceiling::breaches,
        table::breaches,
        off_wall::breaches,
        hung::breaches,
        group::breaches,
        groups::breaches,
        level::breaches,
        fronts::breaches,
    ];
    rules.iter().flat_map(|rule| rule(scene)).collect()
}
