//! The best of several, the same one whatever rounding does.

/// Values nearer to each other than this are equal: scores, millimetres and degrees that are worked out in two ways from the
/// same places differ by some 1e-12.
const EQUAL: f64 = 1e-9;

/// The item of the greatest value; of those that are as great but for rounding, the first. `None` where there are none. For the
/// least, negate the value.
///
/// ```
/// use elbowroom_solver::best_by;
/// let walks = [("to the sofa", 3.2), ("to the desk", 5.1), ("to the window", 5.1 + 1e-12)];
/// assert_eq!(best_by(walks, |walk| walk.1), Some(("to the desk", 5.1)));
/// assert_eq!(best_by(walks, |walk| -walk.1), Some(("to the sofa", 3.2)));
/// ```
pub fn best_by<T>(items: impl IntoIterator<Item = T>, value: impl Fn(&T) -> f64) -> Option<T> {
    let valued = items.into_iter().map(|item| (value(&item), item));
    valued.reduce(|best, next| if next.0 > best.0 + EQUAL { next } else { best }).map(|(_, item)| item)
}
