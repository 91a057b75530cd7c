//! Labels among each other and among lines.

use super::Labels;
use crate::drawing::{Area, At, Fill, Label, Mark, Side, Step, meet};

fn texts(marks: &[Mark]) -> usize {
    marks.iter().filter(|mark| matches!(mark, Mark::Text(text) if text.side == Side::Middle)).count()
}

#[test]
fn what_has_no_room_at_its_place_gets_a_leader_and_then_a_number() {
    let middle = At::new(20.0, 10.0);
    let label = |text: &str| Label::new(middle, vec![middle], 2.5, text);
    let mut labels = Labels::new(Area::new(0.0, 0.0, 40.0, 20.0));
    labels.place(&label("a name of some length"));
    assert_eq!(labels.marks.len(), 1);
    // It names what lies below the first.
    labels.place(&Label { of: At::new(20.0, 13.0), ..label("another name of some length") });
    assert_eq!((texts(&labels.marks), labels.marks.len()), (2, 4), "a leader with a dot");
    let long = label("a name that is far too long to find a place on so small a sheet");
    labels.place(&Label { of: At::new(5.0, 5.0), ..long });
    let (marks, key) = labels.finished();
    assert_eq!((texts(&marks), key.len()), (3, 1));
}

/// A line under it costs more than a leader of a step beside it.
#[test]
fn a_label_is_led_off_a_line_under_its_only_place() {
    let middle = At::new(20.0, 20.0);
    let led = |lines: &[f64]| {
        let mut labels = Labels::new(Area::new(0.0, 0.0, 40.0, 40.0));
        lines.iter().for_each(|y| labels.mind([At::new(0.0, *y), At::new(40.0, *y)]));
        labels.place(&Label::new(middle, vec![middle], 2.0, "here"));
        labels.marks.len() > 1
    };
    assert_eq!([led(&[]), led(&[20.0])], [false, true]);
}

#[test]
fn a_label_had_rather_not_lie_on_a_line() {
    let (on, off) = (At::new(10.0, 10.0), At::new(10.0, 15.0));
    let mut labels = Labels::new(Area::new(0.0, 0.0, 20.0, 20.0));
    labels.mind([At::new(0.0, 10.0), At::new(20.0, 10.0)]);
    labels.place(&Label::new(on, vec![on, off], 2.0, "here"));
    assert!(matches!(&labels.marks[0], Mark::Text(text) if text.at.y > 13.0));
}

/// Where short walls meet, their names stand off with a leader each: crossed, they would be read as each other's.
#[test]
fn leaders_do_not_cross() {
    let mut labels = Labels::new(Area::new(0.0, 0.0, 60.0, 60.0));
    // Nothing has room near what it names, but for far above and far below.
    labels.keep_out(Area::new(0.0, 18.0, 60.0, 24.0));
    for (x, y) in
        [(26.0, 28.0), (30.0, 26.0), (34.0, 28.0), (26.0, 32.0), (30.0, 34.0), (34.0, 32.0), (28.0, 30.0), (32.0, 30.0)]
    {
        let at = At::new(x, y);
        labels.place(&Label::new(at, vec![at], 2.5, "north pier 45"));
    }
    let (marks, key) = labels.finished();
    let leaders: Vec<[At; 2]> = marks
        .iter()
        .filter_map(|mark| match mark {
            Mark::Path(path) if path.fill == Fill::None => match path.steps[..] {
                [Step::Move(from), Step::Line(to)] => Some([from, to]),
                _ => None,
            },
            _ => None,
        })
        .collect();
    assert!(
        leaders.len() + key.len() >= 8 && leaders.len() >= 6,
        "{} leaders, {} in the key",
        leaders.len(),
        key.len()
    );
    for (place, one) in leaders.iter().enumerate() {
        assert!(leaders[..place].iter().all(|other| !meet(other, one)), "{leaders:?}");
    }
}
