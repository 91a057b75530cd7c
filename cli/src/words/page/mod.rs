//! Prose of the page in the browser.

pub(crate) mod furnish;
pub(crate) mod measure;
pub(crate) mod pins;
mod plan;
pub(crate) mod sheets;
pub(crate) mod shop;
mod steps;
pub(crate) mod touched;
pub(crate) mod trial;
pub(crate) mod wishes;

pub(crate) use plan::{FARTHER, NEARER, PLAN_NEARER, PLAN_SHOWN, PLAN_SHOWS, SHOWN_FIRST, WHOLE_PLAN, ZOOM_KEYS};
pub(crate) use steps::{
    BEHIND, BESIDE, ELSEWHERE, KEEP_THEIRS, NO_TEXT, NOT_KEPT, NOT_UNDERSTOOD, NOTHING_TO_TAKE, ON_DISK, SAVING,
    SHOW_NEW, TOO_LARGE, UNSAVED, WRITE_MINE, crossed, not_saved, saved,
};

use elbowroom_model::{Brief, Unit};
use elbowroom_solver::answer::{Answer, RankedOption};

use super::answer::title;
use super::figures::counted;
use super::firm::{self, stays_first};
use super::refused;

/// Where no browser could be opened.
pub(crate) const NOT_OPENED: &str = "No browser could be opened: follow the link yourself.\n";
/// Instead of a page for who comes by another name.
pub(crate) const WRONG_HOST: &str =
    "This page answers to its own address alone. Follow the link that elbowroom printed.\n";
/// Instead of what was asked for from elsewhere.
pub(crate) const WRONG_ORIGIN: &str =
    "This page takes nothing from other pages. Follow the link that elbowroom printed.\n";
/// Instead of what was asked for by who may only look.
pub(crate) const ONLY_LOOKS: &str = "This link lets you look, and change nothing. Ask for the other one.\n";
/// Instead of a page for who has no token.
pub(crate) const NO_TOKEN: &str = "This page needs its link: follow the one that elbowroom printed when it started.\n";
/// First thing that a keyboard comes to.
pub(crate) const SKIP: &str = "Skip to the room";
/// Where scripts do not run.
pub(crate) const NEEDS_SCRIPT: &str = "This page needs its script, which comes from this machine alone: let it run.";
/// A button over a folder's rooms.
pub(crate) const RANK_ALL: &str = "Rank all rooms";
/// What it does.
pub(crate) const RANK_ALL_ABOUT: &str = "What was solved before and has not changed is not solved again. All of it is kept in the folder answers, with a page to look at and rows for a spreadsheet.";
/// Of a room whose file is another by now.
pub(crate) const CHANGED_SINCE: &str = "Changed since it was ranked.";

/// A button while they are ranked.
pub(crate) const RANK_NO_MORE: &str = "Stop ranking";
/// After it was pressed.
pub(crate) const RANKING_STOPS: &str = "Stopping after the rooms under way. What is ranked by then is kept.";

/// How far the run over all rooms is: at which room, and of how many.
pub(crate) fn ranking([at, all]: [usize; 2]) -> String {
    format!("Ranking all rooms: at {at} of {all}.")
}

/// Where the run over all rooms broke off.
pub(crate) fn not_ranked(why: &str) -> String {
    format!("The rooms were not all ranked. {why}")
}

/// The first option of a room, of so many.
pub(crate) fn first_of(title: &str, count: usize) -> String {
    match count {
        1 => format!("{title}; nothing else fits."),
        _ => format!("{title}; first of {count} that fit."),
    }
}

/// Back to the list of rooms.
pub(crate) const ALL_ROOMS: &str = "All rooms";
/// The screens, in the order of the work.
pub(crate) const SCREENS: &str = "Steps";
/// A screen.
pub(crate) const MEASURE: &str = "Measure";
/// A screen.
pub(crate) const FURNISH: &str = "Furnish";
/// A screen.
pub(crate) const OPTIONS: &str = "Options";
/// A screen.
pub(crate) const COMPARE: &str = "Compare";
/// A screen.
pub(crate) const TRY: &str = "Try it";
/// A screen.
pub(crate) const SHEETS: &str = "Sheets";
/// A button.
pub(crate) const UNDO: &str = "Undo";
/// A button.
pub(crate) const REDO: &str = "Redo";

/// How many options a filter shows, and the first of them.
pub(crate) fn shown(count: usize, first: &str) -> String {
    format!("{} shown; first: {first}.", counted(count, "option", "options"))
}

/// Where there is no answer, since the work was stopped.
pub(crate) const NONE_STOPPED: &str =
    "The work was stopped before anything was found. Go on, above, takes it up again.";
/// Where there is no answer yet.
pub(crate) const NONE_YET: &str = "This comes once the room is worked out.";

/// Instead of a part that needs an answer, where there is none: why, and `otherwise` where nothing fits.
pub(crate) fn no_answer(is_stopped: bool, is_busy: bool, otherwise: &'static str) -> &'static str {
    match (is_stopped, is_busy) {
        (true, _) => NONE_STOPPED,
        (_, true) => NONE_YET,
        _ => otherwise,
    }
}

/// Where the server does not answer any more.
pub(crate) const GONE: &str = "The program does not answer any more: start `elbowroom page` again and follow its link.";
/// Over the faults of the file.
pub(crate) const FAULTS: &str = "The file needs something mended before it can be ranked.";
/// Where the work broke off.
pub(crate) const FAILED: &str =
    "The work broke off. The file is whole and as you left it. Change something, or try again.";
/// A button.
pub(crate) const AGAIN: &str = "Try again";
/// A button.
pub(crate) const STOP: &str = "Stop";
/// After it was pressed.
pub(crate) const STOPPED: &str = "Stopped. What is shown is the answer from before, where there was one.";
/// A button.
pub(crate) const GO_ON: &str = "Go on";
/// Before anything is known.
pub(crate) const FIRST_LOOK: &str = "Looking at what fits.";
/// Over the answer.
pub(crate) const ANSWER: &str = "The answer";
/// Over the other options.
pub(crate) const OTHERS: &str = "Other ways";
/// Over the filters.
pub(crate) const SHOW: &str = "Show only";
/// A filter.
pub(crate) const WHICH_WALL: &str = "Against which wall";
/// A filter.
pub(crate) const WHICH_WAY: &str = "Facing";
/// A filter.
pub(crate) const WHICH_HAND: &str = "Which hand";
/// A filter: no wall.
pub(crate) const FREE: &str = "free in the room";
/// A filter: no matter.
pub(crate) const ANY: &str = "any";
/// Where the filters leave nothing.
pub(crate) const NONE_SO: &str = "No option is so. Choose another wall, way or hand.";
/// A link.
pub(crate) const TRY_THIS: &str = "Try a piece elsewhere";
/// A link.
pub(crate) const SHEETS_OF_THIS: &str = "Sheets of this one";
/// Before the title of what a moved wish puts first.
pub(crate) const NOW_FIRST: &str = "Now first:";
/// Over the rooms of a folder.
pub(crate) const ROOMS: &str = "Rooms";
/// Over the form for a new one.
pub(crate) const NEW_ROOM: &str = "A new room";
/// What it starts from.
pub(crate) const NEW_ROOM_ABOUT: &str = "An empty room is yours to measure. An example is furnished and ready to play with; put your own figures in its place.";
/// A field.
pub(crate) const ROOM_NAME: &str = "Name of the file";
/// A button.
pub(crate) const START_EMPTY: &str = "Start with an empty room";
/// A button.
pub(crate) const START_EXAMPLE: &str = "Start from an example";
/// While walls have no length yet.
pub(crate) fn to_measure(walls: usize) -> String {
    format!("{} still to be measured.", counted(walls, "wall is", "walls are"))
}
/// Over what can be done to a room of the list.
pub(crate) const CHANGE_NAME: &str = "Duplicate or rename";
/// A field.
pub(crate) const NAME_OF_COPY: &str = "Name of the copy's file";
/// A button.
pub(crate) const DUPLICATE: &str = "Duplicate";
/// A field.
pub(crate) const NEW_NAME: &str = "New name of the file";
/// A button.
pub(crate) const RENAME: &str = "Rename";
/// Where the folder holds no room yet.
pub(crate) const NO_ROOMS: &str = "No room is in this folder yet. Start one below.";
/// Where a name will not do.
pub(crate) const NO_NAME: &str = "Take letters, figures, spaces and hyphens for the name of a file.";
/// Where it is there already.
pub(crate) const IS_THERE: &str = "A file of that name is there already, and stays as it is.";
/// Where there is no such page.
pub(crate) const NOT_HERE: &str = "There is no such page or room here.";

/// The switch for units.
pub(crate) const UNITS: &str = "Units";
/// What it does.
pub(crate) const UNITS_ABOUT: &str =
    "The page tells lengths in this unit, and takes a figure without one to be in it. The file keeps its own.";

/// A choice of the switch: no other unit than the file's.
pub(crate) fn as_the_file(unit: Option<Unit>) -> String {
    unit.map_or_else(|| "as the file".to_owned(), |unit| format!("as the file, {}", unit.key()))
}

/// What is printed once the page can be had.
pub(crate) fn link(link: &str, is_on_lan: bool) -> String {
    let reach = if is_on_lan { "On this machine" } else { "For this machine alone" };
    format!("The page is at {link}\n{reach}; whoever has the link may change the file. Ctrl-C ends it.\n")
}

/// What is printed beside it where the local network comes in too: each link, and the same as a square for a phone.
pub(crate) fn links_of_lan(change: &str, change_square: &str, look: &str, look_square: &str) -> String {
    format!(
        "\nOn the local network too. These links are not encrypted: whoever is on the network can read along, the \
         links among it. Use it where you trust everybody.\n\nTo change the room, as from the phone in your hand: {change}\n\n\
         {change_square}\nTo look alone: {look}\n\n{look_square}"
    )
}

/// What a plan shows, for whoever cannot see it.
pub(crate) fn plan_of(brief: &Brief, option: &RankedOption) -> String {
    format!("Plan of {}: {}", brief.room.name, title(brief, option))
}

/// The title of a page in the browser.
pub(crate) fn window(room: &str, screen: &str) -> String {
    format!("{room}: {screen}")
}

/// A note that a file cannot be read.
pub(crate) fn unreadable(file: &str) -> String {
    format!("{file} cannot be read any more. Put it back, or open another.")
}

/// How far the work is.
pub(crate) fn busy(done: usize, all: usize) -> String {
    match all {
        0 => FIRST_LOOK.to_owned(),
        _ => format!("{done} of {all} arrangements looked at"),
    }
}

/// What came of it, in a line.
pub(crate) fn found(answer: &Answer) -> String {
    match answer.options.len() {
        0 => refused::nothing_fits(answer.undecided()).to_owned(),
        _ => format!("{}.", refused::summary(answer, None).trim_end_matches('.')),
    }
}

/// Score and firmness of the first option.
pub(crate) fn firm(brief: &Brief, option: &RankedOption) -> String {
    format!("Score {:.0} of 100; {}.", option.score, stays_first(brief, option))
}

/// Score and firmness of another one.
pub(crate) fn comes(brief: &Brief, option: &RankedOption) -> String {
    format!("Score {:.0}; {}", option.score, firm::comes_first(brief, option))
}

/// A link to all options.
pub(crate) fn all_options(count: usize) -> String {
    format!("See {}", counted(count, "option", "options"))
}

/// A filter with how many options it leaves.
pub(crate) fn with_count(label: &str, count: usize) -> String {
    format!("{label} ({count})")
}

/// How many further options are like one.
pub(crate) fn like_it(count: usize) -> String {
    format!("and {} like it", counted(count, "more", "more"))
}

/// What can be done to a room of the list, for who hears it alone.
pub(crate) fn change_name(file: &str) -> String {
    format!("{CHANGE_NAME}: {file}")
}

/// What the copy of a file is called unless one says otherwise.
pub(crate) fn copy_of(stem: &str) -> String {
    format!("{stem}, copy")
}

/// The text that stands beside a room of a folder.
pub(crate) fn is_faulty(count: usize) -> String {
    format!("{} to mend", counted(count, "thing", "things"))
}
