//! What a problem makes as large as it can be, and how near to each other two of its layouts are the same.

use elbowroom_model::{Dimension, PieceId};

use super::aim::Aim;
use super::problem::Problem;
use super::tolerance::{
    INDIFFERENT_ORDER, INDIFFERENT_PLAN, SAME_ORDER_PROMISE, SAME_PLAIN_PROMISE, SAME_PLAIN_VALUE, SAME_PLAN_PROMISE,
    SAME_PROMISE, SAME_VALUE,
};
use crate::composition;

impl Problem<'_> {
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
}
