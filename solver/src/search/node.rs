//! One node of the search: what has been decided, and the program that follows from it.

use std::rc::Rc;

use smallvec::SmallVec;

use crate::program::{Engine, Row, Status};
use crate::rules::{Alternative, Arc, Cause};

/// What has been decided of one piece.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Decided {
    /// Nothing yet: it may be left out.
    Open,
    /// It stands, but not yet how.
    Somewhere,
    /// It stands so.
    Stands(usize),
    /// It is left out.
    Out,
}

/// Which requirement, so that it is chosen from once.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Chosen {
    /// Of the room.
    Room(usize),
    /// Of one state.
    Alone(usize, usize),
    /// Of two states, the lower first.
    Between(usize, usize, usize),
    /// Of a chain that bars a way.
    Barrier(usize),
}

/// What must hold, and the ways in which it can.
#[derive(Debug, Clone, Copy)]
pub(super) struct Question<'p> {
    pub(super) cause: Cause,
    pub(super) alternatives: &'p [Alternative],
}

/// One node.
pub(super) struct Node<'p, E> {
    pub(super) engine: E,
    pub(super) decided: Vec<Decided>,
    pub(super) chosen: Vec<Chosen>,
    /// What is yet to be chosen from, since the coarse of it was chosen.
    pub(super) finer: Vec<Question<'p>>,
    /// Round gaps that hold by their chords only.
    pub(super) arcs: Vec<(Arc, Cause)>,
    /// What the pieces that stand, or still may, count by standing.
    pub(super) presence: f64,
    pub(super) depth: usize,
    /// Rules of comfort that were eased.
    pub(super) eased: Vec<Cause>,
    /// What was taken at a cost besides, and the cost.
    pub(super) paid: Vec<(Cause, f64)>,
    pub(super) trail: Option<Rc<Trail>>,
}

impl<E: Clone> Clone for Node<'_, E> {
    fn clone(&self) -> Self {
        Self {
            engine: self.engine.clone(),
            decided: self.decided.clone(),
            chosen: self.chosen.clone(),
            finer: self.finer.clone(),
            arcs: self.arcs.clone(),
            eased: self.eased.clone(),
            paid: self.paid.clone(),
            trail: self.trail.clone(),
            ..*self
        }
    }

    fn clone_from(&mut self, source: &Self) {
        self.engine.clone_from(&source.engine);
        self.decided.clone_from(&source.decided);
        self.chosen.clone_from(&source.chosen);
        self.finer.clone_from(&source.finer);
        self.arcs.clone_from(&source.arcs);
        self.eased.clone_from(&source.eased);
        self.paid.clone_from(&source.paid);
        self.trail.clone_from(&source.trail);
        (self.presence, self.depth) = (source.presence, source.depth);
    }
}

/// Rows, each with who asks for it.
#[derive(Default)]
pub(super) struct Asked {
    rows: SmallVec<[Row; 1]>,
    /// One for each row.
    pub(super) causes: SmallVec<[Cause; 4]>,
}

impl Asked {
    pub(super) fn push(&mut self, row: Row, cause: Cause) {
        self.rows.push(row);
        self.causes.push(cause);
    }

    pub(super) fn is_empty(&self) -> bool {
        self.rows.is_empty()
    }

    pub(super) fn len(&self) -> usize {
        self.rows.len()
    }

    /// The first so many of them.
    pub(super) fn first(&self, count: usize) -> Self {
        let rows = self.rows.iter().zip(&self.causes).take(count);
        rows.map(|(row, cause)| (row.clone(), *cause)).collect()
    }
}

impl Extend<(Row, Cause)> for Asked {
    fn extend<T: IntoIterator<Item = (Row, Cause)>>(&mut self, asked: T) {
        asked.into_iter().for_each(|(row, cause)| self.push(row, cause));
    }
}

impl FromIterator<(Row, Cause)> for Asked {
    fn from_iter<T: IntoIterator<Item = (Row, Cause)>>(asked: T) -> Self {
        let mut found = Self::default();
        found.extend(asked);
        found
    }
}

/// Rows in force, the last first.
pub(super) struct Trail {
    asked: Asked,
    before: Option<Rc<Trail>>,
}

impl<E: Engine> Node<'_, E> {
    /// No layout under this node has more.
    pub(super) fn bound(&self) -> f64 {
        self.engine.objective() + self.presence
    }

    /// No layout under this node that takes `alternative` has more, as far as a first look can tell.
    pub(super) fn probe(&self, alternative: &Alternative) -> f64 {
        let promise = match &alternative.arc {
            Some(arc) => self.promise(alternative.rows.iter().chain(&arc.rows())),
            None => self.promise(&alternative.rows),
        };
        promise - alternative.cost
    }

    /// The same of these rows.
    pub(super) fn promise<'r>(&self, rows: impl IntoIterator<Item = &'r Row>) -> f64 {
        let probed = rows.into_iter().map(|row| self.engine.probe(row));
        self.presence + probed.fold(self.engine.objective(), f64::min)
    }

    /// Adds rows that are solved with what is added next.
    pub(super) fn hold(&mut self, asked: Asked) {
        if !asked.is_empty() {
            self.engine.hold(&asked.rows);
            self.trail = Some(Rc::new(Trail { asked, before: self.trail.take() }));
        }
    }

    /// Adds rows and solves again.
    pub(super) fn add(&mut self, asked: Asked) -> Status {
        self.add_to_beat(asked, f64::NEG_INFINITY)
    }

    /// The same where only a bound above `to_beat` is worth finding.
    pub(super) fn add_to_beat(&mut self, asked: Asked, to_beat: f64) -> Status {
        let status = self.engine.add_to_beat(&asked.rows, to_beat - self.presence);
        self.trail = Some(Rc::new(Trail { asked, before: self.trail.take() }));
        status
    }

    /// Every row in force, in the order they came.
    pub(super) fn rows(&self) -> Vec<(Row, Cause)> {
        let mut found = Vec::new();
        let mut trail = self.trail.as_ref();
        while let Some(entry) = trail {
            let Asked { rows, causes } = &entry.asked;
            found.extend(rows.iter().cloned().zip(causes.iter().copied()).rev());
            trail = entry.before.as_ref();
        }
        found.reverse();
        found
    }
}
