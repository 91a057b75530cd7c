//! One warm solve of each engine: programs like a room's, rows entering one at a time from a clone, as a search does it.
#![allow(missing_docs, clippy::unwrap_used, reason = "a bench is read by its output; a panic is how it fails")]

#[path = "../tests/solver/program/made.rs"]
#[expect(dead_code, reason = "the bench takes one family of those that the tests make")]
mod made;

use criterion::{Criterion, criterion_group, criterion_main};
use elbowroom_solver::program::{Dense, Engine, MicrolpEngine, Row, Status};
use made::Numbers;
use std::hint::black_box;

/// Engines at an optimum, each with a row that breaks it: what a node of the search is.
fn nodes<E: Engine>() -> Vec<(E, Row)> {
    let mut nodes = Vec::new();
    for seed in 0..40 {
        let made = made::room(&mut Numbers::new(seed), 40);
        let mut engine = E::start(&made.objective, &made.bounds);
        for row in &made.rows {
            if row.excess(engine.values()) > 1e-7 {
                nodes.push((engine.clone(), row.clone()));
            }
            if engine.add(std::slice::from_ref(row)) != Status::Optimal {
                break;
            }
        }
    }
    nodes
}

fn resolve<E: Engine>(criterion: &mut Criterion, name: &str) {
    let nodes = nodes::<E>();
    let group = format!("program/{name}, {} warm solves from a clone", nodes.len());
    criterion.bench_function(&group, |bencher| {
        bencher.iter(|| {
            for (engine, row) in &nodes {
                let mut child = engine.clone();
                black_box(child.add(std::slice::from_ref(row)));
            }
        });
    });
}

fn engines(criterion: &mut Criterion) {
    resolve::<Dense>(criterion, "dense");
    resolve::<MicrolpEngine>(criterion, "microlp");
}

criterion_group!(benches, engines);
criterion_main!(benches);
