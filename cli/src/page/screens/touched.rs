//! What is told of what somebody touches of an option, and what else of it can be touched.

use elbowroom_model::{Brief, Dimension};
use elbowroom_solver::answer::{PieceSizes, RankedOption, Thing};
use elbowroom_solver::routes::Route;
use maud::{Markup, PreEscaped, html};

use crate::page::room::Solved;
use crate::page::touched::Touched;
use crate::render::plan::Layers;
use crate::words::answer as said;
use crate::words::criteria;
use crate::words::lengths::{Ends, planned_range, shop_unit, sign, taped_bare};
use crate::words::narrowest::narrowest;
use crate::words::page::touched as words;
use crate::words::rank as rank_words;

/// A plan with what is chosen, what each number and each line on it stands for, and what is told of what was touched.
pub(in crate::page) struct OnScreen<'a> {
    /// The answer.
    pub(in crate::page) solved: &'a Solved,
    /// The option.
    pub(in crate::page) option: &'a RankedOption,
    /// The plan as SVG.
    pub(in crate::page) svg: String,
    /// What each number on it stands for.
    pub(in crate::page) key: Vec<String>,
    /// What it shows.
    pub(in crate::page) layers: Layers,
    /// What was touched.
    pub(in crate::page) touched: Option<Touched>,
    /// How large each piece may be, with what holds it, where a size was touched.
    pub(in crate::page) sizes: &'a [PieceSizes],
}

/// That as a part of a screen.
pub(in crate::page) fn on_screen(on: &OnScreen<'_>) -> Markup {
    html! {
        (PreEscaped(&on.svg))
        @if !on.key.is_empty() { ol.key { @for line in &on.key { li { (line) } } } }
        @for line in lines_of(on.layers) { p.soft { (line) } }
        @if let Some(touched) = on.touched {
            div.told data-of=(touched.key()) { (told(on, touched)) }
        }
    }
}

/// What the lines on the plan mean, of what it shows.
fn lines_of(layers: Layers) -> impl Iterator<Item = &'static str> {
    let all = [
        (layers.ways, words::WAYS_ARE),
        (layers.sights, words::SIGHTS_ARE),
        (layers.zones, words::ZONES_ARE),
        (layers.largest, words::LARGEST_ARE),
    ];
    all.into_iter().filter(|(is_shown, _)| *is_shown).map(|(_, line)| line)
}

fn told(on: &OnScreen<'_>, touched: Touched) -> Markup {
    let brief = &on.solved.answer.brief;
    match touched {
        Touched::Size(piece) => match on.sizes.iter().find(|sizes| sizes.piece == piece) {
            Some(sizes) => size(brief, sizes),
            None => html! { p { (words::NOTHING) } },
        },
        Touched::Way(place) => match on.option.routes.get(place) {
            Some(route) => html! { p { strong { (way_title(brief, place, route)) } } p { (way(brief, route)) } },
            None => html! { p { (words::NOTHING) } },
        },
        Touched::Reason(criterion) => match on.option.judgement(criterion) {
            Some(judgement) => html! {
                p { strong { (words::scored(criteria::name(criterion), judgement.score)) } }
                p { (said::reason(brief, &judgement.finding)) }
            },
            None => html! { p { (words::NOTHING) } },
        },
    }
}

fn size(brief: &Brief, sizes: &PieceSizes) -> Markup {
    let unit = sign(shop_unit(brief.units));
    html! {
        p { strong { (words::size_of(brief.piece_name(sizes.piece), unit)) } }
        ul.plain {
            @for dimension in Dimension::ALL.iter().copied().filter(|it| sizes.get(*it).is_some()) {
                li { (side(brief, sizes, dimension)) }
            }
        }
    }
}

/// One side of a piece: how long as planned, from and to, what holds it, and how long it could be by itself where that is more.
fn side(brief: &Brief, sizes: &PieceSizes, dimension: Dimension) -> String {
    let Some(found) = sizes.get(dimension) else { return String::new() };
    let told = planned_range(brief.units, &found);
    if found.most <= found.least {
        return words::fixed(dimension.words(), &told);
    }
    let holders = sizes.held_by.iter().filter(|held| held.dimension == dimension);
    let holders: Vec<String> = holders.map(|held| rank_words::holder(brief, sizes.piece, &held.by)).collect();
    let ends = Ends::of(brief.units, found.least, found.together);
    let alone = found.alone.map(|alone| ends.bare(&ends.most_alone(alone)));
    let more = alone.filter(|alone| *alone != ends.bare(&ends.most()));
    words::held(dimension.words(), &told, &holders, more.as_deref())
}

fn way_title(brief: &Brief, place: usize, route: &Route) -> String {
    let ends = rank_words::route(brief, [route.from, route.to].map(Thing::from));
    words::way(&crate::render::plan::letter(place), &ends)
}

fn way(brief: &Brief, route: &Route) -> String {
    let [width, needs] = [route.width, route.needs].map(|length| taped_bare(brief.units, length));
    words::narrowest(&width, &needs, sign(shop_unit(brief.units)), &narrowest(brief, route))
}

/// Ways and reasons of an option, each to be touched; the weightiest reasons first.
pub(in crate::page) fn closer(solved: &Solved, option: &RankedOption) -> Markup {
    let brief = &solved.answer.brief;
    let mut judgements: Vec<_> = option.judgements.iter().collect();
    judgements.sort_by(|one, other| brief.wishes.get(other.criterion).total_cmp(&brief.wishes.get(one.criterion)));
    html! {
        @if !option.routes.is_empty() {
            h4 { (words::WAYS) }
            ul.plain {
                @for (place, route) in option.routes.iter().enumerate() {
                    li { (button(Touched::Way(place), &way_title(brief, place, route))) }
                }
            }
        }
        h4 { (words::REASONS) }
        ul.plain {
            @for judgement in judgements {
                li { (button(Touched::Reason(judgement.criterion), &said::reason(brief, &judgement.finding))) }
            }
        }
    }
}

/// What is told as something that can be touched.
pub(super) fn button(touched: Touched, told: &str) -> Markup {
    html! { button.touch type="button" data-touch=(touched.key()) { (told) } }
}
