//! The pages and their parts, as markup: what stands on them is what the renderers and the words of the command line say.

mod address;
mod answer;
mod compare;
mod field;
mod filter;
mod frame;
mod furnish;
mod item;
mod lengths;
mod measure;
mod on;
mod options;
mod outline;
mod pins;
mod rooms;
mod sheets;
mod shop;
mod shown;
mod state;
mod switch;
mod touched;
mod trial;
mod wall;
mod wishes;

pub(super) use filter::Filter;
pub(super) use frame::{Screen, page};
pub(super) use on::On;
pub(super) use options::{answers, first_answer};
pub(super) use outline::outline;
pub(super) use rooms::{Ranked, rooms};
pub(super) use shop::{LARGEST_LIST, no_list, shopped};
pub(super) use shown::shown;
pub(super) use state::told;
pub(super) use touched::{OnScreen, closer, on_screen};

use maud::Markup;

/// The part of a screen that is made anew after a step.
pub(super) fn part(screen: Screen, on: On<'_>) -> Markup {
    match screen {
        Screen::Measure => measure::part(on),
        Screen::Furnish => furnish::part(on),
        Screen::Options => options::part(on),
        Screen::Compare => compare::part(on),
        Screen::Try => trial::part(on),
        Screen::Sheets => sheets::part(on),
    }
}

/// A whole screen.
pub(super) fn screen(screen: Screen, on: On<'_>, has_shelf: bool) -> Markup {
    let room = frame::Room { on, screen, has_shelf };
    frame::screen(&room, part(screen, on))
}

/// Where the options of a room are.
pub(super) fn options_of(file: &str) -> String {
    format!("/room/{}/options", address::encoded(file))
}

/// Where a room is measured.
pub(super) fn measure_of(file: &str) -> String {
    format!("/room/{}/measure", address::encoded(file))
}
