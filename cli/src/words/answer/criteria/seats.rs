//! Seats in words.

use elbowroom_model::Brief;

use super::names::{length, pieces};
use elbowroom_solver::criteria::seats::SeatsFinding;

/// How many sit.
pub(super) fn lead(finding: &SeatsFinding) -> String {
    let count = finding.places;
    let wanted = finding.wanted.map(|wanted| against(count, wanted as usize)).unwrap_or_default();
    format!("{count} {} here{wanted}", if count == 1 { "sits" } else { "sit" })
}

pub(super) fn reason(brief: &Brief, finding: &SeatsFinding) -> String {
    let (count, mut reason) = (finding.places, lead(finding));
    reason += &format!("; as planned the pieces have {:.0} % of their usual sizes", 100.0 * finding.sizes);
    if count > 0 {
        let within = finding.with_surface;
        let has = if within == 1 { "has" } else { "have" };
        let at_hand = length(brief, finding.at_hand);
        reason += &format!("; {within} of {count} seat places {has} a surface within {at_hand}");
    }
    if !finding.left_out.is_empty() {
        reason += &format!("; {} found no room", pieces(brief, &finding.left_out));
    }
    reason
}

/// Places against those that are wanted.
fn against(count: usize, wanted: usize) -> String {
    match wanted.checked_sub(count) {
        Some(missing @ 1..) => format!(", {missing} fewer than the {wanted} wanted"),
        _ => format!(", and {wanted} are to"),
    }
}

#[cfg(test)]
mod tests {
    use super::super::sample::{ARMCHAIR_2, SOFA, UNIT, told};
    use elbowroom_solver::criteria::Finding;
    use elbowroom_solver::criteria::seats::SeatsFinding;

    #[test]
    fn places_are_told_against_those_that_are_wanted() {
        assert_eq!(super::against(3, 5), ", 2 fewer than the 5 wanted");
        assert_eq!([super::against(5, 5), super::against(5, 4)], [", and 5 are to", ", and 4 are to"]);
    }

    #[test]
    fn seats_say_how_many_sit_and_what_found_no_room() {
        let seats = |places, with_surface, left_out| {
            told(Finding::Seats(SeatsFinding {
                places,
                wanted: None,
                sizes: 0.873,
                with_surface,
                at_hand: 450.0,
                left_out,
            }))
        };
        assert_eq!(
            seats(3, 1, vec![UNIT, ARMCHAIR_2]),
            "3 sit here; as planned the pieces have 87 % of their usual sizes; 1 of 3 seat places has a surface within 45 cm; the media \
             unit and armchair 2 found no room."
        );
        assert_eq!(
            seats(0, 0, vec![SOFA]),
            "0 sit here; as planned the pieces have 87 % of their usual sizes; the sofa found no room."
        );
    }
}
