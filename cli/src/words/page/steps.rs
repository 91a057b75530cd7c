//! What is said of steps: what was saved, what was not, and what something else did meanwhile.

/// Where another window was quicker, and what was asked for hangs on what it did.
pub(crate) const BEHIND: &str = "Another window changed this room since, so nothing was taken back here.";
/// Where something else wrote to the file, and what was asked for hangs on that.
pub(crate) const ON_DISK: &str = "The file was changed by something else since, so nothing was taken back.";
/// A button: what was typed here is written all the same.
pub(crate) const WRITE_MINE: &str = "Write mine";
/// A button: what is there stays.
pub(crate) const KEEP_THEIRS: &str = "Keep what is there";
/// After a step beside somebody else's.
pub(crate) const BESIDE: &str = "Something else had changed the file meanwhile. Both changes are in it now.";
/// On a page that lay open.
pub(crate) const ELSEWHERE: &str = "The file was changed elsewhere: this is how it stands now.";
/// Where a step was not saved.
pub(crate) const UNSAVED: &str = "Your last change is not saved";

/// The same place was changed elsewhere: what stands there now.
pub(crate) fn crossed(by_other: bool, there: &[String]) -> String {
    let who = if by_other { "The file was changed by something else" } else { "Another window changed this" };
    let there: Vec<&str> = there.iter().map(String::as_str).filter(|it| !it.is_empty()).collect();
    let now = if there.is_empty() { "nothing".to_owned() } else { there.join(", ") };
    format!("{who} meanwhile. There it says {now}; what you entered is not written yet.")
}

/// Where there is nothing to take back or again.
pub(crate) const NOTHING_TO_TAKE: &str = "There is nothing to take back or again.";
/// Where the text cannot be changed in place.
pub(crate) const NOT_KEPT: &str = "The file is written so that this cannot be changed without touching something else of it. Change it in an editor; the page shows it then.";
/// Where a request is larger than any that a page makes.
pub(crate) const TOO_LARGE: &str = "That is too much for one change. Make it in smaller ones.";
/// Where a request is no text.
pub(crate) const NO_TEXT: &str = "That is no text that this page can read.";
/// Where what is asked for is not understood.
pub(crate) const NOT_UNDERSTOOD: &str = "That was not understood. Load the page again.";
/// A button: shows what is on the disk.
pub(crate) const SHOW_NEW: &str = "Show what is there now";
/// While something is sent.
pub(crate) const SAVING: &str = "Saving";

/// A note that a step could not be saved, and why.
pub(crate) fn not_saved(why: &str) -> String {
    format!("Not saved: {why}. The file is as it was.")
}

/// That all is saved.
pub(crate) fn saved(file: &str) -> String {
    format!("Saved in {file}")
}
