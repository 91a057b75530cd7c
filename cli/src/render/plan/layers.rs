//! What the plan of an option shows on a screen beside the room, its pieces and their names: whoever looks chooses it.

/// What is shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(crate) struct Layers {
    /// The size of each piece, and the gaps that matter.
    pub sizes: bool,
    /// The ways, with how wide each is and where it is narrowest.
    pub ways: bool,
    /// Where people sit, and the liked windows that they see.
    pub sights: bool,
    /// Floor that is kept free, and every gap that a rule asks for.
    pub zones: bool,
    /// The largest outlines of the pieces.
    pub largest: bool,
}

impl Layers {
    /// Those that are chosen by these keys.
    pub(crate) fn of(keys: &[String]) -> Self {
        let has = |key: &str| keys.iter().any(|chosen| chosen == key);
        Self {
            sizes: has("sizes"),
            ways: has("ways"),
            sights: has("sights"),
            zones: has("zones"),
            largest: has("largest"),
        }
    }
}
