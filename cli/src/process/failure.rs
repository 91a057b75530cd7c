//! Why a run did not do what was asked, as a value; what is said of it stands in `words::failure`.

use elbowroom_model::Fault;

use super::exit::Exit;
use super::source::{Source, Unread, Unreadable};

/// Why a run did not do what was asked.
#[derive(Debug)]
pub(crate) enum Failure {
    /// The command line was not understood, or asked for help.
    CommandLine(clap::Error),
    /// Two inputs cannot both be standard input.
    StandardInputTwice,
    /// A file cannot be read.
    Unreadable {
        /// What the user calls it.
        name: String,
        /// Why.
        why: Unreadable,
    },
    /// The scenario, or the table beside it, is at fault.
    Faults {
        /// The scenario.
        scenario: Source,
        /// Every fault of it.
        faults: Vec<Fault>,
    },
    /// A list of pieces is at fault.
    ListFaults {
        /// What the user calls it.
        name: String,
        /// Every fault of it.
        faults: elbowroom_model::listing::Faults,
    },
    /// A way in, and nothing to carry along it.
    NothingToCarry,
    /// The room cannot be judged as it stands.
    NotPlaced {
        /// What is needed and has no place; empty: no seat has one.
        names: Vec<String>,
        /// Some of it are several alike in one row of the file.
        several_alike: bool,
        /// A wall of the room.
        wall: String,
    },
    /// A file that was to be written is there already.
    AlreadyThere(String),
    /// A file that was to be written is one that is read.
    WouldWriteInput {
        /// What the user calls the file that was to be written.
        output: String,
        /// What the user calls it where it is read.
        input: String,
    },
    /// The page cannot listen on this port.
    NotServed {
        /// The port; 0 is any.
        port: u16,
        /// What the system says.
        why: std::io::Error,
    },
    /// No address of this machine on a local network is known.
    NoNetwork,
    /// Files are in the place of a run's own that no run left there.
    Foreign(Vec<String>),
    /// The ending of a file tells no form that its content can have.
    UnknownEnding {
        /// What the user calls it.
        name: String,
        /// The endings that are known.
        known: Vec<String>,
    },
    /// A file that was to give letters is no font.
    NoFont {
        /// What the user calls it.
        name: String,
    },
    /// A file cannot be created.
    Uncreatable {
        /// What the user calls it.
        name: String,
        /// Why.
        why: std::io::Error,
    },
    /// A file could not be written to its end.
    NotWritten {
        /// What the user calls it.
        name: String,
        /// Why.
        why: std::io::Error,
    },
    /// There are no rooms to work on.
    NoRooms {
        /// What the user calls it.
        name: String,
    },
    /// Another run is at work in the folder.
    InUse {
        /// What the user calls it.
        name: String,
    },
    /// A run over many rooms cannot go on.
    BrokenOff {
        /// The file that holds what is solved so far.
        name: String,
        /// Why.
        why: std::io::Error,
    },
    /// No option has that place or key.
    NoSuchOption {
        /// What was asked for.
        meant: String,
        /// How many there are.
        options: usize,
    },
    /// An option cannot be compared with itself.
    SameOption {
        /// What was asked for.
        meant: String,
    },
    /// Nothing fits, or nothing was found that does, so there is no option to draw.
    NothingFits {
        /// Arrangements of which nobody knows whether they fit.
        undecided: usize,
        /// What would help, a sentence each.
        remedies: Vec<String>,
    },
    /// A sheet cannot be drawn.
    Drawing(&'static str),
    /// Two sheets are asked for in a form that holds one.
    OneSheet,
    /// A workbook would have more rows than a sheet holds.
    TooManyRows {
        /// How many rows, the header left out.
        rows: usize,
        /// How many a sheet holds under its header.
        most: usize,
    },
    /// What is no text would go to a terminal.
    NoText {
        /// What it is.
        form: &'static str,
        /// What can be asked for instead.
        instead: &'static str,
    },
    /// No command is called so.
    NoSuchCommand(String),
    /// Whoever read the result went away before its end: a script must know, and a person who has read enough need not
    /// be told.
    ReaderGone,
    /// The output cannot be written.
    Unwritable(std::io::Error),
    /// The result cannot be put into JSON.
    Json(serde_json::Error),
    /// Threads would not start.
    Threads(rayon::ThreadPoolBuildError),
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
            | Self::NotPlaced { .. }
            | Self::NoRooms { .. }
            | Self::NoSuchOption { .. }
            | Self::SameOption { .. }
            | Self::NoSuchCommand(_)
            | Self::NoText { .. }
            | Self::OneSheet
            | Self::TooManyRows { .. }
            | Self::AlreadyThere(_)
            | Self::WouldWriteInput { .. }
            | Self::Foreign(_)
            | Self::UnknownEnding { .. }
            | Self::NoFont { .. }
            | Self::Uncreatable { .. } => Exit::Faulty,
            Self::NothingFits { .. } => Exit::NothingFits,
            Self::NotWritten { .. }
            | Self::Drawing(_)
            | Self::InUse { .. }
            | Self::NotServed { .. }
            | Self::NoNetwork
            | Self::BrokenOff { .. }
            | Self::ReaderGone
            | Self::Unwritable(_)
            | Self::Json(_)
            | Self::Threads(_) => Exit::Failed,
        }
    }
}

impl From<Unread> for Failure {
    fn from(unread: Unread) -> Self {
        Self::Unreadable { name: unread.name, why: unread.why }
    }
}

impl From<serde_json::Error> for Failure {
    fn from(error: serde_json::Error) -> Self {
        Self::Json(error)
    }
}

impl From<rayon::ThreadPoolBuildError> for Failure {
    fn from(error: rayon::ThreadPoolBuildError) -> Self {
        Self::Threads(error)
    }
}
