//! The screen before the main seat: on its axis, and no further off than it is easily seen.

use elbowroom_model::{Price, Term, tables};

use super::asked::{Asked, Way};
use super::heart::middle;
use super::plan_term::{PlanTerm, TermContext};
use crate::arrangement::Role;
use crate::criteria::screen::distance_filling;
use crate::rules::comfort::axis;
use crate::rules::{CostSlot, Linear, Pose, With, faces_one};

/// A screen is easily seen where it fills so many degrees: a little less than from the farthest seat (SMPTE EG 18: 30).
const EASY: f64 = 25.0;

/// The screen before the main seat.
#[derive(Debug)]
pub(super) struct ScreenBefore;

impl PlanTerm for ScreenBefore {
    fn alone(&self, context: &TermContext<'_>, pose: &Pose) -> Vec<Asked> {
        let Some(main) = context.heart.main else { return Vec::new() };
        match pose.role {
            Role::Screen => std::iter::once(aside(context, pose, main)).chain(far(pose, main)).collect(),
            Role::ScreenBeside => {
                let front = axis(main).moved(main.stand.facing, &main.depth());
                let to = pose.middle_of_back().from(&front);
                let excess = to.along(main.along()).plus(&to.along(main.stand.facing), -1.0);
                let way = Way::pays(pose, CostSlot::Aside, Term::ScreenBeside, &excess);
                let beside = Asked::always(Term::ScreenBeside, pose, With::Piece(main.id), way);
                std::iter::once(beside).chain(off_return(pose, main)).collect()
            }
            _ => Vec::new(),
        }
    }

    fn between(&self, _context: &TermContext<'_>, first: &Pose, second: &Pose) -> Vec<Asked> {
        under_screen(first, second).into_iter().chain(under_screen(second, first)).collect()
    }
}

/// On the axis of the seat that faces it; but beside what draws the eye more, no further aside than one looks there with ease.
fn aside(context: &TermContext<'_>, screen: &Pose, main: &Pose) -> Asked {
    let to = middle(screen).from(&axis(main));
    let aside = to.along(main.left());
    let Some(focus) = faces_one(&context.room, main.stand.facing) else {
        return Asked::always(Term::ScreenAside, screen, With::Piece(main.id), on_axis(context, screen, &aside));
    };
    let Price { cost, steep, far, .. } = tables::price(Term::ScreenByFocus);
    let ahead = to.along(main.stand.facing).plus(&main.depth(), -1.0);
    let way = |aside: &Linear| {
        let turned = aside.clone().plus(&ahead, -far);
        let steep = Price { cost: steep.unwrap_or_default(), ..Price::default() };
        let near = Price { cost, ..Price::default() };
        Way::pays_by(screen, CostSlot::Aside, near, aside).and(Way::pays_by(screen, CostSlot::Aside, steep, &turned))
    };
    let either = way(&aside).and(way(&Linear::default().plus(&aside, -1.0)));
    Asked::always(Term::ScreenByFocus, screen, With::Item(focus), either)
}

/// By how far it is off either way; where the rule lets it stand beside a fire that others face, what it lets for that is dear.
fn on_axis(context: &TermContext<'_>, screen: &Pose, aside: &Linear) -> Way {
    let brief = context.room.brief;
    let may_be_beside = brief.room.items().any(|(_, item)| brief.wishes.draw_to(&item.kind));
    let price = tables::price(Term::ScreenAside);
    let price = if may_be_beside { price } else { Price { cost: price.cost, ..Price::default() } };
    let pays = |aside: &Linear| Way::pays_by(screen, CostSlot::Aside, price, aside);
    pays(aside).and(pays(&Linear::default().plus(aside, -1.0)))
}

/// Who sits on the return has the screen ahead, as who sits on the main run has one that it faces.
fn off_return(screen: &Pose, main: &Pose) -> Option<Asked> {
    let facing = main.stand.facing;
    let amid = Linear::default().plus(&main.depth(), 0.5).plus(&main.return_length()?, 0.5);
    let aside = middle(screen).from(&main.anchor).along(facing).plus(&amid, -1.0);
    let way = Way::pays_either_way(screen, CostSlot::Along, Term::ReturnAside, &aside);
    Some(Asked::always(Term::ReturnAside, screen, With::Piece(main.id), way))
}

/// A media unit belongs under the screen that hangs: amid it, and at its wall.
fn under_screen(hung: &Pose, unit: &Pose) -> Option<Asked> {
    let is_unit = unit.piece.kind.carries_screen() && !unit.piece.kind.hangs();
    if !hung.piece.kind.hangs() || !is_unit {
        return None;
    }
    let way = if hung.wall() == unit.wall() {
        let aside = middle(unit).from(&middle(hung)).along(unit.along());
        Way::pays_either_way(unit, CostSlot::Aside, Term::UnderScreen, &aside)
    } else {
        Way::flat(Term::UnderScreen)
    };
    Some(Asked::always(Term::UnderScreen, unit, With::Piece(hung.id), way))
}

/// The screen further off than it is easily seen.
fn far(screen: &Pose, main: &Pose) -> Option<Asked> {
    let easy = distance_filling(EASY, screen.piece.screen?);
    let Price { cost, steep, far, .. } = tables::price(Term::ScreenFar);
    let facing = main.stand.facing;
    let distance = screen.main().furthest(-facing).from(&main.anchor).along(facing).plus(&main.depth(), -1.0);
    let price = Price { cost, free: easy, steep, far: easy * (1.0 + far), flat: 0.0 };
    let way = Way::pays_by(screen, CostSlot::Near, price, &distance);
    Some(Asked::always(Term::ScreenFar, screen, With::Piece(main.id), way))
}
