//! Why a run did not do what was asked, as a value.

use std::borrow::Cow;
use std::path::Path;

use elbowroom_model::Fault;

use crate::batch::rooms::is_scenario;
use crate::exit::Exit;
use crate::outlet::Outlet;
use crate::render::{faults, list_faults, safe};
use crate::source::{Source, Unreadable};
use crate::words;

/// Why a run did not do what was asked.
#[derive(Debug, thiserror::Error)]
pub(crate) enum Failure {
    /// The command line was not understood, or asked for help.
    #[error("{0}")]
    CommandLine(clap::Error),
    /// Two inputs cannot both be standard input.
    #[error("standard input can stand for one file, not for two")]
    StandardInputTwice,
    /// A file cannot be read.
    #[error("cannot read {name}: {why}")]
    Unreadable {
        /// What the user calls it.
        name: String,
        /// Why.
        why: Unreadable,
    },
    /// The scenario, or the table beside it, is at fault.
    #[error("{} in {}", faults.len(), scenario.name)]
    Faults {
        /// The scenario.
        scenario: Source,
        /// Every fault of it.
        faults: Vec<Fault>,
    },
    /// A list of pieces is at fault.
    #[error("{} in {name}", faults.told.len())]
    ListFaults {
        /// What the user calls it.
        name: String,
        /// Every fault of it.
        faults: elbowroom_model::listing::Faults,
    },
    /// A way in, and nothing to carry along it.
    #[error("there is no piece to carry in")]
    NothingToCarry,
    /// A file that was to be written is there already.
    #[error("{0} is already there, and nothing was written")]
    AlreadyThere(String),
    /// A file cannot be created.
    #[error("cannot write {name}: {why}")]
    Uncreatable {
        /// What the user calls it.
        name: String,
        /// Why.
        why: std::io::Error,
    },
    /// A file could not be written to its end.
    #[error("cannot write {name}: {why}; nothing is left of it")]
    NotWritten {
        /// What the user calls it.
        name: String,
        /// Why.
        why: std::io::Error,
    },
    /// There are no rooms to work on.
    #[error("there is no scenario in {name}")]
    NoRooms {
        /// What the user calls it.
        name: String,
    },
    /// Another run is at work in the folder.
    #[error("another run is at work in {name}")]
    InUse {
        /// What the user calls it.
        name: String,
    },
    /// A run over many rooms cannot go on.
    #[error("cannot go on with {name}: {why}; what is solved so far is kept")]
    BrokenOff {
        /// The file that holds what is solved so far.
        name: String,
        /// Why.
        why: std::io::Error,
    },
    /// No option has that place or key.
    #[error("no option is called {meant}")]
    NoSuchOption {
        /// What was asked for.
        meant: String,
        /// How many there are.
        options: usize,
    },
    /// An option cannot be compared with itself.
    #[error("option {meant} is named twice")]
    SameOption {
        /// What was asked for.
        meant: String,
    },
    /// Nothing fits, so there is no option to draw.
    #[error("nothing fits as asked")]
    NothingFits {
        /// What would help, a sentence each.
        remedies: Vec<String>,
    },
    /// A sheet cannot be drawn.
    #[error("cannot draw the sheet: {0}")]
    Drawing(&'static str),
    /// What is no text would go to a terminal.
    #[error("a {form} file cannot be shown at a terminal")]
    NoText {
        /// What it is.
        form: &'static str,
        /// What can be asked for instead.
        instead: &'static str,
    },
    /// No command is called so.
    #[error("there is no command {0}")]
    NoSuchCommand(String),
    /// The output cannot be written.
    #[error("cannot write the result: {0}")]
    Unwritable(std::io::Error),
    /// The result cannot be put into JSON.
    #[error("cannot put the result into JSON: {0}")]
    Json(#[from] serde_json::Error),
    /// Threads would not start.
    #[error("cannot start the threads: {0}")]
    Threads(#[from] rayon::ThreadPoolBuildError),
}

impl Failure {
    /// How the run ends.
    pub(crate) fn exit(&self) -> Exit {
        match self {
            Self::CommandLine(error) if !error.use_stderr() => Exit::Done,
            Self::CommandLine(_)
            | Self::StandardInputTwice
            | Self::Unreadable { .. }
            | Self::Faults { .. }
            | Self::ListFaults { .. }
            | Self::NothingToCarry
            | Self::NoRooms { .. }
            | Self::NoSuchOption { .. }
            | Self::SameOption { .. }
            | Self::NoSuchCommand(_)
            | Self::NoText { .. }
            | Self::AlreadyThere(_)
            | Self::Uncreatable { .. } => Exit::Faulty,
            Self::NothingFits { .. } => Exit::NothingFits,
            Self::NotWritten { .. }
            | Self::Drawing(_)
            | Self::InUse { .. }
            | Self::BrokenOff { .. }
            | Self::Unwritable(_)
            | Self::Json(_)
            | Self::Threads(_) => Exit::Failed,
        }
    }

    /// What to do about it, where that is not plain from the message.
    fn remedy(&self) -> Option<Cow<'static, str>> {
        let plain = |remedy: &'static str| Some(Cow::Borrowed(remedy));
        match self {
            Self::Unreadable { why: Unreadable::Missing, name } if is_scenario(Path::new(name)) => {
                plain("Check the name and the folder; `elbowroom new` writes a file to start from.")
            }
            Self::Unreadable { why, .. } => plain(why.remedy()),
            Self::StandardInputTwice => plain("Name a file for one of the two."),
            Self::NothingToCarry => plain("Give the file `pieces`, or name a list: `--pieces LIST`."),
            Self::AlreadyThere(_) => plain("Name another file, or put `--force` to replace that one."),
            Self::Uncreatable { .. } => plain("See that the folder is there and can be written to."),
            Self::NoRooms { .. } => plain(words::batch::NO_ROOMS),
            Self::InUse { .. } => plain(words::batch::IN_USE),
            Self::BrokenOff { .. } => plain(words::batch::RUN_AGAIN),
            Self::NotWritten { .. } => plain("See that there is room for it, and that it can be written to."),
            Self::NoSuchOption { options, .. } => Some(words::options_there_are(*options).into()),
            Self::SameOption { .. } => plain("Name two different options, or three."),
            Self::NothingFits { remedies } => Some(words::would_help(remedies).into()),
            Self::NoText { instead, .. } => plain(instead),
            Self::NoSuchCommand(_) => plain("`elbowroom --help` lists them."),
            _ => None,
        }
    }

    /// Tells the failure where it belongs and says how the run ends. If even the message cannot be written, the exit
    /// code still speaks.
    pub(crate) fn tell(&self, stdout: &mut Outlet<'_>, stderr: &mut Outlet<'_>) -> Exit {
        let told = match self {
            Self::CommandLine(error) if error.use_stderr() => stderr.write(&clap_text(error, stderr)),
            Self::CommandLine(error) => stdout.write(&clap_text(error, stdout)),
            Self::Faults { scenario, faults } => stderr.write(&faults::text(scenario, faults, stderr.look())),
            Self::ListFaults { name, faults } => stderr.write(&list_faults::text(name, faults, stderr.look())),
            _ => stderr
                .write(&words::failure(&safe(&self.to_string()), self.remedy().map(|remedy| safe(&remedy)).as_deref())),
        };
        match (told, self.exit()) {
            (Err(_), Exit::Done) => Exit::Failed,
            (_, exit) => exit,
        }
    }
}

/// What clap has to say, with its own tones only where they can be shown.
fn clap_text(error: &clap::Error, outlet: &Outlet<'_>) -> String {
    let text = error.render();
    if outlet.look().colour { text.ansi().to_string() } else { text.to_string() }
}
