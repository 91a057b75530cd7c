//! Screen in words.

use elbowroom_model::Brief;

use super::names::{item, length, obstacle, piece};
use elbowroom_solver::criteria::screen::{HiddenPicture, Hung, HungMiddle, ScreenFinding};

/// What hangs so near to the height of the eyes is level with them, mm: nobody sits twice alike.
const AT_EYES: f64 = 20.0;

/// How far the screen is.
pub(super) fn lead(brief: &Brief, finding: &ScreenFinding) -> String {
    distance(brief, finding)
}

pub(super) fn reason(brief: &Brief, finding: &ScreenFinding) -> String {
    let mut reason = lead(brief, finding);
    reason += &format!(", and no seat place is more than {:.0} degrees off its axis; ", finding.worst_off_axis);
    reason += &turn(finding);
    if let Some(hidden) = finding.hidden {
        reason += &in_the_way(brief, hidden);
    }
    reason += &light(brief, finding);
    match finding.hung {
        Hung::AtEase => {}
        Hung::OverFire => reason += "; it hangs over the fire, where it is hot and high",
        Hung::High(degrees) => reason += &format!("; its middle lies {degrees:.0} degrees above the eyes"),
        Hung::Low(degrees) => reason += &format!("; its middle lies {degrees:.0} degrees below the eyes"),
    }
    reason += &finding.on_wall.map(|middle| on_wall(brief, middle)).unwrap_or_default();
    reason
}

fn distance(brief: &Brief, finding: &ScreenFinding) -> String {
    let seat = piece(brief, finding.seat);
    let is = format!("the middle of {seat} is {} from the screen", length(brief, finding.distance));
    match finding.suits {
        None => is,
        Some(suits) => {
            let (near, far) = (length(brief, suits.nearest), length(brief, suits.fills_thirty));
            format!("{is} ({near} is the nearest; large enough for a film within {far})")
        }
    }
}

/// Where the middle of what hangs is.
fn on_wall(brief: &Brief, HungMiddle { height, over_eyes }: HungMiddle) -> String {
    let off = length(brief, over_eyes.abs());
    let eyes = match over_eyes {
        off if off.abs() < AT_EYES => "level with".to_owned(),
        above if above > 0.0 => format!("{off} above"),
        _ => format!("{off} below"),
    };
    format!("; its middle hangs {} above the floor, {eyes} the eyes of one who sits", length(brief, height))
}

/// How far one turns the head.
fn turn(finding: &ScreenFinding) -> String {
    let (least, most) = (format!("{:.0}", finding.least_turn), format!("{:.0}", finding.largest_turn));
    if least == most {
        format!("one turns the head {least} degrees to it")
    } else {
        format!("one turns the head {least} to {most} degrees to it")
    }
}

fn in_the_way(brief: &Brief, hidden: HiddenPicture) -> String {
    let by = hidden.by.map_or_else(|| "a wall".to_owned(), |whose| obstacle(brief, whose));
    format!("; {by} hides {:.0} % of it from a seat place", 100.0 * hidden.share)
}

fn light(brief: &Brief, finding: &ScreenFinding) -> String {
    let mirrored = finding.mirrored.map(|window| format!("; {} faces it and reflects in it", item(brief, window)));
    let dazzles = finding.dazzles.map(|window| format!("; {} is behind it and dazzles", item(brief, window)));
    let told: String = mirrored.into_iter().chain(dazzles).collect();
    if told.is_empty() { "; no window faces it or is behind it".to_owned() } else { told }
}

#[cfg(test)]
mod tests {
    use super::super::sample::{ARMCHAIR_2, BAY, SOFA, YARD, told};
    use elbowroom_solver::criteria::Finding;
    use elbowroom_solver::criteria::obstacles::Whose;
    use elbowroom_solver::criteria::screen::{HiddenPicture, Hung, HungMiddle, ScreenFinding, Suits};

    #[test]
    fn screen_says_the_distance_the_axis_the_light_and_the_height() {
        let screen = |hung, mirrored, dazzles| ScreenFinding {
            seat: SOFA,
            distance: 2604.0,
            suits: Some(Suits { nearest: 1027.0, fills_thirty: 2272.0 }),
            worst_off_axis: 24.7,
            least_turn: 3.6,
            largest_turn: 24.7,
            hidden: None,
            mirrored,
            dazzles,
            hung,
            on_wall: None,
        };
        assert_eq!(
            told(Finding::Screen(screen(Hung::High(21.4), Some(BAY), Some(YARD)))),
            "The middle of the sofa is 260 cm from the screen (103 cm is the nearest; large enough for a film within 227 cm), and no \
             seat place is more than 25 degrees off its axis; one turns the head 4 to 25 degrees to it; the bay faces it and \
             reflects in it; the yard window is behind it and dazzles; its middle lies 21 degrees above the eyes."
        );
        let at = |height: f64, over_eyes: f64| {
            let on_wall = Some(HungMiddle { height, over_eyes });
            told(Finding::Screen(ScreenFinding { on_wall, ..screen(Hung::AtEase, None, None) }))
        };
        let said = [at(1100.0, -100.0), at(1210.0, 10.0), at(1500.0, 300.0)];
        assert!(said[0].ends_with("; its middle hangs 110 cm above the floor, 10 cm below the eyes of one who sits."));
        assert!(said[1].ends_with("; its middle hangs 121 cm above the floor, level with the eyes of one who sits."));
        assert!(said[2].ends_with("; its middle hangs 150 cm above the floor, 30 cm above the eyes of one who sits."));
        let hidden = Some(HiddenPicture { share: 0.4, by: Some(Whose::Piece(ARMCHAIR_2)) });
        let over = told(Finding::Screen(ScreenFinding { suits: None, ..screen(Hung::OverFire, None, None) }));
        assert_eq!(
            over,
            "The middle of the sofa is 260 cm from the screen, and no seat place is more than 25 degrees off its axis; one turns \
             the head 4 to 25 degrees to it; no window faces it or is behind it; it hangs over the fire, where it is hot and high."
        );
        let alone = ScreenFinding { least_turn: 24.6, hidden, ..screen(Hung::AtEase, None, None) };
        let told = told(Finding::Screen(alone));
        let turn = "; one turns the head 25 degrees to it; armchair 2 hides 40 % of it from a seat place; no window";
        assert!(told.contains(turn), "{told}");
    }
}
