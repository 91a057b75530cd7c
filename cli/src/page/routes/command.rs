//! Commands of the command line, run for the page: what they make is the same.

use std::ffi::OsString;
use std::io::Read;

use crate::args::{self, Asked as Run};
use crate::commands;
use crate::process::outlet::Outlet;
use crate::words::{failure, page as words};

/// What the command line makes of this line and what it reads; or what it says of why it makes nothing.
pub(super) fn made(line: &[OsString], read: &mut (dyn Read + Send)) -> Result<Vec<u8>, String> {
    let (mut found, mut told) = (Vec::new(), Vec::new());
    let asked = args::parse(line.to_vec()).map_err(|why| failure::message(&why))?.asked;
    let Run::Command(command) = asked else { return Err(words::NOT_UNDERSTOOD.to_owned()) };
    let (mut out, mut err) = (Outlet::plain(&mut found), Outlet::plain(&mut told));
    commands::run(command, read, &mut out, &mut err).map_err(|why| failure::message(&why))?;
    Ok(found)
}
