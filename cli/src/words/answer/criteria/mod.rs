//! Criteria in words: the sentence that is made from a finding, one file a criterion.

mod balance;
mod daylight;
mod entrance;
mod fireside;
mod left_out;
mod names;
mod openness;
#[cfg(test)]
mod sample;
mod screen;
mod seats;
mod talk;
mod upkeep;
mod view;
mod ways;

use elbowroom_model::Brief;
use elbowroom_model::article::capital;
use elbowroom_solver::criteria::{Absent, Finding, Judgement};
use names::piece;

pub(crate) use left_out::left_out;

/// The finding as one sentence.
pub(crate) fn reason(brief: &Brief, finding: &Finding) -> String {
    let told = match finding {
        Finding::View(finding) => view::reason(brief, finding),
        Finding::Entrance(finding) => entrance::reason(brief, finding),
        Finding::Openness(finding) => openness::reason(brief, finding),
        Finding::Ways(finding) => ways::reason(brief, finding),
        Finding::Screen(finding) => screen::reason(brief, finding),
        Finding::Talk(finding) => talk::reason(brief, finding),
        Finding::Daylight(finding) => daylight::reason(brief, finding),
        Finding::Seats(finding) => seats::reason(brief, finding),
        Finding::Balance(finding) => balance::reason(brief, finding),
        Finding::Upkeep(finding) => upkeep::reason(brief, finding),
        Finding::Fireside(finding) => fireside::reason(brief, finding),
        Finding::Absent(what) => absent(brief, *what),
    };
    capital(&told) + "."
}

/// What speaks for an option that stands out in a criterion, as one sentence: its score, beside the mean score of the next ways
/// and how many these are where it stands before such, and what the finding says first. What speaks against it stands in
/// [`reason`].
pub(crate) fn speaks_for(brief: &Brief, judgement: &Judgement, next: Option<(f64, usize)>) -> String {
    let next = next.map_or_else(String::new, |(mean, ways)| match ways {
        1 => format!(", the next way {mean:.0}"),
        _ => format!(", the next {ways} ways {mean:.0} on average"),
    });
    let (name, score) = (crate::words::criteria::name(judgement.criterion), judgement.score);
    format!("{} scores {score:.0}{next}: {}.", capital(name), lead(brief, &judgement.finding))
}

/// What a finding says first.
fn lead(brief: &Brief, finding: &Finding) -> String {
    match finding {
        Finding::View(finding) => view::lead(brief, finding),
        Finding::Entrance(finding) => entrance::lead(brief, finding),
        Finding::Openness(finding) => openness::reason(brief, finding),
        Finding::Ways(finding) => ways::lead(brief, finding),
        Finding::Screen(finding) => screen::lead(brief, finding),
        Finding::Talk(finding) => talk::lead(brief, finding),
        Finding::Daylight(finding) => daylight::lead(brief, finding),
        Finding::Seats(finding) => seats::lead(finding),
        Finding::Balance(finding) => balance::lead(brief, finding),
        Finding::Upkeep(finding) => upkeep::lead(brief, finding),
        Finding::Fireside(finding) => fireside::lead(brief, finding),
        Finding::Absent(what) => absent(brief, *what),
    }
}

fn absent(brief: &Brief, what: Absent) -> String {
    match what {
        Absent::Seats => "no seat stands, so nobody sits here".to_owned(),
        Absent::Screen(unit) => format!("{} does not stand, so there is no screen to watch", piece(brief, unit)),
        Absent::Ways => "nothing stands here that a way leads to".to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::sample::{UNIT, told};
    use elbowroom_solver::criteria::{Absent, Finding};

    #[test]
    fn what_does_not_stand_is_said() {
        assert_eq!(told(Finding::Absent(Absent::Seats)), "No seat stands, so nobody sits here.");
        let screen = told(Finding::Absent(Absent::Screen(UNIT)));
        assert_eq!(screen, "The media unit does not stand, so there is no screen to watch.");
        assert_eq!(told(Finding::Absent(Absent::Ways)), "Nothing stands here that a way leads to.");
    }
}
