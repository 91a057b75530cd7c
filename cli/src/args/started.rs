//! What is asked where the command line asks for nothing: started by a hand on a desktop, with no terminal to read help
//! in, the program is to show its page.

use std::ffi::OsString;
use std::io::IsTerminal;

/// The page is open in a browser that somebody may close without a word: it ends once nothing was asked of it so long,
/// minutes.
const ENDS_AFTER: &str = "240";

/// Where the program was started.
struct Setting {
    /// One of its streams is a terminal.
    terminal: bool,
    /// There is a desktop to open a browser on.
    desktop: bool,
}

impl Setting {
    fn of_this_process() -> Self {
        let terminal =
            std::io::stdin().is_terminal() || std::io::stdout().is_terminal() || std::io::stderr().is_terminal();
        let is_told = |name: &str| std::env::var_os(name).is_some_and(|value| !value.is_empty());
        // Elsewhere than under X or Wayland whoever is logged in has a desktop.
        let asks = cfg!(all(unix, not(target_os = "macos")));
        Self { terminal, desktop: !asks || is_told("DISPLAY") || is_told("WAYLAND_DISPLAY") }
    }

    fn asked(&self, args: Vec<OsString>) -> Vec<OsString> {
        let by_hand = args.len() == 1 && !self.terminal && self.desktop;
        let page = ["page", "--open", "--ends-after", ENDS_AFTER].map(OsString::from);
        if by_hand { args.into_iter().chain(page).collect() } else { args }
    }
}

/// The arguments as this process was given them, or those of the page.
pub(crate) fn as_started(args: impl IntoIterator<Item = OsString>) -> Vec<OsString> {
    Setting::of_this_process().asked(args.into_iter().collect())
}

#[cfg(test)]
mod tests {
    use std::ffi::OsString;

    use super::Setting;
    use crate::args::{Asked, parse};

    fn asked(args: &[&str], terminal: bool, desktop: bool) -> Vec<OsString> {
        Setting { terminal, desktop }.asked(args.iter().map(OsString::from).collect())
    }

    #[test]
    fn started_by_hand_on_a_desktop_it_opens_the_page_of_this_folder() {
        let args = parse(asked(&["elbowroom"], false, true)).unwrap();
        let Asked::Page(page) = args.asked else { panic!("{args:?}") };
        assert!(page.open && page.place.as_os_str() == "." && page.lan.is_none() && page.ends_after == Some(240));
    }

    #[test]
    fn whoever_has_a_terminal_or_no_desktop_gets_what_was_asked_for() {
        for (terminal, desktop) in [(true, true), (true, false), (false, false)] {
            assert_eq!(asked(&["elbowroom"], terminal, desktop), ["elbowroom"]);
        }
        assert_eq!(asked(&["elbowroom", "schema"], false, true), ["elbowroom", "schema"]);
    }
}
