//! A leaf that swings into what stands for good: a counter, a pillar, a radiator. Told and not refused: files of the format
//! have such rooms, and people live with a door that opens by half.

use super::swing::{Leaf, Stretch};
use crate::article::the;
use crate::opening::{Hinge, ItemKind};
use crate::point::Point;
use crate::report::Report;
use crate::ring;
use crate::room::{Fixed, Wall, WallItem};

/// What a leaf may swing into.
#[derive(Debug)]
pub(crate) struct Body {
    name: String,
    edges: Vec<Stretch>,
}

/// All that stands on the floor for good, at walls and off them.
pub(crate) fn bodies<'a>(items: impl Iterator<Item = &'a WallItem>, walls: &[Wall], fixed: &[Fixed]) -> Vec<Body> {
    let at_walls = items.filter_map(|item| Some((item.name.clone(), front(item, walls)?)));
    let off_walls = fixed.iter().filter(|thing| thing.step().is_none());
    let off_walls = off_walls.map(|thing| (thing.name.clone(), thing.corners.clone()));
    let body = |(name, corners): (String, Vec<Point>)| Body {
        name,
        edges: ring::legs(&corners).map(|(from, to)| [from, to]).collect(),
    };
    at_walls.chain(off_walls).map(body).collect()
}

/// The corners of what juts out of a wall.
fn front(item: &WallItem, walls: &[Wall]) -> Option<Vec<Point>> {
    let depth = match &item.kind {
        ItemKind::Radiator(radiator) => radiator.depth,
        ItemKind::Fireplace(fire) => fire.depth,
        ItemKind::Window(_) | ItemKind::Door(_) | ItemKind::Opening(_) | ItemKind::Socket(_) => return None,
    };
    let wall = walls.get(item.wall.0)?;
    let (left, right, out) = (wall.point_at(item.at), wall.point_at(item.at + item.width), wall.inward() * depth);
    Some(vec![left, right, right + out, left + out])
}

/// Tells the one that stops the leaf first, how far it opens for that, and what to write where it is hung otherwise.
pub(crate) fn tell(leaf: &Leaf<'_>, bodies: &[Body], report: &mut Report<'_>) {
    let Some(hinge) = leaf.swings_about() else { return };
    let hits = bodies.iter().filter_map(|body| Some((body, leaf.stopped(hinge, &body.edges)?)));
    let Some((body, stopped)) = hits.min_by(|one, other| one.1.at.total_cmp(&other.1.at)) else { return };
    let other = match hinge {
        Hinge::Left => Hinge::Right,
        Hinge::Right => Hinge::Left,
    };
    let is_free = leaf.is_free_of_walls(other) && bodies.iter().all(|body| leaf.stopped(other, &body.edges).is_none());
    let hung = if other == Hinge::Left { "`hinge: left`" } else { "`hinge: right`" };
    let ways: Vec<String> = leaf
        .opens_only_to(stopped)
        .into_iter()
        .chain(is_free.then(|| hung.to_owned()))
        .chain(["`swings: out`".to_owned(), "`swings: slides`".to_owned()])
        .collect();
    let told = leaf.told(&the(&body.name), stopped, report);
    report.notice(format!(
        "{told} Check where the file has {}; if the door is made otherwise, write {}.",
        the(&body.name),
        ways.join(" or ")
    ));
}
