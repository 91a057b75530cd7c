//! Whom the room is planned for, and what is noted of it: words that are shown and nothing else.

/// What stands at the head of pages and sheets beside the room's name.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Order {
    /// Whom it is planned for.
    pub client: Option<String>,
    /// What is noted.
    pub note: Option<String>,
}
