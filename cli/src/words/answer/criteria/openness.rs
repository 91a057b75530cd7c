//! Openness in words.

use elbowroom_model::Brief;

use super::names::{bar, item};
use elbowroom_solver::criteria::openness::{ArrivalFinding, OpennessFinding, SideFinding};

/// From so much on the view from the door is told as whole, percent.
const WHOLE_VIEW: f64 = 99.5;

pub(super) fn reason(brief: &Brief, finding: &OpennessFinding) -> String {
    let sides = finding.sides.iter().map(|one| side(brief, one));
    let parts: Vec<String> = sides.chain(finding.arrival.as_ref().map(arrival)).collect();
    parts.join("; ")
}

fn side(brief: &Brief, side: &SideFinding) -> String {
    match side {
        SideFinding::Away { opening, turned_from } => {
            let opening = item(brief, *opening);
            turned_from.map_or_else(
                || format!("no seat stands to turn from {opening}"),
                |share| format!("the seats turn from {:.0} % of {opening}", 100.0 * share),
            )
        }
        SideFinding::Open { opening, from_seats, from_entrance, closed } => {
            let opening = item(brief, *opening);
            let mut reason = from_seats.map_or_else(
                || format!("no seat stands to see {opening}"),
                |share| format!("the seats see {:.0} % of {opening}", 100.0 * share),
            );
            if let Some(share) = from_entrance {
                reason += &format!(", whoever comes in sees {:.0} %", 100.0 * share);
            }
            match closed {
                Some(closed) => reason + ", and " + &bar(brief, closed, "it"),
                None => reason + ", and no back stands across it",
            }
        }
    }
}

fn arrival(arrival: &ArrivalFinding) -> String {
    let [area, floor] = [arrival.isovist, arrival.floor].map(|share| 100.0 * share);
    let seen = match area {
        area if area >= WHOLE_VIEW => "from the door one sees as far round as in the empty room".to_owned(),
        area => format!("from the door one sees {area:.0} % of what the empty room shows"),
    };
    format!("{seen}, and {floor:.0} % of its floor")
}

#[cfg(test)]
mod tests {
    use super::super::sample::{DINING, SOFA, told};
    use elbowroom_solver::criteria::Finding;
    use elbowroom_solver::criteria::across::Bar;
    use elbowroom_solver::criteria::obstacles::Whose;
    use elbowroom_solver::criteria::openness::{ArrivalFinding, OpennessFinding, SideFinding};

    #[test]
    fn openness_says_what_is_seen_of_each_side_and_on_arrival() {
        let bar = Bar { whose: Whose::Back(SOFA), share: 0.57, off: 800.0, weighed: 0.5 };
        let open =
            SideFinding::Open { opening: DINING, from_seats: Some(0.5), from_entrance: Some(0.25), closed: Some(bar) };
        let arrival = Some(ArrivalFinding { isovist: 0.98, floor: 0.7 });
        assert_eq!(
            told(Finding::Openness(OpennessFinding { sides: vec![open], arrival })),
            "The seats see 50 % of the dining side, whoever comes in sees 25 %, and the back of the sofa stands across 57 % of it, \
             80 cm before it; from the door one sees 98 % of what the empty room shows, and 70 % of its floor."
        );
        let away = SideFinding::Away { opening: DINING, turned_from: Some(1.0) };
        let away = Finding::Openness(OpennessFinding { sides: vec![away], arrival: None });
        assert_eq!(told(away), "The seats turn from 100 % of the dining side.");
    }

    #[test]
    fn openness_says_that_no_seat_stands() {
        let open = SideFinding::Open { opening: DINING, from_seats: None, from_entrance: Some(0.25), closed: None };
        let away = SideFinding::Away { opening: DINING, turned_from: None };
        let neither = Finding::Openness(OpennessFinding { sides: vec![open, away], arrival: None });
        assert_eq!(
            told(neither),
            "No seat stands to see the dining side, whoever comes in sees 25 %, and no back stands across it; no seat stands to turn \
             from the dining side."
        );
    }
}
