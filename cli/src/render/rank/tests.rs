//! The page of a result, in each width, with what a sound room seldom says put in by hand.

use elbowroom_model::scenario;
use elbowroom_solver::answer::{Answer, Work};
use elbowroom_solver::{Limits, Unwatched, rank};

use super::{RankPage, text};
use crate::text::look::Look;
use crate::words::answer::{remedies, title};

/// A room in which every size is settled, and one in which nothing fits.
const SETTLED: &str = include_str!("../../../../tests/data/settled.yaml");
const NOTHING_FITS: &str = include_str!("../../../../scenarios/nothing-fits.yaml");

/// What came of a room, its first two options at most, as if it had taken always the same work.
fn answer(room: &str) -> Answer {
    let brief = scenario::read(room, None).unwrap();
    let mut answer = rank(&brief, &Limits::default(), &Unwatched);
    answer.options.truncate(2);
    answer.work = Work { arrangements: 5, programs: 132, seconds: 0.031, ..Work::default() };
    answer
}

/// Two options, the second of which could be larger and leaves out what stands in the first.
fn two_options() -> Answer {
    let mut answer = answer(SETTLED);
    let second = &mut answer.options[1];
    let largest = &mut second.largest;
    (largest.bound, largest.proven) = (largest.objective * 1.05, false);
    let last = answer.brief.piece_ids().next_back().unwrap();
    answer.options[0].layout.left_out.push(last);
    answer
}

fn page(answer: &Answer, width: usize) -> String {
    // Option by option: both are told, whether they are of one family or not.
    let limits = Limits { one_by_one: true, ..Limits::default() };
    text(&RankPage { answer, limits, full: true, sketch: false }, Look { width, colour: false })
}

/// Columns that a line takes.
fn columns(line: &str) -> usize {
    textwrap::core::display_width(line)
}

#[test]
fn no_line_is_wider_than_the_terminal() {
    for width in [80, 100] {
        let page = page(&two_options(), width);
        assert!(page.lines().all(|line| columns(line) <= width), "{page}");
    }
}

#[test]
fn what_is_left_out_and_what_is_not_proven_is_said() {
    let answer = two_options();
    let page = page(&answer, 1000);
    let [first, second] = [0, 1].map(|place| title(&answer.brief, &answer.options[place]));
    assert!(page.contains(&format!("1. {first}")) && page.contains(&format!("2. {second}")), "{page}");
    assert_eq!(page.matches("its sizes are not proven largest").count(), 1, "{page}");
    assert!(page.contains("Left out, for it did not fit\n  rug: There is no place for the rug"), "{page}");
}

#[test]
fn where_nothing_fits_each_remedy_is_told() {
    let answer = answer(NOTHING_FITS);
    let page = page(&answer, 1000);
    assert!(!answer.remedies.is_empty() && page.contains("Nothing fits as asked."), "{page}");
    for remedy in remedies(&answer) {
        assert!(page.contains(&remedy), "{page}");
    }
}

#[test]
fn names_never_reach_the_terminal_as_control_codes() {
    let mut answer = two_options();
    answer.brief.room.name = "a\rb\x08".into();
    answer.brief.room.walls[0].name = "\x1b]0;x\x07wall\u{9b}2J".into();
    answer.brief.room.items[0].name = "\u{202e}bay".into();
    for piece in &mut answer.brief.pieces {
        piece.name = format!("{}\x1b[31m", piece.name);
    }
    answer.options[0].key = "\u{9b}31m".into();
    let page = page(&answer, 80);
    assert!(page.chars().all(|character| character == '\n' || !crate::text::safe::is_obeyed(character)), "{page:?}");
}

/// Whoever asks has the answer on a screen of 80 by 24 when it ends.
#[test]
fn the_answer_is_left_on_one_screen() {
    let rooms = [
        include_str!("../../../../scenarios/canal-flat.yaml"),
        include_str!("../../../../scenarios/everyday.yaml"),
        include_str!("../../../../scenarios/if-it-fits.yaml"),
        include_str!("../../../../scenarios/family.yaml"),
        include_str!("../../../../scenarios/wheelchair.yaml"),
        SETTLED,
    ];
    for room in rooms {
        let brief = scenario::read(room, None).unwrap();
        let limits = Limits { shown: 0, ..Limits::default() };
        let answer = rank(&brief, &limits, &Unwatched);
        let told = RankPage { answer: &answer, limits, full: false, sketch: false };
        let page = text(&told, Look { width: 80, colour: false });
        assert_on_one_screen(&page);
        // Lines break: words are compared with single spaces.
        let words = page.split_whitespace().collect::<Vec<_>>().join(" ");
        for asked in ["Which wall", "How large", "Before you buy", "exits", "local codes", "--full"] {
            assert!(words.contains(asked), "{asked} is not in {page}");
        }
        let best = &answer.options[0];
        assert_eq!(words.contains("Which hand"), best.choices.hand.is_some(), "{page}");
        for told in answer.listed(&limits).iter().take(2) {
            assert!(words.contains(&title(&answer.brief, told.best)), "{page}");
        }
    }
}

/// One line of it is taken where one types on.
fn assert_on_one_screen(page: &str) {
    assert!(page.lines().count() <= 23, "{} lines\n{page}", page.lines().count());
    assert!(page.lines().all(|line| columns(line) <= 80), "{page}");
}

#[test]
fn what_would_help_is_left_on_one_screen_where_nothing_fits() {
    let brief = scenario::read(include_str!("../../../../scenarios/nothing-fits.yaml"), None).unwrap();
    let answer = rank(&brief, &Limits::default(), &Unwatched);
    let told = RankPage { answer: &answer, limits: Limits::default(), full: false, sketch: false };
    let page = text(&told, Look { width: 80, colour: false });
    assert_on_one_screen(&page);
    assert!(
        page.contains("Nothing fits") && page.contains("What would help") && page.contains("local codes"),
        "{page}"
    );
    assert!(answer.refused.iter().all(|refused| !page.contains(&refused.key)), "no names of the program's own: {page}");
}

/// The one reason is what the first option has before the ways that come next, with both scores, and nothing that speaks against it.
#[test]
fn the_one_reason_is_what_the_next_way_lacks_most() {
    let mut answer = answer(SETTLED);
    for (place, scores) in [(0, (80.0, 20.0)), (1, (46.0, 90.0))] {
        let option = &mut answer.options[place];
        (option.family, option.set_aside) = (option.key.clone(), None);
        for judgement in &mut option.judgements {
            judgement.score = match judgement.criterion {
                elbowroom_model::Criterion::Ways => scores.0,
                _ => scores.1,
            };
        }
    }
    let told = RankPage { answer: &answer, limits: Limits::default(), full: false, sketch: false };
    let page = text(&told, Look { width: 1000, colour: false });
    let why = page.lines().find(|line| line.trim_start().starts_with("Why")).unwrap();
    assert!(why.contains(" scores 80, the next way 46: the tightest way, "), "{page}");
    assert!(!why.contains("longer than straight") && !why.contains("cuts between"), "{page}");
}
