//! Which options are shown: against which wall, facing which one, with which hand.

use elbowroom_model::{Brief, Hand};
use elbowroom_solver::answer::{Answer, RankedOption};

use crate::render::rank::wall_faced;
use crate::words::page as words;

/// Which options are shown; nothing where it is no matter.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(in crate::page) struct Filter {
    /// The wall behind the main seat, by its name, or a space where there is none.
    pub(in crate::page) wall: Option<String>,
    /// The wall before the main seat, by its name.
    pub(in crate::page) way: Option<String>,
    /// The hand of the corner sofa.
    pub(in crate::page) hand: Option<String>,
}

/// A choice of a filter, with how many options it leaves beside the other filters.
#[derive(Debug, PartialEq, Eq)]
pub(super) struct Choice {
    /// As addresses have it; empty: no matter.
    pub(super) value: String,
    /// As it is told.
    pub(super) label: String,
    /// Options that it leaves.
    pub(super) count: usize,
}

/// A filter.
struct Kind {
    /// Its name in addresses.
    name: &'static str,
    /// What an option is by it; nothing where it says nothing of the option.
    of: fn(&Brief, &RankedOption) -> Option<String>,
}

/// The filters, in the order in which they stand.
const KINDS: [Kind; 3] =
    [Kind { name: "wall", of: wall_of }, Kind { name: "way", of: way_of }, Kind { name: "hand", of: hand_of }];

impl Filter {
    /// What is chosen, by its name in addresses.
    pub(super) fn each(&self) -> [(&'static str, &Option<String>); 3] {
        [("wall", &self.wall), ("way", &self.way), ("hand", &self.hand)]
    }

    /// Whether an option is shown.
    pub(super) fn shows(&self, brief: &Brief, option: &RankedOption) -> bool {
        KINDS.iter().all(|kind| self.lets_by(kind, brief, option))
    }

    /// What is chosen of one filter.
    pub(super) fn chosen(&self, name: &str) -> Option<&str> {
        self.each().into_iter().find(|(own, _)| *own == name).and_then(|(_, value)| value.as_deref())
    }

    fn lets_by(&self, kind: &Kind, brief: &Brief, option: &RankedOption) -> bool {
        self.chosen(kind.name).is_none_or(|chosen| (kind.of)(brief, option).as_deref() == Some(chosen))
    }

    /// The choices of a filter, with how many options each leaves of those that the other filters show.
    pub(super) fn choices(&self, answer: &Answer, name: &str) -> Vec<Choice> {
        let brief = &answer.brief;
        let Some(Kind { of, .. }) = KINDS.iter().find(|kind| kind.name == name) else { return Vec::new() };
        let others = |option: &&RankedOption| {
            KINDS.iter().filter(|kind| kind.name != name).all(|kind| self.lets_by(kind, brief, option))
        };
        let shown: Vec<Option<String>> = answer.options.iter().filter(others).map(|option| of(brief, option)).collect();
        let mut choices: Vec<Choice> = Vec::new();
        for value in answer.options.iter().filter_map(|option| of(brief, option)) {
            if choices.iter().all(|known| known.value != value) {
                let count = shown.iter().flatten().filter(|own| **own == value).count();
                let label = if value == NO_WALL { words::FREE.to_owned() } else { value.clone() };
                choices.push(Choice { value, label, count });
            }
        }
        with_any(choices, shown.len())
    }
}

/// One choice is none.
fn with_any(choices: Vec<Choice>, count: usize) -> Vec<Choice> {
    if choices.len() < 2 {
        return Vec::new();
    }
    let any = Choice { value: String::new(), label: words::ANY.to_owned(), count };
    std::iter::once(any).chain(choices).collect()
}

/// Where no wall is behind the main seat: no wall can be named by nothing but a space.
const NO_WALL: &str = " ";

/// The wall behind the main seat.
fn wall_of(brief: &Brief, option: &RankedOption) -> Option<String> {
    let name = |wall| brief.room.wall_name(wall).to_owned();
    Some(option.choices.seat_back.map_or_else(|| NO_WALL.to_owned(), name))
}

/// The hand of the corner sofa.
fn hand_of(_brief: &Brief, option: &RankedOption) -> Option<String> {
    option.choices.hand.map(|hand: Hand| hand.key().to_owned())
}

/// The wall that one looks at straight from the main seat.
fn way_of(brief: &Brief, option: &RankedOption) -> Option<String> {
    wall_faced(brief, option).map(|wall| brief.room.wall_name(wall).to_owned())
}
