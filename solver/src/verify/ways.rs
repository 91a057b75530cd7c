//! Every route is there, as wide as it says and as wide as its rule asks: by letting a disc travel it.

use elbowroom_model::{Brief, Clearance, ItemId, ItemKind, LeadsTo};

use super::breach::{Breach, Wrong};
use super::checked_layout::{CheckedLayout, InPlace};
use super::mouth::Mouth;
use super::tolerance::{EXACT, NEEDED, SLACK};
use super::travel::{Gate, Target, travels};
use super::way::Way;
use crate::geometry::{Convex, apart};
use crate::layout::Layout;
use crate::routes::{End, Route};

/// Breaches of what the routes say of themselves: each is told, its figures are right, and it is wide enough.
pub(super) fn told(scene: &CheckedLayout<'_>, layout: &Layout, routes: &[Route]) -> Vec<Breach> {
    let check = |way: &Way| {
        let ends = |route: &&Route| [(route.from, route.to), (route.to, route.from)].contains(&(way.from, way.to));
        match routes.iter().find(ends) {
            Some(route) => figures(scene, layout, way, route),
            None => Some(way.breach(Wrong::NoRoute, way.asks)),
        }
    };
    ways(scene).iter().filter_map(check).collect()
}

/// Breaches of the widths that routes need, with the mouths of `layout` and the pieces as they stand in the scene.
pub(super) fn too_narrow(scene: &CheckedLayout<'_>, layout: &Layout) -> Vec<Breach> {
    let narrow = |way: &Way| {
        let obstacles = around(scene, layout, way);
        let passes = |diameter: f64| way.lets_pass(scene, layout, &obstacles, diameter - SLACK);
        // What passes with the furniture passes without it: the empty room is asked only where it does not.
        let wide = passes(way.asks) || needs(scene, layout, way).is_some_and(passes);
        (!wide).then(|| way.breach(Wrong::RouteTooNarrow, 0.0))
    };
    ways(scene).iter().filter_map(narrow).collect()
}

fn figures(scene: &CheckedLayout<'_>, layout: &Layout, way: &Way, route: &Route) -> Option<Breach> {
    let tell = |wrong: Wrong, short_by: f64| Some(way.breach(wrong, short_by));
    if !needs_as_told(scene, layout, way, route.needs) {
        return tell(Wrong::RouteNeedsOther, way.asks - route.needs);
    }
    if route.width < route.needs - NEEDED {
        return tell(Wrong::RouteTooNarrow, route.needs - route.width);
    }
    let obstacles = around(scene, layout, way);
    let surely = (route.width - EXACT).max(route.needs - SLACK);
    if !way.lets_pass(scene, layout, &obstacles, surely) {
        return tell(Wrong::RouteNarrower, EXACT);
    }
    if way.lets_pass(scene, layout, &obstacles, route.width + EXACT) {
        return tell(Wrong::RouteWider, EXACT);
    }
    None
}

/// Whether a route asks for its rule; to what is no piece it may ask for less, where the empty room gives no more.
/// (That the empty room gives as much follows when the furnished one does.)
fn needs_as_told(scene: &CheckedLayout<'_>, layout: &Layout, way: &Way, told: f64) -> bool {
    if (told - way.asks).abs() <= NEEDED {
        return true;
    }
    let less = told < way.asks && !matches!(way.to, End::Piece(_));
    less && !way.lets_pass(scene, layout, &scene.checked.bare, (told + EXACT).min(way.asks))
}

/// What the way needs: its rule; to what is no piece, the width in the empty room where that is less.
fn needs(scene: &CheckedLayout<'_>, layout: &Layout, way: &Way) -> Option<f64> {
    let is_the_way = |(known, _): &&(Way, f64)| (known.from, known.to) == (way.from, way.to);
    empty_widths(scene, layout).iter().find(is_the_way).map(|(_, width)| *width)
}

/// How wide the ways to doorways, windows and fixed things are with nothing in the room, where that is less than their rule.
fn empty_widths<'a>(scene: &'a CheckedLayout<'_>, layout: &Layout) -> &'a [(Way, f64)] {
    scene.checked.empty_widths.get_or_init(|| {
        let to_no_piece = ways(scene).into_iter().filter(|way| !matches!(way.to, End::Piece(_)));
        to_no_piece.filter_map(|way| Some((way, empty_width(scene, layout, &way)?))).collect()
    })
}

/// `None` where the empty room gives what the rule asks.
fn empty_width(scene: &CheckedLayout<'_>, layout: &Layout, way: &Way) -> Option<f64> {
    let passes = |diameter: f64| way.lets_pass(scene, layout, &scene.checked.bare, diameter);
    if passes(way.asks) {
        return None;
    }
    let (mut least, mut most) = (0.0, way.asks);
    while most - least > NEEDED {
        let middle = (least + most) / 2.0;
        if passes(middle) { least = middle } else { most = middle }
    }
    Some(least)
}

impl Way {
    fn gates(&self, scene: &CheckedLayout<'_>, layout: &Layout) -> Option<(Gate, Gate)> {
        let mouth = |end| Mouth::of(scene.checked, layout, end);
        let (from, to) = (mouth(self.from)?, mouth(self.to)?);
        Some((from.widened(self.asks, Some(&to)), to.widened(self.asks, Some(&from))))
    }

    /// Whether a disc of this diameter can travel it.
    pub(super) fn lets_pass(
        &self,
        scene: &CheckedLayout<'_>,
        layout: &Layout,
        obstacles: &[Convex],
        diameter: f64,
    ) -> bool {
        let Some((from, to)) = self.gates(scene, layout) else { return false };
        // No disc passes a mouth that is narrower: no need to look.
        diameter <= from.length().min(to.length()) && travels(obstacles, &from, &Target::Gate(to), diameter)
    }

    fn breach(&self, wrong: Wrong, short_by: f64) -> Breach {
        Breach::new(self.rule, wrong, &[self.from.into(), self.to.into()], short_by)
    }
}

/// From every entrance to every other doorway, to each fixed thing that people use, to each seat, storage front and desk, and
/// to each window that must be reached.
pub(super) fn ways(scene: &CheckedLayout<'_>) -> Vec<Way> {
    let (walkway, passage) = (Clearance::Walkway, Clearance::Passage);
    let mut all: Vec<Way> = Vec::new();
    let used: Vec<End> = scene.brief.room.used_floors().map(|(id, _)| End::Fixed(id)).collect();
    for from in entrances(scene.brief) {
        for (id, item) in scene.brief.room.items() {
            let to = End::Item(id);
            let known = all.iter().any(|way| way.from == to && way.to == from);
            let rule = match &item.kind {
                ItemKind::Door(_) | ItemKind::Opening(_) if to != from && !known => walkway,
                ItemKind::Window(window) if window.must_reach => passage,
                ItemKind::Window(window) if window.opens && scene.brief.rules.reach_opening_windows => passage,
                _ => continue,
            };
            all.push(Way { from, to, rule, asks: scene.rule(rule) });
        }
        all.extend(used.iter().map(|to| Way { from, to: *to, rule: passage, asks: scene.rule(passage) }));
        let led_to = scene.pieces.iter().filter(|piece| piece.piece.is_led_to());
        all.extend(led_to.map(|piece| Way {
            from,
            to: End::Piece(piece.placed.piece),
            rule: passage,
            asks: scene.rule(passage),
        }));
    }
    all
}

/// Doors and openings that lead to the way in.
pub(super) fn entrances(brief: &Brief) -> Vec<End> {
    let is_entrance = |id: &ItemId| {
        let leads_to = brief.room.item(*id).and_then(|item| item.kind.leads_to());
        leads_to == Some(&LeadsTo::Entrance)
    };
    brief.room.items().map(|(id, _)| id).filter(is_entrance).map(End::Item).collect()
}

/// What stops a disc on the way: rugs do not, nor does a coffee table that lies within a passage of the seat it leads
/// to, as laid out (where the mouth is).
pub(super) fn around(scene: &CheckedLayout<'_>, layout: &Layout, way: &Way) -> Vec<Convex> {
    let passage = scene.rule(Clearance::Passage);
    let front = match way.to {
        End::Piece(seat) if scene.brief.piece(seat).is_some_and(|seat| seat.kind.is_seat()) => layout.of(seat),
        End::Piece(_) | End::Item(_) | End::Fixed(_) => None,
    };
    let front = front.map(super::checked_layout::front_of);
    let own_table = |piece: &InPlace<'_>| {
        let table = layout.of(piece.placed.piece).filter(|_| piece.piece.kind.traits().moves_aside);
        let pair = front.as_ref().zip(table);
        pair.is_some_and(|(front, table)| apart(front, &table.main()) <= passage + NEEDED)
    };
    let mut all = scene.checked.bare.clone();
    let standing = scene.pieces.iter().filter(|piece| piece.piece.stops_walkers() && !own_table(piece));
    all.extend(standing.flat_map(|piece| piece.parts.iter().cloned()));
    all
}
