//! What a set costs beside the next better one, and what a smaller piece would save.

use elbowroom_model::Dimension;
use elbowroom_solver::shop::{Order, SetFound};

use super::{ROOM, SHOP, list, room, sets, told};

#[test]
fn costs_are_told_beside_the_next_better_set_and_the_next_smaller_piece() {
    let (brief, candidates) = (room(ROOM), list(SHOP));
    let found = sets(&brief, &candidates, Order::Price, None, 100);
    for set in &found.sets {
        let costs = set.costs.as_ref().unwrap();
        let is_better = |other: &&SetFound| {
            other.left_out() <= set.left_out() && told(other).0 > told(set).0 && told(other).1 >= told(set).1 + 1.0
        };
        let better = found.sets.iter().filter(is_better).map(|other| told(other).0).min();
        assert_eq!(costs.better.as_ref().map(|better| better.price.hundredths), better);
    }
    // The sofa is the dearest of every set: a Gull is 50 cm wider than a Heron and costs 250 more than it.
    let with_gull = |set: &&SetFound| set.pieces.iter().any(|piece| piece.candidate == Some(1));
    let saving = found.sets.iter().find(with_gull).unwrap().costs.as_ref().unwrap().saving.unwrap();
    assert_eq!((saving.dearest, saving.smaller, saving.dimension), (1, 0, Dimension::Width));
    assert_eq!((saving.less, saving.saves.hundredths), (500.0, 25_000));
    let with_heron = |set: &&SetFound| set.pieces.iter().any(|piece| piece.candidate == Some(0));
    assert_eq!(found.sets.iter().find(with_heron).unwrap().costs.as_ref().unwrap().saving, None);
}
