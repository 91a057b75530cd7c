//! What a search is asked for.

use elbowroom_model::Rule;

use super::aim::Aim;
use super::easing::Easing;
use super::still::Still;
use crate::program::Row;
use crate::rules::Cause;

/// How far a search goes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Effort<'a> {
    /// What is made as large as it can be.
    pub aim: Aim<'a>,
    /// Layouts count that are better than this.
    pub to_beat: f64,
    /// Nodes at most.
    pub nodes: usize,
    /// A rule that is left aside.
    pub without: Option<Rule>,
    /// What is done about rules of comfort.
    pub easing: Easing<'a>,
    /// Rows that hold besides.
    pub besides: &'a [(Row, Cause)],
    /// What keeps its place; all may move where there is none.
    pub still: Option<&'a Still<'a>>,
}

impl<'a> Effort<'a> {
    /// All that can be had of an aim within so many nodes, every rule kept.
    #[must_use]
    pub const fn of(aim: Aim<'a>, nodes: usize) -> Self {
        Self { aim, to_beat: f64::NEG_INFINITY, nodes, without: None, easing: Easing::Kept, besides: &[], still: None }
    }
}
