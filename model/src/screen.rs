//! How wide and how high a 16:9 screen of a diagonal is.

/// Width of a 16:9 screen of this diagonal.
#[must_use]
pub fn screen_width(diagonal: f64) -> f64 {
    diagonal * 16.0 / 337_f64.sqrt()
}

/// Height of a 16:9 screen of this diagonal.
#[must_use]
pub fn screen_height(diagonal: f64) -> f64 {
    diagonal * 9.0 / 337_f64.sqrt()
}
