//! The page: measuring, furnishing and comparing in a browser that never leaves this machine.
//!
//! `server` listens on 127.0.0.1 alone, unless `lan` is asked for too, `connections` lets so many in at once, and `gate` stands before it, by what `guard` knows: every request needs the token, names this machine as
//! its host and comes from the page itself. `shelf` says which files there are, `room` holds one that is open: its text, what
//! was done to it, what came of it. `screens` are the pages, `routes` what they may ask for. The file stays the truth: each
//! step is saved to it, and a sheet is what the command line makes of it.

mod connections;
mod cookies;
mod desk;
mod gate;
mod guard;
mod lan;
mod ranked;
mod reply;
mod room;
mod routes;
mod screens;
mod server;
mod shelf;
mod token;
mod touched;

use crate::args::PageArgs;
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use shelf::Shelf;

/// Serves until somebody stops it.
pub(crate) fn run(args: &PageArgs, stdout: &mut Outlet<'_>) -> Result<Exit, Failure> {
    let shelf = Shelf::at(&args.place)?;
    server::serve(shelf, args, stdout)?;
    Ok(Exit::Done)
}
