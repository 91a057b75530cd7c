//! What belongs before the main seat lies on its axis: the table, and a liked window or a fire that it faces.

use elbowroom_model::{ItemKind, Point, SeatForm, Term, View, WallItem};

use super::asked::Asked;
use super::asked::Way;
use super::plan_term::{PlanTerm, TermContext};
use crate::arrangement::{Relation, Role, face};
use crate::rules::comfort::axis;
use crate::rules::{CostSlot, Pose, With};
use crate::site::WallPlace;

/// A coffee table is at most so much of its sofa (half to two thirds: common practice, no source).
const SHARE_OF_SOFA: f64 = 2.0 / 3.0;

/// On the axis of the main seat.
#[derive(Debug)]
pub(super) struct OnAxis;

impl PlanTerm for OnAxis {
    fn alone(&self, context: &TermContext<'_>, pose: &Pose) -> Vec<Asked> {
        let Some(main) = context.heart.main else { return Vec::new() };
        match (pose.role, pose.stand.relation) {
            (Role::MainSeat, _) => focus(context, pose).into_iter().chain(far_from_fire(context, pose)).collect(),
            (_, Relation::Before { seat }) if seat == main.id => {
                let aside = pose.middle_of_back().from(&axis(main)).along(main.left());
                let way = Way::pays_either_way(pose, CostSlot::Aside, Term::TableAside, &aside);
                let aside = Asked::always(Term::TableAside, pose, With::Piece(main.id), way);
                std::iter::once(aside).chain(wide(pose, main)).collect()
            }
            _ => Vec::new(),
        }
    }
}

/// A table is at most two thirds of its sofa; what stands before a corner sofa has its bay.
fn wide(table: &Pose, sofa: &Pose) -> Option<Asked> {
    let is_long = matches!(sofa.piece.kind.traits().seat, Some(SeatForm::Straight | SeatForm::DayBed));
    let is_straight = sofa.hand.is_none() && is_long;
    let over = table.width().plus(&sofa.width(), -SHARE_OF_SOFA);
    let way = Way::pays(table, CostSlot::Other, Term::TableWide, &over);
    is_straight.then(|| Asked::always(Term::TableWide, table, With::Piece(sofa.id), way))
}

/// From a fire that is wished for, where the seat faces it or is square to it.
fn far_from_fire(context: &TermContext<'_>, main: &Pose) -> Option<Asked> {
    let brief = context.room.brief;
    let is_fire = |item: &WallItem| matches!(item.kind, ItemKind::Fireplace(_));
    let (id, _) = brief.room.items().find(|(_, item)| is_fire(item))?;
    let WallPlace { left, inward, .. } = context.room.site.place_of(brief, id)?;
    let front = main.middle_of_back().moved(main.stand.facing, &main.depth());
    let off = front.along(inward).shifted(-left.dot(inward));
    let way = Way::pays(main, CostSlot::Near, Term::FireFar, &off);
    brief.wishes.are_for_the_fire().then(|| Asked::always(Term::FireFar, main, With::Item(id), way))
}

/// The fire, or the widest liked window, that the main seat faces: off its axis.
fn focus(context: &TermContext<'_>, main: &Pose) -> Option<Asked> {
    let room = &context.room;
    let is_fire_wished = room.brief.wishes.are_for_the_fire();
    let mut best: Option<(Term, f64, Point, With)> = None;
    for (id, item) in room.brief.room.items() {
        let term = match &item.kind {
            ItemKind::Fireplace(_) if is_fire_wished => Term::FireAside,
            ItemKind::Window(window) if window.view == View::Liked => Term::FocusAside,
            ItemKind::Fireplace(_) => Term::FocusAside,
            _ => continue,
        };
        let Some(WallPlace { left, right, inward }) = room.site.mouth_of(room.brief, id) else { continue };
        let width = (right - left).norm();
        let is_more = best.is_none_or(|(other, wide, ..)| (term, width) > (other, wide));
        if face(inward, main.stand.facing) && is_more {
            best = Some((term, width, (left + right) * 0.5, With::Item(id)));
        }
    }
    let (term, _, middle, with) = best?;
    let aside = axis(main).along(main.left()).shifted(-middle.dot(main.left()));
    Some(Asked::always(term, main, with, Way::pays_either_way(main, CostSlot::Aside, term, &aside)))
}
