//! Which options may stand first whatever their scores: those that break no must and ease no rule, before those that ease
//! some, before those that are set aside.

use elbowroom_model::{Criterion, Wishes};

use super::best_first::best_first;
use super::composed::composed;
use super::set_aside::{SetAside, lapses};
use crate::criteria::Judgement;

/// An option as the order sees it.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Entrant {
    /// Its score in each criterion.
    pub scores: Vec<(Criterion, f64)>,
    /// What its composition costs and what it leaves out is worth, in millimetres of shortfall of a piece that counts 3.
    pub composed: f64,
    /// Rules of comfort that it gives only in part.
    pub eased: usize,
    /// All that could set it aside; the first that does under the wishes is told.
    pub lapses: Vec<SetAside>,
}

impl Entrant {
    /// An option that was judged so and eases so many rules.
    #[must_use]
    pub fn of(judgements: &[Judgement], eased: usize) -> Self {
        let scores = judgements.iter().map(|judgement| (judgement.criterion, judgement.score)).collect();
        Self { scores, composed: composed(judgements), eased, lapses: lapses(judgements) }
    }

    /// What sets it aside under these wishes.
    pub(super) fn set_aside(&self, wishes: &Wishes) -> Option<SetAside> {
        self.lapses.iter().find(|it| wishes.get(it.criterion) >= it.lapse.from_wish()).copied()
    }

    /// The wish for a criterion from which it is set aside; infinite where none does that.
    pub(super) fn aside_from(&self, criterion: Criterion) -> f64 {
        let lapses = self.lapses.iter().filter(|it| it.criterion == criterion);
        lapses.map(|it| it.lapse.from_wish()).fold(f64::INFINITY, f64::min)
    }
}

/// Where an option stands before any score is looked at: what is less stands first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Tier {
    /// It gives all that is asked for comfort.
    Clean,
    /// It eases so many rules.
    Eased(usize),
    /// It breaks a must.
    Aside,
}

impl Tier {
    /// How an option stands under these wishes.
    pub(super) fn of(entrant: &Entrant, wishes: &Wishes) -> Self {
        match (entrant.set_aside(wishes), entrant.eased) {
            (Some(_), _) => Self::Aside,
            (None, 0) => Self::Clean,
            (None, eased) => Self::Eased(eased),
        }
    }
}

/// Places by tier, then by falling figure; a tie keeps the order handed in.
pub(super) fn by_tier(figures: &[f64], tiers: &[Tier]) -> Vec<usize> {
    let mut order: Vec<usize> = (0..tiers.len()).collect();
    order.sort_by_key(|option| tiers[*option]);
    let alike = order.chunk_by(|one, other| tiers[*one] == tiers[*other]);
    let in_order = |alike: &[usize]| {
        let of_them: Vec<f64> = alike.iter().map(|option| figures[*option]).collect();
        best_first(&of_them).into_iter().map(|place| alike[place]).collect::<Vec<_>>()
    };
    alike.flat_map(in_order).collect()
}

/// The options that some weights could put first, in the order handed in: those of the foremost tier, for the others
/// stand behind them under any weights. Without any where all are set aside.
pub(super) fn contestants(tiers: &[Tier]) -> Vec<usize> {
    let foremost = tiers.iter().copied().min().filter(|foremost| *foremost != Tier::Aside);
    (0..tiers.len()).filter(|option| Some(tiers[*option]) == foremost).collect()
}
