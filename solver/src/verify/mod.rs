//! The independent re-check of a finished layout: every rule of the result format, from the polygons alone.
//!
//! Nothing is ever told that this has not passed. It shares the brief, the arrangement and the layout with the rest of
//! the solver and no code with the search, its rules, its programs or the site they read: moved-in walls, swings and zones are worked
//! out here a second time, from the brief, with the shapes that the rules name (quarter discs stay round). One file a rule.

mod breach;
mod floor_fit;
mod fronts;
mod ground;
mod group;
mod off_wall;
mod overlap;
mod scene;
mod sizes;
mod table;
mod zones;

use elbowroom_model::Brief;

pub use breach::Breach;

use self::scene::Scene;
use crate::arrangement::Arrangement;
use crate::layout::Layout;
use crate::routes::Route;

/// What rounding may take from a rule, mm.
const SLACK: f64 = 0.5;

/// Every rule that `layout` breaks; empty where all hold.
#[must_use]
pub fn verify(brief: &Brief, layout: &Layout, arrangement: &Arrangement, _routes: &[Route]) -> Vec<Breach> {
    let scene = Scene::of(brief, layout, arrangement);
    let mut breaches = sizes::breaches(&scene, layout);
    breaches.extend(standing(&scene));
    breaches.extend(table::out_of_place(&scene));
    breaches
}

/// Breaches of the rules that must also hold when pieces are smaller than laid out.
fn standing(scene: &Scene<'_>) -> Vec<Breach> {
    let rules = [
        floor_fit::breaches,
        overlap::breaches,
        zones::breaches,
        table::breaches,
        off_wall::breaches,
        group::breaches,
        fronts::breaches,
    ];
    rules.iter().flat_map(|rule| rule(scene)).collect()
}
