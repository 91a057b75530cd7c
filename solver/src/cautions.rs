//! Cautions that go with every result where they apply: they defer to local codes and licensed practice.

use elbowroom_model::{Brief, ItemKind, Piece, PieceKind, Swings};

/// Storage at least this tall is told to be fixed to the wall, mm (common practice, no source).
const TALL: f64 = 750.0;

/// The cautions that this brief calls for, the gravest first.
#[must_use]
pub(crate) fn cautions(brief: &Brief) -> Vec<String> {
    let all: [(bool, &str); 8] = [
        (
            true,
            "Keep exits and escape windows free. What is required is local: ask the code official, the fire service or \
             the landlord.",
        ),
        (
            has(brief, |kind| matches!(kind, ItemKind::Radiator(_) | ItemKind::Fireplace(_))),
            "Keep anything that burns 3 ft (91 cm) from heaters and fires (CPSC, NFPA), or further where the maker says \
             so.",
        ),
        (has_what_tips(brief), "Fix tall storage and televisions to the wall: they tip over (CPSC)."),
        (
            has_what_tips(brief) && has(brief, |kind| matches!(kind, ItemKind::Opening(_))),
            "What stands across an opening has no wall behind it to be fixed to: keep tall storage and televisions \
             beside it.",
        ),
        (
            has(brief, |kind| matches!(kind, ItemKind::Window(_))),
            "Where children live, keep what they can climb away from windows, and blind cords out of reach (CPSC, WCSC).",
        ),
        (
            has(brief, |kind| matches!(kind, ItemKind::Socket(_) | ItemKind::Fireplace(_))),
            "Wiring, gas, structure and heavy weights on a floor are for a licensed person to judge; keep cords out of \
             the ways.",
        ),
        (
            brief.rules.profile == "wheelchair",
            "The wheelchair figures are guidance; the person who lives there decides, and local codes hold.",
        ),
        (
            has_rug_and_swing(brief),
            "A rug may lie under a door that swings in: see that the leaf clears it and that its edge trips nobody.",
        ),
    ];
    all.into_iter().filter(|(applies, _)| *applies).map(|(_, words)| words.to_owned()).collect()
}

fn has(brief: &Brief, is_such: impl Fn(&ItemKind) -> bool) -> bool {
    brief.room.items.iter().any(|item| is_such(&item.kind))
}

fn has_what_tips(brief: &Brief) -> bool {
    let tips = |piece: &Piece| piece.screen.is_some() || (piece.kind.is_storage() && piece.height >= TALL);
    brief.pieces.iter().any(tips)
}

fn has_rug_and_swing(brief: &Brief) -> bool {
    let swings_in = |kind: &ItemKind| matches!(kind, ItemKind::Door(door) if door.swings == Swings::In);
    brief.pieces.iter().any(|piece| piece.kind == PieceKind::Rug) && has(brief, swings_in)
}
