//! The best sets of one candidate for each row, exactly: branch and bound over the candidates.
//!
//! A node has its first rows decided. It is dropped where its price, with the least that the other rows can cost, is over
//! the budget; where two of its candidates do not go together; and where they do not fit with all other rows at the least
//! of their candidates, since what is smaller keeps every gap. A set that leaves something out comes after every one that
//! leaves out less: an empty room has no ways to bar. Nodes come by what they leave out, then by their bound (price, or how
//! well their pieces can still be liked), so in these orders the search ends with as many sets as were asked for; by score,
//! for which no part of a set says anything, it ends when these leave out less than all that is still to come.

use std::cmp::{Ordering, Reverse};
use std::collections::BinaryHeap;

use elbowroom_model::listing::Money;
use rayon::prelude::*;

use super::asked::{Effort, Order, SetsAsked, Watch};
use super::choices::{Choices, choices};
use super::costs::costs;
use super::family::{Family, family, first_of_each, least_of_each};
use super::found::{Impossible, SetFound, SetPiece, SetsFound};
use super::known::Known;
use super::node::{NoSet, Node};
use super::pairs::at_fault;
use super::sets_context::{Seat, SetsContext};
use super::trial::may_fit;
use super::tried_set::TriedSet;

/// Sets that are solved side by side.
const ABREAST: usize = 16;
/// Nodes that are looked at for each set that may be solved, so that hostile lists end too.
const NODES_FOR_A_SET: usize = 40;

/// The best sets.
pub(super) fn sets(context: &SetsContext<'_>, asked: &SetsAsked, effort: Effort, watch: &dyn Watch) -> SetsFound {
    let search = Search::of(context, asked);
    let mut found = search.run(effort, watch);
    found.without = search.without();
    if found.sets.is_empty() && found.proven {
        found.impossible = Some(search.impossible(effort, watch));
    }
    found
}

struct Search<'a> {
    context: &'a SetsContext<'a>,
    asked: &'a SetsAsked,
    choices: Vec<Choices>,
    unpriced: Vec<usize>,
    known: Known,
    /// What leaves out less comes first, whatever it costs.
    fullest_first: bool,
}

impl<'a> Search<'a> {
    fn of(context: &'a SetsContext<'a>, asked: &'a SetsAsked) -> Self {
        let (choices, unpriced) = choices(context, asked);
        let known = Known::of(context, &choices);
        Self { context, asked, choices, unpriced, known, fullest_first: true }
    }

    /// The rows that the list has nothing for.
    fn without(&self) -> Vec<usize> {
        let is_chosen = |place: usize| self.choices.iter().any(|choice| choice.row == place);
        (0..self.context.rows.len()).filter(|place| !is_chosen(*place)).collect()
    }

    fn run(&self, effort: Effort, watch: &dyn Watch) -> SetsFound {
        let mut heap: BinaryHeap<Reverse<Node>> = BinaryHeap::new();
        if !self.choices.is_empty() {
            heap.push(Reverse(Node { left_out: 0, bound: self.bound(&[]), chosen: Vec::new() }));
        }
        let (mut found, mut solved, mut looked_at) = (Vec::new(), 0, 0);
        let mut abreast: Vec<Node> = Vec::new();
        let mut proven = true;
        while let Some(Reverse(node)) = heap.pop() {
            looked_at += 1;
            if node.chosen.len() < self.choices.len() {
                heap.extend(self.children(&node).into_iter().map(Reverse));
            } else if !self.stands_behind_its_family(&node, &found) {
                abreast.push(node);
            }
            if abreast.len() >= ABREAST || heap.is_empty() {
                solved += abreast.len();
                proven &= self.solve(&abreast, &mut found, watch);
                abreast.clear();
                if self.is_settled(&found, heap.peek()) {
                    break;
                }
            }
            if solved + abreast.len() >= effort.sets || looked_at >= effort.sets.saturating_mul(NODES_FOR_A_SET) {
                solved += abreast.len();
                proven &= self.solve(&abreast, &mut found, watch) && heap.is_empty();
                break;
            }
        }
        found.sort_by(|one, other| self.compare(one, other).then_with(|| one.node.chosen.cmp(&other.node.chosen)));
        let told = |set: &TriedSet| self.context.told(set, costs(self.context, set, &found));
        let each = first_of_each(&found, |set: &TriedSet| self.family(&set.pieces));
        let sets: Vec<SetFound> = each.into_par_iter().take(self.asked.top).filter_map(told).collect();
        SetsFound { sets, solved, proven, impossible: None, without: Vec::new(), unpriced: self.unpriced.clone() }
    }

    fn family(&self, pieces: &[SetPiece]) -> Family {
        family(self.context.rows, pieces)
    }

    /// Whether as many families of sets as are asked for come before everything still to come.
    fn is_settled(&self, found: &[TriedSet], next: Option<&Reverse<Node>>) -> bool {
        let keys = least_of_each(found.iter().map(|set| (self.family(&set.pieces), self.key(&set.node))));
        let last = self.asked.top.checked_sub(1).and_then(|place| keys.get(place));
        last.is_some_and(|last| next.is_none_or(|Reverse(node)| self.key(node) > *last))
    }

    /// By what nodes come: by score no bound says what is still to come.
    fn key(&self, node: &Node) -> (usize, u64) {
        (node.left_out, if self.asked.order == Order::Score { 0 } else { node.bound })
    }

    /// Whether a set of its family that was found comes before it whatever its score: it is not told.
    fn stands_behind_its_family(&self, node: &Node, found: &[TriedSet]) -> bool {
        let family = self.family(&self.pieces(node));
        found.iter().any(|set| self.key(&set.node) < self.key(node) && self.family(&set.pieces) == family)
    }

    /// The nodes with one row more decided that may still hold a set.
    fn children(&self, node: &Node) -> Vec<Node> {
        let Some(choice) = self.choices.get(node.chosen.len()) else { return Vec::new() };
        let each = (0..choice.of.len()).into_par_iter().filter_map(|which| {
            let mut chosen = node.chosen.clone();
            chosen.push(which);
            let leaves_out = self.fullest_first && choice.of.get(which) == Some(&None);
            let child = Node { left_out: node.left_out + usize::from(leaves_out), bound: self.bound(&chosen), chosen };
            self.may_hold(&child).then_some(child)
        });
        each.collect()
    }

    /// Candidates of a node, a row each; a row left out has none.
    fn seats(&self, node: &Node) -> Vec<Seat> {
        let seat = |(choice, which): (&Choices, &usize)| Some((choice.row, (*choice.of.get(*which)?)?));
        self.choices.iter().zip(&node.chosen).filter_map(seat).collect()
    }

    fn may_hold(&self, node: &Node) -> bool {
        let seats = self.seats(node);
        let affordable = self.asked.budget.is_none_or(|budget| self.least_price(&node.chosen) <= budget.hundredths);
        if !affordable || !self.context.are_in_hand(&seats) {
            return false;
        }
        let last_is_left_out = node.chosen.last().is_some_and(|which| {
            self.choices.get(node.chosen.len() - 1).and_then(|choice| choice.of.get(*which)) == Some(&None)
        });
        let Some((last, before)) = seats.split_last() else { return true };
        if last_is_left_out {
            return true;
        }
        let context = self.context;
        if before.is_empty() {
            return self.known.may_go(context, &[*last]);
        }
        before.iter().all(|other| self.known.may_go(context, &[*other, *last]))
            && (before.len() < 2 || node.chosen.len() == self.choices.len() || self.known.may_go(context, &seats))
    }

    /// What a choice costs, all of its row.
    fn price(&self, choice: &Choices, which: usize) -> u64 {
        let candidate = choice.of.get(which).copied().flatten().and_then(|place| self.context.candidates.get(place));
        let count = self.context.rows.get(choice.row).map_or(1, |row| row.pieces.len() as u64);
        candidate.and_then(|candidate| candidate.price).map_or(0, |price| price.hundredths.saturating_mul(count))
    }

    /// The least that a set with these first choices costs.
    fn least_price(&self, chosen: &[usize]) -> u64 {
        let each = self.choices.iter().enumerate().map(|(place, choice)| match chosen.get(place) {
            Some(which) => self.price(choice, *which),
            None => (0..choice.of.len()).map(|which| self.price(choice, which)).min().unwrap_or(0),
        });
        each.fold(0, u64::saturating_add)
    }

    /// How well a choice is liked, in thousandths of a point; what has no score is liked by half.
    fn liking(&self, choice: &Choices, which: usize) -> u64 {
        let candidate = choice.of.get(which).copied().flatten().and_then(|place| self.context.candidates.get(place));
        // A score is 0 to 100.
        candidate.map_or(0, |candidate| (candidate.score.unwrap_or(50.0) * 1000.0).round() as u64)
    }

    /// The lower, the better; never above that of any set which begins so.
    fn bound(&self, chosen: &[usize]) -> u64 {
        if self.asked.order != Order::Liking {
            return self.least_price(chosen);
        }
        let most: u64 = self
            .choices
            .iter()
            .enumerate()
            .map(|(place, choice)| match chosen.get(place) {
                Some(which) => self.liking(choice, *which),
                None => (0..choice.of.len()).map(|which| self.liking(choice, which)).max().unwrap_or(0),
            })
            .sum();
        u64::MAX - most
    }

    /// Adds the sets of `nodes` that fit, and says whether it is known of all of them.
    fn solve(&self, nodes: &[Node], found: &mut Vec<TriedSet>, watch: &dyn Watch) -> bool {
        let sets: Vec<Vec<SetPiece>> = nodes.iter().map(|node| self.pieces(node)).collect();
        let mut new: Vec<Vec<SetPiece>> = sets.iter().map(|pieces| self.known.as_solved(pieces)).collect();
        new.retain(|as_solved| self.known.score(as_solved).is_none());
        new.sort_unstable();
        new.dedup();
        watch.solved(nodes.len() - new.len());
        new.into_par_iter().for_each(|as_solved| {
            let score = self.context.best_score(&as_solved);
            self.known.keep_score(as_solved, score);
            watch.solved(1);
        });
        let mut decided = true;
        for (node, pieces) in nodes.iter().zip(sets) {
            match self.known.score(&self.known.as_solved(&pieces)) {
                Some(Ok(score)) => {
                    found.push(TriedSet { node: node.clone(), price: self.price_of(node), pieces, score });
                }
                Some(Err(NoSet::DoesNotFit)) => {}
                Some(Err(NoSet::NotDecided)) | None => decided = false,
            }
        }
        decided
    }

    /// What stands for each row.
    fn pieces(&self, node: &Node) -> Vec<SetPiece> {
        let piece = |(choice, which): (&Choices, &usize)| SetPiece {
            row: choice.row,
            candidate: choice.of.get(*which).copied().flatten(),
        };
        let mut pieces: Vec<SetPiece> = self.choices.iter().zip(&node.chosen).map(piece).collect();
        pieces.sort_unstable();
        pieces
    }

    /// What a whole set costs; `None` where a price is not known.
    fn price_of(&self, node: &Node) -> Option<Money> {
        let is_priced =
            |(_, one): &Seat| self.context.candidates.get(*one).is_some_and(|candidate| candidate.price.is_some());
        self.seats(node).iter().all(is_priced).then(|| Money { hundredths: self.least_price(&node.chosen) })
    }

    /// Best first: what leaves out least, then by what was asked, then by score, then by price.
    fn compare(&self, one: &TriedSet, other: &TriedSet) -> Ordering {
        let price = |set: &TriedSet| set.price.map_or(u64::MAX, |price| price.hundredths);
        let by_score = other.score.total_cmp(&one.score);
        let by_price = price(one).cmp(&price(other));
        let liked = |set: &TriedSet| self.liked(set);
        let fuller = if self.fullest_first { one.left_out().cmp(&other.left_out()) } else { Ordering::Equal };
        fuller.then(match self.asked.order {
            Order::Score => by_score.then(by_price),
            Order::Price => by_price.then(by_score),
            Order::Liking => liked(other).cmp(&liked(one)).then(by_score).then(by_price),
        })
    }

    /// How well the set is liked, as its bound counts it.
    fn liked(&self, set: &TriedSet) -> u64 {
        let score = |piece: &SetPiece| {
            let candidate = self.context.candidates.get(piece.candidate?)?;
            Some((candidate.score.unwrap_or(50.0) * 1000.0).round() as u64)
        };
        set.pieces.iter().filter_map(score).sum()
    }

    /// Why there is no set.
    fn impossible(&self, effort: Effort, watch: &dyn Watch) -> Impossible {
        if self.choices.is_empty() {
            return Impossible::NothingListed;
        }
        if self.asked.budget.is_some() {
            let free = SetsAsked { order: Order::Price, budget: None, top: 1 };
            let search = Search { fullest_first: false, ..Search::of(self.context, &free) };
            let cheapest = search.run(effort, watch).sets.into_iter().next();
            if let Some(cheapest) = cheapest {
                return Impossible::OverBudget(Box::new(cheapest));
            }
        }
        let rows: Vec<Vec<Seat>> = self.choices.iter().map(|choice| self.fitting(choice)).collect();
        let mut each = self.choices.iter().zip(&rows);
        if let Some((choice, _)) = each.find(|(choice, seats)| seats.is_empty() && !choice.of.contains(&None)) {
            return Impossible::NoneFor(choice.row);
        }
        let pairs = at_fault(self.context, &rows);
        if pairs.is_empty() { Impossible::NotAllTogether } else { Impossible::Pairs(pairs) }
    }

    /// The candidates of a row that fit, all else as the room asks for it.
    fn fitting(&self, choice: &Choices) -> Vec<Seat> {
        let seats = choice.of.iter().flatten().map(|candidate| (choice.row, *candidate));
        seats.filter(|seat| may_fit(&self.context.brief_as_asked(&[*seat]))).collect()
    }
}
