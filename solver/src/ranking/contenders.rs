//! Options that some weights with the order of the wishes may put first; the others need not be weighed.

use super::tolerance::CLEAR;

/// The options that may be first, or tie with the first. `groups` are the criteria by falling wish, those of one wish
/// together.
pub(super) fn contenders(rows: &[Vec<f64>], groups: &[Vec<usize>]) -> Vec<usize> {
    let rivals = leaders(rows, groups);
    let beaten = |option: &Vec<f64>| rivals.iter().any(|rival| always_ahead(rival, option, groups));
    (0..rows.len()).filter(|option| !beaten(&rows[*option])).collect()
}

/// For each number of criteria the option that leads where these weigh alike and no other weighs anything.
fn leaders<'a>(rows: &'a [Vec<f64>], groups: &[Vec<usize>]) -> Vec<&'a Vec<f64>> {
    let mut sums = vec![0.0; rows.len()];
    let mut found = Vec::new();
    for criterion in groups.iter().flatten() {
        sums.iter_mut().zip(rows).for_each(|(sum, row)| *sum += row[*criterion]);
        let leader = rows.iter().zip(&sums).max_by(|one, other| one.1.total_cmp(other.1));
        found.extend(leader.map(|(row, _)| row));
    }
    found
}

/// Whether the rival leads under all weights that keep the order. Such weights are means of those that weigh the first so
/// many criteria alike and no other; within a group any may be first, the worst for the rival too.
fn always_ahead(rival: &[f64], option: &[f64], groups: &[Vec<usize>]) -> bool {
    let (mut lead, mut count) = (0.0, 0.0);
    groups.iter().all(|group| {
        let mut leads: Vec<f64> = group.iter().map(|criterion| rival[*criterion] - option[*criterion]).collect();
        leads.sort_by(f64::total_cmp);
        leads.iter().all(|next| {
            lead += next;
            count += 1.0;
            lead > CLEAR * count
        })
    })
}

#[cfg(test)]
mod tests {
    use super::contenders;

    #[test]
    fn an_option_that_leads_in_what_counts_least_alone_is_no_contender() {
        let rows = [vec![80.0, 50.0], vec![60.0, 69.0], vec![60.0, 71.0]];
        // First counts most: 80 against 60, and together 130 against 129 and 131.
        assert_eq!(contenders(&rows, &[vec![0], vec![1]]), [0, 2]);
        // Both count alike: the second is behind the third in none and ahead in none, so a tie with it is not beaten.
        assert_eq!(contenders(&rows, &[vec![0, 1]]), [0, 1, 2]);
    }

    #[test]
    fn with_no_criterion_all_stay() {
        assert_eq!(contenders(&[vec![], vec![]], &[]), [0, 1]);
    }
}
