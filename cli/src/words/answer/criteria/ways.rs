//! Ways in words.

use elbowroom_model::Brief;

use super::names::piece;
use elbowroom_solver::criteria::walked_floor::WalkedFloor;
use elbowroom_solver::criteria::ways::{Ends, PastGroup, WaysFinding};

/// How wide the tightest way is.
pub(super) fn lead(brief: &Brief, finding: &WaysFinding) -> String {
    let tightest = &finding.tightest;
    let [wide, needs] = brief.units.side_by_side(tightest.width, tightest.needs);
    format!("the tightest way, {}, is {wide} wide where {needs} is asked for", way(brief, tightest.ends))
}

pub(super) fn reason(brief: &Brief, finding: &WaysFinding) -> String {
    let mut reason = lead(brief, finding);
    if let Some(detour) = &finding.detour {
        reason += &format!("; {} is {:.0} % longer than straight", way(brief, detour.ends), 100.0 * detour.longer);
    }
    reason += &past_group(brief, finding.past_group);
    let WalkedFloor { now, when_empty, .. } = finding.floor;
    let [now, when_empty] = [now, when_empty].map(|share| 100.0 * share);
    reason + &format!("; one walks to {now:.0} % of the free floor ({when_empty:.0} % in the empty room)")
}

fn past_group(brief: &Brief, past: PastGroup) -> String {
    match past {
        PastGroup::Through { ends, between: [seat, other] } => {
            format!("; {} cuts between {} and {}", way(brief, ends), piece(brief, seat), piece(brief, other))
        }
        PastGroup::Behind(ends) => format!("; {} goes behind the group", way(brief, ends)),
        PastGroup::Aside => "; no main way cuts through the group".to_owned(),
        PastGroup::NoMainWay => String::new(),
    }
}

fn way(brief: &Brief, ends: Ends) -> String {
    format!("{} to {}", ends.from.name(brief), ends.to.name(brief))
}

#[cfg(test)]
mod tests {
    use super::super::sample::{DINING, HALL, SOFA, UNIT, told};
    use elbowroom_solver::criteria::Finding;
    use elbowroom_solver::criteria::walked_floor::WalkedFloor;
    use elbowroom_solver::criteria::ways::{Detour, Ends, PastGroup, Tightest, WaysFinding};
    use elbowroom_solver::routes::End;

    #[test]
    fn ways_say_which_is_tightest_how_the_main_ones_pass_the_group_and_what_floor_they_reach() {
        let ends = Ends { from: End::Item(HALL), to: End::Item(DINING) };
        let floor = WalkedFloor { now: 0.842, when_empty: 0.996, cut_off: 0.0, cut_off_by: None };
        let ways = |past_group, detour| {
            let tightest = Tightest { ends, width: 958.0, needs: 914.4 };
            told(Finding::Ways(WaysFinding { tightest, detour, past_group, floor }))
        };
        assert_eq!(
            ways(PastGroup::Through { ends, between: [SOFA, UNIT] }, Some(Detour { ends, longer: 0.5 })),
            "The tightest way, hall door to dining side, is 96 cm wide where 91 cm is asked for; hall door to dining side is \
             50 % longer than straight; hall door to dining side cuts between the sofa and the media unit; one walks to 84 % of \
             the free floor (100 % in the empty room)."
        );
        assert!(ways(PastGroup::Behind(ends), None).contains("; hall door to dining side goes behind the group; one"));
        assert!(ways(PastGroup::Aside, None).contains("; no main way cuts through the group; one"));
        assert!(ways(PastGroup::NoMainWay, None).contains("where 91 cm is asked for; one"));
        let just = Tightest { ends, width: 914.4, needs: 914.4 };
        let just = Finding::Ways(WaysFinding { tightest: just, detour: None, past_group: PastGroup::NoMainWay, floor });
        assert!(told(just).contains("is 91 cm wide where 91 cm is asked for;"), "as wide as it must be");
    }
}
