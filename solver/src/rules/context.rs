//! The context that the rules stand on: the site, its hull and pockets, and the variables.

use elbowroom_model::{Brief, PieceId, Point, Rule, WallId};

use super::linear_outline::LinearOutline;
use super::requirement::{Cause, Requirement, With};
use super::separation;
use super::tolerance::{OPPOSITE, SAME_REACH};
use super::variables::Variables;
use crate::arrangement::Role;
use crate::geometry::{Convex, HalfPlane, Segment, hull_and_pockets};
use crate::program::Row;
use crate::site::{Body, BodyId, Site};

/// The walls as half-planes that always hold, and convex pockets to keep out of.
#[derive(Debug, Clone, PartialEq)]
pub struct Walls {
    /// Outward unit normal and support of each hull edge, with the wall along it where there is one.
    pub hull: Vec<(Point, f64, Option<WallId>)>,
    /// What the hull has more than the room, with a wall along it.
    pub pockets: Vec<(Convex, Option<WallId>)>,
}

/// All that a rule may look at.
#[derive(Debug, Clone, Copy)]
pub struct RuleContext<'a> {
    /// What was measured and asked.
    pub brief: &'a Brief,
    /// The room as the rules see it.
    pub site: &'a Site,
    /// The walls as half-planes and pockets.
    pub walls: &'a Walls,
    /// The seat that the arrangement is built about, by its place in the brief.
    pub main_seat: PieceId,
    /// What the screen does in the arrangement; `None` where it has none.
    pub screen: Option<Role>,
    /// The variables of its program.
    pub variables: &'a Variables,
}

impl Walls {
    /// The walls of a site.
    #[must_use]
    pub fn of(site: &Site) -> Self {
        let found = hull_and_pockets(&site.outline());
        let hull = found.hull.half_planes().into_iter().map(|HalfPlane { normal, support }| {
            let along = |id: &WallId| {
                site.wall(*id).is_some_and(|w| {
                    w.inward.dot(normal) < -1.0 + OPPOSITE && (w.start.dot(normal) - support).abs() < SAME_REACH
                })
            };
            (normal, support, site.walls.iter().map(|wall| wall.id).find(along))
        });
        let hull = hull.collect();
        let bounding = |pocket: &Convex| {
            let middle = pocket.middle();
            let distance =
                |id: WallId| site.wall(id).map_or(f64::INFINITY, |w| Segment::new(w.start, w.end).distance_to(middle));
            site.walls.iter().map(|wall| wall.id).min_by(|a, b| distance(*a).total_cmp(&distance(*b)))
        };
        let pockets = found.pockets.into_iter().map(|pocket| {
            let wall = bounding(&pocket);
            (pocket, wall)
        });
        Self { hull, pockets: pockets.collect() }
    }
}

impl RuleContext<'_> {
    /// `shape` of `piece` keeps inside the walls, `gap` off them.
    #[must_use]
    pub fn inside(&self, shape: &LinearOutline, piece: PieceId, rule: Rule, gap: f64) -> Vec<Requirement> {
        let cause = |wall: Option<WallId>| Cause { rule, piece, with: wall.map_or(With::Itself, With::Wall) };
        let row = |normal: Point, support: f64| -> Row { shape.reach(normal).at_most(support - gap) };
        let hull = self.walls.hull.iter();
        let mut found: Vec<Requirement> = hull
            .map(|(normal, support, wall)| Requirement::always(cause(*wall), vec![row(*normal, *support)]))
            .collect();
        let pockets = self.walls.pockets.iter();
        found.extend(pockets.map(|(pocket, wall)| Requirement {
            cause: cause(*wall),
            alternatives: separation::apart(&LinearOutline::fixed(pocket), shape, gap),
        }));
        found
    }

    /// `shape` of `piece` keeps `gap` off what stands there for good, where `counts` says so.
    #[must_use]
    pub fn off_bodies(
        &self,
        shape: &LinearOutline,
        piece: PieceId,
        rule: Rule,
        gap: f64,
        counts: impl Fn(&Body) -> bool,
    ) -> Vec<Requirement> {
        let bodies = self.site.bodies.iter().filter(|body| counts(body));
        let requirement = |body: &Body| Requirement {
            cause: Cause { rule, piece, with: with_body(body.id) },
            alternatives: separation::apart(&LinearOutline::fixed(&body.shape), shape, gap),
        };
        bodies.map(requirement).collect()
    }
}

impl RuleContext<'_> {
    /// `shape` of `piece` lies on one side of each step.
    #[must_use]
    pub fn off_steps(&self, shape: &LinearOutline, piece: PieceId, rule: Rule) -> Vec<Requirement> {
        let requirement = |step: &Body| Requirement {
            cause: Cause { rule, piece, with: with_body(step.id) },
            alternatives: separation::apart(&LinearOutline::fixed(&step.shape), shape, 0.0),
        };
        self.site.steps.iter().map(requirement).collect()
    }
}

/// What stands there, as a cause names it.
#[must_use]
pub(super) const fn with_body(id: BodyId) -> With {
    match id {
        BodyId::Fixed(id) => With::Fixed(id),
        BodyId::Item(id) => With::Item(id),
    }
}
