//! Notices in words.

use elbowroom_model::Brief;

use super::arrangement::only;
use super::caution::caution;
use super::children::for_children;
use super::criteria::left_out as criterion_left_out;
use elbowroom_solver::answer::{Answer, RankedOption};
use elbowroom_solver::notice::Notice;
use elbowroom_solver::routes::{End, HeldToEmptyRoom};

/// Everything that must be told beside the options: what the reading of the file has to say, then the rest.
pub(crate) fn notices(answer: &Answer) -> Vec<String> {
    let read = answer.asked.notices.iter().map(|notice| notice.0.clone());
    read.chain(answer.notices.iter().map(|one| notice(answer, one))).collect()
}

/// The same for a sheet of some options: what is to be heeded in others alone stands on theirs.
pub(crate) fn notices_of(answer: &Answer, options: &[&RankedOption]) -> Vec<String> {
    let read = answer.asked.notices.iter().map(|notice| notice.0.clone());
    let concerns = |one: &&Notice| match one {
        Notice::ForChildren(heed) => options.iter().any(|option| heed.concerns(option.rank)),
        _ => true,
    };
    read.chain(answer.notices.iter().filter(concerns).map(|one| notice(answer, one))).collect()
}

/// The notice as one or two sentences.
fn notice(answer: &Answer, notice: &Notice) -> String {
    let brief = &answer.brief;
    match notice {
        Notice::DoesNotGetIn(piece) => {
            let name = answer.asked.piece_name(*piece);
            format!("{name}: does not get in by the way given, and is left out.")
        }
        Notice::OnlyThese => held_to(brief),
        Notice::HeldToEmptyRoom(held) => held_to_empty_room(brief, held),
        Notice::CriterionLeftOut(left_out) => criterion_left_out(*left_out),
        Notice::Caution(one) => caution(*one).to_owned(),
        Notice::ForChildren(heed) => for_children(brief, answer.options.len(), heed),
        Notice::Beyond { beyond, first } => {
            format!("There are more ways to place the seats than are looked at: {beyond} beyond the first {first}.")
        }
    }
}

/// The decisions that the options are held to, by the file and by whoever narrows it.
pub(crate) fn held_to(brief: &Brief) -> String {
    let wanted = brief.wanted.only.iter().chain(&brief.only).map(|one| only(brief, one));
    let not = brief.wanted.exclude.iter().map(|one| format!("not {}", only(brief, one)));
    let told: Vec<String> = wanted.chain(not).collect();
    format!("Only these options are looked at: {}.", told.join("; "))
}

fn held_to_empty_room(brief: &Brief, held: &HeldToEmptyRoom) -> String {
    let (from, to) = (End::Item(held.demand.from).name(brief), held.demand.to.name(brief));
    let [gives, asks] = brief.units.side_by_side(held.gives, brief.rules.get(held.demand.rule));
    let key = held.demand.rule.key();
    format!(
        "Even the empty room gives the way from {from} to {to} no more than {gives}; {key} asks for {asks}. It is held \
         to what the room gives."
    )
}
