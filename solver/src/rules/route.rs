//! A way through that is too narrow, as a requirement: one of the gaps of the chain that blocks it must open, or a
//! piece of the chain must change sides.

use std::collections::BTreeSet;

use elbowroom_model::{Clearance, ItemId, PieceId, Point, WallId};

use super::linear::{Linear, LinearPoint};
use super::linear_outline::LinearOutline;
use super::requirement::{Alternative, Cause, Requirement, With};
use super::separation::{apart, beyond};
use super::tolerance::{AT_END, REACHES_IN, RELAXED};
use super::{Pose, RuleContext};
use crate::geometry::Convex;
use crate::layout::Layout;
use crate::routes::{Demand, ENOUGH, End, Floor, Link, Mouth, ShapeId, Widest, entrances};
use crate::site::BodyId;

/// What would widen a route.
#[derive(Debug, Clone, PartialEq)]
pub struct Widening {
    /// At least one of these must hold for the route to be wide enough.
    pub requirement: Requirement,
    /// No other change could widen it, as long as what is `behind` the chain stays there.
    pub is_exhaustive: bool,
    /// The pieces of a chain that closes between walls and parts two doorways or windows: it does so wherever they stand.
    pub bars: Option<Vec<PieceId>>,
    /// The piece that the way ends at, where it does.
    pub behind: Option<Behind>,
}

/// A piece behind a chain of others. It could come to stand on the other side of that with no gap of it opened: but not while
/// it stays on its side of each of them, and of what stands for good, since a gap is convex in all that moves: between any two
/// layouts in which the chain is closed it is closed all along, and what is not narrower than it cannot pass.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Behind {
    /// The piece.
    pub piece: PieceId,
    /// The others.
    pub chain: Vec<PieceId>,
    /// It may be narrower than what is asked for, and so than a gap that is too narrow.
    pub may_slip_by: bool,
}

/// The first route of `layout` that is too narrow, and what would widen it; `None` where all are wide enough.
#[must_use]
pub fn first_too_narrow(
    context: &RuleContext<'_>,
    floor: &Floor,
    poses: &[&Pose],
    layout: &Layout,
) -> Option<Widening> {
    let (demand, widest) = floor.first_too_narrow(context.brief, layout)?;
    Some(RouteContext { context, floor, poses, layout, demand }.widening(&widest))
}

/// What would let a walker reach a turning circle; `None` where one can be reached already, or none is asked for.
#[must_use]
pub fn circle_out_of_reach(
    context: &RuleContext<'_>,
    floor: &Floor,
    poses: &[&Pose],
    layout: &Layout,
) -> Option<Widening> {
    let centre = layout.turning_circle?;
    let widths: Vec<(ItemId, Widest)> = entrances(context.brief)
        .into_iter()
        .map(|from| (from, floor.circle_width(context.brief, layout, End::Item(from), centre)))
        .collect();
    let is_reached = |(_, widest): &(ItemId, Widest)| widest.passes();
    if widths.is_empty() || widths.iter().any(is_reached) || floor.find_circle(context.brief, layout).is_some() {
        return None;
    }
    let (from, widest) = widths.into_iter().max_by(|a, b| a.1.width.total_cmp(&b.1.width))?;
    let demand = Demand { from, to: End::Piece(context.main_seat), rule: Clearance::Walkway };
    let scene = RouteContext { context, floor, poses, layout, demand };
    let links = widest.links.iter().filter(|link| link.gap < widest.needs - ENOUGH);
    let alternatives = links.flat_map(|link| scene.opened(link, widest.needs - RELAXED, None)).collect();
    let cause = Cause { rule: Clearance::TurningCircle.into(), piece: context.main_seat, with: With::Itself };
    Some(Widening { requirement: Requirement { cause, alternatives }, is_exhaustive: false, bars: None, behind: None })
}

/// One route of one layout.
struct RouteContext<'a> {
    context: &'a RuleContext<'a>,
    floor: &'a Floor,
    poses: &'a [&'a Pose],
    layout: &'a Layout,
    demand: Demand,
}

impl RouteContext<'_> {
    fn widening(&self, widest: &Widest) -> Widening {
        let mouths = self.floor.mouths(self.context.brief, self.layout, &self.demand);
        let mut alternatives = Vec::new();
        for link in widest.links.iter().filter(|link| link.gap < widest.needs - ENOUGH) {
            alternatives.extend(self.opened(link, widest.needs - RELAXED, mouths.as_ref()));
        }
        if let (Some(mouths), End::Piece(seat)) = (&mouths, self.demand.to) {
            alternatives.extend(self.other_sides(widest, seat, &mouths[1]));
            alternatives.extend(self.at_the_seat(widest, seat));
        }
        let piece = widest.links.iter().find_map(moving_piece).unwrap_or(self.context.main_seat);
        let cause = Cause { rule: self.demand.rule.into(), piece, with: With::Route(self.demand) };
        let is_anchored = widest.chain.iter().any(|shape| !matches!(shape, ShapeId::Part { .. }));
        let is_lasting = is_anchored && matches!(self.demand.to, End::Item(_));
        let bars = is_lasting.then(|| pieces_of(&widest.chain));
        let behind = self.behind(widest);
        Widening { requirement: Requirement { cause, alternatives }, is_exhaustive: is_anchored, bars, behind }
    }

    fn behind(&self, widest: &Widest) -> Option<Behind> {
        let End::Piece(piece) = self.demand.to else { return None };
        let chain = pieces_of(&widest.chain).into_iter().filter(|other| *other != piece).collect();
        let may_slip_by =
            self.context.brief.piece(piece).is_none_or(|of| of.width.least.min(of.depth.least) < widest.needs);
        Some(Behind { piece, chain, may_slip_by })
    }

    /// The ways to open one gap; none where neither side can move.
    fn opened(&self, link: &Link, gap: f64, mouths: Option<&[Mouth; 2]>) -> Vec<Alternative> {
        if link.between.iter().all(|shape| !self.can_move(*shape)) || link.between[0] == link.between[1] {
            return Vec::new();
        }
        let [first, second] = [0, 1].map(|side| self.outline(link.between[side], link.at[side], mouths));
        match (first, second) {
            (Some(first), Some(second)) => apart(&first, &second, gap),
            _ => Vec::new(),
        }
    }

    /// The pieces next to a seat in the chain, on another side of its mouth than now: that unblocks with no gap opened.
    fn other_sides(&self, widest: &Widest, seat: PieceId, mouth: &Mouth) -> Vec<Alternative> {
        let Some(seat_pose) = self.pose(seat) else { return Vec::new() };
        let is_seat = |shape: ShapeId| {
            matches!(shape, ShapeId::Part { piece, .. } if piece == seat) || shape == ShapeId::Mouth(self.demand.to)
        };
        let mut neighbours: Vec<(PieceId, usize)> = Vec::new();
        for link in &widest.links {
            for (one, other) in [(link.between[0], link.between[1]), (link.between[1], link.between[0])] {
                if let (true, ShapeId::Part { piece, part }) = (is_seat(one), other)
                    && piece != seat
                    && !neighbours.contains(&(piece, part))
                {
                    neighbours.push((piece, part));
                }
            }
        }
        let sides = neighbours.into_iter().filter_map(|(piece, part)| {
            let outline = self.pose(piece)?.parts.get(part)?;
            let placed = self.layout.of(piece)?;
            let shape = placed.parts().get(part)?.clone();
            Some(self.sides(seat_pose, mouth, outline, &shape))
        });
        sides.flatten().collect()
    }

    /// A table of the chain so near to the seat that one steps in past it: then it bars no way there. Rows that hold wherever
    /// it is so near; past a corner it may be further still.
    fn at_the_seat(&self, widest: &Widest, seat: PieceId) -> Vec<Alternative> {
        let Some(seat) = self.pose(seat) else { return Vec::new() };
        let moves_aside =
            |piece: &PieceId| self.context.brief.piece(*piece).is_some_and(|piece| piece.kind.traits().moves_aside);
        let tables = pieces_of(&widest.chain).into_iter().filter(moves_aside);
        tables.filter_map(|table| self.within_a_passage(seat, self.pose(table)?)).collect()
    }

    /// `table` no further than a passage from the front of `seat`, as far as rectangles tell.
    fn within_a_passage(&self, seat: &Pose, table: &Pose) -> Option<Alternative> {
        let (body, table) = (seat.parts.first()?, table.parts.first()?);
        let passage = self.context.brief.rules.get(Clearance::Passage) + ENOUGH;
        let front = seat.anchor.clone().moved(seat.stand.facing, &seat.depth());
        let (ahead, along) = (seat.stand.facing, seat.along());
        let no_further = |reach: Linear, way: Point| reach.plus(&table.reach(-way), 1.0).at_least(-passage);
        let along_front = [along, -along].map(|way| no_further(body.reach(way), way));
        let before_front = [ahead, -ahead].map(|way| no_further(front.along(way), way));
        Some(Alternative::of_rows(along_front.into_iter().chain(before_front).collect()))
    }

    /// Beyond either end of the mouth, or before it: those of the three that do not hold now.
    fn sides(&self, seat: &Pose, mouth: &Mouth, outline: &LinearOutline, shape: &Convex) -> Vec<Alternative> {
        let along = mouth.along();
        let ends = mouth.stretch.map(|end| self.at_front(seat, end));
        let (low, high) = (mouth.stretch[0].dot(along), mouth.stretch[1].dot(along));
        let (ends, low, high) =
            if low < high { (ends, low, high) } else { ([ends[1].clone(), ends[0].clone()], high, low) };
        let (from, to) = (-shape.support(-along), shape.support(along));
        let point = |corner: &LinearPoint| LinearOutline { corners: vec![corner.clone()], normals: Vec::new() };
        let mut found = Vec::new();
        if from < high - AT_END {
            found.push(beyond(&point(&ends[1]), outline, along, 0.0));
        }
        if to > low + AT_END {
            found.push(beyond(&point(&ends[0]), outline, -along, 0.0));
        }
        if from >= high - AT_END || to <= low + AT_END {
            let near = ends[1].along(along).plus(&outline.reach(-along), 1.0).at_least(REACHES_IN);
            let far = outline.reach(along).plus(&ends[0].along(along), -1.0).at_least(REACHES_IN);
            found.push(Alternative::of_rows(vec![near, far]));
        }
        found
    }

    fn can_move(&self, shape: ShapeId) -> bool {
        matches!(shape, ShapeId::Part { .. } | ShapeId::Mouth(End::Piece(_)))
    }

    fn outline(&self, shape: ShapeId, at: Point, mouths: Option<&[Mouth; 2]>) -> Option<LinearOutline> {
        match shape {
            ShapeId::Part { piece, part } => self.pose(piece)?.parts.get(part).cloned(),
            ShapeId::Wall(wall) => self.stretch(wall, at, mouths),
            ShapeId::Fixed(id) => self.body(BodyId::Fixed(id)),
            ShapeId::Item(id) => self.body(BodyId::Item(id)),
            ShapeId::Mouth(End::Piece(seat)) => {
                let corner = self.at_front(self.pose(seat)?, at);
                Some(LinearOutline { corners: vec![corner], normals: Vec::new() })
            }
            ShapeId::Mouth(End::Item(_) | End::Fixed(_)) => {
                Some(LinearOutline::fixed(&Convex::counter_clockwise([at])))
            }
        }
    }

    /// A place on a seat's front, as it moves with the seat: at the inner side of a return, or so far from the anchor.
    fn at_front(&self, seat: &Pose, at: Point) -> LinearPoint {
        let front = seat.anchor.clone().moved(seat.stand.facing, &seat.depth());
        let Some(placed) = self.layout.of(seat.id) else { return front };
        let along = (at - placed.anchor).dot(seat.along());
        let ((from, to), (low, high)) = (placed.size.bay(), seat.bay());
        let offset = if seat.hand.is_some() && (along - from).abs() < AT_END {
            low
        } else if seat.second_return().is_some() && (along - to).abs() < AT_END {
            high
        } else {
            Linear::constant(along)
        };
        front.moved(seat.along(), &offset)
    }

    /// The straight stretch of a wall that `at` lies on, cut at the mouths of this route.
    fn stretch(&self, wall: WallId, at: Point, mouths: Option<&[Mouth; 2]>) -> Option<LinearOutline> {
        let site = self.context.site.wall(wall)?;
        let place = |point: Point| (point - site.start).dot(site.along);
        let (mut low, mut high) = (0.0, (site.end - site.start).norm());
        for mouth in mouths.into_iter().flatten().filter(|mouth| self.is_on(mouth, wall)) {
            let (a, b) = (place(mouth.stretch[0]), place(mouth.stretch[1]));
            if place(at) <= a.min(b) + AT_END {
                high = a.min(b).min(high);
            } else {
                low = a.max(b).max(low);
            }
        }
        let ends = [low, high].map(|along| site.start + site.along * along);
        Some(LinearOutline::fixed(&Convex::counter_clockwise(ends)))
    }

    fn is_on(&self, mouth: &Mouth, wall: WallId) -> bool {
        let End::Item(item) = mouth.end else { return false };
        self.context.brief.room.item(item).is_some_and(|item| item.wall == wall)
    }

    fn body(&self, id: BodyId) -> Option<LinearOutline> {
        self.context.site.stopping(true).find(|(body, _)| *body == id).map(|(_, shape)| LinearOutline::fixed(shape))
    }

    fn pose(&self, piece: PieceId) -> Option<&Pose> {
        self.poses.iter().find(|pose| pose.id == piece).copied()
    }
}

/// The pieces of a chain, each once.
fn pieces_of(chain: &[ShapeId]) -> Vec<PieceId> {
    let piece = |shape: &ShapeId| if let ShapeId::Part { piece, .. } = shape { Some(*piece) } else { None };
    chain.iter().filter_map(piece).collect::<BTreeSet<_>>().into_iter().collect()
}

/// A piece of a link.
fn moving_piece(link: &Link) -> Option<PieceId> {
    link.between.iter().find_map(|shape| match shape {
        ShapeId::Part { piece, .. } | ShapeId::Mouth(End::Piece(piece)) => Some(*piece),
        ShapeId::Wall(_) | ShapeId::Fixed(_) | ShapeId::Item(_) | ShapeId::Mouth(End::Item(_) | End::Fixed(_)) => None,
    })
}
