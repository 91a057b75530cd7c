//! The program's prose, all of it that is not the model's: headings, sentences, labels, in the units asked for. What several pages say alike stands here; the rest has a file a subject.

pub(crate) mod answer;
pub(crate) mod apart;
pub(crate) mod batch;
pub(crate) mod card;
pub(crate) mod changed;
pub(crate) mod check;
pub(crate) mod compare;
pub(crate) mod crew;
pub(crate) mod criteria;
pub(crate) mod drawn;
pub(crate) mod exit;
pub(crate) mod failure;
pub(crate) mod family;
pub(crate) mod figures;
pub(crate) mod firm;
pub(crate) mod hung;
pub(crate) mod index;
pub(crate) mod judge;
pub(crate) mod leaf;
pub(crate) mod lengths;
pub(crate) mod letters;
pub(crate) mod list;
pub(crate) mod narrowest;
pub(crate) mod number;
pub(crate) mod order;
pub(crate) mod page;
pub(crate) mod plan;
pub(crate) mod progress;
pub(crate) mod rank;
pub(crate) mod refused;
pub(crate) mod report;
pub(crate) mod share;
pub(crate) mod shop;
pub(crate) mod short;
pub(crate) mod size;
pub(crate) mod stock;
pub(crate) mod stock_faults;
pub(crate) mod tape;
mod tolerance;
pub(crate) mod turned;
pub(crate) mod unit;
pub(crate) mod walk;
pub(crate) mod way;
pub(crate) mod work;

/// Where a plan would go to a terminal.
pub(crate) const SVG_INSTEAD: &str = "Name a file to write with `-o`, or choose `--format svg`.";
/// Where options side by side on a sheet would.
pub(crate) const TEXT_INSTEAD: &str = "Name a file to write with `-o`, or leave `--format` off for text.";
/// Where a tape sheet or a card would.
pub(crate) const LEAF_INSTEAD: &str = "Name a file to write with `-o`, or choose `--format text` or `--format html`.";

/// What `new` says once the file is there.
pub(crate) fn wrote(name: &str) -> String {
    format!("Wrote {name}. Put your own measurements in, then: elbowroom check {name}\n")
}

/// Over what a reader must be told.
pub(crate) const NOTICES: &str = "Notices";
