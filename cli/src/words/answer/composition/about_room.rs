//! Terms about what the room itself has: windows, heaters, a fire, doors, a step.

use elbowroom_model::{Term, tables};

use super::Named;

impl Named<'_> {
    pub(super) fn about_room(&self) -> String {
        let Self { one, other, .. } = self;
        match self.told.term {
            Term::ScreenByFocus => {
                let off = self.length(self.told.off);
                format!("{one} {} beside {other}, {off} off the middle of the seat that faces it", self.stands())
            }
            Term::BeyondStep => format!("{other} parts {one} from its group"),
            Term::RugInSwing => format!("{one} lies where the leaf of {other} sweeps"),
            Term::BeforeWindow => format!("{one} {} before {other}", self.stands()),
            Term::OverHeater => format!("{one} {} over {other}, whose heat it takes", self.stands()),
            Term::OpenFloorInUse => format!("{one} lies where people work at {other}"),
            Term::BackToFire | Term::BackToWishedFire => {
                format!("{one} has its back to {other}, before whoever looks at it")
            }
            Term::DiningAtFire => format!("{one} stands before {other}, where seats would gather"),
            Term::ReturnBackToView => format!("the return of {one} has its back to {other}, whose view you like"),
            Term::AcrossOpening => format!("{one} has its back close to {other}"),
            Term::ByDoor | Term::SecondByDoor => {
                let [has, wanted] = self.brief.units.side_by_side(self.left(), tables::price(self.told.term).free);
                format!(
                    "{one} {} {has} from where the leaf of {other} sweeps; {wanted} leave room to come in",
                    self.stands()
                )
            }
            Term::BehindLeaf => format!("{one} stands where the open leaf of {other} hides it"),
            _ => format!("{one} has its back to {other}, whose view you like"),
        }
    }
}
