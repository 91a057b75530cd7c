//! Rules 8 and 9 of the result format: smaller pieces fit, and none can be larger.

use elbowroom_model::{Brief, Clearance, Dimension, Piece, PieceKind};
use serde_json::Value;

use super::comfort::{self, Eased};
use super::placing::{self, SLACK, Table, face};
use super::plane::{P, add, dot, extent, left, minus};
use super::room::Ground;
use super::stand::Stand;
use super::{turned, turning, walking};

/// How much no size may grow, mm.
const BY: f64 = 20.0;

/// What rounding explains of a route that must hold, and as much more where one must clearly hold, mm.
const HOLDS: f64 = 2.0 * SLACK + 1.0;
/// Sets of smaller sizes that are tried.
const SETS: u64 = 4;

/// Rule 8: least <= together <= alone <= most, and smaller sizes keep the rules.
pub(crate) fn smaller(brief: &Brief, ground: &Ground, stands: &[Stand<'_>], option: &Value) -> Vec<String> {
    let mut all = ranges(option);
    let eased = Eased::as_laid_out(option, &comfort::when_smaller(brief, ground, stands));
    for set in 0..SETS {
        let shrunk: Vec<Stand<'_>> =
            stands.iter().enumerate().map(|(i, stand)| shrink(stands, stand, set, i as u64)).collect();
        let mut wrong = placing::complaints(brief, ground, &shrunk, Table::NotTooNear);
        wrong.extend(eased.complaints(&comfort::when_smaller(brief, ground, &shrunk)));
        wrong.extend(walking::too_narrow(brief, ground, stands, &shrunk, &option["routes"], HOLDS));
        all.extend(wrong.into_iter().map(|wrong| format!("8 with smaller pieces: {wrong}")));
    }
    all
}

/// Whether places would still be right about a dining table that is bought narrower than it is deep: its chairs are at its
/// ends then.
fn hold_with_narrow_tables(brief: &Brief, ground: &Ground, stands: &[Stand<'_>]) -> bool {
    let mut narrow = stands.to_vec();
    for (stand, narrow) in stands.iter().zip(&mut narrow) {
        if stand.piece.kind == PieceKind::DiningTable && stand.piece.steps.is_empty() {
            narrow.width = (stand.depth - 1.0).max(stand.piece.width.least).min(stand.width);
            hold_side(stands, stand, narrow);
        }
    }
    placing::complaints(brief, ground, &narrow, Table::NotTooNear).is_empty()
}

fn ranges(option: &Value) -> Vec<String> {
    let mut all = Vec::new();
    for piece in option["pieces"].as_array().into_iter().flatten() {
        let dimensions = ["width", "return", "second_return", "depth", "return_depth"];
        for dimension in dimensions.into_iter().filter(|it| !piece["size"][it].is_null()) {
            let range = &piece["range"][dimension];
            let figure = |name: &str| range[name].as_f64();
            let [least, together, most] = ["least", "together", "most"].map(figure);
            let order = [least, figure("planned").or(least), together, figure("alone").or(together), most];
            let rises = order.windows(2).all(|pair| pair[0].zip(pair[1]).is_some_and(|(a, b)| a <= b + 1e-6));
            let laid_out = piece["size"][dimension].as_f64();
            let same = together.zip(laid_out).is_some_and(|(a, b)| (a - b).abs() < 1e-6);
            if !rises || !same {
                all.push(format!("8 range of {}'s {dimension}: {range}, laid out {laid_out:?}", piece["name"]));
            }
        }
    }
    all
}

/// Shares of one that a number and a place give; the first set is all least.
fn share(set: u64, place: u64) -> f64 {
    if set == 0 {
        return 0.0;
    }
    let mixed = (set * 7_919 + place * 104_729 + 12_345).wrapping_mul(2_654_435_761) % 1_000_003;
    mixed as f64 / 1_000_003.0
}

fn shrink<'a>(stands: &[Stand<'a>], stand: &Stand<'a>, set: u64, place: u64) -> Stand<'a> {
    let mut smaller = stand.clone();
    if stand.is_flat() {
        return smaller;
    }
    // What comes in steps is one of them.
    let steps = &stand.piece.steps;
    let steps: Vec<_> = steps.iter().filter(|step| step.width <= stand.width && step.depth <= stand.depth).collect();
    if let Some(step) = steps.get((share(set, place * 3) * steps.len() as f64) as usize) {
        (smaller.width, smaller.depth) = (step.width, step.depth);
        return smaller;
    }
    let between = |range: elbowroom_model::SizeRange, size: f64, salt: u64| {
        let least = range.least.min(size);
        least + (size - least) * share(set, place * 3 + salt)
    };
    // The width of a U is told as one figure: a narrower one would close up on what stands in its bay.
    if stand.second.is_none() {
        smaller.width = between(stand.piece.width, stand.width, 0);
    }
    smaller.depth = between(stand.piece.depth, stand.depth, 1);
    smaller.run = stand.run.zip(stand.piece.return_length).map(|(run, range)| between(range, run, 2));
    smaller.second = stand.second.zip(stand.piece.second_return).map(|(run, range)| between(range, run, 4));
    smaller.own = stand.own.zip(stand.piece.return_depth).map(|(own, range)| between(range, own, 5));
    if stand.piece.square {
        smaller.depth = smaller.width;
    }
    hold_side(stands, stand, &mut smaller);
    smaller
}

/// A table keeps its side toward its seat, and its centre line.
fn hold_side(stands: &[Stand<'_>], stand: &Stand<'_>, other: &mut Stand<'_>) {
    let Some(side) = side(stands, stand) else { return };
    let centre = |stand: &Stand<'_>, axis: P| {
        let (low, high) = extent(&stand.main(), axis);
        (low + high) / 2.0
    };
    let across = left(side);
    let back = extent(&stand.main(), side).1 - extent(&other.main(), side).1;
    other.anchor = add(other.anchor, side, back);
    other.anchor = add(other.anchor, across, centre(stand, across) - centre(other, across));
}

/// The way from a coffee table to the seat that it lies nearest before.
fn side(stands: &[Stand<'_>], table: &Stand<'_>) -> Option<P> {
    if table.piece.kind != PieceKind::CoffeeTable {
        return None;
    }
    let clear = |seat: &&Stand<'_>| {
        let before = extent(&table.main(), seat.facing).0 - extent(&seat.main(), seat.facing).1;
        let across = left(seat.facing);
        let beside = super::plane::overlap(extent(&table.main(), across), extent(&seat.main(), across)) <= 0.0;
        if before < 0.0 || beside { f64::INFINITY } else { before }
    };
    let seats = stands.iter().filter(|seat| seat.piece.kind.is_seat());
    // An armchair drawn up to a sofa's table may stand nearer to it than the sofa that it serves.
    let drawn_up = |seat: &&Stand<'_>| seat.piece.kind == PieceKind::Armchair;
    let seat = seats.min_by(|a, b| drawn_up(a).cmp(&drawn_up(b)).then(clear(a).total_cmp(&clear(b))))?;
    Some(minus([0.0, 0.0], seat.facing))
}

/// Rule 9: no size can grow by 20 mm.
pub(crate) fn larger(brief: &Brief, ground: &Ground, stands: &[Stand<'_>], option: &Value) -> Vec<String> {
    let mut all = Vec::new();
    let eased = Eased::as_laid_out(option, &comfort::all(brief, ground, stands));
    for (i, stand) in stands.iter().enumerate().filter(|(_, stand)| is_free(brief, stand.piece)) {
        for dimension in stand.piece.dimensions() {
            let size = match dimension {
                Dimension::Width => stand.width,
                Dimension::Return => stand.run.unwrap_or(f64::INFINITY),
                Dimension::SecondReturn => stand.second.unwrap_or(f64::INFINITY),
                Dimension::Depth => stand.depth,
                Dimension::ReturnDepth => stand.own.unwrap_or(f64::INFINITY),
            };
            if dimension == Dimension::Width && stand.second.is_some() {
                continue;
            }
            let most = stand.piece.range(dimension).map_or(0.0, |range| range.most);
            if size + BY > most {
                continue;
            }
            let fits = |with: &Vec<Stand<'_>>| {
                placing::complaints(brief, ground, with, Table::InPlace).is_empty()
                    && turned::complaints(brief, with).is_empty()
                    && eased.surely_keep(&comfort::all(brief, ground, with))
                    && turning::surely_turns(brief, ground, with, HOLDS)
                    && walking::too_narrow(brief, ground, with, with, &option["routes"], -HOLDS).is_empty()
                    && hold_with_narrow_tables(brief, ground, with)
            };
            if grown(brief, stands, i, dimension).iter().any(fits) {
                all.push(format!("9 {}'s {} can grow by {BY} mm", stand.name(), dimension.key()));
            }
        }
    }
    all
}

/// Neither in steps nor tied to another size.
fn is_free(brief: &Brief, piece: &Piece) -> bool {
    let place = brief.pieces().find(|(_, other)| other.name == piece.name).map(|(id, _)| id);
    let tied = piece.alike.is_some() || brief.pieces.iter().any(|other| other.alike.is_some() && other.alike == place);
    let exempt =
        matches!(piece.kind, PieceKind::Rug | PieceKind::OpenFloor | PieceKind::DiningTable | PieceKind::FloorLamp);
    !tied && piece.steps.is_empty() && !piece.square && !exempt
}

fn grown<'a>(brief: &Brief, stands: &[Stand<'a>], i: usize, dimension: Dimension) -> Vec<Vec<Stand<'a>>> {
    let stand = &stands[i];
    let mut larger = stand.clone();
    match dimension {
        Dimension::Width => larger.width += BY,
        Dimension::Return => larger.run = larger.run.map(|run| run + BY),
        Dimension::SecondReturn => larger.second = larger.second.map(|run| run + BY),
        Dimension::Depth => larger.depth += BY,
        Dimension::ReturnDepth => larger.own = larger.own.map(|own| own + BY),
    }
    hold_side(stands, stand, &mut larger);
    let toward = side(stands, stand).unwrap_or_else(|| minus([0.0, 0.0], stand.facing));
    let axis = if dimension == Dimension::Depth { stand.facing } else { stand.along() };
    // Held at its corner, or at the other end; held at either end; held at its back.
    let shifts: Vec<P> = match (stand.away, dimension) {
        (Some(away), Dimension::Width) => vec![[0.0, 0.0], [-away[0] * BY, -away[1] * BY]],
        (Some(_), Dimension::Return | Dimension::SecondReturn) => {
            vec![[0.0, 0.0], [-stand.facing[0] * BY, -stand.facing[1] * BY]]
        }
        (None, _) if dot(axis, toward).abs() < 0.5 => {
            [-0.5, 0.5].map(|by| [axis[0] * by * BY, axis[1] * by * BY]).to_vec()
        }
        _ => vec![[0.0, 0.0]],
    };
    let needs = brief.rules.get(Clearance::SeatToTable);
    let own_table = |other: &Stand<'_>| {
        let before = extent(&other.main(), stand.facing).0 - extent(&stand.main(), stand.facing).1;
        other.piece.kind == PieceKind::CoffeeTable && (before - needs).abs() <= 1.0
    };
    let with = |shift: P| {
        let mut all = stands.to_vec();
        all[i] = larger.clone();
        all[i].anchor = add(all[i].anchor, shift, 1.0);
        if stand.piece.kind.is_seat() && dimension == Dimension::Depth {
            for other in all.iter_mut().filter(|other| own_table(other)) {
                other.anchor = add(other.anchor, stand.facing, BY);
            }
        }
        all
    };
    debug_assert!(!face(stand, stand));
    shifts.into_iter().map(with).collect()
}
