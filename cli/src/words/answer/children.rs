//! What to heed where children live, in words.

use elbowroom_model::article::{capital, the};
use elbowroom_model::{Brief, PieceId};
use elbowroom_solver::for_children::ForChildren;

use crate::words::list::listed;

/// Options that are named by their places.
const NAMED: usize = 6;

/// What is to be heeded, as one or two sentences.
pub(super) fn for_children(brief: &Brief, options: usize, heed: &ForChildren) -> String {
    let name = |piece: PieceId| the(brief.piece_name(piece));
    match heed {
        ForChildren::Tips(pieces) => {
            let names = listed(&pieces.iter().map(|piece| name(*piece)).collect::<Vec<_>>());
            let it = if pieces.len() == 1 { "it" } else { "each" };
            capital(&format!(
                "{names} can tip over when a child climbs up or hangs on: fix {it} to the wall before use, with heavy things \
                 lowest and nothing tempting on top (CPSC)."
            ))
        }
        ForChildren::Climbable { window, from } => {
            let window = the(brief.room.item_name(*window));
            let each = from.iter().map(|one| format!("{} {}", name(one.piece), in_options(&one.ranks, options)));
            let (stands, it) = if from.len() == 1 { ("stands", "it") } else { ("stand", "them") };
            capital(&format!(
                "{} {stands} where a child climbs to {window}: keep {it} elsewhere, or fit a guard or stop that an adult can \
                 open from within (CPSC).",
                listed(&each.collect::<Vec<_>>())
            ))
        }
        ForChildren::TableInWay { table, ranks } => capital(&format!(
            "{} stands where a way is narrowest, {}: choose round corners, or pad them (common practice).",
            name(*table),
            in_options(ranks, options)
        )),
        ForChildren::Cords => {
            "Keep cords of lamps, screens and blinds short and out of a child's reach: no loop to put a \
                               head through, nothing to pull down (CPSC, WCSC)."
                .to_owned()
        }
    }
}

/// `in option 1`, `in options 1, 3 and 4`, `in every option`.
fn in_options(ranks: &[usize], options: usize) -> String {
    let more = ranks.len().saturating_sub(NAMED);
    let mut named: Vec<String> = ranks.iter().take(NAMED).map(usize::to_string).collect();
    if more > 0 {
        named.push(format!("{more} more"));
    }
    match ranks.len() {
        all if all == options && all > 1 => "in every option".to_owned(),
        1 => format!("in option {}", listed(&named)),
        _ => format!("in options {}", listed(&named)),
    }
}
