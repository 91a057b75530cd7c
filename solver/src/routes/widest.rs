//! The widest disc that can travel from one mouth to another, exactly.
//!
//! A disc passes exactly when no closed chain of stops, each nearer than its diameter to the next, separates the
//! mouths.

use elbowroom_model::Point;

use super::chain::{Chain, first_odd};
use super::cut::stops_of;
use super::joint::{Course, Joint};
use super::mouth::{Mouth, Owner};
use super::stop::Stop;
use super::{Pinch, ShapeId};

/// A route whose width falls short by less than this is wide enough, mm.
pub(super) const ENOUGH: f64 = 1e-6;

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
    let starts = [mouths[0].start(), mouths[1].start()];
    let cap = mouths[0].width().min(mouths[1].width());
    widest(walls, mouths, starts, things, (cap, needs))
}

/// The widest route from a mouth as widened to a place on the floor, not wider than `cap`.
#[must_use]
pub fn widest_to_place(walls: &[Stop], mouth: &Mouth, place: Point, things: &[Stop], cap: f64) -> Widest {
    let starts = [mouth.start(), place];
    widest(walls, std::slice::from_ref(mouth), starts, things, (cap.min(mouth.width()), cap))
}

fn widest(walls: &[Stop], mouths: &[Mouth], starts: [Point; 2], things: &[Stop], (cap, needs): (f64, f64)) -> Widest {
    let stops = stops_of(walls, mouths, things);
    let course = Course::new(mouths, starts);
    let mut joints = course.joints(&stops, cap);
    join_behind(&stops, mouths, &course, &mut joints);
    joints.sort_unstable_by(|a, b| a.gap.total_cmp(&b.gap).then(a.between.cmp(&b.between)));
    match first_odd(stops.len(), &joints) {
        None => Widest { width: cap, needs, pinch: None, chain: Vec::new(), links: Vec::new() },
        Some(chain) => limited(&stops, &joints, &chain, needs),
    }
}

/// A mouth's back is joined to its two ends and to what carries it, by a path that keeps behind its line.
fn join_behind(stops: &[Stop], mouths: &[Mouth], course: &Course<'_>, joints: &mut Vec<Joint>) {
    for (place, mouth) in mouths.iter().enumerate() {
        let back = 3 * place + 2;
        let Some(&[first, second]) = stops.get(back).map(|back| back.shape.corners()) else { continue };
        let heart = stops[back].heart;
        for (end, corner) in [(3 * place, first), (3 * place + 1, second)] {
            let at = stops[end].heart;
            let odd = course.is_odd(&[at, corner, heart]);
            joints.push(Joint { between: [end, back], gap: 0.0, at: [at, corner], odd });
        }
        let owner = stops.iter().position(|stop| mouth.owner == Owner::Shape(stop.id));
        if let Some(owner) = owner {
            let odd = course.is_odd(&[heart, stops[owner].heart]);
            joints.push(Joint { between: [back, owner], gap: 0.0, at: [heart, heart], odd });
        }
    }
}

fn limited(stops: &[Stop], joints: &[Joint], chain: &Chain, needs: f64) -> Widest {
    let mut links = Vec::with_capacity(chain.joints.len());
    let mut ids = Vec::with_capacity(chain.joints.len());
    for (&joint, &stop) in chain.joints.iter().zip(&chain.stops) {
        let Joint { between, gap, at, .. } = joints[joint];
        let forward = between[0] == stop;
        let (between, at) = if forward { (between, at) } else { ([between[1], between[0]], [at[1], at[0]]) };
        let between = between.map(|stop| stops[stop].id);
        if between[0] != between[1] || gap > 0.0 {
            links.push(Link { between, gap, at });
            ids.push(between[0]);
        }
    }
    ids.dedup();
    let pinch = links.first().map(|link| Pinch { between: link.between, at: link.at });
    let width = chain.joints.first().map_or(0.0, |joint| joints[*joint].gap);
    Widest { width, needs, pinch, chain: ids, links }
}
