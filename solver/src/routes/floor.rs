//! The floor of a room made ready once, so that the routes of many layouts can be measured on it.

use std::collections::BTreeMap;

use elbowroom_model::{Brief, Clearance, FixedId, ItemId, Piece, PieceId};

use super::demand::entrances;
use super::mouth::Mouth;
use super::obstacles::{FixedCut, Obstacles};
use super::stop::Stop;
use super::tolerance::ENOUGH;
use super::walk::walk_between;
use super::widest::{Widest, between, widest_between};
use super::{Demand, End, Route, ShapeId, demands, doorstep};
use crate::geometry::{Convex, gap};
use crate::layout::{Layout, Placed};
use crate::site::{BodyId, Leaf, Site};

/// What does not depend on a layout: walls, what stands for good, the mouths of doorways and windows, and how wide the
/// routes between these are in the empty room.
#[derive(Debug, Clone, PartialEq)]
pub struct Floor {
    pub(super) walls: Vec<Stop>,
    bodies: Vec<Stop>,
    /// Leaves that rest where a walker meets them; bodies too.
    leaves: Vec<Stop>,
    /// Walls and bodies with the gaps between them.
    pub(super) fixed: Obstacles,
    /// What the mouths of routes that stay where they are make of these; of some routes only where there are many.
    cuts: BTreeMap<Fixed, FixedCut>,
    /// One for each item on a wall; `None` for those that lead nowhere.
    mouths: Vec<Option<Mouth>>,
    /// One for each fixed thing; `None` for those that nobody uses.
    used: Vec<Option<Mouth>>,
    /// Width of each route that leads to no piece with nothing in the room, mm.
    empty: BTreeMap<Demand, f64>,
}

/// Routes of which as much as does not move is kept: rooms that people live in have fewer.
const MOST_KEPT: usize = 64;

/// What does not move of a route: an entrance, the other end where that is no piece, and the rule.
type Fixed = (ItemId, Option<End>, Clearance);

/// Which coffee tables a walker minds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Tables<'a> {
    /// All of them.
    All,
    /// All but those within `passage` of the front of the seat that the walker goes to.
    AllButBefore { seat: &'a Placed, passage: f64 },
    /// None: they can be moved.
    None,
}

impl Floor {
    /// The floor of a sound brief and its site.
    #[must_use]
    pub fn of(brief: &Brief, site: &Site) -> Self {
        let walls = site.walls.iter().map(|wall| Stop::stretch(ShapeId::Wall(wall.id), wall.start, wall.end));
        let leaf = |leaf: &Leaf| Stop::new(ShapeId::Item(leaf.item), leaf.shape.clone());
        let leaves: Vec<Stop> = site.leaves.iter().map(leaf).collect();
        let bodies = site.stopping(brief.rules.are_for_a_wheelchair()).map(|(id, shape)| {
            let id = match id {
                BodyId::Fixed(id) => ShapeId::Fixed(id),
                BodyId::Item(id) => ShapeId::Item(id),
            };
            Stop::new(id, shape.clone())
        });
        let mouths = brief.room.items().map(|(id, _)| doorstep::of_item(brief, site, id)).collect();
        let used = (0..brief.room.fixed.len()).map(|place| doorstep::of_fixed(brief, site, FixedId(place))).collect();
        let (walls, bodies): (Vec<Stop>, Vec<Stop>) = (walls.collect(), bodies.collect());
        let fixed = Obstacles::new(&walls, bodies.iter().cloned(), widest_rule(brief));
        let mut floor =
            Self { walls, bodies, leaves, fixed, cuts: BTreeMap::new(), mouths, used, empty: BTreeMap::new() };
        floor.measure_empty(brief);
        floor.cut(brief);
        floor
    }

    /// The widest route that a demand asks for, and the chain that keeps it from being wider. A route to what does not
    /// stand in the room is closed.
    #[must_use]
    pub fn widest(&self, brief: &Brief, layout: &Layout, demand: &Demand) -> Widest {
        let needs = self.needs(brief, demand);
        match self.mouths(brief, layout, demand) {
            Some(mouths) => {
                let things = self.things(brief, layout, Self::tables(brief, layout, demand));
                widest_between(&self.walls, &mouths, &things, needs)
            }
            None => Widest::closed(needs),
        }
    }

    /// The first route of a layout that is narrower than it must be, its width and the chain that keeps it so; `None`
    /// where every route is wide enough. Routes are told in the order of [`demands`].
    #[must_use]
    pub fn first_too_narrow(&self, brief: &Brief, layout: &Layout) -> Option<(Demand, Widest)> {
        let obstacles = self.fixed.with(self.furniture(brief, layout, &[]), widest_rule(brief));
        demands(brief, layout).into_iter().find_map(|demand| {
            let needs = self.needs(brief, &demand);
            let cut = self.cuts.get(&fixed_of(&demand));
            let kept = cut.and_then(|cut| <[Mouth; 2]>::try_from(cut.mouths.clone()).ok());
            let Some(mouths) = kept.or_else(|| self.mouths(brief, layout, &demand)) else {
                return Some((demand, Widest::closed(needs)));
            };
            let left_out = Self::tables(brief, layout, &demand).left_out(brief, layout);
            let counts = |id| !matches!(id, ShapeId::Part { piece, .. } if left_out.contains(&piece));
            let met = cut.and_then(|cut| obstacles.met_after(cut, &mouths, counts));
            let met = met.unwrap_or_else(|| obstacles.met(&mouths, counts));
            let found = between(&met, &mouths, needs, needs);
            (!found.passes()).then_some((demand, found))
        })
    }

    /// Every route that a layout must have, with its width and its length.
    #[must_use]
    pub fn routes(&self, brief: &Brief, layout: &Layout) -> Vec<Route> {
        demands(brief, layout).iter().map(|demand| self.route(brief, layout, demand)).collect()
    }

    /// A route with its width and its length.
    #[must_use]
    pub fn route(&self, brief: &Brief, layout: &Layout, demand: &Demand) -> Route {
        let needs = self.needs(brief, demand);
        let things = self.things(brief, layout, Self::tables(brief, layout, demand));
        let mouths = self.mouths(brief, layout, demand);
        let width = |mouths| widest_between(&self.walls, mouths, &things, needs);
        let found = mouths.as_ref().map_or_else(|| Widest::closed(needs), width);
        let passes = found.passes();
        let walk = |mouths| walk_between(&self.walls, mouths, &things, needs).map(|walk| walk.length);
        Route {
            from: End::Item(demand.from),
            to: demand.to,
            rule: demand.rule,
            needs,
            width: found.width,
            pinch: found.pinch,
            chain: found.chain,
            length: mouths.as_ref().filter(|_| passes).and_then(walk),
        }
    }

    /// What a route must have, mm: its rule, or what the empty room gives where that is less and neither
    /// end is a piece, since no furniture can mend that.
    #[must_use]
    pub fn needs(&self, brief: &Brief, demand: &Demand) -> f64 {
        let rule = brief.rules.get(demand.rule);
        self.empty.get(demand).map_or(rule, |empty| rule.min(*empty))
    }

    /// The mouth of one end as measured, not widened; `None` where the end is not in the room or leads nowhere.
    #[must_use]
    pub fn mouth(&self, brief: &Brief, layout: &Layout, end: End) -> Option<Mouth> {
        match end {
            End::Item(item) => self.mouths.get(item.0).cloned().flatten(),
            End::Fixed(fixed) => self.used.get(fixed.0).cloned().flatten(),
            End::Piece(piece) => doorstep::of_piece(brief, layout, piece),
        }
    }

    /// Both mouths of a route, widened to its rule.
    #[must_use]
    pub fn mouths(&self, brief: &Brief, layout: &Layout, demand: &Demand) -> Option<[Mouth; 2]> {
        let from = self.mouth(brief, layout, End::Item(demand.from))?;
        let to = self.mouth(brief, layout, demand.to)?;
        let also = match demand.to {
            End::Piece(piece) => layout.of(piece).map_or_else(Vec::new, |placed| parts(placed).skip(1).collect()),
            End::Item(_) | End::Fixed(_) => self.own_leaf(demand.to),
        };
        let own = self.own_leaf(End::Item(demand.from));
        Some(Mouth::widened_pair([from, to], brief.rules.get(demand.rule), &self.walls, [&own, &also]))
    }

    /// The leaf of a doorway: its mouth is not widened past it.
    fn own_leaf(&self, end: End) -> Vec<Stop> {
        let End::Item(item) = end else { return Vec::new() };
        self.leaves.iter().filter(|leaf| leaf.id == ShapeId::Item(item)).cloned().collect()
    }

    /// The mouth of a route that ends on open floor, widened to `rule`.
    pub(super) fn widened(&self, mouth: Mouth, rule: f64) -> Mouth {
        let own = self.own_leaf(mouth.end);
        mouth.widened(rule, &self.walls, &own)
    }

    /// Width of each route that leads to no piece with nothing in the room, mm.
    pub(super) fn empty_widths(&self) -> impl Iterator<Item = (&Demand, f64)> {
        self.empty.iter().map(|(demand, width)| (demand, *width))
    }

    /// Everything that stops a disc besides the walls. Rugs do not.
    pub(super) fn things(&self, brief: &Brief, layout: &Layout, tables: Tables<'_>) -> Vec<Stop> {
        let left_out = tables.left_out(brief, layout);
        self.bodies.iter().cloned().chain(self.furniture(brief, layout, &left_out)).collect()
    }

    /// The pieces that stop a disc, but those at these places in the brief.
    pub(super) fn furniture<'a>(
        &self,
        brief: &'a Brief,
        layout: &'a Layout,
        left_out: &'a [PieceId],
    ) -> impl Iterator<Item = Stop> + use<'a> {
        let stops = |piece: PieceId| brief.piece(piece).is_some_and(Piece::stops_walkers);
        let counts = move |placed: &&Placed| stops(placed.piece) && !left_out.contains(&placed.piece);
        layout.placed.iter().filter(counts).flat_map(parts)
    }

    /// The coffee tables that count on a way: `seat_to_table` is made to let one step in to a seat.
    pub(super) fn tables<'a>(brief: &Brief, layout: &'a Layout, demand: &Demand) -> Tables<'a> {
        let End::Piece(piece) = demand.to else { return Tables::All };
        let is_seat = brief.piece(piece).is_some_and(|piece| piece.kind.is_seat());
        match layout.of(piece).filter(|_| is_seat) {
            Some(seat) => Tables::AllButBefore { seat, passage: brief.rules.get(Clearance::Passage) },
            None => Tables::All,
        }
    }

    fn measure_empty(&mut self, brief: &Brief) {
        let empty = Layout::default();
        for demand in demands(brief, &empty) {
            let width = self.widest(brief, &empty, &demand).width;
            self.empty.insert(demand, width);
        }
    }

    /// Cuts what stands for good at the mouths that stay where they are.
    fn cut(&mut self, brief: &Brief) {
        let limit = widest_rule(brief);
        let empty = Layout::default();
        for demand in demands(brief, &empty).into_iter().take(MOST_KEPT) {
            if let Some(mouths) = self.mouths(brief, &empty, &demand) {
                self.cuts.insert(fixed_of(&demand), FixedCut::new(&self.fixed, mouths.into(), limit));
            }
        }
        for from in entrances(brief).into_iter().take(MOST_KEPT) {
            if let Some(mouth) = self.mouth(brief, &empty, End::Item(from)) {
                let mouth = self.widened(mouth, brief.rules.get(Clearance::Passage));
                self.cuts.insert((from, None, Clearance::Passage), FixedCut::new(&self.fixed, vec![mouth], limit));
            }
        }
    }
}

/// The widest that any route must be, mm.
fn widest_rule(brief: &Brief) -> f64 {
    brief.rules.get(Clearance::Walkway).max(brief.rules.get(Clearance::Passage))
}

const fn fixed_of(demand: &Demand) -> Fixed {
    let to = match demand.to {
        End::Item(_) | End::Fixed(_) => Some(demand.to),
        End::Piece(_) => None,
    };
    (demand.from, to, demand.rule)
}

impl Tables<'_> {
    /// The coffee tables that do not count, by their place in the brief.
    pub(super) fn left_out(self, brief: &Brief, layout: &Layout) -> Vec<PieceId> {
        let is_table =
            |placed: &&Placed| brief.piece(placed.piece).is_some_and(|piece| piece.kind.traits().moves_aside);
        let tables = layout.placed.iter().filter(is_table);
        tables.filter(|table| !self.count(table)).map(|table| table.piece).collect()
    }

    fn count(self, table: &Placed) -> bool {
        match self {
            Self::All => true,
            Self::None => false,
            Self::AllButBefore { seat, passage } => {
                let (left, right) = seat.front();
                let front = Convex::counter_clockwise([left, right]);
                gap(&table.main(), &front).clear > passage + ENOUGH
            }
        }
    }
}

/// The parts of a piece as what stops a disc.
fn parts(placed: &Placed) -> impl Iterator<Item = Stop> + use<> {
    let piece = placed.piece;
    let stop = move |(part, shape)| Stop::new(ShapeId::Part { piece, part }, shape);
    placed.parts().into_iter().enumerate().map(stop)
}

/// Every route that a layout must have, with its width and its length.
#[must_use]
pub fn all(brief: &Brief, site: &Site, layout: &Layout) -> Vec<Route> {
    Floor::of(brief, site).routes(brief, layout)
}
