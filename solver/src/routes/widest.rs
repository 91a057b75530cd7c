//! The widest disc that can travel from one mouth to another, exactly.
//!
//! A disc passes exactly when no closed chain of stops, each nearer than its diameter to the next, separates the
//! mouths.

use elbowroom_model::Point;

use super::chain::{Chain, first_odd, has_odd};
use super::joint::{Course, Joint};
use super::mouth::{Mouth, Owner};
use super::obstacles::{Met, Obstacles};
use super::stop::Stop;
use super::tolerance::ENOUGH;
use super::{Pinch, ShapeId};

/// How wide a route is, and what keeps it from being wider.
#[derive(Debug, Clone, PartialEq)]
pub struct Widest {
    /// Diameter of the widest disc that can travel it, mm; at most the narrower of its mouths as widened.
    pub width: f64,
    /// What it must have, mm.
    pub needs: f64,
    /// Where it is narrowest; `None` where nothing but its own mouths limits it.
    pub pinch: Option<Pinch>,
    /// What stops anything wider, in the order of the chain; empty where nothing but the mouths does.
    pub chain: Vec<ShapeId>,
    /// The gaps of the chain: at least one of them must open for the route to grow.
    pub links: Vec<Link>,
}

/// A gap between two neighbours of a chain.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Link {
    /// What stands on either side.
    pub between: [ShapeId; 2],
    /// How far apart they are, mm.
    pub gap: f64,
    /// The nearest places on the two.
    pub at: [Point; 2],
}

impl Widest {
    /// A route that is not there at all.
    #[must_use]
    pub const fn closed(needs: f64) -> Self {
        Self { width: 0.0, needs, pinch: None, chain: Vec::new(), links: Vec::new() }
    }

    /// Whether the route is as wide as it must be.
    #[must_use]
    pub fn passes(&self) -> bool {
        self.width >= self.needs - ENOUGH
    }
}

/// The widest route between two mouths as widened: `walls` as whole stretches, clockwise, `things` whatever else stops
/// a disc.
#[must_use]
pub fn widest_between(walls: &[Stop], mouths: &[Mouth; 2], things: &[Stop], needs: f64) -> Widest {
    let cap = mouths[0].width().min(mouths[1].width());
    let obstacles = Obstacles::new(walls, things.iter().cloned(), cap);
    between(&obstacles.met(mouths, |_| true), mouths, cap, needs)
}

/// The widest route between two mouths, where it is narrower than `cap`.
pub(super) fn between(met: &Met<'_>, mouths: &[Mouth; 2], cap: f64, needs: f64) -> Widest {
    let course = Course::new(mouths, [mouths[0].start(), mouths[1].start()]);
    let cap = cap.min(mouths[0].width()).min(mouths[1].width());
    widest(met, mouths, &course, cap, needs)
}

/// The widest route from a mouth as widened to a place on the floor, not wider than `needs`.
pub(super) fn to_place(met: &Met<'_>, mouth: &Mouth, place: Point, needs: f64) -> Widest {
    let mouths = std::slice::from_ref(mouth);
    widest(met, mouths, &Course::new(mouths, [mouth.start(), place]), needs.min(mouth.width()), needs)
}

fn widest(met: &Met<'_>, mouths: &[Mouth], course: &Course<'_>, cap: f64, needs: f64) -> Widest {
    let mut joints = course.joints(met, cap);
    join_behind(met, mouths, course, &mut joints);
    // Most ways are wide enough, which is seen without sorting.
    let chain = has_odd(met.places(), &joints).then(|| {
        joints.sort_unstable_by(|a, b| a.gap.total_cmp(&b.gap).then(a.between.cmp(&b.between)));
        first_odd(met.places(), &joints)
    });
    match chain.flatten() {
        None => Widest { width: cap, needs, pinch: None, chain: Vec::new(), links: Vec::new() },
        Some(chain) => limited(met, &joints, &chain, needs),
    }
}

/// A mouth's back is joined to its two ends and to what carries it, by a path that keeps behind its line.
fn join_behind(met: &Met<'_>, mouths: &[Mouth], course: &Course<'_>, joints: &mut Vec<Joint>) {
    for (place, mouth) in mouths.iter().enumerate() {
        let first = met.mouth(place);
        let place_of_back = first + 2;
        let Some(back) = met.stop(place_of_back) else { continue };
        for (end, corner) in (first..place_of_back).zip(back.shape.corners().iter().copied()) {
            let Some(at) = met.stop(end).map(|stop| stop.heart) else { continue };
            let odd = course.is_odd(&[at, corner, back.heart]);
            joints.push(Joint { between: [end, place_of_back], gap: 0.0, at: [at, corner], odd });
        }
        let carries = |stop: &Stop| mouth.owner == Owner::Shape(stop.id);
        let owner = (0..met.places()).find_map(|place| Some((place, met.stop(place).filter(|stop| carries(stop))?)));
        if let Some((place, owner)) = owner {
            let odd = course.is_odd(&[back.heart, owner.heart]);
            joints.push(Joint { between: [place_of_back, place], gap: 0.0, at: [back.heart, back.heart], odd });
        }
    }
}

fn limited(met: &Met<'_>, joints: &[Joint], chain: &Chain, needs: f64) -> Widest {
    let mut links = Vec::with_capacity(chain.joints.len());
    for (&joint, &stop) in chain.joints.iter().zip(&chain.stops) {
        let joint = &joints[joint];
        let Some((between, at)) = joint.ids(met, stop) else { continue };
        if between[0] != between[1] || joint.gap > 0.0 {
            links.push(Link { between, gap: joint.gap, at });
        }
    }
    let mut ids: Vec<ShapeId> = links.iter().map(|link| link.between[0]).collect();
    ids.dedup();
    let pinch = links.first().map(|link| Pinch { between: link.between, at: link.at });
    let width = chain.joints.first().map_or(0.0, |joint| joints[*joint].gap);
    Widest { width, needs, pinch, chain: ids, links }
}
