//! Behind a seat there is a wall or a piece, or a way: no slot that things are lost in. A main seat that stands free has a
//! good metre behind it, or a reason to stand there.

use elbowroom_model::{Clearance, ItemKind, Rule, WallItem};

use super::edge::{Edge, Reach};
use super::front_open::standing;
use super::measure::{Lengths, Measure};
use super::seat_front::main_back;
use super::solid_wall::is_doorway;
use crate::answer::Thing;
use crate::geometry::Convex;
use crate::verify::breach::Wrong;
use crate::verify::checked_layout::{CheckedLayout, InPlace};
use crate::verify::tolerance::{COMFORT, SLACK};

const RULE: Clearance = Clearance::BehindSeat;

/// How near behind a seat a piece closes the slot, mm (common practice).
const PIECE_WITHIN: f64 = 150.0;

/// The share of the seat's width that such a piece covers.
const COVERS: f64 = 0.5;

/// What a main seat that stands free has behind it, or has a reason within, mm: 30 to 36 in behind a floated sofa and
/// somewhat more (from memory).
const FREE: f64 = 1000.0;

/// So much of a doorway or window behind a seat is a reason, mm, or this share of it (common practice).
const REASON: f64 = 400.0;
const REASON_SHARE: f64 = 0.5;

pub(super) fn measures(scene: &CheckedLayout<'_>) -> Vec<Measure> {
    if scene.rule(RULE) <= 0.0 {
        return Vec::new();
    }
    let room = standing(scene);
    scene.seats().map(|seat| Behind::of(scene, seat, &room).measure()).collect()
}

/// What is behind a seat.
struct Behind<'s> {
    scene: &'s CheckedLayout<'s>,
    seat: &'s InPlace<'s>,
    back: Edge,
    /// The wall or fixed thing nearest behind.
    room: Option<(Thing, f64)>,
    /// The piece nearest behind.
    piece: Option<(Thing, f64)>,
}

impl<'s> Behind<'s> {
    fn of(scene: &'s CheckedLayout<'s>, seat: &'s InPlace<'s>, room: &[(Thing, Convex)]) -> Self {
        let back = main_back(seat.placed);
        let itself = [seat.placed.piece];
        let room = room.iter().filter_map(|(of, shape)| Some((*of, back.nearest_ahead(shape)?)));
        let pieces = scene.standing_but(&itself);
        let pieces = pieces.filter_map(|piece| Some((piece.thing(), back.nearest_of(&piece.parts)?)));
        Self { scene, seat, back, room: nearest(room), piece: nearest(pieces) }
    }

    fn measure(&self) -> Measure {
        let passage = self.scene.rule(Clearance::Passage);
        let stands_free = self.scene.is_main(self.seat) && self.seat.placed.at_wall.is_none();
        let needs_room = stands_free && !self.has_reason();
        let (wrong, wanted) =
            if needs_room { (Wrong::NoReasonBehind, passage.max(FREE)) } else { (Wrong::SlotBehind, passage) };
        let nearest = nearest([self.room, self.piece].into_iter().flatten());
        let given = nearest.map_or(f64::INFINITY, |(_, clear)| clear);
        let between: Vec<Thing> = std::iter::once(self.seat.thing()).chain(nearest.map(|(of, _)| of)).collect();
        let measure = Measure::at_least(RULE, wrong, &between, &Lengths { wanted, given });
        let closed = !needs_room && (self.is_at_wall() || self.is_held_off() || self.is_before_piece());
        if closed { Measure { short_by: measure.short_by.min(0.0), ..measure } } else { measure }
    }

    /// As near to a wall as a hand reaches, or as its own gap says.
    fn is_at_wall(&self) -> bool {
        let own_gap = if self.seat.placed.at_wall.is_some() { self.seat.piece.off_wall } else { 0.0 };
        let within = self.scene.rule(RULE).max(own_gap);
        self.room.is_some_and(|(_, clear)| clear <= within + COMFORT)
    }

    /// At the gap of what holds it off: a hair further back it would be in what is kept free at a window, radiator or fire.
    fn is_held_off(&self) -> bool {
        let back_by = self.back.out * (COMFORT + SLACK);
        let main = self.seat.placed.main();
        let moved = Convex::counter_clockwise(main.corners().iter().map(|corner| *corner + back_by));
        let Some(moved) = moved.pulled_in(SLACK) else { return false };
        let height = self.seat.piece.height_with_screen();
        let holds = |rule: Rule| matches!(rule, Rule::KeepClear | Rule::Fixed) || rule == Clearance::WindowFront.into();
        let mut zones = self.scene.checked.zones.iter();
        zones.any(|zone| {
            holds(zone.rule)
                && matches!(zone.of, Thing::Item(_))
                && height > zone.above
                && zone.shape.entered_by(&moved).is_some()
        })
    }

    /// Close before a piece that covers half of its width.
    fn is_before_piece(&self) -> bool {
        let within = Reach { from: 0.0, to: PIECE_WITHIN + COMFORT };
        let itself = [self.seat.placed.piece];
        let covered = |piece: &InPlace<'_>| -> f64 {
            let parts = piece.parts.iter().filter_map(|part| self.back.covered(part, within));
            parts.map(Reach::length).sum()
        };
        self.scene.standing_but(&itself).any(|piece| covered(piece) >= self.back.length * COVERS - COMFORT)
    }

    /// A doorway, a window or a piece lies behind it within a metre.
    fn has_reason(&self) -> bool {
        let mut items = self.scene.brief.room.items.iter();
        self.piece.is_some_and(|(_, clear)| clear <= FREE + COMFORT) || items.any(|item| self.has_behind(item))
    }

    fn has_behind(&self, item: &WallItem) -> bool {
        let is_reason = is_doorway(item) || matches!(item.kind, ItemKind::Window(_));
        let Some(edge) = Edge::of_item(self.scene.brief, item).filter(|_| is_reason) else { return false };
        let half = edge.along * (edge.length / 2.0);
        let shape = Convex::counter_clockwise([edge.middle - half, edge.middle + half]);
        let behind = self.back.covered(&shape, Reach { from: 0.0, to: FREE + COMFORT });
        let wanted = (item.width * REASON_SHARE).min(REASON);
        // Of an item in an oblique wall more lies behind than its shadow on the back.
        let slant = edge.along.dot(self.back.along).abs();
        behind.is_some_and(|behind| behind.length() >= wanted * slant - COMFORT)
    }
}

fn nearest(all: impl Iterator<Item = (Thing, f64)>) -> Option<(Thing, f64)> {
    all.min_by(|first, second| first.1.total_cmp(&second.1))
}
