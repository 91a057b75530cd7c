//! What an answer says: each sentence made from what was decided, in the unit of its brief. A file a subject.

mod arrangement;
mod breach;
mod cause;
mod caution;
mod children;
mod composition;
mod criteria;
mod eased;
mod gives_up;
mod in_options;
mod left_out;
mod notice;
mod refusal;
mod remedy;
mod screen_overhang;
mod second_seats;
mod title;

pub(crate) use breach::broken;
pub(crate) use cause::holding;
pub(crate) use caution::caution;
pub(crate) use composition::{clause, term};
pub(crate) use criteria::{reason, speaks_for};
pub(crate) use eased::{all_eased, eased};
pub(crate) use gives_up::gives_up;
pub(crate) use left_out::left_out;
pub(crate) use notice::{
    cautions_as_it_stands, cautions_of, cautions_of_all, held_to, notices, notices_as_it_stands, notices_of,
    own_cautions, screens_beyond,
};
pub(crate) use refusal::refusal;
pub(crate) use remedy::{lever, remedies, remedy};
pub(crate) use title::{SIDES, tells_sides, title, title_within};
