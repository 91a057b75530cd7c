//! What hangs on a wall: how high it is, what may stand under it, whether it stops a walker.

use crate::brief::Brief;
use crate::fault::Fault;
use crate::kind::PieceKind;
use crate::piece::{Piece, SizeRange};
use crate::screen::{screen_height, screen_width};
use crate::sits::Sits;
use crate::tables::Tables;
use crate::turned::Turned;

/// Who walks needs so much clear height, mm: 80 in, 2010 ADA Standards 307.4 (published).
const HEADROOM: f64 = 80.0 * 25.4;

/// What juts out no further into a way stops nobody, mm: 4 in, 2010 ADA Standards 307.2 (published).
const JUTS_OUT: f64 = 4.0 * 25.4;

/// Diagonal that is taken where nobody says one, mm: 55 in (common practice, no source).
pub(crate) const USUAL_SCREEN: f64 = 55.0 * 25.4;

impl Piece {
    /// Height of its lower edge above the floor, mm: 0 of what stands.
    #[must_use]
    pub const fn lower_edge(&self) -> f64 {
        if self.kind.hangs() { self.height } else { 0.0 }
    }

    /// Height of the middle of the screen that hangs, mm; `None` of what stands.
    #[must_use]
    pub fn hung_centre(&self) -> Option<f64> {
        let half = self.screen.map_or(0.0, screen_height) / 2.0;
        self.kind.hangs().then_some(self.height + half)
    }

    /// How tall it is by itself, mm: what is carried in, or covers a wall.
    #[must_use]
    pub fn own_height(&self) -> f64 {
        if self.kind.hangs() { self.height_with_screen() - self.height } else { self.height }
    }

    /// Whether nobody can walk where it is: all but rugs, and but what hangs over heads or hardly juts out.
    #[must_use]
    pub fn stops_walkers(&self) -> bool {
        !self.kind.is_flat() && (!self.kind.hangs() || (self.height < HEADROOM && self.depth.most > JUTS_OUT))
    }

    /// Whether one of the two hangs over the other, which is no higher than its lower edge.
    #[must_use]
    pub fn hangs_over_or_under(&self, other: &Self) -> bool {
        let over = |hung: &Self, low: &Self| hung.kind.hangs() && low.height_with_screen() <= hung.lower_edge();
        over(self, other) || over(other, self)
    }

    /// Its heights where it is a screen of this diagonal hung with its middle so high, mm.
    pub(crate) fn hang(&mut self, diagonal: f64, centre: f64) {
        let width = SizeRange::fixed(screen_width(diagonal));
        *self = Self { width, screen: Some(diagonal), height: centre - screen_height(diagonal) / 2.0, ..self.clone() };
    }

    /// A screen as large as the one that this piece carries, hung on a wall under its name.
    ///
    /// # Errors
    /// Faults of the built-in tables, which tests keep from happening.
    pub fn hung_instead(&self) -> Result<Self, Vec<Fault>> {
        let kind = PieceKind::ALL.iter().copied().find(|kind| kind.hangs() && kind.carries_screen());
        let kind = kind.unwrap_or(self.kind);
        let sizes = Tables::built_in()?.sizes(kind);
        let mut hung = Self {
            kind,
            depth: sizes.depth.range(),
            steps: Vec::new(),
            square: false,
            off_wall: 0.0,
            alike: None,
            weight: sizes.weight,
            aim: None,
            stands: None,
            held: false,
            turned: Turned::No,
            sold_sizes: false,
            sits: Sits::default(),
            instead: Vec::new(),
            ..self.clone()
        };
        hung.hang(self.screen.unwrap_or(USUAL_SCREEN), sizes.height);
        Ok(hung)
    }
}

impl Brief {
    /// Whether seats turn to this piece: it carries a screen, and no other hangs on a wall instead. One that hangs only if it
    /// fits takes nothing from a unit with a screen of its own.
    #[must_use]
    pub fn is_watched(&self, piece: &Piece) -> bool {
        let is_hung = |piece: &Piece| piece.kind.hangs() && piece.kind.carries_screen();
        let has_own = |piece: &Piece| piece.kind.carries_screen() && !piece.kind.hangs() && piece.screen.is_some();
        let own = self.pieces.iter().any(has_own);
        let hangs_instead = |piece: &Piece| is_hung(piece) && (piece.needed || !own);
        piece.kind.carries_screen() && (is_hung(piece) == self.pieces.iter().any(hangs_instead))
    }

    /// What is so low hides nothing of the screen from one who sits, mm above the floor: `low`, or the lower edge of a
    /// screen that hangs higher, to the eyes of whoever looks at it.
    #[must_use]
    pub fn lowest_sight(&self, low: f64, eye: f64) -> f64 {
        let hung = self.pieces.iter().filter(|piece| piece.kind.hangs() && self.is_watched(piece));
        hung.map(|piece| piece.lower_edge().min(eye)).fold(low, f64::max)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::read;

    const ROOM: &str = "
units: cm
walls: [{ length: 500 }, { length: 400 }, { length: 500 }, { length: 400 }]
pieces:
  - { kind: sofa }
  - { kind: wall-screen, screen: 55 in }
  - { kind: media-unit }
  - { kind: sideboard }
  - { kind: bookcase }
";

    fn brief(text: &str) -> Brief {
        read(text, None).expect("the room is sound")
    }

    #[test]
    fn a_screen_hangs_with_its_middle_at_110_cm_and_its_edges_by_16_to_9() {
        let brief = brief(ROOM);
        let screen = &brief.pieces[1];
        assert_eq!(screen.hung_centre().map(f64::round), Some(1100.0));
        // 55 in at 16:9 is 47.94 by 26.97 in.
        assert!((screen.width.most - 47.94 * 25.4).abs() < 0.2, "{}", screen.width.most);
        assert!((screen.own_height() - 26.97 * 25.4).abs() < 0.2, "{}", screen.own_height());
        assert!((screen.lower_edge() - 757.5).abs() < 0.1, "{}", screen.lower_edge());
        assert!((screen.height_with_screen() - 1442.5).abs() < 0.1, "{}", screen.height_with_screen());
    }

    #[test]
    fn what_is_lower_than_the_lower_edge_stands_under_it_and_no_other() {
        let brief = brief(ROOM);
        let screen = &brief.pieces[1];
        let under = brief.pieces[2..].iter().map(|piece| screen.hangs_over_or_under(piece)).collect::<Vec<_>>();
        assert_eq!(under, [true, false, false], "a media unit is 50 cm high, a sideboard 80, a bookcase 180");
        assert!(!brief.pieces[0].hangs_over_or_under(&brief.pieces[2]), "neither hangs");
    }

    #[test]
    fn seats_turn_to_the_screen_that_hangs_and_not_to_the_unit_under_it() {
        let brief = brief(ROOM);
        let watched: Vec<bool> = brief.pieces.iter().map(|piece| brief.is_watched(piece)).collect();
        assert_eq!(watched, [false, true, false, false, false]);
    }

    /// 2010 ADA Standards 307.2 and 307.4: what juts out over 4 in under 80 in is in the way of those who walk.
    #[test]
    fn a_screen_stops_walkers_unless_it_is_flat_or_over_their_heads() {
        let stops = |row: &str| brief(&ROOM.replace("screen: 55 in", row)).pieces[1].stops_walkers();
        assert!(stops("screen: 55 in"));
        assert!(!stops("screen: 55 in, depth: 4 in"));
        assert!(stops("screen: 55 in, depth: 4.1 in"));
        assert!(!stops("screen: 20 in, centre: 216"), "its lower edge is at 203.6 cm");
        assert!(stops("screen: 20 in, centre: 214"));
    }
}
