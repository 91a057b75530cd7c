//! An answer as the result format tells it: names for ids, keys for rules.

use elbowroom_model::{Brief, Clearance, Hand, PieceId, SecondPlace, tables};

use super::{
    Change, ChoicesFound, CriterionFound, DimensionFound, FORMAT, GapFound, HeldBy, LeftOut, MisclosureFound,
    OptionFound, Outcome, PieceFound, PinchFound, RangeFound, Refused, Remedy, RoomFound, RouteFound, RulesInForce,
    SecondSeatFound, TurningCircleFound, TurnsIf,
};
use crate::answer::{self, Answer, DimensionRange, Gap, OptionPiece, RankedOption, Thing, degrees};
use crate::arrangement::SecondSeat;
use crate::criteria::Judgement;
use crate::refusal::{self, Lever, Refusal};
use crate::routes::Route;
use crate::wording::arrangement::title;
use crate::wording::cause::holding;
use crate::wording::criteria::reason;
use crate::wording::left_out::left_out as why_left_out;
use crate::wording::notice::notices;
use crate::wording::refusal::refusal as why_refused;
use crate::wording::remedy::{lever, remedy as remedy_in_words};

impl Outcome {
    /// What `answer` says.
    #[must_use]
    pub fn of(answer: &Answer) -> Self {
        Self {
            format: FORMAT,
            room: room(&answer.brief),
            rules: rules(&answer.brief),
            options: answer.options.iter().map(|it| OptionFound::of(&answer.brief, it)).collect(),
            refused: answer.refused.iter().map(|refusal| refused(&answer.brief, refusal)).collect(),
            remedies: answer.remedies.iter().map(|one| Remedy::of(answer, one)).collect(),
            notices: notices(answer),
            work: answer.work.clone(),
        }
    }
}

fn room(brief: &Brief) -> RoomFound {
    let survey = &brief.room.survey;
    let misclosure = survey.misclosure.map(|vector| MisclosureFound { vector, spread: survey.spread });
    RoomFound {
        name: brief.room.name.clone(),
        outline: brief.room.outline(),
        area: brief.room.area() / 1e6,
        misclosure,
    }
}

fn rules(brief: &Brief) -> RulesInForce {
    let figures = Clearance::ALL.iter().copied().map(|rule| (rule, brief.rules.figure(rule).figure)).collect();
    RulesInForce { profile: brief.rules.profile.clone(), figures }
}

impl OptionFound {
    /// What is told of an option; `brief`: what it was solved for.
    #[must_use]
    pub fn of(brief: &Brief, option: &RankedOption) -> Self {
        Self {
            rank: option.rank,
            key: option.key.clone(),
            title: title(brief, &option.choices),
            choices: choices(brief, option),
            score: option.score,
            first_place_share: option.first_place_share,
            dominated_by: option.dominated_by.clone(),
            never_first: option.never_first,
            by_size: option.by_size,
            turns_if: option.turns_if.as_ref().map(turns_if),
            criteria: option.judgements.iter().map(|judgement| criterion(brief, judgement)).collect(),
            pieces: option.pieces(brief).map(|one| piece(brief, one)).collect(),
            left_out: option.layout.left_out.iter().filter_map(|it| left_out(brief, *it, option.proven)).collect(),
            gaps: option.gaps.iter().map(|gap| gap_found(brief, gap)).collect(),
            routes: option.routes.iter().map(|route| route_found(brief, route)).collect(),
            turning_circle: option
                .turning_circle
                .map(|it| TurningCircleFound { centre: it.centre, diameter: it.diameter }),
            size_value: option.size_value,
            objective: option.objective,
            bound: option.bound,
            proven: option.proven,
        }
    }
}

fn refused(brief: &Brief, refusal: &Refusal) -> Refused {
    let why = why_refused(brief, refusal);
    Refused { key: refusal.key.clone(), why, rule: refusal.rule(), short_by: refusal.short_by() }
}

impl Remedy {
    fn of(answer: &Answer, remedy: &refusal::Remedy) -> Self {
        Self::told(&answer.brief, remedy, answer.undecided() == 0)
    }

    /// The remedy as told; `nothing_fits`: that is known of what it was sought for.
    #[must_use]
    pub fn told(brief: &Brief, remedy: &refusal::Remedy, nothing_fits: bool) -> Self {
        let change = |change: &refusal::Change| {
            let is_length = !matches!(change.lever, Lever::LeaveOut(_));
            Change {
                what: lever(brief, change.lever),
                to: is_length.then_some(change.to),
                by: is_length.then_some((change.to - change.from).abs()),
            }
        };
        let sentence = remedy_in_words(brief, remedy, nothing_fits);
        Self { sentence, changes: remedy.changes.iter().map(change).collect() }
    }
}

fn choices(brief: &Brief, option: &RankedOption) -> ChoicesFound {
    let choices = &option.choices;
    let second = |seat: SecondSeat| {
        let place = match seat.place {
            SecondPlace::Left => "left",
            SecondPlace::Right => "right",
            SecondPlace::Opposite => "opposite",
        };
        Some(SecondSeatFound { name: brief.piece(seat.piece)?.name.clone(), place: place.to_owned() })
    };
    ChoicesFound {
        seat_back: choices.seat_back.map(|wall| Thing::Wall(wall).name(brief).to_owned()),
        facing: degrees(choices.facing),
        hand: choices.hand.map(|hand| match hand {
            Hand::Left => "left".to_owned(),
            Hand::Right => "right".to_owned(),
        }),
        media_wall: choices.media_wall.map(|wall| Thing::Wall(wall).name(brief).to_owned()),
        second_seats: choices.seats().into_iter().filter_map(second).collect(),
    }
}

fn turns_if(turn: &answer::TurnsIf) -> TurnsIf {
    TurnsIf { criterion: turn.criterion, weight: turn.weight, then_first: turn.then_first.clone() }
}

fn criterion(brief: &Brief, judgement: &Judgement) -> CriterionFound {
    CriterionFound {
        name: judgement.criterion,
        score: judgement.score,
        weight: brief.wishes.get(judgement.criterion),
        figure: judgement.figure,
        unit: judgement.unit.key(),
        reason: reason(brief, &judgement.finding),
        basis: tables::basis(judgement.criterion).to_owned(),
    }
}

fn piece(brief: &Brief, one: OptionPiece<'_>) -> PieceFound {
    let OptionPiece { piece, placed, sizes } = one;
    PieceFound {
        name: piece.name.clone(),
        kind: piece.kind,
        at_wall: placed.at_wall.map(|wall| Thing::Wall(wall).name(brief).to_owned()),
        parts: one.parts(),
        facing: one.facing(),
        height: answer::thousandth(piece.height),
        size: sizes.together(),
        range: RangeFound {
            width: dimension(sizes.width),
            return_length: sizes.return_length.map(dimension),
            depth: dimension(sizes.depth),
        },
        held_by: sizes.held_by.iter().map(|held| held_by(brief, sizes.piece, held)).collect(),
    }
}

const fn dimension(range: DimensionRange) -> DimensionFound {
    DimensionFound { least: range.least, together: range.together, alone: range.alone, most: range.most }
}

fn held_by(brief: &Brief, piece: PieceId, answer::HeldBy { dimension, by }: &answer::HeldBy) -> HeldBy {
    HeldBy { dimension: *dimension, by: holding(brief, piece, by), rule: by.rule() }
}

fn left_out(brief: &Brief, piece: PieceId, is_proven: bool) -> Option<LeftOut> {
    let name = brief.piece(piece)?.name.clone();
    Some(LeftOut { name, why: why_left_out(brief, piece, is_proven) })
}

fn gap_found(brief: &Brief, gap: &Gap) -> GapFound {
    let between = gap.between.map(|thing| thing.name(brief).to_owned());
    GapFound { between, clear: gap.clear, needs: gap.needs, rule: gap.rule }
}

fn route_found(brief: &Brief, route: &Route) -> RouteFound {
    let pinch = route.pinch.map(|pinch| PinchFound {
        between: pinch.between.map(|shape| Thing::from(shape).name(brief).to_owned()),
        at: pinch.at,
    });
    RouteFound {
        from: Thing::from(route.from).name(brief).to_owned(),
        to: Thing::from(route.to).name(brief).to_owned(),
        width: route.width,
        needs: route.needs,
        pinch,
        length: route.length,
    }
}
