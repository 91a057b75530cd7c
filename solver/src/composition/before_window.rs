//! No screen stands before a window: who looks at the one has the glare of the other behind it, and loses the view. Nor does
//! one stand over a radiator.

use elbowroom_model::{ItemKind, Term};

use super::asked::Asked;
use super::floor_before::not_before;
use super::plan_term::{PlanTerm, TermContext};
use crate::rules::Pose;
use crate::site::WallPlace;

/// A screen nearer than this to the wall of a window is before it, mm (common practice, no source).
const DEEP: f64 = 600.0;

/// So much of a window at either end may lie behind a screen, share of its width (common practice, no source).
const MAY_OVERLAP: f64 = 0.15;

/// A window that begins higher is above what stands there, mm: about the top of a screen on a media unit.
const ABOVE: f64 = 1200.0;

/// The screen keeps off the windows and the radiators.
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
        let heaters = brief.room.items().filter(|(_, item)| matches!(item.kind, ItemKind::Radiator(_)));
        let all = low.map(|(id, _)| (id, Term::BeforeWindow)).chain(heaters.map(|(id, _)| (id, Term::OverHeater)));
        let placed = all.filter_map(|(id, term)| Some((id, site.place_of(brief, id)?, term)));
        placed.filter_map(|(id, place, term)| not_before(pose, id, &most_of(place), DEEP, term)).collect()
    }
}

/// The middle of what hangs there, which is to be clear.
fn most_of(WallPlace { left, right, inward }: WallPlace) -> WallPlace {
    let aside = (right - left) * MAY_OVERLAP;
    WallPlace { left: left + aside, right: right - aside, inward }
}
