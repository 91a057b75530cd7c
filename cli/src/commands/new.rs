//! `new`: a commented scenario to start from.

use std::fs::OpenOptions;
use std::io::{ErrorKind, Write};
use std::path::Path;

use elbowroom_model::scenario;

use crate::args::NewArgs;
use crate::exit::Exit;
use crate::failure::Failure;
use crate::outlet::Outlet;
use crate::render::safe;
use crate::source;
use crate::words;

/// Writes the scenario where no file is yet, or prints it.
pub(super) fn run(args: &NewArgs, stdout: &mut Outlet<'_>, stderr: &mut Outlet<'_>) -> Result<Exit, Failure> {
    let starter = scenario::starter();
    if source::is_standard_input(&args.file) {
        stdout.write(starter)?;
    } else {
        create(&args.file, starter)?;
        stderr.write(&words::wrote(&safe(&args.file.display().to_string())))?;
    }
    Ok(Exit::Done)
}

/// Writes a file that must not be there yet; the system itself sees to that, so nothing can slip in between.
fn create(path: &Path, text: &str) -> Result<(), Failure> {
    let name = path.display().to_string();
    let created = OpenOptions::new().write(true).create_new(true).open(path);
    match created.and_then(|mut file| file.write_all(text.as_bytes())) {
        Ok(()) => Ok(()),
        Err(error) if error.kind() == ErrorKind::AlreadyExists => Err(Failure::AlreadyThere(name)),
        Err(why) => Err(Failure::Uncreatable { name, why }),
    }
}
