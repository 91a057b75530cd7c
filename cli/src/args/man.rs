//! The arguments of `man`.

/// Of `man`.
#[derive(Debug, clap::Args)]
pub(crate) struct ManArgs {
    /// The command to tell of, as `elbowroom --help` lists them; the program as a whole where not given
    #[arg(value_name = "COMMAND")]
    pub command: Option<String>,
}
