//! The room as it stands: what is wrong with it, its ways and its scores, and what another room would gain over it.
//!
//! Nothing is decided here. Where each piece stands comes from the file ([`Placement`]); the arrangement is read off it
//! ([`Arrangement::as_placed`]); rules are checked by `verify`, as every layout is, and scores are those of `criteria`. What was
//! measured of a room that stands is taken at its word: no wall is moved in, since no piece reaches into one.

mod as_measured;
mod composed;
mod gain;
mod judged_room;
mod placement;
mod slots;
mod spot;
mod tolerance;

use elbowroom_model::{Brief, Clearance};

use crate::answer::{TurningCircle, thousandth};
use crate::arrangement::Arrangement;
use crate::criteria::{self, LayoutInRoom};
use crate::gaps::gaps;
use crate::layout::Layout;
use crate::ranking::{self, Entrant};
use crate::routes::Floor;
use crate::site::Site;
use crate::verify::{Breach, CheckedRoom, Wrong, verify};
use slots::without_slots_by_a_finger;
use tolerance::{FURTHEST_TABLE, NEAREST_TABLE};

pub use gain::{Gain, gains};
pub use judged_room::JudgedRoom;
pub use placement::{NotPlaced, Placement};
pub use spot::spot;

/// Judges the room in which the pieces of a brief stand as `placement` says.
///
/// # Errors
/// No seat stands, so there is nothing to judge.
pub fn judge(brief: &Brief, placement: &Placement) -> Result<JudgedRoom, NotPlaced> {
    judged(as_measured::as_measured(brief, placement), placement, brief.room.measured_within)
}

/// Judges a plan in which somebody has moved something: walls stay moved in by what a measurement may be off, as they are for
/// every option, and sizes are held against the ranges of the file.
///
/// # Errors
/// No seat stands, so there is nothing to judge.
pub fn judge_plan(brief: &Brief, placement: &Placement) -> Result<JudgedRoom, NotPlaced> {
    judged(brief.clone(), placement, brief.room.measured_within)
}

fn judged(brief: Brief, placement: &Placement, within: f64) -> Result<JudgedRoom, NotPlaced> {
    let site = Site::of(&brief);
    let floor = Floor::of(&brief, &site);
    let layout = placement.layout(&brief);
    let layout = Layout { turning_circle: floor.find_circle(&brief, &layout), ..layout };
    let arrangement = Arrangement::as_placed(&brief, &site, &layout).ok_or(NotPlaced::NoSeat)?;
    let routes = floor.routes(&brief, &layout);
    let checked = CheckedRoom::of(&brief);
    let broken = verify(&checked, &layout, &arrangement, &routes);
    let mut broken = without_slots_by_a_finger(&checked, &layout, &arrangement, &routes, broken);
    broken.retain(|breach| is_of_the_room(breach) && !is_table_in_reach(&brief, breach, within));
    let main_seat = arrangement.main_seat;
    let mut composition = composed::composed(&brief, &site, &arrangement, &layout);
    let in_room = LayoutInRoom {
        brief: &brief,
        site: &site,
        layout: &layout,
        routes: &routes,
        main_seat,
        composition: Some(&composition),
    };
    let (mut judgements, walkers) = criteria::judge_with_walkers(&in_room);
    walkers.take_into(&mut composition);
    judgements.iter_mut().for_each(|judgement| judgement.score = thousandth(judgement.score));
    let ratings = ranking::ratings(&[Entrant::of(&judgements, 0)], &brief.wishes, None);
    let circle = layout.turning_circle.zip(brief.rules.turning_circle());
    Ok(JudgedRoom {
        main_seat,
        choices: arrangement.choices,
        broken,
        score: ratings.first().map_or(0.0, |rating| thousandth(rating.score)),
        judgements,
        gaps: gaps(&brief, &site, &layout),
        routes,
        composition,
        turning_circle: circle.map(|(centre, diameter)| TurningCircle { centre, diameter }),
        layout,
        brief,
    })
}

/// Whether all that is wrong is that a table does not lie to the millimetre where plans put it: it lies no farther than the range
/// that the figure comes from, or the tape may be off by as much (mm).
fn is_table_in_reach(brief: &Brief, breach: &Breach, within: f64) -> bool {
    let needs = brief.rules.get(Clearance::SeatToTable);
    match breach.wrong {
        Wrong::TableTooFar => {
            let furthest = if needs < NEAREST_TABLE { needs } else { needs.max(FURTHEST_TABLE) };
            needs + breach.short_by <= furthest + within
        }
        Wrong::TableTooNear => breach.short_by <= within,
        _ => false,
    }
}

/// Whether something is wrong with the room, and not with what is told of it.
const fn is_of_the_room(breach: &Breach) -> bool {
    !matches!(
        breach.wrong,
        Wrong::CanGrow(_)
            | Wrong::NoRoute
            | Wrong::RouteNeedsOther
            | Wrong::RouteNarrower
            | Wrong::RouteWider
            // How plans turn a chair is no rule for who has turned it.
            | Wrong::TurnedOtherwise
            | Wrong::TurnedFrom
            | Wrong::TurnedUnlike
    )
}
