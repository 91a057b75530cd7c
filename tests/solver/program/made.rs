//! Programs made by number: room-like, dense, degenerate, and close to having no point at all.

use elbowroom_solver::program::{Row, tolerance};

/// A stream of numbers from a seed (splitmix64, G. L. Steele and others, 2014).
pub(super) struct Numbers(u64);

impl Numbers {
    pub(super) fn new(seed: u64) -> Self {
        Self(seed.wrapping_mul(0xD134_2543_DE82_EF95))
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut bits = self.0;
        bits = (bits ^ (bits >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        bits = (bits ^ (bits >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        bits ^ (bits >> 31)
    }

    /// Evenly within `low..high`.
    pub(super) fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * ((self.next() >> 11) as f64 / (1u64 << 53) as f64)
    }

    /// One of `0..many`.
    pub(super) fn below(&mut self, many: usize) -> usize {
        (self.next() % many.max(1) as u64) as usize
    }
}

/// A program that was made.
#[derive(Debug, Clone)]
pub(super) struct Made {
    pub(super) objective: Vec<f64>,
    pub(super) bounds: Vec<(f64, f64)>,
    pub(super) rows: Vec<Row>,
}

impl Made {
    /// The point keeps every bound exactly and every row as near as promised.
    #[track_caller]
    pub(super) fn assert_kept(&self, point: &[f64]) {
        for (value, (lower, upper)) in point.iter().zip(&self.bounds) {
            assert!(lower <= value && value <= upper, "{value} outside {lower}..{upper}");
        }
        for row in &self.rows {
            assert!(row.excess(point) <= tolerance::FEASIBLE, "{row:?} broken by {}", row.excess(point));
        }
    }

    /// Optimum by HiGHS; none where it is infeasible.
    #[cfg(feature = "highs")]
    pub(super) fn by_highs(&self) -> Option<f64> {
        let mut problem = highs::RowProblem::default();
        let columns = self.objective.iter().zip(&self.bounds);
        let columns: Vec<_> =
            columns.map(|(weight, (lower, upper))| problem.add_column(*weight, *lower..=*upper)).collect();
        for row in &self.rows {
            let terms: Vec<_> =
                row.terms.iter().map(|(variable, coefficient)| (columns[*variable], *coefficient)).collect();
            problem.add_row(..=row.most, terms);
        }
        let mut model = problem.optimise(highs::Sense::Maximise);
        model.make_quiet();
        model.set_option("threads", 1);
        model.set_option("primal_feasibility_tolerance", 1e-9);
        model.set_option("dual_feasibility_tolerance", 1e-9);
        let solved = model.solve();
        (solved.status() == highs::HighsModelStatus::Optimal).then(|| {
            let solution = solved.get_solution();
            self.objective.iter().zip(solution.columns()).map(|(weight, value)| weight * value).sum()
        })
    }
}

/// What can be made, for a seed and a most of variables.
pub(super) const FAMILIES: [fn(&mut Numbers, usize) -> Made; 4] = [room, dense, degenerate, tight];

/// Like a room: rectangles (x, y, w, d) in a box, apart from each other in one direction of any angle, sizes worth their
/// weight, positions next to nothing.
pub(super) fn room(numbers: &mut Numbers, most_variables: usize) -> Made {
    let pieces = 1 + numbers.below((most_variables / 4).max(1));
    let (length, width) = (numbers.between(3000.0, 7000.0), numbers.between(2500.0, 5000.0));
    let mut made = Made { objective: Vec::new(), bounds: Vec::new(), rows: Vec::new() };
    for piece in 0..pieces {
        let (w, d) = (numbers.between(300.0, 1500.0), numbers.between(300.0, 700.0));
        made.bounds.extend([(0.0, length), (0.0, width), (w, w * 1.8), (d, d * 1.5)]);
        let weight = numbers.between(0.2, 3.0);
        made.objective.extend([numbers.between(-1e-3, 1e-3), numbers.between(-1e-3, 1e-3), weight, weight]);
        let x = 4 * piece;
        made.rows.push(Row::at_most(vec![(x, 1.0), (x + 2, 1.0)], length));
        made.rows.push(Row::at_most(vec![(x + 1, 1.0), (x + 3, 1.0)], width));
    }
    for left in 0..pieces {
        for right in left + 1..pieces {
            let gap = numbers.between(0.0, 500.0);
            made.rows.push(apart(4 * left, 4 * right, numbers, gap));
        }
    }
    trim(made, most_variables)
}

/// All of one rectangle lies before all of another in some direction, a gap between: support functions are linear in sizes.
fn apart(left: usize, right: usize, numbers: &mut Numbers, gap: f64) -> Row {
    let angle: f64 = match numbers.below(6) {
        straight @ 0..4 => [0.0, 90.0, 180.0, 270.0][straight],
        _ => numbers.between(0.0, 360.0),
    };
    let (sin, cos) = angle.to_radians().sin_cos();
    let (sin, cos) = (if sin.abs() < 1e-12 { 0.0 } else { sin }, if cos.abs() < 1e-12 { 0.0 } else { cos });
    Row::at_most(
        vec![
            (left, cos),
            (left + 1, sin),
            (left + 2, cos.max(0.0)),
            (left + 3, sin.max(0.0)),
            (right, -cos),
            (right + 1, -sin),
            (right + 2, -cos.min(0.0)),
            (right + 3, -sin.min(0.0)),
        ],
        -gap,
    )
}

/// Full rows of any figures.
fn dense(numbers: &mut Numbers, most_variables: usize) -> Made {
    let variables = 1 + numbers.below(most_variables);
    let bounds: Vec<(f64, f64)> = (0..variables)
        .map(|_| {
            let lower = numbers.between(-1000.0, 1000.0);
            (lower, lower + numbers.between(0.0, 3000.0))
        })
        .collect();
    let rows = (0..1 + numbers.below(3 * variables))
        .map(|_| {
            let terms: Vec<(usize, f64)> =
                (0..variables).map(|variable| (variable, numbers.between(-2.0, 2.0))).collect();
            let least: f64 = terms.iter().zip(&bounds).map(|((_, c), (l, u))| (c * l).min(c * u)).sum();
            let most: f64 = terms.iter().zip(&bounds).map(|((_, c), (l, u))| (c * l).max(c * u)).sum();
            let share = numbers.between(0.25, 0.9);
            Row::at_most(terms, least + share * (most - least))
        })
        .collect();
    let objective = (0..variables).map(|_| numbers.between(-3.0, 3.0)).collect();
    Made { objective, bounds, rows }
}

/// Small whole figures, so that many rows meet in one point and many points are equally good.
fn degenerate(numbers: &mut Numbers, most_variables: usize) -> Made {
    let variables = 1 + numbers.below(most_variables);
    let bounds = (0..variables).map(|_| (0.0, numbers.below(4) as f64)).collect();
    let objective = (0..variables).map(|_| numbers.below(4) as f64 - 1.0).collect();
    let rows = (0..1 + numbers.below(3 * variables))
        .map(|_| {
            let terms: Vec<_> = (0..4).map(|_| (numbers.below(variables), numbers.below(3) as f64 - 1.0)).collect();
            Row::at_most(terms, numbers.below(4) as f64)
        })
        .collect();
    Made { objective, bounds, rows }
}

/// Every row passes through one point within the bounds, or a whole unit beside it: highly degenerate, or just infeasible.
fn tight(numbers: &mut Numbers, most_variables: usize) -> Made {
    let variables = 1 + numbers.below(most_variables);
    let point: Vec<f64> = (0..variables).map(|_| numbers.below(5) as f64).collect();
    let bounds = point.iter().map(|value| (value - numbers.below(3) as f64, value + numbers.below(3) as f64)).collect();
    let objective = (0..variables).map(|_| numbers.below(5) as f64 - 2.0).collect();
    let beside = if numbers.below(3) == 0 { 1.0 } else { 0.0 };
    let rows = (0..1 + numbers.below(2 * variables))
        .map(|_| {
            let terms: Vec<(usize, f64)> =
                (0..5).map(|_| (numbers.below(variables), numbers.below(5) as f64 - 2.0)).collect();
            let at: f64 = terms.iter().map(|(variable, coefficient)| coefficient * point[*variable]).sum();
            Row::at_most(terms, at - beside)
        })
        .collect();
    Made { objective, bounds, rows }
}

/// The first `most` variables and the rows that name no other.
fn trim(mut made: Made, most: usize) -> Made {
    made.objective.truncate(most);
    made.bounds.truncate(most);
    made.rows.retain(|row| row.fits(most));
    made
}
