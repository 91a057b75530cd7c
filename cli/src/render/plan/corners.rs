//! One piece in its room, with the numbers of its corners and the lengths that find them: what its table on the tape
//! sheet tells in figures.

use elbowroom_solver::setting_out::{Measures, PieceOut, SettingOut};

use super::figure::Figure;
use super::frame::Frame;
use super::points::{self, LETTER};
use super::{Purpose, Shown, furniture, walls};
use crate::drawing::{At, Dash, Fill, Label, Mark, Paper, Path, Pen, Sheet, Tone, Weight};
use crate::words::tape as words;

/// Round the walls, for the letters of the points, mm of paper.
const ROUND: f64 = 5.5;
/// Type of a corner's number, mm.
const NUMBER: f64 = 2.8;
/// The way of the tape.
const TAPE: Pen = Pen::of(0.25, Tone::Vermilion).broken(Dash::Dashed);

/// The `place`th piece that is set out, as large as a sheet so wide and high holds its room; `None` where there is none.
pub(crate) fn corners(shown: Shown<'_>, out: &SettingOut, place: usize, widest: &Paper) -> Option<Sheet> {
    let piece = out.pieces.get(place)?;
    let one = shown.pieces().into_iter().find(|one| one.placed.piece == piece.piece)?;
    let (frame, area) = Frame::of_room(shown.brief(), widest, ROUND);
    let mut figure = Figure::new(shown, Purpose::Working, shown.plan(), frame, area);
    walls::floor(&mut figure);
    furniture::one(&mut figure, one);
    walls::draw(&mut figure);
    let used = tapes(&mut figure, out, piece);
    for point in used {
        points::letter(&mut figure, out, point, LETTER);
    }
    number(&mut figure, piece);
    let name = &one.piece.name;
    Some(Sheet {
        paper: Paper { width: area.width, height: area.height },
        title: words::diagram(&words::piece(place + 1, name)),
        description: words::DIAGRAM.to_owned(),
        marks: figure.finished().marks,
    })
}

/// The way of the tape to each corner; the points that it starts from.
fn tapes(figure: &mut Figure<'_>, out: &SettingOut, piece: &PieceOut) -> Vec<usize> {
    figure.put(Mark::Layer("tape"));
    let mut used = Vec::new();
    for corner in &piece.corners {
        let at = figure.frame.at(corner.place);
        let (from, bend) = match corner.measures {
            Measures::Offsets { from, wall, out: off, .. } => {
                let inward =
                    figure.shown.brief().room.wall(wall).map(elbowroom_model::Wall::inward).unwrap_or_default();
                ([from, from], Some(figure.frame.at(corner.place - inward * off)))
            }
            Measures::Crossing { first, second, .. } => ([first.0, second.0], None),
        };
        for start in from {
            let Some(point) = out.points.get(start) else { continue };
            let line = std::iter::once(figure.frame.at(point.place)).chain(bend).chain([at]);
            figure.put(Path::line(line, TAPE));
            if !used.contains(&start) {
                used.push(start);
            }
            if bend.is_some() {
                break;
            }
        }
        figure.put(Path::circle(at, 0.6, None, Fill::Tone(Tone::Vermilion)));
    }
    used
}

/// The number of each corner: outside the piece where there is floor, else within it.
fn number(figure: &mut Figure<'_>, piece: &PieceOut) {
    let corners: Vec<At> = piece.corners.iter().map(|corner| figure.frame.at(corner.place)).collect();
    let count = corners.len();
    for (place, at) in corners.iter().enumerate() {
        let [before, after] = [place + count - 1, place + 1].map(|other| (corners[other % count] - *at).unit());
        let within = (before + after).unit();
        let places = [-2.8, -3.4, 2.8, 3.4, -4.2, 4.2, -5.2].map(|step| *at + within * step).into();
        let label = Label { over: true, ground: None, ..Label::new(*at, places, NUMBER, "") };
        figure.labels.place(&Label { lines: vec![(words::number(place), Weight::Bold)], ..label });
    }
}
