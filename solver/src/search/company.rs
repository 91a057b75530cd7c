//! What the stand of one piece means for others, whatever the sizes: pieces that are alike change places for nothing, and
//! what stands by a seat needs that seat.

use super::node::Decided;
use super::problem::Problem;

impl Problem<'_> {
    /// Of the pieces before `id` those that could change places with it, where both may stand.
    pub(super) fn earlier_twins(&self, id: usize, states: &[usize]) -> Vec<usize> {
        let may_stand = |earlier: &usize| !states.is_empty() && !self.ways[*earlier].states.is_empty();
        let is_twin = |earlier: &usize| self.arrangement.are_twins(self.ground.brief, *earlier, id);
        (0..id).filter(may_stand).filter(is_twin).collect()
    }

    /// Whether these two stands are those of twins the other way round: the same room, which is looked at once.
    pub(super) fn is_told_otherwise(&self, first: usize, second: usize) -> bool {
        let (first, second) = (&self.states[first.min(second)], &self.states[first.max(second)]);
        self.ways[second.posed.pose.id].earlier_twins.contains(&first.posed.pose.id)
            && first.key.stand() > second.key.stand()
    }

    /// Whether a twin that comes before `piece` is left out: of twins the first stand.
    pub(super) fn is_out_with_its_twin(&self, decided: &[Decided], piece: usize) -> bool {
        self.ways[piece].earlier_twins.iter().any(|twin| decided[*twin] == Decided::Out)
    }

    /// Whether `piece` cannot be left out any more: a twin that comes after it stands, or something by it.
    pub(super) fn is_relied_on(&self, decided: &[Decided], piece: usize) -> bool {
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
        self.stands_by(state).is_some_and(|seat| decided.get(seat) == Some(&Decided::Out))
    }

    fn stands_by(&self, state: usize) -> Option<usize> {
        self.states[state].posed.pose.stand.relation.seat()
    }
}
