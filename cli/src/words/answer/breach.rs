//! Breaches in words.

use elbowroom_model::article::{capital, the};
use elbowroom_model::{Brief, Clearance, Dimension, Rule};
use elbowroom_solver::answer::Thing;
use elbowroom_solver::verify::{Breach, Wrong};

use crate::words::lengths::taped;

/// What is wrong with a room, as its owner is told, and what of it is missing: `The sofa stands in the swing of the hall door,
/// by 18 cm (door swing).`
pub(crate) fn broken(brief: &Brief, breach: &Breach) -> String {
    let names: Vec<String> = breach.between.iter().map(|thing| the(thing.name(brief))).collect();
    let what = in_zone(brief, breach).unwrap_or_else(|| wrong(breach.wrong));
    let hung = breach.between.first().filter(|thing| hangs(brief, **thing)).and(what.strip_prefix("stands"));
    let hung = hung.map(|rest| format!("hangs{rest}"));
    let what = hung.as_deref().unwrap_or(what);
    let size = size(breach.wrong).map_or(String::new(), |size| format!(" {}", size.words()));
    let said = match names.as_slice() {
        [] => format!("{what}{size}"),
        [only] => format!("{only} {what}{size}"),
        [first, second] => format!("{first} {what} {second}{size}"),
        [first, second, third, ..] => of_three(brief, breach, [first, second, third], what),
    };
    format!("{}{}.", capital(&said), missing(brief, breach))
}

/// What is wrong between three things.
fn of_three(brief: &Brief, breach: &Breach, [first, second, third]: [&String; 3], what: &str) -> String {
    match breach.wrong {
        Wrong::BeforeTable => format!("{first} stands between {second} and {third}, which lies before it"),
        Wrong::BeforeScreen if breach.between.get(2).is_some_and(|thing| hangs(brief, *thing)) => {
            format!("{first} stands between {second} and {third}")
        }
        Wrong::BeforeScreen => format!("{first} stands between {second} and the screen on {third}"),
        Wrong::NoWallBehind => format!("{first} {what} {second}, where {third} is"),
        _ => format!("{first} {what} {second} and {third}"),
    }
}

/// Whether a thing hangs on a wall: it is a screen, and carries none.
fn hangs(brief: &Brief, thing: Thing) -> bool {
    matches!(thing, Thing::Piece(id) if brief.piece(id).is_some_and(|piece| piece.kind.hangs()))
}

fn is_step(brief: &Brief, thing: Thing) -> bool {
    matches!(thing, Thing::Fixed(id) if brief.room.fixed_thing(id).is_some_and(|thing| thing.step().is_some()))
}

/// What a piece stands in, by what that is kept free for.
fn in_zone(brief: &Brief, breach: &Breach) -> Option<&'static str> {
    if breach.wrong == Wrong::InZone && breach.between.iter().any(|thing| is_step(brief, *thing)) {
        return Some("stands across");
    }
    match (breach.wrong, breach.rule) {
        (Wrong::InZone, Rule::DoorSwing) => Some("stands in the swing of"),
        (Wrong::InZone, Rule::Fixed) => Some("stands where there is"),
        (Wrong::InZone, Rule::KeepClear) => Some("stands too near to"),
        (Wrong::InZone, Rule::Clearance(Clearance::DoorLanding)) => Some("stands in the landing of"),
        (Wrong::InZone, Rule::Clearance(Clearance::LatchSide)) => Some("stands in the way of who pulls open"),
        (Wrong::InZone, Rule::Clearance(Clearance::WindowFront)) => {
            Some("is taller than the sill and stands too near before")
        }
        _ => None,
    }
}

/// What is missing, and the rule: `: passage asks for 61 cm, and it is 12 cm too little`, or `, by 18 cm (door swing)`.
fn missing(brief: &Brief, breach: &Breach) -> String {
    let key = breach.rule.key().replace('_', " ");
    let tape = |length: f64| taped(brief.units, length);
    let asked = breach.rule.clearance().map(|clearance| brief.rules.get(clearance));
    match (asked, breach.short_by) {
        (_, none) if none < LEAST_TOLD => format!(" ({key})"),
        (_, by) if breach.wrong == Wrong::ScreenTurned => {
            format!(": it lies {} further aside than a head turns with ease ({key})", tape(by))
        }
        (Some(asked), missing) if is_short_of_it(breach.wrong) => {
            format!(": {key} asks for {}, and it is {} too little", tape(asked), tape(missing))
        }
        (Some(asked), by) => format!(", by {} ({key}: {})", tape(by), tape(asked)),
        (None, by) => format!(", by {} ({key})", tape(by)),
    }
}

/// Less than this is no figure that a tape shows, mm: a breach that has none is told with half a millimetre.
const LEAST_TOLD: f64 = 1.0;

/// Whether what is told to be missing is missing from the length that the rule asks for.
const fn is_short_of_it(wrong: Wrong) -> bool {
    matches!(
        wrong,
        Wrong::TooNear
            | Wrong::FrontsTooNear
            | Wrong::BeforeFront
            | Wrong::WallBeforeFront
            | Wrong::TableTooNear
            | Wrong::TableNearReturn
            | Wrong::InZone
            | Wrong::GroupsTooNear
    )
}

/// The size that is wrong.
const fn size(wrong: Wrong) -> Option<Dimension> {
    match wrong {
        Wrong::NoSize(size) | Wrong::SizeOutOfRange(size) | Wrong::CanGrow(size) => Some(size),
        // All others are of no size.
        _ => None,
    }
}

/// What completes "the first ... the second".
const fn wrong(wrong: Wrong) -> &'static str {
    match wrong {
        Wrong::LeftOut => "is needed and does not stand",
        Wrong::NoSize(_) => "has no",
        Wrong::SizeOutOfRange(_) => "is out of range in its",
        Wrong::CanGrow(_) => "can be larger in its",
        Wrong::PastWall => "reaches past a wall",
        Wrong::Overlap => "overlaps",
        Wrong::InZone => "enters what is kept free at",
        Wrong::NoWall => "must stand at a wall",
        Wrong::Askew => "has its back at an angle to",
        Wrong::TooNear => "stands too near to",
        Wrong::TooFarOff => "stands too far off",
        Wrong::PastEnd => "stands past the end of",
        Wrong::TurnedOtherwise => "is turned otherwise than it may be",
        Wrong::TurnedFrom => "is turned from the group about",
        Wrong::TurnedUnlike => "is not turned as the mirror image of",
        Wrong::FrontsTooNear => "faces, too near,",
        Wrong::BeforeFront => "stands in what is kept clear before",
        Wrong::WallBeforeFront => "has a wall in what is kept clear before it",
        Wrong::TableTooNear => "lies too near to the front of",
        Wrong::TableBeside => "lies beside the front of",
        Wrong::TableNearReturn => "lies too near to the return of",
        Wrong::TableTooFar => "lies too far before",
        Wrong::BeforeTable => "stands before its table at",
        Wrong::PairNotFacing => "does not face",
        Wrong::PairNotSquare => "does not stand at a right angle to",
        Wrong::NoLegRoom => "has too little room for legs before it at",
        Wrong::FrontClosed => "looks from too near at",
        Wrong::SeatsTouch => "leaves too little room for an arm beside",
        Wrong::TableOffAxis => "lies off the middle of the front of",
        Wrong::ScreenOffAxis => "stands off the axis of",
        Wrong::ScreenTurned => "makes one turn the head too far on",
        Wrong::BeforeScreen => "stands between the screen and",
        Wrong::NoWallBehind => "has too little wall behind it at",
        Wrong::BeforeOpening => "stands too near before",
        Wrong::BeforeUsed => "stands in the way of whoever uses",
        Wrong::TooFewPlaces => "has fewer places than it is to seat",
        Wrong::NoChairAtEnd => "has too little room for the chair at its end before",
        Wrong::AtKeptFree => "must not stand at",
        Wrong::UnderSlope => "is higher than the ceiling before",
        Wrong::GroupsTooNear => "leaves too little room to walk between its group and",
        Wrong::OutOfGroup => "stands away from the seats of its group",
        Wrong::OnOtherLevel => "is on another level than",
        Wrong::NotInItsPlace => "does not stand where it is held",
        Wrong::SlotBehind => "leaves a slot behind it that is no way, before",
        Wrong::NoReasonBehind => "stands free, with neither room nor a reason behind it, before",
        Wrong::ReturnTooNear => "has the back of its return too near to",
        Wrong::Eased => "is told to be eased where nothing is, at",
        Wrong::NoCircle => "There is no circle to turn in",
        Wrong::CircleNotFree => "The circle to turn in is not free",
        Wrong::CircleNotReached => "The circle to turn in is not reached",
        Wrong::NoRoute => "has no route to",
        Wrong::RouteTooNarrow => "has too narrow a route to",
        Wrong::RouteNeedsOther => "does not say what is needed of the route to",
        Wrong::RouteNarrower => "has a narrower route than is told to",
        Wrong::RouteWider => "has a wider route than is told to",
    }
}

#[cfg(test)]
mod tests {
    use elbowroom_model::{Dimension, PieceId, Rule, scenario};

    use super::broken;
    use elbowroom_solver::answer::Thing;
    use elbowroom_solver::verify::{Breach, Wrong};

    #[test]
    fn a_breach_names_what_has_part_in_it() {
        let text = "units: cm\nwalls: [{ length: 500 }, { length: 400 }, { length: 500 }, { length: 400 }]\npieces:\n  \
                    - { kind: sofa }\n  - { kind: armchair }\n";
        let brief = scenario::read(text, None).unwrap();
        let told = |wrong, between: &[Thing], short_by| {
            broken(&brief, &Breach { rule: Rule::Room, wrong, between: between.to_vec(), short_by })
        };
        let pieces = [Thing::Piece(PieceId(0)), Thing::Piece(PieceId(1))];
        assert_eq!(told(Wrong::Overlap, &pieces, 12.0), "The sofa overlaps the armchair, by 1.2 cm (room).");
        let width = Wrong::SizeOutOfRange(Dimension::Width);
        assert_eq!(told(width, &pieces[..1], 0.55), "The sofa is out of range in its width (room).");
        assert_eq!(told(Wrong::NoCircle, &[], 1500.0), "There is no circle to turn in, by 150 cm (room).");
    }
}
