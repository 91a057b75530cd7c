//! The rooms of a folder, each with its walls drawn small; a new one; one like another.

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
use crate::words::page as words;

/// The page of a folder.
pub(in crate::page) fn rooms(rooms: &[On<'_>], right: Right, units: Option<Unit>) -> Markup {
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
                @if rooms.is_empty() { p { (words::NO_ROOMS) } }
                ul.rooms {
                    @for (place, on) in rooms.iter().enumerate() {
                        li {
                            a href=(format!("/room/{}/options", encoded(on.file))) {
                                figure.plan aria-hidden="true" { (outline(on.seen, on.units)) }
                                span.name { (state::room_name(on.seen, on.file)) }
                            }
                            p.soft {
                                (on.file)
                                @if let Err(faults) = &on.seen.read { ": " (words::is_faulty(faults.len())) }
                            }
                            @if may_change { (name_anew(on.file, place)) }
                        }
                    }
                }
                @if may_change { (new_room()) }
            }
        },
    )
}

fn new_room() -> Markup {
    html! {
        section aria-labelledby="h-new" {
            h2 id="h-new" { (words::NEW_ROOM) }
            p.soft { (words::NEW_ROOM_ABOUT) }
            form.add data-to="/new" {
                label for="new-name" { (words::ROOM_NAME) }
                input type="text" id="new-name" name="name" required autocomplete="off";
                button type="submit" { (words::START) }
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
