//! What is asked of a shop, and how far the work goes.

use elbowroom_model::listing::Money;

/// By what sets are ordered, best first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Order {
    /// The score of the best option that the set makes.
    #[default]
    Score,
    /// The price of the whole set, the lowest first.
    Price,
    /// How well the pieces are liked, on the mean.
    Liking,
}

/// What is asked of the sets.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SetsAsked {
    /// How they are ordered.
    pub order: Order,
    /// What one of them may cost.
    pub budget: Option<Money>,
    /// How many are told.
    pub top: usize,
}

/// How far the work on one room goes, counted and never timed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Effort {
    /// Sets that are solved at most.
    pub sets: usize,
}

impl Default for Effort {
    fn default() -> Self {
        Self { sets: 5_000 }
    }
}

/// Told as the candidates and sets are solved, from any thread.
pub trait Watch: Sync {
    /// So many more are solved.
    fn solved(&self, more: usize);
}

/// Watches nothing.
#[derive(Debug, Clone, Copy, Default)]
pub struct Unwatched;

impl Watch for Unwatched {
    fn solved(&self, _more: usize) {}
}
