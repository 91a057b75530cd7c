//! Light on a screen: the windows that it mirrors and those that dazzle from behind it, more where the low sun comes in.

use elbowroom_model::{ItemId, Point};

use super::criteria_context::CriteriaContext;
use super::curve::Curve;
use super::on_wall::{OnWall, windows};
use super::sight::angle_between;
use super::sun::low_sun_through;

/// Glare to score: a window's width of it is much (ours, no source).
const GLARE: Curve = Curve(&[(0.0, 100.0), (45.0, 0.0)]);

/// Glare of one window that is less is not worth saying, degrees (ours, no source).
const GLARE_WORTH_SAYING: f64 = 2.0;

/// How far aside of straight ahead a window is mirrored by a screen, and dazzles behind one, degrees (ours, no source).
const MIRRORED_WITHIN: f64 = 60.0;
const DAZZLES_WITHIN: f64 = 40.0;

/// A window where no low sun comes in against one where it always does (ours, no source).
const SUNLESS: f64 = 0.6;
const SUNNY: f64 = 1.8;

/// Where a screen stands, and the way it faces.
pub(super) struct ScreenPlace {
    pub(super) middle: Point,
    pub(super) facing: Point,
}

/// The windows that the screen mirrors, and those that dazzle from behind it.
pub(super) struct Light {
    pub(super) mirrored: Glare,
    pub(super) behind: Glare,
}

/// The plan angle of windows in a bad place, degrees, as it counts with the sun, and the worst window.
#[derive(Default)]
pub(super) struct Glare {
    angle: f64,
    worst: Option<(ItemId, f64)>,
}

impl Light {
    /// `eye`: of one who watches from the middle of the group.
    pub(super) fn of(context: &CriteriaContext, eye: Point, screen: &ScreenPlace) -> Self {
        let mut light = Self { mirrored: Glare::default(), behind: Glare::default() };
        for (window, _) in windows(context.brief()) {
            let OnWall { id, item, left, right, .. } = window.on_wall;
            let sun =
                low_sun_through(context.brief(), item.wall).map_or(1.0, |share| SUNLESS + (SUNNY - SUNLESS) * share);
            let mirrored = Field { from: screen.middle, ahead: screen.facing, edge: MIRRORED_WITHIN };
            let behind = Field { from: eye, ahead: screen.middle - eye, edge: DAZZLES_WITHIN };
            light.mirrored.add(id, sun * mirrored.weighed_angle(left, right));
            light.behind.add(id, sun * behind.weighed_angle(left, right));
        }
        light
    }

    /// 0 to 100.
    pub(super) fn score(&self) -> f64 {
        GLARE.at(self.mirrored.angle + self.behind.angle)
    }
}

impl Glare {
    fn add(&mut self, window: ItemId, angle: f64) {
        self.angle += angle;
        if angle > self.worst.map_or(0.0, |(_, worst)| worst) {
            self.worst = Some((window, angle));
        }
    }

    /// The window that does most of it.
    pub(super) fn worth_saying(&self) -> Option<ItemId> {
        self.worst.filter(|(_, angle)| *angle > GLARE_WORTH_SAYING).map(|(window, _)| window)
    }
}

/// A look in which what lies straight ahead counts wholly, falling evenly to nothing at `edge` degrees aside.
struct Field {
    from: Point,
    ahead: Point,
    edge: f64,
}

impl Field {
    /// Plan angle between two marks as it counts, degrees.
    fn weighed_angle(&self, first: Point, second: Point) -> f64 {
        let signed = |mark: Point| {
            let way = mark - self.from;
            angle_between(self.ahead, way).copysign(self.ahead.cross(way))
        };
        let (a, b) = (signed(first), signed(second));
        let (low, high) = (a.min(b), a.max(b));
        if high - low > 180.0 {
            // The marks lie on either side of straight behind.
            return 0.0;
        }
        // Integral of the tent from 0 to x.
        let upto = |x: f64| {
            let x = x.clamp(-self.edge, self.edge);
            x - x * x.abs() / (2.0 * self.edge)
        };
        upto(high) - upto(low)
    }
}
