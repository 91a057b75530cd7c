//! Why a criterion does not apply, in words.

use elbowroom_model::article::capital;
use elbowroom_solver::criteria::{CriterionLeftOut, Missing};

use crate::words::criteria;

/// The criterion and why it does not apply, as one sentence.
pub(crate) fn left_out(left_out: CriterionLeftOut) -> String {
    format!("{} is left out: {}.", capital(criteria::name(left_out.criterion)), why(left_out.missing))
}

const fn why(missing: Missing) -> &'static str {
    match missing {
        Missing::MarkedWindow => "no window is marked liked or avoided (view: liked, view: avoided)",
        Missing::Entrance => "no door or opening leads to the entrance (leads_to: entrance)",
        Missing::EntranceOrStance => "there is no entrance, and no opening has a stance of open or away",
        Missing::Routes => "with no entrance there is no route to judge",
        Missing::MediaUnit => "no media unit is asked for",
        Missing::Window => "no window was measured",
        Missing::Fireplace => "the room has no fireplace",
        Missing::NothingToKeep => "neither a window, a radiator nor a socket was measured",
    }
}

#[cfg(test)]
mod tests {
    use elbowroom_model::Criterion;

    use super::left_out;
    use elbowroom_solver::criteria::{CriterionLeftOut, Missing};

    #[test]
    fn a_criterion_that_does_not_apply_says_why() {
        let told = left_out(CriterionLeftOut { criterion: Criterion::Entrance, missing: Missing::Entrance });
        assert_eq!(told, "Entrance is left out: no door or opening leads to the entrance (leads_to: entrance).");
    }
}
