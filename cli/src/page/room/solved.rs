//! What came of a text: the answer, and the plans that were drawn of it.

use std::collections::HashMap;
use std::sync::{Arc, Mutex, PoisonError};

use elbowroom_model::{Brief, PieceId, Unit};
use elbowroom_solver::answer::{Answer, PieceSizes};
use elbowroom_solver::judge::JudgedRoom;
use elbowroom_solver::{Limits, Watch, sizes_in_full};

use crate::drawing::{At, Paper, Sheet, lighter, svg_in_page};
use crate::render::plan::{self, Layers, Marked, Shown};
use crate::words::page as words;

/// What a plan takes at most, in paper millimetres: its letters then read at half the width of a desk's screen.
const WIDEST: Paper = Paper { width: 104.0, height: 92.0 };

/// What a plan takes at most on a phone: the sizes on it read there.
const IN_HAND: Paper = Paper { width: 70.0, height: 60.0 };

/// What a small plan takes at most: so little that the sizes on it read where it is one of several.
const SMALL: Paper = Paper { width: 54.0, height: 44.0 };

/// Where a plan is seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(in crate::page) enum Form {
    /// On a desk's screen.
    Desk,
    /// On a phone.
    Phone,
}

impl Form {
    const fn widest(self) -> &'static Paper {
        match self {
            Self::Desk => &WIDEST,
            Self::Phone => &IN_HAND,
        }
    }
}

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
    /// The room that what is tried was held against last, by what it is of.
    judged: Mutex<Option<(String, Arc<JudgedRoom>)>>,
    /// What holds the sizes of the option that was asked of last.
    sizes: Mutex<Option<(String, Arc<[PieceSizes]>)>>,
}

impl Solved {
    /// The answer to the text of a step.
    pub(super) fn new(answer: Answer, step: u64) -> Self {
        Self::of(answer, [step, step], Arc::default())
    }

    /// The same options in another order.
    pub(super) fn reordered(&self, answer: Answer, step: u64) -> Self {
        Self::of(answer, [self.drawn_of, step], Arc::clone(&self.plans))
    }

    fn of(answer: Answer, [drawn_of, step]: [u64; 2], plans: Arc<Mutex<Plans>>) -> Self {
        Self {
            answer,
            drawn_of,
            step,
            plans,
            others: Arc::default(),
            judged: Mutex::default(),
            sizes: Mutex::default(),
        }
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
        let told = Arc::new(Self::of(answer, [solved.drawn_of, solved.step], Arc::clone(&solved.plans)));
        others.push(Arc::clone(&told));
        told
    }

    /// Whether it answers this brief.
    pub(super) fn is_of(&self, brief: &Brief) -> bool {
        self.answer.asked == *brief
    }

    /// A room that what is tried is held against, judged once while it is the same.
    pub(in crate::page) fn judged(
        &self,
        of: &str,
        judge: impl FnOnce() -> Option<JudgedRoom>,
    ) -> Option<Arc<JudgedRoom>> {
        let mut known = self.judged.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some((_, room)) = known.as_ref().filter(|(known, _)| known == of) {
            return Some(Arc::clone(room));
        }
        let room = Arc::new(judge()?);
        *known = Some((of.to_owned(), Arc::clone(&room)));
        Some(room)
    }

    /// The plan of an option, drawn once.
    pub(in crate::page) fn plan(&self, key: &str) -> Option<Arc<str>> {
        self.drawn(key, key.to_owned(), |shown| plan::for_page(shown, &WIDEST).sheet)
    }

    /// The same for a phone, with sizes alone on it.
    pub(in crate::page) fn in_hand(&self, key: &str) -> Option<Arc<str>> {
        self.drawn(key, format!("in hand {key}"), |shown| plan::thumbnail(shown, &IN_HAND))
    }

    /// The same as one of several.
    pub(in crate::page) fn small(&self, key: &str) -> Option<Arc<str>> {
        self.drawn(key, format!("small {key}"), |shown| plan::thumbnail(shown, &SMALL))
    }

    /// The plan with what is chosen to be shown and what is touched, and what each number on it stands for; drawn anew where
    /// somebody asks.
    pub(in crate::page) fn on_screen(
        &self,
        key: &str,
        form: Form,
        layers: Layers,
        marked: &Marked,
    ) -> Option<(String, Vec<String>)> {
        let option = self.answer.keyed(key)?;
        let mut alone = plan::on_screen(Shown::Option { answer: &self.answer, option }, layers, marked, form.widest());
        alone.sheet.title = words::plan_of(&self.answer.brief, option);
        Some((svg_in_page(&lighter(alone.sheet)), alone.key))
    }

    /// The piece at a place of a plan, mm of paper; `is_first`: of the one with sizes alone that a phone first has.
    pub(in crate::page) fn piece_at(&self, key: &str, at: At, form: Form, is_first: bool) -> Option<PieceId> {
        let option = self.answer.keyed(key)?;
        plan::touched(Shown::Option { answer: &self.answer, option }, at, form.widest(), is_first)
    }

    /// How large each piece of an option may be, with what holds it: worked out where somebody asks, and kept of the option that
    /// was asked of last. Nothing where whoever asked has gone away meanwhile.
    pub(in crate::page) fn sizes_in_full(&self, key: &str, watch: &dyn Watch) -> Option<Arc<[PieceSizes]>> {
        let mut known = self.sizes.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some((_, sizes)) = known.as_ref().filter(|(known, _)| known == key) {
            return Some(Arc::clone(sizes));
        }
        let sizes: Arc<[PieceSizes]> = sizes_in_full(&self.answer.brief, key, &Limits::default(), watch)?.into();
        *known = Some((key.to_owned(), Arc::clone(&sizes)));
        Some(sizes)
    }

    fn drawn(&self, key: &str, name: String, draw: impl FnOnce(Shown<'_>) -> Sheet) -> Option<Arc<str>> {
        let name = (self.answer.brief.units.key(), name);
        let known = self.plans.lock().unwrap_or_else(PoisonError::into_inner).get(&name).cloned();
        if known.is_some() {
            return known;
        }
        let option = self.answer.keyed(key)?;
        let mut sheet = draw(Shown::Option { answer: &self.answer, option });
        // Its place in the order changes with the wishes; the plan does not.
        sheet.title = words::plan_of(&self.answer.brief, option);
        let svg: Arc<str> = svg_in_page(&lighter(sheet)).into();
        self.plans.lock().unwrap_or_else(PoisonError::into_inner).insert(name, Arc::clone(&svg));
        Some(svg)
    }
}
