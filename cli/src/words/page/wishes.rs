//! The wishes in plain sentences.

use elbowroom_model::Criterion;

/// Over the sliders.
pub(crate) const WISHES: &str = "What counts for you";
/// What they do.
pub(crate) const ABOUT: &str =
    "From 0 (not at all) to 5 (a must). Moving one puts the options in another order at once.";

/// What a wish asks for.
pub(crate) const fn sentence(criterion: Criterion) -> &'static str {
    match criterion {
        Criterion::View => "See out of the windows you like from your seat",
        Criterion::Entrance => "Face whoever comes in, and meet no back at the door",
        Criterion::Openness => "Keep sight of what is open, and turn backs to what is not",
        Criterion::Ways => "Wide and short walking routes through the room",
        Criterion::Screen => "See the screen well: how far, how straight, how little glare",
        Criterion::Talk => "Sit at talking distance",
        Criterion::Daylight => "Daylight where you sit",
        Criterion::Seats => "Seats for everybody, and large ones",
        Criterion::Balance => "A composed room: centred, aligned, nothing adrift",
        Criterion::Upkeep => "Reach windows, radiators and sockets",
        Criterion::Fireside => "Sit about the fire",
    }
}

/// A wish as it stands.
pub(crate) fn value(wish: f64) -> String {
    match wish {
        5.0 => "5, a must".to_owned(),
        0.0 => "0, not at all".to_owned(),
        wish => format!("{wish}"),
    }
}
