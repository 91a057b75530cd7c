//! Ways in, made after what they reach of their reader, and of what says whether a piece gets in by them.
#![no_main]

#[path = "../../model/fuzz/mod.rs"]
mod fuzz;

use elbowroom_solver::way_in::way_in;

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| {
    let Some(file) = fuzz::ways::read_whole(bytes) else { return };
    let carried = way_in(&file, &[], &|_| 800.0);
    for piece in &carried.pieces {
        // The most that gets in is told of what does not, and is a size.
        if let Some(most) = piece.most {
            assert!(!piece.carried.gets_in && most.iter().all(|size| size.is_finite() && *size >= 0.0), "{piece:?}");
        }
    }
});
