//! Candidates that a room cannot tell from each other are looked at once, and told each by its own name and price.

use super::{ROOM, list, room, sets, shopped};
use elbowroom_solver::shop::{Order, SetFound};

const COLOURS: &str = "kind,name,width cm,depth cm,price EUR\nsofa,Heron grey,190,90,900\nsofa,Wren,210,90,950\n\
                       sofa,Heron blue,190,90,800\nbookcase,Shelf,80,30,120\n";

#[test]
fn what_is_found_of_one_is_found_of_its_like() {
    let brief = room(ROOM);
    let (candidates, alone) = (list(COLOURS), list("kind,name,width cm,depth cm\nsofa,Heron blue,190,90\n"));
    let found = shopped(&brief, &candidates, None).candidates;
    let of_alone = shopped(&brief, &alone, None).candidates;
    assert_eq!(found.len(), candidates.len());
    assert_eq!(found[0], found[2]);
    assert_eq!(found[2], of_alone[0]);
    assert_ne!(found[0], found[1]);
}

#[test]
fn a_set_of_either_is_told_by_its_own_price() {
    let brief = room(ROOM);
    let candidates = list(COLOURS);
    let found = sets(&brief, &candidates, Order::Price, None, 10);
    let is_heron = |set: &&SetFound| set.pieces.iter().any(|piece| matches!(piece.candidate, Some(0 | 2)));
    let herons = found.sets.iter().filter(|set| set.left_out() == 0).filter(is_heron);
    let told: Vec<(f64, u64)> = herons.map(|set| (set.option.score, set.price.unwrap().hundredths)).collect();
    let [blue, grey] = told[..] else { panic!("{told:?}") };
    assert_eq!(blue.0, grey.0);
    assert_eq!(blue.1 + 10_000, grey.1);
}
