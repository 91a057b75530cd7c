//! Prose of the page that a client gets.

use elbowroom_model::Brief;
use elbowroom_solver::answer::RankedOption;

use super::answer::title;

/// What one does.
pub(crate) const HOW: &str = "Look at the plans, mark the one you like best at the end of this page, write a line if you wish, and send back the text that stands there. Nothing is sent by itself.";
/// First thing that a keyboard comes to.
pub(crate) const SKIP: &str = "Skip to the plans";
/// Head: a piece.
pub(crate) const PIECE: &str = "piece";
/// Head: what a piece costs at least.
pub(crate) fn price(currency: Option<&str>) -> String {
    currency.map_or_else(|| "price from".to_owned(), |currency| format!("price from, {currency}"))
}

/// Where no price is known.
pub(crate) const NO_PRICE: &str = "not known";
/// What the prices are.
pub(crate) const PRICES: &str = "Each price is for one piece, the lowest of those we know that fit where the plan has it, each tried by itself. Delivery is not in it, and it is no offer.";
/// Over the answer.
pub(crate) const ANSWER: &str = "Your answer";
/// Over the choice.
pub(crate) const WHICH: &str = "Which one do you like best?";
/// A choice.
pub(crate) const NONE: &str = "None of these yet";
/// A field.
pub(crate) const LINE: &str = "A line to go with it";
/// A field.
pub(crate) const TEXT: &str = "The text to send back";
/// A button.
pub(crate) const COPY: &str = "Copy the text";
/// A button.
pub(crate) const SAVE: &str = "Keep it as a file";
/// After it was copied.
pub(crate) const COPIED: &str = "Copied. Put it into a message and send it.";
/// Where the browser does not let a page copy.
pub(crate) const NOT_COPIED: &str = "The text is marked: copy it as you copy any text.";
/// After it was kept.
pub(crate) const SAVED: &str = "Kept as a file. Send it along with a message.";
/// The name of the file that is kept.
pub(crate) const FILE: &str = "my-answer.txt";
/// Where scripts do not run.
pub(crate) const BY_HAND: &str =
    "Scripts do not run here: write the letter of the plan that you like best, and a line, in a message of your own.";
/// Over the cautions.
pub(crate) const CAUTIONS: &str = "Before anything is bought or moved";
/// In the answer, before the room.
pub(crate) const ROOM: &str = "Room: ";
/// In the answer, before what is chosen.
pub(crate) const CHOSEN: &str = "Chosen: ";
/// In the answer, before the option's key.
pub(crate) const KEY: &str = "Option: ";
/// In the answer, before what was written.
pub(crate) const NOTE: &str = "Note: ";

/// The letter that an option goes by: its place in an order would be a judgement.
pub(crate) fn letter(place: usize) -> String {
    char::from_u32('A' as u32 + u32::try_from(place).unwrap_or_default()).map(String::from).unwrap_or_default()
}

/// An option by its letter.
pub(crate) fn option(place: usize, brief: &Brief, option: &RankedOption) -> String {
    format!("{}. {}", letter(place), title(brief, option))
}

/// Whom the page is for.
pub(crate) fn client(client: &str) -> String {
    format!("For {client}")
}

/// What a plan shows, for whoever cannot see it.
pub(crate) fn plan(place: usize) -> String {
    format!("Plan {}", letter(place))
}

/// Head: sizes.
pub(crate) fn size(unit: &str) -> String {
    format!("size as drawn, {unit}")
}

/// A piece, or several alike.
pub(crate) fn piece(label: &str, count: usize) -> String {
    if count > 1 { format!("{label} ({count})") } else { label.to_owned() }
}

/// What a number on a plan stands for.
pub(crate) fn numbered(number: usize, text: &str) -> String {
    format!("{number}: {text}")
}
