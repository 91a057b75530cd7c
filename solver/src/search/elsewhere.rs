//! A plan with one piece somewhere else, or with one piece more, all else decided as the plan decides it.

use elbowroom_model::{Brief, PieceId, Rule};

use super::aim::Aim;
use super::arrangement_context::ArrangementContext;
use super::dive::{held, pieces_of};
use super::effort::Effort;
use super::found::{Found, Searched};
use super::once::search_once;
use super::still::Still;
use super::tree::Order;
use crate::arrangement::{Arrangement, Stand};
use crate::program::Row;
use crate::rules::{Cause, PieceVariables, TOLERANCE, With};

/// Nodes for each way in which the piece may stand, and for all of them: what it alone may decide lies a dozen deep.
const NODES: usize = 100;
const NODES_OF_ALL: usize = 200;

/// So many pieces are many: what all of them decide together takes more nodes than there are.
const MANY: usize = 12;

/// Nodes for all that slides: most is decided.
const NODES_TO_SLIDE: usize = 40;

/// What all gains together by sliding must be more than this, in what plans cost, to be worth it.
const WORTH_SLIDING: f64 = 0.5;

/// What stands nearer to where it stood than this stands in the same place, mm.
const SAME_PLACE: f64 = 400.0;

/// What all else does while a piece is put.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Rest {
    /// It keeps its place.
    Still,
    /// It slides as it must, decided as it is.
    Slides,
}

impl Rest {
    /// What is tried where nothing hangs on time: it slides, but for that of many pieces, which takes many times the work.
    pub(crate) fn of(brief: &Brief) -> Self {
        if are_many(brief) { Self::Still } else { Self::Slides }
    }
}

/// Whether a room has many pieces.
pub(super) fn are_many(brief: &Brief) -> bool {
    brief.pieces.len() >= MANY
}

/// The plan, and the piece that is to stand elsewhere, or besides.
pub(crate) struct Elsewhere<'s, 'a> {
    context: &'s ArrangementContext<'a>,
    plan: &'s Found,
    piece: PieceId,
    own: PieceVariables,
    /// Layouts count that are better than this.
    to_beat: f64,
    held: Arrangement,
    /// Which of its standings is the piece's.
    place: usize,
    pieces: Vec<PieceId>,
    /// What the plan decides of all others.
    decided: Vec<(Row, Cause)>,
}

impl<'s, 'a> Elsewhere<'s, 'a> {
    /// All else held to its walls; `None` where the arrangement, that of the context or as much of it as is planned, has no
    /// place for the piece.
    pub(crate) fn of(
        context: &'s ArrangementContext<'a>,
        arrangement: &Arrangement,
        plan: &'s Found,
        piece: PieceId,
        to_beat: f64,
    ) -> Option<Self> {
        let mut held = held(context.room, arrangement, &plan.layout, None);
        let place = held.standings.iter().position(|standing| standing.piece == piece)?;
        held.standings[place].stands.clone_from(&arrangement.standings.get(place)?.stands);
        let others = pieces_of(&plan.layout).into_iter().filter(|other| *other != piece);
        let pieces = others.chain([piece]).collect();
        let own = *context.room.variables.piece(piece)?;
        let is_of_others = |row: &Row| !row.terms.iter().any(|(variable, _)| own.has(*variable));
        let decided = plan.rows.iter().filter(|(row, _)| is_of_others(row)).cloned().collect();
        Some(Self { context, plan, piece, own, to_beat, held, place, pieces, decided })
    }

    /// The best that was found for the piece anywhere, within so many nodes.
    pub(super) fn anywhere(&self, nodes: usize, rest: Rest) -> Searched {
        self.put(&self.held, nodes.min(NODES_OF_ALL), rest, None)
    }

    /// What was found for each way in which the piece may stand.
    pub(crate) fn by_stands(&self, rest: Rest) -> Vec<Searched> {
        self.stands().map(|stand| self.put(&self.standing(stand), NODES, rest, None)).collect()
    }

    /// The same of each wall, for each place along it that is another: to the left and the right of where it stands in the
    /// plan, or of what is found first.
    pub(crate) fn along_walls(&self, rest: Rest) -> Vec<Searched> {
        let mut found = Vec::new();
        for stand in self.stands().filter(|stand| stand.at_wall.is_some()) {
            let now = self.plan.layout.of(self.piece).filter(|placed| placed.at_wall == stand.at_wall);
            let first = now.is_none().then(|| self.put(&self.standing(stand), NODES, rest, None));
            let at = match &first {
                None => Some(self.across(self.plan)),
                Some(first) => first.found.as_ref().map(|first| self.across(first)),
            };
            found.extend(first);
            let sides = at.into_iter().flat_map(|at| self.beside(at));
            found.extend(sides.map(|side| self.put(&self.standing(stand), NODES, rest, Some(side))));
        }
        found
    }

    fn stands(&self) -> impl Iterator<Item = Stand> + '_ {
        self.held.standings[self.place].stands.iter().copied()
    }

    /// Where it stands along its back.
    fn across(&self, found: &Found) -> f64 {
        found.values.get(self.own.across).copied().unwrap_or_default()
    }

    /// The piece to one side of a place along its back, or to the other.
    fn beside(&self, at: f64) -> [(Row, Cause); 2] {
        let cause = Cause { rule: Rule::Room, piece: self.piece, with: With::Itself };
        let across = [(self.own.across, 1.0)];
        let sides = [Row::at_most(across, at - SAME_PLACE), Row::at_least(across, at + SAME_PLACE)];
        sides.map(|side| (side, cause))
    }

    /// All else held to its walls, and the piece to one way in which it may stand.
    fn standing(&self, stand: Stand) -> Arrangement {
        let mut so = self.held.clone();
        so.standings[self.place].stands = vec![stand];
        so
    }

    /// The piece put somewhere within an arrangement, where it keeps to a row of its own besides.
    fn put(&self, within: &Arrangement, nodes: usize, rest: Rest, own: Option<(Row, Cause)>) -> Searched {
        match rest {
            Rest::Still => self.beside_the_rest(within, nodes, own.as_slice()),
            Rest::Slides => {
                let rows: Vec<(Row, Cause)> = self.decided.iter().cloned().chain(own).collect();
                clean(self.context, within, Effort { besides: &rows, ..self.effort(nodes) }, self.plan)
            }
        }
    }

    /// The piece put with all else in its place. What was decided of the rest still holds, but for what it pays otherwise.
    fn beside_the_rest(&self, within: &Arrangement, nodes: usize, rows: &[(Row, Cause)]) -> Searched {
        let still = Still::but_for(self.piece, self.plan, within, &self.context.room.variables);
        let effort = Effort { besides: rows, still: Some(&still), ..self.effort(nodes) };
        let mut searched = clean(self.context, within, effort, self.plan);
        if let Some(found) = &mut searched.found {
            let holds = |(row, _): &&(Row, Cause)| row.excess(&found.values) <= TOLERANCE;
            found.rows.extend(self.decided.iter().filter(holds).cloned());
        }
        searched
    }

    fn effort(&self, nodes: usize) -> Effort<'_> {
        Effort { to_beat: self.to_beat, ..Effort::of(Aim::PlanOf(&self.pieces), nodes) }
    }
}

/// The plan with all that is decided decided so and all of it slid to its best place, where it gains by that.
pub(super) fn slid(
    context: &ArrangementContext<'_>,
    arrangement: &Arrangement,
    plan: &Found,
    nodes: usize,
) -> Searched {
    let held = held(context.room, arrangement, &plan.layout, None);
    let pieces = pieces_of(&plan.layout);
    let effort = Effort::of(Aim::PlanOf(&pieces), nodes.min(NODES_TO_SLIDE));
    let effort = Effort { to_beat: plan.objective + WORTH_SLIDING, besides: &plan.rows, ..effort };
    clean(context, &held, effort, plan)
}

/// The best layout of what keeps every rule of comfort. What was proven of a plan is so of it too; of a plan with fewer pieces
/// nothing was, yet.
fn clean(context: &ArrangementContext<'_>, within: &Arrangement, effort: Effort<'_>, plan: &Found) -> Searched {
    let mut searched = search_once(context, within, effort, Order::BestFirst);
    if let Some(found) = &mut searched.found {
        found.bound = found.objective.max(plan.bound);
    }
    searched
}
