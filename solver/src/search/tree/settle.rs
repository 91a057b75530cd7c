//! Rows that a node breaks: added until none is broken, and sectors cut that are too coarse.

use super::Tree;
use super::fate::Fate;
use crate::program::{Engine, Status};
use crate::rules::{Cause, TOLERANCE};
use crate::search::node::{Asked, Node};
use crate::search::polish::broken_rows;
use crate::search::tolerance::FINEST_SECTOR;

impl<'p, E: Engine> Tree<'p, '_, E> {
    /// Adds the rows that always hold and are broken, until none is.
    pub(super) fn settle(&mut self, node: &mut Node<'p, E>) -> Fate {
        loop {
            let rows = broken_rows(self.problem, node);
            if rows.is_empty() {
                return Fate::Alive;
            }
            let causes = rows.causes.clone();
            if let Fate::Dead = self.add(node, rows, &causes) {
                return Fate::Dead;
            }
        }
    }

    pub(super) fn add(&mut self, node: &mut Node<'p, E>, rows: Asked, causes: &[Cause]) -> Fate {
        let bound = node.bound();
        self.programs += 1;
        let cutoff = self.cutoff();
        match node.add_to_beat(rows, cutoff) {
            Status::Optimal if node.bound() > cutoff => Fate::Alive,
            Status::Optimal | Status::Beaten => {
                self.prune(node.bound());
                Fate::Dead
            }
            Status::Infeasible => {
                causes.iter().for_each(|cause| self.blame(*cause));
                Fate::Dead
            }
            Status::Interrupted => {
                self.unexplored = self.unexplored.max(bound);
                Fate::Dead
            }
        }
    }

    /// Where tangents leave no place, or cost more than a proof allows, the chords are too coarse yet: the worst sector is
    /// cut where its corner lies in `polished`, or in the node itself.
    pub(super) fn cut_most_broken(&mut self, node: Box<Node<'p, E>>, polished: Option<Box<Node<'p, E>>>) {
        let excess = |place: &usize| node.arcs[*place].0.excess(node.engine.values());
        let places = (0..node.arcs.len())
            .filter(|place| excess(place) > TOLERANCE && node.arcs[*place].0.angle() > FINEST_SECTOR);
        match places.max_by(|a, b| excess(a).total_cmp(&excess(b)).then(b.cmp(a))) {
            Some(place) => {
                let at = polished.as_ref().unwrap_or(&node).engine.values().to_vec();
                self.cut(node, place, &at);
            }
            None => {
                self.unexplored = self.unexplored.max(node.bound());
                node.arcs.iter().for_each(|(_, cause)| self.blame(*cause));
                self.pool.take(node);
            }
        }
        self.pool.take(polished);
    }
}
