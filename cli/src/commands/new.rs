//! `new`: a commented scenario to start from.

use elbowroom_model::scenario;

use crate::args::NewArgs;
use crate::process::destination::Destination;
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::text::safe::safe;
use crate::words;

/// Writes the scenario where no file is yet, or prints it.
pub(super) fn run(args: &NewArgs, stdout: &mut Outlet<'_>, stderr: &mut Outlet<'_>) -> Result<Exit, Failure> {
    let destination = Destination::at(&args.file, args.force)?;
    destination.write(scenario::starter().as_bytes(), stdout)?;
    if let Some(name) = destination.name() {
        // The file is there, whether or not anybody hears of it.
        let _ = stderr.write(&words::wrote(&safe(&name)));
    }
    Ok(Exit::Done)
}
