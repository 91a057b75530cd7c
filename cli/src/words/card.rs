//! Prose of the shopping card.

use elbowroom_model::{Brief, Dimension, Drawn, Hand, PieceKind};
use elbowroom_solver::answer::RankedOption;

use super::answer;

/// How to use it.
pub(crate) const HOW: &str = "Measure the piece itself, at its outermost. Buy nothing over \"at most\" and nothing under \"at least\"; \
                              what looks right with the rest is \"in this plan\".";
/// Of a card with several options.
pub(crate) const MIX_NONE: &str = "Buy all pieces of one option; mix none.";
/// Over the least.
pub(crate) const LEAST: &str = "at least";
/// Over the size as planned.
pub(crate) const PLANNED: &str = "in this plan";
/// Over the most together.
pub(crate) const TOGETHER: &str = "at most";
/// Lines to write on.
pub(crate) const SEEN: [&str; 3] = ["Seen at", "Its name", "Price"];
/// Over what was found.
pub(crate) const FOUND: &str = "found";
/// Over what the columns say.
pub(crate) const COLUMNS: &str = "What the columns say";
/// What they say.
pub(crate) const COLUMNS_SAY: [&str; 4] = [
    "At least: less would not do its work. Rounded up.",
    "In this plan: what is drawn and taped. Rounded down. Start there.",
    "At most: every set of pieces no larger than these fits, each in its place. Rounded down.",
    "Largest, if the others stay smallest: the most that this piece alone could have if the rest stay small, near their least. Once one is bought \
     so large, the others' figures no longer hold: ask again with it set, before you buy the next.",
];
/// Over the way in.
pub(crate) const WAY_IN: &str = "The way in";
/// What to do about it.
pub(crate) const WAY_IN_SAYS: &str = "It must come through the house as well. Measure clear widths at their narrowest, handles and rails \
                                      included, and ask the shop for the size of the parcel, and what comes off.";
/// What is on the way.
pub(crate) const ON_THE_WAY: [&str; 5] =
    ["front door", "hall or corridor", "stair, or lift", "tightest turn", "door of the room"];
/// Over widths.
pub(crate) const WIDE: &str = "wide";
/// Over heights.
pub(crate) const HIGH: &str = "high";
/// Over depths.
pub(crate) const DEEP: &str = "deep";
/// Over cautions.
pub(crate) const CAUTIONS: &str = "Cautions and notices";

/// Over the card.
pub(crate) fn title(room: &str) -> String {
    format!("Shopping card: {room}")
}

/// The option that is shopped for.
pub(crate) fn option(brief: &Brief, option: &RankedOption) -> String {
    format!("Option {}. {}", option.rank, answer::title(brief, option))
}

/// A piece, or several alike.
pub(crate) fn piece(label: &str, count: usize) -> String {
    if count == 1 { label.to_owned() } else { format!("{label}: {count} alike, sizes of each") }
}

/// The hand of a corner sofa.
pub(crate) fn hand(hand: Hand) -> String {
    let hand = hand.key().to_uppercase();
    format!(
        "As you SIT on it, the return is on your {hand}. The outline is drawn so; shops may name it from the front: sit down and look."
    )
}

/// Of a sofa with a return at each end.
pub(crate) const OF_A_U: &str = "Buy it in this one width: a narrower one closes up on the table between its returns. For another, set it as \
                                 `width` and ask again.";

/// What a piece alone could have.
pub(crate) fn alone(told: &[(Dimension, String)]) -> String {
    let told: Vec<String> = told.iter().map(|(dimension, length)| format!("{} {length}", dimension.words())).collect();
    format!("Largest, if the others stay smallest: {}.", told.join("; "))
}

/// What the outline shows.
pub(crate) fn outline(name: &str, hand: Option<Hand>) -> String {
    match hand {
        Some(hand) => format!("{name} seen from above, its return on the {} as one sits", hand.key()),
        None => format!("{name} seen from above"),
    }
}

/// What a line of the outline measures.
pub(crate) fn measure(dimension: Dimension, length: &str) -> String {
    format!("{} {length}", dimension.words())
}

/// What to measure on the piece itself, by how its kind is made (common practice, no source).
pub(crate) fn to_measure(kind: PieceKind, has_return: bool) -> &'static str {
    match kind.traits().drawn {
        Drawn::Upholstered if has_return => {
            "Measure over the arms, each run to its outer corner, and from the outermost of the back to the front of the seat."
        }
        Drawn::Upholstered => {
            "Measure over the arms, and from the outermost of the back to the front of the seat. What reclines counts laid back."
        }
        Drawn::Padded => "Measure the cushion where it is widest.",
        Drawn::WithFront => "Measure handles and top with it, and leave room for plugs behind.",
        Drawn::Screen => "Measure the whole frame, and the bracket with it; the diagonal is the picture's alone.",
        Drawn::Lamp => "Measure foot and shade: the wider of them counts.",
        Drawn::Plant => "Measure the leaves where they are widest, and ask how they grow.",
        Drawn::Rug => "Measure the fringes with it.",
        Drawn::Plain | Drawn::OpenFloor => "Measure the top, not the legs, and what draws or folds out.",
    }
}

/// A dimension.
pub(crate) fn dimension(dimension: Dimension) -> &'static str {
    dimension.words()
}

/// A length in both units.
pub(crate) fn both(metric: &str, inches: &str) -> String {
    format!("{metric}\n{inches}")
}

/// The same on one line.
pub(crate) fn in_both(metric: &str, inches: &str) -> String {
    format!("{metric}, {inches}")
}

/// What limits a piece.
pub(crate) fn held(by: &str) -> String {
    match by {
        "" => "Its size is fixed.".to_owned(),
        super::rank::NO_LARGER => "What limits it: nothing in the room; no more is asked for, or sold.".to_owned(),
        by => format!("What limits it: {by}."),
    }
}
