//! What a layout gives of a rule of comfort.

use elbowroom_model::{Clearance, Rule};

use crate::answer::Thing;
use crate::rules::{Cause, With};
use crate::verify::breach::{Breach, Wrong};
use crate::verify::tolerance::COMFORT;

/// What a layout gives of a rule between two things.
#[derive(Debug, Clone)]
pub(in crate::verify) struct Measure {
    pub(super) rule: Rule,
    pub(super) wrong: Wrong,
    /// The piece that is to have the comfort or must keep out of its way, and the rest.
    pub(super) between: Vec<Thing>,
    /// What the rule asks for, mm; `None` where it is no one length.
    pub(super) wanted: Option<f64>,
    /// What the layout gives, mm.
    pub(super) given: Option<f64>,
    /// What is missing, mm; 0 or less where nothing is.
    pub(super) short_by: f64,
}

/// A length that is asked for, and the one that there is, mm.
pub(super) struct Lengths {
    pub(super) wanted: f64,
    pub(super) given: f64,
}

impl Measure {
    /// Of a rule that asks for so much or more.
    pub(super) fn at_least(rule: impl Into<Rule>, wrong: Wrong, between: &[Thing], lengths: &Lengths) -> Self {
        let &Lengths { wanted, given } = lengths;
        let (rule, between) = (rule.into(), between.to_vec());
        Self { rule, wrong, between, wanted: Some(wanted), given: Some(given), short_by: wanted - given }
    }

    /// Of a rule that lets so much be.
    pub(super) fn at_most(rule: impl Into<Rule>, wrong: Wrong, between: &[Thing], lengths: &Lengths) -> Self {
        let &Lengths { wanted, given } = lengths;
        Self { short_by: given - wanted, ..Self::at_least(rule, wrong, between, lengths) }
    }

    /// Of a rule that is no one length.
    pub(super) fn of_no_length(rule: impl Into<Rule>, wrong: Wrong, between: &[Thing], short_by: f64) -> Self {
        Self { rule: rule.into(), wrong, between: between.to_vec(), wanted: None, given: None, short_by }
    }

    /// Whether the rule does not hold, by more than rounding explains.
    pub(super) fn is_broken(&self) -> bool {
        // What is no number does not hold.
        let holds = self.short_by <= COMFORT;
        !holds
    }

    /// Whether it is what `cause` names: the same rule between the same two, in either order.
    pub(super) fn is_of(&self, cause: &Cause) -> bool {
        let has = |thing: Thing| self.between.contains(&thing);
        let with = match cause.with {
            With::Wall(wall) => has(Thing::Wall(wall)),
            With::Item(item) => has(Thing::Item(item)),
            With::Fixed(fixed) => has(Thing::Fixed(fixed)),
            With::Piece(piece) => has(Thing::Piece(piece)),
            With::Itself | With::Route(_) => false,
        };
        // A nook is bounded by several walls, and where none is named all are meant.
        let with =
            with || cause.with == With::Itself && self.between.iter().any(|thing| matches!(thing, Thing::Wall(_)));
        self.rule == cause.rule && has(Thing::Piece(cause.piece)) && (with || is_of_one_piece(self.rule))
    }

    /// As a breach.
    pub(super) fn breach(&self) -> Breach {
        Breach::new(self.rule, self.wrong, &self.between, self.short_by)
    }
}

/// Whether a rule asks something of one piece, whatever is behind it.
fn is_of_one_piece(rule: Rule) -> bool {
    match rule {
        Rule::ReturnOffWall => true,
        Rule::Clearance(clearance) => {
            matches!(clearance, Clearance::SolidWall | Clearance::BehindSeat | Clearance::DiningPlaces)
        }
        _ => false,
    }
}

/// The measure of `cause` that falls shortest.
pub(super) fn worst(measures: Vec<Measure>, cause: &Cause) -> Option<Measure> {
    let of_cause = measures.into_iter().filter(|measure| measure.is_of(cause));
    of_cause.max_by(|first, second| first.short_by.total_cmp(&second.short_by))
}
