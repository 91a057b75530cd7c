//! The forms of a sheet of words and tables.

/// A form.
#[derive(Debug, Clone, Copy, PartialEq, Eq, clap::ValueEnum)]
pub(crate) enum LeafForm {
    /// Plain text
    #[value(alias = "txt")]
    Text,
    /// One page that needs nothing beside itself
    #[value(alias = "htm")]
    Html,
    /// Paper, to print
    Pdf,
}
