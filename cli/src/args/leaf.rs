//! The forms of a sheet of words and tables.

/// A form.
#[derive(Debug, Clone, Copy, PartialEq, Eq, clap::ValueEnum)]
pub(crate) enum LeafForm {
    /// Plain text
    Text,
    /// One page that needs nothing beside itself
    Html,
    /// Paper, to print
    Pdf,
}

impl LeafForm {
    /// The form that the ending of a file's name tells of.
    pub(crate) fn of_ending(ending: &str) -> Option<Self> {
        match ending {
            "txt" | "text" => Some(Self::Text),
            "html" | "htm" => Some(Self::Html),
            "pdf" => Some(Self::Pdf),
            _ => None,
        }
    }
}
