//! Prose of what `judge` tells.

use elbowroom_model::Room;

use super::figures::{area, counted};

/// Over what is broken.
pub(crate) const BROKEN: &str = "What is broken";
/// Over what breaks no rule, and no plan would have.
pub(crate) const ODD: &str = "What stands oddly, though no rule asks for more";
/// Over the reasons of the scores.
pub(crate) const WHY: &str = "How the room scores";
/// Over the column of the room as it stands.
pub(crate) const NOW: &str = "as it stands";
/// Over the column of the option.
pub(crate) const THEN: &str = "option 1";
/// Over what the option gains.
pub(crate) const GAIN: &str = "gain";
/// Over the wishes.
pub(crate) const WISH: &str = "wish";
/// Row: the whole score.
pub(crate) const WHOLE: &str = "in all";

/// The head of the page.
pub(crate) fn summary(room: &Room, broken: usize) -> String {
    format!("{}, {}, as it stands: {}", room.name, area(room.area() / 1e6), how_many(broken))
}

/// How much is broken.
pub(crate) fn how_many(broken: usize) -> String {
    match broken {
        0 => "no rule is broken".to_owned(),
        1 => "1 thing is broken".to_owned(),
        many => format!("{} are broken", counted(many, "thing", "things")),
    }
}

/// What is broken, by the number that it has on the plan.
pub(crate) fn numbered(number: usize, sentence: &str) -> String {
    format!("{number}. {sentence}")
}

/// How the room stands.
pub(crate) fn stands(title: &str) -> String {
    format!("It stands so: {title}.")
}

/// Over the scores.
pub(crate) const SCORES: &str = "Scores, of 100";

/// Under the scores: what option 1 is.
pub(crate) fn first(title: &str) -> String {
    format!("Option 1 of `elbowroom rank`: {title}.")
}

/// Under the scores, where there is no option.
pub(crate) const NO_OPTION: &str = "No option fits as the file asks, so there is none to hold the room against.";

/// A score.
pub(crate) fn score(score: f64) -> String {
    format!("{score:.0}")
}

/// What is gained of what is told, so that the three figures of a row agree; under 0: lost.
pub(crate) fn gain(now: f64, then: f64) -> String {
    let whole = then.round() - now.round();
    if whole == 0.0 { "0".to_owned() } else { format!("{whole:+.0}") }
}

/// A wish.
pub(crate) fn wish(wish: f64) -> String {
    format!("{wish}")
}

/// Over the routes.
pub(crate) fn ways(unit: &str) -> String {
    format!("Walking routes through the room, {unit}")
}

/// Over the gaps.
pub(crate) fn gaps(unit: &str) -> String {
    format!("Gaps, {unit}")
}

#[cfg(test)]
mod tests {
    use super::{gain, score};

    #[test]
    fn a_gain_is_the_difference_of_the_scores_as_told() {
        assert_eq!([score(30.6), score(68.4), gain(30.6, 68.4)], ["31", "68", "+37"]);
        assert_eq!([score(78.4), score(77.6), gain(78.4, 77.6)], ["78", "78", "0"]);
        assert_eq!(gain(60.0, 41.2), "-19");
    }
}
