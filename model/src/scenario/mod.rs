//! The scenario file: YAML text in, a sound [`Brief`] or every fault of the file out.
//!
//! `document` holds the file's own types, `resolve` turns them into the vocabulary and fills in what the file leaves out,
//! `check` holds one file for each family of faults. Solving and printing live elsewhere.

mod check;
mod document;
mod resolve;

use std::sync::LazyLock;

use crate::brief::Brief;
use crate::fault::Fault;
use crate::tables::Tables;
use crate::yaml::{Node, shape, typed};
use document::Document;

static SCHEMA: LazyLock<schemars::Schema> = LazyLock::new(|| schemars::schema_for!(Document));

/// Reads a scenario. `table`: the text of a user's table, put over the built-in sizes and clearances.
///
/// # Errors
/// Every fault of the file, in the file's order; none is left for a second reading unless it hides behind another.
pub fn read(text: &str, table: Option<&str>) -> Result<Brief, Vec<Fault>> {
    let tables = Tables::with(table)?;
    let tree = Node::read(text).map_err(|fault| vec![*fault])?;
    let (tree, mut faults) = shape::hold_to(tree, SCHEMA.as_value());
    let document: Document = match typed::typed(&tree) {
        Ok(document) => document,
        Err(_) if !faults.is_empty() => return Err(faults),
        Err(message) => return Err(vec![crate::tables::not_understood(&message)]),
    };
    let (brief, more) = resolve::resolve(&document, &tree, &tables);
    faults.extend(more);
    faults.sort_by(Fault::before);
    faults.dedup();
    match brief {
        Some(brief) if faults.is_empty() => Ok(brief),
        _ => Err(faults),
    }
}

/// The JSON Schema of a scenario as text, with a description of every key, so that editors complete and check the file.
#[must_use]
pub fn schema() -> String {
    format!("{:#}\n", SCHEMA.as_value())
}

/// A commented scenario to start from; it reads without a fault.
#[must_use]
pub const fn starter() -> &'static str {
    include_str!("../../data/starter.yaml")
}
