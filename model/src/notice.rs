//! What the reading of a file has to say to whoever reads the result.

/// Something that a reader of the result must be told.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Notice {
    /// One or two sentences.
    pub text: String,
    /// A figure of the file is likely a slip: it is to be looked at before anything is bought by the result.
    pub is_of_a_slip: bool,
}

impl Notice {
    /// One that speaks of no slip.
    #[must_use]
    pub const fn plain(text: String) -> Self {
        Self { text, is_of_a_slip: false }
    }
}
