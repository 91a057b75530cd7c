//! Wishes shifted by up to one step, each by itself: what somebody might as well have said.

/// So many draws are worked out side by side.
pub(super) const ABREAST: usize = 8;

/// One figure of each of the draws that are worked out side by side.
pub(super) type Abreast = [f64; ABREAST];

/// The largest wish.
const MOST: f64 = 5.0;

/// How far a wish is shifted up or down at most: the step between two whole wishes, which few people could defend.
const STEP: f64 = 1.0;

/// Where the weight of one criterion is drawn from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Shift {
    pub(super) least: f64,
    pub(super) most: f64,
}

impl Shift {
    /// Up to a step about a wish, within the scale. What is not wished for at all stays so.
    fn about(wish: f64) -> Self {
        if wish > 0.0 {
            Self { least: (wish - STEP).max(0.0), most: (wish + STEP).min(MOST) }
        } else {
            Self { least: 0.0, most: 0.0 }
        }
    }

    /// Without any wish all criteria count alike, and there is nothing to shift.
    const ALIKE: Self = Self { least: 1.0, most: 1.0 };
}

/// Draws weights, without end: each wish evenly from up to one step about it, by itself, then all over their sum. The same
/// wishes give the same draws.
#[derive(Debug, Clone)]
pub struct Draws {
    shifts: Vec<Shift>,
    /// For each criterion its weight in each draw of a block.
    weights: Vec<Abreast>,
    /// Draws of the block that were handed out one by one.
    handed_out: usize,
    generator: SplitMix,
}

impl Draws {
    /// Draws for these wishes, one a criterion.
    #[must_use]
    pub fn new(wishes: &[f64]) -> Self {
        let any = wishes.iter().any(|wish| *wish > 0.0);
        let shift = |wish: &f64| if any { Shift::about(*wish) } else { Shift::ALIKE };
        Self {
            shifts: wishes.iter().map(shift).collect(),
            weights: vec![[0.0; ABREAST]; wishes.len()],
            handed_out: ABREAST,
            generator: SplitMix(SEED),
        }
    }

    /// Where each criterion's weight is drawn from, before all are taken over their sum.
    pub(super) fn shifts(&self) -> &[Shift] {
        &self.shifts
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
            let mut sum = 0.0;
            for (weights, shift) in self.weights.iter_mut().zip(&self.shifts) {
                weights[draw] = shift.least + (shift.most - shift.least) * self.generator.fraction();
                sum += weights[draw];
            }
            if sum > 0.0 {
                self.weights.iter_mut().for_each(|weights| weights[draw] /= sum);
            }
        }
        &self.weights
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
}
