//! Clear gaps, measured as drawings do: a line between two strokes, with its length.

use elbowroom_model::Point;

use super::Purpose;
use super::figure::Figure;
use super::matters::matters;
use crate::drawing::{At, Label, Mark, Path, Pen, Tone};

/// Type of lengths, mm.
const TYPE: f64 = 2.2;

/// Each gap that a rule asks for; on a client's sheet those that matter most.
pub(super) fn draw(figure: &mut Figure<'_>) {
    figure.put(Mark::Layer("gaps"));
    for (ends, _) in measured(figure) {
        measure_line(figure, ends, Tone::Ink);
    }
}

/// Both ends of each on the sheet, and its length.
fn measured(figure: &Figure<'_>) -> Vec<([At; 2], f64)> {
    let (shown, plan) = (figure.shown, &figure.plan);
    let gaps: Vec<([Point; 2], f64)> = match figure.purpose {
        Purpose::Client => matters(&shown, plan).into_iter().map(|matter| (matter.ends, matter.clear)).collect(),
        Purpose::Working => {
            shown.gaps().iter().map(|gap| gap.clear).zip(&plan.gaps).map(|(clear, ends)| (*ends, clear)).collect()
        }
    };
    gaps.into_iter().map(|(ends, clear)| (ends.map(|at| figure.frame.at(at)), clear)).collect()
}

/// The length of each.
pub(super) fn name(figure: &mut Figure<'_>) {
    for ([from, to], clear) in measured(figure) {
        let text = figure.shown.tape(clear);
        let (of, way) = (from.middle(to), (to - from).unit());
        let label = Label { ground: Some(Tone::Floor), ..Label::new(of, Vec::new(), TYPE, text) };
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
