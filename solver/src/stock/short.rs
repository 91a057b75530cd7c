//! Why nothing of the stock serves what a room asks for.

use super::fit::{Stage, stage, stages};
use super::nearest::left;
use super::pick::Pick;
use super::refused::concerns;
use super::{Asked, Asking, By, Chosen, Owned};

/// What is asked about: a room, beside what serves all of them.
pub(super) struct Shortage<'a> {
    pub(super) rooms: &'a [Asking],
    pub(super) stock: &'a [Owned],
    pub(super) room: usize,
    pub(super) served: &'a [Vec<Option<usize>>],
    /// The option that the room's pieces stand in.
    pub(super) option: Option<Chosen>,
}

/// Why nothing serves what is asked for at `place`: beside what stands in the option, or in any where nothing does.
pub(super) fn why_none(short: &Shortage<'_>, place: usize, asked: &Asked) -> By {
    let Some(asking) = short.rooms.get(short.room) else { return By::NoOption };
    if asking.room.has_no_option() {
        return if asking.room.is_undecided() { By::NotDecided } else { By::NoOption };
    }
    let kinds = asking.room.kinds_of(&asked.pieces);
    let is_of_kind = |owned: &Owned| kinds.contains(&owned.piece.kind) && owned.piece.count > 0;
    if !short.stock.iter().any(is_of_kind) {
        return By::NoneOfKind;
    }
    let stages = stages_of(asking, short.option);
    let takes = |(row, owned): &(usize, &Owned)| stages.iter().any(|stage| stage.takes(asked, *row, &owned.piece));
    let fitting: Vec<(usize, &Owned)> = short.stock.iter().enumerate().filter(takes).collect();
    match fitting.iter().map(|(_, owned)| owned.piece.count as usize).max() {
        Some(most) if most < asked.pieces.len() => By::TooFewAlike,
        Some(_) => match short.refused(asking, place, asked, &fitting) {
            Some(true) => By::NoneFitsBeside,
            Some(false) => By::NotDecidedBeside,
            None => By::AllTaken,
        },
        None => {
            let of_kind = short.stock.iter().enumerate().filter(|(_, owned)| is_of_kind(owned)).collect::<Vec<_>>();
            match short.refused(asking, place, asked, &of_kind) {
                Some(false) => By::NotDecidedBeside,
                Some(true) | None => By::NoneFits,
            }
        }
    }
}

impl Shortage<'_> {
    /// Of rows that are free on the days of the booking: whether they were refused and it is proven; `None` where none of
    /// them was.
    fn refused(&self, asking: &Asking, place: usize, asked: &Asked, rows: &[(usize, &Owned)]) -> Option<bool> {
        let is_free =
            |row: usize| left(self.rooms, self.stock, row, asking, self.served) as usize >= asked.pieces.len();
        let of_row = |row: usize| {
            let refused = asking.room.refused.iter();
            refused.filter(move |refused| concerns(refused, Pick { asked: place, row }, self.stock))
        };
        let of_free = rows.iter().filter(|(row, _)| is_free(*row)).flat_map(|(row, _)| of_row(*row));
        of_free.map(|refused| refused.is_decided).reduce(|one, other| one && other)
    }
}

/// The options that something which is short could stand in: the one that is chosen, or any where none is.
fn stages_of(asking: &Asking, option: Option<Chosen>) -> Vec<Stage<'_>> {
    option.map_or_else(|| stages(&asking.room).collect(), |chosen| stage(&asking.room, chosen).into_iter().collect())
}
