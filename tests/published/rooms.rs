//! Rooms that nobody here drew: eleven living rooms of real dwellings out of open data (`tests/data/rooms.md` names data
//! sets and licences), each with two briefs.

use elbowroom_solver::Limits;
use elbowroom_solver::refusal::Remedy;

use crate::program::run_with;
use crate::support::checker;
use crate::support::dwellings::dwellings;
use crate::support::plan::{Plan, PlanPiece};
use crate::support::ranked::{brief_of, ranked, ranked_brief};
use crate::support::remedied::remedied;

/// What one asks of each room.
#[derive(Debug, Clone, Copy)]
enum Wanted {
    /// To watch: a sofa, a table where it fits and a screen, at the snug clearances.
    Watching,
    /// To talk and read: a sofa and an armchair, shelves where they fit, at the easy clearances.
    Talking,
}

fn furnished(plan: Plan, wanted: Wanted) -> Plan {
    match wanted {
        Wanted::Watching => Plan { profile: "snug", measured_within: 5.0, ..plan }
            .piece(PlanPiece::of("sofa"))
            .piece(PlanPiece::of("media-unit").also("screen", "40 in"))
            .piece(PlanPiece::of("coffee-table").also("needed", false)),
        Wanted::Talking => Plan { measured_within: 5.0, ..plan }
            .piece(PlanPiece::of("sofa"))
            .piece(PlanPiece::of("armchair"))
            .piece(PlanPiece::of("bookcase").also("needed", false)),
    }
}

/// The exit code where nothing fits.
const NOTHING_FITS: i32 = 3;

/// What is wrong with the result of a room: rules that its options break, or remedies that do not help; empty where all
/// is well.
fn complaints(id: &str, plan: &Plan) -> Vec<String> {
    let text = plan.text();
    let brief = brief_of(&text);
    let ended = run_with(&["rank", "--json", "-"], text.as_bytes());
    let mut all = checker::complaints(&brief, &ended.stdout);
    if ended.code == Some(NOTHING_FITS) {
        let answer = ranked(&text);
        if answer.remedies.is_empty() {
            all.push("nothing fits and nothing helps".to_owned());
        }
        let helps = |remedy: &&Remedy| {
            let changed = remedied(&brief, remedy);
            changed.is_none_or(|brief| !ranked_brief(&brief, Limits::default()).options.is_empty())
        };
        let idle = answer.remedies.iter().filter(|remedy| !helps(remedy));
        all.extend(idle.map(|remedy| format!("it does not help: {remedy:?}")));
    }
    all.into_iter().map(|complaint| format!("{id}: {complaint}")).collect()
}

fn every_room(wanted: Wanted) -> Vec<String> {
    let rooms = dwellings(|plan| furnished(plan, wanted));
    rooms.iter().flat_map(|(id, plan)| complaints(id, plan)).collect()
}

#[test]
fn real_rooms_with_a_screen() {
    let complaints = every_room(Wanted::Watching);
    assert!(complaints.is_empty(), "{complaints:#?}");
}

#[test]
fn real_rooms_to_talk_in() {
    let complaints = every_room(Wanted::Talking);
    assert!(complaints.is_empty(), "{complaints:#?}");
}
