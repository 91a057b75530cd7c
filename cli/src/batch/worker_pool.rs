//! Who solves many rooms: threads side by side, a room to each, the results told in the order given.
//!
//! At any time only so many rooms are read and not yet told, whatever their number and however long one of them takes:
//! the reader needs a ticket for each room, and a ticket is free again once its room is told.

use std::collections::BTreeMap;
use std::sync::Mutex;
use std::sync::mpsc::{Receiver, Sender, SyncSender, channel, sync_channel};
use std::thread;

use rayon::{ThreadPool, ThreadPoolBuildError, ThreadPoolBuilder};

use crate::process::failure::Failure;

/// Rooms that may be read and not yet told, for each thread: a slow room holds up the telling and not the others' work.
const ROOMS_EACH: usize = 16;

/// Solves each of `given` on one of `threads` threads and tells the results in the order given.
///
/// # Errors
/// Threads that would not start; whatever `tell` fails with, which ends the work.
pub(crate) fn work<G: Send, D: Send>(
    threads: usize,
    given: impl Iterator<Item = G> + Send,
    solve: impl Fn(G) -> D + Sync,
    tell: impl FnMut(D) -> Result<(), Failure>,
) -> Result<(), Failure> {
    let pools = pools(threads)?;
    let window = threads * ROOMS_EACH;
    let (free, tickets) = sync_channel(window);
    for _ in 0..window {
        let _ = free.try_send(());
    }
    let (jobs, taken) = sync_channel(window);
    let (done, finished) = channel();
    let taken = Mutex::new(taken);
    thread::scope(|scope| {
        scope.spawn(move || read(given, &tickets, &jobs));
        for pool in &pools {
            let (done, taken, solve) = (done.clone(), &taken, &solve);
            scope.spawn(move || toil(pool, taken, solve, &done));
        }
        drop(done);
        tell_in_order(free, finished, tell)
    })
}

/// A pool of one thread for each room that is worked on: what the solver does side by side then stays on that thread.
fn pools(threads: usize) -> Result<Vec<ThreadPool>, ThreadPoolBuildError> {
    (0..threads).map(|_| ThreadPoolBuilder::new().num_threads(1).build()).collect()
}

/// Reads rooms as tickets come free; ends with the rooms, or when nobody takes them.
fn read<G>(given: impl Iterator<Item = G>, tickets: &Receiver<()>, jobs: &SyncSender<(usize, G)>) {
    for job in given.enumerate() {
        if tickets.recv().is_err() || jobs.send(job).is_err() {
            return;
        }
    }
}

/// Solves room after room; ends when there are none, or when nobody is told.
fn toil<G: Send, D: Send>(
    pool: &ThreadPool,
    taken: &Mutex<Receiver<(usize, G)>>,
    solve: &(impl Fn(G) -> D + Sync),
    done: &Sender<(usize, D)>,
) {
    loop {
        let job = taken.lock().map(|taken| taken.recv());
        let Ok(Ok((place, given))) = job else { return };
        let result = pool.install(|| solve(given));
        if done.send((place, result)).is_err() {
            return;
        }
    }
}

/// Tells the results as they stand next in the order, and gives a ticket back for each; the reader ends once it has none to
/// wait for, so the tickets go with this.
fn tell_in_order<D>(
    free: SyncSender<()>,
    finished: Receiver<(usize, D)>,
    mut tell: impl FnMut(D) -> Result<(), Failure>,
) -> Result<(), Failure> {
    let (mut waiting, mut next) = (BTreeMap::new(), 0);
    for (place, result) in finished {
        waiting.insert(place, result);
        while let Some(result) = waiting.remove(&next) {
            next += 1;
            tell(result)?;
            // Where the reader has ended, nobody waits for tickets.
            let _ = free.try_send(());
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use std::sync::atomic::{AtomicUsize, Ordering};

    use super::{ROOMS_EACH, work};
    use crate::process::failure::Failure;

    #[test]
    fn results_come_in_the_order_given_and_few_are_held() {
        let (read, told) = (AtomicUsize::new(0), AtomicUsize::new(0));
        let given = (0..2_000_usize).inspect(|_| {
            let held = read.fetch_add(1, Ordering::SeqCst) - told.load(Ordering::SeqCst);
            assert!(held <= 3 * ROOMS_EACH, "{held} rooms are held");
        });
        let solve = |room: usize| {
            if room.is_multiple_of(97) {
                std::thread::sleep(std::time::Duration::from_millis(5));
            }
            room * 2
        };
        let mut results = Vec::new();
        let tell = |result| {
            results.push(result);
            told.fetch_add(1, Ordering::SeqCst);
            Ok(())
        };
        work(3, given, solve, tell).unwrap();
        assert!(results.iter().copied().eq((0..2_000).map(|room| room * 2)));
    }

    #[test]
    fn nobody_works_on_once_telling_fails() {
        let solved = AtomicUsize::new(0);
        let solve = |room: usize| {
            solved.fetch_add(1, Ordering::SeqCst);
            room
        };
        let tell = |room| if room == 4 { Err(Failure::ReaderGone) } else { Ok(()) };
        assert!(matches!(work(2, 0..1_000_000_usize, solve, tell), Err(Failure::ReaderGone)));
        assert!(solved.load(Ordering::SeqCst) <= 5 + 4 * ROOMS_EACH);
    }
}
