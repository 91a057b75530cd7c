//! The server: one port of this machine, on the local network too where that is asked for, one thread for what is asked, others for
//! what takes long; it ends when it is told to.

use std::net::{Ipv4Addr, TcpListener};
use std::time::Duration;

use tokio::task::JoinSet;

use super::connections;
use super::desk::Desk;
use super::guard::{Guard, Lan};
use super::lan;
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
    let own = listening(Ipv4Addr::LOCALHOST, args.port).map_err(unserved)?;
    let port = own.local_addr().map_err(unserved)?.port();
    let (listeners, lan) = match args.lan {
        None => (vec![own], None),
        Some(chosen) => {
            let address = lan::address(chosen).ok_or(Failure::NoNetwork)?;
            let looks = Token::new().map_err(unserved)?;
            (vec![own, listening(address, port).map_err(unserved)?], Some(Lan { address, looks }))
        }
    };
    let guard = Guard::new(Token::new().map_err(unserved)?, port, lan);
    let (link, links_of_lan) = (guard.link(), guard.links_of_lan());
    let desk = Desk::new(guard, shelf);
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().map_err(unserved)?;
    desk.begin();
    // Whoever reads the link may come at once: the port is open by now.
    stdout.write(&words::link(&link, links_of_lan.is_some()))?;
    if let Some([change, look]) = links_of_lan {
        let colour = stdout.look().colour && stdout.is_terminal();
        stdout.write(&words::links_of_lan(
            &change,
            &lan::square(&change, colour),
            &look,
            &lan::square(&look, colour),
        ))?;
    }
    if args.open && open::that_detached(&link).is_err() {
        stdout.write(words::NOT_OPENED)?;
    }
    let rest = args.ends_after.map(|minutes| Duration::from_secs(60 * u64::from(minutes)));
    let served = runtime.block_on(answer(listeners, desk.clone(), rest));
    desk.close();
    runtime.shutdown_timeout(LAST_WORD);
    served.map_err(unserved)
}

fn listening(address: Ipv4Addr, port: u16) -> std::io::Result<TcpListener> {
    let listener = TcpListener::bind((address, port))?;
    listener.set_nonblocking(true)?;
    Ok(listener)
}

/// Answers on every port until one breaks down, somebody interrupts or nobody has asked for anything for so long.
async fn answer(listeners: Vec<TcpListener>, desk: Desk, rest: Option<Duration>) -> std::io::Result<()> {
    let mut serving = JoinSet::new();
    for listener in listeners {
        let listener = tokio::net::TcpListener::from_std(listener)?;
        serving.spawn(connections::answer(listener, routes::all(desk.clone()), connections::of_a_port()));
    }
    tokio::select! {
        ended = serving.join_next() => match ended {
            Some(Ok(ended)) => ended.map(|_| ()),
            Some(Err(why)) => Err(std::io::Error::other(why.to_string())),
            None => Ok(()),
        },
        () = interrupted() => Ok(()),
        () = left(&desk, rest) => Ok(()),
    }
}

/// Until nobody has asked for anything for so long; without end where no time is given.
async fn left(desk: &Desk, rest: Option<Duration>) {
    let Some(rest) = rest else { return std::future::pending().await };
    while let Some(more) = rest.checked_sub(desk.idle()).filter(|more| !more.is_zero()) {
        tokio::time::sleep(more).await;
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

#[cfg(test)]
mod tests {
    use std::path::Path;
    use std::time::{Duration, Instant};

    use super::left;
    use crate::page::desk::Desk;
    use crate::page::guard::Guard;
    use crate::page::shelf::Shelf;
    use crate::page::token::Token;

    const REST: Duration = Duration::from_millis(200);

    #[test]
    fn it_ends_once_nobody_has_asked_for_so_long_and_no_sooner() {
        let guard = Guard::new(Token::new().unwrap(), 1, None);
        let desk = Desk::new(guard, Shelf::at(Path::new(".")).unwrap());
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap();
        let begun = Instant::now();
        runtime.block_on(async {
            let asking = async {
                tokio::time::sleep(REST / 2).await;
                desk.ask();
            };
            tokio::join!(left(&desk, Some(REST)), asking);
            assert!(begun.elapsed() >= REST + REST / 2, "{:?}", begun.elapsed());
            let stays = tokio::time::timeout(2 * REST, left(&desk, None));
            assert!(stays.await.is_err(), "with no time given it stays");
        });
    }
}
