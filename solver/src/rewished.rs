//! An answer under other wishes: the same options in another order, with nothing solved.
//!
//! Layouts hang on wishes by two things alone: what a piece that need not stand is worth, and whether plans are drawn for a
//! fire or a view ([`hang_on_wishes`]).

use elbowroom_model::{Brief, Wishes};

use crate::answer::{Answer, RankedOption, TurnsIf};
use crate::composition::worth;
use crate::notice::{Notice, of_options};
use crate::ranking::{self, Entrant, family};

/// Whether other layouts may come of a brief under these wishes: a piece that need not stand is then worth more, or less, or
/// its fire or its view is wished for and was not, or the other way round.
#[must_use]
pub fn hang_on_wishes(brief: &Brief, wishes: &Wishes) -> bool {
    let worth_other = |piece: &elbowroom_model::Piece| worth(piece, &brief.wishes) != worth(piece, wishes);
    brief.turns_otherwise(wishes) || brief.pieces.iter().any(|piece| !piece.needed && worth_other(piece))
}

/// The answer with its options ranked by other wishes, scores, shares, order and families as [`crate::rank`] has them.
#[must_use]
pub fn rewished(answer: &Answer, wishes: &Wishes) -> Answer {
    let mut options: Vec<RankedOption> = answer.options.clone();
    // As size and geometry have them: what settles ties.
    options.sort_by_key(|option| option.by_size);
    let mut entrants: Vec<Entrant> =
        options.iter().map(|option| Entrant::of(&option.judgements, option.eased_rules())).collect();
    ranking::set_ill_composed_aside(&mut entrants, wishes);
    let order = ranking::order(&entrants, wishes, None);
    let ratings = ranking::ratings(&entrants, wishes, None);
    let families = family::families(&order.iter().map(|which| &options[*which].choices).collect::<Vec<_>>());
    let keys: Vec<String> = options.iter().map(|option| option.key.clone()).collect();
    let key = |which: usize| keys.get(which).cloned().unwrap_or_default();
    let mut ranked = Vec::with_capacity(options.len());
    for (place, &which) in order.iter().enumerate() {
        let rating = &ratings[which];
        let first = families.get(place).and_then(|first| order.get(*first)).copied().unwrap_or(which);
        ranked.push(RankedOption {
            rank: place + 1,
            family: key(first),
            score: crate::answer::thousandth(rating.score),
            first_place_share: rating.share,
            dominated_by: rating.dominated_by.map(key),
            never_first: rating.never_first,
            turns_if: rating.turns_if.as_ref().map(|turn| TurnsIf::of(turn, key)),
            set_aside: rating.set_aside,
            lapses: rating.lapses.clone(),
            ..options[which].clone()
        });
    }
    let with = |brief: &Brief| Brief { wishes: *wishes, ..brief.clone() };
    let mut notices: Vec<Notice> = answer.notices.iter().filter(|one| !one.is_of_options()).cloned().collect();
    notices.extend(of_options(&answer.brief, &ranked));
    Answer { asked: with(&answer.asked), brief: with(&answer.brief), options: ranked, notices, ..answer.clone() }
}
