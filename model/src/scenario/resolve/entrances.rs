//! The way in: named by the file, or known by a word for what lies behind a doorway.

use crate::article::the;
use crate::nearest::same;
use crate::opening::{ItemKind, LeadsTo};
use crate::quote::quoted;
use crate::report::Report;
use crate::room::WallItem;
use crate::yaml::Trail;

/// Words for what lies behind the way in, the surest first: of several, the surest that the file has counts.
const WORDS: [&str; 20] = [
    "main entrance",
    "front entrance",
    "front door",
    "main door",
    "entrance hall",
    "entry hall",
    "entry",
    "foyer",
    "vestibule",
    "porch",
    "front hall",
    "lobby",
    "hallway",
    "hall",
    "corridor",
    "passage",
    "landing",
    "stairs",
    "staircase",
    "stairwell",
];

/// Nobody comes in by what leads there.
const NO_WAY_IN: [&str; 14] = [
    "balcony",
    "terrace",
    "garden",
    "patio",
    "deck",
    "yard",
    "conservatory",
    "closet",
    "cupboard",
    "pantry",
    "bathroom",
    "toilet",
    "wc",
    "store",
];

/// Where nothing leads to the entrance, takes what leads to the surest word for it as that, or the one doorway that a room
/// without stairs has; tells what was taken, or that there is none.
pub(super) fn settle(items: &mut [(WallItem, Trail)], has_stairs: bool, report: &mut Report<'_>) {
    if items.iter().any(|(item, _)| item.kind.leads_to().is_some_and(LeadsTo::is_entrance)) {
        return;
    }
    let leads =
        |kind: &ItemKind, word: &str| matches!(kind.leads_to(), Some(LeadsTo::Space(space)) if same(space, word));
    if let Some(word) = WORDS.iter().find(|word| items.iter().any(|(item, _)| leads(&item.kind, word))) {
        let is_one = |kind: &ItemKind| leads(kind, word);
        take(items, is_one, &format!(", which leads to `{}`,", quoted(word)), report);
    } else if let (false, Some(space)) = (has_stairs, one_doorway(items)) {
        take(items, |kind| kind.leads_to().is_some(), &format!(", the one doorway (to {}),", quoted(&space)), report);
    } else {
        report.notice(
            "No door or opening leads to the entrance: the criterion `entrance` and the ways from it are left out. Say of the \
             one that people come in by `leads_to: entrance`.",
        );
    }
}

/// Where the one doorway of a room leads to, if one may come in by it.
fn one_doorway(items: &[(WallItem, Trail)]) -> Option<String> {
    let mut doorways = items.iter().filter_map(|(item, _)| item.kind.leads_to());
    let (Some(LeadsTo::Space(space)), None) = (doorways.next(), doorways.next()) else { return None };
    let may_be = !NO_WAY_IN.iter().any(|word| same(space, word));
    may_be.then(|| space.clone())
}

/// Takes these as the way in, and tells each with what speaks for it.
fn take(items: &mut [(WallItem, Trail)], is_one: impl Fn(&ItemKind) -> bool, for_it: &str, report: &mut Report<'_>) {
    for (item, _) in items.iter_mut().filter(|(item, _)| is_one(&item.kind)) {
        report.notice(format!(
            "Nothing leads to the entrance, so {}{for_it} is taken as the way in; `leads_to: entrance` says so.",
            the(&item.name)
        ));
        if let Some(leads_to) = item.kind.leads_to_mut() {
            *leads_to = LeadsTo::Entrance;
        }
    }
}
