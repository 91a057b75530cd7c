//! What stands first whatever its score: musts, and rules of comfort that are eased.

use elbowroom_model::{Criterion, PieceId, Wishes};
use elbowroom_solver::criteria::{Absent, FigureUnit, Finding, Judgement};
use elbowroom_solver::ranking::{Entrant, Lapse, Rating, SetAside, lapses, order, ratings};
use proptest::collection::vec;
use proptest::prelude::{Just, ProptestConfig, Strategy, prop_assert, prop_assert_eq, proptest};

use super::{scores, wishes};

fn judged(criterion: Criterion, score: f64) -> Judgement {
    let finding = Finding::Absent(Absent::Screen(PieceId(0)));
    Judgement { criterion, score, figure: 0.0, unit: FigureUnit::Count, finding }
}

/// Options with these scores in view and entrance, and what these break.
fn with_musts(rows: &[[f64; 2]]) -> Vec<Entrant> {
    let judged = |row: &[f64; 2]| [judged(Criterion::View, row[0]), judged(Criterion::Entrance, row[1])];
    rows.iter().map(|row| Entrant::of(&judged(row), 0)).collect()
}

fn aside(criterion: Criterion, lapse: Lapse) -> SetAside {
    SetAside { criterion, score: 0.0, lapse }
}

#[test]
fn a_wish_of_five_is_a_must_and_a_quarter_of_full_marks_meets_it() {
    let entrants = with_musts(&[[24.999, 100.0], [25.0, 0.0]]);
    let must = ratings(&entrants, &wishes(&[5.0, 4.0]), None);
    let set_aside = must[0].set_aside.unwrap();
    assert_eq!((set_aside.criterion, set_aside.score, set_aside.lapse), (Criterion::View, 24.999, Lapse::Poor));
    assert_eq!(must[1].set_aside, None);
    assert_eq!(order(&entrants, &wishes(&[5.0, 4.0]), None), [1, 0]);
    assert_eq!((must[0].share, must[1].share), (0.0, 1.0));
    let wish = ratings(&entrants, &wishes(&[4.75, 4.0]), None);
    assert!(wish.iter().all(|rating| rating.set_aside.is_none()));
    assert_eq!(order(&entrants, &wishes(&[4.75, 4.0]), None), [0, 1]);
}

/// The wishes from which each sets an option aside, as the composition of plans asks.
#[test]
fn a_screen_out_of_sight_sets_aside_at_any_wish_and_a_fire_behind_from_three() {
    let asked = |lapse: Lapse, criterion: Criterion, wish: f64| {
        let mut entrants = scores(&[vec![50.0]]);
        entrants[0].lapses.push(aside(criterion, lapse));
        ratings(&entrants, &Wishes::default().with(criterion, wish), None)[0].set_aside.is_some()
    };
    for (lapse, criterion, wish, is_aside) in [
        (Lapse::OutOfSight, Criterion::Screen, 0.0, true),
        (Lapse::FireBehind, Criterion::Fireside, 2.9, false),
        (Lapse::FireBehind, Criterion::Fireside, 3.0, true),
        (Lapse::Poor, Criterion::Ways, 4.9, false),
        (Lapse::Poor, Criterion::Ways, 5.0, true),
    ] {
        assert_eq!(asked(lapse, criterion, wish), is_aside, "{lapse:?} at {wish}");
    }
    assert_eq!(lapses(&[judged(Criterion::Ways, 0.0)]).len(), 1);
}

#[test]
fn what_eases_rules_stands_behind_what_eases_fewer_and_before_what_is_set_aside() {
    let mut entrants = scores(&[vec![99.0], vec![90.0], vec![80.0], vec![10.0], vec![70.0]]);
    entrants[0].lapses.push(aside(Criterion::Screen, Lapse::OutOfSight));
    entrants[1].eased = 2;
    entrants[2].eased = 1;
    entrants[4].eased = 1;
    assert_eq!(order(&entrants, &Wishes::default(), None), [3, 2, 4, 1, 0]);
    assert_eq!(order(&entrants, &Wishes::default(), Some(Criterion::View)), [3, 2, 4, 1, 0]);
    let found = ratings(&entrants, &Wishes::default(), None);
    assert_eq!(found.iter().map(|rating| rating.share).collect::<Vec<_>>(), [0.0, 0.0, 0.0, 1.0, 0.0]);
    assert_eq!(found[4].dominated_by, Some(2), "it eases as many and is better");
    assert_eq!(found[3].dominated_by, None, "what eases a rule dominates none that eases none");
    // With no option that eases nothing, those that ease least may be first.
    let found = ratings(&entrants[..3], &Wishes::default(), None);
    assert_eq!(found.iter().map(|rating| rating.share).collect::<Vec<_>>(), [0.0, 0.0, 1.0]);
}

#[test]
fn where_all_are_set_aside_none_has_a_share_and_scores_give_the_order() {
    let entrants = with_musts(&[[10.0, 20.0], [20.0, 90.0]]);
    let all = wishes(&[5.0, 3.0]);
    assert_eq!(order(&entrants, &all, None), [1, 0]);
    for rating in ratings(&entrants, &all, None) {
        assert!(rating.set_aside.is_some() && rating.turns_if.is_none() && rating.dominated_by.is_none());
        assert_eq!((rating.share, rating.never_first), (0.0, true));
    }
}

/// The first leads where 20 x view > 19 x entrance + 6 x openness: from 4.9985 for view on, the others being 4 and 3.995.
#[test]
fn no_wish_puts_first_what_it_would_set_aside() {
    let mut entrants = scores(&[vec![24.0, 30.0, 30.0], vec![4.0, 49.0, 36.0]]);
    let turns = |entrants: &[Entrant]| {
        let found = ratings(entrants, &wishes(&[4.9, 4.0, 3.995]), None);
        found
            .iter()
            .map(|it| it.turns_if.map(|turn| (turn.criterion, turn.weight, turn.then_first)))
            .collect::<Vec<_>>()
    };
    assert_eq!(turns(&entrants), [Some((Criterion::View, 5.0, 0)); 2]);
    // A wish of 5 would be a must that 24 of 100 does not meet.
    entrants[0].lapses.push(aside(Criterion::View, Lapse::Poor));
    assert_eq!(turns(&entrants), [Some((Criterion::View, 4.999, 0)); 2]);
}

/// Two to seven options, some of which ease rules or break a must.
fn mixed() -> impl Strategy<Value = Vec<Entrant>> {
    let row = vec((0_u32..=20).prop_map(|fifths| f64::from(fifths) * 5.0), 3);
    vec((row, 0_usize..3, proptest::bool::weighted(0.3)), 2..8).prop_map(|options| {
        let entrant = |(row, eased, is_out): (Vec<f64>, usize, bool)| {
            let mut entrant = Entrant { eased, ..scores(&[row]).remove(0) };
            entrant.lapses.extend(is_out.then_some(aside(Criterion::Screen, Lapse::OutOfSight)));
            entrant
        };
        options.into_iter().map(entrant).collect()
    })
}

/// What is set aside, and how many rules are eased.
fn tier(entrant: &Entrant, rating: &Rating) -> (bool, usize) {
    if rating.set_aside.is_some() { (true, 0) } else { (false, entrant.eased) }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn shares_sum_to_one_over_those_that_stand_foremost(entrants in mixed(), figures in vec(0.0_f64..=4.5, 3)) {
        let found = ratings(&entrants, &wishes(&figures), None);
        let all: Vec<_> = entrants.iter().zip(&found).map(|(entrant, rating)| tier(entrant, rating)).collect();
        let foremost = *all.iter().min().unwrap();
        let parts: f64 = found.iter().map(|rating| (rating.share * 1e6).round()).sum();
        prop_assert_eq!(parts, if foremost.0 { 0.0 } else { 1e6 });
        for (rating, tier) in found.iter().zip(&all) {
            let may_be_first = *tier == foremost && !foremost.0;
            prop_assert!(may_be_first || (rating.share == 0.0 && rating.turns_if.is_none() && rating.never_first));
            for other in rating.dominated_by.into_iter().chain(rating.turns_if.map(|turn| turn.then_first)) {
                prop_assert!(!tier.0 && all[other] <= *tier);
            }
        }
        let order = order(&entrants, &wishes(&figures), None);
        for pair in order.windows(2) {
            let [before, behind] = [pair[0], pair[1]];
            let ahead = all[before] < all[behind];
            prop_assert!(ahead || all[before] == all[behind] && found[before].score >= found[behind].score - 1e-9);
        }
    }

    /// Handing the options in another order changes nothing of how each stands.
    #[test]
    fn options_stand_as_they_do_whatever_their_order(
        (entrants, shuffle) in mixed().prop_flat_map(|entrants| {
            let places: Vec<usize> = (0..entrants.len()).collect();
            (Just(entrants), Just(places).prop_shuffle())
        }),
        figures in vec(0.0_f64..=5.0, 3),
    ) {
        let plain = ratings(&entrants, &wishes(&figures), None);
        let shuffled: Vec<Entrant> = shuffle.iter().map(|place| entrants[*place].clone()).collect();
        for (rating, place) in ratings(&shuffled, &wishes(&figures), None).iter().zip(&shuffle) {
            let before = &plain[*place];
            prop_assert_eq!(rating.set_aside, before.set_aside);
            prop_assert_eq!(rating.never_first, before.never_first);
            prop_assert!((rating.share - before.share).abs() < 1.5e-6);
        }
    }
}
