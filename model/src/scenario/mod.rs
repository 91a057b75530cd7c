//! The scenario file: YAML text in, a sound [`Brief`] or every fault of the file out.
//!
//! `document` holds the file's own types, `resolve` turns them into the vocabulary and fills in what the file leaves out,
//! `check` holds one file for each family of faults, `setting` asks what if. Solving and printing live elsewhere.

mod check;
mod document;
mod resolve;
mod setting;
mod tolerance;
mod words;

use std::sync::LazyLock;

use crate::brief::Brief;
use crate::fault::Fault;
use crate::notice::Notice;
use crate::tables::Tables;
use crate::yaml::{Node, shape, typed};
pub(crate) use check::plausible::likely_unit;
use document::Document;
pub(crate) use document::PieceRow;
pub(crate) use resolve::{measured_within, named, pieces_alone};

static SCHEMA: LazyLock<schemars::Schema> = LazyLock::new(|| schemars::schema_for!(Document));

/// Reads a scenario. `table`: the text of a user's table, put over the built-in sizes and clearances.
///
/// # Errors
/// Every fault of the file, in the file's order; none is left for a second reading unless it hides behind another.
pub fn read(text: &str, table: Option<&str>) -> Result<Brief, Vec<Fault>> {
    read_set(text, table, &[])
}

/// Reads a scenario as if some of it said otherwise: each of `settings` is `PATH=VALUE`, and they hold one after the other.
///
/// ```
/// let text = "
/// units: cm
/// walls: [{ length: 420 }, { length: 360 }, { length: 420 }, { length: 360 }]
/// pieces: [{ kind: sofa, width: 180..240 }, { kind: coffee-table }]
/// ";
/// let settings = ["sofa.width=200".to_owned(), "passage=70 cm".to_owned(), "coffee table=none".to_owned()];
/// let brief = elbowroom_model::scenario::read_set(text, None, &settings).map_err(|faults| format!("{faults:#?}"))?;
/// assert_eq!((brief.pieces.len(), brief.pieces[0].width.most), (1, 2000.0));
/// assert_eq!(brief.rules.get(elbowroom_model::Clearance::Passage), 700.0);
/// # Ok::<(), String>(())
/// ```
///
/// # Errors
/// Every fault of the settings, then of the file as they leave it.
pub fn read_set(text: &str, table: Option<&str>, settings: &[String]) -> Result<Brief, Vec<Fault>> {
    let tables = Tables::with(table)?;
    let mut tree = Node::read(text).map_err(|fault| vec![*fault])?;
    let (mut faults, mut told) = (Vec::new(), words::put_right(&mut tree));
    for setting in settings {
        faults.extend(setting::apply(&mut tree, setting, SCHEMA.as_value()).err().map(|fault| *fault));
    }
    told.extend(words::put_right(&mut tree));
    let (tree, more) = shape::hold_to(tree, SCHEMA.as_value());
    faults.extend(more);
    let document: Document = match typed::typed(&tree) {
        Ok(document) => document,
        Err(_) if !faults.is_empty() => return Err(faults),
        Err(fault) => return Err(vec![*fault]),
    };
    let (brief, more) = resolve::resolve(&document, &tree, &tables);
    faults.extend(more);
    faults.sort_by(Fault::before);
    faults.dedup();
    match brief {
        Some(mut brief) if faults.is_empty() => {
            let told = settings.iter().map(|setting| setting::notice(setting)).chain(told);
            brief.notices.splice(0..0, told.map(Notice::plain));
            Ok(brief)
        }
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
