//! How the pieces of a group of its own may stand, beside the main one: its seats at walls, or about one another; what
//! serves them before them and at their ends.

use elbowroom_model::{Piece, PieceId, Point, Stands};

use super::direction::{alike, clockwise_from};
use super::other_pieces::Group;
use super::stand::{Relation, Role, Stand};

impl Group<'_> {
    /// The part of a piece of a group of its own, and the ways it may stand.
    pub(super) fn apart(&self, piece: &Piece) -> (Role, Vec<Stand>) {
        if piece.kind.is_seat() {
            return (Role::Apart, self.seat_apart(piece));
        }
        let stands = match piece.kind.traits().stands {
            Stands::BeforeSeat => self.before_seats(piece),
            _ => self.at_ends(piece),
        };
        (Role::Other, stands)
    }

    /// At each wall; and free, where it has company: a chair by itself stands at a wall.
    fn seat_apart(&self, piece: &Piece) -> Vec<Stand> {
        let mut stands = self.at_walls();
        if self.seats_of(piece).count() > 1 {
            let free = |facing| Stand { at_wall: None, facing, relation: Relation::Alone, turn: None };
            stands.extend(self.ways().into_iter().map(free));
        }
        stands
    }

    /// Before each seat of its group, whichever way that faces.
    fn before_seats(&self, piece: &Piece) -> Vec<Stand> {
        let stand = |seat, facing| Stand { at_wall: None, facing, relation: Relation::Before { seat }, turn: None };
        self.seats_of(piece).flat_map(|seat| self.ways().into_iter().map(move |way| stand(seat, way))).collect()
    }

    /// At both ends of each seat of its group that it may stand at. What is square stands alike whichever side it turns.
    fn at_ends(&self, piece: &Piece) -> Vec<Stand> {
        let mut ways: Vec<Point> = Vec::new();
        for way in self.ways() {
            let turned = |known: &Point| {
                piece.square && [*known, -*known, known.left(), known.right()].iter().any(|it| alike(*it, way))
            };
            if !ways.iter().any(turned) {
                ways.push(way);
            }
        }
        let side = self.side_of_pair(piece);
        let is_named = |seat: &PieceId| self.brief.piece(*seat).is_some_and(|seat| piece.at.contains(&seat.name));
        let seats: Vec<PieceId> = self.seats_of(piece).filter(is_named).collect();
        let ends = [true, false].into_iter().filter(|left| side.is_none_or(|side| side == *left));
        let ends: Vec<bool> = ends.collect();
        let mut stands = Vec::new();
        for &seat in &seats {
            for &facing in &ways {
                let stand = |left: &bool| Stand {
                    at_wall: None,
                    facing,
                    relation: Relation::Beside { seat, left: *left },
                    turn: None,
                };
                stands.extend(ends.iter().map(stand));
            }
        }
        stands
    }

    /// The ways that walls look, each once.
    fn ways(&self) -> Vec<Point> {
        let mut ways: Vec<Point> = Vec::new();
        for wall in clockwise_from(self.site, self.seating.back, self.seating.facing) {
            if !ways.iter().any(|way| alike(*way, wall.inward)) {
                ways.push(wall.inward);
            }
        }
        ways
    }

    /// The seats of its group.
    fn seats_of(&self, piece: &Piece) -> impl Iterator<Item = PieceId> {
        let of_group = |other: &Piece| other.kind.is_seat() && other.group == piece.group;
        self.brief.pieces().filter(move |(_, other)| of_group(other)).map(|(id, _)| id)
    }
}
