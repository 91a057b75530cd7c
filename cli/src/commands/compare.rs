//! `compare`: two or three options side by side.

use std::io::Read;

use elbowroom_solver::Limits;

use crate::args::CompareArgs;
use crate::exit::Exit;
use crate::failure::Failure;
use crate::outlet::Outlet;
use crate::ranked::{chosen, ranked};
use crate::render::compare;

/// Reads, ranks, prints.
pub(super) fn run(
    args: &CompareArgs,
    stdin: &mut dyn Read,
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    let limits = Limits { shown: 0, ..Limits::default() };
    let (brief, outcome) = ranked(&args.room, &limits, stdin, stderr)?;
    let mut options = Vec::with_capacity(args.options.len());
    for meant in &args.options {
        let option = chosen(&outcome, meant)?;
        if options.iter().any(|other: &&elbowroom_solver::outcome::OptionFound| other.key == option.key) {
            return Err(Failure::SameOption { meant: meant.to_string() });
        }
        options.push(option);
    }
    stdout.write(&compare::text(
        &compare::Compared { brief: &brief, outcome: &outcome, options: &options },
        stdout.look(),
    ))?;
    Ok(Exit::Done)
}
