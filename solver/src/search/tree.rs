//! The tree of one arrangement: best bound first, fewest open alternatives, nothing searched twice.

use std::collections::{BTreeMap, BinaryHeap};
use std::rc::Rc;

use super::branching::{Decision, next, standing};
use super::node::{Asked, Decided, Node, Queued};
use super::polish::{broken_rows, polish};
use super::problem::Problem;
use super::tally::Tally;
use crate::layout::Layout;
use crate::program::{Engine, Row, Status};
use crate::routes::Floor;
use crate::rules::route::{self, Mend};
use crate::rules::{Arc, Cause, Requirement, TOLERANCE};

/// A round gap is not halved below this angle, radians: its chord lies within a thousandth of a millimetre of the arc.
const FINEST_SECTOR: f64 = 0.1 * std::f64::consts::PI / 180.0;

/// A chord further from its arc than this is coarse, mm.
const COARSE: f64 = 5.0;

/// The search of one arrangement.
pub(super) struct Tree<'p, 'a, E> {
    problem: &'p Problem<'a>,
    floor: &'p Floor,
    most_nodes: usize,
    queue: BinaryHeap<Queued<E>>,
    /// The best child of the node just expanded: followed to the end before the queue is asked again, so that a first
    /// layout is found early.
    dive: Option<Node<E>>,
    made: usize,
    /// Nodes that are done with: their memory is used again.
    spare: Vec<Node<E>>,
    /// The best layout so far.
    pub(super) best: Option<Node<E>>,
    /// What a layout must beat to count.
    to_beat: f64,
    /// No layout that was not looked at has more than this.
    pub(super) unseen: f64,
    /// Linear programs solved.
    pub(super) programs: usize,
    /// What else was done; dead ends are in `blame`.
    pub(super) tally: Tally,
    /// Which causes left no place, and how often.
    pub(super) blame: BTreeMap<Cause, usize>,
}

/// What became of a node.
enum Fate {
    Alive,
    Dead,
}

impl<'p, 'a, E: Engine> Tree<'p, 'a, E> {
    /// The root alone; layouts count that are better than `to_beat`.
    pub(super) fn new(problem: &'p Problem<'a>, floor: &'p Floor, most_nodes: usize, to_beat: f64) -> Self {
        let (queue, blame) = (BinaryHeap::new(), BTreeMap::new());
        let unseen = f64::NEG_INFINITY;
        let mut tree = Self {
            problem,
            floor,
            most_nodes,
            queue,
            dive: None,
            spare: Vec::new(),
            made: 0,
            best: None,
            to_beat,
            unseen,
            programs: 1,
            tally: Tally::default(),
            blame,
        };
        tree.plant();
        tree
    }

    /// Searches to the end, or until the nodes are used up. Gives the bound that holds for every layout.
    pub(super) fn search(&mut self) -> f64 {
        while let Some(mut node) = self.dive.take().or_else(|| self.queue.pop().map(|queued| queued.node)) {
            if self.is_hopeless(node.bound()) {
                self.give_up(node.bound());
                continue;
            }
            if self.tally.nodes == self.most_nodes {
                let rest = self.queue.iter().map(|queued| queued.node.bound());
                self.unseen = rest.fold(self.unseen.max(node.bound()), f64::max);
                break;
            }
            self.tally.nodes += 1;
            self.expand(&mut node);
            self.spare.push(node);
        }
        let best = self.best.as_ref().map_or(f64::NEG_INFINITY, Node::bound);
        self.unseen.max(best)
    }

    /// Nothing was left aside on the way.
    pub(super) fn is_complete(&self) -> bool {
        self.unseen == f64::NEG_INFINITY
    }

    fn plant(&mut self) {
        if let Some(cause) = self.problem.room().dead {
            self.blame(cause);
            return;
        }
        let decided = self.problem.ways.iter().map(|ways| match (&ways.states[..], ways.may_be_left_out) {
            ([], true) => Decided::Out,
            ([only], false) => Decided::Stands(*only),
            _ => Decided::Open,
        });
        let decided: Vec<Decided> = decided.collect();
        let presence = (0..decided.len()).filter(|piece| decided[*piece] != Decided::Out);
        let presence = presence.map(|piece| self.problem.presence(piece)).sum();
        let engine = E::start(&self.problem.objective(), &self.problem.bounds());
        let node = Node {
            engine,
            decided,
            chosen: Vec::new(),
            finer: Vec::new(),
            arcs: Vec::new(),
            presence,
            depth: 0,
            trail: None,
        };
        if let Some(cause) = self.dead_among(&standing(&node)) {
            self.blame(cause);
            return;
        }
        self.push(node);
    }

    fn expand(&mut self, node: &mut Node<E>) {
        if let Fate::Dead = self.settle(node) {
            return;
        }
        let values = node.engine.values().to_vec();
        if let Some(decision) = next(self.problem, node, &values) {
            self.decide(node, decision);
            return;
        }
        let rounded = node.arcs.iter().any(|(arc, _)| arc.excess(&values) > TOLERANCE);
        if !rounded {
            self.finish(node, node);
            return;
        }
        let polished = polish(self.problem, node, self.value_to_beat());
        self.programs += polished.programs;
        match polished.node {
            Some(found) if found.bound() > self.value_to_beat() || !self.is_coarse(node) => {
                self.take_polished(node, &found);
            }
            Some(found) => self.cut_most_broken(node, &found),
            None => self.cut_most_broken(node, node),
        }
    }

    /// Adds the rows that always hold and are broken, until none is.
    fn settle(&mut self, node: &mut Node<E>) -> Fate {
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

    fn add(&mut self, node: &mut Node<E>, rows: Asked, causes: &[Cause]) -> Fate {
        let bound = node.bound();
        self.programs += 1;
        let hopeless = self.hopeless_up_to();
        match node.add_to_beat(rows, hopeless) {
            Status::Optimal if node.bound() > hopeless => Fate::Alive,
            Status::Optimal | Status::Beaten => {
                self.give_up(node.bound());
                Fate::Dead
            }
            Status::Infeasible => {
                causes.iter().for_each(|cause| self.blame(*cause));
                Fate::Dead
            }
            Status::Interrupted => {
                self.unseen = self.unseen.max(bound);
                Fate::Dead
            }
        }
    }

    fn decide(&mut self, node: &Node<E>, decision: Decision<'_>) {
        match decision {
            Decision::Choose(chosen, requirement) => {
                self.choose(node, requirement, |rest| rest.chosen.push(chosen));
            }
            Decision::Refine(place, requirement) => {
                self.choose(node, &requirement, |rest| {
                    rest.finer.swap_remove(place);
                });
            }
            Decision::Stand(piece) => self.stand(node, piece),
        }
    }

    /// One child for each alternative; a later one also carries the closed negation of its elders that are single rows.
    /// `settled` notes in what they start from that this requirement need not be chosen from again.
    fn choose(&mut self, parent: &Node<E>, requirement: &Requirement, settled: impl FnOnce(&mut Node<E>)) {
        let cause = requirement.cause;
        // What every later child starts from: the parent, and what no elder covers.
        let mut rest = self.child_of(parent);
        settled(&mut rest);
        let mut alive = Vec::new();
        for alternative in &requirement.alternatives {
            let mut child = self.copy_of(&rest);
            let arc = alternative.arc.iter().flat_map(Arc::rows);
            let rows = alternative.rows.iter().cloned().chain(arc).map(|row| (row, cause)).collect();
            match self.add(&mut child, rows, &[cause]) {
                Fate::Alive => {
                    child.arcs.extend(alternative.arc.clone().map(|arc| (arc, cause)));
                    if !alternative.finer.is_empty() {
                        child.finer.push(Rc::new(Requirement { cause, alternatives: alternative.finer.clone() }));
                    }
                    alive.push(child);
                }
                Fate::Dead => self.spare.push(child),
            }
            rest.hold(alternative.sufficient().map(|row| (negated(row), cause)).collect());
        }
        self.spare.push(rest);
        self.push_all(alive);
    }

    /// A copy of `parent`, one deeper.
    fn child_of(&mut self, parent: &Node<E>) -> Node<E> {
        let mut child = self.copy_of(parent);
        child.depth += 1;
        child
    }

    /// A copy, in the memory of a node that is done with where there is one.
    fn copy_of(&mut self, node: &Node<E>) -> Node<E> {
        match self.spare.pop() {
            Some(mut spare) => {
                spare.clone_from(node);
                spare
            }
            None => node.clone(),
        }
    }

    /// The best first, so that what is made first does not hang on the order of the alternatives.
    fn push_all(&mut self, mut children: Vec<Node<E>>) {
        children.sort_by(|a, b| b.bound().total_cmp(&a.bound()));
        let mut children = children.into_iter();
        self.dive = children.next();
        children.for_each(|child| self.push(child));
    }

    fn stand(&mut self, node: &Node<E>, piece: usize) {
        let ways = &self.problem.ways[piece];
        let mut alive = Vec::new();
        for &state in &ways.states {
            let mut child = self.child_of(node);
            child.decided[piece] = Decided::Stands(state);
            match self.dead_among(&standing(&child)) {
                Some(cause) => {
                    self.blame(cause);
                    self.spare.push(child);
                }
                None => alive.push(child),
            }
        }
        if ways.may_be_left_out {
            alive.extend(self.left_out(node, piece));
        }
        self.push_all(alive);
    }

    fn left_out(&mut self, node: &Node<E>, piece: usize) -> Option<Node<E>> {
        let mut child = self.child_of(node);
        child.decided[piece] = Decided::Out;
        child.presence -= self.problem.presence(piece);
        let cause = Cause { rule: crate::rules::RuleName::Size, piece, with: crate::rules::With::Itself };
        let variables = &self.problem.ground.variables.pieces[piece];
        let sizes = [Some(variables.width), variables.return_length, Some(variables.depth)];
        let none = |variable| (Row::at_most([(variable, 1.0)], 0.0), cause);
        let rows = sizes.into_iter().flatten().flat_map(|size| [none(size.up), none(size.beyond)]).collect();
        matches!(self.add(&mut child, rows, &[]), Fate::Alive).then_some(child)
    }

    fn cut(&mut self, node: &Node<E>, place: usize, at: &[f64]) {
        let (arc, cause) = node.arcs[place].clone();
        let mut alive = Vec::new();
        for half in arc.cut(at) {
            let mut child = self.child_of(node);
            let rows = half.rows().into_iter().map(|row| (row, cause)).collect();
            child.arcs[place] = (half, cause);
            if let Fate::Alive = self.add(&mut child, rows, &[cause]) {
                alive.push(child);
            }
        }
        self.push_all(alive);
    }

    /// Where tangents leave no place, or cost more than a proof allows, the chords are too coarse yet: the worst sector is
    /// cut where its corner lies in `found`.
    fn cut_most_broken(&mut self, node: &Node<E>, found: &Node<E>) {
        let excess = |place: &usize| node.arcs[*place].0.excess(node.engine.values());
        let places = (0..node.arcs.len())
            .filter(|place| excess(place) > TOLERANCE && node.arcs[*place].0.angle() > FINEST_SECTOR);
        match places.max_by(|a, b| excess(a).total_cmp(&excess(b)).then(b.cmp(a))) {
            Some(place) => self.cut(node, place, found.engine.values()),
            None => {
                self.unseen = self.unseen.max(node.bound());
                node.arcs.iter().for_each(|(_, cause)| self.blame(*cause));
            }
        }
    }

    /// A polished layout may break what the chords' optimum kept: then that is decided first.
    fn take_polished(&mut self, node: &Node<E>, polished: &Node<E>) {
        let values = polished.engine.values().to_vec();
        match next(self.problem, node, &values) {
            Some(decision) => self.decide(node, decision),
            None => self.finish(node, polished),
        }
    }

    /// All but the routes holds in `found`, which stands under `node`.
    fn finish(&mut self, node: &Node<E>, found: &Node<E>) {
        if self.problem.plain {
            self.keep(node, found);
            return;
        }
        self.tally.layouts += 1;
        let poses: Vec<_> = standing(found).into_iter().map(|state| &self.problem.states[state].pose).collect();
        let layout = layout_of(self.problem, found);
        let ground = &self.problem.ground;
        let too_narrow = route::first_too_narrow(ground, self.floor, &poses, &layout);
        match too_narrow.or_else(|| route::circle_out_of_reach(ground, self.floor, &poses, &layout)) {
            None => self.keep(node, found),
            Some(Mend { mut requirement, is_exhaustive }) => {
                self.tally.too_narrow += 1;
                self.problem.strike_impossible(&mut requirement, &standing(found));
                let offered = requirement.alternatives.len();
                // What holds already has not mended the route, and would be chosen for ever.
                requirement.alternatives.retain(|alternative| !alternative.holds(found.engine.values()));
                if !is_exhaustive || requirement.alternatives.len() < offered {
                    self.unseen = self.unseen.max(node.bound());
                }
                if requirement.alternatives.is_empty() {
                    self.blame(requirement.cause);
                }
                self.choose(node, &requirement, |_| {});
            }
        }
    }

    /// Keeps the layout where it is the best so far, and goes on under its node where the chords still promise more.
    fn keep(&mut self, node: &Node<E>, found: &Node<E>) {
        let value = found.bound();
        if self.value_to_beat() < value {
            self.best = Some(found.clone());
        }
        if self.is_hopeless(node.bound()) {
            self.unseen = self.unseen.max(node.bound());
        } else {
            self.cut_most_broken(node, found);
        }
    }

    /// A round gap is off by so much that halving its sector tells more than a layout would.
    fn is_coarse(&self, node: &Node<E>) -> bool {
        node.arcs.iter().any(|(arc, _)| arc.excess(node.engine.values()) > COARSE)
    }

    fn value_to_beat(&self) -> f64 {
        self.best.as_ref().map_or(self.to_beat, Node::bound)
    }

    /// Leaves a node aside under which nothing can be better.
    fn give_up(&mut self, bound: f64) {
        self.tally.given_up += 1;
        self.unseen = self.unseen.max(bound);
    }

    /// Nothing under this bound is worth looking at.
    fn is_hopeless(&self, bound: f64) -> bool {
        bound <= self.hopeless_up_to()
    }

    fn hopeless_up_to(&self) -> f64 {
        match &self.best {
            Some(best) => best.bound() + self.problem.indifference(best.bound()),
            None => self.to_beat,
        }
    }

    /// What forbids these stands together, whatever the sizes.
    fn dead_among(&self, standing: &[usize]) -> Option<Cause> {
        let alone = standing.iter().find_map(|state| self.problem.alone(*state).dead);
        let pairs = || {
            let pair = |(order, state): (usize, &usize)| {
                standing[..order].iter().find_map(|other| self.problem.between(*other, *state).dead)
            };
            standing.iter().enumerate().find_map(pair)
        };
        alone.or_else(pairs)
    }

    fn push(&mut self, node: Node<E>) {
        self.made += 1;
        self.queue.push(Queued::new(node, self.made));
    }

    fn blame(&mut self, cause: Cause) {
        *self.blame.entry(cause).or_insert(0) += 1;
    }
}

/// `row` turned round: at least what it allows at most.
fn negated(row: &Row) -> Row {
    Row::at_least(row.terms.iter().copied(), row.most)
}

/// How a node's pieces stand.
pub(super) fn layout_of<E: Engine>(problem: &Problem<'_>, node: &Node<E>) -> Layout {
    let values = node.engine.values();
    let placed = standing(node).into_iter().map(|state| problem.states[state].pose.placed(values)).collect();
    let left_out = (0..node.decided.len()).filter(|piece| node.decided[*piece] == Decided::Out).collect();
    let variables = problem.ground.variables;
    let turning_circle =
        variables.circle.map(|(x, y)| variables.origin + elbowroom_model::Point::new(values[x], values[y]));
    Layout { placed, left_out, turning_circle }
}
