//! Setting out: where each piece stands, as a tape from the walls reads.

use elbowroom_model::{Brief, Point, Room, Wall};
use elbowroom_solver::answer::{OptionPiece, RankedOption};

use crate::text::page::Page;
use crate::text::table::{Stand, Table};
use crate::words::lengths::{shop_unit, sign, taped_bare};
use crate::words::rank as words;
use crate::words::turned::turned;

/// Each piece of `option`, in the file's order; `called`: what the reader knows it by.
pub(in crate::render) fn tell(page: &mut Page, brief: &Brief, option: &RankedOption, called: &str) {
    page.heading(&words::places(called, sign(shop_unit(brief.units))));
    let mut table = Table::new(&[
        ("", Stand::Left),
        ("at", Stand::Left),
        ("from", Stand::Right),
        ("to", Stand::Right),
        ("off it", Stand::Right),
        ("", Stand::Left),
    ]);
    for piece in option.pieces(brief) {
        let turned = turned(brief, option, piece.placed.piece);
        table.row(row(brief, piece, turned));
    }
    page.table(3, &table);
}

/// `turned`: how it is turned, where it is.
fn row(brief: &Brief, piece: OptionPiece<'_>, turned: Option<String>) -> [String; 6] {
    let (room, corners) = (&brief.room, piece.parts().concat());
    let name = piece.piece.name.clone();
    match piece.placed.at_wall.and_then(|wall| room.wall(wall)) {
        Some(wall) => {
            let (from, to) = along(wall, &corners);
            let [from, to, off] = [from, to, off(wall, &corners)].map(|length| taped_bare(brief.units, length));
            [name, wall.name.clone(), from, to, off, String::new()]
        }
        None => {
            let two = two_walls(room, &corners, piece.placed.facing).into_iter();
            let distances: Vec<(String, String)> =
                two.map(|wall| (wall.name.clone(), taped_bare(brief.units, off(wall, &corners)))).collect();
            let nothing = String::new;
            let place: Vec<String> = [words::place_free(&distances)].into_iter().chain(turned).collect();
            [name, words::FREE.to_owned(), nothing(), nothing(), nothing(), place.join("; ")]
        }
    }
}

/// From where to where a piece of these corners stands along a wall, from the wall's left end.
fn along(wall: &Wall, corners: &[Point]) -> (f64, f64) {
    let places = corners.iter().map(|corner| (*corner - wall.start).dot(wall.along()));
    places.fold((f64::INFINITY, f64::NEG_INFINITY), |(from, to), at| (from.min(at), to.max(at)))
}

/// How far the nearest of the corners stands off the line of a wall.
fn off(wall: &Wall, corners: &[Point]) -> f64 {
    corners.iter().map(|corner| (*corner - wall.start).dot(wall.inward())).fold(f64::INFINITY, f64::min)
}

/// Two walls to measure a free-standing piece from: the one most behind it, and the one most to its left; of the walls
/// that it stands before, where there are any.
fn two_walls<'a>(room: &'a Room, corners: &[Point], facing: Point) -> Vec<&'a Wall> {
    let most = |way: Point| {
        let turned = |wall: &Wall| wall.inward().dot(way);
        let fit = |wall: &Wall| is_before(wall, corners) && turned(wall) > std::f64::consts::FRAC_1_SQRT_2;
        room.walls.iter().max_by(|a, b| fit(a).cmp(&fit(b)).then(turned(a).total_cmp(&turned(b))))
    };
    [most(facing), most(-facing.left())].into_iter().flatten().collect()
}

/// Whether a piece of these corners stands before a wall, some of it square before the wall itself.
fn is_before(wall: &Wall, corners: &[Point]) -> bool {
    let (from, to) = along(wall, corners);
    off(wall, corners) >= 0.0 && from < wall.length() && to > 0.0
}
