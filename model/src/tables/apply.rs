//! A table's rows put over what is there.

use super::file::{FigureRow, PlacesRow, RangeRow, SizeRow, StepRow, told};
use super::{KindSizes, PlacesWidth, SeatedStep, TableFile, TableRange, Tables};
use crate::corner::{Runs, TooShort};
use crate::kind::PieceKind;
use crate::length::Measure;
use crate::piece::Step;
use crate::report::{Of, Report, Taken};
use crate::rules::ClearanceFigure;
use crate::yaml::Trail;

impl Tables {
    pub(super) fn apply(&mut self, file: &TableFile, report: &mut Report<'_>) {
        let root = Trail::default();
        for (kind, row) in file.sizes.iter().flat_map(|sizes| sizes.0.iter()) {
            let at = root.key("sizes").key(kind.key());
            let sizes = &mut self.sizes[*kind];
            apply_sizes(sizes, *kind, row, &at, report);
            tell_run_too_short(sizes, *kind, &at, report);
        }
        for (rule, profiles) in file.clearances.iter().flat_map(|rules| rules.0.iter()) {
            for (profile, row) in &profiles.0 {
                let at = root.key("clearances").key(rule.key()).key(profile.key());
                let of = Of { item: rule.key(), figure: profile.key() };
                if let Some((figure, source)) = figure(row, of, Taken::FromZero, &at, report) {
                    self.clearances[*rule][*profile] = ClearanceFigure { figure: Some(figure), source };
                }
            }
        }
    }
}

fn apply_sizes(sizes: &mut KindSizes, kind: PieceKind, row: &SizeRow, at: &Trail, report: &mut Report<'_>) {
    let words = kind.words();
    let of = |figure| Of { item: &words, figure };
    if let Some(range) = &row.width {
        apply_range(&mut sizes.width, range, of("width"), &at.key("width"), report);
    }
    if let Some(range) = &row.u_width {
        let known = sizes.u_width.get_or_insert_with(TableRange::default);
        apply_range(known, range, of("u_width"), &at.key("u_width"), report);
    }
    if let Some(range) = &row.return_length {
        let known = sizes.return_length.get_or_insert_with(TableRange::default);
        apply_range(known, range, of("return"), &at.key("return"), report);
    }
    if let Some(range) = &row.depth {
        apply_range(&mut sizes.depth, range, of("depth"), &at.key("depth"), report);
    }
    if let Some(row) = &row.height
        && let Some((height, _)) = figure(row, of("height"), Taken::FromZero, &at.key("height"), report)
    {
        sizes.height = height;
    }
    if let Some(weight) = row.weight {
        apply_weight(sizes, weight, of("weight"), &at.key("weight"), report);
    }
    if let Some(rows) = &row.steps {
        sizes.steps = rows
            .iter()
            .enumerate()
            .filter_map(|(place, row)| step(row, &words, &at.key("steps").index(place), report))
            .collect();
    }
    if let Some(rows) = &row.by_places {
        sizes.by_places = by_places(rows, &words, &at.key("by_places"), report);
    }
}

fn by_places(rows: &[PlacesRow], item: &str, at: &Trail, report: &mut Report<'_>) -> Vec<PlacesWidth> {
    let mut width = |(place, row): (usize, &PlacesRow)| {
        let mut width = TableRange::default();
        apply_range(&mut width, &row.width, Of { item, figure: "width" }, &at.index(place).key("width"), report);
        PlacesWidth { seats: row.seats, width }
    };
    rows.iter().enumerate().map(&mut width).collect()
}

/// Tells runs of a corner sofa of which none that the table allows is longer than the other is deep.
fn tell_run_too_short(sizes: &KindSizes, kind: PieceKind, at: &Trail, report: &mut Report<'_>) {
    let Some(return_length) = &sizes.return_length else { return };
    let runs = Runs::two(sizes.width.range(), return_length.range(), sizes.depth.range());
    if let Some(short) = runs.too_short() {
        let (item, units) = (kind.words(), report.units());
        report.add(&at.key(short.which.key()), TooShort::CODE, &item, short.message(&item, units), short.remedy(units));
    }
}

fn apply_weight(sizes: &mut KindSizes, weight: f64, of: Of<'_>, at: &Trail, report: &mut Report<'_>) {
    if (0.0..=1000.0).contains(&weight) {
        sizes.weight = weight;
        return;
    }
    let message = format!("The weight of {} is {weight}; weights run from 0 to 1000.", of.item);
    report.add(at, "weight_out_of_range", of.item, message, "Give a weight from 0 to 1000.".to_owned());
}

fn apply_range(known: &mut TableRange, row: &RangeRow, of: Of<'_>, at: &Trail, report: &mut Report<'_>) {
    let mut read = |measure: &Option<Measure>, key, into: &mut f64| {
        let length = measure.as_ref().and_then(|one| report.length(one, &at.key(key), of, Taken::AboveZero));
        *into = length.unwrap_or(*into);
    };
    read(&row.least, "least", &mut known.least);
    read(&row.usual, "usual", &mut known.usual);
    read(&row.most, "most", &mut known.most);
    known.source = told(row.tag, row.source.as_deref());
    if known.least > known.usual || known.usual > known.most {
        let [least, usual, most] = [known.least, known.usual, known.most].map(|figure| report.words(figure));
        let message =
            format!("The {} of {} runs backward: least {least}, usual {usual}, most {most}.", of.figure, of.item);
        report.add(at, "range_backward", of.item, message, "Give least, usual and most in growing order.".to_owned());
    }
}

fn figure(row: &FigureRow, of: Of<'_>, taken: Taken, at: &Trail, report: &mut Report<'_>) -> Option<(f64, String)> {
    match row {
        FigureRow::Figure(measure) => Some((report.length(measure, at, of, taken)?, told(None, None))),
        FigureRow::Sourced(row) => {
            let length = report.length(row.figure.as_ref()?, &at.key("figure"), of, taken)?;
            Some((length, told(row.tag, row.source.as_deref())))
        }
    }
}

fn step(row: &StepRow, item: &str, at: &Trail, report: &mut Report<'_>) -> Option<SeatedStep> {
    let width = report.length(&row.width, &at.key("width"), Of { item, figure: "width" }, Taken::AboveZero)?;
    let depth = report.length(&row.depth, &at.key("depth"), Of { item, figure: "depth" }, Taken::AboveZero)?;
    Some(SeatedStep { seats: row.seats, size: Step { width: width.max(depth), depth: width.min(depth) } })
}
