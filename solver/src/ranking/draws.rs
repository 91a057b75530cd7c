//! Weights drawn evenly from all that keep the order of the wishes.
//!
//! Stochastic multicriteria acceptability analysis: Lahdelma, Hokkanen and Salminen 1998.

use super::network::{ABREAST, Abreast, Network};

/// Draws weights, without end, evenly from that part of the simplex that keeps the order of the wishes: a larger wish
/// never weighs less than a smaller one, equal wishes are free between them, a wish of 0 weighs nothing. Where every
/// wish is 0 all are equal. The same wishes give the same draws.
#[derive(Debug, Clone)]
pub struct Draws {
    /// Criteria that may weigh something, those of one wish together, by falling wish.
    groups: Vec<Vec<usize>>,
    /// Lengths of the pieces of a stick of length 1 broken at random places: even on the simplex.
    spacings: Vec<Abreast>,
    /// For each draw of a block the criteria by falling weight.
    dealt: [Vec<usize>; ABREAST],
    weights: Vec<Abreast>,
    /// Draws of the block that were handed out one by one.
    handed_out: usize,
    network: Network,
    generator: SplitMix,
}

impl Draws {
    /// Draws for these wishes, one a criterion.
    #[must_use]
    pub fn new(wishes: &[f64]) -> Self {
        let any = wishes.iter().any(|wish| *wish > 0.0);
        let mut counted: Vec<usize> = (0..wishes.len()).filter(|place| !any || wishes[*place] > 0.0).collect();
        counted.sort_by(|one, other| wishes[*other].total_cmp(&wishes[*one]));
        let groups = counted.chunk_by(|one, other| wishes[*one] == wishes[*other]).map(<[usize]>::to_vec).collect();
        Self {
            groups,
            spacings: vec![[0.0; ABREAST]; counted.len()],
            dealt: Default::default(),
            weights: vec![[0.0; ABREAST]; wishes.len()],
            handed_out: ABREAST,
            network: Network::of(counted.len()),
            generator: SplitMix(SEED),
        }
    }

    /// The criteria that may weigh something, those of one wish together, by falling wish.
    pub(super) fn groups(&self) -> &[Vec<usize>] {
        &self.groups
    }

    /// The next weights, one a criterion; they sum to 1.
    pub fn draw(&mut self) -> Vec<f64> {
        if self.handed_out == ABREAST {
            self.block();
            self.handed_out = 0;
        }
        let draw = self.handed_out;
        self.handed_out += 1;
        self.weights.iter().map(|weights| weights[draw]).collect()
    }

    /// The next block of draws: for each criterion its weight in each of them.
    pub(super) fn block(&mut self) -> &[Abreast] {
        for draw in 0..ABREAST {
            self.cut_stick(draw);
            self.deal(draw);
        }
        self.network.sort(&mut self.spacings);
        for place in (1..self.spacings.len()).rev() {
            for draw in 0..ABREAST {
                self.spacings[place][draw] -= self.spacings[place - 1][draw];
            }
        }
        self.network.sort(&mut self.spacings);
        for (draw, dealt) in self.dealt.iter().enumerate() {
            for (criterion, spacing) in dealt.iter().zip(self.spacings.iter().rev()) {
                self.weights[*criterion][draw] = spacing[draw];
            }
        }
        &self.weights
    }

    /// Where the stick is cut; its end is the last.
    fn cut_stick(&mut self, draw: usize) {
        let Some((last, cuts)) = self.spacings.split_last_mut() else { return };
        cuts.iter_mut().for_each(|cut| cut[draw] = self.generator.fraction());
        last[draw] = 1.0;
    }

    /// Which of a group gets which piece is free: dealt out in an order drawn anew.
    fn deal(&mut self, draw: usize) {
        let dealt = &mut self.dealt[draw];
        dealt.clear();
        for group in &mut self.groups {
            for left in (1..group.len()).rev() {
                group.swap(left, self.generator.below(left + 1));
            }
            dealt.extend_from_slice(group);
        }
    }
}

/// Any fixed number does.
const SEED: u64 = 0x5eed_0f0d_d5ea_7511;

/// The generator of Steele, Lea and Flood 2014: 64 bits of state, one round of mixing a number.
#[derive(Debug, Clone)]
struct SplitMix(u64);

impl SplitMix {
    fn number(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// Even in 0..1, all 53 bits that a float holds.
    fn fraction(&mut self) -> f64 {
        (self.number() >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// Even in 0..count; the bias of the remainder is below 2^-60 for the few that are dealt out here.
    fn below(&mut self, count: usize) -> usize {
        usize::try_from(self.number() % count.max(1) as u64).unwrap_or(0)
    }
}
