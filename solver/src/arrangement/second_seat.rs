//! The second seats: opposite the main one, on its left, on its right.

use elbowroom_model::{Brief, Hand, Point};

use super::cast::Cast;
use super::direction::walls_looking;
use super::media::ScreenPlace;
use super::seating::Seating;
use super::stand::{Relation, Role, Stand};
use crate::site::Site;

/// Where one second seat stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct SecondSeat {
    /// The seat, by its place in the brief.
    pub(super) piece: usize,
    /// [`Role::Opposite`], [`Role::LeftOf`] or [`Role::RightOf`].
    pub(super) role: Role,
    /// Hand of a corner sofa.
    pub(super) hand: Option<Hand>,
}

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
    let places = places(seating, screen);
    let rows: Vec<Vec<Vec<SecondSeat>>> = cast.rows.iter().map(|row| placements(brief, row, &places)).collect();
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

/// Where a second seat makes sense: not before the screen, not with its back to it, not behind the return.
fn places(seating: &Seating, screen: Option<ScreenPlace>) -> Vec<Role> {
    let screen = screen.map(|place| place.role);
    let mut places = Vec::with_capacity(3);
    if screen != Some(Role::Screen) {
        places.push(Role::Opposite);
    }
    for (role, hand) in [(Role::LeftOf, Hand::Left), (Role::RightOf, Hand::Right)] {
        let behind_return = seating.hand == Some(hand);
        if !behind_return && screen != Some(Role::ScreenBeside) {
            places.push(role);
        }
    }
    places
}

/// The ways to place the seats of one row, which are alike: together in one place, or shared between both sides.
fn placements(brief: &Brief, row: &[usize], places: &[Role]) -> Vec<Vec<SecondSeat>> {
    let mut roles: Vec<Vec<Role>> = places.iter().map(|place| vec![*place; row.len()]).collect();
    if row.len() > 1 && places.contains(&Role::LeftOf) && places.contains(&Role::RightOf) {
        roles.extend(shared(row.len(), places.contains(&Role::Opposite)));
    }
    let hands: Vec<Option<Hand>> = match row.first().and_then(|seat| brief.pieces.get(*seat)) {
        Some(seat) if !seat.hands.is_empty() => seat.hands.iter().copied().map(Some).collect(),
        _ => vec![None],
    };
    let seats = |roles: &Vec<Role>, hand| {
        let seat = |(piece, role): (&usize, &Role)| SecondSeat { piece: *piece, role: *role, hand };
        row.iter().zip(roles).map(seat).collect()
    };
    roles.iter().flat_map(|roles| hands.iter().map(move |hand| seats(roles, *hand))).collect()
}

/// As many on the left as on the right; an odd one opposite, or on either side where nothing may stand opposite.
fn shared(count: usize, opposite: bool) -> Vec<Vec<Role>> {
    let half = count / 2;
    let split = |left: usize, right: usize, rest: usize| {
        let sides = [(Role::LeftOf, left), (Role::RightOf, right), (Role::Opposite, rest)];
        sides.into_iter().flat_map(|(role, count)| std::iter::repeat_n(role, count)).collect()
    };
    match (count % 2, opposite) {
        (0, _) => vec![split(half, half, 0)],
        (_, true) => vec![split(half, half, 1)],
        (_, false) => vec![split(half + 1, half, 0), split(half, half + 1, 0)],
    }
}

/// The ways a second seat may stand in its place: free, or at each wall that lets it look the right way.
pub(super) fn stands(site: &Site, main: usize, seating: &Seating, role: Role) -> Vec<Stand> {
    let facing = looks(seating.facing, role);
    let relation = match role {
        Role::Opposite => Relation::Faces { seat: main },
        _ => Relation::Alone,
    };
    let free = Stand { at_wall: None, facing, relation };
    let order = super::direction::clockwise_from(site, seating.back, seating.facing);
    let looking: Vec<_> = walls_looking(site, facing).map(|wall| wall.id).collect();
    let at = order.into_iter().filter(|wall| looking.contains(&wall.id));
    let at = at.map(|wall| Stand { at_wall: Some(wall.id), facing: wall.inward, relation });
    std::iter::once(free).chain(at).collect()
}

/// Which way a second seat looks when the main one looks along `facing`.
pub(super) fn looks(facing: Point, role: Role) -> Point {
    match role {
        Role::LeftOf => facing.right(),
        Role::RightOf => facing.left(),
        _ => -facing,
    }
}
