//! Where second seats stand about the main one, in words: `armchairs on either side`. Only what stands is told.

use elbowroom_model::article::several;
use elbowroom_model::{Brief, Piece, PieceId, SecondPlace};
use elbowroom_solver::arrangement::SecondSeat;

/// Counts up to this are told in words.
const NUMBERS: [&str; 6] = ["one", "two", "three", "four", "five", "six"];

/// Where the seats of one row of the file stand; `None` where none does.
pub(super) fn words(brief: &Brief, main_seat: PieceId, row: &[SecondSeat]) -> Option<String> {
    let first = row.first()?;
    let told = Told::of(brief, main_seat, first.piece, row.len());
    let is_even = brief.piece(first.piece).is_some_and(Piece::has_like_returns);
    let hand = first.hand.filter(|_| !is_even).map(|hand| match row.len() {
        1 => format!(" with its return on the {} as one sits", hand.key()),
        _ => format!(", each with its return on the {} as one sits", hand.key()),
    });
    Some(format!("{}{}", told.at(Places::of(row)), hand.unwrap_or_default()))
}

/// Whether any of `others` is of the same row of the file as `seat`.
pub(super) fn are_alike(brief: &Brief, seat: PieceId, mut others: impl Iterator<Item = PieceId>) -> bool {
    let row_of = |seat: PieceId| brief.piece(seat).and_then(|piece| piece.alike);
    row_of(seat).is_some_and(|row| others.any(|other| row_of(other) == Some(row)))
}

/// The name of one of several alike without its number: `armchair` of `armchair 2`.
pub(super) fn unnumbered(name: &str) -> &str {
    name.trim_end_matches(|letter: char| letter.is_ascii_digit()).trim_end()
}

/// How many stand in each place.
struct Places {
    left: usize,
    right: usize,
    opposite: usize,
}

impl Places {
    fn of(row: &[SecondSeat]) -> Self {
        let at = |place: SecondPlace| row.iter().filter(|seat| seat.place == place).count();
        Self { left: at(SecondPlace::Left), right: at(SecondPlace::Right), opposite: at(SecondPlace::Opposite) }
    }
}

/// What the seats of a row are called.
struct Told {
    /// All that the room may have: `the armchair`, `armchairs`, `the others`.
    all: String,
    /// One of several: `armchair`, `other`.
    one: String,
    /// Some of several: `armchairs`, `others`.
    many: String,
    /// How many stand.
    standing: usize,
    /// Those that stand are all there are.
    is_whole: bool,
}

impl Told {
    fn of(brief: &Brief, main_seat: PieceId, first: PieceId, standing: usize) -> Self {
        let name = brief.piece_name(first);
        let row = brief.piece(first).and_then(|piece| piece.alike);
        let count = brief.pieces.iter().filter(|piece| row.is_some() && piece.alike == row).count();
        if are_alike(brief, main_seat, std::iter::once(first)) {
            let all = if standing == 1 { "the other" } else { "the others" };
            return Self { all: all.into(), one: "other".into(), many: "others".into(), standing, is_whole: true };
        }
        if count < 2 {
            return Self { all: name.into(), one: name.into(), many: name.into(), standing, is_whole: true };
        }
        let (one, many) = (unnumbered(name).to_owned(), several(name));
        Self { all: many.clone(), one, many, standing, is_whole: standing == count }
    }

    /// So many of them: `one armchair`, `two armchairs`.
    fn some(&self, count: usize) -> String {
        format!("{} {}", number(count), if count == 1 { &self.one } else { &self.many })
    }

    fn at(&self, places: Places) -> String {
        let Places { left, right, opposite } = places;
        let all = || if self.is_whole { self.all.clone() } else { self.some(self.standing) };
        match (left, right, opposite) {
            (_, 0, 0) => format!("{} on the left", all()),
            (0, _, 0) => format!("{} on the right", all()),
            (0, 0, _) => format!("{} opposite", all()),
            (1, 1, 0) if self.is_whole => format!("{} on either side", self.all),
            (1, 1, 1) if self.is_whole => format!("{} on either side and opposite", self.all),
            (left, right, 0) if left == right => format!("{} on either side", self.some(left)),
            (left, right, opposite) if left == right => {
                format!("{} on either side and {} opposite", self.some(left), number(opposite))
            }
            _ => self.listed(&[(left, "on the left"), (right, "on the right"), (opposite, "opposite")]),
        }
    }

    /// `two armchairs on the left and one on the right`.
    fn listed(&self, places: &[(usize, &str)]) -> String {
        let mut told: Vec<String> = Vec::with_capacity(places.len());
        for &(count, place) in places.iter().filter(|(count, _)| *count > 0) {
            let who = if told.is_empty() { self.some(count) } else { number(count) };
            told.push(format!("{who} {place}"));
        }
        told.join(" and ")
    }
}

fn number(count: usize) -> String {
    count.checked_sub(1).and_then(|place| NUMBERS.get(place)).map_or_else(|| count.to_string(), |&word| word.to_owned())
}
