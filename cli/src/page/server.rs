//! The server: one port of this machine, one thread for what is asked, others for what takes long; it ends when it is told to.

use std::future::IntoFuture;
use std::net::{Ipv4Addr, TcpListener};
use std::time::Duration;

use super::desk::Desk;
use super::guard::Guard;
use super::routes;
use super::shelf::Shelf;
use super::token::Token;
use crate::args::PageArgs;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::words::page as words;

/// How long what is under way may take once the page ends.
const LAST_WORD: Duration = Duration::from_millis(500);

/// Listens, tells the link, answers until it is interrupted.
pub(super) fn serve(shelf: Shelf, args: &PageArgs, stdout: &mut Outlet<'_>) -> Result<(), Failure> {
    let unserved = |why| Failure::NotServed { port: args.port, why };
    let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, args.port)).map_err(unserved)?;
    listener.set_nonblocking(true).map_err(unserved)?;
    let port = listener.local_addr().map_err(unserved)?.port();
    let guard = Guard::new(Token::new().map_err(unserved)?, port);
    let link = guard.link();
    let desk = Desk::new(guard, shelf);
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().map_err(unserved)?;
    // Whoever reads the link may come at once: the port is open by now.
    stdout.write(&words::link(&link))?;
    if args.open && open::that_detached(&link).is_err() {
        stdout.write(words::NOT_OPENED)?;
    }
    let served = runtime.block_on(answer(listener, desk.clone()));
    desk.close();
    runtime.shutdown_timeout(LAST_WORD);
    served.map_err(unserved)
}

async fn answer(listener: TcpListener, desk: Desk) -> std::io::Result<()> {
    let listener = tokio::net::TcpListener::from_std(listener)?;
    let served = axum::serve(listener, routes::all(desk));
    tokio::select! {
        ended = served.into_future() => ended,
        () = interrupted() => Ok(()),
    }
}

/// Until somebody interrupts the program or asks it to end.
async fn interrupted() {
    #[cfg(unix)]
    {
        let ended = tokio::signal::unix::signal(tokio::signal::unix::SignalKind::terminate());
        if let Ok(mut ended) = ended {
            tokio::select! {
                _ = tokio::signal::ctrl_c() => {}
                _ = ended.recv() => {}
            }
            return;
        }
    }
    let _ = tokio::signal::ctrl_c().await;
}
