//! A failure as the run tells it.

use crate::process::failure::Failure;
use crate::render::{faults, list_faults};
use crate::text::look::Look;
use crate::text::safe::safe;
use crate::words::failure as words;

/// What went wrong, and what to do about it.
pub(crate) fn text(failure: &Failure, look: Look) -> String {
    match failure {
        // With its own tones only where they can be shown.
        Failure::CommandLine(error) if look.colour => error.render().ansi().to_string(),
        Failure::CommandLine(error) => error.render().to_string(),
        Failure::Faults { scenario, faults } => faults::text(scenario, faults, look),
        Failure::ListFaults { name, faults } => list_faults::text(name, faults, look),
        other => {
            let remedy = words::remedy(other).map(|remedy| safe(&remedy));
            words::told(&safe(&words::message(other)), remedy.as_deref())
        }
    }
}
