//! What is found out of every piece that is to come in.

use elbowroom_model::listing::ListedPiece;
use elbowroom_model::way_in::{Load, Profile, Way, WayFile};
use elbowroom_model::{Piece, PieceKind};

use super::carried::{Carried, carried};
use super::most_that_gets_in;

/// Whether each piece gets in.
#[derive(Debug, Clone, PartialEq)]
pub struct WayIn {
    /// The pieces: those of the file, of a row the first alone, then those of the list.
    pub pieces: Vec<PieceIn>,
    /// What was taken for granted of them.
    pub assumed: Vec<Assumed>,
}

/// Whether a piece gets in.
#[derive(Debug, Clone, PartialEq)]
pub struct PieceIn {
    /// How it is carried, at its most where its sizes are a range.
    pub carried: Carried,
    /// The most width, return (0 without one) and depth that get in together, mm, where those asked for do not; `None`
    /// where not even the least do, or where the piece has the one size that it has.
    pub most: Option<[f64; 3]>,
    /// It has the one size that it has.
    pub fixed: bool,
    /// What its legs measure, mm, where it gets in without them alone.
    pub legs_off: Option<f64>,
}

/// What is taken for granted of pieces that are carried.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Assumed {
    /// A corner sofa comes as its two runs, the corner counted in both.
    TwoRuns,
    /// Rugs come rolled.
    RolledRugs,
    /// Where a list gives no height, the usual one of the kind.
    UsualHeights,
    /// Where a list does not say how high arms or seat are or how thick the back is, what is usual.
    UsualProfiles,
}

/// Whether the pieces of `file` get in, and the `listed` ones beside them. `height`: of a listed piece that gives none, by
/// its kind, mm.
#[must_use]
pub fn way_in(file: &WayFile, listed: &[ListedPiece], height: &dyn Fn(PieceKind) -> f64) -> WayIn {
    // Pieces of one row are alike: what holds of the first holds of all.
    // Open floor is carried in by nobody.
    let carried_in =
        |(id, piece): &(usize, &Piece)| piece.alike.is_none_or(|first| first.0 == *id) && !piece.kind.stays_open();
    let asked = file.pieces.iter().enumerate().filter(carried_in);
    let asked = asked.map(|(_, piece)| of_a_brief(&file.way, piece));
    let listed_in = listed.iter().map(|piece| of_a_list(&file.way, piece, height(piece.kind)));
    WayIn { pieces: asked.chain(listed_in).collect(), assumed: assumed(file, listed) }
}

/// How a listed piece is carried in.
#[must_use]
pub fn of_a_list(way: &Way, piece: &ListedPiece, height: f64) -> PieceIn {
    let tried = |off: f64| carried(way, &Load::of_listed(piece, height, off));
    let as_it_stands = tried(0.0);
    let legs = piece.legs_off.or(piece.section.leg_height).filter(|_| !as_it_stands.gets_in);
    // Where it does not get in without them either, that is what is told: it is the nearer miss.
    let without = legs.map(tried);
    let legs_off = legs.filter(|_| without.as_ref().is_some_and(|without| without.gets_in));
    PieceIn { carried: without.unwrap_or(as_it_stands), most: None, fixed: true, legs_off }
}

/// How a piece of a brief is carried in.
#[must_use]
pub fn of_a_brief(way: &Way, piece: &Piece) -> PieceIn {
    let other = piece.return_length.map(|range| range.most);
    let carried = carried(way, &Load::of(piece, piece.width.most, other, piece.depth.most));
    let is_fixed = |dimension| piece.range(dimension).is_none_or(|range| range.most - range.least < 1.0);
    let fixed = piece.dimensions().into_iter().all(is_fixed);
    let most = if carried.gets_in || fixed { None } else { most_that_gets_in(way, piece) };
    PieceIn { carried, most, fixed, legs_off: None }
}

fn assumed(file: &WayFile, listed: &[ListedPiece]) -> Vec<Assumed> {
    let kinds = || file.pieces.iter().map(|piece| piece.kind).chain(listed.iter().map(|piece| piece.kind));
    let whole = listed.iter().any(|piece| piece.kind.has_return() && piece.parts.is_empty());
    let corner = whole || file.pieces.iter().any(|piece| piece.kind.has_return());
    let unknown_height = listed.iter().any(|piece| piece.height.is_none() && !piece.kind.is_flat());
    let all = [
        (corner, Assumed::TwoRuns),
        (kinds().any(PieceKind::lies_under), Assumed::RolledRugs),
        (unknown_height, Assumed::UsualHeights),
        (listed.iter().any(Profile::is_assumed), Assumed::UsualProfiles),
    ];
    all.into_iter().filter(|(applies, _)| *applies).map(|(_, assumed)| assumed).collect()
}
