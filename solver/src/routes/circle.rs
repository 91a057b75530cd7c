//! A free circle to turn a wheelchair in, and the way to it. Coffee tables count neither against the circle nor on the
//! way, since they can be moved.

use elbowroom_model::{Brief, Clearance, Point, ring};

use super::End;
use super::demand::entrances;
use super::floor::{Floor, Tables};
use super::mouth::Mouth;
use super::obstacles::Obstacles;
use super::tolerance::ROUNDING;
use super::widest::{Widest, to_place};
use crate::geometry::{Bounds, Segment, equidistant, gap};
use crate::layout::Layout;

impl Floor {
    /// Whether the turning circle of the rule is free at `centre`; where no rule asks for one it always is.
    #[must_use]
    pub fn circle_is_free(&self, brief: &Brief, layout: &Layout, centre: Point) -> bool {
        let Some(diameter) = brief.rules.turning_circle() else { return true };
        Clear::new(self, brief, layout).is_free(centre, diameter / 2.0)
    }

    /// How wide a disc can travel from an entrance to a place on the floor, at most `walkway`.
    #[must_use]
    pub fn circle_width(&self, brief: &Brief, layout: &Layout, from: End, centre: Point) -> Widest {
        let walkway = brief.rules.get(Clearance::Walkway);
        let Some(mouth) = self.mouth(brief, layout, from) else { return Widest::closed(walkway) };
        Clear::new(self, brief, layout).width(mouth, walkway, centre)
    }

    /// Centre of a free turning circle that a disc of `walkway` can reach from an entrance: of the places where such a
    /// circle is held between two things the nearest to an entrance. Where there is no entrance, any of them. `None` where
    /// there is none, or no rule asks for one.
    #[must_use]
    pub fn find_circle(&self, brief: &Brief, layout: &Layout) -> Option<Point> {
        let radius = brief.rules.turning_circle()? / 2.0;
        let walkway = brief.rules.get(Clearance::Walkway);
        let entrances = self.entrances(brief, layout);
        let clear = Clear::new(self, brief, layout);
        let mut out_of_reach: Vec<Point> = Vec::new();
        for centre in nearest_first(clear.held_centres(radius), &entrances) {
            let reached = |mouth: &Mouth| clear.width(mouth.clone(), walkway, centre).passes();
            // What can be reached straight from a place that is out of reach is out of reach itself.
            let joined = |other: &Point| clear.leg_is_free(Segment::new(*other, centre), walkway / 2.0);
            if !clear.is_free(centre, radius) || out_of_reach.iter().any(joined) {
                continue;
            }
            if entrances.is_empty() || entrances.iter().any(reached) {
                return Some(centre);
            }
            out_of_reach.push(centre);
        }
        None
    }

    fn entrances(&self, brief: &Brief, layout: &Layout) -> Vec<Mouth> {
        let mouth = |from| self.mouth(brief, layout, End::Item(from));
        entrances(brief).into_iter().filter_map(mouth).collect()
    }
}

fn nearest_first(mut centres: Vec<Point>, entrances: &[Mouth]) -> Vec<Point> {
    let way = |centre: &Point| {
        let ways = entrances.iter().map(|mouth| (mouth.middle() - *centre).norm());
        ways.fold(f64::INFINITY, f64::min)
    };
    centres.sort_by(|a, b| way(a).total_cmp(&way(b)).then(a.x.total_cmp(&b.x)).then(a.y.total_cmp(&b.y)));
    centres
}

/// The floor with everything on it that cannot be moved aside.
struct Clear<'a> {
    floor: &'a Floor,
    obstacles: Obstacles,
}

impl<'a> Clear<'a> {
    fn new(floor: &'a Floor, brief: &Brief, layout: &Layout) -> Self {
        let left_out = Tables::None.left_out(brief, layout);
        let furniture = floor.furniture(brief, layout, &left_out);
        let obstacles = floor.fixed.with(furniture, brief.rules.get(Clearance::Walkway));
        Self { floor, obstacles }
    }

    fn width(&self, mouth: Mouth, walkway: f64, centre: Point) -> Widest {
        let mouth = self.floor.widened(mouth, walkway);
        let met = self.obstacles.met(std::slice::from_ref(&mouth), |_| true);
        to_place(&met, &mouth, centre, walkway)
    }

    /// Whether a disc of this radius lies in the room and touches nothing.
    fn is_free(&self, centre: Point, radius: f64) -> bool {
        self.holds(centre) && self.leg_is_free(Segment::new(centre, centre), radius)
    }

    /// Whether a disc of this radius can go straight from one place to another.
    fn leg_is_free(&self, leg: Segment, radius: f64) -> bool {
        let leg = leg.shape();
        let (bounds, near) = (Bounds::of(&leg), (radius - ROUNDING).max(0.0));
        let mut stops = self.obstacles.stops.iter();
        stops.all(|stop| stop.bounds.apart_by(&bounds, near) || gap(&stop.shape, &leg).clear >= near)
    }

    /// Whether the outline holds the place.
    fn holds(&self, place: Point) -> bool {
        let outline: Vec<Point> =
            self.floor.walls.iter().filter_map(|wall| wall.shape.corners().first().copied()).collect();
        ring::holds(&outline, place)
    }

    /// Every place where a circle is held between two things: where any is free there is a free one so held, since the
    /// places for its centre are bounded by the outlines of things moved outward, and end where two of these cross.
    fn held_centres(&self, radius: f64) -> Vec<Point> {
        let stops = &self.obstacles.stops;
        let mut centres = Vec::new();
        for (j, second) in stops.iter().enumerate() {
            for first in &stops[..j] {
                if !first.bounds.apart_by(&second.bounds, 2.0 * radius + ROUNDING) {
                    centres.extend(equidistant(&first.shape, &second.shape, radius));
                }
            }
        }
        centres
    }
}
