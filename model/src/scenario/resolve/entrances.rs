//! The way in: named by the file, or known by a word for what lies behind a doorway.

use crate::article::the;
use crate::nearest::same;
use crate::opening::{ItemKind, LeadsTo};
use crate::quote::quoted;
use crate::report::Report;
use crate::room::WallItem;
use crate::yaml::Trail;

/// Words for what lies behind the way in, the surest first: of several, the surest that the file has counts.
const WORDS: [&str; 6] = ["front door", "lobby", "hallway", "hall", "corridor", "stairs"];

/// Where nothing leads to the entrance, takes what leads to the surest word for it as that; tells what was taken, or that
/// there is none.
pub(super) fn settle(items: &mut [(WallItem, Trail)], report: &mut Report<'_>) {
    if items.iter().any(|(item, _)| item.kind.leads_to().is_some_and(LeadsTo::is_entrance)) {
        return;
    }
    let leads =
        |kind: &ItemKind, word: &str| matches!(kind.leads_to(), Some(LeadsTo::Space(space)) if same(space, word));
    let Some(word) = WORDS.iter().find(|word| items.iter().any(|(item, _)| leads(&item.kind, word))) else {
        report.notice(
            "No door or opening leads to the entrance: the criterion `entrance` and the ways from it are left out.",
        );
        return;
    };
    for (item, _) in items.iter_mut().filter(|(item, _)| leads(&item.kind, word)) {
        report.notice(format!(
            "Nothing leads to the entrance, so {}, which leads to `{}`, is taken as the way in; `leads_to: entrance` says so.",
            the(&item.name),
            quoted(word)
        ));
        if let Some(leads_to) = item.kind.leads_to_mut() {
            *leads_to = LeadsTo::Entrance;
        }
    }
}
