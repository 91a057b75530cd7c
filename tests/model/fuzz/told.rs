//! What every refusal owes whoever reads it, and what every brief is.

use elbowroom_model::quote::is_control;
use elbowroom_model::{Brief, Fault};

/// Each fault has a code on the list, words that can be shown anywhere, and a place within the text, if any.
pub(super) fn faults_hold(faults: &[Fault], text: &str) {
    assert!(!faults.is_empty(), "refused without a fault");
    let lines = text.split(['\n', '\r']).count();
    for fault in faults {
        assert!(Fault::CODES.contains(&fault.code), "a code of its own: {fault:?}");
        let told = [Some(&fault.message), Some(&fault.remedy), fault.item.as_ref()];
        for words in told.into_iter().flatten() {
            assert!(words.len() < 4000 && !words.is_empty() && !words.chars().any(is_control), "tells {fault:?}");
        }
        if let Some(place) = fault.place {
            assert!((1..=lines).contains(&place.line) && place.column > 0, "of {lines} lines: {fault:?}");
            assert!(text.get(place.offset..place.offset + place.length).is_some(), "past the text: {fault:?}");
        }
    }
}

/// Walls close and have lengths, ranges run upward, names are unique, every figure is one.
pub(super) fn brief_holds(brief: &Brief) {
    let walls = &brief.room.walls;
    for (place, wall) in walls.iter().enumerate() {
        let next = &walls[(place + 1) % walls.len()];
        assert!(wall.length().is_finite() && wall.length() > 0.0, "{wall:?}");
        assert!(wall.end == next.start, "{wall:?} does not meet {next:?}");
    }
    for item in &brief.room.items {
        let length = walls[item.wall.0].length();
        assert!(item.at >= 0.0 && item.width >= 0.0 && item.at + item.width <= length + 1.0, "{item:?} on {length}");
    }
    for fixed in &brief.room.fixed {
        assert!(fixed.corners.iter().all(|corner| corner.x.is_finite() && corner.y.is_finite()), "{fixed:?}");
    }
    assert!(!brief.pieces.is_empty(), "nothing to place");
    for piece in &brief.pieces {
        for dimension in piece.dimensions() {
            let range = piece.range(dimension).unwrap();
            let runs = 0.0 < range.least && range.least <= range.most && range.most.is_finite();
            assert!(runs, "{}: {range:?}", piece.name);
        }
        assert!(piece.height.is_finite() && piece.height >= 0.0, "{}: {}", piece.name, piece.height);
    }
    let things = brief.room.walls.iter().map(|wall| &wall.name).chain(brief.room.items.iter().map(|item| &item.name));
    let mut names: Vec<&String> = things.chain(brief.pieces.iter().map(|piece| &piece.name)).collect();
    assert!(names.iter().all(|name| !name.is_empty() && !name.chars().any(is_control)), "{names:?}");
    let all = names.len();
    names.sort();
    names.dedup();
    assert_eq!(names.len(), all, "two of one name");
}
