//! Where each main piece stands, measured from the walls: for one corner of it the length out from a wall and the length along
//! that wall, as the tape sheet has them.

use elbowroom_model::{Piece, Point, WallId};
use elbowroom_solver::setting_out::{Mark as PointMark, Measures, PieceOut, SettingOut, setting_out};

use super::Shown;
use super::figure::Figure;
use super::gaps::{bodies, measure_line};
use crate::drawing::{At, Label, Mark, Tone, meet};
use crate::words::plan::{self as words, WallEnd};

/// Type of lengths, mm.
const TYPE: f64 = 2.0;
/// The roll that strips are cut from changes no measure; mm.
const ROLL: f64 = 50_000.0;
/// Beyond the end of a length along a wall there must be a wall, within so much, mm.
const TO_WALL: f64 = 20.0;

/// The two lengths of one corner.
pub(super) struct Pair {
    corner: At,
    /// Out from the wall, and along it: the line and the length in mm of the room.
    lines: [([At; 2], f64); 2],
    wall: WallId,
    /// The end of the wall that the length along runs from, and the wall in line with it that ends there.
    end: (WallEnd, WallId),
}

/// Lines where both have room, else nothing: `name` tells them in words, and is given all.
pub(super) fn draw(figure: &mut Figure<'_>) -> Vec<(Pair, bool)> {
    figure.put(Mark::Layer("from-walls"));
    let pairs = pairs(figure);
    for (pair, is_clear) in &pairs {
        for (line, _) in pair.lines.iter().filter(|_| *is_clear) {
            measure_line(figure, *line, Tone::Grey);
            figure.labels.bar(*line);
        }
    }
    pairs
}

/// The lengths.
pub(super) fn name(figure: &mut Figure<'_>, pairs: &[(Pair, bool)]) {
    for (pair, is_clear) in pairs {
        if !is_clear {
            in_words(figure, pair);
            continue;
        }
        for ([from, to], length) in pair.lines {
            let (of, way) = (from.middle(to), (to - from).unit());
            let label = Label { tone: Tone::Grey, ..Label::new(of, Vec::new(), TYPE, figure.shown.tape(length)) };
            let across = way.right();
            let half = label.half(across) + 0.7;
            let slid =
                [0.0, 4.0, -4.0, 8.0, -8.0].into_iter().filter(|step: &f64| step.abs() < (to - from).length() / 2.0);
            let places = slid.flat_map(|step| [half, -half].map(|off| of + way * step + across * off)).collect();
            figure.labels.place(&Label { places, ..label });
        }
    }
}

/// What has no room for lines.
fn in_words(figure: &mut Figure<'_>, pair: &Pair) {
    let room = &figure.shown.brief().room;
    let [out, along] = [pair.lines[0].1, pair.lines[1].1].map(|length| figure.shown.tape(length));
    let (end, run) = pair.end;
    let run = (run != pair.wall).then(|| room.wall_name(run));
    let text = words::from_wall(room.wall_name(pair.wall), &out, &along, end, run);
    figure.labels.place(&Label { tone: Tone::Grey, ..Label::new(pair.corner, Vec::new(), TYPE, text) });
}

/// For each main piece the corner whose lines run clear, or else the nearest; whether they do.
fn pairs(figure: &Figure<'_>) -> Vec<(Pair, bool)> {
    let Shown::Option { answer, option } = figure.shown else { return Vec::new() };
    let out = setting_out(&answer.brief, option, ROLL);
    let is_main = |piece: &Piece| piece.kind.is_seat() || piece.kind.carries_screen();
    let main = out.pieces.iter().filter(|one| answer.brief.piece(one.piece).is_some_and(is_main));
    let bodies = bodies(figure);
    let mut taken: Vec<[At; 2]> = Vec::new();
    let mut found = Vec::new();
    for piece in main {
        let mut all: Vec<Pair> = corners(figure, &out, piece);
        all.sort_by(|one, other| length(one).total_cmp(&length(other)));
        let clear = all.iter().position(|pair| is_clear(figure, pair, &bodies, &taken));
        let place = clear.unwrap_or(0);
        if place < all.len() {
            let pair = all.swap_remove(place);
            if clear.is_some() {
                taken.extend(pair.lines.iter().map(|(line, _)| *line));
            }
            found.push((pair, clear.is_some()));
        }
    }
    found
}

fn length(pair: &Pair) -> f64 {
    pair.lines.iter().map(|(_, length)| length).sum()
}

/// Every corner that is set out from one wall.
fn corners(figure: &Figure<'_>, out: &SettingOut, piece: &PieceOut) -> Vec<Pair> {
    let room = &figure.shown.brief().room;
    let pair = |corner: &elbowroom_solver::setting_out::CornerOut| {
        let Measures::Offsets { from, wall, along, out: off } = corner.measures else { return None };
        let (point, inward) = (out.points.get(from)?, room.wall(wall)?.inward());
        let start = point.place;
        let foot = corner.place - inward * off;
        let beside = start + inward * off;
        let line = |ends: [Point; 2]| ends.map(|at| figure.frame.at(at));
        let lines = [(line([foot, corner.place]), off), (line([corner.place, beside]), along)];
        let way = (corner.place - start).dot(room.wall(wall)?.along());
        let end = match point.mark {
            PointMark::Corner { starts, .. } if way >= 0.0 => (WallEnd::Left, starts),
            PointMark::Corner { ends, .. } => (WallEnd::Right, ends),
            PointMark::Jamb { .. } => return None,
        };
        Some(Pair { corner: figure.frame.at(corner.place), lines, wall, end })
    };
    piece.corners.iter().filter_map(pair).collect()
}

/// Whether both lines end at walls and run over no piece and along no line of another.
fn is_clear(figure: &Figure<'_>, pair: &Pair, bodies: &[Vec<At>], taken: &[[At; 2]]) -> bool {
    let outline = figure.frame.all(&figure.shown.brief().room.outline());
    let hair = figure.frame.length(TO_WALL);
    pair.lines.iter().all(|(line, length)| {
        let [from, to] = *line;
        let (way, wide) = ((to - from).unit(), (to - from).unit().right() * 2.8);
        let band = [from + wide, to + wide, to - wide, from - wide];
        let ends_at_wall = *length == pair.lines[0].1 || !(to + way * hair).is_in(&outline);
        let inside = (1..10).all(|step| (from + (to - from) * (f64::from(step) / 10.0)).is_in(&outline));
        ends_at_wall
            && (inside || *length < 2.0 * TO_WALL)
            && bodies.iter().all(|body| !meet(line, body))
            && taken.iter().all(|other| !meet(&band, other))
    })
}

#[cfg(test)]
mod tests {
    use elbowroom_model::scenario;
    use elbowroom_solver::{Limits, Unwatched, rank};

    use super::super::figure::Figure;
    use super::super::frame::Frame;
    use super::super::{Purpose, Shown};
    use super::{WallEnd, pairs};
    use crate::drawing::Area;

    /// A length along a wall runs from the end that is named, whichever is nearer.
    #[test]
    fn lengths_along_a_wall_run_from_the_end_that_they_name() {
        let mut ends = Vec::new();
        for room in ["which-hand", "canal-flat", "oblique"] {
            let path = format!("{}/../scenarios/{room}.yaml", env!("CARGO_MANIFEST_DIR"));
            let brief = scenario::read(&std::fs::read_to_string(path).unwrap(), None).unwrap();
            let answer = rank(&brief, &Limits::default(), &Unwatched);
            for option in answer.options.iter().take(4) {
                let shown = Shown::Option { answer: &answer, option };
                let area = Area::new(0.0, 0.0, 200.0, 200.0);
                let figure = Figure::new(shown, Purpose::Working, shown.plan(), Frame::within(&brief, &area), area);
                for (pair, _) in pairs(&figure) {
                    let (end, run) = pair.end;
                    let [out, along] = pair.lines.map(|(_, length)| length);
                    let (wall, run) = (brief.room.wall(pair.wall).unwrap(), brief.room.wall(run).unwrap());
                    let (place, way) = match end {
                        WallEnd::Left => (run.start, wall.along()),
                        WallEnd::Right => (run.end, -wall.along()),
                    };
                    let corner = figure.frame.at(place + way * along + wall.inward() * out);
                    assert!((corner - pair.corner).length() < 0.01, "{room}: {:?} {:?}", pair.end, pair.lines);
                    ends.push(end);
                }
            }
        }
        assert!(ends.contains(&WallEnd::Left) && ends.contains(&WallEnd::Right), "{ends:?}");
    }
}
