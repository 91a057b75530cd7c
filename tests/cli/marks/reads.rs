//! From a result to the scene: who is the main seat, and what the room holds.

use serde_json::{Value, json};

use super::odd;
use crate::support::judge::{Mark, Scene};
use crate::support::ranked::brief_of;

const ROOM: &str = "
units: mm
walls:
  - name: north
    length: 5000
    holds: [{ kind: window, name: bay, at: 1500, width: 2000, sill: 450 }]
  - name: east
    length: 4000
    holds: [{ kind: door, name: hall door, at: 2900, width: 800, swings: slides, leads_to: entrance }]
  - name: south
    length: 5000
    holds: [{ kind: fireplace, name: stove, at: 2000, width: 1000, depth: 300 }]
  - name: west
    length: 4000
    holds: [{ kind: radiator, name: heater, at: 1000, width: 900, depth: 100, height: 600 }]
fixed:
  - { kind: counter, name: bar, corners: [[0, -4000], [600, -4000], [600, -3400], [0, -3400]], height: 900 }
pieces:
  - { kind: sofa }
  - { kind: armchair }
  - { kind: coffee-table }
";

fn stand(name: &str, kind: &str, part: Value, facing: f64, wall: Option<&str>) -> Value {
    json!({
        "name": name, "kind": kind, "parts": [part], "facing": facing, "height": 850, "at_wall": wall,
        "range": { "width": { "least": 600 }, "depth": { "least": 400 } },
    })
}

/// A sofa under the bay that looks at the stove, a chair at its left hand, the table 300 mm off the axis.
fn option() -> Value {
    json!({
        "choices": { "seat_back": "north", "facing": 270.0 },
        "pieces": [
            stand("armchair", "armchair", json!([[4000, -2600], [4900, -2600], [4900, -1700], [4000, -1700]]), 180.0, None),
            stand("sofa", "sofa", json!([[1450, -1000], [3550, -1000], [3550, -50], [1450, -50]]), 270.0, Some("north")),
            stand("coffee table", "coffee-table", json!([[2300, -2000], [3300, -2000], [3300, -1400], [2300, -1400]]), 270.0, None),
        ],
    })
}

#[test]
fn a_result_and_its_brief_make_a_scene() {
    let scene = Scene::of(&brief_of(ROOM), &option()).unwrap();
    assert_eq!(scene.main().unwrap().name, "sofa");
    assert_eq!((scene.others().len(), scene.room.doorways.len(), scene.room.windows.len()), (1, 1, 1));
    assert_eq!((scene.room.heaters.len(), scene.room.blocks.len()), (2, 2));
    let front = scene.main().unwrap().front();
    assert!((front.middle[0] - 2500.0).abs() < 1e-6 && (front.middle[1] + 1000.0).abs() < 1e-6, "{front:?}");
    // The chair looks west at the table: 700 mm before it, and the sofa's left hand is east.
    assert!(front.aside(scene.others()[0].middle()) > 1900.0);
    let found: Vec<Mark> = odd(&scene).iter().map(|odd| odd.mark).collect();
    assert_eq!(found, [Mark::TableOffAxis], "{found:?}");
    let off = odd(&scene)[0].figure;
    assert!((off - 300.0).abs() < 1e-6, "{off}");
}

#[test]
fn an_option_without_places_is_told() {
    let mut broken = option();
    broken["pieces"][1]["parts"] = Value::Null;
    assert_eq!(Scene::of(&brief_of(ROOM), &broken).unwrap_err(), "sofa: has no parts");
}
