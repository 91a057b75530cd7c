//! The least change that makes an option possible, one of each kind.

use elbowroom_model::{Brief, Clearance, Only, Piece, PieceId, WallId};

use super::lever::{Lever, changed, is_all_or_nothing, is_media_wall, moves_pieces, names_piece, range, told_figure};
use super::retry::{IsOption, Retries, nearest};
use super::tolerance::FINE;
use crate::stop::Stop;

/// So many arrangements of a changed brief are tried in full before what was changed is held to be no help.
const TRIED: usize = 6;

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

/// A lever, and what it is set to.
type Set = (Lever, f64);

/// What would help where nothing fits: at most one remedy of each kind, or the least pair. That a layout exists makes no
/// option yet: `is_option` says whether the changed brief is answered with one.
pub(crate) fn remedies(brief: &Brief, stop: Stop<'_>, is_option: &IsOption<'_>) -> Vec<Remedy> {
    let retries = &Retries::until(stop);
    let holds_good = |changes: Vec<Set>| confirmed(brief, &changes, retries, is_option);
    let lines = [lines_of_only(brief), lines_of_exclude(brief)].concat();
    let kinds = [
        lines,
        least_sizes(brief),
        raised_sizes(brief),
        hangings(brief),
        leave_outs(brief),
        clearances(),
        walls(brief),
    ];
    let singles = kinds.iter().filter_map(|levers| least_of(brief, levers, retries).and_then(holds_good));
    let singles: Vec<Remedy> = singles.collect();
    if !singles.is_empty() {
        return singles;
    }
    let all: Vec<Lever> = kinds.concat();
    least_pair(brief, &all, retries).and_then(holds_good).into_iter().collect()
}

/// The changes as a remedy, where the room so changed is answered with an option; else half as far again to the end of what is
/// changed, or all the way, where that is.
fn confirmed(brief: &Brief, changes: &[Set], retries: &Retries<'_>, is_option: &IsOption<'_>) -> Option<Remedy> {
    let helped = |changes: Vec<Set>| {
        let changed = all_changed(brief, &changes)?;
        let fitting = retries.that_fit(&changed, COUNTED);
        let first = &fitting[..TRIED.min(fitting.len())];
        let change = |(lever, to): &Set| Some(Change { lever: *lever, from: range(brief, *lever)?.0, to: *to });
        let remedy = || Remedy { changes: changes.iter().filter_map(change).collect(), options: fitting.len() };
        retries.has_option(&changed, first, is_option).then(remedy)
    };
    let may_go_further = changes.iter().any(|(lever, _)| !is_all_or_nothing(*lever));
    let further = [0.5, 1.0].into_iter().filter(|_| may_go_further).map(|share| further(brief, changes, share));
    std::iter::once(changes.to_vec()).chain(further).find_map(helped)
}

/// Each of the changes taken by `share` of what is left to its end, to the shopper's step.
fn further(brief: &Brief, changes: &[Set], share: f64) -> Vec<Set> {
    let by = |(lever, to): &Set| {
        let left = range(brief, *lever).map_or(0.0, |(_, end)| end - to);
        (*lever, told_figure(brief, *lever, to + left * share))
    };
    changes.iter().map(by).collect()
}

fn all_changed(brief: &Brief, changes: &[Set]) -> Option<Brief> {
    changes.iter().try_fold(brief.clone(), |so_far, (lever, to)| changed(&so_far, *lever, *to))
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

/// The sizes of the seats that the others stand about: one that is bought at its least may leave no room before it.
fn raised_sizes(brief: &Brief) -> Vec<Lever> {
    let seats = brief.pieces().filter(|(_, piece)| piece.needed && piece.is_seat_of_main_group());
    seats.flat_map(|(id, piece)| piece.dimensions().into_iter().map(move |d| Lever::Raised(id, d))).collect()
}

fn leave_outs(brief: &Brief) -> Vec<Lever> {
    let seats = brief.pieces.iter().filter(|piece| piece.kind.is_seat()).count();
    let may_go = |piece: &Piece| piece.needed && (seats > 1 || !piece.kind.is_seat());
    let mut found: Vec<(PieceId, &Piece)> = brief.pieces().filter(|(_, piece)| may_go(piece)).collect();
    // The piece that counts least goes first.
    found.sort_by(|(_, one), (_, other)| one.weight.total_cmp(&other.weight));
    found.into_iter().map(|(id, _)| Lever::LeaveOut(id)).collect()
}

/// Screens that stand on a piece which must stand, and the walls that they may hang on.
fn hangings(brief: &Brief) -> Vec<Lever> {
    let stands = |piece: &Piece| piece.needed && brief.is_watched(piece) && !piece.kind.hangs();
    let is_wanted = |wall: &WallId| {
        let mut held = brief.only.iter().filter(|only| is_media_wall(only)).peekable();
        held.peek().is_none() || held.any(|only| *only == Only::MediaWall(Some(*wall)))
    };
    let walls: Vec<WallId> = brief.room.walls().map(|(id, _)| id).filter(is_wanted).collect();
    let pieces = brief.pieces().filter(|(_, piece)| stands(piece));
    pieces.flat_map(|(id, _)| walls.iter().map(move |wall| Lever::Hang(id, *wall))).collect()
}

fn clearances() -> Vec<Lever> {
    // What makes for comfort is eased by itself where nothing fits.
    Clearance::ALL.iter().copied().filter(|clearance| !clearance.is_comfort()).map(Lever::Clearance).collect()
}

fn walls(brief: &Brief) -> Vec<Lever> {
    brief.room.walls().map(|(id, _)| Lever::Wall(id)).collect()
}

/// The least change among levers of one kind that makes an option possible.
fn least_of(brief: &Brief, levers: &[Lever], retries: &Retries<'_>) -> Option<Vec<Set>> {
    let mut best: Option<(f64, Lever, f64)> = None;
    for &lever in levers {
        let Some((now, extreme)) = range(brief, lever) else { continue };
        let most = best.map_or(f64::INFINITY, |(by, _, _)| by);
        // Nothing nearer than what is known already is worth the search.
        let end = if (extreme - now).abs() > most { now + (extreme - now).signum() * most } else { extreme };
        let holds = |to: f64| changed(brief, lever, to).is_some_and(|eased| !retries.that_fit(&eased, 1).is_empty());
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
    Some(as_told(brief, &[(lever, to)], retries))
}

/// The first pair that helps with both eased as far as they go, then each brought back as far as it can be.
fn least_pair(brief: &Brief, levers: &[Lever], retries: &Retries<'_>) -> Option<Vec<Set>> {
    let ranges: Vec<(Lever, f64, f64)> =
        levers.iter().filter_map(|lever| range(brief, *lever).map(|(now, extreme)| (*lever, now, extreme))).collect();
    for (order, &(first, first_now, first_end)) in ranges.iter().enumerate() {
        for &(second, second_now, second_end) in &ranges[..order] {
            let holds = |a: f64, b: f64| {
                let eased = changed(brief, first, a).and_then(|eased| changed(&eased, second, b));
                eased.is_some_and(|eased| !retries.that_fit(&eased, 1).is_empty())
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
            return Some(as_told(brief, &[(second, b), (first, a)], retries));
        }
    }
    None
}

/// The changes as they are told: what is told is what was rounded to the shopper's step, so that is what is solved with, where
/// it helps as well.
fn as_told(brief: &Brief, changes: &[Set], retries: &Retries<'_>) -> Vec<Set> {
    let rounded: Vec<Set> = changes.iter().map(|(lever, to)| (*lever, told_figure(brief, *lever, *to))).collect();
    let helps = |changes: &[Set]| all_changed(brief, changes).is_some_and(|it| !retries.that_fit(&it, 1).is_empty());
    if helps(&rounded) { rounded } else { changes.to_vec() }
}
