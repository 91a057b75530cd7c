//! What `batch --stock` leaves for a crew: a folder with a PDF for each day, rows, what comes back when, a calendar.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use elbowroom_model::Unit;
use elbowroom_solver::answer::Answer;

use super::letters;
use super::rows::put_rows;
use crate::batch::left::{CREW, LOADS, day_of, is_of_the_crew};
use crate::drawing::{Sheet, Stock, Typeface, pdf};
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::process::whole::Whole;
use crate::render::crew::{calendar, days, load_list, returns, rows};
use crate::render::leaf;
use crate::render::plan::{self, Purpose, Shown};
use crate::render::tape::{Laid, ON_PAPER, leaf as tape, usual_roll};
use crate::result::stock::StockResult;
use crate::text::look::Look;

/// What the crew works by.
#[derive(Clone, Copy)]
pub(super) struct Crew<'c> {
    pub(super) told: &'c StockResult,
    /// Of each booking, its room as planned.
    pub(super) plans: &'c [Option<&'c Answer>],
    pub(super) unit: Unit,
    /// What its sheets are lettered in.
    pub(super) typeface: &'c Typeface,
    /// All that is carried as a workbook too.
    pub(super) xlsx: bool,
}

/// Writes the folder; how many days there are.
pub(super) fn write(folder: &Path, crew: &Crew<'_>, stderr: &mut Outlet<'_>) -> Result<usize, Failure> {
    let Crew { told, plans, unit, typeface, xlsx } = *crew;
    let folder = folder.join(CREW);
    let days = days(told);
    if days.is_empty() {
        return Ok(0);
    }
    fs::create_dir_all(&folder).map_err(|why| Failure::Uncreatable { name: folder.display().to_string(), why })?;
    let drop_others = |name: &str| day_of(name).is_some_and(|day| !days.contains(&day));
    for entry in fs::read_dir(&folder).into_iter().flatten().flatten() {
        if entry.file_name().to_str().is_some_and(drop_others) && is_of_the_crew(&folder) {
            // A day too many of an earlier run; one that cannot be taken away does no harm.
            let _ = fs::remove_file(entry.path());
        }
    }
    let paper = match unit {
        Unit::Inch | Unit::Foot => Stock::Letter,
        Unit::Millimetre | Unit::Centimetre | Unit::Metre => Stock::A4,
    };
    let mut lacking = BTreeSet::new();
    for day in &days {
        let mut sheets = leaf::pages(&load_list(told, day, unit), paper);
        let begins = |place: &usize| told.rooms.get(*place).is_some_and(|room| room.from.as_deref() == Some(day));
        for answer in (0..told.rooms.len()).filter(begins).filter_map(|place| plans.get(place).copied().flatten()) {
            sheets.extend(of_room(answer, paper));
        }
        lacking.extend(typeface.lacks(&sheets));
        put(&folder, &format!("{day}.pdf"), &pdf(&sheets, typeface)?)?;
    }
    letters::tell_these(&lacking, stderr);
    put_rows(&folder.join(LOADS), &rows(told, unit), xlsx)?;
    put(&folder, "returns.txt", leaf::text(&returns(told), Look::PLAIN).as_bytes())?;
    put(&folder, "calendar.ics", calendar(told).as_bytes())?;
    Ok(days.len())
}

/// The plan of a room for the client and for who sets it out, and how it is taped.
fn of_room(answer: &Answer, paper: Stock) -> Vec<Sheet> {
    let Some(option) = answer.options.first() else { return Vec::new() };
    let shown = Shown::Option { answer, option };
    let mut sheets: Vec<Sheet> =
        [Purpose::Client, Purpose::Working].into_iter().map(|purpose| plan::sheet(shown, purpose, paper)).collect();
    let laid = Laid { answer, option, roll: usual_roll(answer.brief.units), plan: Some(ON_PAPER) };
    sheets.extend(leaf::pages(&tape(&laid), paper));
    sheets
}

fn put(folder: &Path, name: &str, bytes: &[u8]) -> Result<(), Failure> {
    let mut file = Whole::start(folder.join(name))?;
    file.add_bytes(bytes)?;
    file.put()
}
