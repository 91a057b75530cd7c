//! Notices in words.

use elbowroom_model::Brief;

use super::arrangement::only;
use super::caution::caution;
use super::children::for_children;
use super::criteria::left_out as criterion_left_out;
use super::in_options::Told;
use super::screen_overhang::{screen_beyond, screen_overhang};
use elbowroom_solver::answer::{Answer, RankedOption};
use elbowroom_solver::judge::JudgedRoom;
use elbowroom_solver::notice::Notice;
use elbowroom_solver::routes::{End, HeldToEmptyRoom};
use elbowroom_solver::{Layout, Placed};

/// Everything that must be told beside the options: what the reading of the file has to say, then the rest.
pub(crate) fn notices(answer: &Answer) -> Vec<String> {
    let all = Told { shown: answer.options.len(), of: answer.options.len() };
    of_the_file(answer).chain(answer.notices.iter().map(|one| notice(answer, one, all))).collect()
}

/// The same for a sheet of some options: what is to be heeded in others alone stands on theirs.
pub(crate) fn notices_of(answer: &Answer, options: &[&RankedOption]) -> Vec<String> {
    of_the_file(answer).chain(told_of(answer, options, answer.notices.iter().collect())).collect()
}

/// What is to be heeded in an option by whoever lives there, and nothing about the file, the search or the scores.
pub(crate) fn cautions_of(answer: &Answer, option: &RankedOption) -> Vec<String> {
    told_of(answer, &[option], answer.notices.iter().filter(|one| one.is_for_who_lives_there()).collect())
}

/// What of that is so in every plan of the room.
pub(crate) fn cautions_of_all(answer: &Answer) -> Vec<String> {
    told_of(answer, &[], answer.notices.iter().filter(|one| one.is_for_who_lives_there()).collect())
}

/// What of that is so because of how this option stands.
pub(crate) fn own_cautions(answer: &Answer, option: &RankedOption) -> Vec<String> {
    told_of(answer, &[option], answer.notices.iter().filter(|one| one.of(&[]).is_none()).collect())
}

/// All that is to be told of the room as it stands: options stand elsewhere, so what is to be heeded in them is left out.
pub(crate) fn notices_as_it_stands(room: &JudgedRoom, answer: &Answer) -> Vec<String> {
    let others = of_the_file(answer).chain(told_of(answer, &[], answer.notices.iter().collect()));
    others.chain(screens_beyond(&room.brief, &room.layout)).collect()
}

/// What of that is to be heeded by whoever lives there.
pub(crate) fn cautions_as_it_stands(room: &JudgedRoom, answer: &Answer) -> Vec<String> {
    cautions_of_all(answer).into_iter().chain(screens_beyond(&room.brief, &room.layout)).collect()
}

/// Screens that are wider than what carries them, as everything stands.
pub(crate) fn screens_beyond<'a>(brief: &'a Brief, layout: &'a Layout) -> impl Iterator<Item = String> + 'a {
    let beyond = |placed: &Placed| screen_beyond(brief, brief.piece(placed.piece)?, placed.size.width);
    layout.placed.iter().filter_map(beyond)
}

/// Notices on a sheet of these options.
fn told_of(answer: &Answer, options: &[&RankedOption], notices: Vec<&Notice>) -> Vec<String> {
    let ranks: Vec<usize> = options.iter().map(|option| option.rank).collect();
    let told = Told { shown: options.len(), of: answer.options.len() };
    notices.into_iter().filter_map(|one| one.of(&ranks)).map(|one| notice(answer, &one, told)).collect()
}

/// What the reading of the file has to say.
fn of_the_file(answer: &Answer) -> impl Iterator<Item = String> + '_ {
    answer.asked.notices.iter().map(|notice| notice.text.clone())
}

/// The notice as one or two sentences.
fn notice(answer: &Answer, notice: &Notice, told: Told) -> String {
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
        Notice::ForChildren(heed) => for_children(brief, told, heed),
        Notice::ScreenOverhang(overhang) => screen_overhang(brief, told, overhang),
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

#[cfg(test)]
mod tests {
    use elbowroom_model::scenario;
    use elbowroom_solver::answer::Answer;
    use elbowroom_solver::{Limits, Unwatched, rank};

    use super::{cautions_of, cautions_of_all, notices, notices_of, own_cautions};

    /// A screen of 43 in is 95 cm wide, its unit 90 at most; children live here, and a bookcase may stand below the window.
    const ROOM: &str = "units: cm\nwalls:\n  - { length: 420, holds: [{ kind: window, at: 60, width: 300, sill: 60 }] }\n  \
                        - { length: 360, holds: [{ kind: door, at: 20, width: 80, swings: slides, leads_to: entrance }] }\n  \
                        - { length: 420 }\n  - { length: 360 }\npieces:\n  - { kind: sofa, width: 180..200 }\n  \
                        - { kind: media-unit, screen: 43 in, width: 85..90 }\n  - { kind: sideboard, height: 50 }\n\
                        household: { children: true }\n";

    const OVERHANG: &str = "The screen on the media unit is 95 cm wide";

    fn answer() -> Answer {
        rank(&scenario::read(ROOM, None).unwrap(), &Limits { shown: 0, ..Limits::default() }, &Unwatched)
    }

    #[test]
    fn a_screen_wider_than_its_unit_is_told_on_every_page() {
        let answer = answer();
        let is_told = |told: &[String]| told.iter().any(|told| told.starts_with(OVERHANG));
        assert!(answer.options.len() > 1 && is_told(&notices(&answer)), "{:#?}", notices(&answer));
        for option in &answer.options {
            assert!(is_told(&notices_of(&answer, &[option])) && is_told(&own_cautions(&answer, option)));
        }
        assert!(!is_told(&cautions_of_all(&answer)));
    }

    #[test]
    fn a_sheet_of_one_option_tells_its_own_cautions_and_names_no_option() {
        let answer = answer();
        let below = |told: &[String]| told.iter().any(|told| told.contains("climbs to the window"));
        let pages: Vec<Vec<String>> = answer.options.iter().map(|option| cautions_of(&answer, option)).collect();
        assert!(pages.iter().any(|page| below(page)) && !pages.iter().all(|page| below(page)), "{pages:#?}");
        for told in pages.iter().flatten() {
            assert!(!told.contains("in option") && !told.contains("in every option"), "{told}");
        }
    }

    #[test]
    fn a_client_is_told_nothing_about_the_file_the_scores_or_the_search() {
        let answer = answer();
        let working: Vec<String> = notices_of(&answer, &[&answer.options[0]]);
        let client = cautions_of(&answer, &answer.options[0]);
        let about_scores = |told: &&String| told.contains("left out");
        assert!(working.iter().any(|told| about_scores(&told)), "{working:#?}");
        assert_eq!(client.iter().find(about_scores), None);
        assert!(client.iter().any(|told| told.contains("Keep exits")), "{client:#?}");
    }
}
