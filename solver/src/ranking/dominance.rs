//! Options that another betters everywhere, and options that no weights put first.

use super::table::{Table, dot, weights};
use super::tier::Tier;
use super::tolerance::TIE;
use crate::program::{DefaultEngine, Engine, Row, Status};

/// For each option the first of `best` that is at least as good in every criterion and better in one, and stands no lower.
/// What is set aside takes no part in it.
pub(super) fn dominated_by(table: &Table, tiers: &[Tier], best: &[usize]) -> Vec<Option<usize>> {
    let rows = &table.rows;
    let betters = |option: usize| {
        let may = |rival: &usize| tiers[option] != Tier::Aside && tiers[*rival] <= tiers[option];
        best.iter().copied().filter(may).find(|rival| dominates(&rows[*rival], &rows[option]))
    };
    (0..rows.len()).map(betters).collect()
}

fn dominates(rival: &[f64], option: &[f64]) -> bool {
    as_good(rival, option) && rival.iter().zip(option).any(|(rival, option)| rival - option > TIE)
}

fn as_good(rival: &[f64], option: &[f64]) -> bool {
    rival.iter().zip(option).all(|(rival, option)| option - rival <= TIE)
}

/// For each option whether no weights at all put it strictly first. `strictly` knows options that some weights did.
pub(super) fn never_first(table: &Table, dominated: &[Option<usize>], strictly: &[bool]) -> Vec<bool> {
    let never = |option: usize| !strictly[option] && (dominated[option].is_some() || !some_weights(table, option));
    (0..table.rows.len()).map(never).collect()
}

/// Whether some weights put the option strictly first: its most lead over all rivals, as a linear program that takes
/// in a rival when it stands in the way.
fn some_weights(table: &Table, option: usize) -> bool {
    let own = &table.rows[option];
    let criteria = own.len();
    // Variables: the weights, then the lead.
    let mut bounds = vec![(0.0, 1.0); criteria];
    bounds.push((-MOST_LEAD, MOST_LEAD));
    let mut aim = vec![0.0; criteria];
    aim.push(1.0);
    let mut program = DefaultEngine::start(&aim, &bounds);
    let sum: Vec<(usize, f64)> = (0..criteria).map(|place| (place, 1.0)).collect();
    let mut status = program.add(&[Row::at_most(sum.clone(), 1.0), Row::at_least(sum, 1.0)]);
    let mut met = vec![false; table.rows.len()];
    while status == Status::Optimal {
        let weights = weights(&program.values()[..criteria]);
        let rivals = (0..table.rows.len()).filter(|rival| *rival != option);
        let leads = rivals.map(|rival| (rival, dot(own, &weights) - dot(&table.rows[rival], &weights)));
        // The weights themselves are the proof: whatever the program rounded, the lead is what they give.
        let Some((rival, lead)) = leads.min_by(|one, other| one.1.total_cmp(&other.1)) else { return true };
        if lead > TIE {
            return true;
        }
        if program.objective() <= TIE || std::mem::replace(&mut met[rival], true) {
            return false;
        }
        let differences = own.iter().zip(&table.rows[rival]).map(|(own, rival)| own - rival).enumerate();
        let ahead = differences.chain(std::iter::once((criteria, -1.0)));
        status = program.add(&[Row::at_least(ahead, 0.0)]);
    }
    false
}

/// Scores lie in 0 to 100.
const MOST_LEAD: f64 = 100.0;
