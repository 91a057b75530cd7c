//! What one who stands in a doorway has before them: the piece that is met first in each direction, and what lies beyond.

use elbowroom_model::{ItemId, ItemKind, PieceId, Point, View, WallId, WallItem};

use super::criteria_context::CriteriaContext;
use super::curve::weighted_mean;
use super::on_wall::OnWall;
use super::tolerance::NO_ANGLE;
use crate::best_by;
use crate::geometry::{Ray, Segment};
use crate::layout::Placed;

/// Half of the field of one who steps in and has not yet turned, degrees (common practice, no source).
const FIELD: f64 = 45.0;

/// What is lower does not catch the eye of one who comes in, mm (common practice, no source).
const CATCHES_THE_EYE: f64 = 600.0;

/// How welcome a bare wall is, and nothing at all, 0 to 100 (common practice, no source): nothing speaks for it or against it.
const BARE_WALL: f64 = 60.0;

/// Cosine of the angle, 45 degrees, within which a side is turned in a direction.
const TURNED: f64 = 0.7;

/// The side of a piece that is met.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// The one that it faces by.
    Front,
    /// A back: of a corner sofa either of the two, of a chaise the one.
    Back,
    /// Any other.
    End,
}

/// What one who comes in sees first.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FirstSeen {
    /// A side of a piece; of a seat alone the back is told from the ends.
    Piece {
        /// The piece.
        piece: PieceId,
        /// Its side.
        side: Side,
    },
    /// Something that a wall holds.
    Item(ItemId),
    /// A bare wall.
    Wall(WallId),
}

/// A stretch of the field in which one thing is met first.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Glimpse {
    /// Plan angle, degrees.
    pub(super) angle: f64,
    /// The nearest piece that catches the eye, and its side.
    pub(super) near: Option<(PieceId, Side)>,
    /// What lies on the wall beyond.
    pub(super) far: Far,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Far {
    Item(ItemId),
    Wall(WallId),
}

/// The field from the middle of a doorway, in the order of growing angle.
pub(super) fn arrival(context: &CriteriaContext, doorway: &OnWall) -> Vec<Glimpse> {
    let look = Look { context, from: doorway.middle(), ahead: doorway.inward, behind: doorway.item.wall };
    let marks = look.marks();
    marks.windows(2).filter_map(|pair| look.glimpse(pair[0], pair[1])).collect()
}

struct Look<'s, 'a> {
    context: &'s CriteriaContext<'a>,
    from: Point,
    ahead: Point,
    behind: WallId,
}

impl Look<'_, '_> {
    /// Angles from straight ahead, degrees counter-clockwise, at which something begins or ends.
    fn marks(&self) -> Vec<f64> {
        let brief = self.context.brief();
        let corners = self.context.in_room.layout.placed.iter().flat_map(Placed::parts);
        let corners = corners.flat_map(|part| part.corners().to_vec());
        let ends = brief.room.items.iter().filter_map(|item| brief.room.ends(item)).flat_map(<[Point; 2]>::from);
        let marks = brief.room.outline().into_iter().chain(corners).chain(ends).map(|mark| {
            let way = mark - self.from;
            self.ahead.turn_to(way).to_degrees()
        });
        let mut marks: Vec<f64> = marks.filter(|angle| angle.abs() < FIELD).collect();
        marks.extend([-FIELD, FIELD]);
        marks.sort_by(f64::total_cmp);
        marks
    }

    fn glimpse(&self, from: f64, to: f64) -> Option<Glimpse> {
        let angle = to - from;
        let way = self.ahead.turned(f64::midpoint(from, to).to_radians());
        if angle <= NO_ANGLE {
            return None;
        }
        let (far, reach) = self.far(way)?;
        Some(Glimpse { angle, near: self.near(way, reach), far })
    }

    fn far(&self, way: Point) -> Option<(Far, f64)> {
        let room = &self.context.brief().room;
        let look = Ray { from: self.from, way };
        let met = room.walls().filter(|(id, _)| *id != self.behind).filter_map(|(id, wall)| {
            let met = look.meets(wall.into())?;
            Some((id, met.reach, met.share * wall.length()))
        });
        let (wall, reach, at) = met.min_by(|a, b| a.1.total_cmp(&b.1))?;
        let mut held = room.items().filter(|(_, item)| item.wall == wall && item.width > 0.0);
        // A window over a radiator is what one sees.
        let covers = |item: &WallItem| item.at <= at && at <= item.at + item.width && !is_looked_past(item);
        let item = held.find(|(_, item)| covers(item)).map(|(id, _)| Far::Item(id));
        Some((item.unwrap_or(Far::Wall(wall)), reach))
    }

    fn near(&self, way: Point, reach: f64) -> Option<(PieceId, Side)> {
        let brief = self.context.brief();
        let catches = |placed: &&Placed| {
            brief
                .piece(placed.piece)
                .is_some_and(|piece| piece.height_with_screen() >= CATCHES_THE_EYE && piece.kind.is_solid())
        };
        let edges = self.context.in_room.layout.placed.iter().filter(catches).flat_map(|placed| {
            let parts = placed.parts().into_iter().enumerate();
            parts.flat_map(move |(part, shape)| {
                let edges: Vec<Segment> = shape.edges().collect();
                edges.into_iter().map(move |edge| (placed, part, edge))
            })
        });
        let look = Ray { from: self.from, way };
        let met = edges.filter_map(|(placed, part, edge)| {
            let outward = edge.vector().right().unit().filter(|outward| outward.dot(way) < 0.0)?;
            let to_edge = look.meets(edge)?.reach;
            (to_edge < reach).then(|| (to_edge, (placed.piece, self.side(placed, part, outward))))
        });
        best_by(met, |(to_edge, _)| -to_edge).map(|(_, met)| met)
    }

    /// Which side of a piece the edge of one of its parts is.
    fn side(&self, placed: &Placed, part: usize, outward: Point) -> Side {
        let toward = |direction: Point| outward.dot(direction) > TURNED;
        let chaise = self.context.brief().piece(placed.piece).is_some_and(|piece| piece.chaise);
        // A corner sofa has a second back along its return; a chaise has none. A U has one along its second return too.
        let second_back = placed.hand.is_some() && !chaise && part != 2 && toward(-placed.along());
        let second_back = second_back || placed.size.second_return.is_some() && toward(placed.along()) && part != 1;
        if second_back || toward(-placed.facing) {
            Side::Back
        } else if (part == 0 && toward(placed.facing))
            || (part == 1 && toward(placed.along()))
            || (part == 2 && toward(-placed.along()))
        {
            Side::Front
        } else {
            Side::End
        }
    }
}

/// How welcome all that is in sight is, 0 to 100, each by the angle it fills.
pub(super) fn welcome(context: &CriteriaContext, glimpses: &[Glimpse]) -> f64 {
    weighted_mean(glimpses.iter().map(|glimpse| (welcome_of(context, glimpse), glimpse.angle))).unwrap_or(BARE_WALL)
}

/// How welcome a sight is, 0 to 100 (common practice, no source): near and far count alike where both are seen.
fn welcome_of(context: &CriteriaContext, glimpse: &Glimpse) -> f64 {
    let far = welcome_far(context, glimpse.far);
    glimpse.near.map_or(far, |(piece, side)| f64::midpoint(welcome_near(context, piece, side), far))
}

fn welcome_near(context: &CriteriaContext, piece: PieceId, side: Side) -> f64 {
    let seat = context.brief().piece(piece).is_some_and(|piece| piece.kind.is_seat());
    match (seat, side) {
        (true, Side::Front) => 100.0,
        (true, Side::End) => 60.0,
        (true, Side::Back) => 10.0,
        (false, Side::Front) => 70.0,
        (false, Side::End) => 50.0,
        (false, Side::Back) => 20.0,
    }
}

fn welcome_far(context: &CriteriaContext, far: Far) -> f64 {
    let item = match far {
        Far::Item(id) => context.brief().room.item(id),
        Far::Wall(_) => None,
    };
    match item.map(|item| &item.kind) {
        Some(ItemKind::Window(window)) => match window.view {
            View::Liked => 100.0,
            View::Plain => 75.0,
            View::Avoided => 30.0,
        },
        Some(ItemKind::Fireplace(_)) => 100.0,
        Some(ItemKind::Opening(_)) => 80.0,
        Some(ItemKind::Door(_) | ItemKind::Radiator(_) | ItemKind::Socket(_)) | None => BARE_WALL,
    }
}

/// What fills the largest part of the field; `None` where nothing is in sight.
pub(super) fn first_seen(context: &CriteriaContext, glimpses: &[Glimpse]) -> Option<FirstSeen> {
    let mut sums: Vec<(FirstSeen, f64)> = Vec::new();
    for glimpse in glimpses {
        let met = met_first(context, glimpse);
        match sums.iter_mut().find(|(known, _)| *known == met) {
            Some((_, angle)) => *angle += glimpse.angle,
            None => sums.push((met, glimpse.angle)),
        }
    }
    best_by(sums, |(_, angle)| *angle).map(|(met, _)| met)
}

fn met_first(context: &CriteriaContext, glimpse: &Glimpse) -> FirstSeen {
    match (glimpse.near, glimpse.far) {
        (Some((piece, side)), _) => {
            let seat = context.brief().piece(piece).is_some_and(|piece| piece.kind.is_seat());
            FirstSeen::Piece { piece, side: if side == Side::Back && !seat { Side::End } else { side } }
        }
        (None, Far::Item(id)) => FirstSeen::Item(id),
        (None, Far::Wall(id)) => FirstSeen::Wall(id),
    }
}

/// What is too low or too small to be what one sees of a wall.
const fn is_looked_past(item: &WallItem) -> bool {
    matches!(item.kind, ItemKind::Radiator(_) | ItemKind::Socket(_))
}
