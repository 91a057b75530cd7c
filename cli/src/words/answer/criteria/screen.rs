//! Screen in words.

use elbowroom_model::Brief;

use super::names::{item, length, piece};
use elbowroom_solver::criteria::screen::{Hung, ScreenFinding};

pub(super) fn reason(brief: &Brief, finding: &ScreenFinding) -> String {
    let mut reason = distance(brief, finding);
    reason += &format!(", and no seat place is more than {:.0} degrees off its axis", finding.worst_off_axis);
    reason += &light(brief, finding);
    match finding.hung {
        Hung::AtEase => {}
        Hung::OverFire => reason += "; it hangs over the fire, where it is hot and high",
        Hung::High(degrees) => reason += &format!("; its middle lies {degrees:.0} degrees above the eyes"),
    }
    reason
}

fn distance(brief: &Brief, finding: &ScreenFinding) -> String {
    let seat = piece(brief, finding.seat);
    let is = format!("the middle of {seat} is {} from the screen", length(brief, finding.distance));
    match finding.suits {
        None => is,
        Some(suits) => {
            let (near, far) = (length(brief, suits.nearest), length(brief, suits.fills_thirty));
            format!("{is} ({near} is the nearest, it fills 30 degrees from {far})")
        }
    }
}

fn light(brief: &Brief, finding: &ScreenFinding) -> String {
    let mirrored = finding.mirrored.map(|window| format!("; {} faces it and is mirrored in it", item(brief, window)));
    let dazzles = finding.dazzles.map(|window| format!("; {} is behind it and dazzles", item(brief, window)));
    let told: String = mirrored.into_iter().chain(dazzles).collect();
    if told.is_empty() { "; no window faces it or is behind it".to_owned() } else { told }
}

#[cfg(test)]
mod tests {
    use super::super::sample::{BAY, SOFA, YARD, told};
    use elbowroom_solver::criteria::Finding;
    use elbowroom_solver::criteria::screen::{Hung, ScreenFinding, Suits};

    #[test]
    fn screen_says_the_distance_the_axis_the_light_and_the_height() {
        let screen = |hung, mirrored, dazzles| ScreenFinding {
            seat: SOFA,
            distance: 2604.0,
            suits: Some(Suits { nearest: 1027.0, fills_thirty: 2272.0 }),
            worst_off_axis: 24.7,
            least_turn: 0.0,
            mirrored,
            dazzles,
            hung,
        };
        assert_eq!(
            told(Finding::Screen(screen(Hung::High(21.4), Some(BAY), Some(YARD)))),
            "The middle of the sofa is 260 cm from the screen (103 cm is the nearest, it fills 30 degrees from 227 cm), and no \
             seat place is more than 25 degrees off its axis; the bay faces it and is mirrored in it; the yard window is behind \
             it and dazzles; its middle lies 21 degrees above the eyes."
        );
        let over = told(Finding::Screen(ScreenFinding { suits: None, ..screen(Hung::OverFire, None, None) }));
        assert_eq!(
            over,
            "The middle of the sofa is 260 cm from the screen, and no seat place is more than 25 degrees off its axis; no window \
             faces it or is behind it; it hangs over the fire, where it is hot and high."
        );
    }
}
