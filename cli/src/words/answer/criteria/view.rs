//! View in words.

use elbowroom_model::{Brief, Hand, ItemId};

use super::names::{item, items, obstacle, piece};
use elbowroom_solver::criteria::view::{Aside, Hidden, ViewFinding};

pub(super) fn reason(brief: &Brief, finding: &ViewFinding) -> String {
    let mut reason = lead(brief, finding);
    if let Some(hidden) = finding.hidden {
        reason += &format!("; {}", before(brief, finding, hidden));
    }
    if let Some(avoided) = &finding.avoided {
        reason += &format!("; {} {:.0}", fills(brief, &avoided.windows), avoided.angle);
    }
    reason
}

/// How much of what one sees the liked windows fill.
pub(super) fn lead(brief: &Brief, finding: &ViewFinding) -> String {
    let ViewFinding { windows, angle, from_middle, .. } = finding;
    if *angle < 0.5 {
        let lies = if windows.len() == 1 { "lies" } else { "lie" };
        return format!("{} {lies} before none of the seats", items(brief, windows));
    }
    let fills = fills(brief, windows);
    match finding.places {
        1 => format!("from the seat {fills} {angle:.0} degrees"),
        count => format!(
            "from the {count} seat places {fills} {angle:.0} degrees on average, {} the middle of {}{}",
            from(*from_middle),
            piece(brief, finding.seat),
            finding.aside.map_or_else(String::new, aside)
        ),
    }
}

/// How much of it fills what one sees from a place.
fn from(angle: f64) -> String {
    if angle < 0.5 { "and is not seen from".to_owned() } else { format!("{angle:.0} from") }
}

/// `the bay fills`.
fn fills(brief: &Brief, windows: &[ItemId]) -> String {
    let fills = if windows.len() == 1 { "fills" } else { "fill" };
    format!("{} {fills}", items(brief, windows))
}

fn aside(aside: Aside) -> String {
    let side = match aside.side {
        Hand::Left => "left",
        Hand::Right => "right",
    };
    format!(", {:.0} degrees to the {side}", aside.degrees)
}

fn before(brief: &Brief, finding: &ViewFinding, hidden: Hidden) -> String {
    let of = if finding.windows.len() == 1 { "it".to_owned() } else { item(brief, hidden.window) };
    let whose = obstacle(brief, hidden.by);
    format!("{whose} stands before {of} and {:.0} % is hidden", 100.0 * hidden.share)
}

#[cfg(test)]
mod tests {
    use elbowroom_model::Hand;

    use super::super::sample::{BAY, SOFA, YARD, told};
    use elbowroom_solver::criteria::Finding;
    use elbowroom_solver::criteria::obstacles::Whose;
    use elbowroom_solver::criteria::view::{Aside, AvoidedFinding, Hidden, ViewFinding};

    fn view() -> ViewFinding {
        ViewFinding {
            windows: vec![BAY],
            angle: 30.4,
            places: 3,
            seat: SOFA,
            from_middle: 33.6,
            aside: None,
            hidden: None,
            avoided: None,
        }
    }

    #[test]
    fn view_says_how_much_the_windows_fill_and_what_stands_before_them() {
        let full = ViewFinding {
            aside: Some(Aside { degrees: 41.2, side: Hand::Left }),
            hidden: Some(Hidden { by: Whose::ReturnBack(SOFA), window: BAY, share: 0.12 }),
            avoided: Some(AvoidedFinding { windows: vec![YARD], angle: 8.0 }),
            ..view()
        };
        assert_eq!(
            told(Finding::View(full)),
            "From the 3 seat places the bay fills 30 degrees on average, 34 from the middle of the sofa, 41 degrees to the \
             left; the return of the sofa stands before it and 12 % is hidden; the yard window fills 8."
        );
        let both = ViewFinding { windows: vec![BAY, YARD], angle: 0.2, ..view() };
        assert_eq!(told(Finding::View(both)), "The bay and the yard window lie before none of the seats.");
        let out_of_sight = ViewFinding { from_middle: 0.0, ..view() };
        assert_eq!(
            told(Finding::View(out_of_sight)),
            "From the 3 seat places the bay fills 30 degrees on average, and is not seen from the middle of the sofa."
        );
        let one = ViewFinding { places: 1, ..view() };
        assert_eq!(told(Finding::View(one)), "From the seat the bay fills 30 degrees.");
    }
}
