//! Time that this thread has had of the processor, so that other work on the machine does not count.

use std::sync::OnceLock;
use std::time::{Duration, Instant};

/// Spent by this thread so far; of the clock where the system does not tell (it does on Linux).
pub(crate) fn now() -> Duration {
    static START: OnceLock<Instant> = OnceLock::new();
    let clock = START.get_or_init(Instant::now).elapsed();
    // The system counts by ticks of some milliseconds, but counts up whenever a thread stops.
    std::thread::sleep(Duration::from_nanos(1));
    let told = std::fs::read_to_string("/proc/thread-self/schedstat").ok();
    let spent = told.and_then(|told| told.split_whitespace().next()?.parse().ok());
    spent.map_or(clock, Duration::from_nanos)
}

/// The answer and the mean seconds of one run, of as many as fill `fill` by the clock.
pub(crate) fn mean<T>(fill: Duration, run: impl Fn() -> T) -> (T, f64) {
    let answer = run();
    let (start, clock, mut runs) = (now(), Instant::now(), 0);
    while runs == 0 || clock.elapsed() < fill {
        std::hint::black_box(run());
        runs += 1;
    }
    (answer, (now() - start).as_secs_f64() / f64::from(runs))
}
