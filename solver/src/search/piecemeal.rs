//! Where the nodes are used up: what must stand first, then one piece more at a time.
//!
//! A search for all pieces looks where most is promised, with every piece in; where they do not all fit it may end before it
//! has tried with fewer.

use elbowroom_model::Brief;

use super::{Aim, Effort, Found, RoomGround, Searched, search_once};
use crate::arrangement::Arrangement;
use crate::routes::Floor;

/// Whether a search was cut short and leaves out a piece, or has no layout at all.
pub(super) fn is_worth_it(brief: &Brief, searched: &Searched) -> bool {
    match &searched.found {
        Some(found) => !found.is_proven() && found.layout.placed.len() < brief.pieces.len(),
        None => !searched.is_complete,
    }
}

/// What `before` found with each piece added that finds a place beside what stands, the one that counts most first. The
/// bound is still that of all pieces.
pub(super) fn search_piecemeal(
    room: &RoomGround<'_>,
    floor: &Floor,
    arrangement: &Arrangement,
    effort: Effort<'_>,
    before: Searched,
) -> Searched {
    let brief = room.brief;
    let rest = optional(room);
    let mut standing = match &before.found {
        Some(found) => found.layout.placed.iter().map(|placed| placed.piece).collect(),
        None => (0..brief.pieces.len()).filter(|piece| brief.pieces[*piece].needed).collect::<Vec<usize>>(),
    };
    let nodes = effort.nodes / (rest.len() + 1);
    let bound = before.found.as_ref().map_or(before.unseen, |found| found.bound);
    let mut searched = Searched { is_complete: false, ..before };
    let with = |pieces: &[usize], so_far: &mut Searched| -> bool {
        let to_beat = so_far.found.as_ref().map_or(effort.to_beat, |found| found.objective);
        let more = search_once(room, floor, arrangement, Effort { aim: Aim::These(pieces), to_beat, nodes, ..effort });
        so_far.take_work_of(&more);
        for (cause, count) in more.blame {
            *so_far.blame.entry(cause).or_default() += count;
        }
        let is_better = more.found.is_some();
        if let Some(found) = more.found {
            so_far.found = Some(Found { bound: found.bound.max(bound), ..found });
        }
        is_better
    };
    if searched.found.is_none() && !with(&standing, &mut searched) {
        return searched;
    }
    for piece in rest {
        let earlier_twin = |other: &usize| brief.pieces[piece].is_twin_of(&brief.pieces[*other]);
        // Of twins the first stand: where one found no place, neither does the next.
        if standing.contains(&piece) || (0..piece).filter(earlier_twin).any(|twin| !standing.contains(&twin)) {
            continue;
        }
        standing.push(piece);
        if !with(&standing, &mut searched) {
            standing.pop();
        }
    }
    searched
}

/// The pieces that need not stand, what counts most by standing first.
fn optional(room: &RoomGround<'_>) -> Vec<usize> {
    let presence = |piece: &usize| room.variables.pieces[*piece].presence;
    let mut found: Vec<usize> =
        (0..room.brief.pieces.len()).filter(|piece| !room.brief.pieces[*piece].needed).collect();
    found.sort_by(|one, other| presence(other).total_cmp(&presence(one)));
    found
}
