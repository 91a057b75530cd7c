//! What a plan gives up: the few terms of composition that cost it most.

use elbowroom_model::Brief;
use elbowroom_solver::composition::TermCost;

use super::composition::term;

/// Terms told of one plan; the JSON has them all.
const TOLD: usize = 3;
/// What costs less than this nobody would move a piece for, in millimetres of shortfall of a piece that counts 3.
const WORTH_TELLING: f64 = 100.0;

/// The terms that cost a layout most, dearest first, a sentence each; the same two things are told once of a term.
pub(crate) fn gives_up(brief: &Brief, composition: &[TermCost]) -> Vec<String> {
    let mut dearest: Vec<&TermCost> = Vec::new();
    for told in composition.iter().filter(|told| told.cost >= WORTH_TELLING) {
        let is_known = |known: &&TermCost| (known.term, known.piece, known.with) == (told.term, told.piece, told.with);
        if !dearest.iter().any(is_known) {
            dearest.push(told);
        }
    }
    dearest.into_iter().take(TOLD).map(|told| term(brief, told)).collect()
}
