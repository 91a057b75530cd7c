//! A demo room from its text to its ranked options, for each room of `scenarios/`.
#![allow(missing_docs, clippy::unwrap_used, reason = "a bench is read by its output; a panic is how it fails")]

use criterion::{Criterion, criterion_group, criterion_main};
use elbowroom_solver::{Limits, Unwatched, rank};
use std::hint::black_box;

const SCENARIOS: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../scenarios");

fn demo_rooms(criterion: &mut Criterion) {
    let mut paths: Vec<_> = std::fs::read_dir(SCENARIOS).unwrap().map(|entry| entry.unwrap().path()).collect();
    paths.sort();
    for path in paths.iter().filter(|path| path.extension().is_some_and(|extension| extension == "yaml")) {
        let text = std::fs::read_to_string(path).unwrap();
        let name = format!("rank/{}", path.file_stem().unwrap().to_string_lossy());
        criterion.bench_function(&name, |bencher| {
            bencher.iter(|| {
                let brief = elbowroom_model::scenario::read(black_box(&text), None).unwrap();
                rank(&brief, &Limits::default(), &Unwatched)
            });
        });
    }
}

criterion_group!(benches, demo_rooms);
criterion_main!(benches);
