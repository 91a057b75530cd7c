//! Options that some shift of the wishes may put first; the others need not be weighed.

use super::draws::Shift;
use super::tolerance::CLEAR;

/// The options that may be first, or tie with the first.
pub(super) fn contenders(rows: &[Vec<f64>], shifts: &[Shift]) -> Vec<usize> {
    let Some(rival) = leader(rows, shifts) else { return Vec::new() };
    (0..rows.len()).filter(|option| !always_ahead(rival, &rows[*option], shifts)).collect()
}

/// The option that leads in the middle of all shifts: whoever is far behind it there seldom leads anywhere.
fn leader<'a>(rows: &'a [Vec<f64>], shifts: &[Shift]) -> Option<&'a Vec<f64>> {
    let middle =
        |row: &Vec<f64>| -> f64 { row.iter().zip(shifts).map(|(it, shift)| it * (shift.least + shift.most)).sum() };
    rows.iter().max_by(|one, other| middle(one).total_cmp(&middle(other)))
}

/// Whether the rival leads under every shift: also where each criterion counts as little as it may for the rival and as
/// much as it may against it.
fn always_ahead(rival: &[f64], option: &[f64], shifts: &[Shift]) -> bool {
    let worst = |lead: f64, shift: &Shift| lead * if lead > 0.0 { shift.least } else { shift.most };
    let leads = rival.iter().zip(option).map(|(rival, option)| rival - option);
    let lead: f64 = leads.zip(shifts).map(|(lead, shift)| worst(lead, shift)).sum();
    // Weights are taken over their sum, which is this at most.
    lead > CLEAR * shifts.iter().map(|shift| shift.most).sum::<f64>()
}

#[cfg(test)]
mod tests {
    use super::super::draws::Shift;
    use super::contenders;

    #[test]
    fn an_option_that_no_shift_puts_ahead_is_no_contender() {
        let shifts = [Shift { least: 3.0, most: 5.0 }, Shift { least: 1.0, most: 3.0 }];
        // Where both count 3, the first option leads the second by 3 x 20 - 3 x 18, and trails the third by 3 x 21 - 3 x 20.
        let rows = [vec![80.0, 50.0], vec![60.0, 68.0], vec![60.0, 71.0]];
        assert_eq!(contenders(&rows, &shifts), [0, 2]);
        // What ties at one end is not beaten.
        assert_eq!(contenders(&[vec![80.0, 50.0], vec![60.0, 70.0]], &shifts), [0, 1]);
    }

    #[test]
    fn with_no_criterion_all_stay() {
        assert_eq!(contenders(&[vec![], vec![]], &[]), [0, 1]);
    }
}
