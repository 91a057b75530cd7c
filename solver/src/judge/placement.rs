//! Where each piece stands in the room as it is, from what the file says of it.

use elbowroom_model::{BackOf, Brief, Dimension, Hand, Piece, PieceId, Room, Stands, StandsAt, WallId};

use super::tolerance::{FOOT, PAST};
use crate::arrangement::alike;
use crate::layout::{Layout, Placed, Size};

/// Where each piece stands.
#[derive(Debug, Clone, PartialEq)]
pub struct Placement {
    /// Pieces that stand, in the order of [`Brief::pieces`].
    pub placed: Vec<Placed>,
}

/// Why a room cannot be judged as it stands.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum NotPlaced {
    /// These are needed, and the file does not say where they stand.
    Pieces(Vec<PieceId>),
    /// The file does not say where any seat stands.
    NoSeat,
}

impl Placement {
    /// Where the pieces of a brief stand. What is not needed and has no place does not stand.
    ///
    /// # Errors
    /// The pieces that are needed and have no place, or that no seat has one.
    pub fn of(brief: &Brief) -> Result<Self, NotPlaced> {
        let placed: Vec<Placed> = brief.pieces().filter_map(|(id, piece)| one(&brief.room, id, piece)).collect();
        let stands = |id: PieceId| placed.iter().any(|placed| placed.piece == id);
        let missing = brief.pieces().filter(|(id, piece)| piece.needed && !stands(*id));
        let missing: Vec<PieceId> = missing.map(|(id, _)| id).collect();
        if !missing.is_empty() {
            return Err(NotPlaced::Pieces(missing));
        }
        let is_seat = |placed: &Placed| brief.piece(placed.piece).is_some_and(|piece| piece.kind.is_seat());
        if placed.iter().any(is_seat) { Ok(Self { placed }) } else { Err(NotPlaced::NoSeat) }
    }

    /// The layout that this is.
    #[must_use]
    pub fn layout(&self, brief: &Brief) -> Layout {
        let stands = |id: &PieceId| self.placed.iter().any(|placed| placed.piece == *id);
        let left_out = brief.piece_ids().filter(|id| !stands(id)).collect();
        Layout { placed: self.placed.clone(), left_out, ..Layout::default() }
    }
}

/// One piece as it stands; `None` where the file does not say.
fn one(room: &Room, id: PieceId, piece: &Piece) -> Option<Placed> {
    let size = Size {
        width: piece.size_as_it_stands(Dimension::Width)?,
        return_length: piece.size_as_it_stands(Dimension::Return),
        second_return: piece.size_as_it_stands(Dimension::SecondReturn),
        depth: piece.size_as_it_stands(Dimension::Depth)?,
        return_depth: piece.size_as_it_stands(Dimension::ReturnDepth),
    };
    let stands = piece.stands?;
    let back = stands.back(room, size.width)?;
    let at_wall = if may_stand_at_wall(piece) { wall_behind(room, piece, &stands, back) } else { None };
    // An angle by eye is good to a degree: what stands at a wall faces straight away from it.
    let facing = at_wall.and_then(|wall| room.wall(wall)).map_or(back.facing, elbowroom_model::Wall::inward);
    // The corner sofa's outer corner lies at the end of its back on the side of its return.
    let hand = if size.return_length.is_some() { piece.hands.first().copied() } else { None };
    let anchor = match hand {
        Some(Hand::Left) => back.middle + facing.left() * (size.width / 2.0),
        Some(Hand::Right) => back.middle - facing.left() * (size.width / 2.0),
        None => back.middle,
    };
    Some(Placed { piece: id, at_wall, anchor, facing, hand, size })
}

/// Whether a piece of this kind is ever said to stand at a wall.
const fn may_stand_at_wall(piece: &Piece) -> bool {
    match piece.kind.traits().stands {
        Stands::AsSeat | Stands::AtWall | Stands::AtWallOrFree | Stands::AtWallOrBehindSeat => true,
        Stands::BeforeSeat | Stands::UnderSeats | Stands::BesideSeats => false,
    }
}

/// The wall that a piece stands at: the one that the file names, or the nearest straight behind its back, where that is within
/// its gap and a foot. What always stands at a wall stands at the one named, however far off.
fn wall_behind(room: &Room, piece: &Piece, stands: &StandsAt, back: BackOf) -> Option<WallId> {
    let most = piece.off_wall + FOOT;
    match *stands {
        StandsAt::Wall { wall, off, .. } => {
            let always = matches!(piece.kind.traits().stands, Stands::AtWall);
            (always || off <= most).then_some(wall)
        }
        StandsAt::Place { .. } => {
            let behind = room.walls().filter(|(_, wall)| alike(wall.inward(), back.facing));
            let off = behind.filter_map(|(id, wall)| {
                let (from, off) = (back.middle - wall.start, (back.middle - wall.start).dot(wall.inward()));
                let along = from.dot(wall.along());
                ((-PAST..=most).contains(&off) && (0.0..=wall.length()).contains(&along)).then_some((id, off))
            });
            off.min_by(|one, other| one.1.total_cmp(&other.1)).map(|(id, _)| id)
        }
    }
}
