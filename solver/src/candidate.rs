//! An arrangement that fits, before it is ranked.

use std::borrow::Cow;

use crate::arrangement::Arrangement;
use crate::criteria::Judgement;
use crate::ranking::Entrant;
use crate::routes::Route;
use crate::search::Found;

/// An arrangement that fits, with all that is known of it.
pub(crate) struct Candidate<'a> {
    pub(crate) arrangement: Cow<'a, Arrangement>,
    pub(crate) found: Found,
    pub(crate) routes: Vec<Route>,
    pub(crate) judgements: Vec<Judgement>,
}

impl Candidate<'_> {
    /// Its objective to a tenth of a millimetre: what is less is rounding.
    pub(crate) fn told_size(&self) -> f64 {
        (self.found.objective * 10.0).round()
    }

    /// What the order sees of it.
    pub(crate) fn entrant(&self) -> Entrant {
        Entrant::of(&self.judgements, self.found.layout.eased.len())
    }
}
