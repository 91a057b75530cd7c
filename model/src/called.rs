//! The pieces that somebody means by a word: a name, or a kind.

use crate::brief::Brief;
use crate::kind::PieceKind;
use crate::nearest::same;
use crate::piece::PieceId;
use crate::tables::meaning;

impl Brief {
    /// The piece of this name, capitals and hyphens aside; else every piece of the kind that the word means; empty where there is none.
    #[must_use]
    pub fn pieces_called(&self, word: &str) -> Vec<PieceId> {
        let of = |is_it: &dyn Fn(&str, PieceKind) -> bool| -> Vec<PieceId> {
            self.pieces().filter(|(_, piece)| is_it(&piece.name, piece.kind)).map(|(id, _)| id).collect()
        };
        let by_name = of(&|name, _| name == word);
        let by_name = if by_name.is_empty() { of(&|name, _| same(name, word)) } else { by_name };
        if !by_name.is_empty() {
            return by_name;
        }
        let meant = meaning(word, PieceKind::ALL.iter().map(|kind| kind.key()));
        let meant = meant.as_ref().map_or(word, |meaning| meaning.kind());
        of(&|_, kind| kind.key() == meant)
    }
}

#[cfg(test)]
mod tests {
    use crate::scenario;

    #[test]
    fn a_piece_is_called_by_its_name_or_by_a_word_for_its_kind() {
        let text = "units: cm\nwalls:\n  - { length: 500 }\n  - { length: 400, holds: [{ kind: door, at: 20, width: 83, swings: slides, \
                    leads_to: entrance }] }\n  - { length: 500 }\n  - { length: 400 }\npieces:\n  - { kind: sofa, name: Hazel }\n  \
                    - { kind: armchair, count: 2 }\n  - { kind: coffee-table }\n";
        let brief = scenario::read(text, None).unwrap();
        let called = |word: &str| brief.pieces_called(word).into_iter().map(|piece| piece.0).collect::<Vec<_>>();
        assert_eq!(called("Hazel"), [0]);
        assert_eq!(called("hazel"), [0]);
        assert_eq!(called("settee"), [0]);
        assert_eq!(called("Armchair 2"), [2]);
        assert_eq!(called("armchair"), [1, 2]);
        assert_eq!(called("Coffee Table"), [3]);
        assert!(called("cofee table").is_empty());
    }
}
