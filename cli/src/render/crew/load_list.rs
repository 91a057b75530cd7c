//! A day's load list, and what comes back when, as sheets to print.

use elbowroom_model::Unit;

use super::{name, room, stop};
use crate::render::leaf::{Block, Grid, Head, Leaf};
use crate::result::carried::{BACK, COLLECTED, Carried, DELIVERED, OUT, STAYS};
use crate::result::stock::StockResult;
use crate::words::crew as words;
use crate::words::lengths::taped_bare;

/// The days on which something is carried, in their order.
pub(crate) fn days(told: &StockResult) -> Vec<&str> {
    let mut days: Vec<&str> = told.carried.iter().map(|one| one.day.as_str()).collect();
    days.dedup();
    days
}

/// The list of a day.
pub(crate) fn load_list(told: &StockResult, day: &str, unit: Unit) -> Leaf {
    let of_day: Vec<&Carried> = told.carried.iter().filter(|one| one.day == day).collect();
    let mut leaf = Leaf::new(words::title(day));
    let loaded: Vec<&Carried> = of_day.iter().copied().filter(|one| one.what != STAYS).collect();
    let all = if loaded.is_empty() { words::NOTHING_CARRIED.to_owned() } else { totals(&loaded) };
    leaf.put(Block::Strong(all));
    leaf.put(Block::Words(words::sizes_in(unit)));
    let parts = [
        (OUT, words::OUT),
        (DELIVERED, words::DELIVERED),
        (COLLECTED, words::COLLECTED),
        (BACK, words::BACK),
        (STAYS, words::STAYS),
    ];
    for (what, heading) in parts {
        let mut some: Vec<&Carried> = of_day.iter().copied().filter(|one| one.what == what).collect();
        if some.is_empty() {
            continue;
        }
        some.sort_by(|one, other| heaviest_first(one, other));
        leaf.put(Block::Heading(heading.to_owned()));
        if what == STAYS {
            leaf.put(Block::Words(words::BOOKED_ON.to_owned()));
        } else if loaded.len() > some.len() {
            leaf.put(Block::Words(totals(&some)));
        }
        leaf.put(Block::Grid(grid(told, &some, unit)));
    }
    leaf.put(Block::Heading(words::STOPS.to_owned()));
    let mut stops: Vec<usize> = of_day.iter().filter_map(|one| stop(one)).collect();
    stops.sort_unstable();
    stops.dedup();
    let stops = stops.into_iter().filter_map(|place| told.rooms.get(place));
    leaf.put(Block::List(stops.map(|room| words::stop(&name(room), &room.client, &room.address)).collect()));
    leaf.put(Block::Heading(words::CAUTIONS.to_owned()));
    leaf.put(Block::List(words::CAUTIONS_OF_CREW.iter().map(|caution| (*caution).to_owned()).collect()));
    leaf
}

/// What comes back, by days.
pub(crate) fn returns(told: &StockResult) -> Leaf {
    let mut leaf = Leaf::new(words::RETURNS);
    let [day, piece, count, from, to] = words::RETURN_HEADS;
    let heads = vec![Head::words(day), Head::words(piece), Head::figures(count), Head::words(from), Head::words(to)];
    let leaving = told.carried.iter().filter(|one| [BACK, COLLECTED].contains(&one.what));
    let rows = leaving.map(|one| {
        let count = one.count.to_string();
        vec![one.day.clone(), one.name.clone(), count, room(told, one.from), room(told, one.to)]
    });
    leaf.put(Block::Grid(Grid { heads, rows: rows.collect() }));
    leaf
}

/// What has no mass given comes last; of one mass what is larger comes first.
fn heaviest_first(one: &Carried, other: &Carried) -> std::cmp::Ordering {
    let key = |one: &Carried| (one.mass.unwrap_or(-1.0), one.volume.unwrap_or(-1.0));
    let (one, other) = (key(one), key(other));
    other.0.total_cmp(&one.0).then(other.1.total_cmp(&one.1))
}

fn totals(some: &[&Carried]) -> String {
    let known = |of: fn(&Carried) -> Option<f64>| -> f64 {
        some.iter().filter_map(|one| Some(of(one)? * f64::from(one.count))).sum()
    };
    let count =
        |holds: &dyn Fn(&Carried) -> bool| -> u32 { some.iter().filter(|one| holds(one)).map(|one| one.count).sum() };
    words::totals(&words::Totals {
        pieces: count(&|_| true),
        mass: known(|one| one.mass),
        no_mass: count(&|one| one.mass.is_none()),
        volume: known(|one| one.volume),
        no_volume: count(&|one| one.volume.is_none()),
        two: count(&|one| one.people.is_some_and(|people| people > 1)),
        no_people: count(&|one| one.people.is_none()),
    })
}

fn grid(told: &StockResult, some: &[&Carried], unit: Unit) -> Grid {
    let [loaded, piece, count, place, size, mass, people] = words::HEADS;
    let way = match some.first().map(|one| one.what) {
        Some(OUT) => words::TO,
        Some(BACK) => words::FROM,
        Some(STAYS) => words::IN,
        _ => words::FROM_TO,
    };
    // What goes from room to room, or stays, is in no place of the store.
    let is_of_store = some.iter().any(|one| one.what == OUT || one.what == BACK);
    let mut heads = vec![Head::blank(loaded), Head::words(piece), Head::figures(count)];
    heads.extend(is_of_store.then(|| Head::words(place)));
    heads.extend([Head::words(size), Head::figures(mass), Head::figures(people), Head::words(way)]);
    let rows = some.iter().map(|one| {
        let sides = [Some(one.size.width), one.size.return_length, Some(one.size.depth), one.height];
        let sides: Vec<String> = sides.into_iter().flatten().map(|side| taped_bare(unit, side)).collect();
        let mut cells = vec![String::new(), one.name.clone(), one.count.to_string()];
        cells.extend(is_of_store.then(|| one.place.clone()));
        cells.extend([
            sides.join(" x "),
            one.mass.map_or_else(|| words::UNKNOWN.to_owned(), |mass| format!("{mass:.0}")),
            one.people.map_or_else(|| words::UNKNOWN.to_owned(), |people| people.to_string()),
            match one.what {
                OUT => room(told, one.to),
                BACK => room(told, one.from),
                STAYS => room(told, one.to),
                _ => words::from_to(&room(told, one.from), &room(told, one.to)),
            },
        ]);
        cells
    });
    Grid { heads, rows: rows.collect() }
}
