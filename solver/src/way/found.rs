//! What is found out of every piece that is to come in, as results tell it.

use elbowroom_model::listing::ListedPiece;
use elbowroom_model::way::{Load, Way, WayFile};
use elbowroom_model::{Piece, PieceKind};
use serde::Serialize;

use super::carried::{Carried, carried};
use super::most_that_gets_in;
use crate::cautions::OF_CARRYING;
use crate::wording::caution::caution;

/// The format that [`WayFound`] is written in.
pub const FORMAT: &str = "elbowroom-way/1";

/// Whether each piece gets in.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct WayFound {
    /// Name and version of the format.
    pub format: &'static str,
    /// What the house or the room is called.
    pub name: String,
    /// What is passed, from the street on.
    pub points: Vec<PointFound>,
    /// The pieces.
    pub pieces: Vec<PieceIn>,
    /// What was assumed, what is not modelled, what to heed.
    pub notices: Vec<String>,
}

/// A point of the way.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PointFound {
    /// Its name.
    pub name: String,
    /// Its kind, as a file writes it.
    pub kind: &'static str,
}

/// Whether a piece gets in.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PieceIn {
    /// How it is carried, at its most where its sizes are a range.
    #[serde(flatten)]
    pub carried: Carried,
    /// The most width, return (0 without one) and depth that get in together, mm, where those asked for do not; `None`
    /// where not even the least do, or where the piece has the one size that it has.
    pub most: Option<[f64; 3]>,
    /// It has the one size that it has.
    pub fixed: bool,
}

/// Whether the pieces of `file` get in, and the `listed` ones beside them. `height`: of a listed piece that gives none, by
/// its kind, mm.
#[must_use]
pub fn way_in(file: &WayFile, listed: &[ListedPiece], height: &dyn Fn(PieceKind) -> f64) -> WayFound {
    let points = file.way.points.iter().map(|point| PointFound { name: point.name.clone(), kind: point.kind.key() });
    // Pieces of one row are alike: what holds of the first holds of all.
    let asked = file.pieces.iter().enumerate().filter(|(id, piece)| piece.alike.is_none_or(|first| first == *id));
    let asked = asked.map(|(_, piece)| of_a_brief(&file.way, piece));
    let listed_in = listed.iter().map(|piece| of_a_list(&file.way, piece, height(piece.kind)));
    let mut notices = file.notices.clone();
    notices.extend(assumed(file, listed));
    notices.extend(OF_CARRYING.map(|one| caution(one).to_owned()));
    WayFound {
        format: FORMAT,
        name: file.name.clone(),
        points: points.collect(),
        pieces: asked.chain(listed_in).collect(),
        notices,
    }
}

/// How a listed piece is carried in.
#[must_use]
pub fn of_a_list(way: &Way, piece: &ListedPiece, height: f64) -> PieceIn {
    PieceIn { carried: carried(way, &Load::of_listed(piece, height)), most: None, fixed: true }
}

/// How a piece of a brief is carried in.
#[must_use]
pub fn of_a_brief(way: &Way, piece: &Piece) -> PieceIn {
    let other = piece.return_length.map(|range| range.most);
    let carried = carried(way, &Load::of(piece, piece.width.most, other, piece.depth.most));
    let is_fixed = |dimension| piece.range(dimension).is_none_or(|range| range.most - range.least < 1.0);
    let fixed = piece.dimensions().into_iter().all(is_fixed);
    let most = if carried.gets_in || fixed { None } else { most_that_gets_in(way, piece) };
    PieceIn { carried, most, fixed }
}

/// What was taken for granted of the pieces.
fn assumed(file: &WayFile, listed: &[ListedPiece]) -> Vec<String> {
    let kinds = || file.pieces.iter().map(|piece| piece.kind).chain(listed.iter().map(|piece| piece.kind));
    let whole = listed.iter().any(|piece| piece.kind == PieceKind::CornerSofa && piece.parts.is_empty());
    let corner = whole || file.pieces.iter().any(|piece| piece.kind == PieceKind::CornerSofa);
    let all = [
        (
            corner,
            "A corner sofa is taken to come as two runs, the corner counted in both: ask whether it parts.".to_owned(),
        ),
        (kinds().any(|kind| kind == PieceKind::Rug), "Rugs are taken to come rolled, and are not checked.".to_owned()),
        (
            listed.iter().any(|piece| piece.height.is_none() && piece.kind != PieceKind::Rug),
            "Where the list gives no height, what is usual for the kind is taken: measure it.".to_owned(),
        ),
    ];
    all.into_iter().filter(|(applies, _)| *applies).map(|(_, words)| words).collect()
}
