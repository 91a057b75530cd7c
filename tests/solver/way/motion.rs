//! The turn against a brute-force search over the motions of a rectangle in the corner of two halls.

use std::collections::VecDeque;

use elbowroom_solver::way_in::turn::longest;
use proptest::prelude::*;

/// Steps of the rectangle's angle in a quarter turn.
const ANGLES: usize = 60;
/// Steps of its centre along each axis.
const STEPS: usize = 110;

/// Two halls that meet at a corner: the one comes down along x from 0 to `from`, the other goes off along y from 0 to `to`.
#[derive(Debug, Clone, Copy)]
struct Corner {
    from: f64,
    to: f64,
}

impl Corner {
    /// Whether a rectangle lies within both halls: inside the outer walls, and not in the quadrant of the inner corner.
    fn holds(self, corners: &[(f64, f64)]) -> bool {
        const HAIR: f64 = 1e-9;
        let inside = corners.iter().all(|(x, y)| *x >= -HAIR && *y >= -HAIR);
        inside && self.reach_past(corners) <= self.to + HAIR
    }

    /// How high the rectangle reaches where it is to the right of the inner corner's line; below everything if it is not.
    fn reach_past(self, corners: &[(f64, f64)]) -> f64 {
        let mut reach = f64::NEG_INFINITY;
        for (place, &(x, y)) in corners.iter().enumerate() {
            let (nx, ny) = corners[(place + 1) % corners.len()];
            if x > self.from {
                reach = reach.max(y);
            }
            if (x > self.from) != (nx > self.from) {
                reach = reach.max(y + (ny - y) * (self.from - x) / (nx - x));
            }
        }
        reach
    }

    /// Whether a rectangle can be moved from the one hall into the other, by every motion of a grid of places and angles.
    fn lets_through(self, long: f64, wide: f64) -> bool {
        let (span_x, span_y) = (self.from + long, self.to + long);
        let at = |place: usize, span: f64| span * (place as f64) / (STEPS - 1) as f64;
        let free = |x: usize, y: usize, angle: usize| {
            let turn = (angle as f64) / ANGLES as f64 * std::f64::consts::FRAC_PI_2;
            let (s, c) = turn.sin_cos();
            let corner = |(u, v): (f64, f64)| {
                let (u, v) = (u * long / 2.0, v * wide / 2.0);
                // It leans from the outer wall on the left down to the outer wall below.
                (at(x, span_x) + u * c + v * s, at(y, span_y) - u * s + v * c)
            };
            self.holds(&[(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)].map(corner))
        };
        let index = |x: usize, y: usize, angle: usize| (angle * STEPS + y) * STEPS + x;
        let mut seen = vec![false; STEPS * STEPS * (ANGLES + 1)];
        let mut queue = VecDeque::new();
        // It starts wholly in the one hall, at any angle that it can have there.
        for angle in 0..=ANGLES {
            for x in 0..STEPS {
                let y = STEPS - 1;
                if at(x, span_x) <= self.from && free(x, y, angle) {
                    seen[index(x, y, angle)] = true;
                    queue.push_back((x, y, angle));
                }
            }
        }
        while let Some((x, y, angle)) = queue.pop_front() {
            if x == STEPS - 1 && at(y, span_y) <= self.to {
                return true;
            }
            let near = |one: usize, most: usize| [one.checked_sub(1), Some(one + 1).filter(|up| *up <= most)];
            let moves = near(x, STEPS - 1).into_iter().flatten().map(|x| (x, y, angle));
            let moves = moves.chain(near(y, STEPS - 1).into_iter().flatten().map(|y| (x, y, angle)));
            let moves = moves.chain(near(angle, ANGLES).into_iter().flatten().map(|angle| (x, y, angle)));
            // Both axes at once: along a wall a slanting piece must move so.
            let slants =
                [(-1, 1, 0), (1, -1, 0), (-1, 0, -1), (0, 1, -1), (0, -1, -1), (1, 0, -1), (1, -1, -1), (-1, -1, -1)];
            let slants =
                slants.into_iter().chain([(1, -1, 1), (-1, 1, 1), (-1, 1, -1), (1, 0, 1), (0, 1, 1), (0, -1, 1)]);
            let slant = |(dx, dy, da): (isize, isize, isize)| {
                let x = x.checked_add_signed(dx).filter(|it| *it < STEPS)?;
                let y = y.checked_add_signed(dy).filter(|it| *it < STEPS)?;
                let angle = angle.checked_add_signed(da).filter(|it| *it <= ANGLES)?;
                Some((x, y, angle))
            };
            for (x, y, angle) in moves.chain(slants.filter_map(slant)) {
                if !seen[index(x, y, angle)] && free(x, y, angle) {
                    seen[index(x, y, angle)] = true;
                    queue.push_back((x, y, angle));
                }
            }
        }
        false
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 24, failure_persistence: None, ..ProptestConfig::default() })]

    /// A twentieth shorter than the longest goes round; a fiftieth longer does not.
    #[test]
    fn the_longest_box_is_the_longest_that_moves_round(from in 0.8_f64..2.0, to in 0.8_f64..2.0, share in 0.0_f64..0.85) {
        let wide = share * from.min(to);
        let most = longest(from, to, wide);
        let corner = Corner { from, to };
        prop_assert!(corner.lets_through(0.95 * most, wide), "{from} {to} {wide}: {most} is too much");
        prop_assert!(!corner.lets_through(1.02 * most, wide), "{from} {to} {wide}: {most} is too little");
    }

    /// What is smaller in any way goes round too.
    #[test]
    fn a_narrower_box_may_be_longer(from in 0.5_f64..3.0, to in 0.5_f64..3.0, share in 0.0_f64..1.0, less in 0.0_f64..1.0) {
        let wide = share * from.min(to);
        prop_assert!(longest(from, to, wide * less) >= longest(from, to, wide) - 1e-9);
        prop_assert!(longest(from * 1.1, to, wide) >= longest(from, to, wide) - 1e-9);
        prop_assert!((longest(from, to, wide) - longest(to, from, wide)).abs() < 1e-9);
        prop_assert!(longest(from, to, wide) >= from.max(to));
    }
}

#[test]
fn what_is_too_wide_for_a_hall_does_not_turn_at_any_length() {
    assert_eq!(longest(900.0, 1200.0, 900.1), 0.0);
    assert_eq!(longest(900.0, 1200.0, f64::NAN), 0.0);
    // As wide as the narrower hall: it slides across the wider one.
    assert_eq!(longest(900.0, 1200.0, 900.0), 1200.0);
}
