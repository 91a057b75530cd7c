//! Why an arrangement does not fit, as a sentence: what is wrong, what the rule asks, how much of that is missing.

use elbowroom_model::article::{capital, the};
use elbowroom_model::{Brief, Clearance, PieceId, Rounding, Rule};

use super::asked::Asked;
use crate::rules::{Cause, With};
use crate::wording::cause::kept_from;

/// `The sofa would stand too near to the stove: 91.4 cm stay clear of it, and 12 cm are missing.`
pub(super) fn sentence(brief: &Brief, cause: &Cause, short_by: Option<f64>) -> String {
    let said = capital(&said(brief, cause));
    let missing = short_by.map(|short| format!("{} are missing", brief.units.words(short, Rounding::Up)));
    match (asks(brief, cause), missing) {
        (Some(asks), Some(missing)) => format!("{said}: {asks}, and {missing}."),
        (Some(part), None) | (None, Some(part)) => format!("{said}: {part}."),
        (None, None) => format!("{said}."),
    }
}

/// What is wrong.
fn said(brief: &Brief, cause: &Cause) -> String {
    let piece = the(brief.piece_name(cause.piece));
    let with = the(&kept_from(brief, cause.piece, cause));
    match (cause.rule, cause.with) {
        (_, With::Route(_)) => format!("the {} stays too narrow past {piece}", kept_from(brief, cause.piece, cause)),
        (Rule::Room | Rule::OffWall, _) => {
            format!("even at its least, {}, {piece} does not fit within the walls", least(brief, cause.piece))
        }
        (Rule::Group, With::Wall(_)) => {
            format!("standing free, {piece} comes too near to {with} to pass behind it")
        }
        (Rule::Overlap, _) => format!("even at their least {piece} and {with} do not fit beside each other"),
        (Rule::DoorSwing | Rule::Clearance(Clearance::DoorLanding), _) => format!("{piece} would stand in {with}"),
        (Rule::KeepClear, With::Item(item)) => {
            format!("{piece} would stand too near to {}", the(brief.room.item_name(item)))
        }
        (Rule::KeepClear, _) => format!("{piece} would stand too near to {with}"),
        (Rule::Fixed, _) => format!("{piece} would stand where {with} is"),
        (Rule::Clearance(Clearance::WindowFront), _) => {
            format!("{piece} is taller than the sill and would stand before {with}")
        }
        (Rule::Clearance(Clearance::SeatToTable), _) => format!("{piece} finds no place before {with}"),
        (Rule::Clearance(Clearance::ScreenToSeat), _) => format!("{piece} and {with} come too near to each other"),
        (Rule::Clearance(Clearance::FacingSeats), _) => {
            format!("the fronts of {piece} and {with} come too near to each other")
        }
        (Rule::Clearance(Clearance::TurningCircle), _) => "there is no free circle to turn a wheelchair in".to_owned(),
        (rule, _) => format!("{piece} lacks room ({})", rule.key().replace('_', " ")),
    }
}

/// What the rule asks, where that is one length.
fn asks(brief: &Brief, cause: &Cause) -> Option<String> {
    let asked = Asked::by(brief, cause)?;
    let figure = brief.units.finely(asked.figure(brief));
    Some(match asked {
        Asked::Clearance(rule) => format!("{} asks for {figure}", rule.key().replace('_', " ")),
        Asked::KeepClear(_) => format!("{figure} stay clear of it"),
    })
}

/// The least size of a piece: `150 cm x 80 cm`.
fn least(brief: &Brief, piece: PieceId) -> String {
    let Some(piece) = brief.piece(piece) else { return String::new() };
    let least = piece.dimensions().into_iter().filter_map(|dimension| piece.range(dimension)).map(|range| range.least);
    let told: Vec<String> = least.map(|least| brief.units.words(least, Rounding::Up)).collect();
    told.join(" x ")
}
