//! A room whose findings the tests put into words.
#![allow(clippy::unwrap_used, reason = "a panic is how a test fails")]

use elbowroom_model::{Brief, ItemId, PieceId, scenario};

use super::reason;
use elbowroom_solver::criteria::Finding;

/// Items: bay, yard window, hall door, dining side, radiator. Pieces: sofa, media unit, armchair 1, armchair 2.
fn brief(units: &str) -> Brief {
    let text = "
walls:
  - name: front wall
    length: 5000 mm
    holds:
      - { kind: window, name: bay, at: 1000 mm, width: 1500 mm, sill: 900 mm, head: 2100 mm, view: liked }
      - { kind: window, name: yard window, at: 3500 mm, width: 900 mm, sill: 900 mm, head: 2100 mm, view: avoided }
  - name: hall wall
    length: 4000 mm
    holds:
      - { kind: door, name: hall door, at: 100 mm, width: 800 mm, hinge: left, swings: in, leads_to: entrance }
      - { kind: opening, name: dining side, at: 1500 mm, width: 1800 mm, leads_to: dining, stance: open }
  - name: back wall
    length: 5000 mm
    holds:
      - { kind: radiator, name: radiator, at: 500 mm, width: 900 mm, depth: 100 mm, height: 600 mm }
  - { name: stair wall, length: 4000 mm }
pieces:
  - { kind: sofa }
  - { kind: media-unit, screen: 1397 mm }
  - { kind: armchair, count: 2 }
";
    scenario::read(&format!("units: {units}\n{text}"), None).unwrap()
}

pub(super) const BAY: ItemId = ItemId(0);
pub(super) const YARD: ItemId = ItemId(1);
pub(super) const HALL: ItemId = ItemId(2);
pub(super) const DINING: ItemId = ItemId(3);
pub(super) const RADIATOR: ItemId = ItemId(4);
pub(super) const SOFA: PieceId = PieceId(0);
pub(super) const UNIT: PieceId = PieceId(1);
pub(super) const ARMCHAIR_1: PieceId = PieceId(2);
pub(super) const ARMCHAIR_2: PieceId = PieceId(3);

/// The sentence in centimetres.
pub(super) fn told(finding: Finding) -> String {
    told_in("cm", finding)
}

pub(super) fn told_in(units: &str, finding: Finding) -> String {
    reason(&brief(units), &finding)
}
