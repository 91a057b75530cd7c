//! A room to be solved, as it was given.

use elbowroom_model::Fault;

use crate::process::source::Unreadable;
use crate::words::batch as words;

/// A room to be solved.
#[derive(Debug, PartialEq)]
pub(crate) struct Given {
    /// Where it came from, in the user's words; `None` where a line of JSON does not say.
    pub source: Option<String>,
    /// The scenario's text, or why there is none.
    pub text: Result<String, Box<Fault>>,
}

impl Given {
    /// The scenario's text, or why there is none.
    pub(crate) fn scenario(&self) -> Result<&str, &Fault> {
        match &self.text {
            Ok(text) => Ok(text),
            Err(fault) => Err(fault),
        }
    }
}

/// Why there is no text, as a fault of the room.
pub(super) fn fault(why: &Unreadable) -> Box<Fault> {
    words::unreadable(why)
}
