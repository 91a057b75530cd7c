//! The options of a brief by their plans alone: which there are, in which order and with which scores. How large each piece
//! could be, why others are refused and what would help are left aside: they decide nothing between two briefs.
//!
//! All that is told here is what [`rank`](crate::rank()) tells of the same brief.

use std::cell::OnceCell;

use elbowroom_model::{Brief, PieceId};

use crate::answer::thousandth;
use crate::arrangement::{Arrangement, Choices, enumerate};
use crate::attempt::Attempts;
use crate::candidate::Planned;
use crate::layout::Layout;
use crate::rank::{shared, try_all};
use crate::ranking::{self, Entrant};
use crate::refusal::Why;
use crate::routes::Floor;
use crate::search::RoomContext;
use crate::site::Site;
use crate::way_in::{self, Narrowed};
use crate::{Limits, Unwatched, twins, verify};

/// The options of a brief by their plans.
#[derive(Debug, Default)]
pub(crate) struct ByPlan {
    /// Best first.
    pub(crate) options: Vec<OptionByPlan>,
    /// Of some arrangement it is not known whether it fits.
    pub(crate) is_undecided: bool,
}

/// An option by its plan.
#[derive(Debug)]
pub(crate) struct OptionByPlan {
    /// Stable name of the arrangement.
    pub(crate) key: String,
    /// The seat that it is built about.
    pub(crate) main_seat: PieceId,
    /// Its decisions.
    pub(crate) choices: Choices,
    /// Where everything stands.
    pub(crate) layout: Layout,
    /// 0 to 100.
    pub(crate) score: f64,
}

/// The options of `brief` by their plans, under the wishes.
pub(crate) fn by_plan(brief: &Brief) -> ByPlan {
    match way_in::narrowed(brief) {
        Narrowed::Same => planned(brief),
        Narrowed::To(narrowed, _) => planned(&narrowed),
        Narrowed::Blocked(_) => ByPlan::default(),
    }
}

/// A plan, and how large its pieces could be where that is asked: only ties hang on it.
struct Contender<'a> {
    planned: Planned<'a>,
    /// As it was tried, whatever it is told as.
    tried: &'a Arrangement,
    size: OnceCell<f64>,
}

impl Contender<'_> {
    fn told_size(&self, attempts: &Attempts<'_, '_>) -> f64 {
        *self.size.get_or_init(|| attempts.largest_of(self.tried, &self.planned).0.told_size())
    }
}

impl<'a> AsRef<Planned<'a>> for Contender<'a> {
    fn as_ref(&self) -> &Planned<'a> {
        &self.planned
    }
}

impl<'a> AsMut<Planned<'a>> for Contender<'a> {
    fn as_mut(&mut self) -> &mut Planned<'a> {
        &mut self.planned
    }
}

fn planned(brief: &Brief) -> ByPlan {
    let site = Site::of(brief);
    let (room, floor) = (RoomContext::of(brief, &site), Floor::of(brief, &site));
    let enumeration = enumerate(brief, &site);
    let budget = shared(brief, enumeration.arrangements.len(), &Limits::default());
    let checked = verify::CheckedRoom::of(brief);
    let attempts = Attempts { room: &room, floor: &floor, checked: &checked, budget, watch: &Unwatched };
    let tried = try_all(&attempts, &enumeration, |arrangement| attempts.attempt_plan(arrangement));
    let (mut contenders, mut refused) = (Vec::new(), Vec::new());
    for (tried, arrangement) in tried.into_iter().zip(&enumeration.arrangements) {
        match tried.result {
            Ok(planned) => contenders.push(Contender { planned, tried: arrangement, size: OnceCell::new() }),
            Err(refusal) => refused.push(refusal),
        }
    }
    let told_size = |one: &Contender<'_>| one.told_size(&attempts);
    let distinct = twins::told_once(&enumeration, brief, contenders, refused, told_size);
    // Of an arrangement that is not looked at nobody knows.
    let is_undecided = enumeration.beyond > 0 || distinct.refused.iter().any(|it| it.why == Why::NotDecided);
    ByPlan { options: in_order(brief, distinct.candidates, told_size), is_undecided }
}

/// The options, best first. A tie in scores goes to the larger sizes, then to the order of the enumeration.
fn in_order(
    brief: &Brief,
    mut contenders: Vec<Contender<'_>>,
    told_size: impl Fn(&Contender<'_>) -> f64,
) -> Vec<OptionByPlan> {
    let tied = ranking::tied(&entrants(brief, &contenders), &brief.wishes);
    // What ties with nothing has its place whatever its size.
    for (contender, _) in contenders.iter().zip(tied).filter(|(_, tied)| !tied) {
        contender.size.get_or_init(|| 0.0);
    }
    contenders.sort_by(|one, other| told_size(other).total_cmp(&told_size(one)));
    let entrants = entrants(brief, &contenders);
    let scores = ranking::scores(&entrants, &brief.wishes);
    let option = |place: usize| {
        let Planned { arrangement, plan, .. } = &contenders[place].planned;
        OptionByPlan {
            key: arrangement.key.clone(),
            main_seat: arrangement.main_seat,
            choices: arrangement.choices.clone(),
            layout: plan.layout.clone(),
            score: thousandth(scores[place]),
        }
    };
    ranking::order(&entrants, &brief.wishes, None).into_iter().map(option).collect()
}

fn entrants(brief: &Brief, contenders: &[Contender<'_>]) -> Vec<Entrant> {
    let mut entrants: Vec<Entrant> = contenders.iter().map(|one| one.planned.entrant()).collect();
    ranking::set_ill_composed_aside(&mut entrants, &brief.wishes);
    entrants
}

#[cfg(test)]
mod tests {
    use elbowroom_model::{Brief, scenario};

    use super::{ByPlan, by_plan};
    use crate::{Limits, Unwatched, rank};

    fn told(found: &ByPlan) -> Vec<(&str, f64)> {
        found.options.iter().map(|option| (&*option.key, option.score)).collect()
    }

    /// By their plans options are told as they are ranked, and the first is the first.
    fn hold_to_rank(brief: &Brief) {
        let answer = rank(brief, &Limits { shown: 0, ..Limits::default() }, &Unwatched);
        let ranked: Vec<(&str, f64)> = answer.options.iter().map(|option| (&*option.key, option.score)).collect();
        let found = by_plan(brief);
        assert_eq!(told(&found), ranked);
        assert_eq!(found.is_undecided, answer.undecided() > 0);
    }

    fn room(text: &str, needed: bool) -> Brief {
        let mut brief = scenario::read(text, None).expect("a sound room");
        brief.pieces.iter_mut().for_each(|piece| piece.needed |= needed);
        brief
    }

    #[test]
    fn options_by_their_plans_are_those_that_are_ranked() {
        let one_door = include_str!("../../scenarios/everyday.yaml");
        hold_to_rank(&room(one_door, true));
        hold_to_rank(&room(one_door, false));
        hold_to_rank(&room(include_str!("../../scenarios/pair-of-armchairs.yaml"), true));
        hold_to_rank(&room(include_str!("../../scenarios/canal-flat.yaml"), true));
        hold_to_rank(&room(include_str!("../../scenarios/nothing-fits.yaml"), false));
    }

    /// A square room with nothing in it is the same from all sides: ties go to the larger.
    #[test]
    fn ties_are_told_as_they_are_ranked() {
        let text = "units: cm\nwalls: [{ length: 420 }, { length: 420 }, { length: 420 }, { length: 420 }]\npieces:\n  \
                    - { kind: sofa }\n  - { kind: armchair, count: 2, needed: false }\n  - { kind: coffee-table }\n";
        hold_to_rank(&room(text, false));
        hold_to_rank(&room(text, true));
    }
}
