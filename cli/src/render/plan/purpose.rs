//! Whom a sheet is for, and so what is drawn on it.

/// Whom a sheet is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Purpose {
    /// Who lives in the room: walls, furniture, names, sizes, the clearances that matter most.
    Client,
    /// Who sets it out: ways, sight lines, floor that is kept free, every gap, sockets.
    Working,
}
