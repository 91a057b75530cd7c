//! The rooms that plans are judged in: of real dwellings, the demo rooms, and drawn ones.

use std::fs;
use std::path::Path;

use super::briefs::Furnishing;
use super::drawn;
use crate::program::root;
use crate::support::dwellings::dwellings;
use crate::support::plan::{Plan, What};

/// Where a room comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Group {
    /// Out of open data.
    Real,
    /// The demo rooms under the two furnishings.
    Demo,
    /// The demo rooms as they are.
    Own,
    /// Drawn.
    Drawn,
}

impl Group {
    pub(super) const ALL: [Self; 4] = [Self::Real, Self::Demo, Self::Own, Self::Drawn];

    pub(super) const fn words(self) -> &'static str {
        match self {
            Self::Real => "real",
            Self::Demo => "demo",
            Self::Own => "demo, own pieces",
            Self::Drawn => "drawn",
        }
    }

    /// A demo room, with its own pieces or others.
    pub(super) fn is_demo(self) -> bool {
        matches!(self, Self::Demo | Self::Own)
    }
}

/// A scenario to judge the first option of.
#[derive(Debug)]
pub(super) struct Case {
    pub(super) group: Group,
    /// Room and furnishing.
    pub(super) name: String,
    pub(super) text: String,
}

/// A door that is wider than this is no leaf but a side that opens: taken as an opening, mm.
const WIDEST_LEAF: f64 = 1300.0;
/// Hand-measured in a dwelling, mm.
const MEASURED_WITHIN: f64 = 10.0;

/// How many rooms are judged.
#[derive(Debug, Clone, Copy)]
pub(super) enum Extent {
    /// As in every run of the tests: six drawn rooms, and each demo room under its own pieces and one of the furnishings.
    Short,
    /// So many drawn rooms, and the demo rooms under both furnishings.
    Long(usize),
}

/// Rooms that are drawn in a short run.
const DRAWN_ROOMS: usize = 6;

/// Every scenario of a run.
pub(super) fn cases(extent: Extent) -> Vec<Case> {
    let furnished = |group: Group, (room, plan): &(String, Plan), furnishing: Furnishing| Case {
        group,
        name: format!("{room} {}", furnishing.key()),
        text: furnishing.in_plan(plan.clone()).text(),
    };
    let both = |group: Group, rooms: Vec<(String, Plan)>| -> Vec<Case> {
        let cases = |room: &(String, Plan)| Furnishing::ALL.map(|furnishing| furnished(group, room, furnishing));
        rooms.iter().flat_map(cases).collect()
    };
    let drawn_rooms = match extent {
        Extent::Short => DRAWN_ROOMS,
        Extent::Long(count) => count,
    };
    let mut all = both(Group::Real, real());
    all.extend(demo(extent));
    all.extend(both(Group::Drawn, drawn::rooms(drawn_rooms)));
    all
}

/// Writes each room to a folder that is there, numbered in their order.
pub(super) fn keep(cases: &[Case], folder: &Path) {
    for (place, case) in cases.iter().enumerate() {
        let file = folder.join(format!("{place:03} {}.yaml", case.name));
        fs::write(&file, &case.text).unwrap_or_else(|error| panic!("{}: {error}", file.display()));
    }
}

/// The rooms of real dwellings, without pieces.
fn real() -> Vec<(String, Plan)> {
    let rooms = dwellings(|plan| Furnishing::Sofa.in_plan(Plan { measured_within: MEASURED_WITHIN, ..plan }));
    rooms.into_iter().map(|(id, plan)| (id, entered(with_open_sides(plan)))).collect()
}

fn with_open_sides(mut plan: Plan) -> Plan {
    for held in plan.walls.iter_mut().flat_map(|wall| &mut wall.holds) {
        match held.what {
            What::Door { leads_to, .. } if held.width > WIDEST_LEAF => {
                held.what = What::Opening { leads_to, stance: "none" };
            }
            _ => {}
        }
    }
    plan
}

/// The plan with a way in: where the data names none, the first doorway to where one comes from.
fn entered(mut plan: Plan) -> Plan {
    let mut doorways: Vec<&mut &'static str> = plan
        .walls
        .iter_mut()
        .flat_map(|wall| &mut wall.holds)
        .filter_map(|held| match &mut held.what {
            What::Door { leads_to, .. } | What::Opening { leads_to, .. } => Some(leads_to),
            _ => None,
        })
        .collect();
    if !doorways.iter().any(|to| **to == "entrance") {
        let from = ["hall", "stairs", "outside", "bedroom"];
        if let Some(to) = doorways.iter_mut().find(|to| from.contains(*to)) {
            **to = "entrance";
        }
    }
    plan
}

/// The demo rooms as they are, and under the furnishings: in a short run under each in turn.
fn demo(extent: Extent) -> Vec<Case> {
    let folder = fs::read_dir(root().join("scenarios")).unwrap().map(|entry| entry.unwrap().path());
    let mut files: Vec<_> = folder.filter(|path| path.extension().is_some_and(|it| it == "yaml")).collect();
    files.sort();
    let furnishings = |place: usize| match extent {
        Extent::Short => vec![Furnishing::ALL[place % Furnishing::ALL.len()]],
        Extent::Long(_) => Furnishing::ALL.to_vec(),
    };
    let cases = |(place, file): (usize, &std::path::PathBuf)| {
        let (room, text) = (file.file_stem().unwrap().to_string_lossy(), fs::read_to_string(file).unwrap());
        let under = furnishings(place).into_iter().map(|furnishing| Case {
            group: Group::Demo,
            name: format!("{room} {}", furnishing.key()),
            text: furnishing.in_text(&text),
        });
        let mut all: Vec<Case> = under.collect();
        all.push(Case { group: Group::Own, name: room.into_owned(), text });
        all
    };
    files.iter().enumerate().flat_map(cases).collect()
}
