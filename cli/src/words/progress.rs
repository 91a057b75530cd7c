//! How progress reads (templates in the language of `indicatif`).

/// How a bar of progress reads.
pub(crate) const ARRANGEMENTS: &str = "{pos} of {len} arrangements solved {wide_bar} {elapsed} ";

/// How a bar over many rooms reads, their number being known.
pub(crate) const ROOMS: &str = "{pos} of {len} rooms {wide_bar} {rate} a second, {eta} left ";

/// The same, their number not being known.
pub(crate) const ROOMS_OPEN: &str = "{pos} rooms {spinner} {rate} a second, {elapsed} ";

/// How a count of what was tried reads.
pub(crate) const TRIED: &str = "{pos} candidates and sets tried {elapsed} ";
