//! What a plan shows: an option, or the room as it stands.

use elbowroom_model::{Brief, Piece, PieceId, Point, Unit};
use elbowroom_solver::answer::{Answer, Gap, RankedOption, TurningCircle, corners_of};
use elbowroom_solver::judge::JudgedRoom;
use elbowroom_solver::plan::Plan;
use elbowroom_solver::routes::Route;
use elbowroom_solver::{Layout, Placed, Size};

use crate::words::drawn::{drawn, drawn_with_unit};
use crate::words::lengths::{shop_unit, sign};
use crate::words::turned::turned;

/// All that a plan is made from.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Shown<'a> {
    /// An option.
    Option {
        /// What came out.
        answer: &'a Answer,
        /// The option that is drawn.
        option: &'a RankedOption,
    },
    /// The room as it stands.
    AsItStands {
        /// What the same file is ranked to.
        answer: &'a Answer,
        /// The room.
        room: &'a JudgedRoom,
    },
}

/// A piece as it is drawn.
#[derive(Debug, Clone, Copy)]
pub(super) struct PieceShown<'a> {
    /// As it was asked for.
    pub(super) piece: &'a Piece,
    /// Where it stands.
    pub(super) placed: &'a Placed,
    /// The size that is told.
    pub(super) size: Size,
}

impl PieceShown<'_> {
    /// Corners of its parts, counter-clockwise: first its main run.
    pub(super) fn parts(&self) -> Vec<Vec<Point>> {
        corners_of(self.placed)
    }

    /// Corners of its main run.
    pub(super) fn main(&self) -> Vec<Point> {
        self.parts().into_iter().next().unwrap_or_default()
    }
}

impl<'a> Shown<'a> {
    /// What the ids are places in.
    pub(crate) const fn brief(&self) -> &'a Brief {
        match self {
            Self::Option { answer, .. } => &answer.brief,
            Self::AsItStands { room, .. } => &room.brief,
        }
    }

    /// How a piece is turned, in words; of an option alone, which turns what may be turned.
    pub(super) fn turned(&self, piece: PieceId) -> Option<String> {
        match self {
            Self::Option { answer, option } => turned(&answer.brief, option, piece),
            Self::AsItStands { .. } => None,
        }
    }

    /// Where everything stands.
    pub(super) const fn layout(&self) -> &'a Layout {
        match self {
            Self::Option { option, .. } => &option.layout,
            Self::AsItStands { room, .. } => &room.layout,
        }
    }

    /// The ways.
    pub(super) const fn routes(&self) -> &'a [Route] {
        match self {
            Self::Option { option, .. } => option.routes.as_slice(),
            Self::AsItStands { room, .. } => room.routes.as_slice(),
        }
    }

    /// The gaps that rules ask for.
    pub(super) const fn gaps(&self) -> &'a [Gap] {
        match self {
            Self::Option { option, .. } => option.gaps.as_slice(),
            Self::AsItStands { room, .. } => room.gaps.as_slice(),
        }
    }

    /// Where a wheelchair turns.
    pub(super) const fn turning_circle(&self) -> Option<TurningCircle> {
        match self {
            Self::Option { option, .. } => option.turning_circle,
            Self::AsItStands { room, .. } => room.turning_circle,
        }
    }

    /// How many things are broken and told by a number.
    pub(super) const fn breaches(&self) -> usize {
        match self {
            Self::Option { .. } => 0,
            Self::AsItStands { room, .. } => room.broken.len(),
        }
    }

    /// Every piece that stands, in the order of the brief.
    pub(super) fn pieces(&self) -> Vec<PieceShown<'a>> {
        let brief = self.brief();
        match self {
            Self::Option { option, .. } => {
                let shown = |one: elbowroom_solver::answer::OptionPiece<'a>| PieceShown {
                    piece: one.piece,
                    placed: one.placed,
                    size: one.sizes.planned(),
                };
                option.pieces(brief).map(shown).collect()
            }
            Self::AsItStands { room, .. } => {
                let shown = |placed: &'a Placed| {
                    Some(PieceShown { piece: brief.piece(placed.piece)?, placed, size: placed.size })
                };
                room.layout.placed.iter().filter_map(shown).collect()
            }
        }
    }

    /// What a plan of it shows beside the pieces.
    pub(super) fn plan(&self) -> Plan {
        elbowroom_solver::plan::plan(self.brief(), self.layout())
    }

    /// The unit that lengths are told in, as sheets head it.
    pub(super) const fn unit(&self) -> &'static str {
        sign(shop_unit(self.units()))
    }

    pub(super) const fn units(&self) -> Unit {
        self.brief().units
    }

    /// A length as drawings tell it, with its unit.
    pub(super) fn tape_with_unit(&self, length: f64) -> String {
        drawn_with_unit(self.units(), length)
    }

    /// A length as drawings tell it, without its unit.
    pub(super) fn tape(&self, length: f64) -> String {
        drawn(self.units(), length)
    }
}
