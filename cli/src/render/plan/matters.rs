//! The clearances that matter most to who lives in a room: from the seat to its table, where the ways are narrowest, from the
//! seat to what it faces; and where one of these is not there, what is next.

use elbowroom_model::{Clearance, Point};
use elbowroom_solver::answer::{Gap, Thing};
use elbowroom_solver::plan::Plan;
use elbowroom_solver::routes::{End, NarrowPlace, Route};

use super::Shown;
use crate::words::plan as words;

/// So many are told.
const MOST: usize = 3;
/// A doorway that is wider than the room inside by less is as narrow, mm: nobody sees the difference.
const AS_WIDE: f64 = 5.0;

/// A clearance that matters.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Matter {
    /// Between which two places; `None` of a doorway, whose width stands beside its name.
    pub(super) ends: Option<[Point; 2]>,
    /// How wide, mm.
    pub(super) clear: f64,
    /// Whether a line that measures it may be moved aside: what shows where a way is narrowest may not.
    pub(super) slides: bool,
    /// What it is, with its figure.
    pub(super) said: String,
    /// Between which two things; the same two are told once.
    between: [Thing; 2],
}

/// At most three of them.
pub(super) fn matters(shown: &Shown<'_>, plan: &Plan) -> Vec<Matter> {
    let first = |rules: &'static [Clearance]| gaps(shown, plan, rules).take(1);
    let narrow = narrow_places(shown, plan);
    let most = first(&[Clearance::SeatToTable])
        .chain(narrowest(shown, &narrow))
        .chain(first(&[Clearance::ScreenToSeat, Clearance::FacingSeats]));
    let next = gaps(shown, plan, &[Clearance::Passage])
        .chain(narrow.iter().map(|(_, place)| inside(shown, place)))
        .chain(gaps(shown, plan, &[]))
        .chain(leaves(shown, plan));
    let mut told: Vec<Matter> = Vec::new();
    for matter in most.chain(next) {
        let [one, other] = matter.between;
        let is_told = |old: &Matter| old.between == [one, other] || old.between == [other, one];
        if told.len() < MOST && !told.iter().any(is_told) {
            told.push(matter);
        }
    }
    told
}

/// The gaps of these rules, those of the main seat first; of all rules where none is named.
fn gaps(shown: &Shown<'_>, plan: &Plan, rules: &'static [Clearance]) -> impl Iterator<Item = Matter> {
    let is_asked = |gap: &Gap| rules.is_empty() || rules.contains(&gap.rule);
    let found = shown.gaps().iter().zip(&plan.gaps).filter(|(gap, _)| is_asked(gap));
    let matters = found.map(|(gap, ends)| Matter {
        ends: Some(*ends),
        clear: gap.clear,
        slides: true,
        said: said(shown, gap.between, gap.clear),
        between: gap.between,
    });
    matters.collect::<Vec<_>>().into_iter()
}

fn said(shown: &Shown<'_>, between: [Thing; 2], clear: f64) -> String {
    let [from, to] = between.map(|thing| thing.name(shown.brief()));
    words::clear_between(from, to, &shown.tape_with_unit(clear))
}

/// Where each way from door to door or from door to seat is narrowest inside the room, the narrowest first.
fn narrow_places<'a>(shown: &Shown<'a>, plan: &Plan) -> Vec<(&'a Route, NarrowPlace)> {
    let is_main = |route: &Route| match route.to {
        End::Item(item) => shown.brief().room.item(item).is_some_and(|item| item.kind.leads_to().is_some()),
        End::Piece(piece) => shown.brief().piece(piece).is_some_and(|piece| piece.kind.is_seat()),
        End::Fixed(_) => false,
    };
    let places = shown.routes().iter().zip(&plan.narrow).filter(|(route, _)| is_main(route));
    let mut places: Vec<_> = places.filter_map(|(route, place)| Some((route, (*place)?))).collect();
    places.sort_by(|one, other| one.1.clear.total_cmp(&other.1.clear));
    places
}

/// The narrowest place of the ways: between what stands in the room, or a doorway that is narrower than all inside.
fn narrowest(shown: &Shown<'_>, narrow: &[(&Route, NarrowPlace)]) -> Option<Matter> {
    let inside = narrow.first();
    let doorway = doorway(shown, inside.map(|(_, place)| place.clear));
    doorway.or_else(|| {
        let (route, place) = inside?;
        let [from, to] = [route.from, route.to].map(|end| end.name(shown.brief()));
        let between = place.between.map(Thing::from).map(|thing| thing.name(shown.brief()));
        let said = words::narrowest_place(between, [from, to], &shown.tape_with_unit(place.clear));
        Some(Matter { said, ..self::inside(shown, place) })
    })
}

/// The narrowest doorway at an end of a way, where nothing inside is narrower.
fn doorway(shown: &Shown<'_>, inside: Option<f64>) -> Option<Matter> {
    let ends = shown.routes().iter().flat_map(|route| [route.from, route.to]);
    let items = ends.filter_map(|end| match end {
        End::Item(id) => Some((id, shown.brief().room.item(id)?)),
        End::Fixed(_) | End::Piece(_) => None,
    });
    let doorways = items.filter(|(_, item)| item.kind.leads_to().is_some());
    let (id, item) = doorways.min_by(|one, other| one.1.width.total_cmp(&other.1.width))?;
    let is_narrower = inside.is_none_or(|inside| item.width < inside + AS_WIDE);
    is_narrower.then(|| Matter {
        ends: None,
        clear: item.width,
        slides: false,
        said: words::narrowest_doorway(&item.name, &shown.tape_with_unit(item.width)),
        between: [Thing::Item(id); 2],
    })
}

/// A narrow place by itself.
fn inside(shown: &Shown<'_>, place: &NarrowPlace) -> Matter {
    let between = place.between.map(Thing::from);
    let said = said(shown, between, place.clear);
    Matter { ends: Some(place.at), clear: place.clear, slides: false, said, between }
}

/// From what the leaf of each door sweeps to the nearest piece, the least first.
fn leaves(shown: &Shown<'_>, plan: &Plan) -> impl Iterator<Item = Matter> {
    let mut leaves: Vec<_> = plan.leaf_gaps.iter().collect();
    leaves.sort_by(|one, other| one.clear.total_cmp(&other.clear));
    let brief = shown.brief();
    let matter = |leaf: &elbowroom_solver::LeafGap| Matter {
        ends: Some(leaf.at),
        clear: leaf.clear,
        slides: false,
        said: words::leaf_to(
            brief.room.item_name(leaf.item),
            brief.piece_name(leaf.piece),
            &shown.tape_with_unit(leaf.clear),
        ),
        between: [Thing::Item(leaf.item), Thing::Piece(leaf.piece)],
    };
    leaves.into_iter().map(matter).collect::<Vec<_>>().into_iter()
}

#[cfg(test)]
mod tests {
    use elbowroom_model::{Point, Wall};

    use super::super::Shown;
    use super::super::furniture::on_floor;
    use super::super::tests::ranked;
    use super::{Matter, matters, narrow_places};

    /// A tape lies free of walls and pieces in its middle, mm.
    const FREE: f64 = 10.0;

    fn see(each: impl Fn(&Shown<'_>, &[Matter], &str)) {
        for answer in ranked() {
            for option in &answer.options {
                let shown = Shown::Option { answer, option };
                let told = matters(&shown, &shown.plan());
                each(&shown, &told, &format!("{}, option {}: {told:#?}", answer.brief.room.name, option.rank));
            }
        }
    }

    #[test]
    fn three_clearances_are_told_of_every_option_of_every_demo_room() {
        see(|_, told, of| assert!(told.len() == 3, "{of}"));
    }

    /// Of what may not be moved aside: the other lines are, off what they would run over.
    #[test]
    fn a_tape_is_laid_between_two_things_and_along_none() {
        see(|shown, told, of| {
            for [from, to] in told.iter().filter(|matter| !matter.slides).filter_map(|matter| matter.ends) {
                let middle = (from + to) * 0.5;
                let off = |wall: &Wall| (middle - wall.start).dot(wall.inward());
                let on = |wall: &Wall| (0.0..=wall.length()).contains(&(middle - wall.start).dot(wall.along()));
                let mut walls = shown.brief().room.walls().map(|(_, wall)| wall);
                assert!(walls.all(|wall| !on(wall) || off(wall).abs() > FREE), "{of}");
                let parts: Vec<Vec<Point>> = on_floor(shown).flat_map(|one| one.parts()).collect();
                assert!(parts.iter().all(|part| !elbowroom_model::ring::holds(part, middle)), "{of}");
            }
        });
    }

    #[test]
    fn no_way_has_a_place_that_is_narrower_than_the_one_told() {
        see(|shown, told, of| {
            let inside = narrow_places(shown, &shown.plan()).into_iter().map(|(_, place)| place.clear);
            let ends = shown.routes().iter().flat_map(|route| [route.from, route.to]);
            let doorways = ends.filter_map(|end| match end {
                elbowroom_solver::routes::End::Item(id) => shown.brief().room.item(id),
                _ => None,
            });
            let doorways = doorways.filter(|item| item.kind.leads_to().is_some()).map(|item| item.width);
            let least = inside.chain(doorways).fold(f64::INFINITY, f64::min);
            let is_way = |matter: &&Matter| matter.said.contains("narrowest");
            let found = told.iter().find(is_way).map(|matter| matter.clear);
            assert!(found.is_some_and(|clear| clear < least + super::AS_WIDE), "{least} {of}");
        });
    }
}
