//! Prose of the report.

use super::family;

/// First thing that a keyboard comes to.
pub(crate) const SKIP: &str = "Skip to the report";
/// Over the room.
pub(crate) const ROOM: &str = "The room";
/// Over the walls.
pub(crate) const WALLS: &str = "Walls, clockwise, as you face each from inside";
/// Head: a wall.
pub(crate) const WALL: &str = "wall";
/// Head: its length.
pub(crate) const LENGTH: &str = "length";
/// Head: what is on it.
pub(crate) const HOLDS: &str = "holds";
/// Over the sliders.
pub(crate) const WISHES: &str = "What counts for you";
/// What the sliders do.
pub(crate) const WISHES_ABOUT: &str = "Each wish from 0 (not at all) to 5 (most). Moving one puts the options in \
     another order at once, the answer above too; what fits and how large it may be does not change.";
/// A button.
pub(crate) const RESET: &str = "Back to the wishes of the file";
/// What is told when the order changes; the three marks are filled in.
pub(crate) const NOW_FIRST: &str =
    "Now first: {title}. Score {score} of 100; stays first in {share} of 100 shifts of these wishes by up to one step.";
/// Over the table of options.
pub(crate) const ORDER: &str = "The order";
/// The table of options.
pub(crate) const ALL_OPTIONS: &str = "All options with their scores";
/// Head: place in the order.
pub(crate) const PLACE: &str = "place";
/// Head: an option.
pub(crate) const OPTION: &str = "option";
/// Head: a score.
pub(crate) const SCORE: &str = "score";
/// Head: how often first.
pub(crate) const FIRST_IN: &str = "first, of 100 shifts";
/// Over options of families whose best are told before them.
pub(crate) const LIKE_THESE: &str = "Those like them";
/// Over the options at length.
pub(crate) const OPTIONS: &str = "The options at length";
/// Before a score.
pub(crate) const SCORE_IS: &str = "Score ";
/// Between score and share.
pub(crate) const FIRST_IS: &str = " of 100; first in ";
/// After a share.
pub(crate) const OF_SHIFTS: &str = " of 100 shifts of your wishes by up to one step.";
/// Over the reasons.
pub(crate) const REASONS: &str = "Why: each criterion with its score of 100";
/// Over what a plan gives up.
pub(crate) const GIVES_UP: &str = "What this plan gives up";
/// Head: a criterion.
pub(crate) const CRITERION: &str = "criterion";
/// Head: a reason.
pub(crate) const REASON: &str = "reason";
/// Head: a piece.
pub(crate) const PIECE: &str = "piece";
/// Head: which dimension.
pub(crate) const SIDE: &str = "side";
/// Head: the least of a size.
pub(crate) const LEAST: &str = "at least";
/// Head: sizes as planned and drawn.
pub(crate) const PLANNED: &str = "in this plan";
/// Head: sizes that fit together.
pub(crate) const TOGETHER: &str = "at most, all together";
/// Head: what one size could be alone.
pub(crate) const ALONE: &str = "this one alone, up to";
/// Head: what holds a size.
pub(crate) const HELD: &str = "held by";
/// Head: a way.
pub(crate) const WAY: &str = "way";
/// Head: how wide.
pub(crate) const WIDE: &str = "wide";
/// Head: how wide it must be.
pub(crate) const NEEDS: &str = "needs";
/// Head: where it is narrowest.
pub(crate) const NARROWEST: &str = "narrowest";
/// Over the cautions.
pub(crate) const CAUTIONS: &str = "Before you buy, build or move anything";
/// The last caution.
pub(crate) const SETTING_OUT: &str =
    "Set the plan out full size on the floor, with low-tack tape, before you buy. Local codes come before any of this.";
/// Over the sources.
pub(crate) const SOURCES: &str = "Sources";
/// Over what each criterion rests on.
pub(crate) const YARDSTICKS: &str = "What each criterion rests on";
/// What the letters at sources mean.
pub(crate) const TAGS: &str = "P published, D derived from published figures, M from memory of the named publication, C \
     common practice with no source.";

/// The page's title.
pub(crate) fn title(room: &str) -> String {
    format!("{room}: furniture arrangements that fit")
}

/// Over the answer, for whoever cannot see it.
pub(crate) const ANSWER: &str = "The answer";
/// What stood first before wishes were moved; the mark is filled in.
pub(crate) const WAS_FIRST: &str = "Your moved wishes put this first. With your wishes as filed it was: {title}.";
/// Over the best of the other families.
pub(crate) const OTHER_WAYS: &str = "Other ways to put the main seat";
/// On a button at a plan.
pub(crate) const OPEN: &str = "Larger";
/// Closes the large plan.
pub(crate) const CLOSE: &str = "Close";
/// Over the list that a printed report begins with.
pub(crate) const CONTENTS: &str = "Contents";
/// How to find an option on paper where pages are not counted.
pub(crate) const ONE_A_PAGE: &str = "Each option starts a page of its own, in this order, headed by its number.";
/// The folded rows of the order.
pub(crate) const MORE_OPTIONS: &str = "More options with their scores";

/// The same for a plan, told apart from the others.
pub(crate) fn open_plan(rank: usize) -> String {
    format!("{OPEN}: plan of option {rank}")
}

/// What the numbers on a plan stand for.
pub(crate) fn key(numbered: &[String]) -> String {
    let numbered = numbered.iter().enumerate().map(|(place, text)| format!("{} {text}", place + 1));
    numbered.collect::<Vec<_>>().join("; ")
}

/// Over the sizes beside the plan.
pub(crate) fn how_large(unit: &str) -> String {
    format!("How large, {unit}")
}

/// An option in the contents.
pub(crate) fn option_titled(rank: usize, title: &str) -> String {
    format!("Option {rank}. {title}")
}

/// Of rows that are folded.
pub(crate) fn more_rows(count: usize) -> String {
    match count {
        1 => "One more option".to_owned(),
        count => format!("{count} more options"),
    }
}

/// Where an option comes first that the page has no plan of.
pub(crate) fn no_plan(file: &str) -> String {
    format!(
        "This page carries no plan of what now comes first: elbowroom report {file} --all draws more. The plan below is the next that it has."
    )
}

/// How many are drawn, of all that are listed one by one or by families, and how to have another one.
pub(crate) fn drawn(drawn: usize, listed: usize, one_by_one: bool, file: &str) -> String {
    let (best_of_each, more) = match one_by_one {
        true => ("", "--all draws as many as a page holds".to_owned()),
        false => (
            ", the best of each way to put the main seat",
            format!("--top {listed} draws the best of each, --all every option"),
        ),
    };
    if drawn >= listed {
        return format!("All that fit{best_of_each}, the best first.");
    }
    format!("The first {drawn} of {listed} are drawn here{best_of_each}; elbowroom report {file} {more}.")
}

/// How many are like an option, after its title.
pub(crate) fn like_it(count: usize) -> String {
    format!(" {}", family::and_like_it(count))
}

/// What a plan is.
pub(crate) fn plan(rank: usize) -> String {
    format!("Plan of option {rank}")
}

/// Below a plan.
pub(crate) fn plan_caption(turns: bool, numbered: &[String]) -> String {
    let turning = if turns { "; dotted: room to turn a wheelchair" } else { "" };
    let signs = format!(
        "Dashed blue: ways, with the width of each by its letter; arrows: where a way is narrowest; dash and dot: sight \
         lines to liked windows; hatched: kept free{turning}."
    );
    if numbered.is_empty() { signs } else { format!("{signs} {}.", key(numbered)) }
}

/// Over the sizes.
pub(crate) fn sizes(unit: &str) -> String {
    format!(
        "Sizes to shop by, {unit}: the plan is drawn and taped with those of this plan; all at their most still fit together"
    )
}

/// Over the ways.
pub(crate) fn ways(unit: &str) -> String {
    format!("Walking routes through, {unit}")
}

/// A table, told apart from those of the other options.
pub(crate) fn table_of(caption: &str, rank: usize) -> String {
    format!("Option {rank}: {caption}")
}

/// A piece that found no room.
pub(crate) fn left_out(name: &str, why: &str) -> String {
    format!("Left out: {name}. {why}")
}

/// How to have the plan on paper.
pub(crate) fn draw(file: &str, key: &str) -> String {
    format!("On paper, to scale: elbowroom draw {file} --option {key} -o plan.pdf")
}
