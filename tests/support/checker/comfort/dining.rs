//! Places at a dining table, a chair's room behind those at its ends.

use elbowroom_model::{Brief, Clearance};

use super::look::Look;
use super::seats::standing;
use super::{Found, figure};
use crate::support::checker::plane::{P, Polygon, add, minus};
use crate::support::checker::room::Ground;
use crate::support::checker::stand::Stand;

const RULE: &str = "dining_places";

pub(super) fn places(brief: &Brief, ground: &Ground, stands: &[Stand<'_>]) -> Vec<Found> {
    let Some(place) = figure(brief, Clearance::DiningPlaces) else { return Vec::new() };
    let mut all = Vec::new();
    for table in stands {
        let Some(seats) = table.piece.seats else { continue };
        let (along, back) = (table.along(), minus([0.0, 0.0], table.facing));
        let corner = |x: f64, y: f64| add(add(table.anchor, along, x), table.facing, y);
        let (half, depth) = (table.width / 2.0, table.depth);
        let mut across = vec![Look::new(corner(-half, depth), corner(half, depth), table.facing)];
        if table.at_wall.is_none() {
            across.push(Look::new(corner(-half, 0.0), corner(half, 0.0), back));
        }
        let end = |x: f64, out: P| Look::new(corner(x, 0.0), corner(x, depth), out);
        let ends = vec![end(-half, minus([0.0, 0.0], along)), end(half, along)];
        let (long, short) = if depth > table.width { (ends, across) } else { (across, ends) };
        let count = |sides: &[Look]| sides.iter().map(|side| ((2.0 * side.half + 0.5) / place).floor()).sum::<f64>();
        let lacking = f64::from(seats) - count(&long);
        if lacking <= 0.0 {
            continue;
        }
        let lacking = (lacking - count(&short)).max(0.0);
        all.push(Found { rule: RULE, between: vec![table.name().to_owned()], given: None, short: lacking * place });
        let behind = if table.piece.passing { Clearance::DiningPassing } else { Clearance::DiningChair };
        let wanted = brief.rules.get(behind);
        for (name, given) in short.iter().flat_map(|side| up_to(ground, stands, table, side)) {
            let between = vec![table.name().to_owned(), name];
            all.push(Found { rule: RULE, between, given: Some(given), short: wanted - given });
        }
    }
    all
}

/// Everything before a side, and how near it comes.
fn up_to(ground: &Ground, stands: &[Stand<'_>], table: &Stand<'_>, side: &Look) -> Vec<(String, f64)> {
    let mut all: Vec<(String, Vec<Polygon>)> =
        standing(ground).into_iter().map(|(name, shape)| (name, vec![shape])).collect();
    let others = stands.iter().filter(|other| !other.is_rug() && other.name() != table.name());
    all.extend(others.map(|other| (other.name().to_owned(), other.parts())));
    let leaves = ground.zones.iter().filter(|zone| zone.rule == "door_swing");
    all.extend(leaves.map(|leaf| (leaf.item.clone(), leaf.shapes.clone())));
    all.into_iter().filter_map(|(name, shapes)| Some((name, side.clear(&shapes)?))).collect()
}
