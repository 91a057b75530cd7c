//! What a reader of a result must be told beside its options.

use elbowroom_model::{Brief, PieceId};

use crate::arrangement::Enumeration;
use crate::cautions::{Caution, cautions};
use crate::criteria::{self, CriterionLeftOut};
use crate::for_children::ForChildren;
use crate::routes::{Floor, HeldToEmptyRoom};

/// Something that a reader must be told; what the reading of the file has to say stands in [`Brief::notices`].
#[derive(Debug, Clone, PartialEq)]
pub enum Notice {
    /// A piece that need not stand does not get in by the way, and is left out: its place in the brief as asked.
    DoesNotGetIn(PieceId),
    /// No options are looked at but those that [`Brief::only`] and [`Brief::wanted`] hold to.
    OnlyThese,
    /// A way that is narrower than its rule in the empty room.
    HeldToEmptyRoom(HeldToEmptyRoom),
    /// A criterion that does not apply.
    CriterionLeftOut(CriterionLeftOut),
    /// Something to heed.
    Caution(Caution),
    /// Something to heed where children live.
    ForChildren(ForChildren),
    /// More arrangements than are looked at.
    Beyond {
        /// So many more.
        beyond: usize,
        /// So many are looked at.
        first: usize,
    },
}

/// Everything to be told, in the order in which it is told: of the decisions, of the empty room, of the criteria, of what
/// to heed, of the work.
pub(crate) fn notices(brief: &Brief, floor: &Floor, enumeration: &Enumeration) -> Vec<Notice> {
    let is_held = !(brief.only.is_empty() && brief.wanted.is_empty());
    let only = is_held.then_some(Notice::OnlyThese);
    let held = floor.held_to_empty_room(brief).into_iter().map(Notice::HeldToEmptyRoom);
    let criteria = criteria::left_out(brief).into_iter().map(Notice::CriterionLeftOut);
    let cautions = cautions(brief).into_iter().map(Notice::Caution);
    let first = enumeration.arrangements.len() + enumeration.dropped.len();
    let beyond = Some(enumeration.beyond).filter(|beyond| *beyond > 0);
    let beyond = beyond.map(|beyond| Notice::Beyond { beyond, first });
    only.into_iter().chain(held).chain(criteria).chain(cautions).chain(beyond).collect()
}
