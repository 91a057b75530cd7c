//! Nothing stands between the main seat and the screen that it faces.

use elbowroom_model::{Clearance, ItemKind, Point, Rule};

use super::figure::figure;
use super::fronts::{axis, seat_and_screen};
use crate::arrangement::Role;
use crate::rules::linear_outline::LinearStretch;
use crate::rules::{
    Alternative, Cause, LayoutRule, Linear, LinearOutline, Pose, Requirement, RuleContext, With, separation,
};
use crate::site::{Body, BodyId};

/// What is no higher hides nothing from one who sits, mm (common practice, no source).
pub(crate) const LOW: f64 = 600.0;

/// The eyes of one who sits are so high at least, mm (common practice, no source): a screen that hangs lower is seen over
/// whatever is no higher than its lower edge.
const SEATED_EYE: f64 = 1100.0;

/// A clear line to the screen.
#[derive(Debug)]
pub(super) struct ScreenSight;

impl LayoutRule for ScreenSight {
    fn between(&self, context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        let Some(half) = figure(context, Clearance::ScreenSight) else { return Vec::new() };
        if let Some((seat, screen)) = seat_and_screen(first, second) {
            return past_walls(context, seat, &before(seat, screen, half));
        }
        if context.screen != Some(Role::Screen) {
            return Vec::new();
        }
        match (first.role, second.role) {
            (Role::MainSeat, _) => past_piece(context, first, second, half),
            (_, Role::MainSeat) => past_piece(context, second, first, half),
            _ => Vec::new(),
        }
    }
}

/// The strip from the seat's front to the screen's; for a screen beside the rectangle from the middle of the bay to its far
/// edge.
fn before(seat: &Pose, screen: &Pose, half: f64) -> LinearOutline {
    let (facing, along) = (seat.stand.facing, seat.along());
    let ahead = |towards: Point| screen.main().furthest(towards).from(&seat.anchor).along(facing);
    if screen.role == Role::ScreenBeside {
        let aside = screen.main().furthest(-along).from(&axis(seat)).along(along);
        let across = LinearStretch { way: along, ends: [&Linear::default(), &aside] };
        let out = LinearStretch { way: facing, ends: [&seat.depth(), &ahead(facing)] };
        return LinearOutline::block(&axis(seat), across, out);
    }
    let (left, right) = (Linear::constant(-half), Linear::constant(half));
    let across = LinearStretch { way: along, ends: [&left, &right] };
    LinearOutline::block(&axis(seat), across, LinearStretch { way: facing, ends: [&seat.depth(), &ahead(-facing)] })
}

/// What a high piece leaves free before a screen beside the main seat.
pub(crate) fn beside(context: &RuleContext<'_>, seat: &Pose, screen: &Pose, piece: &Pose) -> Vec<Requirement> {
    let Some(half) = figure(context, Clearance::ScreenSight) else { return Vec::new() };
    let is_asked = screen.role == Role::ScreenBeside && piece.id != seat.id && piece.id != screen.id;
    if !is_asked || hides_nothing(context, piece) {
        return Vec::new();
    }
    let rectangle = before(seat, screen, half);
    let cause = Cause { rule: Clearance::ScreenSight.into(), piece: piece.id, with: With::Piece(seat.id) };
    piece.each_part(cause, |part| separation::apart(&rectangle, part, 0.0)).collect()
}

/// Clear of walls and of what is high and fixed.
fn past_walls(context: &RuleContext<'_>, seat: &Pose, strip: &LinearOutline) -> Vec<Requirement> {
    let rule = Rule::Clearance(Clearance::ScreenSight);
    let mut found = context.inside(strip, seat.id, rule, 0.0);
    found.extend(context.off_bodies(strip, seat.id, rule, 0.0, |body| is_high(context, body)));
    found
}

fn is_high(context: &RuleContext<'_>, body: &Body) -> bool {
    let height = match body.id {
        BodyId::Fixed(id) => context.brief.room.fixed.get(id.0).and_then(|fixed| fixed.height),
        BodyId::Item(id) => context.brief.room.item(id).and_then(|item| match &item.kind {
            ItemKind::Radiator(radiator) => Some(radiator.height),
            _ => None,
        }),
    };
    height.is_none_or(|height| height > low(context))
}

/// A high piece stands beside the strip, or behind the seat's front.
fn past_piece(context: &RuleContext<'_>, seat: &Pose, piece: &Pose, half: f64) -> Vec<Requirement> {
    if hides_nothing(context, piece) {
        return Vec::new();
    }
    let (axis, facing) = (axis(seat), seat.stand.facing);
    let cause = Cause { rule: Clearance::ScreenSight.into(), piece: piece.id, with: With::Piece(seat.id) };
    let ways = |part: &LinearOutline| {
        let past = |towards: Point| part.furthest(-towards).from(&axis).along(towards).at_least(half);
        let before_front = part.furthest(facing).from(&seat.anchor).along(facing).plus(&seat.depth(), -1.0);
        let rows = [past(seat.left()), past(-seat.left()), before_front.at_most(0.0)];
        rows.map(|row| Alternative::of_rows(vec![row])).into()
    };
    piece.each_part(cause, ways).collect()
}

/// Whether one who sits sees a screen over a piece, and over whoever sits at it.
fn hides_nothing(context: &RuleContext<'_>, piece: &Pose) -> bool {
    let low = if piece.piece.kind.is_sat_at() { LOW } else { low(context) };
    piece.is_flat() || piece.piece.height_with_screen() <= low
}

/// What is no higher hides nothing, mm.
fn low(context: &RuleContext<'_>) -> f64 {
    context.brief.lowest_sight(LOW, SEATED_EYE)
}
