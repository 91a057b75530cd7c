//! Rooms drawn by chance: four crooked walls, an L of any turn, with a door, a window, a radiator or a pillar.

use proptest::prelude::{Just, Strategy, prop_oneof};

/// Rooms that are known to have options.
pub(super) const SOUND: [&str; 3] = [
    "units: cm\nmeasured_within: 1\nwalls:\n  - { start: [0, 0] }\n  - { start: [520, 40] }\n  - { start: [500, -410] }\n  \
     - { start: [-30, -380], holds: [{ kind: door, at: 30, width: 80, hinge: left, swings: in, leads_to: entrance }] }\n\
     pieces: [{ kind: sofa }, { kind: coffee-table }, { kind: media-unit }, { kind: rug, needed: false }]\n",
    "units: in\nmeasured_within: 1/4 in\nwalls:\n  - { name: a, length: 120 }\n  - { name: b, length: 60, corner: 270 }\n  \
     - { name: c, length: 100 }\n  - { name: d, length: 130 }\n  - { name: e, length: 220, holds: [{ kind: opening, at: 20, \
     width: 36, leads_to: entrance }] }\n  - { name: f, length: 190 }\npieces: [{ kind: corner-sofa }, { kind: coffee-table }]\n",
    "units: cm\nmeasured_within: 0\nwalls:\n  - { start: [0, 0] }\n  - { start: [520, 20] }\n  - { start: [505, -470], holds: [{ kind: \
     door, at: 30, width: 80, hinge: left, swings: out, leads_to: entrance }] }\n  - { start: [-15, -450] }\npieces: [{ kind: \
     corner-sofa, chaise: true, return_depth: 100..110, second_return: 150..180 }, { kind: side-table, needed: false }]\n",
];

/// A room with something to stand in it.
pub(super) fn room() -> impl Strategy<Value = String> {
    let corners = prop_oneof![crooked(), an_l()];
    let seat = prop_oneof![Just("sofa"), Just("corner-sofa")];
    let units = prop_oneof![Just("cm"), Just("mm"), Just("in")];
    (corners, seat, units, 0.0..0.6_f64, 0_usize..4)
        .prop_map(|(corners, seat, units, at, on)| text(&corners, seat, units, (at, on)))
}

/// Four walls, no two square, in mm.
fn crooked() -> impl Strategy<Value = Vec<(f64, f64)>> {
    let off = || -350.0..350.0_f64;
    (4200.0..6200.0_f64, 3600.0..5200.0_f64, (off(), off(), off(), off()))
        .prop_map(|(wide, deep, (a, b, c, d))| vec![(0.0, 0.0), (wide + a, b), (wide + c, -deep), (d, -deep + b)])
}

/// An L, turned by any angle.
fn an_l() -> impl Strategy<Value = Vec<(f64, f64)>> {
    (5000.0..6500.0_f64, 4400.0..5600.0_f64, 0.3..0.5_f64, 0.0..360.0_f64).prop_map(|(wide, deep, share, turn)| {
        let (cut, low) = (wide * (1.0 - share), deep * (1.0 - share));
        let ring = [(0.0, 0.0), (cut, 0.0), (cut, -deep + low), (wide, -deep + low), (wide, -deep), (0.0, -deep)];
        let (sine, cosine) = turn.to_radians().sin_cos();
        ring.iter().map(|(x, y)| (x * cosine - y * sine, x * sine + y * cosine)).collect()
    })
}

fn text(corners: &[(f64, f64)], seat: &str, units: &str, (at, on): (f64, usize)) -> String {
    let walls: Vec<String> = corners
        .iter()
        .enumerate()
        .map(|(place, (x, y))| {
            let next = corners[(place + 1) % corners.len()];
            let length = (next.0 - x).hypot(next.1 - y);
            let door = format!(
                ", holds: [{{ kind: door, at: {:.0} mm, width: 800 mm, hinge: left, swings: out, leads_to: entrance }}]",
                (length - 850.0).max(0.0) * at + 20.0
            );
            let holds = if place == on { door } else { String::new() };
            format!("  - {{ start: [{x:.1} mm, {y:.1} mm]{holds} }}\n")
        })
        .collect();
    format!(
        "units: {units}\nmeasured_within: 5 mm\nwalls:\n{}pieces: [{{ kind: {seat} }}, {{ kind: coffee-table }}, \
         {{ kind: media-unit, needed: false }}, {{ kind: armchair, needed: false }}]\nclearances: {{ profile: snug }}\n",
        walls.concat()
    )
}
