//! How a tree is searched: what is looked at next, how far, and with what was learned before.

use elbowroom_model::PieceId;
use elsa::FrozenVec;

use crate::rules::Requirement;
use crate::search::barriers::Barriers;

/// Which of the nodes that wait is looked at next.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::search) enum Order<'a> {
    /// The one that promises most: that proves soonest.
    BestFirst,
    /// The deepest, until a layout is found, and then the one that promises most, but for decimetres: that finds soonest.
    DeepestFirst,
    /// The one that decides as a layout does, to the first layout and no further: that finds where others may not.
    Like(Lead<'a>),
}

/// A layout that is followed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::search) struct Lead<'a> {
    /// Its variables.
    pub(in crate::search) values: &'a [f64],
    /// A piece that it leaves out: what is asked of it is decided for what promises most.
    pub(in crate::search) but_for: Option<PieceId>,
}

impl<'a> Lead<'a> {
    /// A layout of all pieces that are asked for.
    pub(in crate::search) const fn whole(values: &'a [f64]) -> Self {
        Self { values, but_for: None }
    }
}

/// What ways through that were too narrow taught.
#[derive(Clone, Copy)]
pub(in crate::search) struct Learned<'p> {
    /// What would widen them where they were.
    pub(in crate::search) widenings: &'p FrozenVec<Box<Requirement>>,
    /// What holds elsewhere too.
    pub(in crate::search) barriers: &'p Barriers,
}

/// How a tree is searched.
#[derive(Debug, Clone, Copy)]
pub(in crate::search) struct Limits<'a> {
    pub(in crate::search) order: Order<'a>,
    /// Nodes at most.
    pub(in crate::search) nodes: usize,
    /// Layouts count that are better than this.
    pub(in crate::search) to_beat: f64,
}
