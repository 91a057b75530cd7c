//! Every threshold of the routes in one place, each with its why.
//!
//! Pieces come from linear programs, which place them to 1e-7 mm; a tape shows half a millimetre.

/// A route whose width falls short by less than this is wide enough, mm: rounding of a program's answer, not room.
pub(crate) const ENOUGH: f64 = 1e-4;

/// A route that falls short by less than this gets no notice, mm: it is not seen on a tape.
pub(super) const SEEN: f64 = 1.0;

/// A side of a shape further than this from a mouth's line lies off the line, mm.
pub(super) const ON_LINE: f64 = 1e-4;

/// A place nearer than this to a mouth's end is at the end, mm.
pub(super) const AT_END: f64 = 1e-4;

/// A wall whose end is this near to a mouth's line stops its widening, mm.
pub(super) const MEETS_LINE: f64 = 1e-6;

/// How far behind its mouth's line a route starts, mm: more than what counts as on the line.
pub(super) const START_BEHIND: f64 = 1e-3;

/// How far behind its line a mouth's stretch stands, seen from behind, mm: behind the place where the route starts.
pub(super) const BACK_BEHIND: f64 = 2e-3;

/// The least front that a mouth can be, mm: it must have a direction to be widened in.
pub(super) const SHORTEST_FRONT: f64 = 1.0;

/// How much nearer than its radius a disc may pass on a walk, mm: a disc of just the width of a gap still passes
/// it.
pub(super) const GIVES: f64 = 0.05;

/// A disc that is nearer to something than its radius by less than this touches it and no more, mm; places on a
/// walk nearer to each other are one.
pub(super) const ROUNDING: f64 = 1e-6;

/// A chord that seeks where a stretch becomes free cuts no less than this share off it, so that it comes to an end.
pub(super) const LEAST_CHORD: f64 = 1e-4;

/// Slack of the sides of a corner's cone, as a sine: a cord that leaves along a side turns at the corner.
pub(super) const CONE: f64 = 1e-9;

/// Corners nearer to each other than this are one, mm: they are cut from the same coordinates.
pub(super) const SAME_PLACE: f64 = 1e-9;

/// A walk to a corner longer than another by no more than this is no longer, mm.
pub(super) const NO_LONGER: f64 = 1e-9;

/// An arc is looked at this often, radians: between two looks a disc of a metre gains half a millimetre.
pub(super) const LOOK: f64 = 0.06;

/// A chord of a line that is told spans at most this, radians: 3 mm off the arc of a disc of 1.2 m, not to be seen
/// on a plan.
pub(super) const CHORD: f64 = 0.2;
