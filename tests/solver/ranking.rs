//! The order of the options and how firm it is.

use elbowroom_model::{Criterion, Wishes};
use elbowroom_solver::ranking::{Draws, Entrant, order, ratings};
use proptest::collection::vec;
use proptest::prelude::{Just, ProptestConfig, Strategy, prop_assert, prop_assert_eq, prop_assume, proptest};

mod families;
mod tiers;

/// Options that ease nothing and break no must, with these scores in the first criteria.
fn scores(rows: &[Vec<f64>]) -> Vec<Entrant> {
    let row = |row: &Vec<f64>| Criterion::ALL.iter().copied().zip(row.iter().copied()).collect();
    rows.iter().map(|it| Entrant { scores: row(it), ..Entrant::default() }).collect()
}

fn wishes(figures: &[f64]) -> Wishes {
    Criterion::ALL
        .iter()
        .copied()
        .zip(figures)
        .fold(Wishes::default(), |all, (criterion, wish)| all.with(criterion, *wish))
}

/// Two to seven options judged by the first so many criteria, and the wishes for these.
fn judged() -> impl Strategy<Value = (Vec<Vec<f64>>, Vec<f64>)> {
    let score = (0_u32..=20).prop_map(|fifths| f64::from(fifths) * 5.0);
    let wish = (0_u32..=10).prop_map(|halves| f64::from(halves) * 0.5);
    (2_usize..=5, 2_usize..=7).prop_flat_map(move |(criteria, options)| {
        (vec(vec(score.clone(), criteria), options), vec(wish.clone(), criteria))
    })
}

/// By how much an option leads another.
fn lead(judged: &[Entrant], wishes: &Wishes, option: usize, rival: usize) -> f64 {
    let weight = |criterion| if no_wish(judged, wishes) { 1.0 } else { wishes.get(criterion) };
    let sum: f64 = judged[0].scores.iter().map(|(criterion, _)| weight(*criterion)).sum();
    let pairs = judged[option].scores.iter().zip(&judged[rival].scores);
    pairs.map(|((criterion, own), (_, other))| weight(*criterion) * (own - other)).sum::<f64>() / sum
}

fn no_wish(judged: &[Entrant], wishes: &Wishes) -> bool {
    judged[0].scores.iter().all(|(criterion, _)| wishes.get(*criterion) == 0.0)
}

fn runner_up(judged: &[Entrant], wishes: &Wishes) -> usize {
    order(judged, wishes, None)[1]
}

#[test]
fn the_score_is_the_mean_of_the_scores_weighed_by_the_wishes() {
    let found = ratings(&scores(&[vec![80.0, 20.0]]), &wishes(&[3.0, 1.0]), None);
    assert_eq!(found[0].score, 65.0);
}

#[test]
fn without_any_wish_all_criteria_count_alike() {
    let found = ratings(&scores(&[vec![90.0, 0.0, 30.0]]), &wishes(&[0.0, 0.0, 0.0]), None);
    assert!((found[0].score - 40.0).abs() < 1e-9);
}

#[test]
fn a_criterion_that_one_option_is_not_judged_by_counts_for_none() {
    let mut judged = scores(&[vec![80.0, 10.0], vec![60.0, 90.0]]);
    judged[0].scores.pop();
    let found = ratings(&judged, &wishes(&[3.0, 3.0]), None);
    assert_eq!((found[0].score, found[1].score), (80.0, 60.0));
    assert_eq!((found[0].share, found[1].dominated_by), (1.0, Some(0)));
    assert_eq!(order(&judged, &wishes(&[3.0, 3.0]), Some(Criterion::Entrance)), [0, 1]);
}

#[test]
fn a_tie_goes_to_the_option_handed_in_first() {
    let tied = scores(&[vec![10.0, 10.0], vec![60.0, 40.0], vec![40.0, 60.0]]);
    assert_eq!(order(&tied, &wishes(&[3.0, 3.0]), None), [1, 2, 0]);
}

#[test]
fn one_criterion_alone_may_give_the_order() {
    let judged = scores(&[vec![10.0, 90.0], vec![60.0, 0.0]]);
    assert_eq!(order(&judged, &wishes(&[1.0, 5.0]), None), [0, 1]);
    assert_eq!(order(&judged, &wishes(&[1.0, 5.0]), Some(Criterion::View)), [1, 0]);
    let absent = Some(Criterion::Fireside);
    assert_eq!(order(&judged, &wishes(&[1.0, 5.0]), absent), [0, 1], "a criterion that does not apply orders nothing");
}

#[test]
fn equal_options_share_the_first_place_and_neither_is_strictly_first() {
    let found = ratings(&scores(&[vec![50.0, 70.0], vec![50.0, 70.0], vec![10.0, 10.0]]), &Wishes::default(), None);
    assert_eq!(found.iter().map(|rating| rating.share).collect::<Vec<_>>(), [0.5, 0.5, 0.0]);
    assert!(found.iter().all(|rating| rating.never_first));
    assert_eq!(found[1].dominated_by, None);
    assert_eq!(found[2].dominated_by, Some(0));
}

#[test]
fn the_turning_wish_is_found_in_closed_form_and_rounded_away() {
    // View 90 : 50, entrance 40 : 70. The second leads where 40 x view < 30 x entrance.
    let judged = scores(&[vec![90.0, 40.0], vec![50.0, 70.0]]);
    let found = ratings(&judged, &wishes(&[3.0, 3.0]), None);
    // Entrance: 4 exactly is a tie, so 4.1; view: 2.25, so 2.2, the nearer of the two.
    for rating in &found {
        let turn = rating.turns_if.unwrap();
        assert_eq!((turn.criterion, turn.weight, turn.then_first), (Criterion::View, 2.2, 1));
    }
}

#[test]
fn an_option_that_is_best_in_everything_is_turned_by_nothing() {
    let found = ratings(&scores(&[vec![50.0, 60.0], vec![90.0, 80.0]]), &wishes(&[2.0, 4.0]), None);
    assert!(found.iter().all(|rating| rating.turns_if.is_none()));
}

#[test]
fn nothing_to_rank_is_no_fault() {
    assert!(ratings(&[], &Wishes::default(), None).is_empty());
    assert!(order(&[], &Wishes::default(), Some(Criterion::View)).is_empty());
    let unjudged = ratings(&[Entrant::default(), Entrant::default()], &Wishes::default(), None);
    assert_eq!(unjudged.iter().map(|rating| rating.share).collect::<Vec<_>>(), [0.5, 0.5]);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn shares_sum_to_one_in_millionths((rows, figures) in judged()) {
        let found = ratings(&scores(&rows), &wishes(&figures), None);
        let parts: Vec<f64> = found.iter().map(|rating| rating.share * 1e6).collect();
        let off_whole = |parts: &f64| (parts - parts.round()).abs() > 1e-6;
        prop_assert_eq!(parts.iter().map(|parts| parts.round()).sum::<f64>(), 1e6);
        prop_assert!(!parts.iter().any(off_whole), "{parts:?}");
    }

    /// Each weight over any other lies between the least and the most that a step up or down of each wish gives.
    #[test]
    fn weights_stay_within_a_step_of_the_wishes((_, figures) in judged()) {
        let any = figures.iter().any(|wish| *wish > 0.0);
        let ends = |wish: f64| match wish {
            nothing if nothing <= 0.0 => if any { (0.0, 0.0) } else { (1.0, 1.0) },
            wish => ((wish - 1.0).max(0.0), (wish + 1.0).min(5.0)),
        };
        let mut draws = Draws::new(&figures);
        for _ in 0..20 {
            let weights = draws.draw();
            prop_assert!((weights.iter().sum::<f64>() - 1.0).abs() < 1e-9);
            for (one, wish) in weights.iter().zip(&figures) {
                for (other, rival) in weights.iter().zip(&figures) {
                    let ((least, _), (_, most)) = (ends(*wish), ends(*rival));
                    prop_assert!(one * most >= other * least - 1e-12, "{weights:?} of {figures:?}");
                }
            }
        }
    }

    /// The wish that turns the order does so, and no change of any one wish that is clearly smaller does.
    #[test]
    fn the_turning_wish_turns_the_order_and_none_nearer_does((rows, figures) in judged()) {
        let judged = scores(&rows);
        let present = wishes(&figures);
        let first = order(&judged, &present, None)[0];
        for (option, rating) in ratings(&judged, &present, None).iter().enumerate() {
            // A tie turns nothing, though it may go to the other one.
            let turned = |weighed: &Wishes| match order(&judged, weighed, None)[0] {
                leader if option == first => lead(&judged, weighed, leader, first) > 1e-9,
                leader => leader == option && lead(&judged, weighed, leader, runner_up(&judged, weighed)) > 1e-9,
            };
            let reach = rating.turns_if.map_or(f64::INFINITY, |turn| {
                (turn.weight - present.get(turn.criterion)).abs() - 0.1
            });
            if let Some(turn) = rating.turns_if {
                let weighed = present.with(turn.criterion, turn.weight);
                prop_assert!(turned(&weighed), "{turn:?}");
                prop_assert_eq!(order(&judged, &weighed, None)[0], turn.then_first);
                prop_assert!((0.0..=5.0).contains(&turn.weight));
            }
            for (criterion, wish) in Criterion::ALL.iter().copied().zip(&figures) {
                for twentieths in 0..=100 {
                    let weight = f64::from(twentieths) * 0.05;
                    if (weight - wish).abs() < reach - 1e-6 && weight != *wish {
                        let weighed = present.with(criterion, weight);
                        prop_assert!(!turned(&weighed), "{criterion:?} at {weight} beside {:?}", rating.turns_if);
                    }
                }
            }
        }
    }

    /// Over two criteria all weights can be walked through.
    #[test]
    fn never_first_is_what_no_weights_put_first(rows in vec(vec((0_u32..=20).prop_map(|fifths| f64::from(fifths) * 5.0), 2), 2..8)) {
        let found = ratings(&scores(&rows), &Wishes::default(), None);
        for (option, rating) in found.iter().enumerate() {
            let leads = |weight: f64| {
                let score = |row: &[f64]| row[0] * weight + row[1] * (1.0 - weight);
                let rivals = rows.iter().enumerate().filter(|(rival, _)| *rival != option);
                rivals.into_iter().all(|(_, rival)| score(&rows[option]) > score(rival) + 1e-6)
            };
            let walked = (0..=4_000).any(|step| leads(f64::from(step) / 4_000.0));
            prop_assert_eq!(walked, !rating.never_first, "{} of {:?}", option, rows);
        }
    }

    #[test]
    fn what_another_dominates_is_never_first_and_takes_no_share((rows, figures) in judged()) {
        prop_assume!(figures.iter().all(|wish| *wish > 0.0));
        for (option, rating) in ratings(&scores(&rows), &wishes(&figures), None).iter().enumerate() {
            let dominates = |rival: &Vec<f64>| {
                rival.iter().zip(&rows[option]).all(|(a, b)| a >= b) && *rival != rows[option]
            };
            prop_assert_eq!(rating.dominated_by.is_some(), rows.iter().any(dominates));
            if let Some(rival) = rating.dominated_by {
                prop_assert!(dominates(&rows[rival]) && rating.never_first && rating.share == 0.0);
            }
        }
    }

    /// Handing the options in another order changes who is named first in a tie, and nothing else.
    #[test]
    fn options_stand_as_they_do_whatever_their_order(
        ((rows, figures), shuffle) in judged().prop_flat_map(|judged| {
            let places: Vec<usize> = (0..judged.0.len()).collect();
            (Just(judged), Just(places).prop_shuffle())
        })
    ) {
        let plain = ratings(&scores(&rows), &wishes(&figures), None);
        let shuffled: Vec<Vec<f64>> = shuffle.iter().map(|place| rows[*place].clone()).collect();
        for (rating, place) in ratings(&scores(&shuffled), &wishes(&figures), None).iter().zip(&shuffle) {
            let before = &plain[*place];
            prop_assert_eq!(rating.score, before.score);
            prop_assert_eq!(rating.never_first, before.never_first);
            prop_assert_eq!(rating.dominated_by.is_some(), before.dominated_by.is_some());
            // The last millionth goes by place where remainders are equal.
            prop_assert!((rating.share - before.share).abs() < 1.5e-6);
        }
    }
}
