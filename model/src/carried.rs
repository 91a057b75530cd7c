//! A screen on the piece that carries it.

use crate::piece::Piece;
use crate::screen::screen_width;

/// A screen that is wider than its piece by less is not seen to be, mm (common practice, no source).
const SEEN_BEYOND: f64 = 5.0;

impl Piece {
    /// Width of the screen that it carries, mm; of what hangs there is none that is carried.
    #[must_use]
    pub fn carried_width(&self) -> Option<f64> {
        self.screen.filter(|_| !self.kind.hangs()).map(screen_width)
    }

    /// By how much the screen that it carries is wider than it is at this width, mm; `None` where it is not seen to be.
    #[must_use]
    pub fn screen_beyond(&self, width: f64) -> Option<f64> {
        self.carried_width().map(|screen| screen - width).filter(|by| *by > SEEN_BEYOND)
    }
}

#[cfg(test)]
mod tests {
    use crate::scenario;

    #[test]
    fn a_screen_reaches_beyond_a_piece_that_is_narrower_and_never_beyond_itself() {
        let room = "units: cm\nwalls: [{ length: 400 }, { length: 400 }, { length: 400 }, { length: 400 }]\npieces:\n  - kind: sofa\n";
        let piece = |row: &str| {
            let brief = scenario::read(&format!("{room}  - {row}\n"), None).unwrap();
            brief.pieces[1].clone()
        };
        let unit = piece("{ kind: media-unit, screen: 43 in, width: 90..130 }");
        let by = unit.screen_beyond(900.0).unwrap();
        assert!((by - 51.9).abs() < 0.1, "43 in are 95.2 cm wide: {by}");
        assert_eq!(unit.screen_beyond(950.0), None);
        let hung = piece("{ kind: wall-screen, screen: 43 in }");
        assert_eq!(hung.screen_beyond(100.0), None);
    }
}
