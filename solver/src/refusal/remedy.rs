//! The least change that makes an option possible, one of each kind.

use elbowroom_model::{Brief, Clearance, Dimension, Only, PieceId, WallId};

use super::retry::{Retries, nearest};
use super::tolerance::FINE;

/// A piece's least size is eased to this share of itself at most.
const SMALLEST_SHARE: f64 = 0.6;

/// A wall is made longer by this at most, mm.
const LONGEST_ADDED: f64 = 2_000.0;

/// Options are counted up to this for the sentence.
const COUNTED: usize = 20;

/// What was changed with success: one thing, or the least pair.
#[derive(Debug, Clone, PartialEq)]
pub struct Remedy {
    /// The changes.
    pub changes: Vec<Change>,
    /// Options that there are then, counted up to twenty.
    pub options: usize,
}

/// One thing set otherwise.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Change {
    /// What.
    pub lever: Lever,
    /// From this, mm; of what is left out, or a piece that is hung instead, 1.
    pub from: f64,
    /// To this, mm; of what is left out, or a piece that is hung instead, 0.
    pub to: f64,
}

/// One thing that could be changed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Lever {
    /// The least size of a piece.
    Least(PieceId, Dimension),
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

/// What would help where nothing fits: at most one remedy of each kind, or the least pair.
pub(crate) fn remedies(brief: &Brief) -> Vec<Remedy> {
    let retries = &Retries::default();
    let lines = [lines_of_only(brief), lines_of_exclude(brief)].concat();
    let kinds = [lines, least_sizes(brief), hangings(brief), leave_outs(brief), clearances(), walls(brief)];
    let singles: Vec<Remedy> = kinds.iter().filter_map(|levers| least_of(brief, levers, retries)).collect();
    if !singles.is_empty() {
        return singles;
    }
    let all: Vec<Lever> = kinds.concat();
    least_pair(brief, &all, retries).into_iter().collect()
}

fn lines_of_only(brief: &Brief) -> Vec<Lever> {
    Only::decisions(&brief.wanted.only).into_iter().map(Lever::Only).collect()
}

fn lines_of_exclude(brief: &Brief) -> Vec<Lever> {
    Only::decisions(&brief.wanted.exclude).into_iter().map(Lever::Exclude).collect()
}

fn least_sizes(brief: &Brief) -> Vec<Lever> {
    let pieces = brief.pieces().filter(|(id, piece)| piece.needed && piece.alike.is_none_or(|first| first == *id));
    pieces.flat_map(|(id, piece)| piece.dimensions().into_iter().map(move |d| Lever::Least(id, d))).collect()
}

fn leave_outs(brief: &Brief) -> Vec<Lever> {
    let seats = brief.pieces.iter().filter(|piece| piece.kind.is_seat()).count();
    let may_go = |piece: &elbowroom_model::Piece| piece.needed && (seats > 1 || !piece.kind.is_seat());
    let mut found: Vec<(PieceId, &elbowroom_model::Piece)> =
        brief.pieces().filter(|(_, piece)| may_go(piece)).collect();
    // The piece that counts least goes first.
    found.sort_by(|(_, one), (_, other)| one.weight.total_cmp(&other.weight));
    found.into_iter().map(|(id, _)| Lever::LeaveOut(id)).collect()
}

/// Screens that stand on a piece which must stand, and the walls that they may hang on.
fn hangings(brief: &Brief) -> Vec<Lever> {
    let stands = |piece: &elbowroom_model::Piece| piece.needed && brief.is_watched(piece) && !piece.kind.hangs();
    let is_wanted = |wall: &WallId| {
        let mut held = brief.only.iter().filter(|only| is_media_wall(only)).peekable();
        held.peek().is_none() || held.any(|only| *only == Only::MediaWall(Some(*wall)))
    };
    let walls: Vec<WallId> = brief.room.walls().map(|(id, _)| id).filter(is_wanted).collect();
    let pieces = brief.pieces().filter(|(_, piece)| stands(piece));
    pieces.flat_map(|(id, _)| walls.iter().map(move |wall| Lever::Hang(id, *wall))).collect()
}

const fn is_media_wall(only: &Only) -> bool {
    matches!(only, Only::MediaWall(_))
}

fn clearances() -> Vec<Lever> {
    // What makes for comfort is eased by itself where nothing fits.
    Clearance::ALL.iter().copied().filter(|clearance| !clearance.is_comfort()).map(Lever::Clearance).collect()
}

fn walls(brief: &Brief) -> Vec<Lever> {
    brief.room.walls().map(|(id, _)| Lever::Wall(id)).collect()
}

/// The least change among levers of one kind that makes an option possible.
fn least_of(brief: &Brief, levers: &[Lever], retries: &Retries) -> Option<Remedy> {
    let mut best: Option<(f64, Lever, f64)> = None;
    for &lever in levers {
        let Some((now, extreme)) = range(brief, lever) else { continue };
        let most = best.map_or(f64::INFINITY, |(by, _, _)| by);
        // Nothing nearer than what is known already is worth the search.
        let end = if (extreme - now).abs() > most { now + (extreme - now).signum() * most } else { extreme };
        let holds = |to: f64| changed(brief, lever, to).is_some_and(|eased| retries.how_many_fit(&eased, 1) > 0);
        if !holds(end) {
            continue;
        }
        let to = if is_all_or_nothing(lever) { end } else { nearest(now, end, FINE, holds) };
        if (to - now).abs() < most {
            best = Some(((to - now).abs(), lever, to));
        }
        if is_all_or_nothing(lever) {
            break;
        }
    }
    let (_, lever, to) = best?;
    remedy(brief, &[(lever, to)], retries)
}

/// The first pair that helps with both eased as far as they go, then each brought back as far as it can be.
fn least_pair(brief: &Brief, levers: &[Lever], retries: &Retries) -> Option<Remedy> {
    let ranges: Vec<(Lever, f64, f64)> =
        levers.iter().filter_map(|lever| range(brief, *lever).map(|(now, extreme)| (*lever, now, extreme))).collect();
    for (order, &(first, first_now, first_end)) in ranges.iter().enumerate() {
        for &(second, second_now, second_end) in &ranges[..order] {
            let holds = |a: f64, b: f64| {
                let eased = changed(brief, first, a).and_then(|eased| changed(&eased, second, b));
                eased.is_some_and(|eased| retries.how_many_fit(&eased, 1) > 0)
            };
            if (moves_pieces(first) || moves_pieces(second)) && names_piece(first) && names_piece(second)
                || !holds(first_end, second_end)
            {
                continue;
            }
            let a = if is_all_or_nothing(first) {
                first_end
            } else {
                nearest(first_now, first_end, FINE, |to| holds(to, second_end))
            };
            let b = if is_all_or_nothing(second) {
                second_end
            } else {
                nearest(second_now, second_end, FINE, |to| holds(a, to))
            };
            return remedy(brief, &[(second, b), (first, a)], retries);
        }
    }
    None
}

/// The lever is about a piece, by its place in the brief.
const fn names_piece(lever: Lever) -> bool {
    let of_seat = matches!(lever, Lever::Only(Only::SecondSeat(..)) | Lever::Exclude(Only::SecondSeat(..)));
    of_seat || matches!(lever, Lever::Least(..) | Lever::GetsIn(..) | Lever::LeaveOut(_) | Lever::Hang(..))
}

/// Leaving a piece out shifts the places of those after it.
const fn moves_pieces(lever: Lever) -> bool {
    matches!(lever, Lever::LeaveOut(_))
}

const fn is_all_or_nothing(lever: Lever) -> bool {
    matches!(lever, Lever::LeaveOut(_) | Lever::Hang(..) | Lever::Only(_) | Lever::Exclude(_))
}

/// What the lever stands at, and as far as it goes.
fn range(brief: &Brief, lever: Lever) -> Option<(f64, f64)> {
    match lever {
        Lever::Least(id, dimension) | Lever::GetsIn(id, dimension) => {
            let piece = brief.piece(id)?;
            let least = piece.range(dimension)?.least;
            Some((least, least * SMALLEST_SHARE))
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
        Lever::Least(id, dimension) | Lever::GetsIn(id, dimension) => {
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

fn set_least(piece: &mut elbowroom_model::Piece, dimension: Dimension, least: f64) -> Option<()> {
    let range = match dimension {
        Dimension::Width => &mut piece.width,
        Dimension::Return => piece.return_length.as_mut()?,
        Dimension::Depth => &mut piece.depth,
    };
    range.least = least;
    if let Some(step) = piece.steps.first_mut() {
        match dimension {
            Dimension::Width => step.width = step.width.min(least),
            Dimension::Depth => step.depth = step.depth.min(least),
            Dimension::Return => {}
        }
    }
    Some(())
}

fn eased_off_wall(piece: &elbowroom_model::Piece, rule: Clearance, to: f64) -> f64 {
    if piece.kind.traits().off_wall == Some(rule) { piece.off_wall.min(to) } else { piece.off_wall }
}

/// The brief without one piece; pairs that began with it begin with the next.
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

/// The changes as a remedy, with the number of options that they make possible; `None` where that is none.
fn remedy(brief: &Brief, changes: &[(Lever, f64)], retries: &Retries) -> Option<Remedy> {
    // What is told is what was rounded to the shopper's step, so that is what is solved with.
    let rounded: Vec<(Lever, f64)> =
        changes.iter().map(|(lever, to)| (*lever, told_figure(brief, *lever, *to))).collect();
    let count = |changes: &[(Lever, f64)]| {
        let start = Some(brief.clone());
        let eased = changes.iter().fold(start, |eased, (lever, to)| changed(&eased?, *lever, *to));
        eased.map_or(0, |eased| retries.how_many_fit(&eased, COUNTED))
    };
    let (changes, options) = match count(&rounded) {
        0 => (changes.to_vec(), count(changes)),
        options => (rounded, options),
    };
    let change = |(lever, to): &(Lever, f64)| Some(Change { lever: *lever, from: range(brief, *lever)?.0, to: *to });
    (options > 0).then(|| Remedy { changes: changes.iter().filter_map(change).collect(), options })
}

/// The figure rounded to the far side, so that the rounded one helps as well.
fn told_figure(brief: &Brief, lever: Lever, to: f64) -> f64 {
    use elbowroom_model::Rounding;
    match lever {
        Lever::Least(..) | Lever::GetsIn(..) | Lever::Clearance(_) => brief.units.rounded(to, Rounding::Down).max(0.0),
        Lever::Wall(_) => brief.units.rounded(to, Rounding::Up),
        Lever::LeaveOut(_) | Lever::Hang(..) | Lever::Only(_) | Lever::Exclude(_) => to,
    }
}
