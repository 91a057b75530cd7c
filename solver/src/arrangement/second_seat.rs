//! The second seats: opposite the main one, on its left, on its right.

use elbowroom_model::{Brief, Hand, Pair, PieceId, Point, SecondPlace, Turned};

use super::cast::Cast;
use super::direction::walls_looking;
use super::media::ScreenPlace;
use super::seating::Seating;
use super::stand::{Relation, Role, SecondSeat, Stand};
use super::turn::Turn;
use crate::site::Site;

/// The second seats of one arrangement, row by row.
pub(super) type Company = Vec<Vec<SecondSeat>>;

/// The ways to place the second seats, at most `most` of them, and how many there are.
pub(super) fn companies(
    brief: &Brief,
    cast: &Cast,
    seating: &Seating,
    screen: Option<ScreenPlace>,
    most: usize,
) -> (Vec<Company>, usize) {
    let has_two_returns = brief.piece(cast.main).is_some_and(|seat| seat.second_return.is_some());
    let places = places(seating, screen, has_two_returns);
    let rows: Vec<Vec<Vec<SecondSeat>>> =
        cast.rows.iter().map(|row| placements(brief, cast.main, row, &places)).collect();
    let all = rows.iter().fold(1_usize, |product, row| product.saturating_mul(row.len()));
    let company = |number: usize| {
        let mut rest = number;
        let mut pick = |row: &Vec<Vec<SecondSeat>>| {
            let choice = rest % row.len().max(1);
            rest /= row.len().max(1);
            row.get(choice).cloned().unwrap_or_default()
        };
        rows.iter().map(&mut pick).collect()
    };
    ((0..all.min(most)).map(company).collect(), all)
}

/// Where a second seat makes sense: not before the screen, not with its back to it, not behind a return.
fn places(seating: &Seating, screen: Option<ScreenPlace>, has_two_returns: bool) -> Vec<SecondPlace> {
    let screen = screen.map(|place| place.role);
    let mut places = Vec::with_capacity(3);
    if screen != Some(Role::Screen) {
        places.push(SecondPlace::Opposite);
    }
    for (place, hand) in [(SecondPlace::Left, Hand::Left), (SecondPlace::Right, Hand::Right)] {
        let behind_return = seating.hand == Some(hand) || has_two_returns;
        if !behind_return && screen != Some(Role::ScreenBeside) {
            places.push(place);
        }
    }
    places
}

/// The ways to place the seats of one row, which are alike: as the file pairs them, else together in one place, or shared
/// between both sides.
fn placements(brief: &Brief, main: PieceId, row: &[PieceId], places: &[SecondPlace]) -> Vec<Vec<SecondSeat>> {
    let all = paired(brief, main, row, places).unwrap_or_else(|| unpaired(row.len(), places));
    let hands: Vec<Option<Hand>> = match row.first().and_then(|seat| brief.piece(*seat)) {
        Some(seat) if !seat.hands.is_empty() => seat.hands.iter().copied().map(Some).collect(),
        _ => vec![None],
    };
    let seats = |together: &Vec<SecondPlace>, hand| {
        let seat = |(piece, place): (&PieceId, &SecondPlace)| SecondSeat { piece: *piece, place: *place, hand };
        row.iter().zip(together).map(seat).collect()
    };
    all.iter().flat_map(|together| hands.iter().map(move |hand| seats(together, *hand))).collect()
}

fn unpaired(count: usize, places: &[SecondPlace]) -> Vec<Vec<SecondPlace>> {
    let mut all: Vec<Vec<SecondPlace>> = places.iter().map(|place| vec![*place; count]).collect();
    if count > 1 && places.contains(&SecondPlace::Left) && places.contains(&SecondPlace::Right) {
        all.extend(shared(count, places.contains(&SecondPlace::Opposite)));
    }
    all
}

/// The places of two sofas that face each other or stand at a right angle, one of them the main seat or neither; `None` where
/// the file leaves that to the room.
fn paired(brief: &Brief, main: PieceId, row: &[PieceId], places: &[SecondPlace]) -> Option<Vec<Vec<SecondPlace>>> {
    let seat = row.first().and_then(|seat| brief.piece(*seat))?;
    let has_main = seat.alike.is_some() && brief.piece(main).is_some_and(|main| main.alike == seat.alike);
    let sides = [SecondPlace::Left, SecondPlace::Right];
    let all = match (seat.pair, row.len()) {
        (Pair::Facing, 1) if has_main => vec![vec![SecondPlace::Opposite]],
        (Pair::Corner, 1) if has_main => sides.map(|side| vec![side]).into(),
        (Pair::Facing, 2) => vec![sides.into()],
        (Pair::Corner, 2) => sides.map(|side| vec![side, SecondPlace::Opposite]).into(),
        // A pair of which one is gone is none.
        _ => return None,
    };
    let is_free = |all: &Vec<SecondPlace>| all.iter().all(|place| places.contains(place));
    Some(all.into_iter().filter(is_free).collect())
}

/// As many on the left as on the right; an odd one opposite, or on either side where nothing may stand opposite.
fn shared(count: usize, opposite: bool) -> Vec<Vec<SecondPlace>> {
    let half = count / 2;
    let split = |left: usize, right: usize, rest: usize| {
        let sides = [(SecondPlace::Left, left), (SecondPlace::Right, right), (SecondPlace::Opposite, rest)];
        sides.into_iter().flat_map(|(place, count)| std::iter::repeat_n(place, count)).collect()
    };
    match (count % 2, opposite) {
        (0, _) => vec![split(half, half, 0)],
        (_, true) => vec![split(half, half, 1)],
        (_, false) => vec![split(half + 1, half, 0), split(half, half + 1, 0)],
    }
}

/// The ways a second seat may stand in its place: free, or at each wall that lets it look the right way; and turned from
/// the first of these.
pub(super) fn stands(site: &Site, main: PieceId, seating: &Seating, place: SecondPlace, turned: Turned) -> Vec<Stand> {
    let facing = looks(seating.facing, place);
    let relation = match place {
        SecondPlace::Opposite => Relation::Faces { seat: main },
        SecondPlace::Left | SecondPlace::Right => Relation::Alone,
    };
    let free = Stand { at_wall: None, facing, relation, turn: None };
    let order = super::direction::clockwise_from(site, seating.back, seating.facing);
    let looking: Vec<_> = walls_looking(site, facing).map(|wall| wall.id).collect();
    let at = order.into_iter().filter(|wall| looking.contains(&wall.id));
    let at = at.map(|wall| Stand { at_wall: Some(wall.id), facing: wall.inward, relation, turn: None });
    let square = std::iter::once(free).chain(at).filter(|_| turned.may_be_square());
    let ways = Turn::all(facing, sides(seating.facing, place)).filter(|_| turned.may_turn());
    let ways = ways.map(|turn| Stand { at_wall: None, facing: turn.facing(), relation, turn: Some(turn) });
    square.chain(ways).collect()
}

/// To which sides a second seat may turn, in an order that is the same in a mirror where it can be.
fn sides(facing: Point, place: SecondPlace) -> [Point; 2] {
    match place {
        SecondPlace::Left | SecondPlace::Right => [facing, -facing],
        SecondPlace::Opposite => [facing.left(), facing.right()],
    }
}

/// Which way a second seat looks when the main one looks along `facing`.
pub(super) fn looks(facing: Point, place: SecondPlace) -> Point {
    match place {
        SecondPlace::Left => facing.right(),
        SecondPlace::Right => facing.left(),
        SecondPlace::Opposite => -facing,
    }
}
