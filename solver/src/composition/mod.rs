//! What makes a plan that keeps every rule a good one: terms that cost, each one file, as rows of the program.
//!
//! A term is asked of a piece about the heart of the group (main seat, screen, table), or of two pieces. What it costs
//! stands in `model/data/composition.yaml`. Whether a layout may be so at all is for `rules`; how a room is judged for a
//! client is for `criteria`.

mod about_fire;
mod about_view;
mod aims;
mod apart;
mod asked;
mod at_wall;
mod axis;
mod beam;
mod before_window;
mod behind;
mod dining;
mod doorways;
mod floor_before;
mod free_stretch;
mod heart;
mod in_corner;
mod on_one_level;
mod open_floor;
mod pairs;
mod plan_term;
mod rug;
mod rug_clear;
mod screen;
mod second_seats;
mod small;
mod storage;
mod term_cost;
mod terms;
mod told;
mod worth;

pub(crate) use aims::Aims;
pub(crate) use heart::Heart;
pub(crate) use plan_term::TermContext;
pub use term_cost::TermCost;
pub(crate) use term_cost::dearest_first;
pub(crate) use terms::TERMS;
pub(crate) use told::told;
pub(crate) use worth::worth;
