//! The rooms of a folder, each with its first option drawn small or else its walls; all of them ranked; a new one; one like another.

use std::collections::BTreeMap;
use std::path::Path;

use elbowroom_model::Unit;
use maud::{Markup, html};

use super::address::encoded;
use super::frame::page;
use super::on::On;
use super::outline::outline;
use super::state;
use super::switch::switch;
use crate::page::guard::Right;
use crate::page::ranked::{RankedRoom, Run};
use crate::render::batch::reason;
use crate::words::page as words;

/// What is known of all rooms.
#[derive(Clone, Copy)]
pub(in crate::page) struct Ranked<'a> {
    /// Each, by its file.
    pub(in crate::page) rooms: &'a BTreeMap<String, RankedRoom>,
    /// How the run over them stands.
    pub(in crate::page) run: &'a Run,
    /// Which room it is at, and of how many.
    pub(in crate::page) far: [usize; 2],
}

/// The page of a folder.
pub(in crate::page) fn rooms(rooms: &[On<'_>], all: &Ranked<'_>, right: Right, units: Option<Unit>) -> Markup {
    let may_change = right == Right::Change;
    page(
        words::ROOMS,
        html! {
            header.head {
                h1 { (words::ROOMS) }
                (switch(units, None))
            }
            div id="amiss" role="alert" data-gone=(words::GONE) hidden {}
            main id="main" tabindex="-1" data-screen="rooms" {
                @if rooms.is_empty() { p { (words::NO_ROOMS) } } @else if may_change { (rank_all(all)) }
                ul.rooms {
                    @for (place, on) in rooms.iter().enumerate() {
                        @let known = all.rooms.get(on.file);
                        li {
                            a href=(format!("/room/{}/options", encoded(on.file))) {
                                figure.plan aria-hidden="true" { (drawn(*on, known)) }
                                span.name { (state::room_name(on.seen, on.file)) }
                            }
                            p.soft {
                                (on.file)
                                @if let Err(faults) = &on.seen.read { ": " (words::is_faulty(faults.len())) }
                            }
                            @if let Some(known) = known { p { (found(known)) } }
                            @if may_change { (name_anew(on.file, place)) }
                        }
                    }
                }
                @if may_change { (new_room()) }
            }
        },
    )
}

/// The first option, or the walls where that is not known or no longer so.
fn drawn(on: On<'_>, known: Option<&RankedRoom>) -> Markup {
    let plan = known.filter(|known| !known.is_old).and_then(|known| known.plan.as_ref());
    html! {
        @match plan {
            Some(plan) => { img src=(format!("/answer/{plan}")) alt="" loading="lazy"; }
            None => { (outline(on.seen, on.units)) }
        }
    }
}

/// What came of a room.
fn found(known: &RankedRoom) -> String {
    if known.is_old {
        return words::CHANGED_SINCE.to_owned();
    }
    let first = known.line.result.as_ref().and_then(|result| Some((result.options.first()?, result.options.len())));
    match first {
        Some((first, count)) => words::first_of(&first.title, count),
        None => reason(&known.line).unwrap_or_default(),
    }
}

/// Has all rooms ranked, or tells how far that is.
fn rank_all(all: &Ranked<'_>) -> Markup {
    html! {
        section aria-labelledby="h-all" {
            h2.unseen id="h-all" { (words::RANK_ALL) }
            @if *all.run == Run::Busy {
                p id="ranking" role="status" { (words::ranking(all.far)) }
                button type="button" id="rank-no-more" { (words::RANK_NO_MORE) }
            } @else {
                form.add data-to="/rank-all" { button type="submit" { (words::RANK_ALL) } }
                p.soft { (words::RANK_ALL_ABOUT) }
            }
            @if let Run::Failed(why) = all.run { p.amiss role="alert" { (words::not_ranked(why)) } }
        }
    }
}

fn new_room() -> Markup {
    html! {
        section aria-labelledby="h-new" {
            h2 id="h-new" { (words::NEW_ROOM) }
            p.soft { (words::NEW_ROOM_ABOUT) }
            form.add data-to="/new" {
                label for="new-name" { (words::ROOM_NAME) }
                input type="text" id="new-name" name="name" required autocomplete="off";
                button.main type="submit" name="from" value="empty" { (words::START_EMPTY) }
                button type="submit" name="from" value="example" { (words::START_EXAMPLE) }
            }
        }
    }
}

/// Another room like this one, or another name for it.
fn name_anew(file: &str, place: usize) -> Markup {
    let stem = Path::new(file).file_stem().map(|stem| stem.to_string_lossy().into_owned()).unwrap_or_default();
    let form = |to: &str, of: &str, name: &str, label: &str, button: &str| {
        let id = format!("{}-{place}", to.trim_start_matches('/'));
        html! {
            form.add data-to=(to) {
                input type="hidden" name=(of) value=(file);
                label for=(id) { (label) }
                input type="text" id=(id) name="name" value=(name) required autocomplete="off";
                button type="submit" { (button) }
            }
        }
    };
    html! {
        details {
            summary aria-label=(words::change_name(file)) { (words::CHANGE_NAME) }
            (form("/new", "like", &words::copy_of(&stem), words::NAME_OF_COPY, words::DUPLICATE))
            (form("/rename", "of", &stem, words::NEW_NAME, words::RENAME))
        }
    }
}
