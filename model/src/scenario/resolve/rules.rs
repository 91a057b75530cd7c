//! The clearances in force, and how much each criterion counts.

use crate::report::{Of, Report, Taken};
use crate::rules::Rules;
use crate::scenario::document::Document;
use crate::tables::Tables;
use crate::wishes::Wishes;
use crate::yaml::Trail;

/// Least and most of a wish.
const WISHES: std::ops::RangeInclusive<f64> = 0.0..=5.0;

/// The rules of the profile with the scenario's own figures over them.
pub(super) fn rules(document: &Document, tables: &Tables, report: &mut Report<'_>) -> Rules {
    let rows = document.clearances.clone().unwrap_or_default();
    let mut rules = tables.rules(rows.profile.unwrap_or_default());
    for (rule, measure) in &rows.figures {
        let Some(measure) = measure else { continue };
        let at = Trail::default().key("clearances").key(rule.key());
        let of = Of { item: "clearances", figure: rule.key() };
        if let Some(figure) = report.length(measure, &at, of, Taken::FromZero) {
            rules = rules.with(*rule, figure, "the scenario");
        }
    }
    rules
}

/// The wishes, 3 where the file says nothing.
pub(super) fn wishes(document: &Document, report: &mut Report<'_>) -> Wishes {
    let mut wishes = Wishes::default();
    for (criterion, wish) in document.wishes.iter().flat_map(|wishes| &wishes.0) {
        let Some(wish) = wish else { continue };
        if WISHES.contains(wish) {
            wishes = wishes.with(*criterion, *wish);
            continue;
        }
        let key = criterion.key();
        let message = format!("The wish `{key}` is {wish}; wishes run from 0 to 5.");
        let remedy = "Give 0 for what does not count, 5 for what counts most.".to_owned();
        report.add(&Trail::default().key("wishes").key(key), "wish_out_of_range", key, message, remedy);
    }
    wishes
}
