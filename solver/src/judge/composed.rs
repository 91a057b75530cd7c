//! What the terms of composition cost a room as it stands: each piece under the one stand that was read off it, at the place
//! and the sizes that it has.

use elbowroom_model::Brief;

use crate::arrangement::Arrangement;
use crate::composition::{Heart, TermContext, TermCost, told};
use crate::layout::{Layout, Placed};
use crate::rules::{Pose, RuleContext, SizeVariables, Variables};
use crate::search::RoomContext;
use crate::site::Site;

/// Every term that costs the room something, what costs most first.
pub(super) fn composed(brief: &Brief, site: &Site, arrangement: &Arrangement, layout: &Layout) -> Vec<TermCost> {
    let RoomContext { walls, variables, .. } = &RoomContext::of(brief, site);
    let screen = arrangement.screen_role();
    let room = RuleContext { brief, site, walls, main_seat: arrangement.main_seat, screen, variables };
    let poses: Vec<Pose> = arrangement
        .standings
        .iter()
        .filter_map(|standing| {
            let (piece, own) = (brief.piece(standing.piece)?, variables.piece(standing.piece)?);
            let stand = standing.stands.first().filter(|_| layout.of(standing.piece).is_some())?;
            Some(Pose::of(piece.clone(), *own, variables.origin, standing, *stand))
        })
        .collect();
    let context = TermContext { room, heart: Heart::of(arrangement, poses.iter()) };
    told(&context, &poses.iter().collect::<Vec<_>>(), &values(variables, layout))
}

/// The values that the variables of a program have in a layout: places and sizes; what is paid follows from them.
fn values(variables: &Variables, layout: &Layout) -> Vec<f64> {
    let mut values = vec![0.0; variables.bounds.len()];
    for placed in &layout.placed {
        let Some(own) = variables.piece(placed.piece) else { continue };
        let from_origin = placed.anchor - variables.origin;
        values[own.across] = from_origin.dot(placed.left());
        values[own.out] = from_origin.dot(placed.facing);
        for (size, SizeVariables { least, up, .. }) in sizes(placed).into_iter().zip(own.sizes()) {
            values[up] = size - least;
        }
    }
    values
}

/// The sizes that a piece has, in the order of its variables.
fn sizes(placed: &Placed) -> Vec<f64> {
    let size = placed.size;
    let all = [Some(size.width), size.return_length, Some(size.depth), size.second_return, size.return_depth];
    all.into_iter().flatten().collect()
}
