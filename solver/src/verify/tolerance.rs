//! Every threshold of the re-check in one place, each with its why.
//!
//! None is shared with what is checked: a mistake there must not let itself through here.

/// What rounding may take from a rule, mm: a tape shows as much.
pub(super) const SLACK: f64 = 0.5;

/// How exactly a width is told, mm: widths are told to a centimetre.
pub(super) const EXACT: f64 = 5.0;

/// What rounding may take from the width that a route needs, mm.
pub(super) const NEEDED: f64 = 0.01;

/// How exactly a table lies before its seat, mm.
pub(super) const PLACE: f64 = 1.0;

/// What rounding may take from a rule of comfort, mm.
pub(super) const COMFORT: f64 = 1.0;

/// What two measures of the same length may differ by, mm: results tell places to a thousandth.
pub(super) const SAME: f64 = 0.01;

/// A size is let out by this less than would fit within the slack of the rules, mm.
pub(super) const TO_SPARE: f64 = 1.0;

/// Cosines nearer to each other than this are equal, so that an angle just at its limit is within it.
pub(super) const AT_LIMIT: f64 = 1e-9;

/// Vectors that span less than this, mm2, are parallel: where their lines meet is lost in rounding.
pub(super) const PARALLEL: f64 = 1e-9;

/// A corner this far before a mouth's line still lies in it, mm.
pub(super) const ON_LINE: f64 = 1e-6;

/// A place this far past an end of an arc still lies on it, mm.
pub(super) const ON_ARC: f64 = 1e-6;

/// How much farther than its radius a disc is still on the doorstep, mm: there both ways to count agree.
pub(super) const PAST: f64 = 0.01;

/// Upright lines nearer to each other than this are one, mm.
pub(super) const TOGETHER: f64 = 1e-5;

/// How far beside an upright line the stretches are looked at, mm: less than lines lie apart.
pub(super) const BESIDE: f64 = 1e-6;

/// Stretches that share less than this do not meet, mm.
pub(super) const SHARED: f64 = 1e-6;

/// How far before a mouth a disc sets out, mm.
pub(super) const STEP: f64 = 1e-3;

/// How exactly a chair is turned, degrees: a hundredth of what an eye sees, far more than rounding.
pub(super) const TURN: f64 = 0.01;
