//! Clear gaps, measured as drawings do: a line between two strokes, with its length.

use super::figure::Figure;
use crate::drawing::{At, Label, Mark, Path, Pen, Tone};

/// Type of lengths, mm.
const TYPE: f64 = 2.2;

/// Each gap that a rule asks for.
pub(super) fn draw(figure: &mut Figure<'_>) {
    figure.put(Mark::Layer("gaps"));
    for ends in figure.plan.gaps.clone() {
        let ends = ends.map(|at| figure.frame.at(at));
        measure_line(figure, ends, Tone::Ink);
    }
}

/// The length of each.
pub(super) fn name(figure: &mut Figure<'_>) {
    let gaps: Vec<([At; 2], String)> = figure
        .shown
        .gaps()
        .iter()
        .zip(&figure.plan.gaps)
        .map(|(gap, ends)| (ends.map(|at| figure.frame.at(at)), figure.shown.tape(gap.clear)))
        .collect();
    for ([from, to], text) in gaps {
        let (of, way) = (from.middle(to), (to - from).unit());
        let label = Label { ground: Some(Tone::Paper), ..Label::new(of, Vec::new(), TYPE, text) };
        let (width, height) = label.size();
        let across = way.right();
        let half = (across.x.abs() * width + across.y.abs() * height) / 2.0 + 0.7;
        let places = [half, -half, half + 2.0, -half - 2.0, half + 4.0, -half - 4.0].map(|off| of + across * off);
        let slid = [3.0, -3.0].into_iter().flat_map(|step| places.map(|at| at + way * step));
        figure.labels.place(&Label { places: places.into_iter().chain(slid).collect(), ..label });
    }
}

/// A line that measures, with a slanted stroke across each end.
pub(super) fn measure_line(figure: &mut Figure<'_>, [from, to]: [At; 2], tone: Tone) {
    let way = (to - from).unit();
    let slant = (way + way.right()).unit() * 0.9;
    figure.put(Path::line([from, to], Pen::of(0.15, tone)));
    for end in [from, to] {
        figure.put(Path::line([end - slant, end + slant], Pen::of(0.3, tone)));
    }
}
