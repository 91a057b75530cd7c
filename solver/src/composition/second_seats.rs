//! The second seats about the main one: opposite on its axis, beside along the table, near it, turned to it.

use elbowroom_model::{Pair, Term};

use super::asked::{Asked, Way};
use super::heart::middle_of_front;
use super::plan_term::{PlanTerm, TermContext};
use crate::arrangement::Role;
use crate::rules::comfort::axis;
use crate::rules::{CostSlot, Linear, Pose, With};

/// A seat turned further than 75 degrees from the heart of its group is turned from it (common practice, no source): the
/// tangent of that.
const TURNED: f64 = 3.732;

/// The second seats.
#[derive(Debug)]
pub(super) struct SecondSeats;

impl PlanTerm for SecondSeats {
    fn alone(&self, context: &TermContext<'_>, pose: &Pose) -> Vec<Asked> {
        let Some(main) = context.heart.main.filter(|_| pose.role.is_second_seat()) else { return Vec::new() };
        let mut found = match pose.role {
            Role::Opposite => opposite(context, pose, main),
            _ if pose.stand.turn.is_some() => Vec::new(),
            _ => vec![beside(context, pose, main)],
        };
        found.extend(looks_past(context, pose, main));
        found.extend(angle(pose, main));
        found.extend(to_table(context, pose));
        found.push(turned(context, pose, main));
        found
    }
}

fn opposite(context: &TermContext<'_>, pose: &Pose, main: &Pose) -> Vec<Asked> {
    let with = With::Piece(main.id);
    let apart = middle_of_front(pose).from(&main.anchor).along(main.stand.facing).plus(&main.depth(), -1.0);
    let apart = Way::pays(pose, CostSlot::Other, Term::FrontsApart, &apart);
    let mut found = vec![Asked::always(Term::FrontsApart, pose, with, apart)];
    // Several opposite share the axis; of a pair that faces the other has it alone.
    let shares_axis = context.heart.opposite > 1 && pose.piece.pair != Pair::Facing;
    if !shares_axis && pose.stand.turn.is_none() {
        let aside = pose.middle_of_back().from(&axis(main)).along(main.left());
        let way = Way::pays_either_way(pose, CostSlot::Aside, Term::OppositeAside, &aside);
        found.push(Asked::always(Term::OppositeAside, pose, with, way));
    }
    found
}

fn beside(context: &TermContext<'_>, pose: &Pose, main: &Pose) -> Asked {
    let along = pose.middle_of_back().from(&context.heart.middle(main)).along(main.stand.facing);
    let way = Way::pays_either_way(pose, CostSlot::Along, Term::SideAlong, &along);
    let with = context.heart.table.map_or(main.id, |table| table.id);
    Asked::always(Term::SideAlong, pose, With::Piece(with), way)
}

/// The line along which a chair that is turned looks passes the heart of the group. Of what stands square at one side that
/// is told by where it stands along the table, and opposite it looks at whoever sits there.
fn looks_past(context: &TermContext<'_>, pose: &Pose, main: &Pose) -> Option<Asked> {
    pose.stand.turn?;
    let past = context.heart.middle(main).from(&pose.middle_of_back()).along(pose.left());
    let way = Way::pays_either_way(pose, CostSlot::Along, Term::LooksPast, &past);
    let with = context.heart.table.map_or(main.id, |table| table.id);
    Some(Asked::always(Term::LooksPast, pose, With::Piece(with), way))
}

/// How far a chair is turned. It stands at no wall, so that what a wall would cost it is free for this.
fn angle(pose: &Pose, main: &Pose) -> Option<Asked> {
    let turn = pose.stand.turn?;
    let way = Way::pays(pose, CostSlot::OffWall, Term::Turned, &Linear::constant(turn.degrees));
    Some(Asked::always(Term::Turned, pose, With::Piece(main.id), way))
}

fn to_table(context: &TermContext<'_>, pose: &Pose) -> Option<Asked> {
    let table = context.heart.table?;
    let towards = pose.stand.facing;
    let clear = table.main().furthest(-towards).from(&middle_of_front(pose)).along(towards);
    let way = Way::pays(pose, CostSlot::Near, Term::ToTable, &clear);
    Some(Asked::always(Term::ToTable, pose, With::Piece(table.id), way))
}

fn turned(context: &TermContext<'_>, pose: &Pose, main: &Pose) -> Asked {
    let to = context.heart.middle(main).from(&pose.middle_of_back());
    let ahead = to.along(pose.stand.facing);
    let side = |sign: f64| Linear::default().plus(&to.along(pose.left()), sign).plus(&ahead, -TURNED).at_most(0.0);
    let ways = vec![Way::free(vec![side(1.0), side(-1.0)]), Way::flat(Term::TurnedAway)];
    Asked::one_of(Term::TurnedAway, pose, With::Piece(main.id), ways)
}
