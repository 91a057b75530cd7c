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

/// A window faces or backs a screen where its middle lies so far aside of straight ahead or straight behind at most,
/// degrees: it counts wholly in line and falls evenly to nothing there (ours, no source); one beside the screen does neither.
const IN_LINE: Curve = Curve(&[(0.0, 1.0), (45.0, 0.0)]);

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
    pub(super) fn of(context: &CriteriaContext, screen: &ScreenPlace) -> Self {
        let mut light = Self { mirrored: Glare::default(), behind: Glare::default() };
        for (window, _) in windows(context.brief()) {
            let OnWall { id, item, left, right, .. } = window.on_wall;
            let sun =
                low_sun_through(context.brief(), item.wall).map_or(1.0, |share| SUNLESS + (SUNNY - SUNLESS) * share);
            let to = |mark: Point| mark - screen.middle;
            let fills = sun * angle_between(to(left), to(right));
            let aside = |ahead: Point| angle_between(ahead, to(window.on_wall.middle()));
            light.mirrored.add(id, fills * IN_LINE.at(aside(screen.facing)));
            light.behind.add(id, fills * IN_LINE.at(aside(-screen.facing)));
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
