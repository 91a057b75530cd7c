//! Families: one for each way to put the main seat, and the best of each stands for it.

use elbowroom_solver::Limits;
use elbowroom_solver::answer::RankedOption;
use elbowroom_solver::arrangement::Choices;

use crate::scenarios;
use crate::support::ranked::{brief_of, figures, ranked_brief};

/// A wall says the way that a seat at it faces; what stands free faces one way within a degree.
fn are_seated_alike(one: &Choices, other: &Choices) -> bool {
    let apart = (one.facing.degrees() - other.facing.degrees()).rem_euclid(360.0);
    one.seat_back == other.seat_back && one.hand == other.hand && apart.min(360.0 - apart) <= 1.0
}

#[test]
fn a_family_is_one_answer_to_which_wall_which_way_and_which_hand() {
    let mut of_several = 0;
    for (name, text) in scenarios::rooms() {
        let answer = ranked_brief(&brief_of(&text), Limits { shown: 0, ..Limits::default() });
        let mut firsts: Vec<&RankedOption> = Vec::new();
        for option in &answer.options {
            let first = firsts.iter().copied().find(|first| are_seated_alike(&first.choices, &option.choices));
            assert_eq!(option.family, first.unwrap_or(option).key, "{name}: {}", option.key);
            firsts.extend(first.is_none().then_some(option));
        }
        let families = answer.families();
        assert_eq!(families.len(), firsts.len(), "{name}");
        assert!(families.is_sorted_by_key(|family| family.best.rank), "{name}");
        let told: usize = families.iter().map(|family| 1 + family.others.len()).sum();
        assert_eq!(told, answer.options.len(), "{name}");
        of_several += families.iter().filter(|family| !family.others.is_empty()).count();
    }
    assert!(of_several > 0, "no demo room has two options of one family");
}

/// The most that one size could be is worked out for the best of each family that is shown, or for the first options.
#[test]
fn what_is_shown_alone_gets_the_figures_of_it() {
    let (_, text) = scenarios::rooms().into_iter().find(|(name, _)| name.contains("canal-flat")).unwrap();
    let brief = brief_of(&text);
    for one_by_one in [false, true] {
        let limits = Limits { shown: 2, one_by_one, ..Limits::default() };
        let answer = ranked_brief(&brief, limits);
        let shown: Vec<usize> = answer.listed(&limits).iter().take(2).map(|family| family.best.rank).collect();
        assert!(one_by_one || answer.families().len() > 1, "the room has but one family");
        assert!(!one_by_one || shown == [1, 2]);
        for option in &answer.options {
            for one in option.pieces(&answer.brief) {
                for dimension in one.piece.dimensions() {
                    let has_it = figures(one.sizes, dimension).alone.is_some();
                    assert_eq!(has_it, shown.contains(&option.rank), "{} {}", option.key, one.piece.name);
                }
            }
        }
    }
}
