//! What is found out of every piece that is to come in.

use elbowroom_model::listing::ListedPiece;
use elbowroom_model::tables::usual_section;
use elbowroom_model::way_in::{Load, PointKind, Way, WayFile};
use elbowroom_model::{Piece, PieceKind};

use super::carried::{Carried, carried};
use super::most_that_gets_in;
use super::take_off::{Legs, TakeOff, take_off};

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
    /// Legs that its list says come off, mm, where it gets in without them alone; it is carried so.
    pub legs_off: Option<f64>,
    /// Where it does not get in: what would have to come off before it does, each by itself; both together where neither
    /// helps alone; none where that does not help either, or where nobody looked.
    pub would: Vec<TakeOff>,
    /// Whether it gets in hangs on what is usual of its arms and its back, since its list does not say: as the box round it, it
    /// does not.
    pub by_usual_section: bool,
    /// What was looked for to come off it in vain, or not in vain; nothing where nobody looked.
    pub looked_for: LookedFor,
}

/// What is looked for to come off before a piece gets in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct LookedFor {
    /// Its legs.
    pub legs: bool,
    /// The leaves of doors on its way.
    pub leaves: bool,
}

impl LookedFor {
    fn of(way: &Way, legs: Option<Legs>) -> Self {
        let leaves = way.points.iter().any(|point| matches!(point.kind, PointKind::Door { .. }));
        Self { legs: legs.is_some(), leaves }
    }
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
    /// Where a list does not say what a seat looks like from its end, what is usual.
    UsualSections,
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
    let asked = asked.map(|(_, piece)| looked_over(of_a_brief(&file.way, piece), &file.way, piece));
    let listed_in = listed.iter().map(|piece| told_of_a_list(&file.way, piece, height(piece.kind)));
    WayIn { pieces: asked.chain(listed_in).collect(), assumed: assumed(file, listed) }
}

/// How a listed piece is carried in by what its list says of it: a box where that is nothing, and without its legs where they
/// come off and only that helps. `height`: of one that gives none, mm.
#[must_use]
pub fn of_a_list(way: &Way, piece: &ListedPiece, height: f64) -> PieceIn {
    let by = |off: f64| carried(way, &Load::of_listed(piece, height, off));
    let whole = by(0.0);
    let legs = piece.legs_off.filter(|_| !whole.gets_in);
    // Where it does not get in without them either, that is told: it is the nearer miss.
    let carried = legs.map_or(whole, by);
    let legs_off = legs.filter(|_| carried.gets_in);
    let (would, looked_for) = (Vec::new(), LookedFor::default());
    PieceIn { carried, most: None, fixed: true, legs_off, would, by_usual_section: false, looked_for }
}

/// As [`of_a_list`], a seat by its usual section where its list does not say, and with what would have to come off.
fn told_of_a_list(way: &Way, piece: &ListedPiece, height: f64) -> PieceIn {
    let usual = piece.with_usual_section();
    let by_usual_section = usual.is_some() && !of_a_list(way, piece, height).carried.gets_in;
    let piece = usual.as_ref().unwrap_or(piece);
    let found = PieceIn { by_usual_section, ..of_a_list(way, piece, height) };
    if found.carried.gets_in {
        return found;
    }
    let looked_for = usual_section(piece.kind).filter(|_| piece.parts.is_empty()).map(|usual| usual.leg_height);
    let listed = piece.section.leg_height.map(Legs::Listed);
    let legs = piece.legs_off.map(Legs::ComeOff).or(listed).or(looked_for.map(Legs::UpTo));
    let would = take_off(way, legs, &|way, off| carried(way, &Load::of_listed(piece, height, off)));
    PieceIn { would, looked_for: LookedFor::of(way, legs), ..found }
}

/// What would have to come off a piece of a brief that has the one size that it has, and does not get in.
fn looked_over(found: PieceIn, way: &Way, piece: &Piece) -> PieceIn {
    if found.carried.gets_in || !found.fixed {
        return found;
    }
    let other = piece.return_length.map(|range| range.most);
    let legs = usual_section(piece.kind).map(|usual| Legs::UpTo(usual.leg_height));
    let load = |off: f64| Load::lowered(piece, piece.width.most, other, piece.depth.most, off);
    let would = take_off(way, legs, &|way, off| carried(way, &load(off)));
    PieceIn { would, looked_for: LookedFor::of(way, legs), ..found }
}

/// How a piece of a brief is carried in.
#[must_use]
pub fn of_a_brief(way: &Way, piece: &Piece) -> PieceIn {
    let other = piece.return_length.map(|range| range.most);
    let carried = carried(way, &Load::of(piece, piece.width.most, other, piece.depth.most));
    let is_fixed = |dimension| piece.range(dimension).is_none_or(|range| range.most - range.least < 1.0);
    let fixed = piece.dimensions().into_iter().all(is_fixed);
    let most = if carried.gets_in || fixed { None } else { most_that_gets_in(way, piece) };
    let (would, looked_for) = (Vec::new(), LookedFor::default());
    PieceIn { carried, most, fixed, legs_off: None, would, by_usual_section: false, looked_for }
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
        (listed.iter().any(|piece| piece.with_usual_section().is_some()), Assumed::UsualSections),
    ];
    all.into_iter().filter(|(applies, _)| *applies).map(|(_, assumed)| assumed).collect()
}
