//! What holds the sizes of one option, asked of by itself, is what is told where it is one of those that are shown.

use elbowroom_solver::{Limits, Unwatched, rank, sizes_in_full};

use crate::scenarios::room;
use crate::support::ranked::brief_of;

#[test]
fn sizes_asked_of_by_themselves_are_those_of_an_option_that_is_shown() {
    for name in ["which-hand.yaml", "fire-or-view.yaml"] {
        let brief = brief_of(&room(name));
        let shown = rank(&brief, &Limits { shown: 2, ..Limits::default() }, &Unwatched);
        let families = shown.families();
        for option in families.iter().take(2).map(|family| family.best) {
            let sizes = sizes_in_full(&shown.brief, &option.key, &Limits::default(), &Unwatched);
            assert!(option.sizes.iter().any(|sizes| !sizes.held_by.is_empty()), "{name}");
            assert_eq!(sizes.as_ref(), Some(&option.sizes), "{name}: {}", option.key);
        }
        assert_eq!(sizes_in_full(&brief, "no such option", &Limits::default(), &Unwatched), None);
    }
}
