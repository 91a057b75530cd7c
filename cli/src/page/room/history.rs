//! Steps that were taken, without end: the texts before them, and those that were taken back.

/// Texts that a room has had.
#[derive(Debug, Default)]
pub(super) struct History {
    before: Vec<String>,
    after: Vec<String>,
}

impl History {
    /// The text that taking back would bring.
    pub(super) fn last(&self) -> Option<&str> {
        self.before.last().map(String::as_str)
    }

    /// The text that taking again would bring.
    pub(super) fn next(&self) -> Option<&str> {
        self.after.last().map(String::as_str)
    }

    /// Whether there is something to take back, and to take again.
    pub(super) const fn can(&self) -> [bool; 2] {
        [!self.before.is_empty(), !self.after.is_empty()]
    }

    /// A step was taken from `text`.
    pub(super) fn took(&mut self, text: String) {
        self.before.push(text);
        self.after.clear();
    }

    /// A step was taken back; `text` was before that.
    pub(super) fn undid(&mut self, text: String) {
        self.before.pop();
        self.after.push(text);
    }

    /// A step was taken again; `text` was before that.
    pub(super) fn redid(&mut self, text: String) {
        self.after.pop();
        self.before.push(text);
    }
}
