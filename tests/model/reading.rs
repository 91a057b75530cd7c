//! Sound files: what is read, and what is filled in.

use elbowroom_model::scenario::{read, starter};

const EVERY_KEY: &str = include_str!("../data/every-key.yaml");

#[test]
fn a_file_with_every_key_reads_without_a_fault() {
    let brief = read(EVERY_KEY, None).unwrap_or_else(|faults| panic!("{faults:#?}"));
    assert_eq!(brief.room.walls.len(), 4);
}

#[test]
fn the_starter_reads_without_a_fault() {
    let brief = read(starter(), None).unwrap_or_else(|faults| panic!("{faults:#?}"));
    assert_eq!(brief.pieces.len(), 4);
}
