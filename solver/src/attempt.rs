//! One arrangement tried: planned, made as large as its plan leaves room for, checked again, judged.

use std::borrow::Cow;

use elbowroom_model::Clearance;

use crate::answer::{Eased, thousandth};
use crate::arrangement::Arrangement;
use crate::candidate::{Candidate, Planned, Walked};
use crate::criteria::{self, Judgement, LayoutInRoom, Walkers};
use crate::equals::{Worth, best_of_equals};
use crate::layout::Layout;
use crate::out_of_ways::out_of_ways;
use crate::refusal::{Refusal, Why};
use crate::routes::{Floor, Route};
use crate::rules::Cause;
use crate::rules::comfort::EASED;
use crate::search::{self, ArrangementContext, Budget, Found, RoomContext, Searched, Tally};
use crate::verify::{self, CheckedRoom, Shortfall};
use crate::{Part, Watch, part, refusal};

/// The room as the search sees it, as walkers see it, and as it is seen when every rule is checked again.
pub(crate) struct Attempts<'g, 'a> {
    pub(crate) room: &'g RoomContext<'a>,
    pub(crate) floor: &'g Floor,
    pub(crate) checked: &'g CheckedRoom<'a>,
    /// Nodes that the searches of an arrangement may take at most.
    pub(crate) budget: Budget,
    pub(crate) watch: &'g dyn Watch,
}

/// What came of one arrangement.
pub(crate) struct Tried<T> {
    /// What fits, or why nothing does.
    pub(crate) result: Result<T, Refusal>,
    /// Linear programs solved.
    pub(crate) programs: usize,
    /// What else was done.
    pub(crate) tally: Tally,
}

impl<T> Tried<T> {
    /// An arrangement that nobody wants to know of any more.
    pub(crate) fn not_looked_at(arrangement: &Arrangement) -> Self {
        let refusal = Refusal { key: arrangement.key.clone(), why: Why::NotDecided };
        Self { result: Err(refusal), programs: 0, tally: Tally::default() }
    }
}

/// Why an arrangement has no plan.
enum NoPlan {
    /// None was found.
    NotFound,
    /// What was found is none.
    Lapsed(Why),
}

fn tried<T>(arrangement: &Arrangement, result: Result<T, Why>, searched: Searched) -> Tried<T> {
    let result = result.map_err(|why| Refusal { key: arrangement.key.clone(), why });
    Tried { result, programs: searched.programs, tally: searched.tally }
}

/// Whether what is lacking is floor behind a main seat that stands free. A piece there would do as well, whichever it is, which
/// no rows of two pieces say: to the search that is eased too, so its bound holds of no plan with such a piece.
fn is_behind_free_seat(cause: &Cause, arrangement: &Arrangement) -> bool {
    cause.rule == Clearance::BehindSeat.into()
        && cause.piece == arrangement.main_seat
        && arrangement.choices.seat_back.is_none()
}

impl<'a> Attempts<'_, 'a> {
    /// Tries one arrangement: its plan, how large that leaves room for its pieces, or why it does not fit.
    pub(crate) fn attempt(&self, arrangement: &'a Arrangement) -> Tried<Candidate<'a>> {
        let context = ArrangementContext::of(self.room, self.floor, arrangement);
        let (planned, mut searched) = self.plan(&context, arrangement);
        let result = match planned {
            Ok(planned) => Ok(self.grown(arrangement, planned, &mut searched)),
            Err(NoPlan::Lapsed(why)) => Err(why),
            Err(NoPlan::NotFound) => Err(self.why_refused(arrangement, &mut searched)),
        };
        tried(arrangement, result, searched)
    }

    /// Tries one arrangement for its plan alone. Why none is found is not looked into: but whether that is decided is told.
    pub(crate) fn attempt_plan(&self, arrangement: &'a Arrangement) -> Tried<Planned<'a>> {
        let context = ArrangementContext::of(self.room, self.floor, arrangement);
        let (planned, searched) = self.plan(&context, arrangement);
        let is_decided = searched.is_complete && !self.room.stop.is_asked();
        let result = planned.map_err(|no_plan| match no_plan {
            NoPlan::Lapsed(why) => why,
            NoPlan::NotFound if is_decided => Why::SeveralRules(Vec::new()),
            NoPlan::NotFound => Why::NotDecided,
        });
        tried(arrangement, result, searched)
    }

    fn plan(
        &self,
        context: &ArrangementContext<'_>,
        arrangement: &'a Arrangement,
    ) -> (Result<Planned<'a>, NoPlan>, Searched) {
        let mut searched = part(self.watch, Part::Search, || search::plan(context, self.budget));
        let planned = match searched.found.take() {
            Some(plan) => self.of_plan(context, arrangement, plan, &mut searched).map_err(NoPlan::Lapsed),
            None => Err(NoPlan::NotFound),
        };
        (planned, searched)
    }

    fn why_refused(&self, arrangement: &Arrangement, searched: &mut Searched) -> Why {
        let why = || refusal::why_refused(self.room, self.floor, arrangement, searched);
        let (why, programs) = part(self.watch, Part::Refusal, why);
        searched.programs += programs;
        why
    }

    fn of_plan(
        &self,
        context: &ArrangementContext<'_>,
        arrangement: &'a Arrangement,
        plan: Found,
        searched: &mut Searched,
    ) -> Result<Planned<'a>, Why> {
        if self.room.stop.is_asked() {
            return Err(Why::NotDecided);
        }
        let mut plan = self.walked(plan);
        let (mut judgements, mut walkers) = part(self.watch, Part::Criteria, || self.judged(arrangement, &plan));
        let out_of_ways = || {
            let made = |found: &Found| criteria::walkers_of(&self.in_room(arrangement, found, &self.routes(found)));
            out_of_ways(context, &plan.found, &walkers, &made, searched)
        };
        if let Some(moved) = part(self.watch, Part::Search, out_of_ways) {
            plan = self.walked(moved);
            (judgements, walkers) = part(self.watch, Part::Criteria, || self.judged(arrangement, &plan));
        }
        let best_of_equals = || {
            let worth = |found: &Found| {
                let (judgements, walkers) = self.judged(arrangement, &self.walked(found.clone()));
                Worth::of(&judgements, &walkers)
            };
            let now = Worth::of(&judgements, &walkers);
            best_of_equals(context, &plan.found, now, &worth, searched)
        };
        if let Some(better) = part(self.watch, Part::Search, best_of_equals) {
            plan = self.walked(better);
            (judgements, walkers) = part(self.watch, Part::Criteria, || self.judged(arrangement, &plan));
        }
        let verified = || verify::verify(self.checked, &plan.found.layout, arrangement, &plan.routes);
        if let Some(breach) = part(self.watch, Part::Check, verified).into_iter().next() {
            return Err(Why::NotVerified(breach));
        }
        // From here on it is eased what the second check finds lacking, by its name.
        let short = part(self.watch, Part::Check, || verify::shortfalls(self.checked, &plan.found.layout, arrangement));
        plan.found.layout.eased = short.iter().filter_map(Shortfall::cause).collect();
        if plan.found.layout.eased.iter().any(|cause| is_behind_free_seat(cause, arrangement)) {
            plan.found.bound += EASED;
        }
        let refund = if short.is_empty() { plan.found.paid_for_easing(&self.room.variables) } else { 0.0 };
        let eased = short.into_iter().map(Eased::from).collect();
        walkers.take_into(&mut plan.found.composition);
        Ok(Planned {
            arrangement: Cow::Borrowed(arrangement),
            plan: plan.found,
            routes: plan.routes,
            eased,
            refund,
            judgements,
        })
    }

    /// What was planned in an arrangement, with its pieces as large as that leaves room for.
    fn grown(&self, arrangement: &Arrangement, planned: Planned<'a>, searched: &mut Searched) -> Candidate<'a> {
        let (largest, work) = self.largest_of(arrangement, &planned);
        searched.take_work_of(&work);
        Candidate { planned, largest }
    }

    /// The largest pieces that a plan of `arrangement` leaves room for, and the search for them.
    pub(crate) fn largest_of(&self, arrangement: &Arrangement, planned: &Planned<'_>) -> (Walked, Searched) {
        let Planned { plan, routes, .. } = planned;
        let mut searched = part(self.watch, Part::Search, || {
            search::largest(self.room, self.floor, arrangement, plan, self.budget.of_one)
        });
        let found = searched.found.take();
        let unexplored = found.as_ref().map_or(searched.unexplored, |found| found.bound);
        let as_planned = search::as_planned(self.room.brief, plan, unexplored);
        let mut tried = found.into_iter().chain([as_planned.clone()]);
        let largest = tried.find_map(|found| self.largest(arrangement, found));
        let largest = largest.unwrap_or_else(|| Walked { found: as_planned, routes: routes.clone() });
        (largest, searched)
    }

    /// The largest layout that keeps every rule and eases no other than its plan: let out, or else as it was found.
    fn largest(&self, arrangement: &Arrangement, found: Found) -> Option<Walked> {
        let let_out = part(self.watch, Part::Check, || self.let_out(arrangement, found.clone()));
        [let_out, found].into_iter().map(|found| self.walked(found)).find(|largest| {
            let Walked { found, routes } = largest;
            let breaches = || verify::verify(self.checked, &found.layout, arrangement, routes);
            part(self.watch, Part::Check, breaches).is_empty()
        })
    }

    /// What was found with every size let out that can still grow with all else as it is.
    fn let_out(&self, arrangement: &Arrangement, found: Found) -> Found {
        let brief = self.room.brief;
        let circle = |layout: &Layout| self.floor.find_circle(brief, layout);
        let layout = verify::let_out(self.checked, &found.layout, arrangement, &circle);
        let gained = layout.size_value(brief) - found.layout.size_value(brief);
        let objective = found.objective + gained;
        let bound = if found.may_be(objective) { found.bound.max(objective) } else { layout.most_size_value(brief) };
        Found { layout, objective, bound, ..found }
    }

    fn walked(&self, found: Found) -> Walked {
        let routes = part(self.watch, Part::Routes, || self.routes(&found));
        Walked { found, routes }
    }

    fn routes(&self, found: &Found) -> Vec<Route> {
        self.floor.routes(self.room.brief, &found.layout)
    }

    fn in_room<'l>(&'l self, arrangement: &Arrangement, plan: &'l Found, routes: &'l [Route]) -> LayoutInRoom<'l> {
        LayoutInRoom {
            brief: self.room.brief,
            site: self.room.site,
            layout: &plan.layout,
            routes,
            main_seat: arrangement.main_seat,
            composition: Some(&plan.composition),
        }
    }

    /// How a plan is judged, and the terms that walkers decide.
    fn judged(&self, arrangement: &Arrangement, plan: &Walked) -> (Vec<Judgement>, Walkers) {
        let in_room = self.in_room(arrangement, &plan.found, &plan.routes);
        let (mut judgements, walkers) = criteria::judge_with_walkers(&in_room);
        // Ranked by the scores that are told, so that whoever weighs those anew comes to the same order.
        judgements.iter_mut().for_each(|judgement| judgement.score = thousandth(judgement.score));
        (judgements, walkers)
    }
}
