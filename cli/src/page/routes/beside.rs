//! Work beside what else is asked, which ends where nobody waits for it any more; and what is answered where there is nothing.

use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};

use axum::http::StatusCode;
use axum::response::Response;
use elbowroom_solver::Watch;
use maud::html;

use crate::page::{reply, screens};
use crate::words::page as words;

/// A page that says that there is none.
pub(super) fn missing() -> Response {
    let body = html! { main id="main" { h1 { (words::NOT_HERE) } p { a href="/" { (words::ALL_ROOMS) } } } };
    reply::html_of(StatusCode::NOT_FOUND, screens::page(words::NOT_HERE, body))
}

/// Work that takes more than a moment, beside what else is asked.
pub(super) async fn beside(work: impl FnOnce() -> Response + Send + 'static) -> Response {
    match tokio::task::spawn_blocking(work).await {
        Ok(response) => response,
        Err(_) => reply::plain(StatusCode::INTERNAL_SERVER_ERROR, words::FAILED),
    }
}

/// The same, and the work is told where whoever asked has gone away meanwhile.
pub(super) async fn while_waited_for(work: impl FnOnce(&dyn Watch) -> Response + Send + 'static) -> Response {
    let gone = Arc::new(Gone::default());
    let asker = Asker(Arc::clone(&gone));
    let response = beside(move || work(&*gone)).await;
    drop(asker);
    response
}

/// Whether whoever asked has gone away.
#[derive(Debug, Default)]
struct Gone(AtomicBool);

impl Watch for Gone {
    fn solved(&self, _done: usize, _all: usize) {}

    fn is_stopped(&self) -> bool {
        self.0.load(Ordering::Relaxed)
    }
}

/// Whoever asked: dropped with the request, whether that was answered or broken off.
struct Asker(Arc<Gone>);

impl Drop for Asker {
    fn drop(&mut self) {
        self.0.0.store(true, Ordering::Relaxed);
    }
}

#[cfg(test)]
mod tests {
    use std::sync::mpsc;
    use std::time::Duration;

    use super::{reply, while_waited_for};

    #[test]
    fn work_is_told_that_nobody_waits_for_it_any_more_and_no_sooner() {
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap();
        let (tell, told) = mpsc::channel();
        let asked = while_waited_for(move |watch| {
            tell.send(watch.is_stopped()).unwrap();
            while !watch.is_stopped() {
                std::thread::sleep(Duration::from_millis(1));
            }
            tell.send(true).unwrap();
            reply::plain(axum::http::StatusCode::OK, "")
        });
        // A request is dropped where its connection breaks off.
        let broken_off =
            runtime.block_on(async { tokio::time::timeout(Duration::from_millis(50), asked).await.is_err() });
        assert!(broken_off && !told.recv().unwrap());
        assert!(told.recv_timeout(Duration::from_secs(60)).unwrap());
    }
}
