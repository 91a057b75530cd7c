//! Figures that are no sizes in the file's unit and usual ones in another: one or two may be odd things, but where most speak
//! for the same unit it is the one that was meant.

use super::plausible::{Figure, read_as, usual};
use crate::article::the;
use crate::length::Extent;
use crate::report::Report;
use crate::unit::Unit;

/// So far outside what is built or sold a figure speaks against its unit: a third over, a quarter under (ours, no source).
const OVER: f64 = 4.0 / 3.0;
const UNDER: f64 = 0.75;

/// Figures that must speak for another unit at least.
const ENOUGH: usize = 2;

/// As many are named.
const NAMED: usize = 3;

/// The unit that was likely meant, with the figures that speak for it; `None` where the file's own is as likely.
pub(crate) fn meant<'f, 'a>(figures: &'f [Figure<'a>], units: Unit) -> Option<(Unit, Vec<&'f Figure<'a>>)> {
    let bare: Vec<(&Figure<'a>, f64)> = figures.iter().filter_map(|one| Some((one, bare(one, units)?))).collect();
    let spoken = |unit: Unit| {
        let as_other = |length: f64| read_as(length, units, unit);
        let speaks = |one: &Figure<'_>, length: f64| is_odd(one, length) && is_usual(one, as_other(length));
        let (for_it, others): (Vec<_>, Vec<_>) = bare.iter().copied().partition(|(one, length)| speaks(one, *length));
        let against = others.iter().filter(|(one, length)| !is_odd(one, *length) && is_odd(one, as_other(*length)));
        let against = against.count();
        (for_it.len() >= ENOUGH && for_it.len() > against)
            .then(|| (unit, for_it.into_iter().map(|(one, _)| one).collect::<Vec<_>>()))
    };
    let others = Unit::ALL.iter().copied().filter(|unit| *unit != units);
    // Of two that as many speak for the first.
    others.filter_map(spoken).reduce(|best, next| if next.1.len() > best.1.len() { next } else { best })
}

/// What to tell of them.
pub(crate) fn told(unit: Unit, figures: &[&Figure<'_>], report: &Report<'_>) -> String {
    let named = figures.iter().take(NAMED);
    let named: Vec<String> =
        named.map(|one| format!("the {} of {} ({})", one.figure, the(one.item), one.measure.as_written())).collect();
    let more = figures.len().saturating_sub(NAMED);
    let more = if more > 0 { format!(" and {more} more") } else { String::new() };
    let first = figures.first().map(|one| one.measure.as_written()).unwrap_or_default();
    format!(
        "These are no sizes in {}, and usual ones in {}: {}{more}. Write their unit, such as `{first} {}`, or `units: {}` if all of the \
         file is in it.",
        report.units().key(),
        unit.key(),
        named.join(", "),
        unit.key(),
        unit.key()
    )
}

/// The length (mm) of a figure that does not say its unit: of a range its middle.
fn bare(figure: &Figure<'_>, units: Unit) -> Option<f64> {
    if figure.measure.own_unit().is_some() {
        return None;
    }
    match figure.measure.extent(units).ok()? {
        Extent::One(size) => Some(size),
        Extent::Between { least, most } => Some((least.or(most)? + most.or(least)?) / 2.0),
    }
    .filter(|length| *length > 0.0)
}

fn is_odd(figure: &Figure<'_>, length: f64) -> bool {
    let (least, most) = usual(figure.built);
    length > OVER * most || length < UNDER * least
}

fn is_usual(figure: &Figure<'_>, length: f64) -> bool {
    let (least, most) = usual(figure.built);
    (least..=most).contains(&length)
}
