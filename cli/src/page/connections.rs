//! Connections: so many at once, and each must say what it wants before long. Whoever holds one open and asks for nothing is let go,
//! so that nobody without the token can keep others from being answered.

use std::convert::Infallible;
use std::sync::Arc;
use std::time::Duration;

use axum::Router;
use hyper::server::conn::http1::Builder;
use hyper_util::rt::{TokioIo, TokioTimer};
use hyper_util::service::TowerToHyperService;
use tokio::net::TcpListener;
use tokio::sync::Semaphore;

/// How long the head of a request may take to come, from the moment that it is waited for.
const HEAD: Duration = Duration::from_secs(10);
/// Connections at once; others wait to be let in. A browser opens six.
const AT_ONCE: usize = 400;
/// How long to wait where the system lets none in.
const AGAIN: Duration = Duration::from_millis(50);

/// How many may be open at once on a port: whoever fills one keeps nobody from another.
pub(super) fn of_a_port() -> Arc<Semaphore> {
    Arc::new(Semaphore::new(AT_ONCE))
}

/// Answers whoever connects, without end.
pub(super) async fn answer(listener: TcpListener, pages: Router, open: Arc<Semaphore>) -> std::io::Result<Infallible> {
    loop {
        let place = Arc::clone(&open).acquire_owned().await.map_err(std::io::Error::other)?;
        let Ok((stream, _)) = listener.accept().await else {
            // Too many files are open, or whoever came has gone again.
            tokio::time::sleep(AGAIN).await;
            continue;
        };
        let service = TowerToHyperService::new(pages.clone());
        tokio::spawn(async move {
            let mut connection = Builder::new();
            connection.timer(TokioTimer::new()).header_read_timeout(HEAD);
            // Whoever breaks off needs no answer.
            let _ = connection.serve_connection(TokioIo::new(stream), service).await;
            drop(place);
        });
    }
}
