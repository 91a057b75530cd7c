//! `schema`: the JSON Schema of a scenario file.

use elbowroom_model::scenario;

use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;

/// Prints the schema.
pub(super) fn run(stdout: &mut Outlet<'_>) -> Result<Exit, Failure> {
    stdout.write(&scenario::schema())?;
    Ok(Exit::Done)
}
