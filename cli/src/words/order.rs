//! Whom a room is planned for, and what is noted of it, for the heads of pages and sheets.

use elbowroom_model::Brief;

/// The lines that stand under the room's name; none where the file says nothing.
pub(crate) fn lines(brief: &Brief) -> Vec<String> {
    let client = brief.order.client.iter().map(|client| format!("For {client}"));
    client.chain(brief.order.note.iter().map(|note| format!("Note: {note}"))).collect()
}
