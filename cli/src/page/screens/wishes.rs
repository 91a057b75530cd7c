//! A slider for each wish, with a plain sentence.

use elbowroom_model::{Criterion, Wishes};
use maud::{Markup, html};

use crate::page::room::Seen;
use crate::words::page::wishes as words;

/// The sliders: of the criteria that the room is judged by, or all of them where that is not known yet.
pub(super) fn put(seen: &Seen) -> Markup {
    let wishes = seen.read.as_ref().map_or_else(|_| Wishes::default(), |brief| brief.wishes);
    let judged: Vec<Criterion> = seen
        .solved
        .iter()
        .filter_map(|solved| solved.answer.options.first())
        .flat_map(|option| option.judgements.iter().map(|judgement| judgement.criterion))
        .collect();
    let shown = Criterion::ALL.iter().filter(|criterion| judged.is_empty() || judged.contains(criterion));
    html! {
        section id="wishes" aria-labelledby="h-wishes" {
            h2 id="h-wishes" { (words::WISHES) }
            p.soft { (words::ABOUT) }
            @for criterion in shown {
                @let wish = wishes.get(*criterion);
                @let id = format!("wish-{}", criterion.key());
                div.wish {
                    label for=(id) { (words::sentence(*criterion)) }
                    output for=(id) id=(format!("{id}-told")) { (words::value(wish)) }
                    input type="range" id=(id) min="0" max="5" step="0.25" value=(wish)
                        data-at=(format!("wishes.{}", criterion.key())) data-as="number"
                        data-must=(words::value(5.0)) data-none=(words::value(0.0));
                }
            }
        }
    }
}
