//! The arguments of `page`.

use std::net::Ipv4Addr;
use std::path::PathBuf;

/// Of `page`.
#[derive(Debug, clap::Args)]
pub(crate) struct PageArgs {
    /// The scenario file, or a folder of them; this folder where not given
    #[arg(value_name = "FILE|FOLDER", default_value = ".")]
    pub place: PathBuf,
    /// The port to listen on; a free one where not given
    #[arg(long, value_name = "PORT", default_value_t = 0, hide_default_value = true)]
    pub port: u16,
    /// Listen on the local network too, for a phone; the link is not encrypted. ADDRESS is this machine's there, where it
    /// has several
    #[arg(long, value_name = "ADDRESS", num_args = 0..=1, require_equals = true)]
    #[allow(clippy::option_option, reason = "clap tells a flag that takes a value or none so")]
    pub lan: Option<Option<Ipv4Addr>>,
    /// Open the page in the browser
    #[arg(long)]
    pub open: bool,
    /// End once nothing was asked of the page for so many minutes; never where not given
    #[arg(long, value_name = "MINUTES", value_parser = clap::value_parser!(u32).range(1..))]
    pub ends_after: Option<u32>,
}
