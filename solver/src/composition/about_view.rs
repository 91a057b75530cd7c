//! Who sits has a liked view before or beside them, and not at their back.

use elbowroom_model::{ItemId, ItemKind, Point, Term, View};

use super::asked::{Asked, Way};
use super::plan_term::{PlanTerm, TermContext};
use crate::arrangement::Role;
use crate::rules::{Pose, RuleContext, With};
use crate::site::WallPlace;

/// A window is behind a seat where the cosine between its inward normal and the way the seat faces is more than this: within
/// 45 degrees of straight back (common practice, no source).
const BEHIND: f64 = std::f64::consts::FRAC_1_SQRT_2;

/// The main seat turns its back on no liked view, nor does a return of it.
#[derive(Debug)]
pub(super) struct AboutView;

impl PlanTerm for AboutView {
    fn alone(&self, context: &TermContext<'_>, pose: &Pose) -> Vec<Asked> {
        if pose.role != Role::MainSeat {
            return Vec::new();
        }
        let room = &context.room;
        let asked = |term: Term, window: ItemId| Asked::always(term, pose, With::Item(window), Way::flat(term));
        let of_main = || {
            let facing = pose.stand.facing;
            let wished = widest_behind(room, facing).filter(|_| room.brief.wishes.are_for_the_view());
            let wished = wished.map(|window| asked(Term::BackToWishedView, window));
            wished.or_else(|| Some(asked(Term::BackToView, liked_behind(room, facing)?)))
        };
        let returns = pose.returns_with_backs();
        let returns =
            returns.filter_map(|(_, facing)| Some(asked(Term::ReturnBackToView, liked_behind(room, facing)?)));
        of_main().into_iter().chain(returns).collect()
    }
}

/// The widest liked window, where it is behind whoever faces that way.
fn widest_behind(room: &RuleContext<'_>, facing: Point) -> Option<ItemId> {
    let liked = liked(room).map(|(id, place)| (id, place.inward, (place.right - place.left).norm()));
    let (id, inward, _) = liked.reduce(|best, next| if next.2 > best.2 { next } else { best })?;
    (inward.dot(facing) > BEHIND).then_some(id)
}

/// The liked windows, each with its place.
fn liked<'a>(room: &'a RuleContext<'_>) -> impl Iterator<Item = (ItemId, WallPlace)> + 'a {
    let is_liked = |kind: &ItemKind| matches!(kind, ItemKind::Window(window) if window.view == View::Liked);
    let liked = room.brief.room.items().filter(move |(_, item)| is_liked(&item.kind));
    liked.filter_map(|(id, _)| Some((id, room.site.place_of(room.brief, id)?)))
}

/// The first liked window behind whoever faces that way; `None` too where they have another before or beside them.
fn liked_behind(room: &RuleContext<'_>, facing: Point) -> Option<ItemId> {
    let mut placed = liked(room).peekable();
    let first = placed.peek().map(|(id, _)| *id);
    first.filter(|_| placed.all(|(_, place)| place.inward.dot(facing) > BEHIND))
}
