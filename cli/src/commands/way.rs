//! `way`: whether each piece can be carried in.

use std::io::Read;

use elbowroom_model::listing::{Asked, ListedPiece};
use elbowroom_model::tables::Tables;
use elbowroom_model::{PieceKind, way_in as asked};
use elbowroom_solver::cautions::OF_CARRYING;
use elbowroom_solver::way_in::way_in;

use crate::args::WayArgs;
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::process::{listed, source};
use crate::render::way as page;
use crate::result::way::WayResult;
use crate::text::json;
use crate::words;

/// Most pieces of a list that are looked at.
const MOST_ROWS: usize = 10_000;

/// Reads, carries, prints.
pub(super) fn run(args: &WayArgs, stdin: &mut dyn Read, stdout: &mut Outlet<'_>) -> Result<Exit, Failure> {
    let named = [Some(&args.file.file), args.file.table.as_ref(), args.pieces.as_ref()];
    if named.into_iter().flatten().filter(|path| source::is_standard_input(path)).count() > 1 {
        return Err(Failure::StandardInputTwice);
    }
    let scenario = source::read(&args.file.file, stdin)?;
    let table = args.file.table.as_deref().map(|table| source::read(table, stdin)).transpose()?;
    let table = table.as_ref().map(|table| table.text.as_str());
    let (pieces, passed_over) = pieces(args, stdin)?;
    let read = asked::read(&scenario.text, table).and_then(|file| Ok((file, Tables::with(table)?)));
    let (mut file, tables) = read.map_err(|faults| Failure::Faults { scenario, faults })?;
    file.units = args.file.units.unwrap_or(file.units);
    if file.pieces.is_empty() && pieces.is_empty() {
        return Err(Failure::NothingToCarry);
    }
    let found = way_in(&file, &pieces, &|kind: PieceKind| tables.sizes(kind).height);
    let mut notices = file.notices.clone();
    notices.extend(found.assumed.iter().map(|one| words::way::assumed(*one).to_owned()));
    notices.extend(OF_CARRYING.map(|one| words::answer::caution(one).to_owned()));
    notices.extend(passed_over);
    let text = if args.json {
        json::text(&WayResult::of(&file, &found, &notices))?
    } else {
        page::text(&found, &file, &notices, stdout.look())
    };
    stdout.write(&text)?;
    Ok(if found.pieces.iter().all(|piece| piece.carried.gets_in) { Exit::Done } else { Exit::NothingFits })
}

/// The pieces of the list, and what is to be said of its columns.
fn pieces(args: &WayArgs, stdin: &mut dyn Read) -> Result<(Vec<ListedPiece>, Option<String>), Failure> {
    let Some(path) = &args.pieces else { return Ok((Vec::new(), None)) };
    let asked = Asked { decimals: args.decimals.mark(), most_rows: MOST_ROWS, ..Asked::default() };
    let list = listed::read(path, stdin, &asked)?;
    let columns = &list.listing.passed_over;
    let passed_over = (!columns.is_empty()).then(|| words::list::passed_over(&list.name, columns));
    Ok((list.listing.pieces, passed_over))
}
