//! What holds a size, where a way is narrowest, what a reason speaks of: told where somebody touches it.

use elbowroom_model::article::capital;

/// What opens on ways and reasons.
pub(crate) const CLOSER: &str = "Ways and reasons";
/// What can be done with the plan and beside it.
pub(crate) const TOUCH: &str = "Touch a piece, a size, a way or a reason: the plan shows what it has to do with.";
/// Over the ways.
pub(crate) const WAYS: &str = "Ways: where is each narrowest?";
/// Over the reasons.
pub(crate) const REASONS: &str = "Reasons: what do they speak of?";
/// A button that takes marks off the plan again.
pub(crate) const DONE: &str = "Take the marks off";
/// Where nothing stands.
pub(crate) const NOTHING: &str = "There is nothing to tell of this.";

/// What lines on the plan mean.
pub(crate) const WAYS_ARE: &str = "Dashes with an arrow and a letter: a way, and how wide it is where it is narrowest.";
/// The same of sight lines.
pub(crate) const SIGHTS_ARE: &str = "Dashes and dots: from a seat to a liked window that it sees.";
/// The same of what is hatched.
pub(crate) const ZONES_ARE: &str = "Hatched: floor that is kept free, for leaves, inside doorways, before heat.";
/// The same of the largest outlines.
pub(crate) const LARGEST_ARE: &str = "Dashed outlines: what may be larger, as large as all pieces together can be.";

/// Over the sides of a piece.
pub(crate) fn size_of(name: &str, unit: &str) -> String {
    format!("What holds the size of {name} ({unit})")
}

/// A side that cannot change.
pub(crate) fn fixed(side: &str, told: &str) -> String {
    format!("{} {told}: its size is fixed.", capital(side))
}

/// What holds a side; `alone`: how long it could be if all else gave way to it.
pub(crate) fn held(side: &str, told: &str, holders: &[String], alone: Option<&str>) -> String {
    let by = match holders {
        [] => super::super::rank::WHOLE_ROOM.to_owned(),
        holders => holders.join("; "),
    };
    let alone = alone.map(|alone| format!(" If all else gave way to it: {alone}.")).unwrap_or_default();
    format!("{} {told}: {by}.{alone}", capital(side))
}

/// A way by its letter.
pub(crate) fn way(letter: &str, ends: &str) -> String {
    format!("{letter}: {ends}")
}

/// How wide a way is, what it needs, and where it is narrowest.
pub(crate) fn narrowest(width: &str, needs: &str, unit: &str, at: &str) -> String {
    format!("{width} {unit} wide where it is narrowest, and it needs {needs}. Narrowest: {at}.")
}

/// A criterion with its score.
pub(crate) fn scored(name: &str, score: f64) -> String {
    format!("{}: {score:.0} of 100", capital(name))
}
