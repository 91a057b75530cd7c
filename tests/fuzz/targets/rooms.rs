//! Rooms, made after what they reach of the solver; each told option is judged by the second checker.
#![no_main]
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a panic is how a check fails")]
#![allow(dead_code, reason = "a target needs a part of what the suites share")]

#[path = "../../cli/out_of_bytes.rs"]
mod out_of_bytes;
#[path = "../../support/mod.rs"]
mod support;

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| -> libfuzzer_sys::Corpus {
    if out_of_bytes::check(bytes) { libfuzzer_sys::Corpus::Keep } else { libfuzzer_sys::Corpus::Reject }
});
