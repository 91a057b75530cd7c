//! The figure that a rule asks for, where it is one length that the file or a profile sets.

use elbowroom_model::{Brief, ItemId, ItemKind, Rule};

use super::why::Asked;
use crate::rules::{Cause, With};

impl Asked {
    /// What the rule of a cause asks; `None` where that is no one length.
    pub(super) fn by(brief: &Brief, cause: &Cause) -> Option<Self> {
        match (cause.rule, cause.with) {
            (Rule::KeepClear, With::Item(item)) => keep_clear(brief, item).map(|_| Self::KeepClear(item)),
            (rule, _) => rule.clearance().map(Self::Clearance),
        }
    }

    /// How much it asks, mm.
    pub(super) fn figure(self, brief: &Brief) -> f64 {
        match self {
            Self::Clearance(rule) => brief.rules.get(rule),
            Self::KeepClear(item) => keep_clear(brief, item).unwrap_or_default(),
        }
    }

    /// The brief with so much asked, mm.
    pub(super) fn eased(self, brief: &Brief, figure: f64) -> Brief {
        let mut eased = brief.clone();
        match self {
            Self::Clearance(rule) => eased.rules = eased.rules.with(rule, figure, "eased"),
            Self::KeepClear(ItemId(item)) => match eased.room.items.get_mut(item).map(|item| &mut item.kind) {
                Some(ItemKind::Radiator(radiator)) => radiator.keep_clear = figure,
                Some(ItemKind::Fireplace(fire)) => fire.keep_clear = figure,
                _ => {}
            },
        }
        eased
    }
}

/// What stays clear of a heater or a fire, mm.
fn keep_clear(brief: &Brief, item: ItemId) -> Option<f64> {
    match &brief.room.item(item)?.kind {
        ItemKind::Radiator(radiator) => Some(radiator.keep_clear),
        ItemKind::Fireplace(fire) => Some(fire.keep_clear),
        _ => None,
    }
}
