//! The largest pieces that a plan leaves room for: its pieces under its stands, none smaller than planned.
//!
//! All is decided as the plan decides it first, which always gives a layout; then whatever is better is looked for, best
//! first. Where each piece stands is settled last, when the sizes are known: to weigh it all along takes several times the
//! work.

use elbowroom_model::Brief;

use super::NODES_TO_TIDY;
use super::aim::Aim;
use super::arrangement_context::ArrangementContext;
use super::dive::held;
use super::easing::Easing;
use super::effort::Effort;
use super::found::{Found, Searched};
use super::once::search_once;
use super::room_context::RoomContext;
use super::tolerance::SAME_VALUE;
use super::tree::{Lead, Order};
use crate::arrangement::Arrangement;
use crate::routes::Floor;

/// The largest pieces: those of this plan under its stands, none smaller than planned.
#[must_use]
pub fn largest(
    room: &RoomContext<'_>,
    floor: &Floor,
    arrangement: &Arrangement,
    plan: &Found,
    nodes: usize,
) -> Searched {
    // How large pieces can be must not hang on what else was tried for the plan.
    let context = &ArrangementContext::of(room, floor, arrangement);
    let held = &held(room, arrangement, &plan.layout, None);
    let effort = Effort { easing: Easing::as_in(plan), ..Effort::of(Aim::Within(plan), nodes) };
    let growing = Growing { context, held, effort };
    let mut searched = growing.best(plan);
    let unexplored = searched.unexplored;
    let mut found = match searched.found.take() {
        Some(best) => growing.in_order(best, &mut searched),
        None => as_planned(room.brief, plan, unexplored),
    };
    found.bound = found.objective.max(unexplored);
    found.layout.eased.clone_from(&plan.layout.eased);
    found.eased.clone_from(&plan.eased);
    searched.found = Some(found);
    searched
}

/// The plan itself as the largest layout; nothing larger than `unexplored` was left unseen.
#[must_use]
pub fn as_planned(brief: &Brief, plan: &Found, unexplored: f64) -> Found {
    let objective = plan.layout.size_value(brief);
    Found { objective, bound: unexplored.max(objective), ..plan.clone() }
}

/// A plan whose pieces are to grow.
struct Growing<'s, 'a> {
    context: &'s ArrangementContext<'a>,
    /// The arrangement with every piece held to its stand.
    held: &'s Arrangement,
    effort: Effort<'s>,
}

impl Growing<'_, '_> {
    /// The largest as the plan decides, or what is better by more than tells two layouts apart.
    fn best(&self, plan: &Found) -> Searched {
        let first = self.look(self.effort, Order::Like(Lead::whole(&plan.values)));
        let beaten = |found: &Found| found.objective + SAME_VALUE * found.objective.abs();
        let to_beat = first.found.as_ref().map_or(self.effort.to_beat, beaten);
        let mut searched = self.look(Effort { to_beat, ..self.effort }, Order::BestFirst);
        searched.take_work_of(&first);
        searched.found = searched.found.or(first.found);
        searched
    }

    /// The same sizes with each piece drawn up and centred, as far as what was decided lets it.
    fn in_order(&self, best: Found, searched: &mut Searched) -> Found {
        let tidy = Effort { aim: Aim::Tidy(&best.layout), nodes: NODES_TO_TIDY, ..self.effort };
        let tidy = self.look(tidy, Order::Like(Lead::whole(&best.values)));
        searched.take_work_of(&tidy);
        let layout = tidy.found.map_or(best.layout, |tidy| tidy.layout);
        Found { objective: layout.size_value(self.context.room.brief), layout, ..best }
    }

    fn look(&self, effort: Effort<'_>, order: Order<'_>) -> Searched {
        search_once(self.context, self.held, effort, order)
    }
}
