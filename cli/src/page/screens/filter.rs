//! Which options are shown: against which wall, with which hand.

use elbowroom_model::{Brief, Hand};
use elbowroom_solver::answer::{Answer, RankedOption};

use crate::words::page as words;

/// Which options are shown; nothing where it is no matter.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(in crate::page) struct Filter {
    /// The wall behind the main seat, by its name, or `free`.
    pub(in crate::page) wall: Option<String>,
    /// The hand of the corner sofa.
    pub(in crate::page) hand: Option<String>,
}

/// A choice of a filter, with how many options it leaves beside the other filter.
#[derive(Debug, PartialEq, Eq)]
pub(super) struct Choice {
    /// As addresses have it; empty: no matter.
    pub(super) value: String,
    /// As it is told.
    pub(super) label: String,
    /// Options that it leaves.
    pub(super) count: usize,
}

impl Filter {
    /// Whether an option is shown.
    pub(super) fn shows(&self, brief: &Brief, option: &RankedOption) -> bool {
        self.shows_wall(brief, option) && self.shows_hand(option)
    }

    fn shows_wall(&self, brief: &Brief, option: &RankedOption) -> bool {
        self.wall.as_ref().is_none_or(|wall| *wall == wall_of(brief, option))
    }

    fn shows_hand(&self, option: &RankedOption) -> bool {
        self.hand.as_ref().is_none_or(|hand| option.choices.hand.is_some_and(|own| own.key() == hand))
    }

    /// The walls that main seats stand against.
    pub(super) fn walls(&self, answer: &Answer) -> Vec<Choice> {
        let brief = &answer.brief;
        let shown = || answer.options.iter().filter(|option| self.shows_hand(option));
        let mut walls: Vec<Choice> = Vec::new();
        for option in &answer.options {
            let value = wall_of(brief, option);
            if walls.iter().all(|known| known.value != value) {
                let count = shown().filter(|option| wall_of(brief, option) == value).count();
                let label = if option.choices.seat_back.is_none() { words::FREE.to_owned() } else { value.clone() };
                walls.push(Choice { value, label, count });
            }
        }
        with_any(walls, shown().count())
    }

    /// The hands that corner sofas have.
    pub(super) fn hands(&self, answer: &Answer) -> Vec<Choice> {
        let shown = || answer.options.iter().filter(|option| self.shows_wall(&answer.brief, option));
        let hand = |hand: Hand| {
            let has = |option: &&RankedOption| option.choices.hand == Some(hand);
            let any = answer.options.iter().any(|option| has(&option));
            any.then(|| Choice {
                value: hand.key().to_owned(),
                label: hand.key().to_owned(),
                count: shown().filter(has).count(),
            })
        };
        with_any([Hand::Left, Hand::Right].into_iter().filter_map(hand).collect(), shown().count())
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

/// The wall behind the main seat; no wall can be named by nothing but a space.
fn wall_of(brief: &Brief, option: &RankedOption) -> String {
    option.choices.seat_back.map_or_else(|| " ".to_owned(), |wall| brief.room.wall_name(wall).to_owned())
}
