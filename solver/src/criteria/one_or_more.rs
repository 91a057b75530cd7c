//! A list that is never empty, so that its means and extremes always exist.

use super::curve::{mean, weighted_mean};
use crate::best_by;

/// One thing, and any others.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct OneOrMore<T> {
    first: T,
    others: Vec<T>,
}

impl<T> OneOrMore<T> {
    /// `None` of none.
    pub(super) fn of(items: impl IntoIterator<Item = T>) -> Option<Self> {
        let mut items = items.into_iter();
        Some(Self { first: items.next()?, others: items.collect() })
    }

    pub(super) const fn first(&self) -> &T {
        &self.first
    }

    pub(super) fn iter(&self) -> impl Iterator<Item = &T> + Clone {
        std::iter::once(&self.first).chain(&self.others)
    }

    pub(super) const fn count(&self) -> usize {
        1 + self.others.len()
    }

    pub(super) fn map<U>(&self, made: impl Fn(&T) -> U) -> OneOrMore<U> {
        OneOrMore { first: made(&self.first), others: self.others.iter().map(&made).collect() }
    }

    /// Mean of a figure over all.
    pub(super) fn mean(&self, figure: impl Fn(&T) -> f64) -> f64 {
        mean(self.iter().map(&figure)).unwrap_or_else(|| figure(&self.first))
    }

    /// Mean of a figure over all, by their weights.
    pub(super) fn weighted_mean(&self, figure: impl Fn(&T) -> f64, weight: impl Fn(&T) -> f64) -> f64 {
        let all = self.iter().map(|item| (figure(item), weight(item)));
        weighted_mean(all).unwrap_or_else(|| figure(&self.first))
    }

    /// The one of the greatest value; of those that are as great, the first.
    pub(super) fn best_by(&self, value: impl Fn(&T) -> f64) -> &T {
        best_by(self.iter(), |item| value(item)).unwrap_or(&self.first)
    }
}

/// One of two things, or both.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum OneOrBoth<A, B> {
    One(A),
    Other(B),
    Both(A, B),
}

impl<A, B> OneOrBoth<A, B> {
    /// `None` of neither.
    pub(super) fn of(one: Option<A>, other: Option<B>) -> Option<Self> {
        match (one, other) {
            (Some(one), Some(other)) => Some(Self::Both(one, other)),
            (Some(one), None) => Some(Self::One(one)),
            (None, Some(other)) => Some(Self::Other(other)),
            (None, None) => None,
        }
    }
}
