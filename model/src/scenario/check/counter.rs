//! A pillar of the size of a counter, which may be one that nobody keeps floor before.

use crate::article::{capital, the};
use crate::nearest::same;
use crate::report::Report;
use crate::ring;
use crate::room::Fixed;
use crate::tables::built;

/// What stands for good and is used by nobody.
const PILLARS: [&str; 3] = ["pillar", "post", "column"];

/// What to tell of a pillar that is as long, as deep and as high as a counter; `None` of all else.
pub(crate) fn told(thing: &Fixed, report: &Report<'_>) -> Option<String> {
    let (length, depth) = long_and_across(thing)?;
    let is_one = |figure: &str, size: f64| {
        built("counter", figure).is_some_and(|built| (built.least..=built.most).contains(&size))
    };
    let is_as_high = thing.height.is_none_or(|height| is_one("height", height));
    let is_pillar = PILLARS.iter().any(|pillar| same(pillar, &thing.kind));
    (is_pillar && is_as_high && is_one("length", length) && is_one("depth", depth)).then(|| {
        format!(
            "{} is a {} of {} by {}, as large as a counter, and no floor is kept before it. If people stand at it, write `kind: counter`, \
             or give `use`, how much floor they need; `use: 0` says that nobody does.",
            capital(&the(&thing.name)),
            thing.kind,
            report.words(length),
            report.words(depth)
        )
    })
}

/// The longest edge, and how far the thing reaches across it, mm.
fn long_and_across(thing: &Fixed) -> Option<(f64, f64)> {
    let edges = ring::legs(&thing.corners).map(|(from, to)| (from, to - from));
    let (from, edge) = edges.reduce(|best, next| if next.1.norm() > best.1.norm() { next } else { best })?;
    let across = edge.unit()?.left();
    let reaches = thing.corners.iter().map(|corner| across.dot(*corner - from));
    Some((edge.norm(), reaches.fold(0.0, f64::max)))
}
