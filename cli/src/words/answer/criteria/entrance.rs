//! Entrance in words.

use elbowroom_model::Brief;

use super::names::{bar, item, piece};
use crate::words::answer::arrangement::the_wall;
use elbowroom_solver::criteria::arrival::{FirstSeen, Side};
use elbowroom_solver::criteria::entrance::{EntranceFinding, Met};

/// How the seats look to the way in.
pub(super) fn lead(brief: &Brief, finding: &EntranceFinding) -> String {
    format!(
        "{} lies {:.0} degrees from the way the seats face and {} it",
        item(brief, finding.doorway),
        finding.angle,
        who_see(finding)
    )
}

pub(super) fn reason(brief: &Brief, finding: &EntranceFinding) -> String {
    let mut reason = lead(brief, finding);
    match finding.met {
        Some(Met::Back { seat, angle }) => {
            reason += &format!("; on arrival one meets {angle:.0} degrees of the back of {}", piece(brief, seat));
        }
        Some(Met::First(what)) => reason += &format!("; {} is seen first from it", first_seen(brief, what)),
        None => {}
    }
    if let Some(barred) = &finding.barred {
        reason += &format!("; {}", bar(brief, barred, "the way in"));
    }
    if finding.ways_in > 1 {
        let all = if finding.ways_in == 2 { "both".to_owned() } else { format!("all {}", finding.ways_in) };
        reason += &format!("; over {all} ways in, the angle is {:.0} degrees on average", finding.mean_angle);
    }
    reason
}

fn who_see(finding: &EntranceFinding) -> String {
    match (finding.see, finding.places) {
        (0, 1) => "the seat does not see".to_owned(),
        (1, 1) => "the seat sees".to_owned(),
        (0, _) => "no seat place sees".to_owned(),
        (see, all) if see == all => format!("all {all} seat places see"),
        (see, all) => format!("{see} of {all} seat places see"),
    }
}

fn first_seen(brief: &Brief, what: FirstSeen) -> String {
    match what {
        FirstSeen::Piece { piece: one, side } => {
            let side = match side {
                Side::Front => "front",
                Side::Back => "back",
                Side::End => "end",
            };
            format!("the {side} of {}", piece(brief, one))
        }
        FirstSeen::Item(id) => item(brief, id),
        FirstSeen::Wall(id) => the_wall(brief, id),
    }
}

#[cfg(test)]
mod tests {
    use elbowroom_model::WallId;

    use super::super::sample::{HALL, SOFA, UNIT, told};
    use elbowroom_solver::criteria::Finding;
    use elbowroom_solver::criteria::across::Bar;
    use elbowroom_solver::criteria::arrival::{FirstSeen, Side};
    use elbowroom_solver::criteria::entrance::{EntranceFinding, Met};
    use elbowroom_solver::criteria::obstacles::Whose;

    fn entrance() -> EntranceFinding {
        EntranceFinding {
            doorway: HALL,
            angle: 74.6,
            see: 2,
            places: 3,
            met: None,
            barred: None,
            ways_in: 1,
            mean_angle: 74.6,
        }
    }

    #[test]
    fn entrance_says_who_sees_it_and_what_is_met() {
        let back = EntranceFinding {
            met: Some(Met::Back { seat: SOFA, angle: 12.3 }),
            barred: Some(Bar { whose: Whose::ReturnBack(SOFA), share: 0.954, off: 1004.0, weighed: 0.9 }),
            ways_in: 2,
            mean_angle: 80.2,
            ..entrance()
        };
        assert_eq!(
            told(Finding::Entrance(back)),
            "The hall door lies 75 degrees from the way the seats face and 2 of 3 seat places see it; on arrival one meets 12 \
             degrees of the back of the sofa; the return of the sofa stands across 95 % of the way in, 100 cm before it; over \
             both ways in, the angle is 80 degrees on average."
        );
        let first = |what| told(Finding::Entrance(EntranceFinding { met: Some(Met::First(what)), ..entrance() }));
        let end = FirstSeen::Piece { piece: UNIT, side: Side::End };
        assert!(first(end).ends_with("; the end of the media unit is seen first from it."), "{}", first(end));
        assert!(first(FirstSeen::Wall(WallId(3))).ends_with("; the stair wall is seen first from it."));
        let who = |see, places| told(Finding::Entrance(EntranceFinding { see, places, ..entrance() }));
        assert!(who(3, 3).ends_with("and all 3 seat places see it."));
        assert!(who(0, 3).ends_with("and no seat place sees it.") && who(1, 1).ends_with("and the seat sees it."));
    }
}
