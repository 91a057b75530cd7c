//! Which way something lies on the plan, in words.

use crate::Point;

/// Less than this is no way at all, mm.
const NO_WAY: f64 = 0.05;

/// How far and which way on the plan: `3 cm to the right and 2 cm down the plan`. `told` tells a length.
///
/// ```
/// use elbowroom_model::Point;
/// use elbowroom_model::on_plan::on_plan;
/// let told = |length: f64| format!("{length:.0} mm");
/// assert_eq!(on_plan(Point::new(30.0, -20.0), told), "30 mm to the right and 20 mm down the plan");
/// assert_eq!(on_plan(Point::new(-60.0, 0.0), told), "60 mm to the left");
/// ```
pub fn on_plan(way: Point, told: impl Fn(f64) -> String) -> String {
    let one = |length: f64, [ahead, back]: [&str; 2]| {
        let way = if length > 0.0 { ahead } else { back };
        (length.abs() >= NO_WAY).then(|| format!("{} {way}", told(length.abs())))
    };
    let both = [one(way.x, ["to the right", "to the left"]), one(way.y, ["up the plan", "down the plan"])];
    both.into_iter().flatten().collect::<Vec<_>>().join(" and ")
}
