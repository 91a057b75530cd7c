//! One option as results tell it.

use elbowroom_model::{Brief, Dimension, FixedId, Hand, ItemId, Point, SecondPlace, WallId};

use crate::Limits;
use crate::arrangement::SecondSeat;
use crate::gaps::gaps;
use crate::layout::Placed;
use crate::outcome::{
    ChoicesFound, CriterionFound, DimensionFound, HeldBy, LeftOut, OptionFound, PieceFound, PinchFound, RangeFound,
    RouteFound, SecondSeatFound, TurningCircleFound, TurnsIf,
};
use crate::outcome_figures::rounded;
use crate::rank::Candidate;
use crate::ranking::Rating;
use crate::routes::{End, Floor, Route, ShapeId};
use crate::search::RoomGround;
use crate::sizes;
use crate::wording::arrangement::title;
use crate::wording::cause::holding;
use crate::wording::left_out::left_out as why_left_out;

/// What all options of a room share.
pub(crate) struct Ground<'a> {
    pub(crate) room: &'a RoomGround<'a>,
    pub(crate) floor: &'a Floor,
    pub(crate) limits: &'a Limits,
}

/// The option that is `which` of the candidates, with its pieces.
pub(crate) fn option_found(
    ground: &Ground<'_>,
    (candidates, order): (&[Candidate<'_>], &[usize]),
    rating: &Rating,
    which: usize,
    pieces: Vec<PieceFound>,
) -> OptionFound {
    let candidate = &candidates[which];
    let brief = ground.room.brief;
    let key_of = |other: usize| candidates[other].arrangement.key.clone();
    let found = &candidate.found;
    let proven = found.is_proven();
    rounded(OptionFound {
        rank: order.iter().position(|other| *other == which).map_or(order.len(), |place| place + 1),
        key: candidate.arrangement.key.clone(),
        title: title(brief, &candidate.arrangement.choices),
        choices: choices(brief, candidate),
        score: rating.score,
        first_place_share: rating.share,
        dominated_by: rating.dominated_by.map(key_of),
        never_first: rating.never_first,
        by_size: which + 1,
        turns_if: rating.turns_if.as_ref().map(|turn| TurnsIf {
            criterion: turn.criterion,
            weight: turn.weight,
            then_first: key_of(turn.then_first),
        }),
        criteria: criteria(brief, candidate),
        pieces,
        left_out: found.layout.left_out.iter().filter_map(|piece| left_out(brief, *piece, proven)).collect(),
        gaps: gaps(brief, ground.room.site, &found.layout),
        routes: candidate.routes.iter().map(|route| route_found(brief, route)).collect(),
        turning_circle: turning_circle(brief, found.layout.turning_circle),
        size_value: found.layout.size_value(brief),
        objective: found.objective,
        bound: found.bound,
        proven,
    })
}

fn choices(brief: &Brief, candidate: &Candidate<'_>) -> ChoicesFound {
    let choices = &candidate.arrangement.choices;
    let wall = |id: Option<WallId>| id.and_then(|id| brief.room.wall(id)).map(|wall| wall.name.clone());
    let second = |seat: SecondSeat| {
        let place = match seat.place {
            SecondPlace::Left => "left",
            SecondPlace::Right => "right",
            SecondPlace::Opposite => "opposite",
        };
        Some(SecondSeatFound { name: brief.pieces.get(seat.piece)?.name.clone(), place: place.to_owned() })
    };
    ChoicesFound {
        seat_back: wall(choices.seat_back),
        facing: choices.facing.degrees(),
        hand: choices.hand.map(|hand| match hand {
            Hand::Left => "left".to_owned(),
            Hand::Right => "right".to_owned(),
        }),
        media_wall: wall(choices.media_wall),
        second_seats: choices.seats().into_iter().filter_map(second).collect(),
    }
}

fn criteria(brief: &Brief, candidate: &Candidate<'_>) -> Vec<CriterionFound> {
    let told = candidate.judgements.iter().map(|judgement| CriterionFound {
        name: judgement.criterion,
        score: judgement.score,
        weight: brief.wishes.get(judgement.criterion),
        figure: judgement.figure,
        unit: judgement.unit,
        reason: judgement.reason.clone(),
        basis: judgement.basis.clone(),
    });
    told.collect()
}

/// The pieces of an option, with what holds each size where it `is_shown`; and the programs that these figures took.
pub(crate) fn pieces(ground: &Ground<'_>, candidate: &Candidate<'_>, is_shown: bool) -> (Vec<PieceFound>, usize) {
    let held = if is_shown { sizes::held_by(ground.room, &candidate.found) } else { Vec::new() };
    let mut programs = 0;
    let mut found = Vec::new();
    for placed in &candidate.found.layout.placed {
        let of_piece = held.iter().find(|(piece, _)| *piece == placed.piece);
        let held_by = of_piece.map_or_else(Vec::new, |(piece, held)| told_held(ground.room.brief, *piece, held));
        let (range, more) = range(ground, candidate, placed, is_shown);
        programs += more;
        found.extend(piece_found(ground.room.brief, placed, range, held_by));
    }
    (found, programs)
}

fn told_held(brief: &Brief, piece: usize, held: &[sizes::HeldBy]) -> Vec<HeldBy> {
    let told = |sizes::HeldBy { dimension, by }: &sizes::HeldBy| HeldBy {
        dimension: *dimension,
        by: holding(brief, piece, by),
        rule: by.rule(),
    };
    held.iter().map(told).collect()
}

fn piece_found(brief: &Brief, placed: &Placed, range: Option<RangeFound>, held_by: Vec<HeldBy>) -> Option<PieceFound> {
    let piece = brief.pieces.get(placed.piece)?;
    Some(PieceFound {
        name: piece.name.clone(),
        kind: piece.kind,
        at_wall: placed.at_wall.and_then(|id| brief.room.wall(id)).map(|wall| wall.name.clone()),
        parts: placed.parts().iter().map(|part| part.corners().to_vec()).collect(),
        facing: placed.facing.degrees(),
        height: piece.height,
        size: placed.size,
        range: range?,
        held_by,
    })
}

fn range(
    ground: &Ground<'_>,
    candidate: &Candidate<'_>,
    placed: &Placed,
    is_shown: bool,
) -> (Option<RangeFound>, usize) {
    let mut programs = 0;
    let mut figures = |dimension: Dimension| {
        let range = ground.room.brief.pieces.get(placed.piece)?.range(dimension)?;
        let together = placed.size.get(dimension)?;
        let alone = is_shown.then(|| alone(ground, candidate, placed.piece, dimension)).flatten();
        programs += alone.map_or(0, |(_, programs)| programs);
        Some(DimensionFound { least: range.least, together, alone: alone.map(|(size, _)| size), most: range.most })
    };
    let (width, return_length, depth) =
        (figures(Dimension::Width), figures(Dimension::Return), figures(Dimension::Depth));
    let range = width.zip(depth).map(|(width, depth)| RangeFound { width, return_length, depth });
    (range, programs)
}

fn alone(ground: &Ground<'_>, candidate: &Candidate<'_>, piece: usize, dimension: Dimension) -> Option<(f64, usize)> {
    let nodes = ground.limits.nodes / 10;
    let place = (ground.room, ground.floor);
    sizes::alone(place, candidate.arrangement, &candidate.found.layout, (piece, dimension), nodes)
}

fn left_out(brief: &Brief, piece: usize, is_proven: bool) -> Option<LeftOut> {
    let name = brief.pieces.get(piece)?.name.clone();
    Some(LeftOut { name, why: why_left_out(brief, piece, is_proven) })
}

fn turning_circle(brief: &Brief, centre: Option<Point>) -> Option<TurningCircleFound> {
    Some(TurningCircleFound { centre: centre?, diameter: brief.rules.turning_circle()? })
}

fn route_found(brief: &Brief, route: &Route) -> RouteFound {
    let pinch = route
        .pinch
        .map(|pinch| PinchFound { between: pinch.between.map(|shape| shape_name(brief, shape)), at: pinch.at });
    RouteFound {
        from: route.from.name(brief).to_owned(),
        to: route.to.name(brief).to_owned(),
        width: route.width,
        needs: route.needs,
        pinch,
        length: route.length,
    }
}

fn shape_name(brief: &Brief, shape: ShapeId) -> String {
    let room = &brief.room;
    match shape {
        ShapeId::Wall(WallId(wall)) => room.walls.get(wall).map(|wall| wall.name.clone()),
        ShapeId::Fixed(FixedId(fixed)) => room.fixed.get(fixed).map(|fixed| fixed.name.clone()),
        ShapeId::Item(ItemId(item)) => room.items.get(item).map(|item| item.name.clone()),
        ShapeId::Part { piece, .. } => brief.pieces.get(piece).map(|piece| piece.name.clone()),
        ShapeId::Mouth(end @ (End::Item(_) | End::Piece(_))) => Some(end.name(brief).to_owned()),
    }
    .unwrap_or_default()
}
