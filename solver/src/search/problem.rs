//! One arrangement as the search sees it: each piece under each of its stands, and what the rules ask of one and of two.

use std::cell::OnceCell;
use std::sync::Arc;

use elbowroom_model::{Dimension, PieceId, Point, Rule};

use super::aim::Aim;
use super::cell::{Cell, Ranges};
use super::cells::{Beside, Cells, Key, Posed, Scope, StandKey};
use super::room_context::RoomContext;
use super::tolerance::{
    HELD_WITHIN, INDIFFERENT_ORDER, SAME_ORDER_PROMISE, SAME_PLAIN_PROMISE, SAME_PLAIN_VALUE, SAME_PROMISE, SAME_VALUE,
};
use crate::arrangement::Arrangement;
use crate::layout::Layout;
use crate::rules::{LayoutRule, Pose, RULES, Requirement, RuleContext, SizeVariables, TIES, Variables};

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
    without: Option<Rule>,
    /// Round gaps are asked for as the polygons around them, and ways through are left aside.
    pub(super) plain: bool,
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
    /// The problem of `arrangement`; rules named by `without` are left aside. `plain` asks for what a general solver can
    /// be asked for.
    pub(super) fn of(
        room: &'a RoomContext<'a>,
        arrangement: &'a Arrangement,
        aim: Aim<'a>,
        without: Option<Rule>,
        plain: bool,
    ) -> Self {
        let RoomContext { brief, site, walls, variables, cells } = room;
        let context = RuleContext { brief, site, walls, main_seat: arrangement.main_seat, variables };
        let mut problem = Self {
            context,
            aim,
            states: Vec::new(),
            ways: Vec::new(),
            arrangement,
            room: Cell::default(),
            known: cells,
            pairs: Vec::new(),
            without,
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
            self.known.cell(self.key(*key, with), || {
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
            self.known.cell(self.key(a.key, Beside::Piece(b.key)), || {
                let places = [a.posed.place, b.posed.place].concat();
                self.cell(|rule| rule.between(&self.context, &a.posed.pose, &b.posed.pose), &places)
            })
        })
    }

    const fn key(&self, first: StandKey, with: Beside) -> Key {
        Key { first, with, scope: Scope { without: self.without, plain: self.plain, ties: self.settles_ties() } }
    }

    /// Takes the alternatives out that these stands cannot give, whatever the sizes.
    pub(super) fn propagate(&self, requirement: &mut Requirement, standing: &[usize]) {
        let places: Vec<_> = standing.iter().flat_map(|state| self.states[*state].posed.place).collect();
        Ranges { bounds: &self.context.variables.bounds, places: &places }.propagate(requirement);
    }

    /// Bounds of the variables at the root: places within the room where a piece has one stand only.
    pub(super) fn bounds(&self) -> Vec<(f64, f64)> {
        let mut bounds = self.context.variables.bounds.clone();
        if let Aim::Tidy(layout) = self.aim {
            hold_sizes(self.context.variables, layout, &mut bounds);
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
            Aim::Together | Aim::These(_) => variables.objective.clone(),
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
            Aim::Together | Aim::These(_) => self.context.variables.piece(piece).map_or(0.0, |piece| piece.presence),
            Aim::Alone(..) | Aim::Any | Aim::Tidy(_) => 0.0,
        }
    }

    /// Whether ties are settled too.
    const fn settles_ties(&self) -> bool {
        matches!(self.aim, Aim::Together | Aim::These(_) | Aim::Tidy(_))
    }

    /// Promises nearer to each other than this are the same: of such nodes the deepest is looked at first.
    pub(super) const fn same_promise(&self) -> f64 {
        match self.aim {
            _ if self.plain => SAME_PLAIN_PROMISE,
            Aim::Tidy(_) => SAME_ORDER_PROMISE,
            Aim::Together | Aim::These(_) | Aim::Alone(..) | Aim::Any => SAME_PROMISE,
        }
    }

    /// How much more a node must promise than the best layout to be worth a look: a fifth of what a proof allows, or a
    /// centimetre of order.
    pub(super) fn indifference(&self, best: f64) -> f64 {
        match self.aim {
            _ if self.plain => SAME_PLAIN_VALUE * best.abs(),
            Aim::Tidy(_) => INDIFFERENT_ORDER,
            Aim::Together | Aim::These(_) | Aim::Alone(..) | Aim::Any => SAME_VALUE * best.abs(),
        }
    }

    fn may_be_left_out(&self, piece: PieceId) -> bool {
        match self.aim {
            Aim::Alone(_, _, layout) | Aim::Tidy(layout) => layout.of(piece).is_none(),
            Aim::These(pieces) => !pieces.contains(&piece),
            Aim::Together | Aim::Any => !self.arrangement.must_stand(self.context.brief, piece),
        }
    }

    fn states_of(&mut self, id: PieceId) -> Vec<usize> {
        let context = self.context;
        let is_left_out = match self.aim {
            Aim::Alone(_, _, layout) | Aim::Tidy(layout) => layout.of(id).is_none(),
            Aim::These(pieces) => !pieces.contains(&id),
            Aim::Together | Aim::Any => false,
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

    fn cell(&self, ask: impl Fn(&dyn LayoutRule) -> Vec<Requirement>, places: &[(usize, (f64, f64))]) -> Cell {
        let ranges = Ranges { bounds: &self.context.variables.bounds, places };
        let ties: &[&dyn LayoutRule] = if self.settles_ties() { TIES } else { &[] };
        let asked = RULES.iter().chain(ties).flat_map(|rule| ask(*rule));
        let asked = asked.filter(|requirement| Some(requirement.cause.rule) != self.without);
        Cell::of(asked.map(|requirement| if self.plain { requirement.with_polygons() } else { requirement }), &ranges)
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
