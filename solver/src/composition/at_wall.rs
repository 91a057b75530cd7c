//! What stands at a wall: drawn up to its gap, and amid the longest stretch that is free, storage amid it or snug at an end, a
//! corner sofa amid it or in its corner.

use elbowroom_model::{Brief, Term};

use super::asked::{Asked, Way};
use super::free_stretch::{Stretch, free_stretches};
use super::in_corner::Corner;
use super::plan_term::{PlanTerm, TermContext};
use crate::arrangement::Role;
use crate::rules::held_off::held_off;
use crate::rules::{CostSlot, Linear, Pose, RuleContext, With};
use crate::site::SiteWall;

/// Stretches that differ by less than this are as long as each other, mm: a tape's difference.
const AS_LONG: f64 = 20.0;

/// At its wall, or free.
#[derive(Debug)]
pub(super) struct AtWall;

impl PlanTerm for AtWall {
    fn alone(&self, context: &TermContext<'_>, pose: &Pose) -> Vec<Asked> {
        let room = &context.room;
        let wall = pose.wall().and_then(|id| room.site.wall(id));
        // Floor that stays open has no back to draw up and no place to be amid.
        let Some(wall) = wall.filter(|_| !pose.piece.kind.stays_open()) else { return Vec::new() };
        let with = With::Wall(wall.id);
        let mut found = vec![drawn_up(room, pose, wall)];
        if let Some(term) = term_of_middle(context, pose) {
            found.push(Asked::one_of(term, pose, with, amid(room, pose, wall, term)));
        }
        found
    }
}

/// What it costs to stand off the middle of its wall; `None` where others say where along it stands. A second seat stands by
/// the table and its pair, and a screen on the axis of whoever faces it, wherever that is; but a seat that stands free would
/// slide along the room for nothing, with all that stands about it.
fn term_of_middle(context: &TermContext<'_>, pose: &Pose) -> Option<Term> {
    if pose.role.is_screen() {
        let is_free = context.heart.main.is_some_and(|main| main.wall().is_none());
        return is_free.then_some(Term::ScreenOffMiddle);
    }
    (!pose.role.is_second_seat() && !has_company(context.room.brief, pose)).then_some(Term::OffMiddle)
}

/// Whether it is a seat of a group of its own beside others, which place it.
fn has_company(brief: &Brief, pose: &Pose) -> bool {
    let of_group = |piece: &&elbowroom_model::Piece| piece.is_seat_apart() && piece.group == pose.piece.group;
    pose.role == Role::Apart && brief.pieces.iter().filter(of_group).count() > 1
}

/// At its gap; or at what a window, a radiator or a fire behind it makes it keep.
fn drawn_up(room: &RuleContext<'_>, pose: &Pose, wall: &SiteWall) -> Asked {
    let off = pose.anchor.along(wall.inward).shifted(-wall.start.dot(wall.inward));
    let up_to = |gap: f64| Way::pays(pose, CostSlot::OffWall, Term::OffWall, &off.clone().shifted(-gap));
    let middle = pose.middle_of_back().along(wall.along).shifted(-wall.start.dot(wall.along));
    let (low, high) = (middle.clone().plus(&pose.width(), -0.5), middle.plus(&pose.width(), 0.5));
    let gap = pose.piece.off_wall;
    let holders = held_off(room, pose, wall).into_iter().filter(|holder| holder.needs > gap);
    let held = holders.map(|holder| Way::free(holder.is_behind(&low, &high).into()).and(up_to(holder.needs)));
    Asked::always(Term::OffWall, pose, With::Wall(wall.id), up_to(gap)).told_too(held.collect())
}

/// Amid the longest free stretch of its wall, or one as long (alcoves come in pairs); storage and chairs
/// of a group of its own snug at either end of it too, a corner sofa in its corner.
fn amid(room: &RuleContext<'_>, pose: &Pose, wall: &SiteWall, term: Term) -> Vec<Way> {
    let all = free_stretches(room.brief, room.site, wall);
    let longest = all.iter().map(Stretch::length).fold(0.0, f64::max);
    let in_corner = Corner::of(room.site, pose, wall, &all).map(|corner| corner.way(pose, term));
    let as_long = all.iter().filter(|stretch| stretch.length() >= longest - AS_LONG);
    as_long.flat_map(|stretch| amid_one(pose, wall, *stretch, term)).chain(in_corner).collect()
}

fn amid_one(pose: &Pose, wall: &SiteWall, Stretch { low, high }: Stretch, term: Term) -> Vec<Way> {
    let middle = pose.middle_of_back().along(wall.along).shifted(-wall.start.dot(wall.along));
    let off = |off: &Linear| Way::pays_either_way(pose, CostSlot::Middle, term, off);
    let mut ways = vec![off(&middle.clone().shifted(-(low + high) / 2.0))];
    if (!pose.piece.kind.is_seat() || pose.role == Role::Apart) && !pose.role.is_screen() {
        ways.push(off(&middle.clone().plus(&pose.width(), -0.5).shifted(-low)));
        ways.push(off(&middle.plus(&pose.width(), 0.5).shifted(-high)));
    }
    ways
}
