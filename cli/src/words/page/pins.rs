//! What is said of options that are pinned, and of the screen that shows them side by side.

/// A button.
pub(crate) const PIN: &str = "Pin";
/// A link.
pub(crate) const SIDE_BY_SIDE: &str = "See them side by side";
/// Where one is pinned.
pub(crate) const ONE_MORE: &str = "Pin one or two more to see them side by side.";
/// Over the comparison.
pub(crate) const HEADING: &str = "Side by side";
/// Over what of it can be had as a file.
pub(crate) const TAKE_ALONG: &str = "To take along";
/// Where too few are pinned.
pub(crate) const TOO_FEW: &str =
    "Pin two or three options, each by its button under Options, and they stand here side by side.";
/// A link.
pub(crate) const TO_OPTIONS: &str = "To the options";
/// While the answer is being worked out.
pub(crate) const NOT_YET: &str = "What is pinned stands here once the room is worked out.";
/// A button.
pub(crate) const UNPIN: &str = "Take the pin off";

/// A button, for who hears it alone.
pub(crate) fn pin(title: &str) -> String {
    format!("{PIN}: {title}")
}

/// A button, for who hears it alone.
pub(crate) fn unpin(title: &str) -> String {
    format!("{UNPIN}: {title}")
}

/// Which are pinned, by their places.
pub(crate) fn pinned(ranks: &[usize]) -> String {
    let ranks: Vec<String> = ranks.iter().map(usize::to_string).collect();
    let options = if ranks.len() == 1 { "option" } else { "options" };
    format!("Pinned: {options} {}.", ranks.join(" and ").replacen(" and ", ", ", ranks.len().saturating_sub(2)))
}

/// A note that pinned options are not among those that fit any more.
pub(crate) fn gone(count: usize) -> String {
    match count {
        1 => "One option that you pinned is no longer among those that fit.".to_owned(),
        _ => format!("{count} options that you pinned are no longer among those that fit."),
    }
}
