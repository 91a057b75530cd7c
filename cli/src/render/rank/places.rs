//! Setting out: where each piece stands, as a tape from the walls reads.

use elbowroom_model::{Brief, Point, Room, Wall};
use elbowroom_solver::outcome::{OptionFound, PieceFound};

use crate::text::page::Page;
use crate::text::table::{Stand, Table};
use crate::words::lengths::{shop_unit, sign, taped_bare};
use crate::words::rank as words;

/// Each piece of `option`, in the file's order; `called`: what the reader knows it by.
pub(in crate::render) fn tell(page: &mut Page, brief: &Brief, option: &OptionFound, called: &str) {
    page.heading(&words::places(called, sign(shop_unit(brief.units))));
    let mut table = Table::new(&[
        ("", Stand::Left),
        ("at", Stand::Left),
        ("from", Stand::Right),
        ("to", Stand::Right),
        ("off it", Stand::Right),
        ("", Stand::Left),
    ]);
    for piece in &option.pieces {
        table.row(row(brief, piece));
    }
    page.table(3, &table);
}

fn row(brief: &Brief, piece: &PieceFound) -> [String; 6] {
    let room = &brief.room;
    let at_wall = piece.at_wall.as_ref().and_then(|name| room.walls.iter().find(|wall| wall.name == *name));
    let name = piece.name.clone();
    match at_wall {
        Some(wall) => {
            let (from, to) = along(wall, piece);
            let [from, to, off] = [from, to, off(wall, piece)].map(|length| taped_bare(brief.units, length));
            [name, wall.name.clone(), from, to, off, String::new()]
        }
        None => {
            let two = two_walls(room, piece).into_iter();
            let distances: Vec<(String, String)> =
                two.map(|wall| (wall.name.clone(), taped_bare(brief.units, off(wall, piece)))).collect();
            let nothing = String::new;
            [name, words::FREE.to_owned(), nothing(), nothing(), nothing(), words::place_free(&distances)]
        }
    }
}

fn corners(piece: &PieceFound) -> impl Iterator<Item = Point> {
    piece.parts.iter().flatten().copied()
}

/// From where to where a piece stands along a wall, from the wall's left end.
fn along(wall: &Wall, piece: &PieceFound) -> (f64, f64) {
    let places = corners(piece).map(|corner| (corner - wall.start).dot(wall.along()));
    places.fold((f64::INFINITY, f64::NEG_INFINITY), |(from, to), at| (from.min(at), to.max(at)))
}

/// How far the nearest corner of a piece stands off the line of a wall.
fn off(wall: &Wall, piece: &PieceFound) -> f64 {
    corners(piece).map(|corner| (corner - wall.start).dot(wall.inward())).fold(f64::INFINITY, f64::min)
}

/// Two walls to measure a free-standing piece from: the one most behind it, and the one most to its left; of the walls
/// that it stands before, where there are any.
fn two_walls<'a>(room: &'a Room, piece: &PieceFound) -> Vec<&'a Wall> {
    let ahead = Point::new(piece.facing.to_radians().cos(), piece.facing.to_radians().sin());
    let most = |way: Point| {
        let turned = |wall: &Wall| wall.inward().dot(way);
        let fit = |wall: &Wall| is_before(wall, piece) && turned(wall) > std::f64::consts::FRAC_1_SQRT_2;
        room.walls.iter().max_by(|a, b| fit(a).cmp(&fit(b)).then(turned(a).total_cmp(&turned(b))))
    };
    [most(ahead), most(-ahead.left())].into_iter().flatten().collect()
}

/// Whether a piece stands before a wall, some of it square before the wall itself.
fn is_before(wall: &Wall, piece: &PieceFound) -> bool {
    let (from, to) = along(wall, piece);
    off(wall, piece) >= 0.0 && from < wall.length() && to > 0.0
}
