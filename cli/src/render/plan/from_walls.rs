//! Where each main piece stands, measured from the walls: for one corner of it how far it is from each of two walls; for two
//! corners where the piece is parallel to neither.

use elbowroom_model::{ItemKind, Piece, Point};

use super::Shown;
use super::figure::Figure;
use super::gaps::{Laid, bodies, measure_line};
use super::offsets::{Offsets, offsets};
use super::shown::PieceShown;
use crate::drawing::{At, Label, Mark, Tone, hand, meet};
use crate::words::plan as words;

/// Type of lengths, mm.
const TYPE: f64 = hand::FIGURES;
/// Two lines side by side are so far apart, mm: a figure stands between them.
const APART: f64 = 2.8;

/// A corner that is set out.
pub(super) struct SetOut {
    offsets: Offsets,
    /// Its lines have room; else it is told in words.
    is_clear: bool,
}

/// Lines where both have room; what has none is for `name` to tell in words, and it is given all.
pub(super) fn draw(figure: &mut Figure<'_>, gaps: &[Laid]) -> Vec<SetOut> {
    figure.put(Mark::Layer("from-walls"));
    let all = all(figure, gaps);
    for one in all.iter().filter(|one| one.is_clear) {
        for line in lines(figure, &one.offsets) {
            measure_line(figure, line, Tone::Grey);
        }
    }
    all
}

/// The lengths.
pub(super) fn name(figure: &mut Figure<'_>, all: &[SetOut]) {
    for one in all {
        if !one.is_clear {
            in_words(figure, &one.offsets);
            continue;
        }
        for ([from, to], length) in lines(figure, &one.offsets).into_iter().zip(one.offsets.from) {
            let (of, way) = (from.middle(to), (to - from).unit());
            let label =
                Label { tone: Tone::Grey, ..Label::new(of, Vec::new(), TYPE, figure.shown.tape(length.out.max(0.0))) };
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
fn in_words(figure: &mut Figure<'_>, offsets: &Offsets) {
    let room = &figure.shown.brief().room;
    let told = offsets.from.map(|length| (room.wall_name(length.wall), figure.shown.tape(length.out.max(0.0))));
    let corner = figure.frame.at(offsets.corner);
    let text = words::from_walls(told.each_ref().map(|(wall, out)| (*wall, out.as_str())));
    figure.labels.place(&Label { tone: Tone::Grey, ..Label::new(corner, Vec::new(), TYPE, text) });
}

/// From each wall to the corner.
fn lines(figure: &Figure<'_>, offsets: &Offsets) -> [[At; 2]; 2] {
    offsets.from.map(|length| [length.foot, offsets.corner].map(|at| figure.frame.at(at)))
}

/// For each main piece the corner whose lines run clear, or else the nearest; two where one does not tell how it is turned.
fn all(figure: &Figure<'_>, gaps: &[Laid]) -> Vec<SetOut> {
    let Shown::Option { answer, .. } = figure.shown else { return Vec::new() };
    let room = &answer.brief.room;
    let held = held(figure);
    let bodies = bodies(figure);
    let mut taken: Vec<[At; 2]> = gaps.iter().map(Laid::line).collect();
    let mut found = Vec::new();
    for piece in on_sheet(&figure.shown) {
        let mut choices = offsets(room, &held, piece);
        let mut corners = 2;
        while corners > 0 {
            let Some(one) = best(figure, &choices, &bodies, &taken) else { break };
            let tells_turn = one.offsets.tells_turn(room, piece.placed.facing);
            corners = if tells_turn { 0 } else { corners - 1 };
            choices.retain(|other| other.corner != one.offsets.corner);
            taken.extend(lines(figure, &one.offsets).into_iter().filter(|_| one.is_clear));
            found.push(one);
        }
    }
    found
}

/// What is set out: seats, and what carries a screen.
fn on_sheet<'a>(shown: &Shown<'a>) -> impl Iterator<Item = PieceShown<'a>> {
    let is_main = |piece: &Piece| piece.kind.is_seat() || piece.kind.carries_screen();
    shown.pieces().into_iter().filter(move |one| is_main(one.piece))
}

/// The shortest lengths whose lines run clear, else the shortest.
fn best(figure: &Figure<'_>, choices: &[Offsets], bodies: &[Vec<At>], taken: &[[At; 2]]) -> Option<SetOut> {
    let clear = choices.iter().find(|one| is_clear(lines(figure, one), bodies, taken));
    let offsets = *clear.or(choices.first())?;
    Some(SetOut { offsets, is_clear: clear.is_some() })
}

/// What stands at walls and on the floor for good, but for steps.
fn held(figure: &Figure<'_>) -> Vec<Vec<Point>> {
    let room = &figure.shown.brief().room;
    let fixed = room.fixed.iter().filter(|fixed| fixed.step().is_none()).map(|fixed| fixed.corners.clone());
    let at_walls = room.items.iter().filter_map(|item| {
        let depth = match &item.kind {
            ItemKind::Radiator(radiator) => radiator.depth,
            ItemKind::Fireplace(fire) => fire.depth,
            _ => return None,
        };
        let ((left, right), into) = (room.ends(item)?, -figure.outward(item) * depth);
        Some(vec![left, right, right + into, left + into])
    });
    fixed.chain(at_walls).collect()
}

/// Whether both lines run over no piece and along no other line.
fn is_clear(lines: [[At; 2]; 2], bodies: &[Vec<At>], taken: &[[At; 2]]) -> bool {
    lines.iter().all(|line| {
        let [from, to] = *line;
        let wide = (to - from).unit().right() * APART;
        let band = [from + wide, to + wide, to - wide, from - wide];
        bodies.iter().all(|body| !meet(line, body)) && taken.iter().all(|other| !meet(&band, other))
    })
}

#[cfg(test)]
mod tests {
    use elbowroom_model::Point;

    use super::super::figure::Figure;
    use super::super::frame::Frame;
    use super::super::tests::ranked;
    use super::super::{Purpose, Shown};
    use super::{all, on_sheet};
    use crate::drawing::Area;

    /// Whoever lays both lengths square out from the walls that they name finds the corner of the piece, in every option of
    /// every demo room; a piece that is parallel to no wall has two.
    #[test]
    fn every_main_piece_is_found_from_the_walls_that_its_lengths_name() {
        let (mut pieces, mut turned) = (0, 0);
        for answer in ranked() {
            for option in &answer.options {
                let shown = Shown::Option { answer, option };
                let area = Area::new(0.0, 0.0, 200.0, 200.0);
                let frame = Frame::within(&answer.brief, &area);
                let figure = Figure::new(shown, Purpose::Working, shown.plan(), frame, area);
                for one in on_sheet(&shown) {
                    let of = format!("{}, option {}: {}", answer.brief.room.name, option.rank, one.piece.name);
                    let corners: Vec<Point> = one.parts().into_iter().flatten().collect();
                    let own = all(&figure, &[]).into_iter().filter(|set| corners.contains(&set.offsets.corner));
                    let own: Vec<_> = own.collect();
                    assert!(!own.is_empty(), "{of}");
                    let along = |wall: &elbowroom_model::Wall| wall.along().dot(one.placed.facing).abs();
                    let walls =
                        own.iter().flat_map(|set| set.offsets.from).filter_map(|it| answer.brief.room.wall(it.wall));
                    if walls.into_iter().all(|wall| (0.03..0.999).contains(&along(wall))) {
                        assert!(own.len() == 2, "{of}: {}", own.len());
                        turned += 1;
                    }
                    for set in &own {
                        assert!((met(answer, set) - set.offsets.corner).norm() < 0.01, "{of}");
                    }
                    pieces += 1;
                }
            }
        }
        assert!(pieces > 200 && turned > 5, "{pieces} {turned}");
    }

    /// Where the lines meet that lie so far out from the two walls.
    fn met(answer: &elbowroom_solver::answer::Answer, set: &super::SetOut) -> Point {
        let line = |length: super::super::offsets::Length| {
            let wall = answer.brief.room.wall(length.wall).unwrap();
            (wall.start + wall.inward() * length.out, wall.along())
        };
        let [(from, along), (other, way)] = set.offsets.from.map(line);
        from + along * ((other - from).cross(way) / along.cross(way))
    }
}
