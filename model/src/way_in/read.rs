//! A way in a file of its own, or in a scenario.

use std::sync::LazyLock;

use schemars::JsonSchema;
use serde::Deserialize;

use super::Way;
use super::resolve;
use super::row::PointRow;
use crate::fault::Fault;
use crate::length::Measure;
use crate::piece::Piece;
use crate::report::Report;
use crate::scenario::{self, PieceRow};
use crate::tables::Tables;
use crate::unit::Unit;
use crate::yaml::tree::NodeValue;
use crate::yaml::{Node, shape, typed};

/// A way and what is to come in by it.
#[derive(Debug, Clone, PartialEq)]
pub struct WayFile {
    /// What the file, or its room, is called.
    pub name: String,
    /// The unit of length that it speaks.
    pub units: Unit,
    /// The way.
    pub way: Way,
    /// The pieces that it asks for; a way of its own may have none.
    pub pieces: Vec<Piece>,
    /// What was assumed.
    pub notices: Vec<String>,
}

/// A way in a file of its own.
#[derive(Debug, Clone, Default, Deserialize, JsonSchema)]
#[schemars(title = "Way")]
#[serde(deny_unknown_fields)]
struct WayDocument {
    /// What the house is called.
    name: Option<String>,
    /// Unit of bare numbers: mm, cm, m, in or ft.
    #[schemars(required)]
    units: Option<Unit>,
    /// How far off a measured length may be; 0 is allowed; default 5 mm.
    measured_within: Option<Measure>,
    /// What must be passed, from the street on.
    #[schemars(required, with = "Option<Vec<PointRow>>")]
    way: Option<Vec<Option<PointRow>>>,
    /// The furniture that is to come in.
    #[schemars(with = "Option<Vec<PieceRow>>")]
    pieces: Option<Vec<Option<PieceRow>>>,
}

static SCHEMA: LazyLock<schemars::Schema> = LazyLock::new(|| schemars::schema_for!(WayDocument));

/// Reads the way out of a scenario, or out of a file of its own (one that has no `walls`).
///
/// # Errors
/// Every fault of the file; a scenario without a way is one.
///
/// ```
/// let text = "
/// units: cm
/// way:
///   - { kind: door, name: street door, width: 88, height: 201 }
///   - { kind: turn, from: 105, to: 90 }
/// pieces:
///   - { kind: sofa, width: 212, depth: 95 }
/// ";
/// let file = elbowroom_model::way_in::read(text, None).map_err(|faults| format!("{faults:#?}"))?;
/// assert_eq!((file.way.points.len(), file.pieces[0].width.most), (2, 2120.0));
/// # Ok::<(), String>(())
/// ```
pub fn read(text: &str, table: Option<&str>) -> Result<WayFile, Vec<Fault>> {
    let tree = Node::read(text).map_err(|fault| vec![*fault])?;
    let has =
        |key: &str| matches!(&tree.value, NodeValue::Map(entries) if entries.iter().any(|entry| entry.key == key));
    if has("way") && !has("walls") {
        return of_its_own(tree, &Tables::with(table)?);
    }
    let brief = scenario::read(text, table)?;
    let Some(way) = brief.way else {
        let message = "The scenario says nothing of the way in.".to_owned();
        let remedy = "Give `way`, from the street on: - { kind: door, name: street door, width: 88, height: 201 }.";
        return Err(vec![Fault { code: "missing_key", item: None, message, remedy: remedy.to_owned(), place: None }]);
    };
    let notices = way.assumed.clone();
    Ok(WayFile { name: brief.room.name, units: brief.units, way, pieces: brief.pieces, notices })
}

fn of_its_own(tree: Node, tables: &Tables) -> Result<WayFile, Vec<Fault>> {
    let (tree, mut faults) = shape::hold_to(tree, SCHEMA.as_value());
    let document: WayDocument = match typed::typed(&tree) {
        Ok(document) => document,
        Err(_) if !faults.is_empty() => return Err(faults),
        Err(fault) => return Err(vec![*fault]),
    };
    let units = document.units.unwrap_or_default();
    let mut report = Report::new(&tree, units);
    let within = scenario::measured_within(document.measured_within.as_ref(), &mut report);
    let rows = document.way.unwrap_or_default();
    let way = resolve::way(&rows, &[], within.unwrap_or_default(), &mut report);
    let name = scenario::named(document.name.as_deref(), "house", &mut report);
    let pieces = scenario::pieces_alone(document.pieces, tables, &mut report);
    let notices = report.take_notices().into_iter().map(|notice| notice.text).collect();
    faults.extend(report.into_faults());
    faults.sort_by(Fault::before);
    match name {
        Some(name) if faults.is_empty() => Ok(WayFile { name, units, way, pieces, notices }),
        _ => Err(faults),
    }
}
