//! Walls, and the measure along each.

use super::figure::Figure;
use super::frame::{to_measure, way};
use super::outline::{THICKNESS, gap, solid};
use crate::drawing::{At, Fill, Label, Mark, Path, Pen, Tone, hand, meet};
use elbowroom_model::{Wall, WallId};

/// Type of a wall's name and length, mm.
const TYPE: f64 = hand::FIGURES;

/// The floor, a shade off the paper.
pub(super) fn floor(figure: &mut Figure<'_>) {
    figure.put(Mark::Layer("floor"));
    let ring = figure.frame.all(&figure.shown.brief().room.outline());
    figure.put(Path::ring(ring, None, Fill::Tone(Tone::Floor)));
}

/// The walls; no words lie on them, nor where they stand open.
pub(super) fn draw(figure: &mut Figure<'_>) {
    figure.put(Mark::Layer("walls"));
    let brief = figure.shown.brief();
    for ring in brief.room.items.iter().filter_map(|item| gap(brief, item)) {
        figure.labels.keep_out_ring(ring.map(|at| figure.frame.at(at)));
    }
    for ring in solid(brief) {
        let ring = figure.frame.all(&ring);
        if let Ok(corners) = ring.clone().try_into() {
            figure.labels.keep_out_ring(corners);
        }
        figure.put(Path::ring(ring, Some(Pen::of(hand::WALLS, Tone::Wall)), Fill::Tone(Tone::Wall)));
    }
}

/// How much nearer to its wall a measure may lie where there is no room for it, mm of paper.
const NEARER: f64 = 3.0;

/// The length of each wall, outside it: the longest first, a line along it where no other is, else words with a leader.
pub(super) fn measure(figure: &mut Figure<'_>) {
    figure.put(Mark::Layer("measures"));
    let brief = figure.shown.brief();
    let outline = figure.frame.all(&brief.room.outline());
    figure.labels.room(outline.clone());
    let solid: Vec<Vec<At>> = solid(brief).iter().map(|ring| figure.frame.all(ring)).collect();
    let mut walls: Vec<(WallId, &Wall)> = brief.room.walls().collect();
    walls.sort_by(|one, other| other.1.length().total_cmp(&one.1.length()));
    let mut drawn: Vec<[At; 2]> = Vec::new();
    let mut named: Vec<Label> = Vec::new();
    for (id, wall) in walls {
        let far = to_measure(brief, id, figure.frame.scale);
        let found = [far, far - NEARER].into_iter().map(|out| lines(figure, wall, out)).find(|[line, left, right]| {
            let is_inside = |line: &[At; 2]| {
                (0..=10).any(|step| (line[0] + (line[1] - line[0]) * (f64::from(step) / 10.0)).is_in(&outline))
            };
            [line, left, right].into_iter().all(|one| {
                let is_free = |other: &[At; 2]| !meet(one, other);
                drawn.iter().all(is_free) && solid.iter().all(|ring| !meet(one, ring)) && !is_inside(one)
            })
        });
        let text = format!("{} {}", wall.name, figure.shown.tape(wall.length()));
        let label = Label { tone: Tone::Grey, outside: true, ..Label::new(At::default(), Vec::new(), TYPE, text) };
        match found {
            Some(lines) => {
                drawn.extend(lines);
                named.push(line_along(figure, wall, lines, label));
            }
            None => {
                let face = wall.point_at(wall.length() / 2.0) - wall.inward() * THICKNESS;
                named.push(Label { of: figure.frame.at(face), ..label });
            }
        }
    }
    // When every line lies: words then keep off all of them.
    named.iter().for_each(|label| figure.labels.place(label));
}

/// The line that measures a wall so far out from it, and the two that lead there from its ends.
fn lines(figure: &Figure<'_>, wall: &Wall, to_line: f64) -> [[At; 2]; 3] {
    let (frame, out) = (figure.frame, way(wall.inward()) * -1.0);
    let face = frame.length(THICKNESS) + 1.0;
    let [from, to] = [wall.start, wall.end].map(|end| frame.at(end));
    let lead = |end: At| [end + out * face, end + out * (to_line + 1.0)];
    [[from + out * to_line, to + out * to_line], lead(from), lead(to)]
}

/// Draws the lines, and gives the label with its places along them.
fn line_along(figure: &mut Figure<'_>, wall: &Wall, [line, left, right]: [[At; 2]; 3], label: Label) -> Label {
    for lead in [left, right] {
        figure.put(Path::line(lead, Pen::of(hand::FITTINGS, Tone::Grey)));
        figure.labels.bar(lead);
    }
    super::gaps::measure_line(figure, line, Tone::Grey);
    let (along, out) = (way(wall.along()), way(wall.inward()) * -1.0);
    let label = Label { turned: super::items::upright(along), of: line[0].middle(line[1]), ..label };
    let reach = (line[1] - line[0]).length();
    let off = out * (label.size().1 / 2.0 + 0.7);
    let shares = [0.5, 0.35, 0.65, 0.2, 0.8];
    let places = shares.map(|share| line[0] + along * (reach * share) + off).to_vec();
    Label { places, ..label }
}
