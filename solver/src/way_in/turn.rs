//! The longest box that turns from one hall into another.

use std::f64::consts::FRAC_PI_2;

use super::tolerance::FLAT;

/// Places at which the angle is looked at first; between two of them the length has one valley at most.
const PLACES: u32 = 512;
/// Halvings of the valley: far below a thousandth of a millimetre.
const STEPS: usize = 80;

/// Length of the longest box, `width` wide, that goes round the right-angled turn from a hall `from` wide into one `to`
/// wide, level and by turning or by sliding sideways; 0 where it is too wide for one of them. All mm.
///
/// By turning: the least over all angles t of `from / sin t + to / cos t - width / (sin t cos t)`, which is the length at
/// which the box touches both outer walls and the inner corner (D); for a rod of no width `(a^(2/3) + b^(2/3))^(3/2)`
/// (P). By sliding: as long as the hall that it moves along sideways is wide.
///
/// ```
/// use elbowroom_solver::way_in::turn::longest;
/// assert!((longest(1.0, 1.0, 0.0) - 8.0_f64.sqrt()).abs() < 1e-9);
/// assert!((longest(3.0, 8.0, 1.0) - 12.856318).abs() < 1e-6);
/// ```
#[must_use]
pub fn longest(from: f64, to: f64, width: f64) -> f64 {
    let narrow = from.min(to);
    if width > narrow || width.is_nan() {
        return 0.0;
    }
    let wide = from.max(to);
    if width >= narrow {
        return wide;
    }
    by_turning(from, to, width).max(wide)
}

/// The least length over all angles at which the box touches both outer walls and the inner corner.
fn by_turning(from: f64, to: f64, width: f64) -> f64 {
    let length = |angle: f64| (from * angle.cos() + to * angle.sin() - width) / (angle.sin() * angle.cos());
    let step = FRAC_PI_2 / f64::from(PLACES);
    let at = |place: u32| f64::from(place) * step;
    let mut best = 1;
    for place in 2..PLACES {
        if length(at(place)) < length(at(best)) {
            best = place;
        }
    }
    valley(length, (at(best) - step).max(FLAT), (at(best) + step).min(FRAC_PI_2 - FLAT))
}

/// The least value of `of` between `low` and `high`, where it has one valley (golden section).
fn valley(of: impl Fn(f64) -> f64, mut low: f64, mut high: f64) -> f64 {
    const GOLDEN: f64 = 0.618_033_988_749_894_9;
    let (mut one, mut other) = (high - GOLDEN * (high - low), low + GOLDEN * (high - low));
    for _ in 0..STEPS {
        if of(one) < of(other) {
            high = other;
            other = one;
            one = high - GOLDEN * (high - low);
        } else {
            low = one;
            one = other;
            other = low + GOLDEN * (high - low);
        }
    }
    of(one).min(of(other))
}
