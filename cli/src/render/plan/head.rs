//! What a sheet is headed with: room and option, who ordered it, the answer in one large line.

use super::Shown;
use super::panel::{Panel, cut};
use crate::drawing::{Weight, hand, wrapped};
use crate::words::answer as said;
use crate::words::plan as words;

/// Characters that the name of a room may have, and the answer.
const LONGEST_NAME: usize = 120;
const LONGEST_ANSWER: usize = 300;
/// Lines that the answer may have in a large type.
const LINES: usize = 2;

/// Puts it on a panel.
pub(super) fn head(panel: &mut Panel, shown: &Shown<'_>) {
    let name = cut(&shown.brief().room.name, LONGEST_NAME);
    panel.words(&words::headed(&name, &which(shown)), hand::NAMES, Weight::Bold);
    for line in crate::words::order::lines(shown.brief()) {
        panel.print(&line);
    }
    let large = cut(&answer_line(shown), LONGEST_ANSWER);
    let [.., least] = hand::LARGE;
    let fits = |size: &f64| wrapped(&large, *size, Weight::Bold, panel.width()).len() <= LINES;
    let size = hand::LARGE.into_iter().find(fits).unwrap_or(least);
    panel.space();
    panel.words(&large, size, Weight::Bold);
}

/// What stands where, with the size to shop by of the main seat. The sentences of what is eased come with the cautions.
fn answer_line(shown: &Shown<'_>) -> String {
    match shown {
        Shown::Option { answer, option } => {
            let main = option.pieces(&answer.brief).find(|one| one.placed.piece == option.main_seat);
            let most = main.map(|one| {
                let [planned, most] =
                    [one.sizes.planned(), one.sizes.together()].map(|size| super::pieces::size(shown, one.piece, size));
                words::at_most(&one.piece.name, &planned, &most, shown.unit())
            });
            words::answer(&said::title(&answer.brief, *option), most.as_deref())
        }
        Shown::AsItStands { room, .. } => said::title(&room.brief, *room),
    }
}

fn which(shown: &Shown<'_>) -> String {
    match shown {
        Shown::Option { answer, option } => words::option(option, answer.options.len()),
        Shown::AsItStands { room, .. } => words::as_it_stands(room.broken.len()),
    }
}
