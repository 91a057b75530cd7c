//! A group of its own: its seats close and in line, its table before the middle of its seat, by a window. A desk is by one too.

use elbowroom_model::{ItemId, ItemKind, Term};

use super::asked::{Asked, Way};
use super::heart::{middle, middle_of_front};
use super::plan_term::{PlanTerm, TermContext};
use crate::arrangement::{Relation, Role, alike, face};
use crate::rules::{CostSlot, Pose, RuleContext, With};
use crate::site::WallPlace;

/// A group of its own.
#[derive(Debug)]
pub(super) struct GroupApart;

impl PlanTerm for GroupApart {
    fn alone(&self, context: &TermContext<'_>, pose: &Pose) -> Vec<Asked> {
        if pose.role != Role::Apart && !pose.piece.kind.is_worked_at() {
            return Vec::new();
        }
        by_window(&context.room, pose).into_iter().collect()
    }

    fn between(&self, _context: &TermContext<'_>, first: &Pose, second: &Pose) -> Vec<Asked> {
        if first.role == Role::Apart && second.role == Role::Apart && first.piece.group == second.piece.group {
            return company(first, second);
        }
        before(first, second).into_iter().chain(before(second, first)).collect()
    }
}

/// Two seats stand no further apart than one speaks with ease; that face one way stand in line, two that face each other opposite.
fn company(first: &Pose, second: &Pose) -> Vec<Asked> {
    let between = middle_of_front(second).from(&middle_of_front(first));
    let (ahead, aside) = (between.along(first.stand.facing), between.along(first.left()));
    let pays = |slot, term, off| {
        Asked::always(term, second, With::Piece(first.id), Way::pays_either_way(second, slot, term, off))
    };
    let mut found =
        vec![pays(CostSlot::Along, Term::GroupWide, &ahead), pays(CostSlot::Aside, Term::GroupWide, &aside)];
    if alike(first.stand.facing, second.stand.facing) {
        found.push(pays(CostSlot::TwinAhead, Term::Mirrored, &ahead));
    } else if face(first.stand.facing, second.stand.facing) {
        found.push(pays(CostSlot::TwinAside, Term::OppositeAside, &aside));
    }
    found
}

/// Its table before the middle of its seat.
fn before(table: &Pose, seat: &Pose) -> Option<Asked> {
    let is_its = matches!(table.stand.relation, Relation::Before { seat: id } if id == seat.id);
    let aside = middle_of_front(seat).from(&table.middle_of_back()).along(seat.left());
    let way = Way::pays_either_way(table, CostSlot::Aside, Term::TableAside, &aside);
    (is_its && seat.role == Role::Apart).then(|| Asked::always(Term::TableAside, table, With::Piece(seat.id), way))
}

/// One reads, and works at a desk, by a window: by the one that is nearest. A desk pays for being far from the group where a
/// seat has its table to pay for.
fn by_window(room: &RuleContext<'_>, seat: &Pose) -> Option<Asked> {
    let slot = if seat.role == Role::Apart { CostSlot::Near } else { CostSlot::Along };
    let windows = room.brief.room.items().filter(|(_, item)| matches!(item.kind, ItemKind::Window(_)));
    let ways: Vec<(ItemId, Way)> = windows
        .filter_map(|(id, _)| {
            let WallPlace { left, right, inward } = room.site.place_of(room.brief, id)?;
            let at = (left + right) * 0.5;
            let along = (right - left).unit()?;
            let (out, aside) = (middle(seat).along(inward), middle(seat).along(along));
            let out = Way::pays(seat, slot, Term::FarFromWindow, &out.shifted(-at.dot(inward)));
            let aside = aside.shifted(-at.dot(along));
            Some((id, out.and(Way::pays_either_way(seat, CostSlot::UnderRug, Term::FarFromWindow, &aside))))
        })
        .collect();
    let (first, _) = *ways.first().map(|(id, way)| (id, way)).as_ref()?;
    let with = With::Item(*first);
    Some(Asked::one_of(Term::FarFromWindow, seat, with, ways.into_iter().map(|(_, way)| way).collect()))
}
