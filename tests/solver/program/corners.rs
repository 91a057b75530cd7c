//! The optimum by brute force: every point where as many limits meet as there are variables.

use super::made::Made;

/// Slack allowed to a corner: it is solved for by elimination, in figures of some thousands.
const NEAR: f64 = 1e-7;

/// The best corner that keeps everything; none where none does. A bounded program that has a point has a best corner.
pub(super) fn best(made: &Made) -> Option<f64> {
    let variables = made.bounds.len();
    let limits = limits(made);
    let mut best: Option<f64> = None;
    for chosen in choices(limits.len(), variables) {
        let system: Vec<&(Vec<f64>, f64)> = chosen.iter().map(|index| &limits[*index]).collect();
        let Some(point) = meet(&system) else { continue };
        if limits.iter().all(|(normal, most)| dot(normal, &point) <= most + NEAR) {
            let worth = dot(&made.objective, &point);
            best = Some(best.map_or(worth, |best| best.max(worth)));
        }
    }
    best
}

/// Bounds and rows alike as `normal . x <= most`.
fn limits(made: &Made) -> Vec<(Vec<f64>, f64)> {
    let variables = made.bounds.len();
    let mut limits = Vec::new();
    for (variable, (lower, upper)) in made.bounds.iter().enumerate() {
        let mut normal = vec![0.0; variables];
        normal[variable] = 1.0;
        limits.push((normal.clone(), *upper));
        normal[variable] = -1.0;
        limits.push((normal, -lower));
    }
    for row in &made.rows {
        let mut normal = vec![0.0; variables];
        for (variable, coefficient) in &row.terms {
            normal[*variable] = *coefficient;
        }
        limits.push((normal, row.most));
    }
    limits
}

fn dot(left: &[f64], right: &[f64]) -> f64 {
    left.iter().zip(right).map(|(left, right)| left * right).sum()
}

/// Every way to take `few` of `0..many`.
fn choices(many: usize, few: usize) -> Vec<Vec<usize>> {
    if few == 0 {
        return vec![vec![]];
    }
    let mut all = Vec::new();
    for last in few - 1..many {
        for mut choice in choices(last, few - 1) {
            choice.push(last);
            all.push(choice);
        }
    }
    all
}

/// Where the limits meet, by Gauss-Jordan elimination with row exchange; none where they are as good as parallel.
fn meet(system: &[&(Vec<f64>, f64)]) -> Option<Vec<f64>> {
    let size = system.len();
    let mut matrix: Vec<Vec<f64>> =
        system.iter().map(|(normal, most)| normal.iter().copied().chain([*most]).collect()).collect();
    for column in 0..size {
        let pivot = (column..size).max_by(|a, b| matrix[*a][column].abs().total_cmp(&matrix[*b][column].abs()))?;
        if matrix[pivot][column].abs() < 1e-9 {
            return None;
        }
        matrix.swap(column, pivot);
        let pivot = matrix[column].clone();
        for (_, row) in matrix.iter_mut().enumerate().filter(|(index, _)| *index != column) {
            let factor = row[column] / pivot[column];
            for (entry, other) in row.iter_mut().zip(&pivot) {
                *entry -= factor * other;
            }
        }
    }
    Some((0..size).map(|index| matrix[index][size] / matrix[index][index]).collect())
}
