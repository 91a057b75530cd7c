//! Workbooks, made after what of their reader they reach.
#![no_main]

#[path = "../../model/fuzz/mod.rs"]
mod fuzz;

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| fuzz::mutation::once(bytes, fuzz::sheets::check));
