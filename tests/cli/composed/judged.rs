//! The first option of a scenario, judged.

use elbowroom_model::PieceKind;
use serde_json::Value;

use super::rooms::{Case, Group};
use crate::program::run_with;
use crate::support::judge::{Mark, Odd, Scene, odd};
use crate::support::ranked::brief_of;

/// What came of a scenario.
#[derive(Debug)]
pub(super) struct Judged {
    pub(super) group: Group,
    pub(super) name: String,
    /// `None` where nothing fits.
    pub(super) first: Option<First>,
}

/// A first option.
#[derive(Debug)]
pub(super) struct First {
    pub(super) odd: Vec<Odd>,
    /// Some rule of comfort is eased.
    pub(super) eased: bool,
    /// Its plan is proven; `None` where the result does not say.
    pub(super) proven: Option<bool>,
    /// Optional armchairs that stand, and that were asked for.
    pub(super) chairs: Chairs,
}

/// Optional armchairs.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Chairs {
    pub(super) stand: usize,
    pub(super) asked: usize,
}

impl First {
    pub(super) fn is_clean(&self) -> bool {
        self.odd.is_empty()
    }

    pub(super) fn has(&self, mark: Mark) -> bool {
        self.odd.iter().any(|odd| odd.mark == mark)
    }
}

/// Ranks a scenario through the program and judges what comes first.
pub(super) fn judged(case: &Case) -> Judged {
    let ended = run_with(&["rank", "--json", "--top", "1", "-"], case.text.as_bytes());
    let result: Value = serde_json::from_str(&ended.stdout)
        .unwrap_or_else(|error| panic!("{}: {error}\n{}\n{}", case.name, ended.stderr, case.text));
    let first = result["options"].get(0).map(|option| first(case, option));
    Judged { group: case.group, name: case.name.clone(), first }
}

fn first(case: &Case, option: &Value) -> First {
    let brief = brief_of(&case.text);
    let scene = Scene::of(&brief, option).unwrap_or_else(|what| panic!("{}: {what}", case.name));
    let asked = brief.pieces.iter().filter(|piece| piece.kind == PieceKind::Armchair && !piece.needed);
    let asked: Vec<&str> = asked.map(|piece| piece.name.as_str()).collect();
    let stand = scene.pieces.iter().filter(|piece| asked.contains(&piece.name.as_str())).count();
    First {
        odd: odd(&scene),
        eased: option["eased"].as_array().is_some_and(|eased| !eased.is_empty()),
        proven: option["plan_proven"].as_bool(),
        chairs: Chairs { stand, asked: asked.len() },
    }
}
