//! What is asked of each room: the two furnishings that plans are judged under.

use crate::support::plan::{Plan, PlanPiece};

/// A furnishing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Furnishing {
    /// A sofa, two armchairs if they fit, table, screen, two side tables, lamp and rug.
    Sofa,
    /// A corner sofa, an armchair, table, screen, bookcase and lamp.
    Corner,
}

impl Furnishing {
    pub(super) const ALL: [Self; 2] = [Self::Sofa, Self::Corner];

    /// As it is told beside a room's name.
    pub(super) const fn key(self) -> &'static str {
        match self {
            Self::Sofa => "sofa",
            Self::Corner => "corner",
        }
    }

    /// Rows of the file.
    fn pieces(self) -> Vec<PlanPiece> {
        let optional = |kind: &'static str| PlanPiece::of(kind).also("needed", false);
        let screen = PlanPiece::of("media-unit").also("screen", "55 in");
        match self {
            Self::Sofa => vec![
                PlanPiece::of("sofa"),
                optional("armchair").also("count", 2),
                PlanPiece::of("coffee-table"),
                screen,
                optional("side-table").also("count", 2),
                optional("floor-lamp"),
                optional("rug"),
            ],
            Self::Corner => vec![
                PlanPiece::of("corner-sofa"),
                optional("armchair"),
                PlanPiece::of("coffee-table"),
                screen,
                optional("bookcase"),
                optional("floor-lamp"),
            ],
        }
    }

    /// The plan with its pieces.
    pub(super) fn in_plan(self, mut plan: Plan) -> Plan {
        plan.pieces = self.pieces();
        plan
    }

    /// The text of a scenario with its pieces and none of the file's own.
    pub(super) fn in_text(self, text: &str) -> String {
        let goes_on = |line: &&str| line.is_empty() || line.starts_with([' ', '#']);
        let lines: Vec<&str> = text.lines().collect();
        let from = lines.iter().position(|line| line.starts_with("pieces:")).expect("a scenario has pieces");
        let own = lines[from + 1..].iter().take_while(|line| goes_on(line)).count();
        let rows: Vec<String> = self.pieces().iter().map(PlanPiece::row).collect();
        let before = lines[..=from].iter().map(|line| (*line).to_owned());
        let after = lines[from + 1 + own..].iter().map(|line| (*line).to_owned());
        before.chain(rows).chain(after).collect::<Vec<_>>().join("\n") + "\n"
    }
}
