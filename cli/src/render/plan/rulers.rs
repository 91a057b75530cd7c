//! What a reader measures by: the scale bar, the line of 100 mm, the arrow to the north.

use elbowroom_model::{Brief, Point, Unit};

use super::frame::way;
use crate::drawing::{Area, At, Fill, Mark, Path, Pen, Scale, Text, Tone, Weight, hand, width_of};
use crate::words::plan as words;

/// How high the strip is that holds the scale bar and the check line, mm.
pub(super) const STRIP: f64 = 13.0;
/// The check line, mm of paper.
const CHECK: f64 = 100.0;
/// The scale bar is no longer than this, mm of paper.
const LONGEST_BAR: f64 = 66.0;
/// Type, mm.
const TYPE: f64 = hand::FIGURES;
const FOOT: f64 = 304.8;

/// Scale, paper, unit, version and room for a date, below the check line of a strip.
pub(super) fn imprint(strip: &Area, scale: Scale, paper: &str, unit: &str) -> Mark {
    let text = words::imprint(&words::scale(&scale.to_string(), paper, unit));
    let width = width_of(&text, TYPE, Weight::Book);
    Text::new(At::new(strip.right() - width, strip.bottom() - 0.2), TYPE, text).into()
}

/// Scale bar and check line, side by side in `strip`, or one above the other where it is too narrow.
pub(super) fn strip(strip: &Area, scale: Scale, units: Unit) -> Vec<Mark> {
    let line = strip.at.y + 6.0;
    let mut marks = vec![Mark::Layer("scale-bar")];
    marks.extend(bar(At::new(strip.at.x + 1.0, line), scale, units));
    marks.push(Mark::Layer("check-line"));
    marks.extend(check(At::new(strip.right() - CHECK - 1.0, line)));
    marks
}

/// A bar of whole metres or feet, black and white in turn.
fn bar(at: At, scale: Scale, units: Unit) -> Vec<Mark> {
    let (unit, sign) = match units {
        Unit::Inch | Unit::Foot => (FOOT, "ft"),
        Unit::Millimetre | Unit::Centimetre | Unit::Metre => (1000.0, "m"),
    };
    let most = LONGEST_BAR / scale.on_paper(unit);
    let step = [1.0, 2.0, 5.0, 10.0, 20.0].into_iter().find(|step| most / step < 6.0).unwrap_or(50.0);
    // At most five steps.
    let steps = (most / step).floor().max(1.0) as u32;
    let length = scale.on_paper(unit * step);
    let mut marks = Vec::new();
    for place in 0..=steps {
        let x = at.x + f64::from(place) * length;
        if place < steps {
            let fill = Fill::Tone(if place % 2 == 0 { Tone::Ink } else { Tone::Paper });
            marks.push(Path::area(&Area::new(x, at.y, length, 1.6), Some(Pen::ink(hand::FITTINGS)), fill).into());
        }
        let figure = f64::from(place) * step;
        let text = if place == steps { format!("{figure} {sign}") } else { format!("{figure}") };
        marks.push(Text::new(At::new(x, at.y - 1.0), TYPE, text).centred().into());
    }
    marks.push(Text::new(at + At::new(0.0, 5.0), TYPE, scale.to_string()).into());
    marks
}

fn check(from: At) -> Vec<Mark> {
    let to = from + At::new(CHECK, 0.0);
    let stroke = |at: At| Path::line([at - At::new(0.0, 1.5), at + At::new(0.0, 1.5)], Pen::ink(hand::FITTINGS)).into();
    let text = Text::new(from + At::new(1.0, 4.4), TYPE, words::CHECK_LINE).into();
    vec![Path::line([from, to], Pen::ink(hand::FITTINGS)).into(), stroke(from), stroke(to), text]
}

/// The way to the north on the sheet, where the room knows it.
pub(super) fn to_north(brief: &Brief) -> Option<At> {
    let (wall, bearing) = brief.room.bearing?;
    let out = -brief.room.wall(wall)?.inward();
    // A bearing is told clockwise from the north; from the way out, the north lies as far the other way round.
    let (sine, cosine) = bearing.to_radians().sin_cos();
    Some(way(Point::new(out.x * cosine - out.y * sine, out.x * sine + out.y * cosine)))
}

/// An arrow to the north in a ring; its size is 11 by 11 mm.
pub(super) fn north(middle: At, way: At) -> Vec<Mark> {
    let (tip, foot, side) = (middle + way * 3.4, middle - way * 3.4, way.right() * 1.5);
    let letter = middle + way * 4.6;
    let width = width_of(words::NORTH, hand::NAMES, Weight::Bold);
    vec![
        Mark::Layer("north"),
        Path::ring([tip, foot + side, middle - way * 2.2], Some(Pen::ink(hand::FITTINGS)), Fill::Tone(Tone::Ink))
            .into(),
        Path::ring([tip, foot - side, middle - way * 2.2], Some(Pen::ink(hand::FITTINGS)), Fill::Tone(Tone::Paper))
            .into(),
        Text::new(letter + At::new(-width / 2.0, 0.9), hand::NAMES, words::NORTH).bold().into(),
    ]
}
