//! What came of a text: the answer, and the plans that were drawn of it.

use std::collections::HashMap;
use std::sync::{Arc, Mutex, PoisonError};

use elbowroom_model::Brief;
use elbowroom_solver::answer::Answer;

use crate::drawing::{Paper, svg_in_page};
use crate::render::plan::{self, Shown};
use crate::words::page as words;

/// What a plan takes at most, in paper millimetres: its letters then read at the width of a phone.
const WIDEST: Paper = Paper { width: 132.0, height: 104.0 };

/// An answer and its plans.
pub(in crate::page) struct Solved {
    /// The answer.
    pub(in crate::page) answer: Answer,
    /// The step of the text that was solved: what is drawn of it stays true while only the order changes.
    pub(in crate::page) drawn_of: u64,
    /// The step of the text that the order is of.
    pub(in crate::page) step: u64,
    plans: Arc<Mutex<HashMap<String, Arc<str>>>>,
}

impl Solved {
    /// The answer to the text of a step.
    pub(super) fn new(answer: Answer, step: u64) -> Self {
        Self { answer, drawn_of: step, step, plans: Arc::default() }
    }

    /// The same options in another order.
    pub(super) fn reordered(&self, answer: Answer, step: u64) -> Self {
        Self { answer, drawn_of: self.drawn_of, step, plans: Arc::clone(&self.plans) }
    }

    /// Whether it answers this brief.
    pub(super) fn is_of(&self, brief: &Brief) -> bool {
        self.answer.asked == *brief
    }

    /// The plan of an option, drawn once.
    pub(in crate::page) fn plan(&self, key: &str) -> Option<Arc<str>> {
        let known = self.plans.lock().unwrap_or_else(PoisonError::into_inner).get(key).cloned();
        if known.is_some() {
            return known;
        }
        let option = self.answer.keyed(key)?;
        let mut sheet = plan::for_page(Shown::Option { answer: &self.answer, option }, &WIDEST).sheet;
        // Its place in the order changes with the wishes; the plan does not.
        sheet.title = words::plan_of(&self.answer.brief, option);
        let svg: Arc<str> = svg_in_page(&sheet).into();
        self.plans.lock().unwrap_or_else(PoisonError::into_inner).insert(key.to_owned(), Arc::clone(&svg));
        Some(svg)
    }
}
