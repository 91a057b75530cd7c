//! Walls, and the measure along each.

use super::figure::Figure;
use super::frame::{to_measure, way};
use super::outline::{THICKNESS, solid};
use crate::drawing::{Fill, Label, Mark, Path, Pen, Tone};

/// Type of a wall's name and length, mm.
const TYPE: f64 = 2.3;

/// The floor, a shade off the paper.
pub(super) fn floor(figure: &mut Figure<'_>) {
    figure.put(Mark::Layer("floor"));
    let ring = figure.frame.all(&figure.shown.brief().room.outline());
    figure.put(Path::ring(ring, None, Fill::Tone(Tone::Floor)));
}

/// The walls.
pub(super) fn draw(figure: &mut Figure<'_>) {
    figure.put(Mark::Layer("walls"));
    for ring in solid(figure.shown.brief()) {
        let ring = figure.frame.all(&ring);
        if let Ok(corners) = ring.clone().try_into() {
            figure.labels.keep_out_ring(corners);
        }
        figure.put(Path::ring(ring, Some(Pen::of(0.5, Tone::Wall)), Fill::Tone(Tone::Wall)));
    }
}

/// The length of each wall, outside it.
pub(super) fn measure(figure: &mut Figure<'_>) {
    figure.put(Mark::Layer("measures"));
    let frame = figure.frame;
    for (id, wall) in figure.shown.brief().room.walls() {
        let out = way(wall.inward()) * -1.0;
        let line = to_measure(figure.shown.brief(), id, frame.scale);
        let [from, to] = [wall.start, wall.end].map(|end| frame.at(end) + out * line);
        let face = frame.length(THICKNESS) + 1.0;
        for (end, at) in [(wall.start, from), (wall.end, to)] {
            figure.put(Path::line([frame.at(end) + out * face, at + out * 1.0], Pen::of(0.1, Tone::Grey)));
        }
        super::gaps::measure_line(figure, [from, to], Tone::Grey);
        figure.labels.mind([from, to]);
        let along = way(wall.along());
        let turned = super::items::upright(along);
        let text = format!("{} {}", wall.name, figure.shown.tape(wall.length()));
        let label = Label { turned, tone: Tone::Grey, ..Label::new(from.middle(to), Vec::new(), TYPE, text) };
        let reach = (to - from).length();
        let off = out * (label.size().1 / 2.0 + 0.7);
        let shares = [0.5, 0.35, 0.65, 0.2, 0.8];
        let places = shares.map(|share| from + along * (reach * share) + off).to_vec();
        figure.labels.place(&Label { places, ..label });
    }
}
