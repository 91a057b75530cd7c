//! What a reader of a result must be told beside its options.

use elbowroom_model::{Brief, PieceId};

use crate::arrangement::Enumeration;
use crate::cautions::{Caution, cautions};
use crate::routes::{Floor, HeldToEmptyRoom};

/// Something that a reader must be told; what the reading of the file has to say stands in [`Brief::notices`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Notice {
    /// A piece that need not stand does not get in by the way, and is left out: its place in the brief as asked.
    DoesNotGetIn(PieceId),
    /// No options are looked at but those that [`Brief::only`] holds to.
    OnlyThese,
    /// A way that is narrower than its rule in the empty room.
    HeldToEmptyRoom(HeldToEmptyRoom),
    /// Something to heed.
    Caution(Caution),
    /// More arrangements than are looked at.
    Beyond {
        /// So many more.
        beyond: usize,
        /// So many are looked at.
        first: usize,
    },
}

/// What is to be told before what the criteria leave out: of the decisions, of the empty room.
pub(crate) fn of_the_room(brief: &Brief, floor: &Floor) -> Vec<Notice> {
    let only = (!brief.only.is_empty()).then_some(Notice::OnlyThese);
    only.into_iter().chain(floor.held_to_empty_room(brief).into_iter().map(Notice::HeldToEmptyRoom)).collect()
}

/// What is to be told after it: cautions, and that there are more arrangements than are looked at.
pub(crate) fn of_the_work(brief: &Brief, enumeration: &Enumeration) -> Vec<Notice> {
    let first = enumeration.arrangements.len() + enumeration.dropped.len();
    let beyond = Some(enumeration.beyond).filter(|beyond| *beyond > 0);
    let cautions = cautions(brief).into_iter().map(Notice::Caution);
    cautions.chain(beyond.map(|beyond| Notice::Beyond { beyond, first })).collect()
}
