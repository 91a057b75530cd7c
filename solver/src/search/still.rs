//! What keeps its place while one piece is put somewhere else: its place, its sizes and what its terms cost stay what they are,
//! so that only what concerns that piece is asked. That takes a small part of the work of letting all others slide.

use elbowroom_model::PieceId;

use super::found::Found;
use crate::arrangement::{Arrangement, Role};
use crate::rules::{Cause, PieceVariables, Variables, With};

/// A plan, all of which but one piece keeps its place.
#[derive(Debug, Clone, PartialEq)]
pub struct Still<'a> {
    plan: &'a Found,
    /// The piece that is put.
    put: PieceId,
    /// The others whose costs hang on where it stands.
    paying: Vec<PieceId>,
}

impl<'a> Still<'a> {
    /// All of a plan but for one piece.
    pub(super) fn but_for(put: PieceId, plan: &'a Found, arrangement: &Arrangement, variables: &Variables) -> Self {
        // What the others stand about bears on all of them.
        let is_heart = |role: Role| role.is_screen() || role == Role::Table;
        let of_heart = arrangement.standings.iter().any(|of| of.piece == put && is_heart(of.role));
        let beside = variables_beside(put, plan, variables);
        let pays =
            |(_, other): &(usize, &PieceVariables)| of_heart || other.terms.values().any(|term| beside.contains(term));
        let others = variables.pieces.iter().enumerate().filter(pays).map(|(id, _)| PieceId(id));
        let mut still = Self { plan, put, paying: others.filter(|other| *other != put).collect() };
        while let Some(piece) = still.charged_too() {
            still.paying.push(piece);
        }
        still
    }

    /// A piece that is charged together with one whose costs may change, and is not among those yet: what both are charged is
    /// asked anew of both.
    fn charged_too(&self) -> Option<PieceId> {
        let of_both = self.plan.paid.iter().flat_map(|(cause, _)| {
            let other = if let With::Piece(other) = cause.with { other } else { cause.piece };
            [(cause.piece, other), (other, cause.piece)]
        });
        let is_new = |(piece, other): &(PieceId, PieceId)| self.may_change(*other) && !self.may_change(*piece);
        of_both.into_iter().find(is_new).map(|(piece, _)| piece)
    }

    /// Whether what a piece is asked for may change: it is put, or what it pays hangs on what is.
    pub(super) fn may_change(&self, piece: PieceId) -> bool {
        self.put == piece || self.paying.contains(&piece)
    }

    /// Holds the places and sizes of all others, and keeps what their terms cost from falling where it cannot.
    pub(super) fn hold(&self, variables: &Variables, bounds: &mut [(f64, f64)]) {
        let others = || variables.pieces.iter().enumerate().filter(|(id, _)| self.put != PieceId(*id));
        let places = others().flat_map(|(_, piece)| {
            let sizes = piece.sizes().flat_map(|size| [size.up, size.beyond]);
            [piece.across, piece.out].into_iter().chain(sizes)
        });
        for variable in places.chain(variables.circle.into_iter().flat_map(|(x, y)| [x, y])) {
            let now = self.now(variable, bounds);
            bounds[variable] = (now, now);
        }
        let stay = others().filter(|(id, _)| !self.may_change(PieceId(*id)));
        for variable in stay.flat_map(|(_, piece)| piece.terms.values().copied()) {
            bounds[variable].0 = self.now(variable, bounds);
        }
    }

    /// What a variable is in the plan, within its bounds.
    fn now(&self, variable: usize, bounds: &[(f64, f64)]) -> f64 {
        let (least, most) = bounds[variable];
        self.plan.values.get(variable).copied().unwrap_or(least).max(least).min(most)
    }

    /// What the plan pays besides for what stays as it is.
    pub(super) fn paid(&self) -> impl Iterator<Item = (Cause, f64)> + '_ {
        let stays = |cause: &Cause| !self.may_change(cause.piece);
        self.plan.paid.iter().copied().filter(move |(cause, _)| stays(cause))
    }
}

/// The variables that stand in one row with one of a piece's, where it stands in the plan.
fn variables_beside(piece: PieceId, plan: &Found, variables: &Variables) -> Vec<usize> {
    let own = variables.piece(piece);
    let is_own = |variable: usize| own.is_some_and(|own| own.has(variable));
    let concerns = |terms: &[(usize, f64)]| terms.iter().any(|(variable, _)| is_own(*variable));
    let beside = plan.rows.iter().filter(|(row, _)| concerns(&row.terms));
    beside.flat_map(|(row, _)| row.terms.iter().map(|(variable, _)| *variable)).collect()
}
