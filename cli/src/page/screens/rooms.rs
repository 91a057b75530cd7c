//! The rooms of a folder, each with its walls drawn small; a new one; one like another.

use maud::{Markup, html};

use super::frame::{encoded, page};
use super::on::On;
use super::outline::outline;
use super::state;
use crate::words::page as words;

/// The page of a folder.
pub(in crate::page) fn rooms(rooms: &[On<'_>], told: &str) -> Markup {
    page(
        words::ROOMS,
        html! {
            header.head { h1 { (words::ROOMS) } }
            div id="amiss" role="alert" data-gone=(words::GONE) hidden[told.is_empty()] { (told) }
            main id="main" tabindex="-1" data-screen="rooms" {
                @if rooms.is_empty() { p { (words::NO_ROOMS) } }
                ul.rooms {
                    @for on in rooms {
                        li {
                            a href=(format!("/room/{}/options", encoded(on.file))) {
                                figure.plan aria-hidden="true" { (outline(on.seen)) }
                                span.name { (state::room_name(on.seen, on.file)) }
                            }
                            p.soft {
                                (on.file)
                                @if let Err(faults) = &on.seen.read { ": " (words::is_faulty(faults.len())) }
                            }
                        }
                    }
                }
                section aria-labelledby="h-new" {
                    h2 id="h-new" { (words::NEW_ROOM) }
                    p.soft { (words::NEW_ROOM_ABOUT) }
                    form.add data-new="" {
                        label for="new-name" { (words::ROOM_NAME) }
                        input type="text" id="new-name" name="name" required autocomplete="off";
                        button type="submit" { (words::START) }
                    }
                }
            }
        },
    )
}
