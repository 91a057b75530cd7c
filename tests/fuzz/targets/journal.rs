//! What is kept of a run, made after what of their reader they reach.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| elbowroom::fuzz::by_reach::journal(bytes));
