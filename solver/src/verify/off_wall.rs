//! A piece stands at no wall that is kept free of its kind. At a wall it has its back parallel to it, its off-wall gap or more from it and at most that gap and a foot, and
//! all but 50 mm of its width before it (where solid wall is asked for: what that rule says).

use elbowroom_model::{Clearance, Rule};

use super::breach::{Breach, Wrong};
use super::checked_layout::{CheckedLayout, InPlace, common};
use super::hung;
use super::tolerance::SLACK;
use crate::answer::Thing;

/// How much farther off its wall a piece may stand, mm: a foot, where one walks or cleans behind (common practice).
const FOOT: f64 = 304.8;

/// How much of its width a piece may have past the ends of its wall, mm (common practice).
const PAST_ENDS: f64 = 50.0;

pub(super) fn breaches(scene: &CheckedLayout<'_>) -> Vec<Breach> {
    scene.pieces.iter().filter_map(|piece| breach(scene, piece)).collect()
}

fn breach(scene: &CheckedLayout<'_>, piece: &InPlace<'_>) -> Option<Breach> {
    let Some(id) = piece.placed.at_wall else {
        let kind = piece.piece.kind;
        return (kind.is_storage() || kind.carries_screen())
            .then(|| Breach::new(RULE, Wrong::NoWall, &[piece.thing()], 0.0));
    };
    let wall = scene.brief.room.wall(id)?;
    let between = [piece.thing(), Thing::Wall(id)];
    if scene.brief.room.keeps_free(id, piece.piece.kind) {
        return Some(Breach::new(Rule::KeepFree, Wrong::AtKeptFree, &between, 0.0));
    }
    let tell = |short_by: f64, wrong: Wrong| Some(Breach::new(RULE, wrong, &between, short_by));
    let (inward, along) = (wall.inward(), wall.along());
    let line = wall.start.dot(inward) + scene.brief.room.measured_within;
    let back = back(piece);
    let [first, second] = back.map(|corner| corner.dot(inward) - line);
    let slant = (first - second).abs();
    if slant > SLACK || piece.placed.facing.dot(inward) < 0.0 {
        return tell(slant, Wrong::Askew);
    }
    let nearest = first.min(second);
    if piece.piece.kind.hangs() {
        let off = hung::backs(scene, piece, id).into_iter().map(|back| nearest - back);
        let off = off.min_by(|one, other| one.abs().total_cmp(&other.abs())).unwrap_or(nearest);
        if off.abs() > SLACK {
            return tell(off.abs(), if off < 0.0 { Wrong::TooNear } else { Wrong::TooFarOff });
        }
    }
    let gap = piece.piece.off_wall;
    if nearest < gap - SLACK {
        return tell(gap - nearest, Wrong::TooNear);
    }
    if nearest > gap + FOOT + SLACK && !piece.piece.kind.hangs() {
        return tell(nearest - gap - FOOT, Wrong::TooFarOff);
    }
    let (from, to) = (wall.start.dot(along), wall.end.dot(along));
    let [first, second] = back.map(|corner| corner.dot(along));
    let before = common((from, to), (first.min(second), first.max(second))).max(0.0);
    let past = piece.placed.size.width - before - PAST_ENDS;
    // Where the rule of solid wall is in force it says how far.
    if past > SLACK && scene.rule(Clearance::SolidWall) <= 0.0 { tell(past, Wrong::PastEnd) } else { None }
}

const RULE: Rule = Rule::OffWall;

/// Both ends of its back edge (of a corner sofa: of the main run's).
fn back(piece: &InPlace<'_>) -> [elbowroom_model::Point; 2] {
    let half = piece.placed.along() * (piece.placed.size.width / 2.0);
    let middle = piece.placed.back_middle();
    [middle - half, middle + half]
}
