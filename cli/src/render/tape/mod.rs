//! The tape sheet of an option: how it is marked on the floor full size, in the order in which it is done.

mod circle;
mod laid;
mod piece;

pub(crate) use laid::Laid;

use elbowroom_model::Unit;
use elbowroom_solver::answer::Thing;
use elbowroom_solver::setting_out::{Mark, OVERLAP, SettingOut, WalkStep, setting_out};

use crate::drawing::{Paper, Sheet};
use crate::render::leaf::{Block, Grid, Head, Leaf, Picture};
use crate::render::plan::{self, Drawn};
use crate::words::answer::{all_eased, notices_of};
use crate::words::lengths::{shop_unit, sign, taped};
use crate::words::narrowest::narrow_doorway;
use crate::words::tape as words;
use crate::words::walk as prose;

/// How wide and high the small plan may be on paper: as wide as a column of upright A4 or Letter, and so high that the points
/// stand below it on the same page.
pub(crate) const ON_PAPER: Paper = Paper { width: 180.0, height: 135.0 };
/// The same in a page: its letters read at the width of a phone.
pub(crate) const IN_PAGE: Paper = Paper { width: 118.0, height: 118.0 };

/// Length of a roll of low-tack tape as it is usually sold, mm (common practice, no source).
pub(crate) const fn usual_roll(units: Unit) -> f64 {
    match units {
        Unit::Inch | Unit::Foot => 180.0 * 304.8,
        Unit::Millimetre | Unit::Centimetre | Unit::Metre => 50_000.0,
    }
}

/// The unit that lengths of tape are told in.
const fn long_unit(units: Unit) -> Unit {
    match units {
        Unit::Inch | Unit::Foot => Unit::Foot,
        Unit::Millimetre | Unit::Centimetre | Unit::Metre => Unit::Metre,
    }
}

/// The sheet.
pub(crate) fn leaf(laid: &Laid<'_>) -> Leaf {
    let out = setting_out(laid.brief(), laid.option, laid.roll);
    let mut leaf = Leaf::new(words::title(&laid.brief().room.name));
    for line in crate::words::order::lines(laid.brief()) {
        leaf.put(Block::Words(line));
    }
    leaf.put(Block::Strong(words::option(laid.brief(), laid.option, laid.answer.options.len())));
    leaf.put(Block::Words(words::units(sign(shop_unit(laid.units())))));
    leaf.put(Block::Heading(words::READY.to_owned()));
    leaf.put(Block::Ticks(ready(laid, &out)));
    room(&mut leaf, laid, &out);
    leaf.put(Block::Heading(words::STROKES.to_owned()));
    leaf.put(Block::Words(words::ORDER.to_owned()));
    for place in 0..out.pieces.len() {
        piece::put(&mut leaf, laid, &out, place);
    }
    if let Some(circle) = &out.circle {
        circle::put(&mut leaf, laid, circle);
    }
    leaf.put(Block::Heading(prose::WALK.to_owned()));
    leaf.put(Block::Ticks(walk(laid, &out.walk)));
    leaf.put(Block::Heading(words::CAUTIONS.to_owned()));
    let cautions = words::CAUTIONS_OF_TAPE.iter().map(|caution| (*caution).to_owned());
    let eased = all_eased(laid.brief(), laid.option).into_iter();
    leaf.put(Block::List(eased.chain(cautions).chain(notices_of(laid.answer, &[laid.option])).collect()));
    leaf
}

/// What to have at hand.
fn ready(laid: &Laid<'_>, out: &SettingOut) -> Vec<String> {
    let [total, roll] = [out.tape.total, out.tape.roll].map(|length| taped(long_unit(laid.units()), length));
    let mut ready = vec![words::tape(&total, out.tape.rolls, &roll, &laid.tape(OVERLAP))];
    ready.extend(words::TOOLS.iter().map(|tool| (*tool).to_owned()));
    ready
}

/// The small plan with the letters and numbers that the measures speak of.
fn plan(laid: &Laid<'_>, out: &SettingOut, widest: &Paper) -> Picture {
    let (paper, Drawn { marks, key, .. }) = plan::to_set_out(laid.shown(), out, widest);
    let numbers: Vec<String> = key.iter().enumerate().map(|(place, it)| words::numbered(place + 1, it)).collect();
    let caption = words::plan(&numbers);
    let title = words::title(&laid.brief().room.name);
    Picture { sheet: Sheet { paper, title, description: caption.clone(), marks }, caption }
}

/// The points, and the distances that show that the room is as measured.
fn room(leaf: &mut Leaf, laid: &Laid<'_>, out: &SettingOut) {
    leaf.put(Block::Heading(words::POINTS.to_owned()));
    if let Some(widest) = &laid.plan {
        leaf.put(Block::Drawing(plan(laid, out, widest)));
    }
    let mut points = Grid { heads: vec![Head::words(""), Head::words("")], rows: Vec::new() };
    for (place, point) in out.points.iter().enumerate() {
        let name = |thing: Thing| thing.name(laid.brief());
        let told = match point.mark {
            Mark::Corner { ends, starts } => words::corner(name(Thing::Wall(ends)), name(Thing::Wall(starts))),
            Mark::Jamb { item, left, wall, along } => {
                let (item, along, letter) = (name(Thing::Item(item)), laid.tape(along), words::letter(wall.0));
                words::jamb(item, left, &along, &letter, name(Thing::Wall(wall)))
            }
        };
        points.rows.push(vec![words::letter(place), told]);
    }
    leaf.put(Block::Grid(points));
    leaf.put(Block::Heading(words::CHECK.to_owned()));
    let heads = vec![Head::words(words::FROM_TO), Head::figures(sign(shop_unit(laid.units()))), Head::words("")];
    let mut checks = Grid { heads, rows: Vec::new() };
    for (wall, check) in laid.brief().room.walls.iter().zip(&out.walls) {
        checks.rows.push(vec![words::pair(check.from, check.to), laid.bare(check.length), wall.name.clone()]);
    }
    for check in &out.diagonals {
        let row = vec![words::pair(check.from, check.to), laid.bare(check.length), words::DIAGONAL.to_owned()];
        checks.rows.push(row);
    }
    leaf.put(Block::Grid(checks));
    let lengths: Vec<f64> = out.diagonals.iter().map(|check| check.length).collect();
    let (walls, within) = (out.walls.len(), laid.tape(laid.brief().room.measured_within));
    leaf.put(Block::Words(words::squareness(&lengths, walls, &within, |length| laid.tape(length))));
}

fn walk(laid: &Laid<'_>, steps: &[WalkStep]) -> Vec<String> {
    let name = |thing: Thing| thing.name(laid.brief());
    let step = |step: &WalkStep| match *step {
        WalkStep::OpenDoor { door } => prose::open(name(Thing::Item(door))),
        WalkStep::Way { from, to, needs, width, between } => {
            let doorway = narrow_doorway(laid.brief(), [from, to], width).filter(|(_, own)| *own < width);
            let doorway = doorway.map(|(door, own)| (door, laid.tape(own)));
            let [needs, width] = [needs, width].map(|length| laid.tape(length));
            prose::way([from, to].map(name), [&needs, &width], between.map(|two| two.map(name)), doorway)
        }
        WalkStep::Turn { diameter } => prose::turn(&laid.tape(diameter)),
        WalkStep::Front { piece, clear } => {
            laid.brief().piece(piece).map_or_else(String::new, |it| prose::front(&it.name, it.kind, &laid.tape(clear)))
        }
        WalkStep::FeetToTable { seat, table, clear } => prose::feet(name(seat), name(table), &laid.tape(clear)),
        WalkStep::Screen { seat, unit, clear } => prose::screen(name(seat), name(unit), &laid.tape(clear)),
    };
    steps.iter().map(step).chain([prose::LIVE.to_owned()]).collect()
}

#[cfg(test)]
mod tests;
