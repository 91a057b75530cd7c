//! A sheet in fewer letters, for a screen that many drawings come to at once; what one sees stays the same.

use super::{At, Fill, Mark, Path, Sheet, Step};

/// Places are written in so many parts of a millimetre: as drawn on a screen, less than a tenth of a dot.
const PARTS: f64 = 100.0;

/// The sheet with its places rounded, and lines of one look that follow one another made one path.
pub(crate) fn lighter(sheet: Sheet) -> Sheet {
    let mut marks: Vec<Mark> = Vec::with_capacity(sheet.marks.len());
    for mark in sheet.marks.into_iter().map(rounded) {
        match (marks.last_mut(), mark) {
            (Some(Mark::Path(last)), Mark::Path(path)) if are_alike(last, &path) => last.steps.extend(path.steps),
            (_, mark) => marks.push(mark),
        }
    }
    Sheet { marks, ..sheet }
}

/// Lines alone: where outlines with something within overlap, one would fill what is between them.
fn are_alike(one: &Path, other: &Path) -> bool {
    one.fill == Fill::None && other.fill == Fill::None && one.pen == other.pen
}

fn rounded(mark: Mark) -> Mark {
    match mark {
        Mark::Path(path) => Mark::Path(Path { steps: path.steps.into_iter().map(rounded_step).collect(), ..path }),
        Mark::Text(text) => Mark::Text(super::Text { at: place(text.at), ..text }),
        layer @ Mark::Layer(_) => layer,
    }
}

fn rounded_step(step: Step) -> Step {
    match step {
        Step::Move(at) => Step::Move(place(at)),
        Step::Line(at) => Step::Line(place(at)),
        Step::Arc { radius, clockwise, to } => Step::Arc { radius: part(radius), clockwise, to: place(to) },
        Step::Close => Step::Close,
    }
}

fn place(at: At) -> At {
    At::new(part(at.x), part(at.y))
}

fn part(figure: f64) -> f64 {
    (figure * PARTS).round() / PARTS
}

#[cfg(test)]
mod tests {
    use super::super::{Dash, Pen, Tone};
    use super::*;

    fn sheet(marks: Vec<Mark>) -> Sheet {
        let paper = super::super::Paper { width: 100.0, height: 80.0 };
        Sheet { paper, title: String::new(), description: String::new(), marks }
    }

    #[test]
    fn lines_of_one_look_become_one_path_and_nothing_else_does() {
        let line = |x: f64, pen| Mark::from(Path::line([At::new(x, 1.0), At::new(x, 9.123_456)], pen));
        let (thin, dashed) = (Pen::ink(0.18), Pen::ink(0.18).broken(Dash::Dashed));
        let filled = |x: f64| {
            Mark::from(Path::ring(
                [At::new(x, 0.0), At::new(x + 2.0, 0.0), At::new(x, 2.0)],
                None,
                Fill::Tone(Tone::Seat),
            ))
        };
        let marks = vec![
            line(1.0, thin),
            line(2.0, thin),
            line(3.0, dashed),
            Mark::Layer("walls"),
            line(4.0, dashed),
            filled(1.0),
            filled(2.0),
        ];
        let found = lighter(sheet(marks)).marks;
        assert_eq!(found.len(), 6, "{found:?}");
        let Mark::Path(first) = &found[0] else { panic!("{found:?}") };
        let down = |x: f64| [Step::Move(At::new(x, 1.0)), Step::Line(At::new(x, 9.12))];
        assert_eq!(first.steps, [down(1.0), down(2.0)].concat());
    }
}
