//! Clear gaps, measured as drawings do: a line between two strokes, with its length.

use elbowroom_model::Point;

use super::Purpose;
use super::figure::Figure;
use super::furniture::on_floor;
use super::matters::matters;
use crate::drawing::{At, Label, Mark, Path, Pen, Tone, hand, meet};

/// Type of lengths, mm.
const TYPE: f64 = hand::FIGURES;

/// How far a line is moved aside at most so that it runs clear, mm, and by which steps.
const FURTHEST: f64 = 45.0;
const STEP: f64 = 1.5;
/// Two lines side by side are at least so far apart, mm: a figure stands between them.
const APART: f64 = 3.4;
/// The sine of the angle up to which two lines run side by side.
const ASIDE: f64 = 0.5;
/// What leads to a line that was moved ends so far beyond it, mm.
const BEYOND: f64 = 0.8;

/// A gap with the line that measures it.
pub(super) struct Laid {
    /// Between these it is.
    feet: [At; 2],
    /// The ends of the line: moved aside where it would have run over a piece or another line.
    ends: [At; 2],
    /// Its length, mm of the room.
    clear: f64,
}

impl Laid {
    /// The line that measures it.
    pub(super) const fn line(&self) -> [At; 2] {
        self.ends
    }
}

/// Each gap that a rule asks for; on a client's sheet those that matter most. What was laid is for `name` to name.
pub(super) fn draw(figure: &mut Figure<'_>) -> Vec<Laid> {
    figure.put(Mark::Layer("gaps"));
    let laid = laid(figure);
    for &Laid { feet, ends, .. } in &laid {
        for (foot, end) in feet.into_iter().zip(ends).filter(|(foot, end)| foot != end) {
            let lead = [foot, end + (end - foot).unit() * BEYOND];
            figure.put(Path::line(lead, Pen::of(hand::FITTINGS, Tone::Grey)));
            figure.labels.bar(lead);
        }
        measure_line(figure, ends, Tone::Ink);
    }
    laid
}

/// Every line in its place: those that show where something is first, then those that can be moved aside.
fn laid(figure: &Figure<'_>) -> Vec<Laid> {
    let outline = figure.frame.all(&figure.shown.brief().room.outline());
    let bodies = bodies(figure);
    let mut laid: Vec<Laid> = Vec::new();
    for ([from, to], clear, slides) in measured(figure) {
        let across = (to - from).unit().right();
        let moved = |off: f64| [from + across * off, to + across * off];
        let is_clear = |off: &f64| {
            let ends = moved(*off);
            let leads = [[from, ends[0]], [to, ends[1]]];
            let off_bodies = |line: &[At; 2]| bodies.iter().all(|body| !meet(line, body));
            let off_edges = || {
                let (way, wide) = ((to - from).unit() * BEYOND, across * BEYOND);
                let [from, to] = [ends[0] + way, ends[1] + way * -1.0];
                bodies.iter().all(|body| !meet(&[from + wide, to + wide, to - wide, from - wide], body))
            };
            off_bodies(&ends)
                && (*off == 0.0 || off_edges())
                && (*off == 0.0 || leads.iter().all(off_bodies))
                && ends.iter().all(|end| *off == 0.0 || (*end + (ends[0].middle(ends[1]) - *end) * 0.1).is_in(&outline))
                && laid.iter().all(|other| !are_close(ends, other.ends))
        };
        let steps = (1..).map(|step| f64::from(step) * STEP).take_while(|off| *off <= FURTHEST);
        let offs = std::iter::once(0.0).chain(steps.flat_map(|off| [off, -off]));
        let off = if slides { offs.into_iter().find(is_clear) } else { Some(0.0) };
        // What runs clear nowhere is told in the list of gaps alone.
        laid.extend(off.map(|off| Laid { feet: [from, to], ends: moved(off), clear }));
    }
    laid
}

/// What stands on the floor, a hair smaller than it is: a line along an edge of it is not on it.
pub(super) fn bodies(figure: &Figure<'_>) -> Vec<Vec<At>> {
    const HAIR: f64 = 0.15;
    let parts = on_floor(&figure.shown).flat_map(|one| one.parts()).map(|part| figure.frame.all(&part));
    let smaller = |part: Vec<At>| {
        let middle = part.iter().fold(At::default(), |sum, at| sum + *at) * (1.0 / part.len().max(1) as f64);
        part.iter().map(|at| *at + (middle - *at).unit() * HAIR).collect()
    };
    parts.map(smaller).collect()
}

/// Whether two lines run side by side with no room for a figure between them; they may cross.
fn are_close([from, to]: [At; 2], other: [At; 2]) -> bool {
    let side = (to - from).unit().right() * APART;
    let aside = (other[1] - other[0]).unit().dot(side.unit()).abs();
    aside < ASIDE && meet(&[from + side, to + side, to - side, from - side], &other)
}

/// Both ends of each on the sheet, its length, and whether its line may be moved aside; those that may not come first.
fn measured(figure: &Figure<'_>) -> Vec<([At; 2], f64, bool)> {
    let (shown, plan) = (figure.shown, &figure.plan);
    let mut gaps: Vec<([Point; 2], f64, bool)> = match figure.purpose {
        Purpose::Client => {
            let matters = matters(&shown, plan).into_iter();
            matters.filter_map(|matter| Some((matter.ends?, matter.clear, matter.slides))).collect()
        }
        Purpose::Working => {
            let gaps = shown.gaps().iter().map(|gap| gap.clear).zip(&plan.gaps);
            gaps.map(|(clear, ends)| (*ends, clear, true)).collect()
        }
    };
    gaps.sort_by_key(|(.., slides)| *slides);
    gaps.into_iter().map(|(ends, clear, slides)| (ends.map(|at| figure.frame.at(at)), clear, slides)).collect()
}

/// The length of each.
pub(super) fn name(figure: &mut Figure<'_>, laid: &[Laid]) {
    for &Laid { ends: [from, to], clear, .. } in laid {
        let text = figure.shown.tape(clear);
        let (of, way) = (from.middle(to), (to - from).unit());
        let label = Label { ground: Some(Tone::Floor), ..Label::new(of, Vec::new(), TYPE, text) };
        let across = way.right();
        let half = label.half(across) + 0.7;
        let places = [half, -half, half + 2.0, -half - 2.0].map(|off| of + across * off);
        let slid = [3.0, -3.0, 6.0, -6.0, 9.0, -9.0].into_iter();
        let slid = slid.filter(|step: &f64| step.abs() < (to - from).length() / 2.0);
        let slid = slid.flat_map(|step| places.map(|at| at + way * step));
        figure.labels.place(&Label { places: places.into_iter().chain(slid).collect(), ..label });
    }
}

/// A line that measures, with a slanted stroke across each end; no words lie on any of it.
pub(super) fn measure_line(figure: &mut Figure<'_>, [from, to]: [At; 2], tone: Tone) {
    let way = (to - from).unit();
    let slant = (way + way.right()).unit() * 0.9;
    figure.put(Path::line([from, to], Pen::of(hand::FITTINGS, tone)));
    figure.labels.bar([from, to]);
    for stroke in [from, to].map(|end| [end - slant, end + slant]) {
        figure.put(Path::line(stroke, Pen::of(hand::OUTLINES, tone)));
        figure.labels.bar(stroke);
    }
}
