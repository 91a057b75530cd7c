//! Rooms without end for measuring and for long runs: each number is one room, always the same, unlike its neighbours.
#![allow(dead_code, reason = "each suite uses its own part")]

use std::fmt::Write as _;

/// Draws numbers from a seed (SplitMix64, Steele, Lea and Flood 2014).
pub(crate) struct Draw(pub(crate) u64);

impl Draw {
    pub(crate) fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mixed = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// From `low` to `high`, both included.
    pub(crate) fn from(&mut self, low: u64, high: u64) -> u64 {
        low + self.next() % (high - low + 1)
    }

    pub(crate) fn one_in(&mut self, count: u64) -> bool {
        self.next().is_multiple_of(count)
    }
}

/// The scenario of room `number`.
pub(crate) fn varied(number: u64) -> String {
    let mut draw = Draw(number);
    let (width, depth) = (draw.from(380, 620), draw.from(340, 500));
    let window = draw.from(120, 220);
    let (window_at, door_at) = (draw.from(20, width - window - 20), draw.from(15, width - 100));
    let (hinge, view) = (["left", "right"][draw.from(0, 1) as usize], ["liked", "plain"][draw.from(0, 1) as usize]);
    let mut text = format!("name: Room {number}\nunits: cm\nwalls:\n");
    let _ = writeln!(
        text,
        "  - {{ name: front wall, length: {width}, holds: [{{ kind: window, at: {window_at}, width: {window}, view: {view} }}] }}"
    );
    let side = if draw.one_in(3) {
        format!(
            ", holds: [{{ kind: opening, at: {}, width: {}, leads_to: kitchen, stance: open }}]",
            draw.from(10, 60),
            draw.from(90, 200)
        )
    } else {
        String::new()
    };
    let _ = writeln!(text, "  - {{ name: right wall, length: {depth}{side} }}");
    let _ = writeln!(
        text,
        "  - {{ name: back wall, length: {width}, holds: [{{ kind: door, at: {door_at}, width: 83, hinge: {hinge}, swings: in, leads_to: entrance }}] }}"
    );
    let _ = writeln!(text, "  - {{ name: left wall, length: {depth} }}\npieces:");
    if draw.one_in(2) {
        let _ = writeln!(
            text,
            "  - {{ kind: corner-sofa, width: 200..{}, return: 150..{}, depth: 90..100 }}",
            draw.from(230, 290),
            draw.from(180, 230)
        );
    } else {
        let _ = writeln!(text, "  - {{ kind: sofa, width: 150..{} }}", draw.from(190, 260));
    }
    if draw.one_in(2) {
        text.push_str("  - { kind: media-unit, screen: 50 in }\n");
    }
    if !draw.one_in(3) {
        text.push_str("  - { kind: coffee-table }\n");
    }
    if draw.one_in(3) {
        text.push_str("  - { kind: bookcase, needed: false }\n");
    }
    let _ = writeln!(text, "wishes: {{ view: {}, openness: {} }}", draw.from(1, 5), draw.from(1, 5));
    text
}
