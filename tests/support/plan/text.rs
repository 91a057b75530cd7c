//! A plan written out as the text of a scenario file.

use std::fmt::Write as _;

use super::{Held, Plan, PlanPiece, PlanWall, What};

/// Which unit a plan's numbers are written in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Tongue {
    /// The numbers are millimetres.
    Millimetres,
    /// The numbers are inches.
    Inches,
    /// The numbers are inches and are written as the millimetres they are.
    InchesAsMillimetres,
}

impl Tongue {
    fn units(self) -> &'static str {
        match self {
            Self::Inches => "in",
            Self::Millimetres | Self::InchesAsMillimetres => "mm",
        }
    }

    fn number(self, value: f64) -> String {
        let written = match self {
            Self::InchesAsMillimetres => value * 25.4,
            Self::Millimetres | Self::Inches => value,
        };
        let text = format!("{written:.9}");
        let text = text.trim_end_matches('0').trim_end_matches('.');
        if text == "-0" { "0".to_owned() } else { text.to_owned() }
    }
}

impl Plan {
    /// The text of the scenario file, in millimetres.
    pub(crate) fn text(&self) -> String {
        self.text_in(Tongue::Millimetres)
    }

    /// The text of the scenario file in a unit of choice.
    pub(crate) fn text_in(&self, tongue: Tongue) -> String {
        let number = |value| tongue.number(value);
        let mut text = format!("units: {}\nmeasured_within: {}\n", tongue.units(), number(self.measured_within));
        text.push_str("walls:\n");
        for wall in &self.walls {
            write_wall(&mut text, wall, tongue);
        }
        if !self.fixed.is_empty() {
            text.push_str("fixed:\n");
        }
        for (name, ring) in &self.fixed {
            let corners: Vec<String> = ring.iter().map(|(x, y)| format!("[{}, {}]", number(*x), number(*y))).collect();
            // Two places are the ends of a step.
            let (kind, key) = if ring.len() == 2 { ("step", "line") } else { ("pillar", "corners") };
            writeln!(text, "  - {{ kind: {kind}, name: {name}, {key}: [{}] }}", corners.join(", ")).unwrap();
        }
        text.push_str("pieces:\n");
        for piece in &self.pieces {
            write_piece(&mut text, piece, tongue);
        }
        writeln!(text, "clearances:\n  profile: {}", self.profile).unwrap();
        for (key, figure) in &self.clearances {
            writeln!(text, "  {key}: {}", number(*figure)).unwrap();
        }
        if !self.wishes.is_empty() {
            text.push_str("wishes:\n");
        }
        for (key, weight) in &self.wishes {
            writeln!(text, "  {key}: {weight}").unwrap();
        }
        text
    }
}

fn write_wall(text: &mut String, wall: &PlanWall, tongue: Tongue) {
    let number = |value| tongue.number(value);
    let (x, y) = wall.start;
    writeln!(text, "  - name: {}\n    start: [{}, {}]", wall.name, number(x), number(y)).unwrap();
    for (key, length) in &wall.also {
        writeln!(text, "    {key}: {}", number(*length)).unwrap();
    }
    if !wall.holds.is_empty() {
        text.push_str("    holds:\n");
    }
    for held in &wall.holds {
        let Held { name, at, width, what } = held;
        let place = format!("name: {name}, at: {}, width: {}", number(*at), number(*width));
        let rest = match what {
            What::Door { hinge: Some(hinge), leads_to } => {
                format!("kind: door, {place}, hinge: {}, swings: in, leads_to: {leads_to}", hinge.key())
            }
            What::Door { hinge: None, leads_to } => {
                format!("kind: door, {place}, swings: slides, leads_to: {leads_to}")
            }
            What::WideDoor { hinge, opens_to, leads_to } => format!(
                "kind: door, {place}, hinge: {}, swings: in, opens_to: {opens_to}, leads_to: {leads_to}",
                hinge.key()
            ),
            What::Opening { leads_to, stance } => {
                format!("kind: opening, {place}, leads_to: {leads_to}, stance: {stance}")
            }
            What::Window { sill, head, view, must_reach } => {
                let (sill, head) = (number(*sill), number(*head));
                format!("kind: window, {place}, sill: {sill}, head: {head}, view: {view}, must_reach: {must_reach}")
            }
            What::Radiator { depth, keep_clear } => {
                let (depth, keep_clear) = (number(*depth), number(*keep_clear));
                format!("kind: radiator, {place}, depth: {depth}, height: 600 mm, keep_clear: {keep_clear}")
            }
            What::Fireplace { depth, keep_clear } => {
                format!("kind: fireplace, {place}, depth: {}, keep_clear: {}", number(*depth), number(*keep_clear))
            }
        };
        writeln!(text, "      - {{ {rest} }}").unwrap();
    }
}

fn write_piece(text: &mut String, piece: &PlanPiece, tongue: Tongue) {
    writeln!(text, "{}", piece.row_in(tongue)).unwrap();
}

impl PlanPiece {
    /// Its row of a file, with its indent, in millimetres.
    pub(crate) fn row(&self) -> String {
        self.row_in(Tongue::Millimetres)
    }

    fn row_in(&self, tongue: Tongue) -> String {
        let mut row = format!("kind: {}", self.kind);
        for (dimension, least, most) in &self.sizes {
            let size = if least == most {
                tongue.number(*least)
            } else {
                format!("{}..{}", tongue.number(*least), tongue.number(*most))
            };
            write!(row, ", {dimension}: {size}").unwrap();
        }
        for (key, value) in &self.also {
            write!(row, ", {key}: {value}").unwrap();
        }
        format!("  - {{ {row} }}")
    }
}
