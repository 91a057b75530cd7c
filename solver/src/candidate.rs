//! An arrangement that fits, before it is ranked.

use std::borrow::Cow;

use crate::answer::Eased;
use crate::arrangement::Arrangement;
use crate::criteria::Judgement;
use crate::ranking::Entrant;
use crate::routes::Route;
use crate::search::Found;

/// An arrangement that fits, by its plan: all that the order hangs on but for ties.
pub(crate) struct Planned<'a> {
    pub(crate) arrangement: Cow<'a, Arrangement>,
    /// What is drawn, judged, set out and taped.
    pub(crate) plan: Found,
    /// Its routes.
    pub(crate) routes: Vec<Route>,
    /// What the plan gives of the rules of comfort that it eases.
    pub(crate) eased: Vec<Eased>,
    /// What the plan paid for easings that the second check finds needless.
    pub(crate) refund: f64,
    pub(crate) judgements: Vec<Judgement>,
}

impl Planned<'_> {
    /// What the order sees of it.
    pub(crate) fn entrant(&self) -> Entrant {
        Entrant::of(&self.judgements, Eased::count(&self.eased))
    }
}

/// A layout with its routes.
pub(crate) struct Walked {
    pub(crate) found: Found,
    pub(crate) routes: Vec<Route>,
}

impl Walked {
    /// Its objective to a tenth of a millimetre: what is less is rounding.
    pub(crate) fn told_size(&self) -> f64 {
        (self.found.objective * 10.0).round()
    }
}

/// An arrangement that fits, with all that is known of it.
pub(crate) struct Candidate<'a> {
    pub(crate) planned: Planned<'a>,
    /// The same pieces as large as they can be.
    pub(crate) largest: Walked,
}

impl<'a> AsRef<Planned<'a>> for Candidate<'a> {
    fn as_ref(&self) -> &Planned<'a> {
        &self.planned
    }
}

impl<'a> AsMut<Planned<'a>> for Candidate<'a> {
    fn as_mut(&mut self) -> &mut Planned<'a> {
        &mut self.planned
    }
}
