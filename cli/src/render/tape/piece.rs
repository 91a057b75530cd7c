//! One piece of the tape sheet: its corners, its strips, its checks, what stands in for its height.

use elbowroom_model::{PieceId, PieceKind, WallId};
use elbowroom_solver::answer::Thing;
use elbowroom_solver::setting_out::{CornerOut, Measures, PieceOut, SettingOut, Side, StandIn};

use super::Laid;
use crate::drawing::Paper;
use crate::render::leaf::{Beside, Block, Grid, Head, Leaf, Picture};
use crate::render::plan;
use crate::words::hung;
use crate::words::tape as words;
use crate::words::turned::{is_turned, turned};

/// How wide and high the diagram of a piece may be, mm.
const DIAGRAM: Paper = Paper { width: 66.0, height: 66.0 };

/// Puts the piece at `place` on the sheet, its corners drawn beside its table.
pub(super) fn put(leaf: &mut Leaf, laid: &Laid<'_>, out: &SettingOut, place: usize) {
    let Some(piece) = out.pieces.get(place) else { return };
    let name = Thing::Piece(piece.piece).name(laid.brief());
    leaf.put(Block::Part(words::piece(place + 1, name)));
    let blocks = told(laid, piece, name);
    let drawn = laid.plan.and_then(|_| plan::corners(laid.shown(), out, place, &DIAGRAM));
    match drawn {
        Some(sheet) => leaf.put(Block::Beside(Beside { picture: Picture { sheet, caption: String::new() }, blocks })),
        None => blocks.into_iter().for_each(|block| leaf.put(block)),
    }
}

/// What is said of a piece.
fn told(laid: &Laid<'_>, piece: &PieceOut, name: &str) -> Vec<Block> {
    let mut blocks = vec![Block::Words(words::label(name, &size(laid, piece.piece)))];
    blocks.extend(turned(laid.brief(), laid.option, piece.piece).map(|turned| Block::Words(is_turned(&turned))));
    for run in runs(piece) {
        blocks.push(Block::Words(from_where(laid, &piece.corners[run.start])));
        blocks.push(Block::Grid(grid(laid, piece, run)));
    }
    if crossed_sharply(piece) {
        blocks.push(Block::Words(words::SHARP.to_owned()));
    }
    let checks: Vec<String> =
        piece.checks.iter().map(|(one, other, length)| words::check(one + 1, other + 1, &laid.tape(*length))).collect();
    blocks.push(Block::Words(words::checks(&checks)));
    blocks.push(Block::Words(height(laid, piece)));
    blocks
}

/// `280 x 230 x 105 cm`.
fn size(laid: &Laid<'_>, piece: PieceId) -> String {
    let Some(sizes) = laid.option.sizes_of(piece) else { return String::new() };
    let told = crate::words::size::size(sizes.planned(), " x ", |length| laid.bare(length));
    format!("{told} {}", crate::words::lengths::sign(crate::words::lengths::shop_unit(laid.units())))
}

/// Corners in a row that are found in the same way, by their places.
fn runs(piece: &PieceOut) -> Vec<std::ops::Range<usize>> {
    let mut runs: Vec<std::ops::Range<usize>> = Vec::new();
    for place in 0..piece.corners.len() {
        match runs.last_mut() {
            Some(run) if way(&piece.corners[run.start]) == way(&piece.corners[place]) => run.end = place + 1,
            _ => runs.push(place..place + 1),
        }
    }
    runs
}

/// How a corner is found, by what the head of its table says.
fn way(corner: &CornerOut) -> (Option<WallId>, usize, usize, bool) {
    match corner.measures {
        Measures::Offsets { from, wall, .. } => (Some(wall), from, 0, false),
        Measures::Crossing { first, second, side, .. } => (None, first.0, second.0, side == Side::Left),
    }
}

/// Where a tape starts, and how its two lengths find a corner.
pub(super) fn from_where(laid: &Laid<'_>, corner: &CornerOut) -> String {
    match corner.measures {
        Measures::Offsets { from, wall, .. } => {
            words::along(from, laid.brief().room.wall(wall).map_or("", |wall| wall.name.as_str()))
        }
        Measures::Crossing { first, second, side, .. } => words::crossing(first.0, second.0, side == Side::Left),
    }
}

fn grid(laid: &Laid<'_>, piece: &PieceOut, run: std::ops::Range<usize>) -> Grid {
    let mut heads = vec![Head::words(words::CORNER)];
    heads.extend(heads_of(&piece.corners[run.start]));
    heads.extend([Head::words(words::STRIP), Head::figures(words::STROKE), Head::figures(words::CUT)]);
    let count = piece.corners.len();
    let rows = run.map(|place| {
        let mut row = vec![(place + 1).to_string()];
        row.extend(lengths(laid, &piece.corners[place]));
        row.push(words::strip(place + 1, (place + 1) % count + 1));
        let strip = &piece.strips[place];
        row.extend([laid.bare(strip.stroke), laid.bare(strip.cut)]);
        row
    });
    Grid { heads, rows: rows.collect() }
}

/// Over the lengths that find a corner.
pub(super) fn heads_of(corner: &CornerOut) -> Vec<Head> {
    match corner.measures {
        Measures::Offsets { .. } => [words::ALONG, words::OUT].map(Head::figures).into(),
        Measures::Crossing { first, second, .. } => {
            [words::from(first.0), words::from(second.0), words::CROSSING.to_owned()].map(Head::figures).into()
        }
    }
}

/// The lengths that find it.
pub(super) fn lengths(laid: &Laid<'_>, corner: &CornerOut) -> Vec<String> {
    match corner.measures {
        Measures::Offsets { along, out, .. } => vec![laid.bare(along), laid.bare(out)],
        Measures::Crossing { first, second, angle, .. } => {
            vec![laid.bare(first.1), laid.bare(second.1), words::angle(angle)]
        }
    }
}

/// Whether two lengths cross so sharply that the place is unsure.
fn crossed_sharply(piece: &PieceOut) -> bool {
    piece.corners.iter().any(|corner| match corner.measures {
        Measures::Crossing { angle, .. } => !(30.0..=150.0).contains(&angle),
        Measures::Offsets { .. } => false,
    })
}

fn height(laid: &Laid<'_>, piece: &PieceOut) -> String {
    let is_such = |is: fn(PieceKind) -> bool| laid.brief().piece(piece.piece).is_some_and(|piece| is(piece.kind));
    let (has_return, stays_open) = (is_such(PieceKind::has_return), is_such(PieceKind::stays_open));
    let has_second = laid.brief().piece(piece.piece).is_some_and(|piece| piece.second_return.is_some());
    let returns = usize::from(has_return) + usize::from(has_second);
    match piece.stand_in {
        StandIn::Flat if stays_open => words::OPEN_FLOOR.to_owned(),
        StandIn::Flat => words::flat(),
        StandIn::Back { height, both } => words::back(&laid.tape(height), both, returns),
        StandIn::Block { height, screen } => {
            let screen = screen.map(|(width, height)| (laid.tape(width), laid.tape(height)));
            words::block(&laid.tape(height), screen)
        }
        StandIn::Hung { lower, middle, upper } => {
            hung::to_be_marked([lower, middle, upper].map(|height| laid.tape(height)).each_ref().map(String::as_str))
        }
        StandIn::Upright { height } => words::upright(&laid.tape(height)),
    }
}
