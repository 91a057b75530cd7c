//! How the figures of a list are written.

use clap::ValueEnum;
use elbowroom_model::listing::Decimals;

/// What parts the decimals of a list's figures.
#[derive(Debug, Clone, Copy, clap::Args)]
pub(crate) struct DecimalsArg {
    /// What parts the decimals in the list's figures; without it a figure that could be read in two ways is refused
    #[arg(long, value_name = "MARK")]
    pub decimals: Option<Mark>,
}

/// A mark before decimals.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum Mark {
    /// 212,5
    Comma,
    /// 212.5
    Point,
}

impl DecimalsArg {
    /// As the list's reader takes it.
    pub(crate) fn mark(self) -> Option<Decimals> {
        self.decimals.map(|mark| match mark {
            Mark::Comma => Decimals::Comma,
            Mark::Point => Decimals::Point,
        })
    }
}
