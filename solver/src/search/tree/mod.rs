//! The tree of one arrangement: best bound first, fewest open alternatives, nothing searched twice.

mod children;
mod fate;
mod limits;
mod narrow;
mod settle;

use elbowroom_model::PieceId;

use std::collections::{BTreeMap, BinaryHeap};

use self::fate::Fate;
pub(super) use self::limits::{Lead, Learned, Limits, Order};
use super::barriers::Barring;
use super::branching::{Promises, Settles, next, next_to_place, standing};
use super::easing::as_second_checked;
use super::node::{Decided, Node};
use super::node_pool::NodePool;
use super::open_node::{Candidate, OpenNode};
use super::polish::polish;
use super::problem::Problem;
use super::still::Still;
use super::tally::Tally;
use super::tolerance::{COARSE, ROUGHLY_SAME_PROMISE};
use crate::layout::Layout;
use crate::program::Engine;
use crate::routes::Floor;
use crate::rules::{Cause, TOLERANCE};

/// The search of one arrangement.
pub(super) struct Tree<'p, 'a, E> {
    problem: &'p Problem<'a>,
    floor: &'p Floor,
    learned: Learned<'p>,
    /// Those of the barriers that can stand here.
    barring: Vec<Barring<'p>>,
    order: Order<'p>,
    most_nodes: usize,
    queue: BinaryHeap<OpenNode<'p, E>>,
    /// The best child of the node just expanded: followed to the end before the queue is asked again, so that a first
    /// layout is found early.
    dive: Option<OpenNode<'p, E>>,
    made: usize,
    pool: NodePool<'p, E>,
    /// The best layout so far.
    pub(super) incumbent: Option<Box<Node<'p, E>>>,
    /// What a layout must beat to count.
    to_beat: f64,
    /// No layout that was not looked at has more than this.
    pub(super) unexplored: f64,
    /// Linear programs solved.
    pub(super) programs: usize,
    /// What else was done; dead ends are in `blame`.
    pub(super) tally: Tally,
    /// Which causes left no place, and how often.
    pub(super) blame: BTreeMap<Cause, usize>,
}

impl<'p, 'a, E: Engine> Tree<'p, 'a, E> {
    /// The root alone.
    pub(super) fn new(problem: &'p Problem<'a>, floor: &'p Floor, learned: Learned<'p>, limits: Limits<'p>) -> Self {
        let Limits { order, nodes: most_nodes, to_beat } = limits;
        let (queue, blame) = (BinaryHeap::new(), BTreeMap::new());
        let unexplored = f64::NEG_INFINITY;
        let mut tree = Self {
            problem,
            floor,
            learned,
            barring: learned.barriers.iter().filter_map(|barrier| problem.barring(barrier)).collect(),
            order,
            most_nodes,
            queue,
            dive: None,
            pool: NodePool::new(),
            made: 0,
            incumbent: None,
            to_beat,
            unexplored,
            programs: 1,
            tally: Tally::default(),
            blame,
        };
        tree.plant();
        tree
    }

    /// Searches to the end, or until the nodes are used up or nobody wants it any more. Gives the bound that holds for every layout.
    pub(super) fn search(&mut self) -> f64 {
        while let Some(next) = self.dive.take().or_else(|| self.queue.pop()) {
            let made = next.made();
            match next.candidate {
                aside if self.is_cut_off(next.bound) => {
                    self.prune(next.bound);
                    self.leave(aside);
                }
                Candidate::Child(child) => {
                    if let Some(node) = self.make(child) {
                        self.wait(OpenNode::node(node, made));
                    }
                }
                Candidate::Ready(_) if self.is_done() => {
                    let rest = self.queue.iter().map(|open| open.bound);
                    self.unexplored = rest.fold(self.unexplored.max(next.bound), f64::max);
                    break;
                }
                Candidate::Ready(node) => {
                    self.tally.nodes += 1;
                    self.expand(node);
                }
            }
        }
        let best = self.incumbent.as_ref().map_or(f64::NEG_INFINITY, |best| best.bound());
        self.unexplored.max(best)
    }

    fn is_done(&self) -> bool {
        self.tally.nodes == self.most_nodes
            || matches!(self.order, Order::Like(_)) && self.incumbent.is_some()
            || self.problem.stop.is_asked()
    }

    /// Nothing was left aside on the way.
    pub(super) fn is_complete(&self) -> bool {
        self.unexplored == f64::NEG_INFINITY
    }

    /// Puts a candidate among those that wait.
    fn wait(&mut self, open: OpenNode<'p, E>) {
        let step = match (self.order, &self.incumbent) {
            (Order::BestFirst, _) => self.problem.same_promise(),
            (Order::DeepestFirst | Order::Like(_), None) => f64::INFINITY,
            (Order::DeepestFirst | Order::Like(_), Some(_)) => ROUGHLY_SAME_PROMISE,
        };
        self.queue.push(open.in_steps_of(step));
    }

    fn plant(&mut self) {
        if let Some(cause) = self.problem.room().dead {
            self.blame(cause);
            return;
        }
        let decided = self.problem.ways.iter().map(|ways| match (&ways.states[..], ways.may_be_left_out) {
            ([], true) => Decided::Out,
            ([only], false) => Decided::Stands(*only),
            (_, true) => Decided::Open,
            (_, false) => Decided::Somewhere,
        });
        let decided: Vec<Decided> = decided.collect();
        // What has one place alone, by a seat that is left out, has none.
        let is_by_nothing =
            |one: &Decided| matches!(one, Decided::Stands(state) if self.problem.is_by_nothing(&decided, *state));
        if decided.iter().any(is_by_nothing) {
            return;
        }
        let presence = (0..decided.len()).filter(|piece| decided[*piece] != Decided::Out);
        let presence: f64 = presence.map(|piece| self.problem.presence(PieceId(piece))).sum();
        let paid: Vec<(Cause, f64)> = self.problem.asked.still.into_iter().flat_map(Still::paid).collect();
        let engine = E::start(&self.problem.objective(), &self.problem.bounds());
        let node = Node {
            engine,
            decided,
            chosen: Vec::new(),
            finer: Vec::new(),
            arcs: Vec::new(),
            presence: presence - paid.iter().map(|(_, cost)| cost).sum::<f64>(),
            depth: 0,
            eased: Vec::new(),
            paid,
            trail: None,
        };
        if let Some(cause) = self.dead_among(&standing(&node)) {
            self.blame(cause);
            return;
        }
        self.dive = Some(OpenNode::node(Box::new(node), self.made));
    }

    fn expand(&mut self, mut node: Box<Node<'p, E>>) {
        if let Fate::Dead = self.settle(&mut node) {
            self.pool.take(node);
            return;
        }
        if let Some(decision) = next(self.problem, &self.barring, &node, self.cutoff()) {
            self.decide(node, decision);
            return;
        }
        let values = node.engine.values();
        if !node.arcs.iter().any(|(arc, _)| arc.excess(values) > TOLERANCE) {
            self.finish(node, None);
            return;
        }
        let polished = polish(self.problem, &node, self.value_to_beat(), &mut self.pool);
        self.programs += polished.programs;
        match polished.node {
            Some(found) if found.bound() > self.value_to_beat() || !is_coarse(&node) => {
                self.take_polished(node, found);
            }
            found => self.cut_most_broken(node, found),
        }
    }

    /// A polished layout may break what the chords' optimum kept: then that is decided first.
    fn take_polished(&mut self, node: Box<Node<'p, E>>, polished: Box<Node<'p, E>>) {
        match next(self.problem, &self.barring, &polished, self.cutoff()) {
            Some(decision) => {
                self.pool.take(polished);
                self.decide(node, decision);
            }
            None => self.finish(node, Some(polished)),
        }
    }

    /// All but the routes holds among what stands in `polished`, which stands under `node`, or in the node itself.
    fn finish(&mut self, node: Box<Node<'p, E>>, polished: Option<Box<Node<'p, E>>>) {
        let found = polished.as_ref().unwrap_or(&node);
        if let Some(widening) = self.too_narrow(found) {
            let question = self.question(found, node.bound(), widening);
            self.pool.take(polished);
            let promises: Promises = question.alternatives.iter().map(|way| node.probe(way)).collect();
            self.choose(node, question, Settles::Nothing, &promises);
        } else if let Some(piece) = next_to_place(self.problem, &node) {
            self.pool.take(polished);
            self.place(node, piece);
        } else {
            self.keep(node, polished);
        }
    }

    /// Keeps the layout where it is the best so far, and goes on under its node where the chords still promise more.
    fn keep(&mut self, node: Box<Node<'p, E>>, polished: Option<Box<Node<'p, E>>>) {
        let found = polished.as_ref().unwrap_or(&node);
        if self.value_to_beat() < found.bound() {
            let is_first = self.incumbent.replace(self.pool.copy_of(found)).is_none();
            if is_first && self.order == Order::DeepestFirst {
                let waiting = std::mem::take(&mut self.queue);
                waiting.into_iter().for_each(|open| self.wait(open));
            }
        }
        if self.is_cut_off(node.bound()) {
            self.unexplored = self.unexplored.max(node.bound());
            self.pool.take(polished);
            self.pool.take(node);
        } else {
            self.cut_most_broken(node, polished);
        }
    }

    fn value_to_beat(&self) -> f64 {
        self.incumbent.as_ref().map_or(self.to_beat, |best| best.bound())
    }

    /// Leaves a node aside under which nothing can be better.
    fn prune(&mut self, bound: f64) {
        self.tally.pruned += 1;
        self.unexplored = self.unexplored.max(bound);
    }

    /// Nothing under this bound is worth looking at.
    fn is_cut_off(&self, bound: f64) -> bool {
        bound <= self.cutoff()
    }

    fn cutoff(&self) -> f64 {
        match &self.incumbent {
            Some(best) => best.bound() + self.problem.indifference(best.bound()),
            None => self.to_beat,
        }
    }

    fn blame(&mut self, cause: Cause) {
        *self.blame.entry(cause).or_insert(0) += 1;
    }
}

/// A round gap is off by so much that halving its sector tells more than a layout would.
fn is_coarse<E: Engine>(node: &Node<'_, E>) -> bool {
    node.arcs.iter().any(|(arc, _)| arc.excess(node.engine.values()) > COARSE)
}

/// How a node's pieces stand.
pub(super) fn layout_of<E: Engine>(problem: &Problem<'_>, node: &Node<'_, E>) -> Layout {
    let values = node.engine.values();
    let placed = standing(node).into_iter().map(|state| problem.states[state].posed.pose.placed(values)).collect();
    let left_out = (0..node.decided.len()).filter(|piece| node.decided[*piece] == Decided::Out).map(PieceId).collect();
    let variables = problem.context.variables;
    let turning_circle =
        variables.circle.map(|(x, y)| variables.origin + elbowroom_model::Point::new(values[x], values[y]));
    Layout { placed, left_out, turning_circle, eased: node.eased.iter().map(as_second_checked).collect() }
}
