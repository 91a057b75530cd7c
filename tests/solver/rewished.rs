//! Options under other wishes, with nothing solved: what `rank` makes of the same room under those wishes.

use elbowroom_model::{Brief, Criterion, Wishes};
use elbowroom_solver::{Limits, Unwatched, hang_on_wishes, rank, rewished};

use crate::scenarios::room;
use crate::support::ranked::brief_of;

/// Some wishes equal, some nothing, some musts, the same ones each time; every other one keeps the wishes of the brief that
/// layouts may hang on.
fn weightings(asked: &Wishes) -> Vec<Wishes> {
    let mut state = 11_u64;
    let mut next = || {
        state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        ((state >> 33) % 11) as f64 / 2.0
    };
    let any = (0..12).map(|_| Criterion::ALL.iter().fold(Wishes::default(), |wishes, one| wishes.with(*one, next())));
    let kept = [Criterion::Seats, Criterion::Daylight, Criterion::Fireside, Criterion::View];
    let keeps = |wishes: Wishes| kept.iter().fold(wishes, |wishes, one| wishes.with(*one, asked.get(*one)));
    any.enumerate().map(|(which, wishes)| if which % 2 == 0 { keeps(wishes) } else { wishes }).collect()
}

#[test]
fn the_order_is_that_of_a_room_solved_anew() {
    let limits = Limits { shown: 0, ..Limits::default() };
    for name in ["fire-or-view.yaml", "measured-badly.yaml", "which-hand.yaml"] {
        let brief = brief_of(&room(name));
        let answer = rank(&brief, &limits, &Unwatched);
        let weightings = weightings(&brief.wishes);
        let reordered: Vec<_> = weightings.iter().filter(|wishes| !hang_on_wishes(&brief, wishes)).copied().collect();
        assert!(reordered.len() > 3, "{name}");
        for wishes in reordered {
            let anew = rank(&Brief { wishes, ..brief.clone() }, &limits, &Unwatched);
            let again = rewished(&answer, &wishes);
            assert!(again.options == anew.options, "{name}: {wishes:?}");
            assert_eq!(again.notices, anew.notices, "{name}: {wishes:?}");
            assert_eq!((again.asked, again.brief), (anew.asked, anew.brief), "{name}");
        }
    }
}

#[test]
fn a_lamp_that_need_not_stand_hangs_on_the_wish_for_light_alone() {
    let brief = brief_of(&room("canal-flat.yaml"));
    assert!(hang_on_wishes(&brief, &brief.wishes.with(Criterion::Daylight, 5.0)));
    assert!(!hang_on_wishes(&brief, &brief.wishes.with(Criterion::Screen, 1.0)));
}
