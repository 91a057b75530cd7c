//! A size in words, with the returns of a corner sofa told apart where one figure does not hold for both.

use elbowroom_solver::Size;

/// `280 x 230 x 105`; where a return has a depth of its own or there are two, `280 x 95, return 170 x 85`,
/// `330 x 95, returns 180 x 95 and 160 x 95`. `times` stands between, `told` tells a length.
pub(crate) fn size(of: Size, times: &str, told: impl Fn(f64) -> String) -> String {
    let joined = |all: &[f64]| all.iter().map(|length| told(*length)).collect::<Vec<_>>().join(times);
    let Size { width, return_length, second_return, depth, return_depth } = of;
    let main = joined(&[width, depth]);
    let first = return_length.map(|length| joined(&[length, return_depth.unwrap_or(depth)]));
    match (first, second_return, return_depth) {
        (Some(first), Some(second), _) => format!("{main}, returns {first} and {}", joined(&[second, depth])),
        (Some(first), None, Some(_)) => format!("{main}, return {first}"),
        _ => joined(&[Some(width), return_length, Some(depth)].into_iter().flatten().collect::<Vec<_>>()),
    }
}

#[cfg(test)]
mod tests {
    use elbowroom_solver::Size;

    use super::size;

    #[test]
    fn returns_are_told_apart_where_one_figure_does_not_hold_for_both() {
        let told = |of: Size| size(of, " x ", |length| format!("{length:.0}"));
        let corner = Size { width: 280.0, return_length: Some(170.0), depth: 95.0, ..Size::default() };
        assert_eq!(told(Size { return_length: None, ..corner }), "280 x 95");
        assert_eq!(told(corner), "280 x 170 x 95");
        let chaise = Size { return_depth: Some(85.0), ..corner };
        assert_eq!(told(chaise), "280 x 95, return 170 x 85");
        let both = Size { second_return: Some(160.0), ..chaise };
        assert_eq!(told(both), "280 x 95, returns 170 x 85 and 160 x 95");
    }
}
