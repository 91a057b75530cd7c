//! From a brief and an option of its result to the scene that is judged.

use elbowroom_model::{Brief, Clearance, ItemKind, Point, Stance, WallItem};
use serde_json::Value;

use crate::support::checker::plane::{P, Polygon, add, counter_clockwise, length, minus};

use super::room::{Block, Doorway, Room};
use super::standing::{Sizes, Standing};
use super::{Kept, Scene};

/// How far the facing of the main seat may differ from the arrangement's in the result, as a distance of unit vectors.
const SAME_WAY: f64 = 0.05;

impl Scene {
    /// The scene of an option; a complaint where its fields do not give one.
    pub(crate) fn of(brief: &Brief, option: &Value) -> Result<Self, String> {
        let pieces = option["pieces"].as_array().ok_or("an option has no pieces")?;
        let pieces = pieces.iter().map(|piece| standing(brief, piece)).collect::<Result<Vec<_>, _>>()?;
        let main = main(&pieces, &option["choices"]);
        let kept = Kept {
            seat_to_table: brief.rules.get(Clearance::SeatToTable),
            walkway: brief.rules.get(Clearance::Walkway),
        };
        Ok(Self { room: room(brief), kept, pieces, main })
    }
}

/// The seat that the arrangement is named after; of several a corner sofa, then a sofa, then the widest.
fn main(pieces: &[Standing], choices: &Value) -> Option<usize> {
    let facing = choices["facing"].as_f64().map(way);
    let is_named = |piece: &Standing| {
        let same_way = facing.is_some_and(|facing| length(minus(facing, piece.facing)) < SAME_WAY);
        same_way && piece.at_wall.as_deref() == choices["seat_back"].as_str()
    };
    let rank = |piece: &Standing| (is_named(piece), piece.kind == "corner-sofa", piece.kind == "sofa");
    let seats = pieces.iter().enumerate().filter(|(_, piece)| piece.is_seat());
    let best = seats.max_by(|(_, one), (_, other)| {
        rank(one).cmp(&rank(other)).then(one.sizes().width.total_cmp(&other.sizes().width))
    });
    best.map(|(place, _)| place)
}

fn way(degrees: f64) -> P {
    [degrees.to_radians().cos(), degrees.to_radians().sin()]
}

fn standing(brief: &Brief, value: &Value) -> Result<Standing, String> {
    let name = value["name"].as_str().ok_or("a piece has no name")?;
    let fault = |what: &str| format!("{name}: {what}");
    let place = |value: &Value| Some([value[0].as_f64()?, value[1].as_f64()?]);
    let part = |value: &Value| value.as_array()?.iter().map(place).collect::<Option<Polygon>>();
    let parts = value["parts"].as_array().and_then(|parts| parts.iter().map(part).collect::<Option<Vec<_>>>());
    let parts = parts.filter(|parts| !parts.is_empty()).ok_or_else(|| fault("has no parts"))?;
    let least = |dimension: &str| value["range"][dimension]["least"].as_f64().unwrap_or(0.0);
    let asked = brief.pieces.iter().find(|piece| piece.name == name);
    Ok(Standing {
        name: name.to_owned(),
        kind: value["kind"].as_str().ok_or_else(|| fault("has no kind"))?.to_owned(),
        parts: parts.into_iter().map(counter_clockwise).collect(),
        facing: way(value["facing"].as_f64().ok_or_else(|| fault("has no facing"))?),
        height: value["height"].as_f64().ok_or_else(|| fault("has no height"))?,
        at_wall: value["at_wall"].as_str().map(str::to_owned),
        chaise: asked.is_some_and(|piece| piece.chaise),
        least: Sizes { width: least("width"), depth: least("depth"), run: least("return") },
    })
}

fn xy(point: Point) -> P {
    [point.x, point.y]
}

fn room(brief: &Brief) -> Room {
    let mut room = Room {
        outline: counter_clockwise(brief.room.outline().into_iter().map(xy).collect()),
        doorways: Vec::new(),
        windows: Vec::new(),
        heaters: Vec::new(),
        hearths: Vec::new(),
        blocks: Vec::new(),
    };
    for item in &brief.room.items {
        hang(&mut room, brief, item);
    }
    for fixed in &brief.room.fixed {
        let shape = counter_clockwise(fixed.corners.iter().map(|&corner| xy(corner)).collect());
        let height = fixed.height.unwrap_or(f64::INFINITY);
        room.blocks.push(Block { name: fixed.name.clone(), shape, height });
    }
    room
}

/// Adds what a wall holds.
fn hang(room: &mut Room, brief: &Brief, item: &WallItem) {
    let (Some(wall), Some(ends)) = (brief.room.wall(item.wall), brief.room.ends(item)) else { return };
    let (ends, inward) = ([xy(ends.0), xy(ends.1)], xy(wall.inward()));
    let body = |depth: f64| {
        let [from, to] = ends;
        counter_clockwise(vec![from, to, add(to, inward, depth), add(from, inward, depth)])
    };
    let doorway = |may_be_backed: bool| Doorway { name: item.name.clone(), ends, inward, may_be_backed };
    match &item.kind {
        ItemKind::Window(_) => room.windows.push(ends),
        ItemKind::Door(_) => room.doorways.push(doorway(false)),
        ItemKind::Opening(opening) => room.doorways.push(doorway(opening.stance != Stance::Open)),
        ItemKind::Radiator(radiator) => room.heaters.push(body(radiator.depth)),
        ItemKind::Fireplace(fire) => {
            room.heaters.push(body(fire.depth));
            let [from, to] = ends;
            room.hearths.push(add(add(from, minus(to, from), 0.5), inward, fire.depth));
            let height = fire.height.unwrap_or(f64::INFINITY);
            room.blocks.push(Block { name: item.name.clone(), shape: body(fire.depth), height });
        }
        _ => {}
    }
}
