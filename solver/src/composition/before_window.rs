//! No screen stands before a window: who looks at the one has the glare of the other behind it, and loses the view.

use elbowroom_model::{ItemId, ItemKind, Term};

use super::asked::Asked;
use super::doorways::out_of;
use super::plan_term::{PlanTerm, TermContext};
use crate::geometry::Convex;
use crate::rules::Pose;
use crate::site::WallPlace;

/// A screen nearer than this to the wall of a window is before it, mm (common practice, no source).
const DEEP: f64 = 600.0;

/// So much of a window at either end may lie behind a screen, share of its width (common practice, no source).
const MAY_OVERLAP: f64 = 0.15;

/// The screen looks away from a wall where the cosine between that wall's inward normal and what the screen faces is more than
/// this: 45 degrees.
const BACK_TO: f64 = std::f64::consts::FRAC_1_SQRT_2;

/// A window that begins higher is above what stands there, mm: about the top of a screen on a media unit.
const ABOVE: f64 = 1200.0;

/// The screen keeps out of the windows.
#[derive(Debug)]
pub(super) struct BeforeWindow;

impl PlanTerm for BeforeWindow {
    fn alone(&self, context: &TermContext<'_>, pose: &Pose) -> Vec<Asked> {
        if !pose.role.is_screen() {
            return Vec::new();
        }
        let (brief, site) = (context.room.brief, context.room.site);
        let low = brief.room.items().filter(|(_, item)| match &item.kind {
            ItemKind::Window(window) => window.sill < ABOVE,
            _ => false,
        });
        let placed = low.filter_map(|(id, _)| Some((id, site.place_of(brief, id)?)));
        let behind = placed.filter(|(_, place)| place.inward.dot(pose.stand.facing) > BACK_TO);
        behind.map(|(id, place)| clear(pose, id, &place)).collect()
    }
}

/// Out of the floor before most of the window, or at a price.
fn clear(pose: &Pose, window: ItemId, place: &WallPlace) -> Asked {
    let WallPlace { left, right, inward } = *place;
    let aside = (right - left) * MAY_OVERLAP;
    let (from, to, out) = (left + aside, right - aside, inward * DEEP);
    let before = Convex::counter_clockwise([from, to, to + out, from + out]);
    out_of(pose, &before, Term::BeforeWindow, window)
}
