//! What serves a seat is on one level with it, and so are the seats of a group of its own: on one side of each step in the
//! floor, or past the same end of it.

use elbowroom_model::{PieceId, Point, Rule};

use super::breach::{Breach, Wrong};
use super::checked_layout::{CheckedLayout, InPlace};
use super::tolerance::SLACK;
use crate::geometry::Convex;

/// Breaches between what is to be on one level.
pub(super) fn breaches(scene: &CheckedLayout<'_>) -> Vec<Breach> {
    if scene.checked.steps.is_empty() {
        return Vec::new();
    }
    let mut found = Vec::new();
    for (place, piece) in scene.pieces.iter().enumerate() {
        let served = served(scene, piece).into_iter().map(|seat| parted(scene, piece, seat));
        found.extend(served.min_by(|one, other| missing(one).total_cmp(&missing(other))).flatten());
        let company = scene.pieces[place + 1..].iter().filter(|other| sit_together(piece, other));
        found.extend(company.filter_map(|other| parted(scene, piece, other)));
    }
    found
}

fn missing(breach: &Option<Breach>) -> f64 {
    breach.as_ref().map_or(0.0, |breach| breach.short_by)
}

fn sit_together(one: &InPlace<'_>, other: &InPlace<'_>) -> bool {
    one.piece.is_seat_apart() && other.piece.is_seat_apart() && one.piece.group == other.piece.group
}

/// The seats that the arrangement has a piece serve as it stands: it serves one of them. None where it may stand so by itself.
fn served<'s>(scene: &'s CheckedLayout<'_>, piece: &InPlace<'_>) -> Vec<&'s InPlace<'s>> {
    let standing = scene.arrangement.standings.iter().find(|standing| standing.piece == piece.placed.piece);
    let stands = standing.map_or(&[][..], |standing| &standing.stands).iter();
    let as_it_stands = stands.filter(|stand| stand.at_wall == piece.placed.at_wall);
    let named: Option<Vec<PieceId>> = as_it_stands.map(|stand| stand.relation.seat()).collect();
    let named = named.unwrap_or_default();
    scene.pieces.iter().filter(|other| named.contains(&other.placed.piece)).collect()
}

/// The breach by the step that parts two pieces most.
fn parted(scene: &CheckedLayout<'_>, one: &InPlace<'_>, other: &InPlace<'_>) -> Option<Breach> {
    let past = |(_, step): &(_, Convex)| across(step, one, other);
    let most = scene.checked.steps.iter().map(past).fold(0.0, f64::max);
    let breach = || Breach::new(Rule::Fixed, Wrong::OnOtherLevel, &[one.thing(), other.thing()], most);
    (most > SLACK).then(breach)
}

/// How far two pieces reach past the step, mm, seen from the side, or the end, that is nearest to have both.
fn across(step: &Convex, one: &InPlace<'_>, other: &InPlace<'_>) -> f64 {
    let longest = step.edges().max_by(|one, other| one.length().total_cmp(&other.length()));
    let Some(along) = longest.and_then(|edge| edge.vector().unit()) else { return 0.0 };
    let reach = |towards: Point| {
        let back = one.parts.iter().chain(&other.parts).map(|part| part.support(-towards)).fold(f64::MIN, f64::max);
        step.support(towards) + back
    };
    [along, -along, along.left(), along.right()].map(reach).into_iter().fold(f64::INFINITY, f64::min)
}
