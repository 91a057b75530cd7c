//! Why an arrangement is not among the options, in words: what is wrong, what the rule asks, how much of that is missing.

use elbowroom_model::article::{capital, the};
use elbowroom_model::{Brief, Clearance, ItemId, Rounding, Rule};

use super::arrangement::no_room;
use super::breach::broken;
use super::cause::kept_from;
use crate::words::size::size;
use elbowroom_solver::Size;
use elbowroom_solver::refusal::{Asked, DoesNotGetIn, Reason, Refusal, Why};
use elbowroom_solver::rules::With;
use elbowroom_solver::way_in::Asks;

/// Why it is refused, one sentence or a few.
pub(crate) fn refusal(brief: &Brief, refusal: &Refusal) -> String {
    match &refusal.why {
        Why::NoRoom(reason) => no_room(brief, reason),
        Why::OneRule(reason) => sentence(brief, reason),
        Why::SeveralRules(reasons) => several(brief, reasons),
        Why::NotDecided => "No layout was found within the work allowed.".to_owned(),
        Why::NotVerified(breach) => {
            format!(
                "What was found for it did not hold when it was measured again, and is not told: {}",
                broken(brief, breach)
            )
        }
        Why::DoesNotGetIn(stopped) => does_not_get_in(brief, stopped),
    }
}

/// Where no single rule is to blame.
fn several(brief: &Brief, reasons: &[Reason]) -> String {
    let mut told: Vec<String> = reasons.iter().map(|reason| sentence(brief, reason)).collect();
    told.dedup();
    match told.as_slice() {
        [] => "Its rules leave no place at once.".to_owned(),
        [only] => only.clone(),
        [first, second, ..] => format!("Several rules leave no place at once. {first} {second}"),
    }
}

fn does_not_get_in(brief: &Brief, DoesNotGetIn { piece, fails }: &DoesNotGetIn) -> String {
    let name = brief.piece_name(*piece);
    let points = brief.way.as_ref().map_or(&[][..], |way| &way.points);
    let at = points.get(fails.at).map(|point| point.name.as_str()).unwrap_or_default();
    let too = match fails.asks {
        Asks::Width => "too wide",
        Asks::Height | Asks::Headroom => "too high",
        Asks::Turn => "too long to turn",
        Asks::Length => "too long",
    };
    match fails.short_by.map(|short| brief.units.words(short, Rounding::Up)) {
        Some(by) => format!("{name}: does not get in at its least sizes, {by} {too} at {at}."),
        None => format!("{name}: does not get in at its least sizes; it cannot be turned over before {at}."),
    }
}

/// `The sofa would stand too near to the stove: 91.4 cm stay clear of it, 12 cm too little.`
fn sentence(brief: &Brief, reason: &Reason) -> String {
    let said = capital(&said(brief, reason));
    let units = brief.units;
    match (reason.asked, reason.short_by) {
        (Some(asked), Some(missing)) => {
            let [figure, missing] = units.asked_and_missing(asked.length, missing);
            format!("{said}: {}; it is {missing} too little.", asks(asked.by, &figure))
        }
        (Some(asked), None) => format!("{said}: {}.", asks(asked.by, &units.finely(asked.length))),
        (None, Some(missing)) => format!("{said}: {} too little.", units.words(missing, Rounding::Up)),
        (None, None) => format!("{said}."),
    }
}

/// What is wrong.
fn said(brief: &Brief, Reason { cause, least, .. }: &Reason) -> String {
    let piece = the(brief.piece_name(cause.piece));
    let hangs = brief.piece(cause.piece).is_some_and(|piece| piece.kind.hangs());
    let stand = if hangs { "hang" } else { "stand" };
    let with = the(&kept_from(brief, cause.piece, cause));
    match (cause.rule, cause.with) {
        (_, With::Route(_)) => format!("the {} stays too narrow past {piece}", kept_from(brief, cause.piece, cause)),
        (Rule::Room | Rule::OffWall, _) => {
            format!("even at its least, {}, {piece} does not fit within the walls", sizes(brief, *least))
        }
        (Rule::Group, With::Wall(_)) => {
            format!("standing free, {piece} comes too near to {with} to pass behind it")
        }
        (Rule::Turned, With::Piece(other)) if brief.piece(other).is_some_and(|piece| piece.turned.may_turn()) => {
            format!("{piece} and {with} find no places where both are turned alike")
        }
        (Rule::Turned, _) => format!("{piece} finds no place where being turned has it face the group about {with}"),
        (Rule::Ceiling, _) => format!("{piece} is higher than the ceiling is before {with}"),
        (Rule::Overlap, _) => format!("even at their least {piece} and {with} do not fit beside each other"),
        (Rule::DoorSwing | Rule::Clearance(Clearance::DoorLanding), _) => format!("{piece} would {stand} in {with}"),
        (Rule::Clearance(Clearance::LatchSide), _) => format!("{piece} would {stand} on {with}"),
        (Rule::KeepClear, With::Item(ItemId(item))) => {
            let heat = brief.room.items.get(item).map_or("", |item| item.name.as_str());
            format!("{piece} would {stand} too near to {}", the(heat))
        }
        (Rule::KeepClear, _) => format!("{piece} would {stand} too near to {with}"),
        (Rule::Fixed, With::Fixed(id)) if brief.room.fixed_thing(id).is_some_and(|thing| thing.step().is_some()) => {
            format!("{piece} would {stand} across {with}")
        }
        (Rule::Fixed, _) => format!("{piece} would {stand} where {with} is"),
        (Rule::Clearance(Clearance::WindowFront), _) => {
            format!("{piece} is taller than the sill and would {stand} before {with}")
        }
        (Rule::Clearance(Clearance::SeatToTable), _) => format!("{piece} finds no place before {with}"),
        (Rule::Clearance(Clearance::ScreenToSeat), _) => format!("{piece} and {with} come too near to each other"),
        (Rule::Clearance(Clearance::FacingSeats), _) => {
            format!("the fronts of {piece} and {with} come too near to each other")
        }
        (Rule::Clearance(Clearance::LegRoom), _) => format!("there is no room for legs between {piece} and {with}"),
        (Rule::Clearance(Clearance::FrontOpen), _) => format!("{piece} would look at {with} from too near"),
        (Rule::Clearance(Clearance::BetweenSeats), _) => {
            format!("{piece} and {with} leave no room for an arm between them")
        }
        (Rule::Clearance(Clearance::BetweenGroups), _) => {
            format!("there is too little room to walk between {piece} and {with}, which is of another group")
        }
        (Rule::Clearance(Clearance::TableAxis), _) => {
            format!("{piece} finds no place before the middle of {with}")
        }
        (Rule::Clearance(Clearance::ScreenAxis), _) => format!("{piece} and {with} find no place on one axis"),
        (Rule::ScreenTurn, _) => format!("one would turn the head too far between {piece} and {with}"),
        (Rule::Clearance(Clearance::ScreenSight), _) => {
            format!("{piece} and {with} do not leave the screen in clear sight")
        }
        (Rule::Clearance(Clearance::SolidWall), _) => {
            format!("{piece} would {stand} before a doorway, or past the end of its wall")
        }
        (Rule::Clearance(Clearance::BeforeOpening), _) => format!("{piece} would {stand} too near before {with}"),
        (Rule::Clearance(Clearance::BehindSeat), _) => {
            format!("behind {piece} there would be a slot, neither closed nor wide enough to walk through")
        }
        (Rule::Clearance(Clearance::DiningPlaces), _) => {
            format!("{piece} finds no room for all the places that it is to seat")
        }
        (Rule::Use, _) => format!("{piece} would {stand} in the way of whoever uses {with}"),
        (Rule::ReturnOffWall, _) => format!("the back of the return of {piece} would {stand} too near to its wall"),
        (Rule::Clearance(Clearance::TurningCircle), _) => "there is no free circle to turn a wheelchair in".to_owned(),
        (rule, _) => format!("{piece} lacks room ({})", rule.key().replace('_', " ")),
    }
}

/// What the rule asks.
fn asks(by: Asked, figure: &str) -> String {
    match by {
        Asked::Clearance(rule) => format!("{} asks for {figure}", rule.key().replace('_', " ")),
        Asked::KeepClear(_) => format!("{figure} stay clear of it"),
    }
}

/// The least size of a piece: `150 cm x 80 cm`.
fn sizes(brief: &Brief, least: Option<Size>) -> String {
    let told = |length: f64| brief.units.words(length, Rounding::Up);
    least.map_or_else(String::new, |least| size(least, " x ", told))
}
