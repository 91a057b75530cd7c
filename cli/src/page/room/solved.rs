//! What came of a text: the answer, and the plans that were drawn of it.

use std::collections::HashMap;
use std::sync::{Arc, Mutex, PoisonError};

use elbowroom_model::{Brief, Unit};
use elbowroom_solver::answer::Answer;

use crate::drawing::{Paper, lighter, svg_in_page};
use crate::render::plan::{self, Shown};
use crate::words::page as words;

/// What a plan takes at most, in paper millimetres: its letters then read at the width of a phone.
const WIDEST: Paper = Paper { width: 132.0, height: 104.0 };

/// Plans by the unit that they are told in and by their option.
type Plans = HashMap<(&'static str, String), Arc<str>>;

/// An answer and its plans.
pub(in crate::page) struct Solved {
    /// The answer.
    pub(in crate::page) answer: Answer,
    /// The step of the text that was solved: what is drawn of it stays true while only the order changes.
    pub(in crate::page) drawn_of: u64,
    /// The step of the text that the order is of.
    pub(in crate::page) step: u64,
    plans: Arc<Mutex<Plans>>,
    /// The same in other units.
    others: Arc<Mutex<Vec<Arc<Self>>>>,
}

impl Solved {
    /// The answer to the text of a step.
    pub(super) fn new(answer: Answer, step: u64) -> Self {
        Self { answer, drawn_of: step, step, plans: Arc::default(), others: Arc::default() }
    }

    /// The same options in another order.
    pub(super) fn reordered(&self, answer: Answer, step: u64) -> Self {
        let (plans, others) = (Arc::clone(&self.plans), Arc::default());
        Self { answer, drawn_of: self.drawn_of, step, plans, others }
    }

    /// The same with its lengths told in another unit.
    pub(super) fn told_in(solved: &Arc<Self>, units: Unit) -> Arc<Self> {
        if solved.answer.brief.units == units {
            return Arc::clone(solved);
        }
        let mut others = solved.others.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some(known) = others.iter().find(|other| other.answer.brief.units == units) {
            return Arc::clone(known);
        }
        let mut answer = solved.answer.clone();
        answer.brief.units = units;
        let (plans, no_others) = (Arc::clone(&solved.plans), Arc::default());
        let told = Arc::new(Self { answer, drawn_of: solved.drawn_of, step: solved.step, plans, others: no_others });
        others.push(Arc::clone(&told));
        told
    }

    /// Whether it answers this brief.
    pub(super) fn is_of(&self, brief: &Brief) -> bool {
        self.answer.asked == *brief
    }

    /// The plan of an option, drawn once.
    pub(in crate::page) fn plan(&self, key: &str) -> Option<Arc<str>> {
        let name = (self.answer.brief.units.key(), key.to_owned());
        let known = self.plans.lock().unwrap_or_else(PoisonError::into_inner).get(&name).cloned();
        if known.is_some() {
            return known;
        }
        let option = self.answer.keyed(key)?;
        let mut sheet = plan::for_page(Shown::Option { answer: &self.answer, option }, &WIDEST).sheet;
        // Its place in the order changes with the wishes; the plan does not.
        sheet.title = words::plan_of(&self.answer.brief, option);
        let svg: Arc<str> = svg_in_page(&lighter(sheet)).into();
        self.plans.lock().unwrap_or_else(PoisonError::into_inner).insert(name, Arc::clone(&svg));
        Some(svg)
    }
}
