//! What stands free earns the floor behind it: it is lost to the room, but where people dine there, work at a counter, or pass.
//! (That they pass is seen when a plan stands: `criteria`.)

use elbowroom_model::{Piece, PieceId, Point, Price, Term, tables};

use super::about_fire::fires_beside;
use super::asked::{Asked, Way};
use super::plan_term::{PlanTerm, TermContext};
use crate::arrangement::Role;
use crate::rules::{CostSlot, Linear, Pose, RuleContext, With};

/// Floor before a used edge of this length at least is a place of its own, mm: two cupboards (common practice, no source).
const KITCHEN: f64 = 1200.0;

/// A table is behind a seat where so much of it is, mm: a place at it.
const OVERLAPS: f64 = 600.0;

/// An edge is used from the floor behind a back where the cosine between the ways that the two look is more than this.
const TOWARDS: f64 = 0.9;

/// Floor behind the main seat and its returns.
#[derive(Debug)]
pub(super) struct FloorBehind;

impl PlanTerm for FloorBehind {
    fn alone(&self, context: &TermContext<'_>, pose: &Pose) -> Vec<Asked> {
        let room = &context.room;
        if pose.role != Role::MainSeat {
            return Vec::new();
        }
        let is_free = pose.wall().is_none() && dining_that_stands(context).is_none();
        let main = is_free.then(|| Asked::always(term(room, pose), pose, With::Itself, lost(room, pose)));
        main.into_iter().chain(behind_returns(room, pose)).collect()
    }

    fn between(&self, context: &TermContext<'_>, first: &Pose, second: &Pose) -> Vec<Asked> {
        [(first, second), (second, first)]
            .into_iter()
            .filter_map(|(main, table)| beside_dining(context, main, table))
            .collect()
    }
}

/// The first dining table that must stand: where the room has one, it is there or elsewhere.
fn dining_that_stands(context: &TermContext<'_>) -> Option<PieceId> {
    let dining = |piece: &Piece| piece.kind.is_dined_at() && piece.needed;
    context.room.brief.pieces().find(|(_, piece)| dining(piece)).map(|(id, _)| id)
}

/// Nothing is lost where one dines behind the seat, and less where one dines aside of that, at the same end of the room.
fn beside_dining(context: &TermContext<'_>, main: &Pose, table: &Pose) -> Option<Asked> {
    let is_asked =
        main.role == Role::MainSeat && main.wall().is_none() && dining_that_stands(context) == Some(table.id);
    let (facing, left) = (main.stand.facing, main.stand.facing.left());
    let beyond = |ahead: &Pose, behind: &Pose, towards: Point| {
        ahead.main().furthest(towards).from(behind.main().furthest(-towards)).along(towards)
    };
    let behind = vec![
        beyond(table, main, facing).at_most(0.0),
        beyond(table, main, left).at_least(OVERLAPS),
        beyond(main, table, left).at_least(OVERLAPS),
    ];
    let at_that_end =
        Way::free(behind[..1].to_vec()).and(lost_at(&context.room, main, tables::price(Term::FloorToDining)));
    let ways = vec![Way::free(behind), at_that_end, lost(&context.room, main)];
    is_asked.then(|| Asked::one_of(term(&context.room, main), main, With::Itself, ways))
}

fn term(room: &RuleContext<'_>, main: &Pose) -> Term {
    if gathers_at_fire(room, main.stand.facing) { Term::FloorBehindFireside } else { Term::FloorBehind }
}

/// By its area.
fn lost(room: &RuleContext<'_>, pose: &Pose) -> Way {
    lost_at(room, pose, tables::price(term(room, pose)))
}

fn lost_at(room: &RuleContext<'_>, pose: &Pose, price: Price) -> Way {
    let facing = pose.stand.facing;
    let area = lost_behind(room, &pose.anchor.along(facing), facing, pose.piece.width.usual);
    Way::pays_by(pose, CostSlot::Other, price, &area)
}

/// Whether a seat that looks so has a fire beside it that is wished for: seats gather about that in the middle of the floor.
fn gathers_at_fire(room: &RuleContext<'_>, facing: Point) -> bool {
    room.brief.wishes.are_for_the_fire() && fires_beside(room, facing).next().is_some()
}

/// A return with a back that stands off the wall behind it earns that floor too.
fn behind_returns(room: &RuleContext<'_>, pose: &Pose) -> Vec<Asked> {
    let piece = &pose.piece;
    let lengths = [piece.return_length.filter(|_| !piece.chaise), piece.second_return];
    // Each pays by a variable that a main seat has no other use for.
    let slots = [CostSlot::Along, CostSlot::TwinAside];
    let each = pose.returns().zip(lengths).zip(slots).filter_map(|(((part, facing), length), slot)| {
        let wide = (length?.usual - piece.depth.usual).max(0.0);
        let back = part.furthest(-facing).along(facing);
        let lost = Way::pays(pose, slot, Term::ReturnBehind, &lost_behind(room, &back, facing, wide));
        Some(Asked::always(Term::ReturnBehind, pose, With::Itself, lost))
    });
    each.collect()
}

/// Floor between a back, as far along the way that it faces, and the end of the room there or the place of who works at a
/// counter, mm2.
fn lost_behind(room: &RuleContext<'_>, back: &Linear, facing: Point, wide: f64) -> Linear {
    let walls = room.site.walls.iter().map(|wall| wall.start.dot(facing)).fold(f64::INFINITY, f64::min);
    let used =
        room.brief.room.used_floors().filter(|(_, floor)| floor.out.dot(facing) > TOWARDS && floor.length() >= KITCHEN);
    let end = used.map(|(_, floor)| floor.middle().dot(facing) + floor.depth).fold(walls, f64::max);
    Linear::default().plus(&back.clone().shifted(-end), wide)
}
