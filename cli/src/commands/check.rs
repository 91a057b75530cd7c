//! `check`: what a scenario says once read.

use std::io::Read;

use crate::args::CheckArgs;
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::ranked;
use crate::render::check;

/// Tells what was understood.
pub(super) fn run(args: &CheckArgs, stdin: &mut dyn Read, stdout: &mut Outlet<'_>) -> Result<Exit, Failure> {
    let (scenario, brief) = ranked::brief(&args.scenario, stdin)?;
    stdout.write(&check::text(&scenario.name, &brief, stdout.look()))?;
    Ok(Exit::Done)
}
