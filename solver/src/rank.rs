//! From a brief to an answer: enumerate, search, check again, judge, order, and say what holds each size.

use elbowroom_model::{Brief, Room};
use rayon::prelude::*;

use crate::answer::{self, Answer, PieceSizes, Work};
use crate::arrangement::{Arrangement, Dropped, Enumeration, enumerate};
use crate::attempt::{Attempts, Tried};
use crate::candidate::Candidate;
use crate::notice::{Notice, notices, of_options};
use crate::ranking;
use crate::refusal::{Refusal, Remedy, Why};
use crate::routes::Floor;
use crate::search::{Budget, RoomContext, Tally};
use crate::site::Site;
use crate::stop::Stop;
use crate::way_in::{self, Blocked, Narrowed};
use crate::{Limits, Part, Unwatched, Watch, part, refusal, twins, verify};

/// Arrangements fewer than this are searched on one thread: below a millisecond a thread costs more than it brings.
const WORTH_THREADS: usize = 6;

/// Nodes that one search of each arrangement of a room of [`USUAL_PIECES`] pieces may take together, and that each is given at
/// least for each piece (a layout lies about three nodes deep for each). A node costs about the square of the number of pieces.
const NODES_OF_ALL: usize = 90_000;
const NODES_OF_EACH_PIECE: usize = 8;
const USUAL_PIECES: usize = 6;

/// Hostile rooms end too: all searches of all arrangements take no more than so many that use their nodes up, in a room of
/// [`MANY_PIECES`] pieces and [`MANY_THINGS`] things at its walls (of more a node costs more, and it takes more of them); but
/// each arrangement may take so many nodes for each piece as it takes to find it a place.
const USED_UP: usize = 80;
const NODES_TO_PLACE_A_PIECE: usize = 15;
const MANY_PIECES: usize = 12;
const MANY_THINGS: usize = 20;

/// Ranked, checked options for a sound brief; why the others are refused; and what would help where nothing fits. Where
/// the brief has a way in, no size is larger than what gets in by it.
#[must_use]
pub fn rank(brief: &Brief, limits: &Limits, watch: &dyn Watch) -> Answer {
    match way_in::narrowed(brief) {
        Narrowed::Same => rank_as_it_is(brief, limits, watch),
        Narrowed::To(narrowed, left_out) => {
            let mut answer = rank_as_it_is(&narrowed, limits, watch);
            answer.notices.splice(..0, left_out.iter().copied().map(Notice::DoesNotGetIn));
            Answer { asked: brief.clone(), outside: left_out, ..answer }
        }
        Narrowed::Blocked(blocked) => stopped_on_the_way(brief, &blocked, limits),
    }
}

fn rank_as_it_is(brief: &Brief, limits: &Limits, watch: &dyn Watch) -> Answer {
    watch.began(Part::Ground);
    let site = Site::of(brief);
    let room = RoomContext::of(brief, &site).until(Stop::at(watch));
    let floor = Floor::of(brief, &site);
    let enumeration = enumerate(brief, &site);
    watch.ended(Part::Ground);
    let budget = shared(brief, enumeration.arrangements.len(), limits);
    let limits = &Limits { nodes: budget.of_one, ..*limits };
    let checked = verify::CheckedRoom::of(brief);
    let attempts = Attempts { room: &room, floor: &floor, checked: &checked, budget, watch };
    let tried = try_all(&attempts, &enumeration, |arrangement| attempts.attempt(arrangement));
    let mut programs: usize = tried.iter().map(|tried| tried.programs).sum();
    let tally = tried.iter().fold(Tally::default(), |sum, tried| sum.plus(&tried.tally));
    let (mut candidates, mut refused) = (Vec::new(), Vec::new());
    for Tried { result, .. } in tried {
        match result {
            Ok(candidate) => candidates.push(candidate),
            Err(refusal) => refused.push(refusal),
        }
    }
    let twins::Distinct { mut candidates, mut refused, twins } =
        twins::told_once(&enumeration, brief, candidates, refused, |one| one.largest.told_size());
    // A tie in scores goes to the larger sizes, then to the order of the enumeration, which geometry gives.
    candidates.sort_by(|one, other| other.largest.told_size().total_cmp(&one.largest.told_size()));
    refused.extend(enumeration.dropped.iter().map(dropped_refusal));
    let mut entrants: Vec<ranking::Entrant> = candidates.iter().map(|candidate| candidate.planned.entrant()).collect();
    ranking::set_ill_composed_aside(&mut entrants, &brief.wishes);
    let order = part(watch, Part::Order, || ranking::order(&entrants, &brief.wishes, limits.by));
    let families = ranking::family::families(
        &order.iter().map(|which| &candidates[*which].planned.arrangement.choices).collect::<Vec<_>>(),
    );
    let context = answer::AnswerContext { room: &room, floor: &floor, limits, families: &families };
    // How firm the order is and how large the pieces can be have nothing to do with one another.
    let (ratings, sizes) = rayon::join(
        || part(watch, Part::Order, || ranking::ratings(&entrants, &brief.wishes, limits.by)),
        || sizes_of_all(&context, &candidates, &order, watch),
    );
    let mut options = Vec::with_capacity(order.len());
    for (&which, (sizes, more)) in order.iter().zip(sizes) {
        programs += more;
        options.push(answer::option(&context, (&candidates, &order), &ratings[which], which, sizes));
    }
    let remedies = if options.is_empty() {
        part(watch, Part::Remedies, || {
            refusal::remedies(brief, room.stop, &|changed, fitting| is_option(changed, fitting, limits, room.stop))
        })
    } else {
        Vec::new()
    };
    let mut told = notices(brief, &floor, &enumeration);
    let heeded = of_options(brief, &options);
    told.retain(|notice| !matches!(notice, Notice::Caution(caution) if heeded.iter().any(|one| one.says(*caution))));
    told.extend(heeded);
    Answer {
        asked: brief.clone(),
        brief: brief.clone(),
        outside: Vec::new(),
        options,
        refused,
        remedies,
        notices: told,
        work: Work { twins, ..work(&enumeration, programs, tally) },
    }
}

fn dropped_refusal(Dropped { arrangement, reason }: &Dropped) -> Refusal {
    Refusal { key: arrangement.key.clone(), why: Why::NoRoom(*reason) }
}

fn work(enumeration: &Enumeration, programs: usize, tally: Tally) -> Work {
    Work {
        arrangements: enumeration.arrangements.len() + enumeration.dropped.len(),
        dropped: enumeration.dropped.len(),
        twins: 0,
        programs,
        nodes: tally.nodes,
        given_up: tally.pruned,
        layouts: tally.layouts,
        too_narrow: tally.too_narrow,
        dead_ends: tally.dead_ends,
        seconds: 0.0,
    }
}

/// The result where a piece that is needed cannot come in: nothing was solved.
fn stopped_on_the_way(brief: &Brief, blocked: &[Blocked], limits: &Limits) -> Answer {
    let floor = Floor::of(brief, &Site::of(brief));
    let remedy = way_in::eased(brief, blocked).and_then(|(eased, change)| {
        let options = rank(&eased, &Limits { shown: 0, ..*limits }, &Unwatched).options.len();
        (options > 0).then(|| Remedy { changes: vec![change], options })
    });
    Answer {
        asked: brief.clone(),
        brief: brief.clone(),
        outside: Vec::new(),
        options: Vec::new(),
        refused: blocked.iter().map(Blocked::refusal).collect(),
        remedies: remedy.into_iter().collect(),
        notices: notices(brief, &floor, &Enumeration::default()),
        work: Work::default(),
    }
}

/// The nodes that fall to each of so many arrangements.
pub(crate) fn shared(brief: &Brief, arrangements: usize, limits: &Limits) -> Budget {
    let (pieces, arrangements) = (brief.pieces.len().max(1), arrangements.max(1));
    let share = NODES_OF_ALL * USUAL_PIECES * USUAL_PIECES / (pieces * pieces) / arrangements;
    let (many, things) = (pieces.max(MANY_PIECES), things_at_walls(&brief.room).max(MANY_THINGS));
    let of_room = limits.nodes.max(Limits::default().nodes).saturating_mul(USED_UP) / things * MANY_THINGS;
    let in_all = of_room / arrangements * MANY_PIECES * MANY_PIECES / (many * many);
    Budget {
        of_one: limits.nodes.min(share.max(NODES_OF_EACH_PIECE * pieces)),
        in_all: in_all.max(NODES_TO_PLACE_A_PIECE * pieces),
    }
}

/// Things at walls; a doorway, from which ways lead to all others, counts for two.
fn things_at_walls(room: &Room) -> usize {
    room.items.len() + room.items.iter().filter(|item| item.kind.leads_to().is_some()).count()
}

/// Each arrangement tried, in the order of the enumeration.
pub(crate) fn try_all<'a, T: Send>(
    attempts: &Attempts<'_, 'a>,
    enumeration: &'a Enumeration,
    attempt: impl Fn(&'a Arrangement) -> Tried<T> + Sync,
) -> Vec<Tried<T>> {
    let all = enumeration.arrangements.len();
    let done = std::sync::atomic::AtomicUsize::new(0);
    let in_turn = |arrangement: &'a Arrangement| {
        let tried =
            if attempts.room.stop.is_asked() { Tried::not_looked_at(arrangement) } else { attempt(arrangement) };
        attempts.watch.solved(done.fetch_add(1, std::sync::atomic::Ordering::Relaxed) + 1, all);
        tried
    };
    if all < WORTH_THREADS {
        return enumeration.arrangements.iter().map(in_turn).collect();
    }
    // One by one: they differ tenfold in what they cost. Those whose main seat stands free cost most and go first, so that
    // no thread is left with one of them when all else is done.
    let mut turns: Vec<(usize, &Arrangement)> = enumeration.arrangements.iter().enumerate().collect();
    turns.sort_by_key(|(_, arrangement)| arrangement.choices.seat_back.is_some());
    let turns = turns.par_iter().with_max_len(1);
    let mut tried: Vec<(usize, Tried<T>)> = turns.map(|(place, arrangement)| (*place, in_turn(arrangement))).collect();
    tried.sort_by_key(|(place, _)| *place);
    tried.into_iter().map(|(_, tried)| tried).collect()
}

/// Whether a brief is answered with an option by one of these arrangements, tried one by one, and the programs that took.
fn is_option(brief: &Brief, arrangements: &[Arrangement], limits: &Limits, stop: Stop<'_>) -> (bool, usize) {
    let site = Site::of(brief);
    let (room, floor) = (RoomContext::of(brief, &site).until(stop), Floor::of(brief, &site));
    let checked = verify::CheckedRoom::of(brief);
    let budget = shared(brief, enumerate(brief, &site).arrangements.len(), limits);
    let attempts = Attempts { room: &room, floor: &floor, checked: &checked, budget, watch: &Unwatched };
    let mut programs = 0;
    let makes_one = |arrangement: &Arrangement| {
        let tried = attempts.attempt(arrangement);
        programs += tried.programs;
        tried.result.is_ok()
    };
    (arrangements.iter().any(makes_one), programs)
}

/// How large the pieces of one option of an answer may be, with what holds each and how large each could be by itself, as
/// [`rank`] tells it of the options that are shown. `brief`: as it was solved ([`Answer::brief`]). `None` where no
/// arrangement of this key fits, or where the work was stopped before that was known.
#[must_use]
pub fn sizes_in_full(brief: &Brief, key: &str, limits: &Limits, watch: &dyn Watch) -> Option<Vec<PieceSizes>> {
    let site = Site::of(brief);
    let room = RoomContext::of(brief, &site).until(Stop::at(watch));
    let floor = Floor::of(brief, &site);
    let enumeration = enumerate(brief, &site);
    let arrangement = enumeration.arrangements.iter().find(|arrangement| arrangement.key == key)?;
    let budget = shared(brief, enumeration.arrangements.len(), limits);
    let limits = &Limits { nodes: budget.of_one, ..*limits };
    let checked = verify::CheckedRoom::of(brief);
    let attempts = Attempts { room: &room, floor: &floor, checked: &checked, budget, watch };
    let candidate = attempts.attempt(arrangement).result.ok()?;
    let context = answer::AnswerContext { room: &room, floor: &floor, limits, families: &[] };
    let (mut sizes, _) = part(watch, Part::Sizes, || answer::sizes(&context, &candidate, true));
    sizes.iter_mut().for_each(answer::told_to_a_thousandth);
    (!room.stop.is_asked()).then_some(sizes)
}

/// How large the pieces of every option may be, best first, and the programs that their figures took.
fn sizes_of_all(
    context: &answer::AnswerContext<'_>,
    candidates: &[Candidate<'_>],
    order: &[usize],
    watch: &dyn Watch,
) -> Vec<(Vec<PieceSizes>, usize)> {
    let of_one = |(place, &which): (usize, &usize)| {
        part(watch, Part::Sizes, || answer::sizes(context, &candidates[which], context.is_shown(place)))
    };
    order.par_iter().with_max_len(1).enumerate().map(of_one).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Nodes that a room may take in all, of so many pieces that may be left out.
    fn in_all(pieces: usize, arrangements: usize) -> usize {
        let row = "  - { kind: plant, name: plants, needed: false, count: ";
        let text = format!(
            "units: cm\nwalls:\n  - {{ name: a, start: [0, 0] }}\n  - {{ name: b, start: [900, 0] }}\n  \
             - {{ name: c, start: [900, -700] }}\n  - {{ name: d, start: [0, -700] }}\n\
             pieces:\n  - {{ kind: sofa }}\n{row}{} }}\n",
            pieces - 1
        );
        let brief = elbowroom_model::scenario::read(&text, None).expect("a sound room");
        shared(&brief, arrangements, &Limits::default()).in_all
    }

    #[test]
    fn a_usual_room_may_use_up_many_searches_and_a_hostile_one_few() {
        assert!(in_all(8, 20) >= 3 * Limits::default().nodes, "{}", in_all(8, 20));
        assert!(in_all(24, 256) < Limits::default().nodes / 5, "{}", in_all(24, 256));
        assert!(in_all(24, 256) >= 10 * 24, "each piece is still looked for");
    }
}
