//! A room as planned, each piece under the name that it has in the store: what the crew carries is what the sheet says.

use std::collections::BTreeMap;

use elbowroom_solver::answer::Answer;
use elbowroom_solver::stock::{Asking, By, Furnished};

use super::store::Store;

/// The plan with the pieces under their names in the store, numbered where several are of one row.
pub(crate) fn under_names_of_stock(mut plan: Answer, asking: &Asking, furnished: &Furnished, store: &Store) -> Answer {
    let Some(base) = furnished.option.and_then(|option| asking.room.furnishing(option)) else { return plan };
    let served: Vec<(&str, &str)> = furnished
        .asked
        .iter()
        .filter_map(|one| match one.by {
            By::Stock { row } => Some((one, store.owned.get(row)?.piece.name.as_str())),
            _ => None,
        })
        .flat_map(|(one, name)| one.asked.pieces.iter().map(move |id| (base.asked.piece_name(*id), name)))
        .collect();
    let called = served.iter().enumerate().map(|(place, (asked, name))| {
        let of_row = |some: &[(&str, &str)]| some.iter().filter(|(_, other)| other == name).count();
        let number = served.get(..place).map_or(0, of_row) + 1;
        (*asked, if of_row(&served) > 1 { format!("{name} {number}") } else { (*name).to_owned() })
    });
    let called: BTreeMap<&str, String> = called.collect();
    for piece in plan.brief.pieces.iter_mut().chain(&mut plan.asked.pieces) {
        if let Some(called) = called.get(piece.name.as_str()) {
            piece.name.clone_from(called);
        }
    }
    plan
}

#[cfg(test)]
mod tests {
    use std::path::Path;

    use elbowroom_model::scenario;
    use elbowroom_solver::Limits;
    use elbowroom_solver::stock::{Asking, Days, assign, plans, room_for};

    use super::under_names_of_stock;
    use crate::stock::store::read;

    #[test]
    fn a_plan_says_what_the_crew_carries() {
        let room = "units: cm\nwalls: [{ length: 520 }, { length: 440 }, { length: 520, holds: [{ kind: door, at: 20, \
                    width: 83, hinge: left, swings: in, leads_to: entrance }] }, { length: 440 }]\npieces:\n  \
                    - { kind: sofa, width: 150..220 }\n  - { kind: armchair, count: 2 }\n";
        // A name of the store may be one of the room.
        let list = "kind,name,width (cm),depth (cm),count\nsofa,armchair 1,200,90,1\narmchair,Fern,75,80,2\n";
        let store = read(Path::new("-"), &mut list.as_bytes()).unwrap();
        let brief = scenario::read(room, None).unwrap();
        let limits = Limits { shown: 0, ..Limits::default() };
        let room = room_for(&brief, &store.owned, &limits).into();
        let must = brief.piece_ids().collect();
        let rooms = [Asking { room, days: Days { from: 0, to: 0 }, priority: 1, must }];
        let found = assign(&rooms, &store.owned, 1_000_000_000);
        let plan = plans(&rooms, &store.owned, &found, &limits).remove(0).unwrap();
        let named = under_names_of_stock(plan, &rooms[0], &found.rooms[0], &store);
        let names: Vec<&str> = named.brief.pieces.iter().map(|piece| piece.name.as_str()).collect();
        assert_eq!(names, ["armchair 1", "Fern 1", "Fern 2"]);
    }
}
