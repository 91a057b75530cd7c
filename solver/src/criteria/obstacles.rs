//! What stands in the way of the eye: backs, cupboards, screens, pillars, each with its height.

use elbowroom_model::screen_width;
use elbowroom_model::{Brief, ItemKind, Piece, PieceId};

use crate::geometry::{Clip, Convex, HalfPlane, Ray};
use crate::layout::{Layout, Placed};
use crate::site::{BodyId, Site};

/// Thickness taken for the back of a seat, mm (common practice, no source).
const BACK: f64 = 200.0;

/// Thickness taken for a screen, mm (common practice, no source).
pub(super) const SCREEN: f64 = 60.0;

/// What an obstacle belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Whose {
    /// The back of a seat (of a corner sofa: of its main run).
    Back(PieceId),
    /// The back of a corner sofa's return.
    ReturnBack(PieceId),
    /// The back of its second return.
    SecondReturnBack(PieceId),
    /// The screen on a media unit, or on a wall.
    Screen(PieceId),
    /// Any other piece, by its place in the brief.
    Piece(PieceId),
    /// What stands in the room for good.
    Body(BodyId),
}

/// Something convex that the eye cannot see through, up to its height.
#[derive(Debug, Clone, PartialEq)]
pub struct Obstacle {
    /// Its plan.
    pub shape: Convex,
    /// Its height, mm; infinite where it reaches the ceiling or was not measured.
    pub height: f64,
    /// What it belongs to.
    pub whose: Whose,
    half_planes: Vec<HalfPlane>,
}

impl Obstacle {
    /// The obstacle of this plan and height.
    #[must_use]
    pub fn new(shape: Convex, height: f64, whose: Whose) -> Self {
        let half_planes = shape.half_planes();
        Self { shape, height, whose, half_planes }
    }

    /// Where a look is inside its plan; `None` where it misses, or where the eye itself is inside.
    #[must_use]
    pub fn crossing(&self, look: Ray) -> Option<Clip> {
        look.clipped(&self.half_planes).filter(|crossing| crossing.entry.is_some())
    }

    /// One of its sides.
    #[must_use]
    pub fn side(&self, side: usize) -> Option<HalfPlane> {
        self.half_planes.get(side).copied()
    }
}

/// Everything that may stand before an eye in this layout: pieces in the brief's order, then what stands for good.
/// Lamps are slender and rugs flat: they hide nothing. Of a seat its backs count, not its cushions.
#[must_use]
pub fn obstacles(brief: &Brief, site: &Site, layout: &Layout) -> Vec<Obstacle> {
    let pieces = layout.placed.iter().filter_map(|placed| Some((brief.piece(placed.piece)?, placed)));
    let mut all: Vec<Obstacle> = pieces.flat_map(|(piece, placed)| of_piece(piece, placed)).collect();
    all.extend(bodies(brief, site));
    all
}

/// What stands in the empty room.
#[must_use]
pub fn bodies(brief: &Brief, site: &Site) -> Vec<Obstacle> {
    let body = |body: &crate::site::Body| {
        Obstacle::new(body.shape.clone(), height_of_body(brief, body.id), Whose::Body(body.id))
    };
    site.bodies.iter().map(body).collect()
}

fn of_piece(piece: &Piece, placed: &Placed) -> Vec<Obstacle> {
    if piece.kind.is_seat() {
        return backs(piece, placed);
    }
    if !piece.kind.is_solid() {
        return Vec::new();
    }
    // Under what hangs there is nothing of it.
    let itself = !piece.kind.hangs();
    let itself = itself.then(|| Obstacle::new(placed.main(), piece.height, Whose::Piece(placed.piece)));
    itself.into_iter().chain(screen(piece, placed)).collect()
}

fn backs(piece: &Piece, placed: &Placed) -> Vec<Obstacle> {
    let thick = BACK.min(placed.size.depth / 2.0);
    let back = |shape, whose| Obstacle::new(shape, piece.height, whose);
    let (from, to) = match placed.hand {
        Some(_) => (0.0, placed.size.width),
        None => (-placed.size.width / 2.0, placed.size.width / 2.0),
    };
    let mut all = vec![back(placed.block(from, to, 0.0, thick), Whose::Back(placed.piece))];
    if let (Some(_), Some(length), false) = (placed.hand, placed.size.return_length, piece.chaise) {
        all.push(back(placed.block(0.0, thick, 0.0, length), Whose::ReturnBack(placed.piece)));
    }
    if let (Some(_), Some(length)) = (placed.hand, placed.size.second_return) {
        let (from, to) = (placed.size.width - thick, placed.size.width);
        all.push(back(placed.block(from, to, 0.0, length), Whose::SecondReturnBack(placed.piece)));
    }
    all
}

fn screen(piece: &Piece, placed: &Placed) -> Option<Obstacle> {
    let half = screen_width(piece.screen?) / 2.0;
    let middle = placed.size.depth / 2.0;
    let shape = placed.block(-half, half, middle - SCREEN / 2.0, middle + SCREEN / 2.0);
    Some(Obstacle::new(shape, piece.height_with_screen(), Whose::Screen(placed.piece)))
}

fn height_of_body(brief: &Brief, id: BodyId) -> f64 {
    let height = match id {
        BodyId::Fixed(id) => brief.room.fixed_thing(id).and_then(|fixed| fixed.height),
        BodyId::Item(id) => brief.room.item(id).and_then(|item| match &item.kind {
            ItemKind::Radiator(radiator) => Some(radiator.height),
            ItemKind::Fireplace(fire) => fire.height,
            ItemKind::Door(_) | ItemKind::Opening(_) | ItemKind::Window(_) | ItemKind::Socket(_) => None,
        }),
    };
    height.unwrap_or(f64::INFINITY)
}
