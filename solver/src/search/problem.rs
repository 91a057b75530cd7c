//! One arrangement as the search sees it: each piece under each of its stands, and what the rules ask of one and of two.

use std::cell::OnceCell;
use std::sync::Arc;

use elbowroom_model::{Clearance, Dimension, PieceId, Point, Rule};

use super::aim::Aim;
use super::branching::standing;
use super::cell::{Cell, Ranges};
use super::cells::{Beside, Cells, Comfort, Key, Posed, Scope, StandKey};
use super::easing::Easing;
use super::found::Effort;
use super::node::Node;
use super::room_context::RoomContext;
use super::tolerance::{
    HELD_WITHIN, INDIFFERENT_ORDER, INDIFFERENT_PLAN, SAME_ORDER_PROMISE, SAME_PLAIN_PROMISE, SAME_PLAIN_VALUE,
    SAME_PLAN_PROMISE, SAME_PROMISE, SAME_VALUE,
};
use crate::arrangement::{Arrangement, Role};
use crate::composition::{self, Aims, Heart, TERMS, TermContext, TermCost};
use crate::layout::Layout;
use crate::program::Engine;
use crate::rules::comfort::{self, COMFORT};
use crate::rules::{CostSlot, LayoutRule, Pose, RULES, Requirement, RuleContext, SizeVariables, TIES, Variables};

/// One arrangement, ready to be searched.
pub(super) struct Problem<'a> {
    /// The context of its rules.
    pub(super) context: RuleContext<'a>,
    /// What is made as large as it can be.
    pub(super) aim: Aim<'a>,
    /// Every piece under every one of its stands.
    pub(super) states: Vec<State>,
    /// For each piece: its states, and whether it may be left out.
    pub(super) ways: Vec<Ways>,
    pub(super) arrangement: &'a Arrangement,
    room: Cell,
    /// What was asked so far in any arrangement of the room.
    known: &'a Cells,
    /// What is asked of each state with each later one, looked up or worked out when first asked.
    pairs: Vec<OnceCell<Vec<OnceCell<Arc<Cell>>>>>,
    asked: Asked<'a>,
    /// What a plan aims at; `None` where the largest are sought.
    aims: Option<Aims>,
    /// What the terms of a plan ask of each state, and of each with each later one.
    terms: Vec<OnceCell<Cell>>,
    terms_between: Vec<OnceCell<Vec<OnceCell<Cell>>>>,
    /// Round gaps are asked for as the polygons around them, and ways through are left aside.
    pub(super) plain: bool,
}

/// What a problem is asked for.
#[derive(Debug, Clone, Copy)]
pub(super) struct Asked<'a> {
    aim: Aim<'a>,
    /// A rule that is left aside.
    without: Option<Rule>,
    /// What a general solver can be asked for.
    plain: bool,
    /// What is done about rules of comfort.
    easing: Easing<'a>,
}

impl<'a> Asked<'a> {
    /// For a search.
    pub(super) const fn of(effort: &Effort<'a>) -> Self {
        Self { aim: effort.aim, without: effort.without, plain: false, easing: effort.easing }
    }

    /// For a general solver.
    pub(super) const fn plain(aim: Aim<'a>) -> Self {
        Self { aim, without: None, plain: true, easing: Easing::Kept }
    }

    const fn is_plan(&self) -> bool {
        matches!(self.aim, Aim::Plan | Aim::PlanOf(_))
    }
}

/// A piece under one of its stands.
pub(super) struct State {
    pub(super) posed: Arc<Posed>,
    pub(super) key: StandKey,
    /// It has other stands too, so that bounds do not hold it to its place.
    is_one_of_several: bool,
    alone: OnceCell<Arc<Cell>>,
}

/// The ways one piece may stand.
#[derive(Debug, Clone)]
pub(super) struct Ways {
    pub(super) states: Vec<usize>,
    pub(super) may_be_left_out: bool,
    /// Pieces before it in the brief that could change places with it, and the room would be the same.
    pub(super) earlier_twins: Vec<PieceId>,
}

impl<'a> Problem<'a> {
    /// The problem of `arrangement`.
    pub(super) fn of(room: &'a RoomContext<'a>, arrangement: &'a Arrangement, asked: Asked<'a>) -> Self {
        let RoomContext { brief, site, walls, variables, cells } = room;
        let screen = arrangement.screen_role();
        let context = RuleContext { brief, site, walls, main_seat: arrangement.main_seat, screen, variables };
        let Asked { aim, plain, .. } = asked;
        let aims = asked.is_plan().then(|| Aims::of(brief, site, arrangement));
        let mut problem = Self {
            context,
            aim,
            states: Vec::new(),
            ways: Vec::new(),
            arrangement,
            room: Cell::default(),
            known: cells,
            pairs: Vec::new(),
            asked,
            aims,
            terms: Vec::new(),
            terms_between: Vec::new(),
            plain,
        };
        for id in brief.piece_ids() {
            let states = problem.states_of(id);
            let may_be_left_out = problem.may_be_left_out(id);
            let earlier_twins = problem.earlier_twins(id, &states);
            problem.ways.push(Ways { states, may_be_left_out, earlier_twins });
        }
        problem.room = problem.cell(|rule| rule.room(&context), &[]);
        let count = problem.states.len();
        problem.pairs = (0..count).map(|_| OnceCell::new()).collect();
        problem.terms = (0..count).map(|_| OnceCell::new()).collect();
        problem.terms_between = (0..count).map(|_| OnceCell::new()).collect();
        problem
    }

    /// What the room itself asks.
    pub(super) const fn room(&self) -> &Cell {
        &self.room
    }

    /// What is asked of one piece under one stand; worked out when first asked.
    pub(super) fn alone(&self, state: usize) -> &Cell {
        let State { posed, key, is_one_of_several, alone } = &self.states[state];
        let Posed { pose, place } = posed.as_ref();
        alone.get_or_init(|| {
            let with = if *is_one_of_several { Beside::OtherStands } else { Beside::Nothing };
            self.known(*key, with, || {
                let mut cell = self.cell(|rule| rule.alone(&self.context, pose), place);
                if *is_one_of_several {
                    cell.keep_in(place, pose.id);
                }
                cell
            })
        })
    }

    /// What is asked of two pieces under their stands; worked out when first asked.
    pub(super) fn between(&self, first: usize, second: usize) -> &Cell {
        let (first, second) = if first < second { (first, second) } else { (second, first) };
        let row = self.pairs[first].get_or_init(|| (0..self.states.len()).map(|_| OnceCell::new()).collect());
        row[second].get_or_init(|| {
            let (a, b) = (&self.states[first], &self.states[second]);
            self.known(a.key, Beside::Piece(b.key), || {
                let places = [a.posed.place, b.posed.place].concat();
                self.cell(|rule| rule.between(&self.context, &a.posed.pose, &b.posed.pose), &places)
            })
        })
    }

    /// What is asked of one state about the heart of the group: by the terms of a plan, where one is sought, and for a clear
    /// line to a screen beside the main seat.
    pub(super) fn terms_alone(&self, state: usize) -> Option<&Cell> {
        let is_asked = self.aims.is_some() || self.context.screen == Some(Role::ScreenBeside);
        is_asked.then(|| {
            self.terms[state].get_or_init(|| {
                let Posed { pose, place } = self.states[state].posed.as_ref();
                let mut asked = self.sight_beside(pose);
                if self.aims.is_some() {
                    let context = self.term_context();
                    let terms = TERMS.iter().flat_map(|term| term.alone(&context, pose));
                    asked.extend(terms.map(|asked| asked.requirement()));
                }
                Cell::of(asked.into_iter(), &Ranges { bounds: &self.context.variables.bounds, places: place })
            })
        })
    }

    /// What a piece leaves free before a screen beside the main seat.
    fn sight_beside(&self, pose: &Pose) -> Vec<Requirement> {
        let heart = self.term_context().heart;
        let (Some(main), Some(screen)) = (heart.main, heart.screen) else { return Vec::new() };
        if self.asked.easing == Easing::Ignored || self.asked.without == Some(Clearance::ScreenSight.into()) {
            return Vec::new();
        }
        let asked = comfort::sight_beside(&self.context, main, screen, pose);
        asked.into_iter().map(|requirement| self.eased(requirement)).collect()
    }

    /// What the terms of a plan ask of two states; `None` where no plan is sought.
    pub(super) fn terms_between(&self, first: usize, second: usize) -> Option<&Cell> {
        self.aims.as_ref()?;
        let (first, second) = if first < second { (first, second) } else { (second, first) };
        let row = self.terms_between[first].get_or_init(|| (0..self.states.len()).map(|_| OnceCell::new()).collect());
        Some(row[second].get_or_init(|| {
            let (a, b) = (&self.states[first].posed, &self.states[second].posed);
            let places = [a.place, b.place].concat();
            let context = self.term_context();
            let asked = TERMS.iter().flat_map(|term| term.between(&context, &a.pose, &b.pose));
            let asked = asked.map(|asked| asked.requirement());
            Cell::of(asked, &Ranges { bounds: &self.context.variables.bounds, places: &places })
        }))
    }

    /// What the terms of a plan look at.
    pub(super) fn term_context(&self) -> TermContext<'_> {
        // A piece that need not stand is no heart: terms would stand to where it might be.
        let only = self.ways.iter().filter_map(|ways| if let [only] = ways.states[..] { Some(only) } else { None });
        let poses = only.map(|state| &self.states[state].posed.pose);
        let stands = |pose: &&Pose| self.arrangement.must_stand(self.context.brief, pose.id);
        TermContext { room: self.context, heart: Heart::of(poses.filter(stands)) }
    }

    const fn key(&self, first: StandKey, with: Beside, comfort: Comfort) -> Key {
        let Asked { without, plain, .. } = self.asked;
        Key {
            first,
            with,
            scope: Scope { without, plain, ties: self.settles_ties(), screen: self.context.screen, comfort },
        }
    }

    /// Takes the alternatives out that these stands cannot give, whatever the sizes.
    pub(super) fn propagate(&self, requirement: &mut Requirement, standing: &[usize]) {
        let places: Vec<_> = standing.iter().flat_map(|state| self.states[*state].posed.place).collect();
        Ranges { bounds: &self.context.variables.bounds, places: &places }.propagate(requirement);
    }

    /// What each term costs a plan; empty where no plan is sought.
    pub(super) fn composition<E: Engine>(&self, node: &Node<'_, E>) -> Vec<TermCost> {
        if self.aims.is_none() {
            return Vec::new();
        }
        let poses: Vec<&Pose> = standing(node).into_iter().map(|state| &self.states[state].posed.pose).collect();
        composition::told(&self.term_context(), &poses, Engine::values(&node.engine))
    }

    /// Bounds of the variables at the root: places within the room where a piece has one stand only.
    pub(super) fn bounds(&self) -> Vec<(f64, f64)> {
        let mut bounds = self.context.variables.bounds.clone();
        match &self.aims {
            Some(aims) => aim_sizes(self.context.variables, aims, &mut bounds),
            None => free_of_terms(self.context.variables, self.asked.easing, &mut bounds),
        }
        match self.aim {
            Aim::Tidy(layout) => hold_sizes(self.context.variables, layout, &mut bounds),
            Aim::Within(plan) => hold_sizes(self.context.variables, &plan.layout, &mut bounds),
            _ => {}
        }
        for ways in &self.ways {
            if let ([only], false) = (&ways.states[..], ways.may_be_left_out) {
                for (variable, range) in self.states[*only].posed.place {
                    bounds[variable] = range;
                }
            }
        }
        for size in self.sizes_of_absent() {
            bounds[size.up] = (0.0, 0.0);
            bounds[size.beyond] = (0.0, 0.0);
        }
        bounds
    }

    /// Sizes of the pieces that cannot stand: they count for nothing.
    fn sizes_of_absent(&self) -> impl Iterator<Item = SizeVariables> + '_ {
        let pieces = self.context.variables.pieces.iter().zip(&self.ways);
        let absent = pieces.filter(|(_, ways)| ways.states.is_empty() && ways.may_be_left_out);
        absent.flat_map(|(piece, _)| piece.sizes())
    }

    /// What each variable counts.
    pub(super) fn objective(&self) -> Vec<f64> {
        let variables = self.context.variables;
        let nothing = vec![0.0; variables.objective.len()];
        match self.aim {
            Aim::Together | Aim::These(_) | Aim::Within(_) => variables.objective.clone(),
            Aim::Plan | Aim::PlanOf(_) => self.plan_objective(nothing),
            Aim::Any => nothing,
            Aim::Tidy(_) => variables.objective.iter().map(|counts| counts.min(0.0)).collect(),
            Aim::Alone(piece, dimension, _) => {
                let mut objective = nothing;
                let size = variables.piece(piece).and_then(|piece| piece.dimension(dimension));
                if let Some(size) = size {
                    objective[size.up] = 1.0;
                    objective[size.beyond] = 1.0;
                }
                objective
            }
        }
    }

    /// What `piece` counts by standing at all.
    pub(super) fn presence(&self, piece: PieceId) -> f64 {
        match self.aim {
            Aim::Together | Aim::These(_) | Aim::Within(_) => {
                self.context.variables.piece(piece).map_or(0.0, |piece| piece.presence)
            }
            Aim::Plan | Aim::PlanOf(_) => self.plan_presence(piece),
            Aim::Alone(..) | Aim::Any | Aim::Tidy(_) => 0.0,
        }
    }

    /// What a millimetre of each size, and of each term, counts in a plan.
    fn plan_objective(&self, mut objective: Vec<f64>) -> Vec<f64> {
        let Some(aims) = &self.aims else { return objective };
        for (id, piece) in self.context.variables.pieces.iter().enumerate() {
            for &dimension in Dimension::ALL {
                if let (Some(size), Some(aim)) = (piece.dimension(dimension), aims.get(PieceId(id), dimension)) {
                    let (first, second) = aim.slopes();
                    objective[size.up] += first;
                    objective[size.beyond] += second;
                }
            }
            piece.terms.values().for_each(|term| objective[*term] = -1.0);
        }
        objective
    }

    /// What a piece is worth in a plan less what its sizes count from the least on: at its aims one that need not stand
    /// counts its worth, and one that must stand nothing.
    fn plan_presence(&self, id: PieceId) -> f64 {
        let (Some(piece), Some(aims)) = (self.context.brief.piece(id), &self.aims) else { return 0.0 };
        let must_stand = self.arrangement.must_stand(self.context.brief, id);
        let worth = if must_stand { 0.0 } else { composition::worth(piece, &self.context.brief.wishes) };
        let sizes = Dimension::ALL.iter().filter_map(|dimension| aims.get(id, *dimension));
        worth - sizes.map(|aim| aim.whole()).sum::<f64>()
    }

    /// Whether ties are settled too.
    const fn settles_ties(&self) -> bool {
        matches!(self.aim, Aim::Together | Aim::These(_) | Aim::Tidy(_) | Aim::Within(_))
    }

    /// Promises nearer to each other than this are the same: of such nodes the deepest is looked at first.
    pub(super) const fn same_promise(&self) -> f64 {
        match self.aim {
            _ if self.plain => SAME_PLAIN_PROMISE,
            Aim::Tidy(_) => SAME_ORDER_PROMISE,
            Aim::Plan | Aim::PlanOf(_) => SAME_PLAN_PROMISE,
            Aim::Together | Aim::These(_) | Aim::Within(_) | Aim::Alone(..) | Aim::Any => SAME_PROMISE,
        }
    }

    /// How much more a node must promise than the best layout to be worth a look: a fifth of what a proof allows, or a
    /// centimetre of order.
    pub(super) fn indifference(&self, best: f64) -> f64 {
        match self.aim {
            _ if self.plain => SAME_PLAIN_VALUE * best.abs(),
            Aim::Tidy(_) => INDIFFERENT_ORDER,
            Aim::Plan | Aim::PlanOf(_) => INDIFFERENT_PLAN,
            Aim::Together | Aim::These(_) | Aim::Within(_) | Aim::Alone(..) | Aim::Any => SAME_VALUE * best.abs(),
        }
    }

    fn may_be_left_out(&self, piece: PieceId) -> bool {
        match self.aim {
            Aim::Alone(_, _, layout) | Aim::Tidy(layout) => layout.of(piece).is_none(),
            Aim::Within(plan) => plan.layout.of(piece).is_none(),
            Aim::These(pieces) | Aim::PlanOf(pieces) => !pieces.contains(&piece),
            Aim::Together | Aim::Plan | Aim::Any => !self.arrangement.must_stand(self.context.brief, piece),
        }
    }

    fn states_of(&mut self, id: PieceId) -> Vec<usize> {
        let context = self.context;
        let is_left_out = match self.aim {
            Aim::Alone(_, _, layout) | Aim::Tidy(layout) => layout.of(id).is_none(),
            Aim::Within(plan) => plan.layout.of(id).is_none(),
            Aim::These(pieces) | Aim::PlanOf(pieces) => !pieces.contains(&id),
            Aim::Together | Aim::Plan | Aim::Any => false,
        };
        if is_left_out {
            return Vec::new();
        }
        let standing = self.arrangement.standings.iter().find(|standing| standing.piece == id);
        let (Some(standing), Some(piece)) = (standing, context.brief.piece(id)) else { return Vec::new() };
        let Some(variables) = context.variables.piece(id) else { return Vec::new() };
        let first = self.states.len();
        for stand in &standing.stands {
            let key = StandKey::of(standing, stand);
            let posed = self.known.posed(key, || {
                let pose = Pose::of(piece.clone(), *variables, context.variables.origin, standing, *stand);
                let place = place_of(&context, &pose);
                Posed { pose, place }
            });
            let is_one_of_several = standing.stands.len() > 1;
            self.states.push(State { posed, key, is_one_of_several, alone: OnceCell::new() });
        }
        (first..self.states.len()).collect()
    }

    /// A requirement with what may be done about it where it is one of comfort.
    fn eased(&self, requirement: Requirement) -> Requirement {
        match self.asked.easing {
            Easing::MayBeEased => comfort::may_be_eased(requirement, self.context.variables),
            Easing::AsIn(plan) if plan.layout.eased.contains(&requirement.cause) => {
                comfort::eased(requirement, self.context.variables)
            }
            Easing::Kept | Easing::Ignored | Easing::AsIn(_) => requirement,
        }
    }

    /// A cell that is looked up, or worked out: what hangs on one plan is not kept for others.
    fn known(&self, first: StandKey, with: Beside, work_out: impl FnOnce() -> Cell) -> Arc<Cell> {
        let comfort = match self.asked.easing {
            Easing::Kept => Comfort::Kept,
            Easing::MayBeEased => Comfort::MayBeEased,
            Easing::Ignored => Comfort::Ignored,
            Easing::AsIn(_) => return Arc::new(work_out()),
        };
        self.known.cell(self.key(first, with, comfort), work_out)
    }

    fn cell(&self, ask: impl Fn(&dyn LayoutRule) -> Vec<Requirement>, places: &[(usize, (f64, f64))]) -> Cell {
        let ranges = Ranges { bounds: &self.context.variables.bounds, places };
        let ties: &[&dyn LayoutRule] = if self.settles_ties() { TIES } else { &[] };
        let comfort = if self.asked.easing == Easing::Ignored { &[] } else { COMFORT };
        let asked = RULES.iter().chain(comfort).chain(ties).flat_map(|rule| ask(*rule));
        let asked = asked.filter(|requirement| Some(requirement.cause.rule) != self.asked.without);
        let asked = asked.map(|requirement| self.eased(requirement));
        Cell::of(asked.map(|requirement| if self.plain { requirement.with_polygons() } else { requirement }), &ranges)
    }
}

/// No size of a plan is over its aim.
fn aim_sizes(variables: &Variables, aims: &Aims, bounds: &mut [(f64, f64)]) {
    for (id, piece) in variables.pieces.iter().enumerate() {
        for &dimension in Dimension::ALL {
            if let (Some(size), Some(aim)) = (piece.dimension(dimension), aims.get(PieceId(id), dimension)) {
                let (up, beyond) = aim.steps();
                bounds[size.up] = (0.0, up);
                bounds[size.beyond] = (0.0, beyond);
            }
        }
    }
}

/// Where no plan is sought its terms cost nothing.
fn free_of_terms(variables: &Variables, easing: Easing<'_>, bounds: &mut [(f64, f64)]) {
    for piece in &variables.pieces {
        for (slot, variable) in piece.terms {
            let most = match easing {
                Easing::AsIn(plan) if slot == CostSlot::Eased => plan.value(variable),
                _ => 0.0,
            };
            bounds[variable] = (0.0, most);
        }
    }
}

/// Holds every size to what it is in `layout` at least.
fn hold_sizes(variables: &Variables, layout: &Layout, bounds: &mut [(f64, f64)]) {
    for placed in &layout.placed {
        let Some(piece) = variables.piece(placed.piece) else { continue };
        for &dimension in Dimension::ALL {
            if let (Some(size), Some(now)) = (piece.dimension(dimension), placed.size.get(dimension)) {
                let (up, beyond) = (bounds[size.up].1, bounds[size.beyond].1);
                let over = (now - size.least - HELD_WITHIN).max(0.0);
                bounds[size.up].0 = over.min(up);
                bounds[size.beyond].0 = (over - up).clamp(0.0, beyond);
            }
        }
    }
}

/// Bounds of a pose's place: within the room, and at its wall.
fn place_of(context: &RuleContext<'_>, pose: &Pose) -> [(usize, (f64, f64)); 2] {
    let origin = context.variables.origin;
    let reach = |direction: Point| {
        let along = context.site.walls.iter().map(|wall| (wall.start - origin).dot(direction));
        along.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| (low.min(at), high.max(at)))
    };
    let across = reach(pose.left());
    let mut out = reach(pose.stand.facing);
    if let Some(wall) = pose.wall().and_then(|id| context.site.wall(id)) {
        let at = (wall.start - origin).dot(wall.inward) + pose.piece.off_wall;
        out = (at.max(out.0), (at + crate::rules::FOOT).min(out.1).max(at.max(out.0)));
    }
    [(pose.variables.across, across), (pose.variables.out, out)]
}
