//! How firm the order is, in words: shares of first place, and what is set aside.

use elbowroom_solver::answer::RankedOption;
use elbowroom_solver::ranking::{Lapse, SetAside};

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
pub(crate) fn stays_first(share_of_first: f64, aside: Option<&SetAside>) -> String {
    match aside {
        Some(aside) => format!("set aside like all others here: {}", set_aside(aside)),
        None => format!("stays first in {} {OF_SHIFTS}", share(share_of_first)),
    }
}

/// How often an option that is told after others stands first, or what sets it aside; and how much of comfort is in part.
pub(crate) fn comes_first(option: &RankedOption) -> String {
    let stands = match &option.set_aside {
        Some(aside) => format!("set aside: {}", set_aside(aside)),
        None => format!("first in {} of 100", share(option.first_place_share)),
    };
    match option.eased_rules() {
        0 => stands,
        1 => format!("{stands}; 1 rule of comfort is kept in part"),
        eased => format!("{stands}; {eased} rules of comfort are kept in part"),
    }
}

/// Why an option is set aside.
pub(crate) fn set_aside(aside: &SetAside) -> String {
    match aside.lapse {
        Lapse::OutOfSight => "no seat place has the screen within 45 degrees of the way it faces".to_owned(),
        Lapse::FireBehind => "the fire is behind the main seat".to_owned(),
        Lapse::Poor => {
            let (name, score) = (super::criteria::name(aside.criterion), aside.score.floor());
            format!("{name} scores {score:.0} of 100, and a wish of 5 is a must")
        }
        Lapse::IllComposed => {
            format!("balance scores {:.0} of 100, and others here are composed far better", aside.score.floor())
        }
    }
}

/// The same as a sentence.
pub(crate) fn is_set_aside(aside: &SetAside) -> String {
    format!("Set aside: {}.", set_aside(aside))
}
