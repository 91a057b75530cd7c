//! `man`: the manual pages, the program's or a command's.

use crate::args::{self, ManArgs};
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;

/// Prints one page.
pub(super) fn run(args: &ManArgs, stdout: &mut Outlet<'_>) -> Result<Exit, Failure> {
    let mut program = args::command();
    program.build();
    let command = match &args.command {
        Some(name) => program.find_subcommand(name).cloned().ok_or_else(|| Failure::NoSuchCommand(name.clone()))?,
        None => program,
    };
    let mut page = Vec::new();
    clap_mangen::Man::new(command).render(&mut page).map_err(Failure::Unwritable)?;
    stdout.write(&String::from_utf8_lossy(&page))?;
    Ok(Exit::Done)
}
