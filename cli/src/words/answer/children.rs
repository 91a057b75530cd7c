//! What to heed where children live, in words.

use elbowroom_model::article::{capital, the};
use elbowroom_model::{Brief, PieceId};
use elbowroom_solver::for_children::ForChildren;

use super::in_options::Told;
use crate::words::list::listed;

/// What is to be heeded, as one or two sentences.
pub(super) fn for_children(brief: &Brief, told: Told, heed: &ForChildren) -> String {
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
            let each = from.iter().map(|one| match told.place(&one.ranks) {
                Some(place) => format!("{} {place}", name(one.piece)),
                None => name(one.piece),
            });
            let (stands, it) = if from.len() == 1 { ("stands", "it") } else { ("stand", "them") };
            capital(&format!(
                "{} {stands} where a child climbs to {window}: keep {it} elsewhere, or fit a guard or stop that an adult can \
                 open from within (CPSC).",
                listed(&each.collect::<Vec<_>>())
            ))
        }
        ForChildren::TableInWay { table, ranks } => capital(&format!(
            "{} stands where a way is narrowest{}: choose round corners, or pad them (common practice).",
            name(*table),
            told.place(ranks).map(|place| format!(", {place}")).unwrap_or_default()
        )),
        ForChildren::Cords => {
            "Keep cords of lamps, screens and blinds short and out of a child's reach: no loop to put a \
                               head through, nothing to pull down (CPSC, WCSC)."
                .to_owned()
        }
    }
}
