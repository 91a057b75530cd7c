//! How firm the order is, in words: shares of first place, and what is set aside.

use elbowroom_model::Brief;
use elbowroom_model::article::the;
use elbowroom_solver::answer::RankedOption;
use elbowroom_solver::criteria::Finding;
use elbowroom_solver::ranking::{Lapse, SetAside};

use super::answer::clause;
use super::list::listed;

/// After a share of first place.
pub(crate) const OF_SHIFTS: &str = "of 100 shifts of your wishes by up to one step";

/// A share of first place, out of a hundred: `83`; what is not quite none or all does not read so.
pub(crate) fn share(share: f64) -> String {
    match share {
        nothing if nothing <= 0.0 => "0".to_owned(),
        little if little < 0.01 => "under 1".to_owned(),
        all if all >= 1.0 => "100".to_owned(),
        much if much > 0.99 => "over 99".to_owned(),
        share => format!("{:.0}", share * 100.0),
    }
}

/// How firm the first place of an option is, or why it should have none.
pub(crate) fn stays_first(brief: &Brief, option: &RankedOption) -> String {
    match &option.set_aside {
        Some(aside) => format!("set aside like all others here: {}", set_aside(brief, option, aside)),
        None => format!("stays first in {} {OF_SHIFTS}", share(option.first_place_share)),
    }
}

/// How often an option that is told after others stands first, or what sets it aside; and how much of comfort is in part.
pub(crate) fn comes_first(brief: &Brief, option: &RankedOption) -> String {
    let stands = match &option.set_aside {
        Some(aside) => format!("set aside: {}", set_aside(brief, option, aside)),
        None if option.first_place_share <= 0.0 => format!("first in none {OF_SHIFTS}"),
        None => format!("first in {} {OF_SHIFTS}", share(option.first_place_share)),
    };
    match option.eased_rules() {
        0 => stands,
        1 => format!("{stands}; 1 rule of comfort is kept in part"),
        eased => format!("{stands}; {eased} rules of comfort are kept in part"),
    }
}

/// Why an option is set aside.
fn set_aside(brief: &Brief, option: &RankedOption, aside: &SetAside) -> String {
    match aside.lapse {
        Lapse::OutOfSight => "no seat place has the screen within 45 degrees of the way it faces".to_owned(),
        Lapse::FireBehind => "the fire is behind the main seat".to_owned(),
        Lapse::Poor => {
            let (name, score) = (super::criteria::name(aside.criterion), aside.score.floor());
            format!("{name} scores {score:.0} of 100, and a wish of 5 is a must")
        }
        // Marks for balance end at 0, which the best of the room may have too: what differs is what is given up.
        Lapse::IllComposed => format!("others here give up far less{}", dearest(brief, option)),
    }
}

/// The same in a few words.
pub(crate) fn set_aside_shortly(aside: &SetAside) -> String {
    match aside.lapse {
        Lapse::OutOfSight => "nobody sees the screen".to_owned(),
        Lapse::FireBehind => "its back to the fire".to_owned(),
        Lapse::Poor => format!("{} {:.0}", super::criteria::name(aside.criterion), aside.score.floor()),
        Lapse::IllComposed => "others give up far less".to_owned(),
    }
}

/// What costs an option most: one term of its composition, or the pieces that it leaves out.
fn dearest(brief: &Brief, option: &RankedOption) -> String {
    let left_out = option.judgements.iter().find_map(|judgement| match &judgement.finding {
        Finding::Balance(balance) => Some(balance.left_out_worth),
        _ => None,
    });
    let (left_out, term) = (left_out.unwrap_or(0.0), option.planned.composition.first());
    match term.filter(|term| term.cost >= left_out) {
        Some(term) => format!("; what weighs most here: {}", clause(brief, term)),
        None if left_out > 0.0 => {
            let names = option.layout.left_out.iter().map(|piece| the(brief.piece_name(*piece)));
            format!("; what weighs most here: it leaves out {}", listed(&names.collect::<Vec<_>>()))
        }
        None => String::new(),
    }
}

/// The same as a sentence.
pub(crate) fn is_set_aside(brief: &Brief, option: &RankedOption, aside: &SetAside) -> String {
    format!("Set aside: {}.", set_aside(brief, option, aside))
}

#[cfg(test)]
mod tests {
    use elbowroom_model::{Criterion, scenario};
    use elbowroom_solver::ranking::{Lapse, SetAside};
    use elbowroom_solver::{Limits, Unwatched, rank};

    use super::comes_first;

    /// Every plan of a room may score 0 for balance: what sets one aside is what it gives up.
    #[test]
    fn what_is_composed_ill_is_told_by_what_weighs_most_and_not_by_a_score() {
        let text = "units: cm\nwalls: [{ length: 500 }, { length: 400 }, { length: 500 }, { length: 400 }]\npieces:\n  \
                    - { kind: sofa }\n  - { kind: media-unit }\n";
        let brief = scenario::read(text, None).unwrap();
        let answer = rank(&brief, &Limits::default(), &Unwatched);
        let paying = answer.options.iter().find(|option| !option.planned.composition.is_empty());
        let mut option = paying.unwrap().clone();
        option.set_aside = Some(SetAside { criterion: Criterion::Balance, score: 0.0, lapse: Lapse::IllComposed });
        let told = comes_first(&brief, &option);
        let most = super::clause(&brief, &option.planned.composition[0]);
        assert!(told.ends_with(&format!("others here give up far less; what weighs most here: {most}")), "{told}");
        assert!(!told.contains("scores"), "{told}");
    }
}
