//! What several criteria ask of one layout, worked out once.

use elbowroom_model::{Brief, Clearance, Piece, PieceKind, Point, Term};

use super::layout_in_room::LayoutInRoom;
use super::obstacles::obstacles;
use super::on_wall::OnWall;
use super::one_or_more::OneOrMore;
use super::seat_places::{SITTING_EYE, SeatPlace, middle_eye, seat_places};
use super::sight::{Barriers, Eye, Seen, Target, seen};
use super::walk_line::walk_line;
use super::walked_floor::{WalkedFloor, walked_floor};
use crate::composition::{TermCost, dearest_first};
use crate::layout::Placed;
use crate::routes::{End, Route};

/// A in_room with the places where people sit and all that stands before their eyes.
pub(super) struct CriteriaContext<'a> {
    pub(super) in_room: LayoutInRoom<'a>,
    /// Who sits here; `None` where no seat stands.
    pub(super) group: Option<Group<'a>>,
    pub(super) barriers: Barriers,
    /// The line one walks on each main route, in the order of the routes; `None` for a lesser one.
    lines: Vec<Option<Vec<Point>>>,
    pub(super) walked_floor: WalkedFloor,
    /// What walkers make of it, once that was looked at.
    pub(super) walkers: Walkers,
}

/// What walkers make of a layout.
#[derive(Debug, Clone, Default)]
pub(crate) struct Walkers {
    /// Terms that cost it something.
    pub(crate) terms: Vec<TermCost>,
    /// A main way uses the floor behind the main seat, so that it is not lost.
    pub(crate) pass_behind: bool,
    /// A main way uses the floor behind a return of it.
    pub(crate) pass_behind_return: bool,
}

impl Walkers {
    /// What all of it costs.
    pub(crate) fn cost(&self) -> f64 {
        self.terms.iter().map(|told| told.cost).sum()
    }

    /// Whether they make use of what a term counts as lost.
    pub(crate) fn earns(&self, term: Term) -> bool {
        match term {
            Term::FloorBehind | Term::FloorBehindFireside => self.pass_behind,
            Term::ReturnBehind => self.pass_behind_return,
            _ => false,
        }
    }

    /// Adds what they make of a layout to what it is told to cost: floor behind the main seat that they use is not lost.
    pub(crate) fn take_into(self, told: &mut Vec<TermCost>) {
        told.retain(|term| !self.earns(term.term));
        told.extend(self.terms);
        dearest_first(told);
    }
}

/// The seats that stand about the main one, and all others.
pub(super) struct Group<'a> {
    /// The main seat; where that was left out, the first seat that stands.
    pub(super) main: &'a Placed,
    /// The places of the main group.
    pub(super) places: OneOrMore<SeatPlace>,
    /// Those of groups of their own too.
    pub(super) everyone: OneOrMore<SeatPlace>,
}

impl<'a> Group<'a> {
    fn of(in_room: &LayoutInRoom<'a>) -> Option<Self> {
        let all = seat_places(in_room.brief, in_room.layout);
        let is_apart = |place: &SeatPlace| in_room.brief.piece(place.piece).is_some_and(Piece::is_seat_apart);
        let places = OneOrMore::of(all.iter().filter(|place| !is_apart(place)).cloned().collect::<Vec<_>>())?;
        let everyone = OneOrMore::of(all)?;
        let main = in_room.layout.of(in_room.main_seat).or_else(|| in_room.layout.of(places.first().piece))?;
        Some(Self { main, places, everyone })
    }
}

impl<'a> CriteriaContext<'a> {
    pub(super) fn of(in_room: &LayoutInRoom<'a>) -> Self {
        let LayoutInRoom { brief, site, layout, .. } = *in_room;
        let barriers = Barriers::new(&brief.room.outline(), obstacles(brief, site, layout));
        let lines = in_room.routes.iter().map(|route| line_of(in_room, route)).collect();
        let (walked_floor, walkers) = (walked_floor(in_room), Walkers::default());
        Self { in_room: *in_room, group: Group::of(in_room), barriers, lines, walked_floor, walkers }
    }

    pub(super) const fn brief(&self) -> &'a Brief {
        self.in_room.brief
    }

    /// Every place where one sits in the main group.
    pub(super) fn places(&self) -> impl Iterator<Item = &SeatPlace> + Clone {
        self.group.iter().flat_map(|group| group.places.iter())
    }

    /// Every place where one sits.
    pub(super) fn all_places(&self) -> impl Iterator<Item = &SeatPlace> + Clone {
        self.group.iter().flat_map(|group| group.everyone.iter())
    }

    /// The pieces that stand and are of such a kind.
    pub(super) fn placed(
        &self,
        is_such: fn(PieceKind) -> bool,
    ) -> impl Iterator<Item = (&'a Piece, &'a Placed)> + Clone + use<'a> {
        self.in_room.placed(is_such)
    }

    /// The screens that stand or hang, and that seats turn to.
    pub(super) fn watched(&self) -> impl Iterator<Item = (&'a Piece, &'a Placed)> + use<'a> {
        let brief = self.in_room.brief;
        self.placed(PieceKind::carries_screen).filter(move |(piece, _)| brief.is_watched(piece))
    }

    /// The line one walks on a main route; `None` for a lesser one.
    pub(super) fn line_of(&self, route: &Route) -> Option<&[Point]> {
        self.main_lines().find(|(main, _)| *main == route).map(|(_, line)| line)
    }

    /// The main routes with the line one walks on each.
    pub(super) fn main_lines(&self) -> impl Iterator<Item = (&'a Route, &[Point])> {
        self.in_room.routes.iter().zip(&self.lines).filter_map(|(route, line)| Some((route, line.as_deref()?)))
    }

    /// What the sitter at `place` sees of `target` before them.
    pub(super) fn seen_from(&self, place: &SeatPlace, target: &Target) -> Seen {
        seen(sitting(place.eye), Some(place.facing), target, &self.barriers)
    }

    /// What one who sits in the middle of a seat sees of `target`.
    pub(super) fn seen_from_middle(&self, seat: &Placed, target: &Target) -> Seen {
        seen(sitting(middle_eye(seat)), Some(seat.facing), target, &self.barriers)
    }
}

fn line_of(in_room: &LayoutInRoom, route: &Route) -> Option<Vec<Point>> {
    let (End::Item(from), End::Item(to), Clearance::Walkway) = (route.from, route.to, route.rule) else { return None };
    let ends = [OnWall::of(in_room.brief, from)?.middle(), OnWall::of(in_room.brief, to)?.middle()];
    Some(walk_line(in_room.brief, in_room.site, in_room.layout, ends, route.needs))
}

/// The eye of one who sits.
const fn sitting(at: Point) -> Eye {
    Eye { at, height: SITTING_EYE }
}
