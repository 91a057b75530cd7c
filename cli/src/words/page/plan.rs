//! What the plan of an option shows, and how near.

/// A field.
pub(crate) const PLAN_SHOWS: &str = "The plan shows";
/// What it can show, by the names that the page asks for it by.
pub(crate) const PLAN_SHOWN: [(&str, &str); 5] = [
    ("sizes", "Sizes"),
    ("ways", "Ways"),
    ("sights", "Sight lines"),
    ("zones", "Clear zones"),
    ("largest", "Largest outlines"),
];
/// What it shows where nobody chose.
pub(crate) const SHOWN_FIRST: &str = "sizes";
/// Over the buttons that show the plan nearer.
pub(crate) const PLAN_NEARER: &str = "How near the plan is seen";
/// A button.
pub(crate) const NEARER: &str = "Nearer";
/// A button.
pub(crate) const FARTHER: &str = "Farther";
/// A button.
pub(crate) const WHOLE_PLAN: &str = "All of it";
/// What keys do there.
pub(crate) const ZOOM_KEYS: &str = "Arrow keys move a plan that is seen nearer.";
