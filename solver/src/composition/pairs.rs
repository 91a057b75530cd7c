//! Two second seats: left and right mirrored, opposite amid the axis, on one side in line.

use elbowroom_model::Term;

use super::asked::{Asked, Way};
use super::plan_term::{PlanTerm, TermContext};
use crate::arrangement::Role;
use crate::rules::comfort::axis;
use crate::rules::{CostSlot, Linear, Pose, With};

/// Two second seats.
#[derive(Debug)]
pub(super) struct Pairs;

impl PlanTerm for Pairs {
    fn between(&self, context: &TermContext<'_>, first: &Pose, second: &Pose) -> Vec<Asked> {
        let Some(main) = context.heart.main else { return Vec::new() };
        let pair = Pair::of(main, first, second);
        match (first.role, second.role) {
            (Role::LeftOf, Role::RightOf) | (Role::RightOf, Role::LeftOf) => pair.mirrored(),
            (Role::Opposite, Role::Opposite) => pair.amid(),
            (one, other) if one == other && one.is_second_seat() => pair.in_line(context, main),
            _ => Vec::new(),
        }
    }
}

/// Two seats, as far ahead of the main seat's back and aside from its axis as they stand.
struct Pair<'p> {
    first: &'p Pose,
    second: &'p Pose,
    ahead: [Linear; 2],
    aside: [Linear; 2],
}

impl<'p> Pair<'p> {
    fn of(main: &Pose, first: &'p Pose, second: &'p Pose) -> Self {
        let from_axis = [first, second].map(|pose| pose.middle_of_back().from(&axis(main)));
        let ahead = from_axis.each_ref().map(|from| from.along(main.stand.facing));
        Self { first, second, ahead, aside: from_axis.map(|from| from.along(main.left())) }
    }

    fn costs(&self, slot: CostSlot, term: Term, off: &Linear) -> Asked {
        let way = Way::pays_either_way(self.second, slot, term, off);
        Asked::always(term, self.second, With::Piece(self.first.id), way)
    }

    /// The one so far ahead of the other.
    fn unlike_ahead(&self) -> Linear {
        self.ahead[0].clone().plus(&self.ahead[1], -1.0)
    }

    fn mirrored(&self) -> Vec<Asked> {
        let aside = self.aside[0].clone().plus(&self.aside[1], 1.0);
        vec![
            self.costs(CostSlot::TwinAhead, Term::Mirrored, &self.unlike_ahead()),
            self.costs(CostSlot::TwinAside, Term::Mirrored, &aside),
        ]
    }

    fn amid(&self) -> Vec<Asked> {
        let middle = Linear::default().plus(&self.aside[0], 0.5).plus(&self.aside[1], 0.5);
        vec![
            self.costs(CostSlot::TwinAside, Term::PairAside, &middle),
            self.costs(CostSlot::TwinAhead, Term::Mirrored, &self.unlike_ahead()),
        ]
    }

    /// Two on one side: their middle with the table's.
    fn in_line(&self, context: &TermContext<'_>, main: &Pose) -> Vec<Asked> {
        let line = self.aside[0].clone().plus(&self.aside[1], -1.0);
        let at = context.heart.middle(main).from(&axis(main)).along(main.stand.facing);
        let middle = Linear::default().plus(&self.ahead[0], 0.5).plus(&self.ahead[1], 0.5).plus(&at, -1.0);
        vec![
            self.costs(CostSlot::TwinAside, Term::Mirrored, &line),
            self.costs(CostSlot::TwinAhead, Term::PairAside, &middle),
        ]
    }
}
