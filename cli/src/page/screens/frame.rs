//! What stands round every screen: head, steps of the work, undo and redo, what is saved, what is amiss.

use elbowroom_model::Unit;
use elbowroom_model::filed::Filed;
use maud::{DOCTYPE, Markup, html};
use strum::VariantArray;

use super::address::{chosen, encoded};
use super::lengths::Units;
use super::on::On;
use super::state;
use super::switch::switch;
use crate::page::guard::Right;
use crate::page::room::Seen;
use crate::words::order;
use crate::words::page as words;

/// The screens of a room.
#[derive(Debug, Clone, Copy, PartialEq, Eq, VariantArray, strum::EnumString, strum::IntoStaticStr)]
#[strum(serialize_all = "lowercase")]
pub(in crate::page) enum Screen {
    /// Its walls and what is on them.
    Measure,
    /// What should stand in it, and what is kept free.
    Furnish,
    /// What fits, ranked.
    Options,
    /// Those that are pinned, side by side.
    Compare,
    /// A piece elsewhere.
    Try,
    /// What one takes along.
    Sheets,
}

impl Screen {
    /// As addresses have it.
    fn key(self) -> &'static str {
        self.into()
    }

    /// Whether somebody who may do so much comes to it.
    pub(in crate::page) fn is_open_to(self, right: Right) -> bool {
        match self {
            Self::Options | Self::Compare | Self::Sheets => true,
            Self::Measure | Self::Furnish | Self::Try => right == Right::Change,
        }
    }

    /// The scripts that its part of `page.js` calls on.
    const fn scripts(self) -> &'static [&'static str] {
        match self {
            Self::Options => &["/address.js", "/parts.js", "/room.js", OF_OPTIONS],
            Self::Try => {
                &["/address.js", "/parts.js", "/room.js", "/fields.js", "/trial.js", "/trial-plan.js", "/trial-rows.js"]
            }
            Self::Furnish => &["/address.js", "/parts.js", "/room.js", "/fields.js", "/shop.js"],
            Self::Measure | Self::Compare | Self::Sheets => &["/address.js", "/parts.js", "/room.js", "/fields.js"],
        }
    }

    const fn label(self) -> &'static str {
        match self {
            Self::Measure => words::MEASURE,
            Self::Furnish => words::FURNISH,
            Self::Options => words::OPTIONS,
            Self::Compare => words::COMPARE,
            Self::Try => words::TRY,
            Self::Sheets => words::SHEETS,
        }
    }
}

/// The script that only the screen of options has.
const OF_OPTIONS: &str = "/options.js";

/// A room on one of its screens.
pub(super) struct Room<'a> {
    pub(super) on: On<'a>,
    pub(super) screen: Screen,
    pub(super) has_shelf: bool,
}

/// A page of this title.
pub(in crate::page) fn page(title: &str, body: Markup) -> Markup {
    page_with(title, &[], body)
}

/// The same, whose script calls on these others: they are fetched beside it, not after it.
fn page_with(title: &str, scripts: &[&str], body: Markup) -> Markup {
    html! {
        (DOCTYPE)
        html lang="en" {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="color-scheme" content="light dark";
                title { (title) }
                // What narrow screens change comes after what they change.
                @if !scripts.contains(&OF_OPTIONS) { link rel="stylesheet" href="/more.css"; }
                link rel="stylesheet" href="/page.css";
                link rel="icon" href="/icon.svg" type="image/svg+xml";
                script type="module" src="/page.js" {}
                @for script in scripts { link rel="modulepreload" href=(script); }
            }
            body {
                a.skip href="#main" { (words::SKIP) }
                (body)
                noscript { p.amiss { (words::NEEDS_SCRIPT) } }
            }
        }
    }
}

/// A screen of a room.
pub(super) fn screen(room: &Room<'_>, part: Markup) -> Markup {
    let On { file, seen, option, wall, .. } = room.on;
    let name = state::room_name(seen, file);
    let lines = seen.read.as_ref().map(|brief| order::lines(brief)).unwrap_or_default();
    let query = chosen(room.on);
    let may_change = room.on.right == Right::Change;
    page_with(
        &words::window(&name, room.screen.label()),
        room.screen.scripts(),
        html! {
            header.head {
                div.title {
                    @if room.has_shelf { a.back href="/" { (words::ALL_ROOMS) } }
                    h1 { (name) }
                    @for line in lines { p.soft { (line) } }
                }
                nav aria-label=(words::SCREENS) {
                    ul {
                        @for screen in Screen::VARIANTS.iter().filter(|screen| screen.is_open_to(room.on.right)) {
                            li {
                                a href=(format!("/room/{}/{}{query}", encoded(file), screen.key()))
                                  aria-current=[(*screen == room.screen).then_some("page")] { (screen.label()) }
                            }
                        }
                    }
                }
                div.steps {
                    @if may_change {
                        button type="button" id="undo" data-step="undo" disabled[!seen.can[0]] { (words::UNDO) }
                        button type="button" id="redo" data-step="redo" disabled[!seen.can[1]] { (words::REDO) }
                    }
                    (switch(room.on.units, file_units(seen)))
                    @if may_change { p id="saved" role="status" data-saving=(words::SAVING) data-unsaved=(words::UNSAVED) data-saved=(words::saved(file)) { (words::saved(file)) } }
                }
            }
            div id="amiss" role="alert" data-gone=(words::GONE) data-show=(words::SHOW_NEW) data-mine=(words::WRITE_MINE)
                data-theirs=(words::KEEP_THEIRS) data-beside=(words::BESIDE) data-elsewhere=(words::ELSEWHERE) hidden {}
            main id="main" tabindex="-1" data-room=(encoded(file)) data-screen=(room.screen.key()) data-wall=(wall)
                data-option=[option] data-at-step=(seen.step) {
                (state::state(seen, file, may_change))
                div id="part" { (part) }
            }
        },
    )
}

/// The unit of the file.
fn file_units(seen: &Seen) -> Option<Unit> {
    let filed = Filed::read(&seen.text).ok()?;
    Some(Units::of(&filed.values(), None).file)
}
