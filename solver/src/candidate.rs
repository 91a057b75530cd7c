//! An arrangement that fits, before it is ranked.

use std::borrow::Cow;

use crate::answer::Eased;
use crate::arrangement::Arrangement;
use crate::criteria::Judgement;
use crate::ranking::Entrant;
use crate::routes::Route;
use crate::search::Found;

/// An arrangement that fits, with all that is known of it.
pub(crate) struct Candidate<'a> {
    pub(crate) arrangement: Cow<'a, Arrangement>,
    /// What is drawn, judged, set out and taped.
    pub(crate) plan: Found,
    /// Its routes.
    pub(crate) routes: Vec<Route>,
    /// The same pieces as large as they can be.
    pub(crate) largest: Found,
    /// Its routes.
    pub(crate) largest_routes: Vec<Route>,
    /// What the plan gives of the rules of comfort that it eases.
    pub(crate) eased: Vec<Eased>,
    /// What the plan paid for easings that the second check finds needless.
    pub(crate) refund: f64,
    pub(crate) judgements: Vec<Judgement>,
}

impl Candidate<'_> {
    /// Its objective to a tenth of a millimetre: what is less is rounding.
    pub(crate) fn told_size(&self) -> f64 {
        (self.largest.objective * 10.0).round()
    }

    /// What the order sees of it.
    pub(crate) fn entrant(&self) -> Entrant {
        Entrant::of(&self.judgements, Eased::count(&self.eased))
    }
}
