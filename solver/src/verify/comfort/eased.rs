//! Where a layout may fall short of a rule of comfort: where it owns to it, and no further than it is laid out.

use super::measure::{Measure, worst};
use crate::answer::Thing;
use crate::layout::Layout;
use crate::rules::{Cause, With};
use crate::verify::breach::{Breach, Wrong};
use crate::verify::tolerance::{COMFORT, SAME};

/// What a layout owns to giving only in part, and how much it falls short there.
pub(in crate::verify) struct Eased(Vec<EasedCause>);

struct EasedCause {
    cause: Cause,
    /// What is missing as laid out, mm.
    short_by: f64,
}

impl Eased {
    /// What `layout` eases; `measures` are its own.
    pub(in crate::verify) fn of(layout: &Layout, measures: &[Measure]) -> Self {
        let causes = layout.eased.iter().filter(|cause| cause.rule.is_comfort());
        let short = |cause: &Cause| worst(measures.to_vec(), cause).map_or(0.0, |measure| measure.short_by);
        Self(causes.map(|cause| EasedCause { cause: *cause, short_by: short(cause) }).collect())
    }

    /// Breaches of what is not eased, or falls shorter than what is.
    pub(in crate::verify) fn breaches(&self, measures: &[Measure]) -> Vec<Breach> {
        self.shorter_by(COMFORT, measures).map(Measure::breach).collect()
    }

    /// Whether nothing falls any shorter: what grows step by step would else come to take as many hairs.
    pub(in crate::verify) fn is_kept(&self, measures: &[Measure]) -> bool {
        self.shorter_by(SAME, measures).next().is_none()
    }

    fn shorter_by<'m>(&self, by: f64, measures: &'m [Measure]) -> impl Iterator<Item = &'m Measure> {
        let allows = move |measure: &Measure| {
            self.0.iter().any(|eased| measure.is_of(&eased.cause) && measure.short_by <= eased.short_by + by)
        };
        measures.iter().filter(move |measure| measure.is_broken() && !allows(measure))
    }
}

/// Rules that `layout` eases and that nothing eases.
pub(in crate::verify) fn past_easing(layout: &Layout) -> Vec<Breach> {
    let hard = layout.eased.iter().filter(|cause| !cause.rule.is_comfort());
    hard.map(|cause| Breach::new(cause.rule, Wrong::Eased, &things(cause), 0.0)).collect()
}

fn things(cause: &Cause) -> Vec<Thing> {
    let piece = Thing::Piece(cause.piece);
    let with = match cause.with {
        With::Wall(wall) => Thing::Wall(wall),
        With::Item(item) => Thing::Item(item),
        With::Fixed(fixed) => Thing::Fixed(fixed),
        With::Piece(piece) => Thing::Piece(piece),
        With::Itself | With::Route(_) => return vec![piece],
    };
    vec![piece, with]
}
