//! What a reader of a result must be told beside its options.

use elbowroom_model::{Brief, PieceId};

use crate::answer::RankedOption;
use crate::arrangement::Enumeration;
use crate::cautions::{Caution, cautions};
use crate::criteria::{self, CriterionLeftOut};
use crate::for_children::{ForChildren, for_children};
use crate::routes::{Floor, HeldToEmptyRoom};
use crate::screen_overhang::{ScreenOverhang, screen_overhangs};

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
    /// A screen that is wider than the piece that carries it.
    ScreenOverhang(ScreenOverhang),
    /// More arrangements than are looked at.
    Beyond {
        /// So many more.
        beyond: usize,
        /// So many are looked at.
        first: usize,
    },
}

impl Notice {
    /// What of it concerns the options of these ranks, or all of them; `None`: nothing.
    #[must_use]
    pub fn of(&self, ranks: &[usize]) -> Option<Self> {
        match self {
            Self::ForChildren(heed) => heed.of(ranks).map(Self::ForChildren),
            Self::ScreenOverhang(overhang) => overhang.of(ranks).map(Self::ScreenOverhang),
            of_all => Some(of_all.clone()),
        }
    }

    /// Whether it says all that a caution says, and more closely.
    pub(crate) fn says(&self, caution: Caution) -> bool {
        matches!(self, Self::ForChildren(heed) if heed.says(caution))
    }

    /// Whether it comes of the options and their places in the order, as [`of_options`] makes it.
    pub(crate) const fn is_of_options(&self) -> bool {
        matches!(self, Self::ForChildren(_) | Self::ScreenOverhang(_))
    }

    /// Whether it is for whoever lives with a plan; others are about the file, the search or the scores.
    #[must_use]
    pub const fn is_for_who_lives_there(&self) -> bool {
        matches!(self, Self::DoesNotGetIn(_) | Self::Caution(_) | Self::ForChildren(_) | Self::ScreenOverhang(_))
    }
}

/// What is to be heeded of these options, each by its rank.
pub(crate) fn of_options(brief: &Brief, options: &[RankedOption]) -> Vec<Notice> {
    let children = for_children(brief, options).into_iter().map(Notice::ForChildren);
    children.chain(screen_overhangs(brief, options).into_iter().map(Notice::ScreenOverhang)).collect()
}

/// Everything to be told beside that, in the order in which it is told: of the decisions, of the empty room, of the criteria, of what
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
