//! What is asked about the heart of the group: terms of a plan, and a clear line to a screen beside the main seat.

use std::cell::OnceCell;

use elbowroom_model::Clearance;

use super::branching::standing;
use super::cell::{Cell, Ranges};
use super::cells::{Posed, StandId};
use super::easing::Easing;
use super::node::Node;
use super::problem::Problem;
use super::term_cells::TermKey;
use crate::arrangement::Role;
use crate::composition::{self, Heart, TERMS, TermContext, TermCost};
use crate::program::Engine;
use crate::rules::{Pose, Requirement, comfort};

impl Problem<'_> {
    /// What the terms of a plan ask of one state; `None` where no plan is sought.
    pub(super) fn terms_alone(&self, state: usize) -> Option<&Cell> {
        self.aims.as_ref()?;
        Some(self.terms[state].get_or_init(|| {
            let Posed { id, pose, place } = self.states[state].posed.as_ref();
            self.known_terms.cell(self.term_key(*id, None), || {
                let context = self.term_context();
                let asked = TERMS.iter().flat_map(|term| term.alone(&context, pose));
                let asked = asked.map(|asked| asked.requirement());
                Cell::of(asked, &Ranges { bounds: &self.context.variables.bounds, places: place })
            })
        }))
    }

    /// What is asked of two states about the heart of the group: by the terms of a plan, where one is sought, and for a clear
    /// line to a screen beside the main seat.
    pub(super) fn terms_between(&self, first: usize, second: usize) -> Option<&Cell> {
        let is_asked = self.aims.is_some() || self.context.screen == Some(Role::ScreenBeside);
        let (first, second) = if first < second { (first, second) } else { (second, first) };
        is_asked.then(|| {
            let row =
                self.terms_between[first].get_or_init(|| (0..self.states.len()).map(|_| OnceCell::new()).collect());
            let cell = row[second].get_or_init(|| {
                let (a, b) = (&self.states[first].posed, &self.states[second].posed);
                self.known_terms.cell(self.term_key(a.id, Some(b.id)), || self.terms_of_two(a, b))
            });
            cell.as_ref()
        })
    }

    fn terms_of_two(&self, a: &Posed, b: &Posed) -> Cell {
        let mut asked = self.sight_beside(&a.pose, &b.pose);
        if self.aims.is_some() {
            let context = self.term_context();
            let terms = TERMS.iter().flat_map(|term| term.between(&context, &a.pose, &b.pose));
            asked.extend(terms.map(|asked| asked.requirement()));
        }
        let places = [a.place, b.place].concat();
        Cell::of(asked.into_iter(), &Ranges { bounds: &self.context.variables.bounds, places: &places })
    }

    /// What a cell of terms hangs on; `None` where that is one plan.
    fn term_key(&self, first: StandId, with: Option<StandId>) -> Option<TermKey> {
        let scope = self.scope()?;
        Some(TermKey { heart: self.heart, first, with, is_plan: self.aims.is_some(), scope })
    }

    /// What one of two leaves free before a screen beside the main seat that the other is.
    fn sight_beside(&self, first: &Pose, second: &Pose) -> Vec<Requirement> {
        let (screen, piece) = match (first.role, second.role) {
            (Role::ScreenBeside, _) => (first, second),
            (_, Role::ScreenBeside) => (second, first),
            _ => return Vec::new(),
        };
        let Some(main) = self.term_context().heart.main else { return Vec::new() };
        if self.asked.easing == Easing::Ignored || self.asked.without == Some(Clearance::ScreenSight.into()) {
            return Vec::new();
        }
        let asked = comfort::sight_beside(&self.context, main, screen, piece);
        asked.into_iter().map(|requirement| self.eased(requirement)).collect()
    }

    /// What the terms of a plan look at.
    pub(super) fn term_context(&self) -> TermContext<'_> {
        TermContext {
            room: self.context,
            heart: Heart::of(self.arrangement, self.only_stands().map(|posed| &posed.pose)),
        }
    }

    /// Main seat, screen and table where the group stands about them.
    pub(super) fn heart_key(&self) -> [Option<StandId>; 3] {
        let Heart { main, screen, table, .. } = self.term_context().heart;
        [main, screen, table].map(|pose| {
            let pose = pose?;
            self.only_stands().find(|posed| posed.pose.id == pose.id).map(|posed| posed.id)
        })
    }

    /// What must stand and has one stand: a piece that need not stand is no heart, since terms would stand to where it might be.
    fn only_stands(&self) -> impl Iterator<Item = &Posed> {
        let only = self.ways.iter().filter_map(|ways| if let [only] = ways.states[..] { Some(only) } else { None });
        let posed = only.map(|state| self.states[state].posed.as_ref());
        posed.filter(|posed| self.arrangement.must_stand(self.context.brief, posed.pose.id))
    }

    /// What each term costs a plan; empty where no plan is sought.
    pub(super) fn composition<E: Engine>(&self, node: &Node<'_, E>) -> Vec<TermCost> {
        if self.aims.is_none() {
            return Vec::new();
        }
        let poses: Vec<&Pose> = standing(node).into_iter().map(|state| &self.states[state].posed.pose).collect();
        composition::told(&self.term_context(), &poses, Engine::values(&node.engine))
    }
}
