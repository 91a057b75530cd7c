//! What `check` tells: the room as read and closed, what its walls hold, the pieces, the way in, the rules in force.

mod pieces;
mod room;
mod rules;
mod way;

use elbowroom_model::Brief;

use crate::text::look::Look;
use crate::text::page::Page;
use crate::words::answer::held_to;

/// The page for one scenario.
pub(crate) fn text(file: &str, brief: &Brief, look: Look) -> String {
    let mut page = Page::new(look);
    page.strong(&brief.room.name);
    for line in crate::words::order::lines(brief) {
        page.entry(0, &line);
    }
    room::tell(&mut page, file, brief);
    pieces::tell(&mut page, brief);
    way::tell(&mut page, brief);
    rules::tell(&mut page, brief);
    let held = (!brief.wanted.is_empty()).then(|| held_to(brief));
    if !brief.notices.is_empty() || held.is_some() {
        page.heading(crate::words::NOTICES);
        for notice in &brief.notices {
            page.entry(2, &notice.text);
        }
        if let Some(held) = held {
            page.entry(2, &held);
        }
    }
    page.into_text()
}
