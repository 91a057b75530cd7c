//! What a seat pays for its place along its wall: a corner sofa nothing in the corner that its return makes, or amid what is
//! free; a second seat nothing, whom the table places.
//!
//! Rooms are invented; the figures are those of `model/data/composition.yaml`, worked out by hand beside each check.

use elbowroom_model::Term;

use crate::support::ranked::told_to_the_mm;

/// What a corner sofa costs so far from the left end of a south wall of 560 cm, which holds this. The search lets
/// what is held stand by half a millimetre: costs are told whole.
fn costs(holds: &str, sofa: &str, from: u32) -> Vec<(f64, f64)> {
    let room = format!(
        "units: cm\nmeasured_within: 0\nwalls:\n  - {{ name: north, length: 560 }}\n  - {{ name: east, length: 460 }}\n  \
         - {{ name: south, length: 560, holds: [{holds}] }}\n  - {{ name: west, length: 460, holds: [{{ kind: door, name: hall door, \
         at: 370, width: 83, hinge: left, swings: out, leads_to: entrance }}] }}\nclearances: {{ window_front: 0 }}\npieces:\n  \
         - {{ kind: corner-sofa, {sofa}, depth: 95, hold: true, place: {{ wall: south, from: {from}, off: 5 }} }}\n"
    );
    told_to_the_mm(&room, Term::OffMiddle).into_iter().map(|(cost, off)| (cost.round(), off)).collect()
}

#[test]
fn a_corner_sofa_pays_nothing_in_the_corner_that_its_return_makes() {
    let right = "hand: right, width: 240, return: 200";
    assert_eq!(costs("", right, 5), []);
    // 60 cm out of it, at 0.4 a millimetre; the middle is 95 cm away.
    assert_eq!(costs("", right, 65), [(240.0, 600.0)]);
    // Amid the wall.
    assert_eq!(costs("", right, 160), []);
}

/// Its other end makes no corner, a chaise makes one, and two returns make one at either end. Its middle
/// lies 155 cm off, that of the U 105.
#[test]
fn the_corner_is_at_the_end_of_the_return() {
    assert_eq!(costs("", "hand: left, width: 240, return: 200", 5), [(620.0, 1550.0)]);
    assert_eq!(costs("", "hand: right, width: 240, return: 160, chaise: true", 5), []);
    assert_eq!(costs("", "hand: right, width: 340, return: 180, second_return: 180", 5), [(420.0, 1050.0)]);
}

/// A low window begins 20 cm from the corner: what is free ends there, and its middle lies 340 cm along the wall.
#[test]
fn before_a_low_window_there_is_no_corner() {
    let window = |sill: u32| {
        format!("{{ kind: window, name: bay, at: 20, width: 100, sill: {sill}, head: 210, must_reach: false }}")
    };
    let right = "hand: right, width: 240, return: 200";
    assert_eq!(costs(&window(65), right, 5), [(860.0, 2150.0)]);
    assert_eq!(costs(&window(90), right, 5), []);
}

/// A room turned by any angle, by the coordinates of its corners: the lengths of its walls are rounded otherwise, its corners
/// are the same.
#[test]
fn a_corner_is_one_however_the_room_lies() {
    let corners = [[0.0, 0.0], [5600.0, 0.0], [5600.0, -4600.0], [0.0, -4600.0]];
    for degrees in [3.7, 80.17, 151.3, 306.79_f64] {
        let (sine, cosine) = degrees.to_radians().sin_cos();
        let walls = corners.iter().zip(["north", "east", "south", "west"]).map(|([x, y], name)| {
            format!("  - {{ name: {name}, start: [{:.3}, {:.3}] }}\n", x * cosine - y * sine, x * sine + y * cosine)
        });
        let walls: String = walls.collect();
        for (hand, from) in [("right", 50), ("left", 3150)] {
            let room = format!(
                "units: mm\nmeasured_within: 0\nwalls:\n{walls}pieces:\n  - {{ kind: corner-sofa, hand: {hand}, width: 2400, \
                 return: 2000, depth: 950, hold: true, place: {{ wall: south, from: {from}, off: 50 }} }}\n"
            );
            assert_eq!(told_to_the_mm(&room, Term::OffMiddle), [], "{degrees}, {hand}");
        }
    }
}

/// A sofa 105 cm along a wall of 560 stands 75 cm off its middle; the chair at the east wall stands where the table is, 60 cm
/// off the middle of that.
#[test]
fn a_second_seat_stands_by_the_table_wherever_its_wall_has_its_middle() {
    let room = "units: cm
measured_within: 0
walls:
  - { name: north, length: 560 }
  - { name: east, length: 460 }
  - { name: south, length: 560 }
  - name: west
    length: 460
    holds: [{ kind: door, name: hall door, at: 370, width: 83, hinge: left, swings: out, leads_to: entrance }]
pieces:
  - { kind: sofa, width: 210, depth: 95, hold: true, place: { wall: south, from: 100, off: 5 } }
  - { kind: armchair, width: 80, depth: 80, hold: true, place: { wall: east, from: 250, off: 5 } }
  - { kind: coffee-table }
";
    let costs: Vec<f64> = told_to_the_mm(room, Term::OffMiddle).into_iter().map(|(cost, _)| cost.round()).collect();
    assert_eq!(costs, [300.0]);
}
