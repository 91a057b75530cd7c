//! Which option of a result is meant.

use std::fmt;
use std::str::FromStr;

/// An option by its place in the order or by its key.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum OptionArg {
    /// Its place, from 1.
    Rank(usize),
    /// The stable name of its arrangement.
    Key(String),
}

impl FromStr for OptionArg {
    type Err = std::convert::Infallible;

    fn from_str(given: &str) -> Result<Self, Self::Err> {
        // A key holds a `/`, so a number can only be a place.
        Ok(given.parse().map_or_else(|_| Self::Key(given.to_owned()), Self::Rank))
    }
}

impl fmt::Display for OptionArg {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Rank(rank) => write!(formatter, "{rank}"),
            Self::Key(key) => formatter.write_str(key),
        }
    }
}
