//! The ways to hold a box, and what is less than a box from its end.

use elbowroom_model::Point;
use elbowroom_model::way_in::LoadPart;
use strum::{IntoStaticStr, VariantArray};

use super::tolerance::FINE;
use crate::geometry::{Convex, LeastWidth, least_width};

/// How a piece is held while it is carried, its length always level but on end; the easier first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "kebab-case")]
pub enum Pose {
    /// As it stands in the room.
    Upright,
    /// On its back.
    Lying,
    /// On one of its ends.
    OnEnd,
    /// Tipped about its length, which is level: by the diagonal depth that its maker gives, or as its outline from the end is
    /// narrowest.
    Tilted,
    /// On one of its ends, and turned there as its outline from the end is narrowest.
    EndTurned,
}

impl Pose {
    /// Every pose.
    pub const ALL: &[Self] = Self::VARIANTS;

    /// Its stable name.
    #[must_use]
    pub fn key(self) -> &'static str {
        self.into()
    }
}

/// A box as held: what it measures along and across the floor, and upward, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Held {
    /// The longer side on the floor.
    pub(crate) long: f64,
    /// The shorter side on the floor.
    pub(crate) short: f64,
    /// Upward.
    pub(crate) tall: f64,
}

/// `part` held in `pose`; `None` where it cannot be.
pub(crate) fn held(part: &LoadPart, pose: Pose) -> Option<Held> {
    let [width, depth, height] = part.sides;
    let (one, other, tall) = match pose {
        Pose::Upright => (width, depth, height),
        Pose::Lying => (width, height, depth),
        Pose::OnEnd => (depth, height, width),
        Pose::Tilted => tilted(part)?,
        Pose::EndTurned => {
            let least = narrowest(part)?;
            (least.along, least.across, width)
        }
    };
    Some(Held { long: one.max(other), short: one.min(other), tall })
}

/// Along, across and upward of what is tipped about its length.
fn tilted(part: &LoadPart) -> Option<(f64, f64, f64)> {
    let [width, depth, height] = part.sides;
    match part.diagonal_depth {
        // Upward no more than the diagonal of its profile.
        Some(across) => Some((width, across, depth.hypot(height))),
        None => narrowest(part).map(|least| (width, least.across, least.along)),
    }
}

/// The hull of a seat's outline from its end, turned as it is narrowest, mm; `None` where no outline is known, or where it is
/// no narrower than square.
#[must_use]
pub fn narrowest(part: &LoadPart) -> Option<LeastWidth> {
    let ([_, depth, height], profile) = (part.sides, part.profile?);
    let (front, back) = (profile.front.min(height), profile.back.min(depth));
    let corners = [(0.0, 0.0), (depth, 0.0), (depth, front), (back, height), (0.0, height)];
    let least = least_width(&Convex::counter_clockwise(corners.map(|(x, y)| Point { x, y })));
    least.filter(|least| least.across < depth.min(height) - FINE)
}

/// What it takes to bring a part from one pose into another where it is: room upward, and across where it rolls about
/// its length; mm.
pub(crate) fn to_turn_over(part: &LoadPart, from: Pose, to: Pose) -> (f64, f64) {
    let [width, depth, height] = part.sides;
    match (from, to) {
        (from, to) if from == to => (0.0, 0.0),
        // It turns where it stands on its end.
        (Pose::OnEnd, Pose::EndTurned) | (Pose::EndTurned, Pose::OnEnd) => (width, depth.hypot(height)),
        (Pose::EndTurned, other) | (other, Pose::EndTurned) => (width.hypot(side_up(part, other)), depth.hypot(height)),
        (Pose::OnEnd, other) | (other, Pose::OnEnd) => {
            // It tips up over an edge of its end, in the plane of its length and of what was upward.
            (width.hypot(side_up(part, other)), 0.0)
        }
        _ => (depth.hypot(height), depth.hypot(height)),
    }
}

/// What is upward of a part whose length is level; of a tilted one no less than the most that it can be.
fn side_up(part: &LoadPart, pose: Pose) -> f64 {
    let [_, depth, height] = part.sides;
    match pose {
        Pose::Lying => depth,
        Pose::Tilted => depth.hypot(height),
        Pose::Upright | Pose::OnEnd | Pose::EndTurned => height,
    }
}
