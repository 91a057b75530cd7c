//! What keeps its place while one piece is put somewhere else: its place, its sizes and what its terms cost stay what they are,
//! so that only what concerns that piece is asked. That takes a small part of the work of letting all others slide.

use elbowroom_model::PieceId;

use super::found::Found;
use crate::rules::{Cause, PieceVariables, Variables};

/// A plan, all of which but one piece keeps its place.
#[derive(Debug, Clone, PartialEq)]
pub struct Still<'a> {
    plan: &'a Found,
    /// The piece that is put, and those whose costs it bears on where it stands in the plan.
    moved: Vec<PieceId>,
}

impl<'a> Still<'a> {
    /// All of a plan but for one piece.
    pub(super) fn but_for(piece: PieceId, plan: &'a Found, variables: &Variables) -> Self {
        let own = variables.piece(piece);
        let is_own = |variable: usize| own.is_some_and(|own| own.has(variable));
        let concerns = |terms: &[(usize, f64)]| terms.iter().any(|(variable, _)| is_own(*variable));
        let beside = plan.rows.iter().filter(|(row, _)| concerns(&row.terms));
        let variables_beside: Vec<usize> =
            beside.flat_map(|(row, _)| row.terms.iter().map(|(variable, _)| *variable)).collect();
        let pays = |other: &PieceVariables| other.terms.values().any(|term| variables_beside.contains(term));
        let others = variables.pieces.iter().enumerate().filter(|(_, other)| pays(other)).map(|(id, _)| PieceId(id));
        let mut moved = vec![piece];
        moved.extend(others.filter(|other| *other != piece));
        Self { plan, moved }
    }

    /// Whether what a piece is asked for may change: it is put, or what its terms cost hangs on what is.
    pub(super) fn may_move(&self, piece: PieceId) -> bool {
        self.moved.contains(&piece)
    }

    /// Holds the places and sizes of all others, and keeps what their terms cost from falling where it cannot.
    pub(super) fn hold(&self, variables: &Variables, bounds: &mut [(f64, f64)]) {
        let others = || variables.pieces.iter().enumerate().filter(|(id, _)| self.moved.first() != Some(&PieceId(*id)));
        let places = others().flat_map(|(_, piece)| {
            let sizes = piece.sizes().flat_map(|size| [size.up, size.beyond]);
            [piece.across, piece.out].into_iter().chain(sizes)
        });
        for variable in places.chain(variables.circle.into_iter().flat_map(|(x, y)| [x, y])) {
            let now = self.now(variable, bounds[variable]);
            bounds[variable] = (now, now);
        }
        let stay = others().filter(|(id, _)| !self.may_move(PieceId(*id)));
        for variable in stay.flat_map(|(_, piece)| piece.terms.values().copied()) {
            bounds[variable].0 = self.now(variable, bounds[variable]);
        }
    }

    /// What a variable is in the plan, within its bounds.
    fn now(&self, variable: usize, (least, most): (f64, f64)) -> f64 {
        self.plan.values.get(variable).copied().unwrap_or(least).max(least).min(most)
    }

    /// What the plan pays besides for what stays as it is.
    pub(super) fn paid(&self) -> impl Iterator<Item = (Cause, f64)> + '_ {
        let stays = |cause: &Cause| !self.moved.iter().any(|piece| cause.is_of(*piece));
        self.plan.paid.iter().copied().filter(move |(cause, _)| stays(cause))
    }
}
