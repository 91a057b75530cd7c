//! One arrangement as the search sees it: each piece under each of its stands, and what the rules ask of one and of two.

use std::cell::OnceCell;
use std::rc::Rc;
use std::sync::Arc;

use elbowroom_model::{PieceId, Point};

use super::aim::Aim;
use super::asked::Asked;
use super::barriers::{Barrier, Barring};
use super::cell::{Cell, Ranges};
use super::cells::{Beside, Cells, Comfort, Key, Place, Posed, Scope, StandId, StandKey};
use super::easing::Easing;
use super::room_context::RoomContext;
use super::still::Still;
use super::term_cells::TermCells;
use crate::arrangement::Arrangement;
use crate::composition::Aims;
use crate::rules::comfort::{self, COMFORT};
use crate::rules::{LayoutRule, Pose, RULES, Requirement, RuleContext, TIES};
use crate::stop::Stop;

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
    /// Where the search ends before its work is done.
    pub(super) stop: Stop<'a>,
    /// What is asked of each state with each later one, looked up or worked out when first asked.
    pairs: Vec<OnceCell<Vec<OnceCell<Arc<Cell>>>>>,
    pub(super) asked: Asked<'a>,
    /// What a plan aims at; `None` where the largest are sought.
    pub(super) aims: Option<Aims>,
    /// What the terms of a plan ask of each state, and of each with each later one.
    pub(super) terms: Vec<OnceCell<Rc<Cell>>>,
    pub(super) terms_between: Vec<OnceCell<Vec<OnceCell<Rc<Cell>>>>>,
    /// What they stand about.
    pub(super) heart: [Option<StandId>; 3],
    /// What terms asked so far in this arrangement.
    pub(super) known_terms: &'a TermCells,
    /// Round gaps are asked for as the polygons around them, and ways through are left aside.
    pub(super) plain: bool,
}

/// A piece under one of its stands.
pub(super) struct State {
    pub(super) posed: Arc<Posed>,
    pub(super) key: StandKey,
    /// It has other stands too, or may be left out, so that bounds do not hold it to its place.
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
    pub(super) fn of(
        room: &'a RoomContext<'a>,
        arrangement: &'a Arrangement,
        asked: Asked<'a>,
        known_terms: &'a TermCells,
    ) -> Self {
        let RoomContext { brief, site, walls, variables, stop, cells } = room;
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
            stop: *stop,
            pairs: Vec::new(),
            asked,
            aims,
            terms: Vec::new(),
            terms_between: Vec::new(),
            heart: [None; 3],
            known_terms,
            plain,
        };
        for id in brief.piece_ids() {
            let states = problem.states_of(id);
            let may_be_left_out = problem.may_be_left_out(id);
            let earlier_twins = problem.earlier_twins(id, &states);
            problem.ways.push(Ways { states, may_be_left_out, earlier_twins });
        }
        problem.heart = problem.heart_key();
        problem.room = problem.cell(|rule| rule.room(&context), &[]);
        problem.room.always.extend(asked.besides.iter().cloned());
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
        let State { posed, is_one_of_several, alone, .. } = &self.states[state];
        let Posed { id, pose, place } = posed.as_ref();
        alone.get_or_init(|| {
            let with = if *is_one_of_several { Beside::OtherStands } else { Beside::Nothing };
            self.known(*id, with, || {
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
            let (a, b) = (&self.states[first].posed, &self.states[second].posed);
            self.known(a.id, Beside::Piece(b.id), || {
                let places = [a.place, b.place].concat();
                self.cell(|rule| rule.between(&self.context, &a.pose, &b.pose), &places)
            })
        })
    }

    /// Whether one of these stands, or what its piece pays, may change: what is asked of them all holds otherwise.
    pub(super) fn may_change(&self, standing: &[usize]) -> bool {
        let changes = |still: &Still<'_>, State { posed, is_one_of_several, .. }: &State| {
            *is_one_of_several || still.may_change(posed.pose.id)
        };
        let may_change = |still: &Still<'_>| standing.iter().any(|state| changes(still, &self.states[*state]));
        self.asked.still.is_none_or(may_change)
    }

    /// A barrier as it stands here; `None` where one of its pieces cannot stand as it did.
    pub(super) fn barring<'p>(&self, barrier: &'p Barrier) -> Option<Barring<'p>> {
        let state = |key: &StandKey| {
            let state = self.states.iter().position(|state| state.key == *key)?;
            Some((self.states[state].posed.pose.id, state))
        };
        let states = barrier.stands.iter().map(state).collect::<Option<_>>()?;
        Some(Barring { states, requirement: &barrier.requirement })
    }

    /// Which rules are asked, and how; `None` where that hangs on one plan.
    pub(super) const fn scope(&self) -> Option<Scope> {
        let comfort = match self.asked.easing {
            Easing::Kept => Comfort::Kept,
            Easing::MayBeEased => Comfort::MayBeEased,
            Easing::Ignored => Comfort::Ignored,
            Easing::AsIn(_) => return None,
        };
        let Asked { without, plain, .. } = self.asked;
        Some(Scope { without, plain, ties: self.settles_ties(), screen: self.context.screen, comfort })
    }

    /// Takes the alternatives out that these stands cannot give, whatever the sizes.
    pub(super) fn propagate(&self, requirement: &mut Requirement, standing: &[usize]) {
        let places: Vec<_> = standing.iter().flat_map(|state| self.states[*state].posed.place).collect();
        Ranges { bounds: &self.context.variables.bounds, places: &places }.propagate(requirement);
    }

    /// Whether ties are settled too. Of the largest they are settled when all sizes are known; but where a plan eases a rule
    /// how far a size can be let out at last hangs on where all stands.
    const fn settles_ties(&self) -> bool {
        match self.aim {
            Aim::Together | Aim::These(_) | Aim::Tidy(_) => self.asked.may_settle_ties,
            Aim::Within(plan) => !plan.eased.is_empty(),
            _ => false,
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
                (pose, place)
            });
            let is_one_of_several = standing.stands.len() > 1 || self.may_be_left_out(id);
            self.states.push(State { posed, key, is_one_of_several, alone: OnceCell::new() });
        }
        (first..self.states.len()).collect()
    }

    /// A requirement with what may be done about it where it is one of comfort.
    pub(super) fn eased(&self, requirement: Requirement) -> Requirement {
        match self.asked.easing {
            Easing::MayBeEased => comfort::may_be_eased(requirement, self.context.variables),
            Easing::AsIn(plan) if plan.eased.contains(&requirement.cause) => {
                comfort::eased(requirement, self.context.variables)
            }
            Easing::Kept | Easing::Ignored | Easing::AsIn(_) => requirement,
        }
    }

    /// A cell that is looked up, or worked out: what hangs on one plan is not kept for others.
    fn known(&self, first: StandId, with: Beside, work_out: impl FnOnce() -> Cell) -> Arc<Cell> {
        match self.scope() {
            Some(scope) => self.known.cell(Key { first, with, scope }, work_out),
            None => Arc::new(work_out()),
        }
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

/// Bounds of a pose's place: within the room, and at its wall.
fn place_of(context: &RuleContext<'_>, pose: &Pose) -> Place {
    let origin = context.variables.origin;
    let reach = |direction: Point| {
        let along = context.site.walls.iter().map(|wall| (wall.start - origin).dot(direction));
        along.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| (low.min(at), high.max(at)))
    };
    let across = reach(pose.left());
    let mut out = reach(pose.stand.facing);
    if let Some(wall) = pose.wall().and_then(|id| context.site.wall(id)) {
        let at = (wall.start - origin).dot(wall.inward) + pose.piece.off_wall;
        let furthest = at + crate::rules::furthest_off(context, pose, wall);
        out = (at.max(out.0), furthest.min(out.1).max(at.max(out.0)));
    }
    [(pose.variables.across, across), (pose.variables.out, out)]
}
