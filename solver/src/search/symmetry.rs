//! What the stand of one piece means for others, whatever the sizes: pieces that are alike change places for nothing, and
//! what stands by a seat needs that seat.

use elbowroom_model::PieceId;

use super::node::Decided;
use super::problem::Problem;

impl Problem<'_> {
    /// Of the pieces before `id` those that could change places with it, where both may stand.
    pub(super) fn earlier_twins(&self, id: PieceId, states: &[usize]) -> Vec<PieceId> {
        let may_stand = |earlier: &PieceId| !states.is_empty() && !self.ways[earlier.0].states.is_empty();
        let is_twin = |earlier: &PieceId| self.arrangement.are_twins(self.context.brief, *earlier, id);
        self.context.brief.piece_ids().take(id.0).filter(may_stand).filter(is_twin).collect()
    }

    /// Whether these two stands are those of twins the other way round: the same room, which is looked at once.
    pub(super) fn is_mirrored_twin(&self, first: usize, second: usize) -> bool {
        let (first, second) = (&self.states[first.min(second)], &self.states[first.max(second)]);
        self.ways[second.posed.pose.id.0].earlier_twins.contains(&first.posed.pose.id)
            && first.key.stand() > second.key.stand()
    }

    /// Whether a twin that comes before `piece` is left out: of twins the first stand.
    pub(super) fn is_out_with_its_twin(&self, decided: &[Decided], piece: PieceId) -> bool {
        self.ways[piece.0].earlier_twins.iter().any(|twin| decided[twin.0] == Decided::Out)
    }

    /// Whether `piece` cannot be left out any more: a twin that comes after it stands, or something by it.
    pub(super) fn is_relied_on(&self, decided: &[Decided], piece: PieceId) -> bool {
        decided.iter().enumerate().any(|(other, decided)| match decided {
            Decided::Open | Decided::Out => false,
            Decided::Somewhere => self.ways[other].earlier_twins.contains(&piece),
            Decided::Stands(state) => {
                self.ways[other].earlier_twins.contains(&piece) || self.stands_by(*state) == Some(piece)
            }
        })
    }

    /// Whether the seat that a piece would stand by is left out.
    pub(super) fn is_by_nothing(&self, decided: &[Decided], state: usize) -> bool {
        self.stands_by(state).is_some_and(|seat| decided.get(seat.0) == Some(&Decided::Out))
    }

    fn stands_by(&self, state: usize) -> Option<PieceId> {
        self.states[state].posed.pose.stand.relation.seat()
    }
}
