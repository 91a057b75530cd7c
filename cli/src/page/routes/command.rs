//! Commands of the command line, run for the page: what they make is the same.

use std::ffi::OsString;
use std::io::Read;

use crate::args::{self, Asked as Run};
use crate::commands;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::words::{failure, page as words};

/// What the command line makes of this line and what it reads; or what it says of why it makes nothing.
pub(super) fn made(line: &[OsString], read: &mut (dyn Read + Send)) -> Result<Vec<u8>, String> {
    match tried(line, read) {
        Ok(Some(found)) => Ok(found),
        Ok(None) => Err(words::NOT_UNDERSTOOD.to_owned()),
        Err(why) => Err(failure::message(&why)),
    }
}

/// The same, or why it makes nothing; `None` where the line asks for no command.
pub(super) fn tried(line: &[OsString], read: &mut (dyn Read + Send)) -> Result<Option<Vec<u8>>, Failure> {
    let (mut found, mut told) = (Vec::new(), Vec::new());
    let Run::Command(command) = args::parse(line.to_vec())?.asked else { return Ok(None) };
    let (mut out, mut err) = (Outlet::plain(&mut found), Outlet::plain(&mut told));
    commands::run(command, read, &mut out, &mut err)?;
    Ok(Some(found))
}
