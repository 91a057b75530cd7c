//! How the pieces may stand that make no option of their own: tables, storage, lamps, rugs.

use elbowroom_model::{Brief, ItemKind, Piece, PieceId, PieceKind, Point, Stands, WallId};

use super::direction::{alike, clockwise_from};
use super::seating::Seating;
use super::second_seat;
use super::stand::{Relation, Role, SecondSeat, Stand};
use crate::site::{Site, SiteWall};

/// What the other pieces stand about.
pub(super) struct Group<'a> {
    pub(super) brief: &'a Brief,
    pub(super) site: &'a Site,
    pub(super) main: PieceId,
    pub(super) seating: &'a Seating,
    pub(super) seconds: &'a [SecondSeat],
}

impl Group<'_> {
    /// What such a piece does in the group.
    pub(super) fn role(kind: PieceKind) -> Role {
        if kind.stands_before_seat() { Role::Table } else { Role::Other }
    }

    /// The ways such a piece may stand.
    pub(super) fn stands(&self, piece: &Piece) -> Vec<Stand> {
        let facing = self.seating.facing;
        match piece.kind.traits().stands {
            Stands::BeforeSeat => vec![free(facing, Relation::Before { seat: self.main })],
            Stands::UnderSeats => vec![free(facing, Relation::Under { seat: self.main })],
            Stands::BesideSeats => self.beside_seats(piece),
            Stands::AtWallOrFree => self.at_wall_or_free(piece),
            Stands::AtWallOrBehindSeat => self.at_wall_or_behind_seat(piece),
            // Seats are placed before: what comes here stands anywhere.
            Stands::AtWall | Stands::AsSeat if piece.kind.traits().wants_inner_wall => self.at_inner_walls(),
            Stands::AtWall | Stands::AsSeat => self.at_walls(),
        }
    }

    fn walls(&self) -> Vec<&SiteWall> {
        clockwise_from(self.site, self.seating.back, self.seating.facing)
    }

    pub(super) fn at_walls(&self) -> Vec<Stand> {
        let at = |wall: &&SiteWall| {
            let facing = wall.inward;
            Stand { at_wall: Some(wall.id), facing, relation: Relation::Alone, turn: None }
        };
        self.walls().iter().map(at).collect()
    }

    /// At the walls that hold no window, radiator or fire: neither cold nor hot (common practice, no source). At any, where
    /// there is none.
    fn at_inner_walls(&self) -> Vec<Stand> {
        let all = self.at_walls();
        let is_inner = |stand: &&Stand| stand.at_wall.is_some_and(|wall| !is_cold_or_hot(self.brief, wall));
        let inner: Vec<Stand> = all.iter().filter(is_inner).copied().collect();
        if inner.is_empty() { all } else { inner }
    }

    /// Behind a main seat that stands free, its back to the seat's; and at walls, unless the file has it stand at that seat.
    fn at_wall_or_behind_seat(&self, piece: &Piece) -> Vec<Stand> {
        let is_named = self.brief.piece(self.main).is_some_and(|seat| piece.at.contains(&seat.name));
        let behind = || free(-self.seating.facing, Relation::Behind { seat: self.main });
        match self.seating.back {
            None if is_named => vec![behind()],
            None => std::iter::once(behind()).chain(self.at_walls()).collect(),
            Some(_) => self.at_walls(),
        }
    }

    /// At either end of the main seat, then of each second seat, as far as the file has it stand there; a pair at both ends.
    fn beside_seats(&self, piece: &Piece) -> Vec<Stand> {
        let main = (self.main, self.seating.facing);
        let second = |seat: &SecondSeat| (seat.piece, second_seat::looks(self.seating.facing, seat.place));
        let is_named = |seat: PieceId| self.brief.piece(seat).is_some_and(|seat| piece.at.contains(&seat.name));
        let seats = std::iter::once(main).chain(self.seconds.iter().map(second));
        let seats = seats.filter(|(seat, _)| piece.at.is_empty() || is_named(*seat));
        let side = self.side_of_pair(piece);
        let sides = |(seat, facing)| {
            let ends = [true, false].into_iter().filter(move |left| side.is_none_or(|side| side == *left));
            ends.map(move |left| free(facing, Relation::Beside { seat, left }))
        };
        seats.flat_map(sides).collect()
    }

    /// Of a pair that stands at one seat the first is on its left, the second on its right.
    pub(super) fn side_of_pair(&self, piece: &Piece) -> Option<bool> {
        let first = piece.alike.filter(|_| piece.at.len() == 1)?;
        let row: Vec<&Piece> = self.brief.pieces.iter().filter(|other| other.alike == Some(first)).collect();
        match row.as_slice() {
            [one, _] => Some(one.name == piece.name),
            _ => None,
        }
    }

    /// Free, its long sides along each way that walls run; or with a long side at a wall. What is led to is reached over its
    /// front, which may be any of its sides.
    fn at_wall_or_free(&self, table: &Piece) -> Vec<Stand> {
        let square = !table.steps.is_empty() && table.steps.iter().all(|step| step.width == step.depth);
        let mut ways: Vec<Point> = Vec::new();
        for wall in self.walls() {
            let known = |way: &Point| {
                let across = square && (alike(way.left(), wall.inward) || alike(way.right(), wall.inward));
                let turned = alike(-*way, wall.inward) && !table.kind.is_led_to();
                across || alike(*way, wall.inward) || turned
            };
            if !ways.iter().any(known) {
                ways.push(wall.inward);
            }
        }
        let mut stands: Vec<Stand> = ways.into_iter().map(|way| free(way, Relation::Alone)).collect();
        stands.extend(self.at_walls());
        stands
    }
}

/// Whether a wall holds a window, a radiator or a fire.
fn is_cold_or_hot(brief: &Brief, wall: WallId) -> bool {
    let is_such =
        |kind: &ItemKind| matches!(kind, ItemKind::Window(_) | ItemKind::Radiator(_) | ItemKind::Fireplace(_));
    brief.room.items.iter().any(|item| item.wall == wall && is_such(&item.kind))
}

fn free(facing: Point, relation: Relation) -> Stand {
    Stand { at_wall: None, facing, relation, turn: None }
}
