//! Which of the decisions that make an option are wanted, in the room's own words: `seat_back=canal wall`.

use strum::{IntoStaticStr, VariantArray};

use crate::fault::Fault;

use crate::nearest::{nearest, same};
use crate::piece::{Hand, Piece, PieceId};
use crate::quote::quoted;
use crate::room::{Room, WallId};

/// One decision, held to one value.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Only {
    /// The wall behind the main seat; `None`: it stands free.
    SeatBack(Option<WallId>),
    /// The wall that the main seat faces.
    Facing(WallId),
    /// The hand of the main seat.
    Hand(Hand),
    /// The wall of the media unit; `None`: no screen.
    MediaWall(Option<WallId>),
    /// Where a second seat stands; `None`: every one of them.
    SecondSeat(Option<PieceId>, SecondPlace),
}

/// The decisions that a file wants, and those that it does not.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Wanted {
    /// Only options that are decided so: values of one decision are alternatives, decisions all hold.
    pub only: Vec<Only>,
    /// No option that is decided so.
    pub exclude: Vec<Only>,
}

impl Wanted {
    /// Whether all options are looked at.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.only.is_empty() && self.exclude.is_empty()
    }
}

/// Where a second seat stands, as one sits on the main one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "snake_case")]
pub enum SecondPlace {
    /// It faces the main seat.
    Opposite,
    /// At its left.
    Left,
    /// At its right.
    Right,
}

impl SecondPlace {
    /// The place as files write it.
    #[must_use]
    pub fn key(self) -> &'static str {
        self.into()
    }
}

/// The decisions, by the names that results give them.
pub(crate) const CHOICES: [&str; 5] = ["seat_back", "facing", "hand", "media_wall", "second_seats"];
/// The value of a seat that stands free.
const FREE: &str = "free";
/// The value where there is no screen.
const NONE: &str = "none";

impl Only {
    /// Reads `CHOICE=VALUE`. The choices are those of a result, or the name of a second seat; the values are names of
    /// walls (or of what is on them), `free`, `none`, `left`, `right`, `opposite`.
    ///
    /// # Errors
    /// The choice or the value is not known; the nearest one that is known is named.
    pub fn read(text: &str, room: &Room, pieces: &[Piece]) -> Result<Self, Box<Fault>> {
        let Some((choice, value)) = text.split_once('=') else { return Err(not_a_choice(text)) };
        if choice.trim().is_empty() || value.trim().is_empty() {
            return Err(not_a_choice(text));
        }
        Self::of(choice, value, room, pieces)
    }

    /// Reads a decision and its value, as [`Only::read`] does.
    ///
    /// # Errors
    /// As there.
    pub fn of(choice: &str, value: &str, room: &Room, pieces: &[Piece]) -> Result<Self, Box<Fault>> {
        let (choice, value) = (choice.trim(), value.trim());
        let is_meant = |piece: &Piece| piece.kind.is_seat() && same(&piece.name, choice);
        let seat = pieces.iter().position(is_meant).map(PieceId);
        match CHOICES.iter().find(|known| same(known, choice)) {
            Some(&"seat_back") if same(value, FREE) => Ok(Self::SeatBack(None)),
            Some(&"seat_back") => wall(room, choice, value, &[FREE]).map(|wall| Self::SeatBack(Some(wall))),
            Some(&"media_wall") if same(value, NONE) => Ok(Self::MediaWall(None)),
            Some(&"media_wall") => wall(room, choice, value, &[NONE]).map(|wall| Self::MediaWall(Some(wall))),
            Some(&"facing") => wall(room, choice, value, &[]).map(Self::Facing),
            Some(&"hand") => one_of(choice, value).map(Self::Hand),
            Some(_) => one_of(choice, value).map(|place| Self::SecondSeat(None, place)),
            None if seat.is_some() => one_of(choice, value).map(|place| Self::SecondSeat(seat, place)),
            None => Err(unknown_choice(pieces, choice)),
        }
    }

    /// The decision by the name that results give it.
    #[must_use]
    pub const fn choice(&self) -> &'static str {
        let [seat_back, facing, hand, media_wall, second_seats] = CHOICES;
        match self {
            Self::SeatBack(_) => seat_back,
            Self::Facing(_) => facing,
            Self::Hand(_) => hand,
            Self::MediaWall(_) => media_wall,
            Self::SecondSeat(..) => second_seats,
        }
    }

    /// The decisions that `all` is about, each by its first.
    #[must_use]
    pub fn decisions(all: &[Self]) -> Vec<Self> {
        let mut found: Vec<Self> = Vec::new();
        for only in all {
            if !found.iter().any(|known| known.is_about_the_same(only)) {
                found.push(*only);
            }
        }
        found
    }

    /// Whether both are about the same decision: values of one are alternatives.
    #[must_use]
    pub fn is_about_the_same(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::SecondSeat(one, _), Self::SecondSeat(other, _)) => one == other,
            _ => std::mem::discriminant(self) == std::mem::discriminant(other),
        }
    }
}

/// The wall of this name, or the one that holds the item of this name.
fn wall(room: &Room, choice: &str, value: &str, also: &[&str]) -> Result<WallId, Box<Fault>> {
    if let Some((id, _)) = room.walls().find(|(_, wall)| same(&wall.name, value)) {
        return Ok(id);
    }
    if let Some((_, item)) = room.items().find(|(_, item)| same(&item.name, value)) {
        return Ok(item.wall);
    }
    let known: Vec<&str> = room.walls.iter().map(|wall| wall.name.as_str()).chain(also.iter().copied()).collect();
    Err(unknown_value(choice, value, &known))
}

/// The value of an enumeration that is written so.
fn one_of<T>(choice: &str, value: &str) -> Result<T, Box<Fault>>
where
    T: VariantArray + Copy + Into<&'static str>,
{
    let found = T::VARIANTS.iter().copied().find(|one| same((*one).into(), value));
    let words: Vec<&str> = T::VARIANTS.iter().map(|one| (*one).into()).collect();
    found.ok_or_else(|| unknown_value(choice, value, &words))
}

fn not_a_choice(text: &str) -> Box<Fault> {
    let message = format!("`{}` is no choice: it needs a decision, `=` and a value.", quoted(text));
    fault("not_a_choice", message, "Write it as in `seat_back=canal wall` or `hand=left`.".to_owned())
}

fn unknown_choice(pieces: &[Piece], choice: &str) -> Box<Fault> {
    let seats = pieces.iter().filter(|piece| piece.kind.is_seat()).map(|piece| piece.name.as_str());
    let known: Vec<&str> = CHOICES.into_iter().chain(seats).collect();
    let message = format!("`{}` is no decision that an option is made of.", quoted(choice));
    fault("unknown_choice", message, remedy(choice, &known))
}

fn unknown_value(choice: &str, value: &str, known: &[&str]) -> Box<Fault> {
    let message = format!("`{}` is nothing that {} can be.", quoted(value), quoted(choice));
    fault("unknown_choice", message, remedy(value, known))
}

fn remedy(word: &str, known: &[&str]) -> String {
    let listed = || known.iter().map(|one| quoted(one)).collect::<Vec<_>>().join(", ");
    let near = nearest(word, known.iter().copied());
    near.map_or_else(|| format!("Known here: {}.", listed()), |near| format!("Did you mean `{}`?", quoted(near)))
}

fn fault(code: &'static str, message: String, remedy: String) -> Box<Fault> {
    Box::new(Fault { code, item: None, message, remedy, place: None })
}
