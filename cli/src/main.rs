//! The program `elbowroom`: hands this process's arguments and streams to [`elbowroom::run`].

use std::process::ExitCode;

use elbowroom::Outlet;
use mimalloc::MiMalloc;

/// A search asks for small pieces of memory by the hundred thousand: with this one the whole of `rank` takes a tenth less.
#[global_allocator]
static ALLOCATOR: MiMalloc = MiMalloc;

fn main() -> ExitCode {
    // Not locked: a progress bar writes to standard error from other threads.
    let mut stdin = std::io::stdin();
    let mut stdout = std::io::stdout();
    let mut stderr = std::io::stderr();
    let exit = elbowroom::run(
        elbowroom::as_started(),
        &mut stdin,
        &mut Outlet::of_stdout(&mut stdout),
        &mut Outlet::of_stderr(&mut stderr),
    );
    exit.into()
}
