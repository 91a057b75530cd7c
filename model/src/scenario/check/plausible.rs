//! Figures that nothing built or sold has: told, with the unit that was likely meant.

use crate::article::the;
use crate::length::{Extent, Measure};
use crate::report::Report;
use crate::tables::Built;
use crate::unit::Unit;
use crate::yaml::Trail;

/// More than so many times the most is nothing that is sold.
const TIMES_THE_MOST: f64 = 3.0;
/// Less than this share of the least is nothing that is sold.
const SHARE_OF_THE_LEAST: f64 = 0.1;

/// Less than this is nobody's height or depth, but 0 may be, mm.
const FINGER: f64 = 10.0;

/// So small a share of the most is next to nothing, where the least is nothing.
const NEXT_TO_NOTHING: f64 = 0.1;

/// A figure of the file, beside what is built or sold.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Figure<'a> {
    /// The item in the room's own words.
    pub(crate) item: &'a str,
    /// The figure's name: `width`.
    pub(crate) figure: &'a str,
    /// As written.
    pub(crate) measure: &'a Measure,
    /// What is built or sold.
    pub(crate) built: Built,
}

/// Tells a figure, or a whole range, that lies far outside what is built or sold; what is no length has its fault already.
pub(crate) fn tell(figure: &Figure<'_>, report: &mut Report<'_>) {
    let Ok(extent) = figure.measure.extent(report.units()) else { return };
    let (least, most) = match extent {
        Extent::One(size) => (Some(size), Some(size)),
        Extent::Between { least, most } => (least, most),
    };
    let too_large = least.filter(|least| *least > TIMES_THE_MOST * figure.built.most);
    let too_small = most.filter(|most| *most > 0.0 && *most < FINGER.max(SHARE_OF_THE_LEAST * figure.built.least));
    if let Some(length) = too_large.or(too_small) {
        let told = told(figure, length, report);
        report.slip(told);
    }
}

/// Whether a length is far outside what is built or sold.
pub(crate) fn is_far_off(length: f64, built: Built) -> bool {
    length > TIMES_THE_MOST * built.most || length < SHARE_OF_THE_LEAST * built.least
}

fn told(figure: &Figure<'_>, length: f64, report: &Report<'_>) -> String {
    let own = figure.measure.own_unit();
    let written = own.unwrap_or(report.units());
    let [least, most] = [figure.built.least, figure.built.most].map(|end| report.words(end));
    let known = if least == most { format!("about {most} is usual") } else { format!("{least} to {most} is usual") };
    let known = if figure.built.least <= 0.0 { format!("no more than {most} is usual") } else { known };
    let is = format!("The {} of {} is {}, and {known}", figure.figure, the(figure.item), report.words(length));
    match (likely_unit(length, written, figure.built), own) {
        (Some(unit), None) => {
            format!("{is}: is the file in {}? It would be {} then.", unit.key(), in_unit(length, written, unit))
        }
        (Some(unit), Some(_)) => {
            format!("{is}: is it meant in {}? It would be {} then.", unit.key(), in_unit(length, written, unit))
        }
        (None, _) => format!("{is}: check the figure and its unit."),
    }
}

fn in_unit(length: f64, written: Unit, unit: Unit) -> String {
    unit.finely(read_as(length, written, unit))
}

/// The length (mm) that the same number means in another unit, mm.
pub(crate) fn read_as(length: f64, written: Unit, unit: Unit) -> f64 {
    length * unit.millimetres() / written.millimetres()
}

/// The unit in which the same number is a length that is built or sold, the nearest to the middle where there are several.
pub(crate) fn likely_unit(length: f64, written: Unit, built: Built) -> Option<Unit> {
    let (least, most) = usual(built);
    // What may be nothing is seldom next to nothing.
    let least = least.max(NEXT_TO_NOTHING * most);
    let middle = (least * most).sqrt();
    let off = |unit: &Unit| (read_as(length, written, *unit) / middle).ln().abs();
    let others = Unit::ALL.iter().copied().filter(|unit| *unit != written);
    let fitting = others.filter(|unit| (least..=most).contains(&read_as(length, written, *unit)));
    fitting.min_by(|one, other| off(one).total_cmp(&off(other)))
}

/// The least and the most: one known figure stands for what lies about it, mm.
pub(crate) fn usual(Built { least, most }: Built) -> (f64, f64) {
    if least < most { (least, most) } else { (least * 0.5, most * 2.0) }
}

/// Tells a screen with a unit of its own that is larger than any: what is further off is told as of any figure. Who writes a
/// small one with its unit was asked before.
pub(crate) fn tell_screen_of_no_size(screen: &Figure<'_>, report: &mut Report<'_>) {
    let Ok(length) = screen.measure.length(report.units()) else { return };
    let Built { least, most } = screen.built;
    let is_off = length > most && !is_far_off(length, screen.built);
    if is_off && screen.measure.own_unit().is_some() {
        let [own, least, most] = [length, least, most].map(|length| Unit::Inch.finely(length));
        let of = the(screen.item);
        report.slip(format!("The screen of {of} is {own}, and {least} to {most} is usual: check the figure."));
    }
}

/// Tells a screen without a unit of its own whose number is no screen's in the file's unit: what was meant is asked back.
pub(crate) fn tell_screen_in_doubt(screen: &Figure<'_>, at: &Trail, report: &mut Report<'_>) {
    if screen.measure.own_unit().is_some() {
        return;
    }
    let Ok(length) = screen.measure.length(report.units()) else { return };
    let Built { least, most } = screen.built;
    if length <= 0.0 || (least..=most).contains(&length) {
        return;
    }
    let (written, units) = (screen.measure.as_written(), report.units());
    let inches = |length: f64| Unit::Inch.finely(length);
    let here = match units {
        Unit::Inch => inches(length),
        _ => format!("{} ({})", report.words(length), inches(length)),
    };
    let message = format!(
        "`screen` of {} is {written}: by the file's unit {here}, and screens have {} to {}.",
        screen.item,
        inches(least),
        inches(most)
    );
    let remedy = match likely_unit(length, units, screen.built) {
        Some(Unit::Inch) => format!(
            "Write its unit: `{written} in` if it is {written} inches ({}), `{written} {}` if it is so small or large.",
            report.words(read_as(length, units, Unit::Inch)),
            units.key()
        ),
        Some(unit) => format!(
            "Write its unit: `{written} {0}` if it is that in {0} ({1}), `{written} {2}` if it is so small or large.",
            unit.key(),
            inches(read_as(length, units, unit)),
            units.key()
        ),
        None => "Give its diagonal with its unit, such as `55 in`.".to_owned(),
    };
    report.add(at, "screen_in_doubt", screen.item, message, remedy);
}
