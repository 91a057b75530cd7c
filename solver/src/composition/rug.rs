//! A rug lies under the fronts of its group, on the axis, longer than the sofa.

use elbowroom_model::{Point, Term};

use super::asked::{Asked, Way};
use super::heart::middle_of_front;
use super::plan_term::{PlanTerm, TermContext};
use crate::arrangement::Relation;
use crate::rules::comfort::axis;
use crate::rules::{CostSlot, Linear, Pose, With};

/// An edge of a rug lies beside a chair and not before it where the cosine between the ways of both is no more than this.
const BESIDE: f64 = 0.1;

/// A rug under its group.
#[derive(Debug)]
pub(super) struct UnderGroup;

impl PlanTerm for UnderGroup {
    fn alone(&self, context: &TermContext<'_>, pose: &Pose) -> Vec<Asked> {
        let Some(main) = context.heart.main.filter(|main| lies_under(pose, main)) else { return Vec::new() };
        let facing = main.stand.facing;
        let aside = pose.middle_of_back().from(&axis(main)).along(main.left());
        let under = main.depth().plus(&pose.anchor.from(&main.anchor).along(facing), -1.0);
        let longer = pose.width().plus(&main.width(), -1.0);
        let larger = pose.width().shifted(-pose.piece.width.least);
        let asked = |term, way| Asked::always(term, pose, With::Piece(main.id), way);
        vec![
            asked(Term::RugAside, Way::pays_either_way(pose, CostSlot::Aside, Term::RugAside, &aside)),
            asked(Term::RugUnderMain, Way::pays_for_lack(pose, CostSlot::Near, Term::RugUnderMain, &under)),
            asked(Term::RugShort, Way::pays_for_lack(pose, CostSlot::Along, Term::RugShort, &longer)),
            asked(Term::RugLarge, Way::pays(pose, CostSlot::Other, Term::RugLarge, &larger)),
        ]
    }

    fn between(&self, _context: &TermContext<'_>, first: &Pose, second: &Pose) -> Vec<Asked> {
        let second_seats = under_second(first, second).into_iter().chain(under_second(second, first));
        second_seats.chain(past_table(first, second)).chain(past_table(second, first)).collect()
    }
}

fn lies_under(rug: &Pose, seat: &Pose) -> bool {
    matches!(rug.stand.relation, Relation::Under { seat: id } if id == seat.id)
}

/// The rug reaches past the far side of the table: the table stands on it, and not on its edge.
fn past_table(rug: &Pose, table: &Pose) -> Option<Asked> {
    let Relation::Under { seat } = rug.stand.relation else { return None };
    let is_its = matches!(table.stand.relation, Relation::Before { seat: served } if served == seat);
    let facing = table.stand.facing;
    let past = rug.main().furthest(facing).from(table.main().furthest(facing)).along(facing);
    let way = Way::pays_for_lack(rug, CostSlot::Middle, Term::RugPastTable, &past);
    is_its.then(|| Asked::always(Term::RugPastTable, rug, With::Piece(table.id), way))
}

/// The rug reaches under the front of a second seat.
fn under_second(rug: &Pose, seat: &Pose) -> Option<Asked> {
    let is_rug = matches!(rug.stand.relation, Relation::Under { .. });
    if !is_rug || !seat.role.is_second_seat() {
        return None;
    }
    let towards = -seat.stand.facing;
    let reaches = |edge: Point| {
        let under: Linear = rug.main().furthest(edge).from(&middle_of_front(seat)).along(edge);
        Way::pays_for_lack(seat, CostSlot::UnderRug, Term::RugUnderSecond, &under)
    };
    let way = match seat.stand.turn {
        None => reaches(towards),
        // Under a chair that is turned it reaches past either edge that lies before it.
        Some(_) => {
            let edges = [rug.along(), -rug.along(), rug.stand.facing, -rug.stand.facing];
            let before = edges.into_iter().filter(|edge| edge.dot(towards) > BESIDE);
            before.map(reaches).fold(Way::default(), Way::and)
        }
    };
    Some(Asked::always(Term::RugUnderSecond, seat, With::Piece(rug.id), way))
}
