//! Weights drawn evenly from all that keep the order of the wishes.
//!
//! Stochastic multicriteria acceptability analysis: Lahdelma, Hokkanen and Salminen 1998.

/// Draws weights, without end, evenly from that part of the simplex that keeps the order of the wishes: a larger wish
/// never weighs less than a smaller one, equal wishes are free between them, a wish of 0 weighs nothing. Where every
/// wish is 0 all are equal. The same wishes give the same draws.
#[derive(Debug, Clone)]
pub struct Draws {
    /// Criteria that may weigh something, those of one wish together, by falling wish.
    groups: Vec<Vec<usize>>,
    /// Lengths of the pieces of a stick of length 1 broken at random places: even on the simplex.
    spacings: Vec<f64>,
    weights: Vec<f64>,
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
        let (spacings, weights) = (vec![0.0; counted.len()], vec![0.0; wishes.len()]);
        Self { groups, spacings, weights, generator: SplitMix(SEED) }
    }

    /// The next weights, one a criterion; they sum to 1.
    pub fn draw(&mut self) -> &[f64] {
        self.break_stick();
        self.spacings.sort_unstable_by(|one, other| other.total_cmp(one));
        let mut largest_first = self.spacings.iter();
        for group in &mut self.groups {
            // Which of a group gets which is free: dealt out in an order drawn anew.
            for left in (1..group.len()).rev() {
                group.swap(left, self.generator.below(left + 1));
            }
            for (place, weight) in group.iter().zip(largest_first.by_ref()) {
                self.weights[*place] = *weight;
            }
        }
        &self.weights
    }

    fn break_stick(&mut self) {
        let Some((last, cuts)) = self.spacings.split_last_mut() else { return };
        cuts.fill_with(|| self.generator.fraction());
        cuts.sort_unstable_by(f64::total_cmp);
        *last = 1.0;
        for place in (1..self.spacings.len()).rev() {
            self.spacings[place] -= self.spacings[place - 1];
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
