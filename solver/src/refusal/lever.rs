//! What may be changed about a brief where nothing fits, how far, and the brief so changed.

use elbowroom_model::{Brief, Clearance, Dimension, Only, Piece, PieceId, Rounding, WallId};

/// A piece's least size is eased to this share of itself at most.
const SMALLEST_SHARE: f64 = 0.6;

/// A wall is made longer by this at most, mm.
const LONGEST_ADDED: f64 = 2_000.0;

/// One thing that could be changed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Lever {
    /// The least size of a piece.
    Least(PieceId, Dimension),
    /// The least size of a piece, raised: what stands before it must fit at every size that it may be bought at.
    Raised(PieceId, Dimension),
    /// The size at which a piece gets in.
    GetsIn(PieceId, Dimension),
    /// A piece is left out.
    LeaveOut(PieceId),
    /// The screen that a piece carries hangs on this wall instead.
    Hang(PieceId, WallId),
    /// A clearance.
    Clearance(Clearance),
    /// The length of a wall, and of its parallel wall with it.
    Wall(WallId),
    /// A decision that the brief holds the options to is left open.
    Only(Only),
    /// What the brief excludes of a decision is let in.
    Exclude(Only),
}

/// The lever is about a piece, by its place in the brief.
pub(super) const fn names_piece(lever: Lever) -> bool {
    let of_seat = matches!(lever, Lever::Only(Only::SecondSeat(..)) | Lever::Exclude(Only::SecondSeat(..)));
    let of_size = matches!(lever, Lever::Least(..) | Lever::Raised(..) | Lever::GetsIn(..));
    of_seat || of_size || matches!(lever, Lever::LeaveOut(_) | Lever::Hang(..))
}

/// Leaving a piece out shifts the places of those after it.
pub(super) const fn moves_pieces(lever: Lever) -> bool {
    matches!(lever, Lever::LeaveOut(_))
}

pub(super) const fn is_all_or_nothing(lever: Lever) -> bool {
    matches!(lever, Lever::LeaveOut(_) | Lever::Hang(..) | Lever::Only(_) | Lever::Exclude(_))
}

/// What the lever stands at, and as far as it goes.
pub(super) fn range(brief: &Brief, lever: Lever) -> Option<(f64, f64)> {
    match lever {
        Lever::Least(id, dimension) | Lever::GetsIn(id, dimension) => {
            let piece = brief.piece(id)?;
            let least = piece.range(dimension)?.least;
            Some((least, least * SMALLEST_SHARE))
        }
        Lever::Raised(id, dimension) => {
            let range = brief.piece(id)?.range(dimension)?;
            (range.most > range.least).then_some((range.least, range.most))
        }
        Lever::LeaveOut(_) | Lever::Hang(..) | Lever::Only(_) | Lever::Exclude(_) => Some((1.0, 0.0)),
        Lever::Clearance(rule) => {
            let now = brief.rules.get(rule);
            (now > 0.0).then_some((now, 0.0))
        }
        Lever::Wall(id) => {
            let length = brief.room.wall(id)?.length();
            Some((length, length + LONGEST_ADDED))
        }
    }
}

/// The brief with one lever set; `None` where it cannot be.
pub(super) fn changed(brief: &Brief, lever: Lever, to: f64) -> Option<Brief> {
    let mut eased = brief.clone();
    match lever {
        Lever::Least(id, dimension) | Lever::Raised(id, dimension) | Lever::GetsIn(id, dimension) => {
            for twin in brief.piece_ids() {
                let piece = eased.piece_mut(twin)?;
                if twin == id || piece.alike == Some(id) {
                    set_least(piece, dimension, to)?;
                }
            }
        }
        Lever::LeaveOut(id) => eased = without(&eased, id),
        Lever::Hang(id, wall) => {
            *eased.piece_mut(id)? = brief.piece(id)?.hung_instead().ok()?;
            eased.only.retain(|only| !is_media_wall(only));
            eased.only.push(Only::MediaWall(Some(wall)));
        }
        Lever::Clearance(rule) => {
            eased.rules = eased.rules.with(rule, to, "eased");
            for piece in &mut eased.pieces {
                piece.off_wall = eased_off_wall(piece, rule, to);
            }
        }
        Lever::Wall(id) => eased = elbowroom_model::survey::with_wall_length(brief, id, to)?,
        Lever::Only(line) => eased.wanted.only.retain(|only| !only.is_about_the_same(&line)),
        Lever::Exclude(line) => eased.wanted.exclude.retain(|only| !only.is_about_the_same(&line)),
    }
    Some(eased)
}

fn set_least(piece: &mut Piece, dimension: Dimension, least: f64) -> Option<()> {
    let range = piece.range_mut(dimension)?;
    (range.least, range.usual) = (least, range.usual.max(least));
    if let Some(step) = piece.steps.first_mut() {
        match dimension {
            Dimension::Width => step.width = step.width.min(least),
            Dimension::Depth => step.depth = step.depth.min(least),
            Dimension::Return | Dimension::SecondReturn | Dimension::ReturnDepth => {}
        }
    }
    Some(())
}

fn eased_off_wall(piece: &Piece, rule: Clearance, to: f64) -> f64 {
    if piece.kind.traits().off_wall == Some(rule) { piece.off_wall.min(to) } else { piece.off_wall }
}

/// The brief without one piece; pairs that began with it begin with the next, and what stood at it stands at any seat.
pub(crate) fn without(brief: &Brief, id: PieceId) -> Brief {
    let mut left = brief.clone();
    if id.0 < left.pieces.len() {
        left.pieces.remove(id.0);
    }
    let mut heirs = left.pieces().filter(|(_, piece)| piece.alike == Some(id)).map(|(heir, _)| heir);
    // One that is left alone is like no other.
    let heir = heirs.next().filter(|_| heirs.next().is_some());
    drop(heirs);
    for piece in &mut left.pieces {
        piece.alike = piece.alike.and_then(|first| first.without(id).or(heir));
    }
    if let Some(gone) = brief.piece(id) {
        left.pieces.iter_mut().for_each(|piece| piece.at.retain(|seat| *seat != gone.name));
    }
    for kept in [&mut left.only, &mut left.wanted.only, &mut left.wanted.exclude] {
        *kept = kept.iter().filter_map(|only| moved(*only, id)).collect();
    }
    left
}

/// What is wanted of the decisions, once the piece at `id` is gone.
fn moved(only: Only, id: PieceId) -> Option<Only> {
    match only {
        Only::SecondSeat(Some(seat), place) => Some(Only::SecondSeat(Some(seat.without(id)?), place)),
        other => Some(other),
    }
}

pub(super) const fn is_media_wall(only: &Only) -> bool {
    matches!(only, Only::MediaWall(_))
}

/// The figure rounded to the far side, so that the rounded one helps as well.
pub(super) fn told_figure(brief: &Brief, lever: Lever, to: f64) -> f64 {
    match lever {
        Lever::Least(..) | Lever::GetsIn(..) | Lever::Clearance(_) => brief.units.rounded(to, Rounding::Down).max(0.0),
        Lever::Raised(..) | Lever::Wall(_) => brief.units.rounded(to, Rounding::Up),
        Lever::LeaveOut(_) | Lever::Hang(..) | Lever::Only(_) | Lever::Exclude(_) => to,
    }
}
