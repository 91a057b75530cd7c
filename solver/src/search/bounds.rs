//! Bounds of a problem's variables at the root: places within the room, sizes within their ranges and aims.

use elbowroom_model::{Dimension, PieceId};

use super::aim::Aim;
use super::easing::Easing;
use super::problem::Problem;
use super::tolerance::HELD_WITHIN;
use crate::composition::Aims;
use crate::layout::Layout;
use crate::rules::{CostSlot, SizeVariables, Variables};

impl Problem<'_> {
    /// Bounds of the variables at the root: places within the room where a piece has one stand only.
    pub(super) fn bounds(&self) -> Vec<(f64, f64)> {
        let mut bounds = self.context.variables.bounds.clone();
        match &self.aims {
            Some(aims) => aim_sizes(self.context.variables, aims, &mut bounds),
            None => free_of_terms(self.context.variables, self.asked.easing, &mut bounds),
        }
        match self.aim {
            Aim::Tidy(layout) => hold_sizes(self.context.variables, layout, &mut bounds),
            Aim::Within(plan) => {
                hold_sizes(self.context.variables, &plan.layout, &mut bounds);
                self.hold_width_of_u(&plan.layout, &mut bounds);
            }
            Aim::Alone(_, _, layout) => self.hold_width_of_u(layout, &mut bounds),
            _ => {}
        }
        for ways in &self.ways {
            if let ([only], false) = (&ways.states[..], ways.may_be_left_out) {
                for (variable, range) in self.states[*only].posed.place {
                    bounds[variable] = range;
                }
            }
        }
        if let Some(still) = self.asked.still {
            still.hold(self.context.variables, &mut bounds);
        }
        for size in self.sizes_of_absent() {
            bounds[size.up] = (0.0, 0.0);
            bounds[size.beyond] = (0.0, 0.0);
        }
        bounds
    }

    /// The width of a U stays as planned: that of what stands in its bay hangs on it, so neither could be told by itself.
    fn hold_width_of_u(&self, plan: &Layout, bounds: &mut [(f64, f64)]) {
        for placed in plan.placed.iter().filter(|placed| placed.size.second_return.is_some()) {
            let Some(size) = self.context.variables.piece(placed.piece).map(|piece| piece.width) else { continue };
            let over = (placed.size.width - size.least).max(0.0);
            let (up, beyond) = (bounds[size.up], bounds[size.beyond]);
            let up = over.clamp(up.0, up.1);
            let beyond = (over - up).clamp(beyond.0, beyond.1);
            (bounds[size.up], bounds[size.beyond]) = ((up, up), (beyond, beyond));
        }
    }

    /// Sizes of the pieces that cannot stand: they count for nothing.
    fn sizes_of_absent(&self) -> impl Iterator<Item = SizeVariables> + '_ {
        let pieces = self.context.variables.pieces.iter().zip(&self.ways);
        let absent = pieces.filter(|(_, ways)| ways.states.is_empty() && ways.may_be_left_out);
        absent.flat_map(|(piece, _)| piece.sizes())
    }
}

/// No size of a plan is over its aim.
fn aim_sizes(variables: &Variables, aims: &Aims, bounds: &mut [(f64, f64)]) {
    for (id, piece) in variables.pieces.iter().enumerate() {
        for &dimension in Dimension::ALL {
            if let (Some(size), Some(aim)) = (piece.dimension(dimension), aims.get(PieceId(id), dimension)) {
                let (up, beyond) = aim.steps();
                bounds[size.up] = (0.0, up);
                bounds[size.beyond] = (0.0, beyond);
            }
        }
    }
}

/// Where no plan is sought its terms cost nothing.
fn free_of_terms(variables: &Variables, easing: Easing<'_>, bounds: &mut [(f64, f64)]) {
    for piece in &variables.pieces {
        for (slot, variable) in piece.terms {
            let most = match easing {
                Easing::AsIn(plan) if slot == CostSlot::Eased => plan.value(variable),
                _ => 0.0,
            };
            bounds[variable] = (0.0, most);
        }
    }
}

/// Holds every size to what it is in `layout` at least.
fn hold_sizes(variables: &Variables, layout: &Layout, bounds: &mut [(f64, f64)]) {
    for placed in &layout.placed {
        let Some(piece) = variables.piece(placed.piece) else { continue };
        for &dimension in Dimension::ALL {
            if let (Some(size), Some(now)) = (piece.dimension(dimension), placed.size.get(dimension)) {
                let (up, beyond) = (bounds[size.up].1, bounds[size.beyond].1);
                let over = (now - size.least - HELD_WITHIN).max(0.0);
                bounds[size.up].0 = over.min(up);
                bounds[size.beyond].0 = (over - up).clamp(0.0, beyond);
            }
        }
    }
}
