//! Writes the programs of a room down for `cp_sat.py`: as stated and made ready, with the seconds that either took, and what
//! elbowroom found in how long.

use super::own::Own;
use super::prepared::Prepared;
use super::spent;
use elbowroom_model::Brief;
use elbowroom_solver::Site;
use elbowroom_solver::arrangement::enumerate;
use elbowroom_solver::program::Row;
use elbowroom_solver::search::{RoomContext, Searched, Sought, Stated, stated};
use serde_json::{Value, json};

/// One room with all its programs; `own` of every arrangement and of the best alone.
pub(crate) fn room(name: &str, brief: &Brief, kind: Sought, found: &[Searched], own: [Own; 2]) -> Value {
    let mut start = spent::now();
    let site = Site::of(brief);
    let arrangements = enumerate(brief, &site).arrangements;
    let ground = RoomContext::of(brief, &site);
    let mut programs = Vec::new();
    for (arrangement, found) in arrangements.iter().zip(found) {
        let program = stated(&ground, arrangement, kind).unwrap();
        let told = spent::now();
        let prepared = Prepared::of(&program);
        let ready = spent::now();
        programs.push(json!({
            "arrangement": arrangement.key,
            "optimum": found.found.as_ref().map(|found| found.objective),
            "stated": written(&program),
            "prepared": prepared.map(|prepared| written(&prepared.stated)),
            "seconds": { "stated": (told - start).as_secs_f64(), "prepared": (ready - start).as_secs_f64() },
        }));
        start = spent::now();
    }
    let seconds = |own: Own| json!({ "warm": own.warm, "cold": own.cold });
    json!({ "room": name, "own": { "every": seconds(own[0]), "best": seconds(own[1]) }, "programs": programs })
}

fn written(stated: &Stated) -> Value {
    let rows = |rows: &[Row]| -> Vec<Value> {
        rows.iter().map(|row| json!({ "terms": row.terms.as_slice(), "most": row.most })).collect()
    };
    let choices = stated.choices.iter().map(|choice| {
        let alternatives: Vec<_> = choice.alternatives.iter().map(|alternative| rows(alternative)).collect();
        json!({ "when": choice.when, "alternatives": alternatives, "costs": choice.costs })
    });
    json!({
        "objective": stated.objective,
        "constant": stated.constant,
        "bounds": stated.bounds,
        "always": rows(&stated.always),
        "ways": stated.ways,
        "choices": choices.collect::<Vec<_>>(),
    })
}
