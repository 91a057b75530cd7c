//! `man`: the manual page.

use crate::args;
use crate::exit::Exit;
use crate::failure::Failure;
use crate::outlet::Outlet;

/// Prints the manual page: the program's, then each command's.
pub(super) fn run(stdout: &mut Outlet<'_>) -> Result<Exit, Failure> {
    let mut command = args::command();
    command.build();
    let mut page = Vec::new();
    clap_mangen::Man::new(command.clone()).render(&mut page).map_err(Failure::Unwritable)?;
    for command in command.get_subcommands().filter(|command| command.get_name() != "help") {
        let name = format!("elbowroom {}", command.get_name());
        let man = clap_mangen::Man::new(command.clone().display_name(name));
        man.render_description_section(&mut page).map_err(Failure::Unwritable)?;
        man.render_synopsis_section(&mut page).map_err(Failure::Unwritable)?;
        man.render_options_section(&mut page).map_err(Failure::Unwritable)?;
    }
    stdout.write(&String::from_utf8_lossy(&page))?;
    Ok(Exit::Done)
}
