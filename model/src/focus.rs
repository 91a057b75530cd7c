//! What the seats of a room may turn to more than to a screen: its fire, or a view of which much is wished.

use crate::brief::Brief;
use crate::opening::{ItemKind, View};
use crate::room::Room;
use crate::rules::Clearance;
use crate::wishes::{Criterion, Wishes};

/// From this wish on plans are drawn for a fire, or for a view.
const WISHED: f64 = 4.0;

/// From this wish on a fire is one that the seats may turn to.
const MINDED: f64 = 3.0;

/// How far a screen may stand from the axis of a seat that faces the fire, mm: the screen in the alcove beside a chimney breast
/// (common practice, no source). A head turns so far with ease from 2600 mm.
pub(crate) const SCREEN_BESIDE: f64 = 1500.0;

impl Wishes {
    /// Whether plans are drawn for the fire.
    #[must_use]
    pub fn are_for_the_fire(&self) -> bool {
        self.get(Criterion::Fireside) >= WISHED
    }

    /// Whether plans are drawn for the view.
    #[must_use]
    pub fn are_for_the_view(&self) -> bool {
        self.get(Criterion::View) >= WISHED
    }

    /// Whether the seats may turn to the fire, and have the screen beside it.
    #[must_use]
    pub fn mind_the_fire(&self) -> bool {
        self.get(Criterion::Fireside) >= MINDED
    }

    /// Whether seats that face this may have the screen beside it: a fire that is minded. (A screen beside a window that one
    /// faces was tried for rooms with much wish for their view: sofas then looked past their screens, which nobody would draw.)
    #[must_use]
    pub fn draw_to(&self, kind: &ItemKind) -> bool {
        matches!(kind, ItemKind::Fireplace(_)) && self.mind_the_fire()
    }
}

impl Room {
    /// Whether the room has something that these wishes turn the seats to.
    pub(crate) fn draws(&self, wishes: &Wishes) -> bool {
        self.items.iter().any(|item| wishes.draw_to(&item.kind))
    }
}

/// How far from that axis it may stand everywhere else, mm: as `model/data/clearances.yaml` has it in every profile.
const ELSEWHERE: f64 = 140.0;

impl Brief {
    /// How far a screen may stand from the axis of a seat that faces it, mm: so far as the rule in force says, but where that
    /// is what a fire lets, and the seat does not face the fire, as elsewhere. 0 where it is not asked.
    #[must_use]
    pub fn screen_axis(&self, faces_fire: bool) -> f64 {
        let figure = self.rules.get(Clearance::ScreenAxis);
        let is_for_fire = self.room.draws(&self.wishes) && figure >= SCREEN_BESIDE;
        if is_for_fire && !faces_fire { ELSEWHERE } else { figure }
    }

    /// Whether plans drawn under these wishes may turn to other things than under the brief's own.
    #[must_use]
    pub fn turns_otherwise(&self, wishes: &Wishes) -> bool {
        let has = |is_one: fn(&ItemKind) -> bool| self.room.items.iter().any(|item| is_one(&item.kind));
        let other = |drawn_for: fn(&Wishes) -> bool| drawn_for(&self.wishes) != drawn_for(wishes);
        let has_fire = has(|kind| matches!(kind, ItemKind::Fireplace(_)));
        let has_view = has(|kind| matches!(kind, ItemKind::Window(window) if window.view == View::Liked));
        has_fire && (other(Wishes::are_for_the_fire) || other(Wishes::mind_the_fire))
            || has_view && other(Wishes::are_for_the_view)
    }
}

#[cfg(test)]
mod tests {
    use super::ELSEWHERE;
    use crate::rules::Clearance;
    use crate::tables::{Profile, Tables};

    #[test]
    fn elsewhere_is_what_every_profile_has() {
        let tables = Tables::built_in().unwrap();
        for profile in [Profile::Snug, Profile::Easy, Profile::Wheelchair] {
            assert_eq!(tables.rules(profile).get(Clearance::ScreenAxis), ELSEWHERE);
        }
    }
}
