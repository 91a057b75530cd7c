//! What a tape starts from and what it finds: the points of the room by their letters, the corners of pieces by their
//! numbers, as the tape sheet calls them.

use elbowroom_model::{Brief, Point};
use elbowroom_solver::setting_out::{FixedPoint, Mark as PointMark, SettingOut};

use super::figure::Figure;
use super::frame::way;
use super::outline::THICKNESS;
use super::shown::PieceShown;
use crate::drawing::{At, Fill, Label, Mark, Path, Tone, Weight, clipped};
use crate::words::tape as words;

/// Type of a point's letter, mm.
pub(super) const LETTER: f64 = 3.2;
/// Type of a corner's number, mm.
const NUMBER: f64 = 1.8;
/// Radius of the dot at a point, mm.
const DOT: f64 = 0.8;

/// A dot at every point.
pub(super) fn draw(figure: &mut Figure<'_>, out: &SettingOut) {
    figure.put(Mark::Layer("points"));
    for point in &out.points {
        let at = figure.frame.at(point.place);
        figure.put(Path::circle(at, DOT, None, Fill::Tone(Tone::Vermilion)));
    }
}

/// The letter of each point, outside the room; the number of each corner, within its piece.
pub(super) fn name(figure: &mut Figure<'_>, out: &SettingOut) {
    for place in 0..out.points.len() {
        letter(figure, out, place, LETTER);
    }
    for piece in &out.pieces {
        let corners: Vec<At> = piece.corners.iter().map(|corner| figure.frame.at(corner.place)).collect();
        for (place, at) in corners.iter().enumerate() {
            let count = corners.len();
            let [before, after] = [place + count - 1, place + 1].map(|other| (corners[other % count] - *at).unit());
            let within = (before + after).unit();
            let places = [1.6, 2.2, 3.0, 4.0, -1.6, -2.2].map(|step| *at + within * step).into();
            figure.labels.place(&Label::new(*at, places, NUMBER, words::number(place)));
        }
    }
}

/// The letter of a point, outside the room, in this type.
pub(super) fn letter(figure: &mut Figure<'_>, out: &SettingOut, place: usize, size: f64) {
    let Some(point) = out.points.get(place) else { return };
    let (at, away) = (figure.frame.at(point.place), away(figure.shown.brief(), place, point));
    let off = figure.frame.length(THICKNESS) + 1.0;
    let places = [2.2, 3.2, 4.5, 6.0, -5.0, -6.5].map(|step: f64| at + away * (step + off * step.signum()));
    let label = Label { tone: Tone::Vermilion, ..Label::new(at, places.into(), size, "") };
    figure.labels.place(&Label { lines: vec![(words::letter(place), Weight::Bold)], ..label });
}

/// Its place in the order of strokes and its name, as the sheet heads it.
pub(super) fn place_and_name(out: &SettingOut, one: PieceShown<'_>) -> Vec<(String, Weight)> {
    let place = out.pieces.iter().position(|marked| marked.piece == one.placed.piece).unwrap_or_default();
    vec![(clipped(&words::piece(place + 1, &one.piece.name)), Weight::Bold)]
}

/// The way out of the room at a point, on the sheet.
fn away(brief: &Brief, place: usize, point: &FixedPoint) -> At {
    let walls = &brief.room.walls;
    let inward = match &point.mark {
        PointMark::Jamb { wall, .. } => brief.room.wall(*wall).map(elbowroom_model::Wall::inward),
        PointMark::Corner { .. } => {
            let [before, after] = [place + walls.len() - 1, place].map(|wall| walls[wall % walls.len()].inward());
            Some(before + after)
        }
    };
    let inward = inward.and_then(Point::unit).unwrap_or_default();
    way(inward) * -1.0
}
