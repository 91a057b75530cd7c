//! The plan of an option, or of the room as it stands: what stands in it and what is kept free, at a scale, on a sheet or
//! by itself.
//!
//! Places come from the result and from the solver's view of it; here they become marks. How marks are written down is
//! `drawing`'s.

mod breaches;
mod corners;
mod doors;
mod figure;
mod frame;
mod from_walls;
mod furniture;
mod gaps;
mod head;
mod items;
mod key;
mod largest;
mod layers;
mod marked;
mod matters;
mod offsets;
mod outline;
mod panel;
mod piece;
mod pieces;
mod points;
mod purpose;
mod rulers;
mod sheet;
mod shown;
mod signs;
mod title_block;
mod turning;
mod walls;
mod ways;
mod whole;
mod zones;

pub(crate) use corners::corners;
pub(crate) use figure::Drawn;
pub(crate) use layers::Layers;
pub(crate) use marked::Marked;
pub(crate) use piece::{piece, piece_scale};
pub(crate) use purpose::Purpose;
pub(crate) use sheet::sheet;
pub(crate) use shown::Shown;
pub(crate) use ways::letter;
pub(crate) use whole::{Alone, alone, for_page, on_screen, thumbnail, to_set_out, touched};

#[cfg(test)]
mod collisions;
#[cfg(test)]
mod tests;
