//! The heart of a group: the pieces that all others stand about, under their only stands.

use crate::arrangement::{Arrangement, Role};
use crate::rules::{Linear, LinearPoint, Pose, turned};

/// The pieces that the others stand about; `None` where an arrangement has none, or more than one stand for it.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Heart<'p> {
    pub(crate) main: Option<&'p Pose>,
    pub(crate) screen: Option<&'p Pose>,
    pub(crate) table: Option<&'p Pose>,
    /// Second seats that stand opposite the main one.
    pub(crate) opposite: usize,
}

impl<'p> Heart<'p> {
    /// Of the pieces of an arrangement that have one stand each.
    pub(crate) fn of(arrangement: &Arrangement, poses: impl Iterator<Item = &'p Pose>) -> Self {
        let mut found = Self { opposite: arrangement.seats_opposite(), ..Self::default() };
        for pose in poses {
            match pose.role {
                Role::MainSeat => found.main = found.main.or(Some(pose)),
                Role::Screen | Role::ScreenBeside => found.screen = found.screen.or(Some(pose)),
                Role::Table => found.table = found.table.or(Some(pose)),
                Role::Opposite | Role::LeftOf | Role::RightOf | Role::Apart | Role::Other => {}
            }
        }
        found
    }

    /// The middle of the table; where there is none the place where one would stand.
    pub(super) fn middle(&self, main: &Pose) -> LinearPoint {
        match self.table {
            Some(table) => middle(table),
            None => turned::heart(main),
        }
    }
}

/// The middle of a piece, of a corner sofa of its main run.
pub(super) fn middle(pose: &Pose) -> LinearPoint {
    pose.middle_of_back().moved(pose.stand.facing, &Linear::default().plus(&pose.depth(), 0.5))
}

/// The middle of its front.
pub(super) fn middle_of_front(pose: &Pose) -> LinearPoint {
    pose.middle_of_back().moved(pose.stand.facing, &pose.depth())
}
