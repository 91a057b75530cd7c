//! Work that nobody wants any more ends where it stands, in the midst of a search; work that is wanted is the same, watched or not.

use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};

use elbowroom_solver::refusal::Why;
use elbowroom_solver::{Limits, Part, Unwatched, Watch, rank};

use crate::scenarios::room;
use crate::support::ranked::brief_of;

/// More than any room asks.
const NEVER: usize = usize::MAX;
/// Threads may each have begun a node.
const AT_ONCE: usize = 64;

/// Counts how often it is asked, and says stop from a time on; or where a part of the work begins.
struct Impatient {
    asked: AtomicUsize,
    patience: usize,
    leaves_at: Option<Part>,
    gone: AtomicBool,
}

impl Impatient {
    fn after(patience: usize) -> Self {
        Self { asked: AtomicUsize::new(0), patience, leaves_at: None, gone: AtomicBool::new(false) }
    }

    fn at(part: Part) -> Self {
        Self { leaves_at: Some(part), ..Self::after(NEVER) }
    }

    fn asked(&self) -> usize {
        self.asked.load(Ordering::Relaxed)
    }
}

impl Watch for Impatient {
    fn solved(&self, _done: usize, _all: usize) {}

    fn is_stopped(&self) -> bool {
        let asked = self.asked.fetch_add(1, Ordering::Relaxed);
        if asked >= self.patience {
            self.gone.store(true, Ordering::Relaxed);
        }
        self.gone.load(Ordering::Relaxed)
    }

    fn began(&self, part: Part) {
        if self.leaves_at == Some(part) {
            self.gone.store(true, Ordering::Relaxed);
        }
    }
}

#[test]
fn work_that_is_wanted_is_the_same_watched_or_not() {
    for name in ["which-hand", "nothing-fits"] {
        let brief = brief_of(&room(name));
        let watch = Impatient::after(NEVER);
        assert_eq!(rank(&brief, &Limits::default(), &watch), rank(&brief, &Limits::default(), &Unwatched), "{name}");
        assert!(watch.asked() > 100, "{name}: it is asked at each node, {}", watch.asked());
    }
}

#[test]
fn a_search_ends_in_its_midst() {
    let brief = brief_of(&room("open-plan"));
    let whole = rank(&brief, &Limits::default(), &Unwatched);
    let arrangements = whole.work.arrangements - whole.work.dropped;
    for patience in [1, 40, whole.work.nodes / arrangements / 2] {
        let answer = rank(&brief, &Limits::default(), &Impatient::after(patience));
        assert!(answer.work.nodes <= patience + AT_ONCE, "{} nodes, stopped after {patience}", answer.work.nodes);
        let (undecided, refused): (Vec<_>, Vec<_>) =
            answer.refused.iter().partition(|refused| refused.why == Why::NotDecided);
        let fits = |key: &str| whole.options.iter().any(|option| option.key == key);
        assert!(
            !undecided.is_empty() && refused.iter().all(|refused| !fits(&refused.key)),
            "what was cut off is no refusal"
        );
    }
}

#[test]
fn remedies_end_in_their_midst() {
    let brief = brief_of(&room("nothing-fits"));
    let watch = Impatient::at(Part::Remedies);
    let answer = rank(&brief, &Limits::default(), &watch);
    assert!(answer.options.is_empty() && answer.remedies.is_empty());
    assert!(!rank(&brief, &Limits::default(), &Unwatched).remedies.is_empty());
}
