//! Who sits has a liked view before or beside them, and not at their back.

use elbowroom_model::{ItemId, ItemKind, Point, Term, View};

use super::asked::{Asked, Way};
use super::plan_term::{PlanTerm, TermContext};
use crate::arrangement::Role;
use crate::rules::{Pose, RuleContext, With};

/// A window is behind a seat where the cosine between its inward normal and the way the seat faces is more than this: within
/// 45 degrees of straight back (common practice, no source).
const BEHIND: f64 = std::f64::consts::FRAC_1_SQRT_2;

/// The main seat turns its back on no liked view, nor does a return of it.
#[derive(Debug)]
pub(super) struct AboutView;

impl PlanTerm for AboutView {
    fn alone(&self, context: &TermContext<'_>, pose: &Pose) -> Vec<Asked> {
        if pose.role != Role::MainSeat {
            return Vec::new();
        }
        let returns = pose.returns_with_backs().map(|(_, facing)| (Term::ReturnBackToView, facing));
        let runs = std::iter::once((Term::BackToView, pose.stand.facing)).chain(returns);
        let asked = runs.filter_map(|(term, facing)| {
            let window = liked_behind(&context.room, facing)?;
            Some(Asked::always(term, pose, With::Item(window), Way::flat(term)))
        });
        asked.collect()
    }
}

/// The first liked window behind whoever faces that way; `None` too where they have another before or beside them.
fn liked_behind(room: &RuleContext<'_>, facing: Point) -> Option<ItemId> {
    let is_liked = |kind: &ItemKind| matches!(kind, ItemKind::Window(window) if window.view == View::Liked);
    let liked = room.brief.room.items().filter(|(_, item)| is_liked(&item.kind));
    let mut placed = liked.filter_map(|(id, _)| Some((id, room.site.place_of(room.brief, id)?))).peekable();
    let first = placed.peek().map(|(id, _)| *id);
    first.filter(|_| placed.all(|(_, place)| place.inward.dot(facing) > BEHIND))
}
